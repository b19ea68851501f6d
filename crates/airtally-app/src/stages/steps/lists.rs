//! Lists that a step works through, and what was changed on site.

use crate::context::View;
use crate::desk::{Move, OpenStep};
use crate::ui::el::{el, els, nothing, tag, text};
use crate::ui::part::part;
use airtally::edit::Edit;
use airtally::steps::{Listed, Status, Step, StepKey, StepRule as R, changes};
use airtally_words::{page as say, step as words};
use web_sys::HtmlInputElement;
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// The list of a step, where it has one. The step that draws up the crossings shows those that another one closes.
pub fn list(view: &View, step: &Step) -> Html {
    let closing = || view.page.report.steps().iter().find(|other| other.key.rule == R::CloseCrossings);
    let list = if step.key.rule == R::ListCrossings { closing().map(|other| &other.list) } else { Some(&step.list) };
    let list = list.map_or(&[][..], |list| list);
    let boxed = !step.list.is_empty() && !matches!(step.status, Status::LockedBy(_));
    if list.is_empty() {
        return nothing();
    }
    els("ul", if boxed { "step-list is-boxed" } else { "step-list" }, list.iter().map(|it| item(view, it, boxed)))
}

fn item(view: &View, it: &Listed, boxed: bool) -> Html {
    let words = text(words::listed(it, &view.page.house));
    if !boxed {
        return el("li", "", [words]);
    }
    let (key, hands) = (it.key, view.hands.clone());
    let told = Callback::from(move |event: Event| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            hands.make(Move::Step(OpenStep::This(StepKey::house(key.rule))));
            hands.edit(Edit::Tick(key, input.checked()));
        }
    });
    let input = tag("input", "tick").attr("type", "checkbox").checked(it.done).on(|| ListenerKind::onchange, told);
    el("li", "", [el("label", "step-item", [input.html(), el("span", "", [words])])])
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
