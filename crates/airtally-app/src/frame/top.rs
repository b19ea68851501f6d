//! The top line: whose house, units, look, undo, and a menu.

use super::send::send;
use crate::context::{Hands, Page, View};
use crate::desk::{Move, Said, Stage, Told, Topic};
use crate::hooks::{Look, make_link};
use crate::parts::choice::{choosing, options};
use crate::parts::opener::opener;
use crate::platform;
use crate::shelf;
use crate::state::Action;
use crate::ui::chips::chips;
use crate::ui::el::{button, el, maybe, nothing, tag, text};
use crate::ui::field::on_key;
use crate::ui::icon::{Icon, icon};
use crate::ui::select::pick;
use crate::ui::tally::tally_mark;
use airtally::house::{Display, House};
use airtally_words::book::of_houses;
use airtally_words::{demo, label, page as say};
use std::rc::Rc;
use yew::platform::spawn_local;
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// What the top line shows beside the house.
pub struct State {
    /// The look, and the way to change it by its place.
    pub look: (Look, Callback<usize>),
    /// Something can be undone.
    pub can_undo: bool,
    /// Something can be made again.
    pub can_redo: bool,
}

/// The top line.
pub fn top(view: &View, state: &State) -> Html {
    let (page, hands) = (&view.page, &view.hands);
    let (look, by_place) = &state.look;
    let open = view.desk.menu;
    let menu_button = button("button-icon", hands.doing(move |hands| hands.make(Move::Menu(!open))));
    let menu_button = menu_button.attr("id", MENU_BUTTON).attr("aria-label", say::MENU);
    let menu_button =
        menu_button.attr("aria-expanded", open.to_string()).attr_if("aria-controls", open.then_some("menu"));
    let tools = tag("div", "top-tools").key(view.notebook.refused.to_string());
    let tools = tools.around([
        pocket(view),
        units(page, hands),
        pick("pick from-wide", say::LOOK, looks(*look), by_place),
        tool("button-icon", Icon::Undo, say::UNDO, state.can_undo, hands.doing(|hands| hands.act(Action::Undo))),
        tool("button-icon from-wide", Icon::Redo, say::REDO, state.can_redo, hands.doing(redo)),
        menu_button.around([icon(if open { Icon::Close } else { Icon::Menu })]),
    ]);
    let menu = if open { menu(*look, by_place, state.can_redo, view) } else { nothing() };
    el("header", "top", [tally_mark(), el("p", "top-name", [text(title(page))]), tools, menu])
}

const MENU_BUTTON: &str = "menu-button";

/// Opens the pocket, or puts it away where the page stays live beside it.
fn pocket(view: &View) -> Html {
    let open = view.desk.sheet.last() == Some(&Topic::Pocket);
    let pressed = view.hands.doing(move |hands| {
        hands.make(if open { Move::CloseSheet } else { Move::Explain(Topic::Pocket) });
        hands.make(Move::Menu(false));
    });
    let button = button("button-icon", pressed).attr("aria-label", say::POCKET).attr("aria-haspopup", "dialog");
    button.attr("aria-expanded", open.to_string()).around([icon(Icon::Pocket)])
}

fn redo(hands: &Hands) {
    hands.act(Action::Redo);
}

fn title(page: &Page) -> AttrValue {
    match page.house.name.trim() {
        "" => say::NO_NAME.into(),
        name => name.to_owned().into(),
    }
}

fn units(page: &Page, hands: &Hands) -> Html {
    let chosen = choosing(page, hands, &Display::ALL, |choices, display| choices.display = display);
    let symbol = |display: Display| display.flow().symbol();
    pick("pick", say::UNITS, options(&Display::ALL, page.display(), symbol), &chosen)
}

fn looks(look: Look) -> Vec<(AttrValue, bool)> {
    options(&Look::ALL, look, Look::name)
}

fn tool(class: &'static str, sign: Icon, name: &'static str, can: bool, pressed: Callback<Event>) -> Html {
    let tool = button(class, pressed).attr("aria-label", name).attr_if("disabled", (!can).then_some(""));
    tool.around([icon(sign)])
}

