//! A house on its way: its link with a code for a camera, what comes by a link, and the code on paper.

use crate::context::View;
use crate::desk::{Link, Made, Move};
use crate::platform::{link, store};
use crate::shelf;
use crate::ui::el::{button, el, maybe, nodes, nothing, tag, text};
use crate::ui::part::soft;
use airtally::house::House;
use airtally::quantity::{Area, Unit};
use airtally::report::Report;
use airtally_words::{format, label, page as say};
use std::rc::Rc;
use yew::platform::spawn_local;
use yew::prelude::*;

/// The way to another device.
pub fn send(view: &View) -> Html {
    let body = match view.desk.link.of(&view.page.house) {
        None => el("p", "soft", [text(say::LINK_COMES)]),
        Some(Err(why)) => el("p", "", [text(say::no_link(why))]),
        Some(Ok(made)) => ways(made, view),
    };
    el("div", "sending", [body])
}

fn ways(made: Made, view: &View) -> Html {
    let (code, how) = match made.code {
        Some(drawn) => (code(drawn), text(say::SEND_HOW)),
        None => (nothing(), text(say::no_code(made.address.len()))),
    };
    let way = |word| handing(word, made.address, view);
    let copy = button("button-main", way("copy")).around([text(say::COPY_LINK)]);
    let share = button("button", way("share")).around([text(say::SHARE_LINK)]);
    let share = if made.can_share { nodes([share, hand_file(view)]) } else { nothing() };
    let name = tag("label", "field-label").attr("for", LINK).around([text(say::LINK)]);
    let address = tag("input", "entry-text").attr("id", LINK).attr("readonly", "").attr("spellcheck", "false");
    let address = address.value(made.address.to_owned().into()).html();
    nodes([
        el("p", "", [how]),
        code,
        el("p", "buttons", [copy, share]),
        tag("p", "").attr("role", "status").around([text(made.remark)]),
        el("div", "field", [name, el("div", "entry", [address])]),
        el("p", "", [soft(say::SEND_WHAT)]),
    ])
}

/// Hands the house itself on, as a file: it may be larger than any link.
fn hand_file(view: &View) -> Html {
    let (house, id) = (Rc::clone(&view.page.house), view.notebook.id);
    let pressed = view.hands.doing(move |_| {
        let Ok(text) = airtally_door::write(&house) else { return };
        let named = [&say::file_name(&house.name), ".txt\n", &text].concat();
        store::ask("sent", id, "");
        spawn_local(async move { drop(link::ask("hand", &named).await) });
    });
    button("button", pressed).around([text(say::SHARE_FILE)])
}

const LINK: &str = "link";

/// Copies or shares the link, and says in the sheet how a copy went.
fn handing(word: &'static str, address: &str, view: &View) -> Callback<Event> {
    let address: AttrValue = address.to_owned().into();
    let made = view.desk.link.clone();
    view.hands.doing(move |hands| {
        let (hands, made, address) = (hands.clone(), made.clone(), address.clone());
        spawn_local(async move {
            let done = link::ask(word, &address).await.is_some();
            if let (Link::Made(house, said, _), "copy") = (made, word) {
                let words = if done { say::LINK_COPIED } else { say::LINK_NOT_COPIED };
                hands.make(Move::Link(Link::Made(house, said, words)));
            }
        });
    })
}

/// The dark parts on a light ground in every look: cameras want it so.
fn code((side, path): (&str, &str)) -> Html {
    let view = ["0 0 ", side, " ", side].concat();
    let drawing = tag("svg", "code").attr("viewBox", view).attr("role", "img").attr("aria-label", say::LINK_CODE);
    drawing.around([tag("path", "").attr("d", path.to_owned()).html()])
}

/// The code of the house below what goes to paper, where it has one.
pub fn on_paper(view: &View) -> Html {
    match view.desk.link.of(&view.page.house) {
        Some(Ok(Made { code: Some(drawn), .. })) if view.desk.paper => {
            el("figure", "on-paper", [code(drawn), el("figcaption", "", [text(say::CODE_ON_PAPER)])])
        }
        _ => nothing(),
    }
}

/// What a link brings, to be opened or left.
pub fn came(view: &View) -> Html {
    let Link::Came(house) = &view.desk.link else { return nothing() };
    let taken = Rc::clone(house);
    let open = view.hands.doing(move |hands| {
        hands.make(Move::CloseSheet);
        shelf::begin(hands, (*taken).clone(), say::CAME_OPENED);
    });
    let leave = view.hands.doing(|hands| hands.make(Move::CloseSheet));
    let same = *house == view.page.house;
    let buttons = [
        button("button-main", open).around([text(say::CAME_OPEN)]),
        button("button", leave).around([text(say::CAME_LEAVE)]),
    ];
    nodes([
        summary(house),
        maybe(same.then(|| el("p", "", [text(say::CAME_SAME)]))),
        el("p", "", [text(say::CAME_NOTE)]),
        el("p", "buttons", buttons),
    ])
}

fn summary(house: &Rc<House>) -> Html {
    let area = Area::from_m2(Report::of(Rc::clone(house)).facts().floor_area_in(Unit::SquareMetre));
    let name = if house.name.trim().is_empty() { say::NO_NAME } else { &house.name };
    let choices = house.choices;
    let row = |what: &'static str, told: String| {
        el("div", "term", [el("dt", "soft", [text(what)]), el("dd", "", [text(told)])])
    };
    let rows = [
        row(say::CAME_NAME, name.to_owned()),
        row(say::CAME_ROOMS, house.rooms.len().to_string()),
        row(say::CAME_AREA, format::area(area, choices.display).to_string()),
        row(say::CAME_RULES, label::rules(choices.rules).to_owned()),
    ];
    el("dl", "terms came", rows)
}
