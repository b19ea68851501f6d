//! Said beside an answer that rests on something missing.

use crate::context::View;
use crate::desk::Move;
use crate::ui::el::{button, el, nothing, text};
use crate::ui::part::caution_of;
use airtally::issue::Severity;
use airtally_words::page as say;
use yew::prelude::*;

/// How much is missing, with a way to it; nothing when all is there.
pub fn doubt(view: &View) -> Html {
    let missing = view.page.issues.iter().filter(|issue| issue.severity() == Severity::Stops).count();
    if missing == 0 {
        return nothing();
    }
    let first = view.page.issues.iter().find(|issue| issue.severity() == Severity::Stops).map(|issue| issue.place);
    let pressed = view.hands.doing(move |hands| first.into_iter().for_each(|place| hands.make(Move::Visit(place))));
    let way = button("button-quiet", pressed).around([text(say::MEND_FIRST)]);
    caution_of(el("span", "", [text(say::rests_on(missing)), text(" "), way]))
}