fn menu(look: Look, choose: &Callback<usize>, can_redo: bool, view: &View) -> Html {
    let hands = &view.hands;
    let leave = hands.doing::<()>(|hands| {
        hands.make(Move::Menu(false));
        hands.make(Move::Aim(MENU_BUTTON.to_owned()));
    });
    let whole = Rc::clone(&view.page.house);
    let print = hands.doing(move |hands| print(hands.clone(), Rc::clone(&whole)));
    let link = hands.doing(|hands| {
        hands.make(Move::Menu(false));
        hands.make(Move::Explain(Topic::Send));
    });
    let first = hands.doing(|hands| shelf::begin(hands, demo::larkfield(), say::EXAMPLE_OPENED));
    let example = |name: &'static str| {
        let open = hands.doing(move |hands| match airtally_door::read_kept(of_houses(name)) {
            Ok(house) => shelf::begin(hands, house, say::EXAMPLE_OPENED),
            Err(_) => hands.make(Move::Say(Said { words: say::BOOK_MISSING.into(), undo: false })),
        });
        item(None, say::example(name), true, open)
    };
    let houses = hands.doing(|hands| {
        shelf::find(hands, String::new());
        hands.make(Move::Menu(false));
        hands.make(Move::Explain(Topic::Houses));
    });
    let menu = tag("div", "menu").attr("id", "menu").on(|| ListenerKind::onkeydown, on_key("Escape", leave));
    menu.around([
        tag("p", "field-label").attr("aria-hidden", "true").around([text(say::LOOK)]),
        chips("chips", "look".to_owned(), say::LOOK.to_owned(), looks(look), choose),
        item(Some(Icon::Redo), say::REDO.to_owned(), can_redo, hands.doing(redo)),
        item(None, say::HOUSES.to_owned(), true, houses),
        kept_line(view),
        new(hands),
        save(view),
        open(hands),
        item(None, say::SEND.to_owned(), true, link),
        send(view),
        item(None, say::PRINT.to_owned(), true, print),
        item(None, say::example("Larkfield"), true, first),
        demo::OTHERS.into_iter().map(example).collect(),
    ])
}

/// Prints once the code of the house is made, which stands on its paper.
fn print(hands: Hands, house: Rc<House>) {
    hands.make(Move::Menu(false));
    spawn_local(async move {
        make_link(hands.clone(), house, "pack").await;
        hands.make(Move::Paper(true));
        platform::page::print();
    });
}

/// Whether the house is kept, and a copy of it elsewhere.
pub fn kept_line(view: &View) -> Html {
    let shelf = &view.desk.shelf;
    let line = || say::kept_line(shelf.line(Told::Kept, 1), shelf.line(Told::Kept, 2));
    el("p", "soft small", [text(shelf.trouble().map_or_else(line, str::to_owned))])
}

/// Begins a new house.
pub fn new(hands: &Hands) -> Html {
    let new = hands.doing(|hands| {
        hands.make(Move::Go(Stage::House));
        shelf::begin(hands, House::new(), say::NEW_HOUSE_BEGUN);
    });
    item(None, say::NEW_HOUSE.to_owned(), true, new)
}

/// Gives the house as a file.
pub fn save(view: &View) -> Html {
    let (house, id) = (Rc::clone(&view.page.house), view.notebook.id);
    let save = view.hands.doing(move |hands| {
        hands.make(Move::Menu(false));
        if let Ok(text) = airtally_door::write(&house) {
            platform::file::save(&say::file_name(&house.name), "application/json", &text);
            platform::store::ask("sent", id, "");
        }
    });
    item(None, say::SAVE_FILE.to_owned(), true, save)
}

/// Opens a house from a file as a house of its own, also from one that was sent; a file that is none changes nothing.
pub fn open(hands: &Hands) -> Html {
    let hands = hands.clone();
    opener(say::OPEN_FILE, ".json,.txt,.html,application/json,text/plain,text/html", move |text| {
        shelf::open_file(&hands, &text)
    })
}

/// An entry of the menu.
pub fn item(sign: Option<Icon>, words: String, can: bool, pressed: Callback<Event>) -> Html {
    let item = button("button", pressed).attr_if("disabled", (!can).then_some(""));
    item.around([maybe(sign.map(icon)), text(words)])
}

/// The units as a row of chips, for the page of the house.
pub fn unit_chips(page: &Page, hands: &Hands) -> Html {
    let chosen = choosing(page, hands, &Display::ALL, |choices, display| choices.display = display);
    let options = options(&Display::ALL, page.display(), label::display);
    chips("chips", "display".to_owned(), say::UNITS_SHOWN.to_owned(), options, &chosen)
}
