//! One step: its tick or lock, this house's numbers, the rule of thumb, the caution and who says so.

use crate::context::View;
use crate::desk::{Move, Topic};
use crate::parts::source::source_line;
use crate::platform::page as window;
use crate::ui::figure::{Size, figure, figure_button};
use crate::ui::icon::{Icon, icon};
use crate::ui::part::caution;
use airtally::edit::Edit;
use airtally::steps::{Number, Status, Step, StepKey};
use airtally::working::Origin;
use airtally_words::format::{self, Shown};
use airtally_words::{page as say, step as words};
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The row of a step.
pub fn item(view: &View, step: &Step) -> Html {
    let page = &view.page;
    let id = heading_id(&step.key);
    let locked = matches!(step.status, Status::LockedBy(_));
    let done = step.status == Status::Done;
    let title = words::title(step, &page.house, page.display());
    html! {
        <li key={id.clone()} class={classes!("step", done.then_some("is-done"), locked.then_some("is-locked"))}>
            { tick(view, step, &id, locked) }
            <div class="step-body">
                <h3 class="step-do" id={id} tabindex="-1">{ title }</h3>
                if let Some(lock) = words::lock(step, &page.house) {
                    <p class="step-lock">{ icon(Icon::Lock) }<span>{ lock }</span></p>
                }
                if !step.numbers.is_empty() {
                    <div class="step-numbers">{ for step.numbers.iter().map(|one| number(view, one)) }</div>
                }
                <p class="step-rule">{ words::rule(step.key.rule) }</p>
                if let Some(words) = words::caution(step.key.rule) { { caution(words) } }
                { source_line(step.source) }
            </div>
        </li>
    }
}

fn tick(view: &View, step: &Step, heading: &str, locked: bool) -> Html {
    if locked {
        return html! { <span class="step-tick">{ icon(Icon::Lock) }</span> };
    }
    let (key, hands) = (step.key, view.hands.clone());
    let onchange = Callback::from(move |event: Event| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            hands.edit(Edit::Tick(key, input.checked()));
        }
    });
    html! {
        <label class="step-tick">
            <input class="tick" type="checkbox" aria-labelledby={heading.to_owned()} checked={step.status == Status::Done} {onchange} />
        </label>
    }
}

fn number(view: &View, number: &Number) -> Html {
    let name = words::number_name(number.name);
    html! { <p class="step-number">{ value(view, number, name) }<span class="soft">{ name }</span></p> }
}

fn value(view: &View, number: &Number, name: &str) -> Html {
    let Some(value) = number.value else { return figure(format::DASH, say::TO_MEASURE, Size::Mid) };
    let shown: Shown = format::in_display(value, number.unit, view.page.display());
    match number.origin {
        Origin::Line(line) => view.figure(name, &shown, Size::Mid, line),
        Origin::Given(id) => {
            let onclick = view.hands.doing(move |hands| hands.make(Move::Explain(Topic::Given(id))));
            figure_button(name, &shown.number, shown.unit, Size::Mid, onclick)
        }
        Origin::Typed(_) | Origin::Counted | Origin::Printed(_) => figure(&shown.number, shown.unit, Size::Mid),
    }
}

/// A link to a step further down.
pub fn link(key: &StepKey, words: String) -> Html {
    let id = heading_id(key);
    let onclick = Callback::from(move |_: MouseEvent| {
        window::focus(&id);
    });
    html! { <button type="button" class="as-link" {onclick}><b>{ words }</b></button> }
}

fn heading_id(key: &StepKey) -> String {
    let mut id = ["step-", key.rule.id()].concat();
    if let Some(room) = key.room {
        id.push('-');
        id.push_str(&room.0.to_string());
    }
    if let Some(air) = key.air {
        id.push('-');
        id.push_str(air.id());
    }
    id
}
