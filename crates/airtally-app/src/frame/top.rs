//! The top line: whose house, units, look, undo, and a menu.

use super::send::send;
use crate::context::{Hands, Page, View};
use crate::desk::{MAIN, Move, Said, Stage, Topic};
use crate::hooks::Look;
use crate::parts::choice::{choosing, options};
use crate::parts::opener::opener;
use crate::platform;
use crate::state::Action;
use crate::ui::chips::chips;
use crate::ui::el::{button, el, maybe, nothing, tag, text};
use crate::ui::field::on_key;
use crate::ui::icon::{Icon, icon};
use crate::ui::select::pick;
use crate::ui::tally::tally_mark;
use airtally::house::{Display, House};
use airtally_words::{demo, label, page as say};
use std::rc::Rc;
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
    let tools = el(
        "div",
        "top-tools",
        [
            pocket(view),
            units(page, hands),
            pick("pick from-wide", say::LOOK, looks(*look), by_place),
            tool("button-icon", Icon::Undo, say::UNDO, state.can_undo, hands.doing(|hands| hands.act(Action::Undo))),
            tool("button-icon from-wide", Icon::Redo, say::REDO, state.can_redo, hands.doing(redo)),
            menu_button.around([icon(if open { Icon::Close } else { Icon::Menu })]),
        ],
    );
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
    let print = hands.doing(|hands| {
        hands.make(Move::Menu(false));
        hands.make(Move::Paper(true));
        platform::page::print();
    });
    let example = |demo: &'static demo::Demo| {
        let open = hands.doing(move |hands| load(hands, (demo.house)(), say::EXAMPLE_OPENED));
        item(None, say::example(demo.title), true, open)
    };
    let new = hands.doing(|hands| {
        hands.make(Move::Go(Stage::House));
        load(hands, House::new(), say::NEW_HOUSE_BEGUN);
    });
    let (house, opening) = (Rc::clone(&view.page.house), hands.clone());
    let save = hands.doing(move |hands| {
        hands.make(Move::Menu(false));
        if let Ok(text) = airtally_door::write(&house) {
            platform::file::save(&say::file_name(&house.name), "application/json", &text);
        }
    });
    let menu = tag("div", "menu").attr("id", "menu").on(|| ListenerKind::onkeydown, on_key("Escape", leave));
    menu.around([
        tag("p", "field-label").attr("aria-hidden", "true").around([text(say::LOOK)]),
        chips("chips", "look".to_owned(), say::LOOK.to_owned(), looks(look), choose),
        item(Some(Icon::Redo), say::REDO.to_owned(), can_redo, hands.doing(redo)),
        demo::DEMOS.iter().map(example).collect(),
        item(None, say::NEW_HOUSE.to_owned(), true, new),
        item(None, say::SAVE_FILE.to_owned(), true, save),
        send(view),
        opener(say::OPEN_FILE, ".json,application/json", move |text| open(&opening, &text)),
        item(None, say::PRINT.to_owned(), true, print),
    ])
}

/// A house from a file in place of this one, which can be taken back; a file that is none changes nothing.
fn open(hands: &Hands, text: &str) {
    match airtally_door::read(text) {
        Ok(house) => load(hands, house, say::FILE_OPENED),
        Err(refusal) => {
            hands.make(Move::Menu(false));
            let words = say::file_refused(&refusal.path, &refusal.detail);
            hands.make(Move::Say(Said { words: words.into(), undo: false }));
        }
    }
}

/// An entry of the menu.
pub fn item(sign: Option<Icon>, words: String, can: bool, pressed: Callback<Event>) -> Html {
    let item = button("button", pressed).attr_if("disabled", (!can).then_some(""));
    item.around([maybe(sign.map(icon)), text(words)])
}

/// Puts a whole house in place of this one, which can be taken back; the prices stay.
pub fn load(hands: &Hands, house: House, words: &'static str) {
    hands.act(Action::Begin(house));
    hands.make(Move::Menu(false));
    hands.make(Move::Open(None));
    hands.make(Move::Aim(MAIN.to_owned()));
    hands.make(Move::Say(Said { words: words.into(), undo: true }));
}

/// The units as a row of chips, for the page of the house.
pub fn unit_chips(page: &Page, hands: &Hands) -> Html {
    let chosen = choosing(page, hands, &Display::ALL, |choices, display| choices.display = display);
    let options = options(&Display::ALL, page.display(), label::display);
    chips("chips", "display".to_owned(), say::UNITS_SHOWN.to_owned(), options, &chosen)
}
