//! Air: how much the house needs, who says so, and which room gets what.

mod answer;
mod codes;
mod doors;
mod nights;
mod rooms;

use crate::context::View;
use crate::ui::el::{el, nothing, text};
use crate::ui::part::{next, part};
use airtally::rules::Air::{Extract, Supply};
use airtally_words::{label, page as say};
use yew::prelude::*;

/// The screen.
pub fn air(view: &View) -> Html {
    let level = view.desk.level;
    if view.page.house.rooms.is_empty() {
        return nothing_yet(say::ASK_AIR);
    }
    let left = el(
        "div",
        "leaf",
        [
            answer::answer(view, level),
            part(label::air(Supply), nothing(), rooms::ledger(view, level, Supply)),
            part(label::air(Extract), nothing(), rooms::ledger(view, level, Extract)),
            next("#tubes", say::NEXT_TUBES),
        ],
    );
    let right = [nights::nights(view), doors::doors(view), codes::readings(view), codes::codes(view)];
    el("div", "spread", [left, el("div", "leaf", right)])
}

/// A screen that has nothing to answer from.
pub fn nothing_yet(question: &'static str) -> Html {
    let head = el("header", "answer", [el("h1", "", [text(question)]), el("p", "", [text(say::NO_ROOMS_YET)])]);
    el("div", "spread", [el("div", "leaf", [head, next("#house", say::TO_ROOMS)])])
}
