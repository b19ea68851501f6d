//! Air: how much the house needs, who says so, and which room gets what.

mod answer;
mod codes;
mod doors;
mod nights;
mod rooms;

use crate::context::View;
use crate::ui::part::part;
use airtally::rules::Air::{Extract, Supply};
use airtally_words::{label, page as say};
use yew::prelude::*;

/// The screen.
pub fn air(view: &View) -> Html {
    let level = view.desk.level;
    if view.page.house.rooms.is_empty() {
        return nothing_yet(say::ASK_AIR);
    }
    html! {
        <div class="spread">
            <div class="leaf">
                { answer::answer(view, level) }
                { part(label::air(Supply), html! {}, rooms::ledger(view, level, Supply)) }
                { part(label::air(Extract), html! {}, rooms::ledger(view, level, Extract)) }
                <p><a class="button-main" href="#tubes">{ say::NEXT_TUBES }</a></p>
            </div>
            <div class="leaf">
                { nights::nights(view) }
                { doors::doors(view) }
                { codes::readings(view) }
                { codes::codes(view) }
            </div>
        </div>
    }
}

/// A screen that has nothing to answer from.
pub fn nothing_yet(question: &'static str) -> Html {
    html! {
        <div class="spread"><div class="leaf">
            <header class="answer"><h1>{ question }</h1><p>{ say::NO_ROOMS_YET }</p></header>
            <p><a class="button-main" href="#house">{ say::TO_ROOMS }</a></p>
        </div></div>
    }
}
