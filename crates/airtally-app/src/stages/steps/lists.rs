//! Lists that a step works through, and what was changed on site.

use crate::context::View;
use crate::ui::el::{el, els, nothing, text};
use crate::ui::part::part;
use airtally::steps::{Step, StepRule as R, cables, changes, crossings};
use airtally_words::{page as say, step as words};
use yew::prelude::*;

/// The list of a step, where it has one.
pub fn list(view: &View, step: &Step) -> Html {
    let (house, report) = (&view.page.house, &view.page.report);
    let items: Vec<String> = match step.key.rule {
        R::ListCrossings | R::CloseCrossings => {
            crossings(report.facts(), report.runs()).iter().map(|one| words::crossing(*one)).collect()
        }
        R::LayCables => cables(report.facts()).iter().map(|one| words::cable(*one, house)).collect(),
        _ => return nothing(),
    };
    els("ul", "step-list", items.into_iter().map(|words| el("li", "", [text(words)])))
}

/// Runs that were pulled otherwise than planned.
pub fn change_log(view: &View) -> Html {
    let (house, display) = (&view.page.house, view.page.display());
    let changes = changes(view.page.report.runs());
    if changes.is_empty() {
        return nothing();
    }
    let items = changes.iter().map(|change| el("li", "", [text(words::change(change, house, display))]));
    part(say::CHANGES, nothing(), els("ul", "step-list", items))
}
