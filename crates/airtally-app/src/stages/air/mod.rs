//! Air: how much the house needs, who says so, and which room gets what.

mod answer;
mod codes;
mod doors;
mod nights;
mod rooms;

use crate::context::{use_desk, use_hands};
use crate::parts::explained::use_explainer;
use crate::ui::part::part;
use airtally::rules::Air::{Extract, Supply};
use airtally_words::{label, page as say};
use yew::prelude::*;

/// The screen.
#[component]
pub fn Air() -> Html {
    let (explainer, desk, hands) = (use_explainer(), use_desk(), use_hands());
    let level = desk.level;
    let page = &explainer.page;
    if page.house.rooms.is_empty() {
        return nothing_yet(say::ASK_AIR);
    }
    html! {
        <div class="spread">
            <div class="leaf">
                { answer::answer(&explainer, &hands, level) }
                { part(label::air(Supply), html! {}, rooms::ledger(&explainer, level, Supply)) }
                { part(label::air(Extract), html! {}, rooms::ledger(&explainer, level, Extract)) }
                <p><a class="button-main" href="#tubes">{ say::NEXT_TUBES }</a></p>
            </div>
            <div class="leaf">
                { nights::nights(&explainer) }
                { doors::doors(&explainer) }
                { codes::readings(&explainer) }
                { codes::codes(page, &hands) }
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
