//! The top line: whose house, units, look, undo, and a menu.

use crate::context::{Hands, Page, use_desk, use_hands, use_page};
use crate::desk::{Move, Said};
use crate::hooks::{Look, use_look};
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

/// What can be taken back and made again.
#[derive(Clone, PartialEq, Properties)]
pub struct Props {
    /// Something can be undone.
    pub can_undo: bool,
    /// Something can be made again.
    pub can_redo: bool,
}

/// The top line.
#[component]
pub fn Top(props: &Props) -> Html {
    let (page, desk, hands) = (use_page(), use_desk(), use_hands());
    let (look, choose_look) = use_look();
    let open = desk.menu;
    let by_place = choose_look.reform(|at: usize| Look::ALL[at.min(Look::ALL.len() - 1)]);
    html! {
        <header class="top">
            { tally_mark() }
            <p class="top-name">{ title(&page) }</p>
            <div class="top-tools">
                { units(&page, &hands) }
                { pick(say::LOOK, "from-wide", looks(look), &by_place) }
                { tool(Icon::Undo, say::UNDO, "", props.can_undo, hands.doing(|hands| hands.act(Action::Undo))) }
                { tool(Icon::Redo, say::REDO, "from-wide", props.can_redo, hands.doing(|hands| hands.act(Action::Redo))) }
                <button type="button" id="menu-button" class="button-icon" aria-label={say::MENU} aria-expanded={open.to_string()}
                    aria-controls={open.then_some("menu")} onclick={hands.doing(move |hands| hands.make(Move::Menu(!open)))}>
                    { icon(if open { Icon::Close } else { Icon::Menu }) }
                </button>
            </div>
            if open { { menu(look, &by_place, props.can_redo, &hands) } }
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
