//! The houses of this device: to find, open, begin; and one of them more closely: its name, its versions, its end.

use crate::context::View;
use crate::desk::Told;
use crate::frame::banner::asking;
use crate::frame::top::{kept_line, new, open, save};
use crate::platform::store;
use crate::shelf;
use crate::state::HouseId;
use crate::ui::el::{button, el, els, nodes, nothing, tag, text};
use crate::ui::icon::{Icon, icon};
use airtally_words::book::of_houses;
use airtally_words::page as say;
use web_sys::HtmlInputElement;
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// The list.
pub fn houses(view: &View) -> Html {
    let shelf = &view.desk.shelf;
    let (mut here, mut gone) = (Vec::new(), Vec::new());
    for house in shelf.houses() {
        let rows = if house[2].is_empty() { &mut here } else { &mut gone };
        rows.push(row(view, house));
    }
    let wanted = shelf.line(Told::Wanted, 0);
    let none = match (here.is_empty(), wanted) {
        (false, _) => "",
        (true, "") => "NoHouses",
        (true, _) => "NoneFound",
    };
    let removed = if gone.is_empty() { nothing() } else { el("h3", "", [text(of_houses("Removed"))]) };
    let hands = view.hands.clone();
    nodes([
        kept_line(view),
        words_field("find-house", "FindHouse", wanted, Callback::from(move |wanted| shelf::find(&hands, wanted))),
        els("ul", "shelf", here.into_iter()),
        el("p", "", [text(of_houses(none))]),
        el("div", "buttons", [new(&view.hands), open(&view.hands), save(view)]),
        removed,
        els("ul", "shelf", gone.into_iter()),
        soft(of_houses(shelf.line(Told::List, 0))),
    ])
}

fn soft(words: impl Into<AttrValue>) -> Html {
    el("p", "soft small", [text(words)])
}

/// A box for words. It begins with some; what is typed is handed out and stays, whatever comes back meanwhile.
fn words_field(id: &'static str, label: &str, words: &str, typed: Callback<String>) -> Html {
    let typed = Callback::from(move |event: Event| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            typed.emit(input.value());
        }
    });
    let label = tag("label", "field-label").attr("for", id).around([text(of_houses(label))]);
    let input = tag("input", "entry-text").attr("id", id).attr("value", words.to_owned()).attr("autocomplete", "off");
    el("div", "field", [label, el("div", "entry", [input.on(|| ListenerKind::oninput, typed).html()])])
}

fn row(view: &View, [digits, when, removed, rooms, name]: [&str; 5]) -> Html {
    let id = HouseId::of(digits);
    let name = if name.is_empty() { say::NO_NAME } else { name }.to_owned();
    let more = view.hands.doing(move |_| {
        store::ask("more", id, "");
    });
    let more = button("button-icon", more).attr("aria-label", say::more_about(&name)).around([icon(Icon::Next)]);
    let here = if view.notebook.id == id { say::ON_SCREEN } else { "" };
    let name = match removed {
        "" => asking(&view.hands, "as-link", name, ("open", id, "")),
        _ => text(name),
    };
    el("li", "", [el("div", "", [name, soft([&say::house_line(rooms, when), here].concat())]), more])
}

/// One of them.
pub fn kept(view: &View, id: HouseId) -> Html {
    let shelf = &view.desk.shelf;
    let house = shelf.houses().into_iter().find(|[digits, ..]| HouseId::of(digits) == id);
    let [_, when, removed, rooms, name] = house.unwrap_or_default();
    let asking = |words: &str, what| asking(&view.hands, "button", of_houses(words), what);
    let note = soft(say::house_line(rooms, when));
    if !removed.is_empty() {
        let buttons = [asking("BringBack", ("restore", id, "")), asking("ForGood", ("purge", id, ""))];
        return nodes([text(name.to_owned()), note, el("div", "buttons", buttons)]);
    }
    let buttons = [
        asking("OpenHouse", ("open", id, "")),
        asking("CopyHouse", ("copy", id, say::COPY)),
        asking("RemoveHouse", ("remove", id, "")),
    ];
    let versions = shelf.versions();
    let note_on_them = of_houses(if versions.is_empty() { "NoVersions" } else { "VersionsNote" });
    let versions = els("ul", "shelf", versions.into_iter().map(|version| past(view, id, version)));
    let rename = Callback::from(move |name: String| {
        store::ask("rename", id, &name);
    });
    nodes([
        words_field("kept-name", "ItsName", name, rename),
        note,
        el("div", "buttons", buttons),
        el("h3", "", [text(of_houses("Versions"))]),
        soft(note_on_them),
        versions,
    ])
}

fn past(view: &View, id: HouseId, [at, when, _, rooms, name]: [&str; 5]) -> Html {
    let when = asking(&view.hands, "as-link", when.to_owned(), ("look", id, at));
    el("li", "", [el("div", "", [when, soft(say::house_line(rooms, name))])])
}
