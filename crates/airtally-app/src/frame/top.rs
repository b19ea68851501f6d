//! The top line: whose house, units, look, undo, and a menu.

use crate::context::{Hands, Page, View};
use crate::desk::{Move, Said};
use crate::hooks::Look;
use crate::parts::choice::{choosing, options};
use crate::platform;
use crate::state::Action;
use crate::ui::chips::chips;
use crate::ui::icon::{Icon, icon};
use crate::ui::select::pick;
use crate::ui::tally::tally_mark;
use airtally::house::{Display, House};
use airtally_words::{demo, label, page as say};
use yew::prelude::*;

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
    html! {
        <header class="top">
            { tally_mark() }
            <p class="top-name">{ title(page) }</p>
            <div class="top-tools">
                { units(page, hands) }
                { pick(say::LOOK, "from-wide", looks(*look), by_place) }
                { tool(Icon::Undo, say::UNDO, "", state.can_undo, hands.doing(|hands| hands.act(Action::Undo))) }
                { tool(Icon::Redo, say::REDO, "from-wide", state.can_redo, hands.doing(|hands| hands.act(Action::Redo))) }
                <button type="button" id="menu-button" class="button-icon" aria-label={say::MENU} aria-expanded={open.to_string()}
                    aria-controls={open.then_some("menu")} onclick={hands.doing(move |hands| hands.make(Move::Menu(!open)))}>
                    { icon(if open { Icon::Close } else { Icon::Menu }) }
                </button>
            </div>
            if open { { menu(*look, by_place, state.can_redo, hands) } }
        </header>
    }
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
    pick(say::UNITS, "", options(&Display::ALL, page.display(), symbol), &chosen)
}

fn looks(look: Look) -> Vec<(AttrValue, bool)> {
    options(&Look::ALL, look, Look::name)
}

fn tool(sign: Icon, name: &'static str, class: &'static str, can: bool, onclick: Callback<MouseEvent>) -> Html {
    html! {
        <button type="button" class={classes!("button-icon", class)} aria-label={name} disabled={!can} {onclick}>
            { icon(sign) }
        </button>
    }
}

fn menu(look: Look, choose: &Callback<usize>, can_redo: bool, hands: &Hands) -> Html {
    let leave = hands.doing(|hands| {
        hands.make(Move::Menu(false));
        hands.make(Move::Aim("menu-button".to_owned()));
    });
    let onkeydown = Callback::from(move |event: KeyboardEvent| {
        if event.key() == "Escape" {
            leave.emit(());
        }
    });
    html! {
        <div class="menu" id="menu" {onkeydown}>
            <p class="field-label" aria-hidden="true">{ say::LOOK }</p>
            { chips("look".to_owned(), say::LOOK, looks(look), choose, "") }
            { item(Some(Icon::Redo), say::REDO, !can_redo, hands.doing(|hands| hands.act(Action::Redo))) }
            { for demo::DEMOS.iter().map(|demo| {
                let house = demo.house;
                let onclick = hands.doing(move |hands| load(hands, house(), say::EXAMPLE_OPENED));
                item(None, &say::example(demo.title), false, onclick)
            }) }
            { item(None, say::NEW_HOUSE, false, hands.doing(|hands| load(hands, House::new(), say::NEW_HOUSE_BEGUN))) }
            { item(None, say::PRINT, false, hands.doing(|hands| {
                hands.make(Move::Menu(false));
                platform::page::print();
            })) }
        </div>
    }
}

fn item(sign: Option<Icon>, words: &str, disabled: bool, onclick: Callback<MouseEvent>) -> Html {
    html! {
        <button type="button" class="button" {disabled} {onclick}>
            if let Some(sign) = sign { { icon(sign) } }
            { words.to_owned() }
        </button>
    }
}

/// Puts a whole house in place of this one, which can be taken back.
pub fn load(hands: &Hands, house: House, words: &'static str) {
    hands.act(Action::Load(house));
    hands.make(Move::Menu(false));
    hands.make(Move::Open(None));
    hands.make(Move::Say(Said { words: words.into(), undo: true }));
}

/// The units as a row of chips, for the page of the house.
pub fn unit_chips(page: &Page, hands: &Hands) -> Html {
    let chosen = choosing(page, hands, &Display::ALL, |choices, display| choices.display = display);
    chips("display".to_owned(), say::UNITS_SHOWN, options(&Display::ALL, page.display(), label::display), &chosen, "")
}
