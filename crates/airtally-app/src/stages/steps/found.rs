//! What a step asks its person to type or choose, and what its answer comes to.

use super::step::numbers;
use crate::context::View;
use crate::desk::{Move, OpenStep};
use crate::parts::choices::choice_fields;
use crate::parts::entry::entry;
use crate::parts::source::source_line;
use crate::ui::el::{el, els, nothing, tag, text};
use crate::ui::icon::{Icon, icon};
use airtally::on_site::Verdict;
use airtally::steps::{Asks, Check, Step, StepKey};
use airtally_words::book::Book;
use airtally_words::page as say;
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// The fields of a step, where it has any.
pub fn asks(view: &View, step: &Step) -> Html {
    let Asks { choices, fields } = Asks::of(step.key, &view.page.house.choices);
    if choices.is_empty() && fields.is_empty() {
        return nothing();
    }
    let choices = choice_fields(&view.page, &view.hands, choices).into_iter();
    let fields = choices.chain(fields.into_iter().map(|field| entry(view, field, None)));
    let found = tag("div", "step-found").on(|| ListenerKind::onfocusin, stays_open(view, step.key));
    found.around([el("h4", "field-label", [text(say::FOUND)]), els("div", "fields", fields)])
}

/// A row does not close under the hand that types into it, also when what is typed makes the step done.
fn stays_open(view: &View, key: StepKey) -> Callback<Event> {
    view.hands.doing(move |hands| hands.make(Move::Step(OpenStep::This(key))))
}

/// What was found comes to this. Those that fail are seen also while the step is closed.
pub fn checks(view: &View, book: &Book, step: &Step, failing: bool) -> Html {
    let wanted = step.checks.iter().filter(|check| (check.verdict == Verdict::Fails) == failing);
    wanted.map(|one| check(view, book, one)).collect()
}

/// The numbers behind the checks, and who says so of each.
pub fn behind(view: &View, step: &Step) -> Html {
    let known = step.checks.iter().filter(|check| !check.numbers.is_empty());
    known.map(|check| el("div", "step-behind", [numbers(view, &check.numbers), source_line(check.source)])).collect()
}

fn check(view: &View, book: &Book, check: &Check) -> Html {
    let asked = || tag("span", "check-sign").attr("aria-hidden", "true").around([text("?")]);
    let (class, sign, aloud) = match check.verdict {
        Verdict::Holds | Verdict::Excepted => ("check", icon(Icon::Fine), say::CHECK_HOLDS),
        Verdict::Fails => ("check check-fails", icon(Icon::Caution), say::CHECK_FAILS),
        Verdict::Unknown => ("check", asked(), say::CHECK_UNKNOWN),
        Verdict::Designer => ("check check-fails", icon(Icon::Caution), say::CHECK_DESIGNER),
    };
    let words = book.check(check, view.page.display());
    let said = [tag("span", "aloud").around([text(aloud)]), text(words)];
    el("p", class, [sign, el("span", "", said)])
}
