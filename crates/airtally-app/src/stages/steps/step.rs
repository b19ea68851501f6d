//! One step: its tick or lock, this house's numbers, the rule of thumb, the caution and who says so.

use crate::context::View;
use crate::desk::{Move, Topic};
use crate::parts::source::source_line;
use crate::platform::page as window;
use crate::ui::el::{button, el, els, maybe, nothing, tag, text};
use crate::ui::figure::{Size, figure, figure_button};
use crate::ui::icon::{Icon, icon};
use crate::ui::part::caution;
use airtally::edit::Edit;
use airtally::steps::{Number, Status, Step, StepKey};
use airtally::working::Origin;
use airtally_words::format::{self, Shown};
use airtally_words::page as say;
use airtally_words::step::{StepBook, number_name};
use web_sys::HtmlInputElement;
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// The row of a step.
pub fn item(view: &View, book: &StepBook, step: &Step) -> Html {
    let page = &view.page;
    let id = heading_id(&step.key);
    let title = book.title(step, &page.house, page.display());
    let lock = |words: String| el("p", "step-lock", [icon(Icon::Lock), el("span", "", [text(words)])]);
    let numbers = match step.numbers.is_empty() {
        true => nothing(),
        false => els("div", "step-numbers", step.numbers.iter().map(|one| number(view, one))),
    };
    let class = match step.status {
        Status::Done => "step is-done",
        Status::Open => "step",
        Status::LockedBy(_) => "step is-locked",
    };
    let body = el(
        "div",
        "step-body",
        [
            tag("h3", "step-do").attr("id", id.clone()).attr("tabindex", "-1").around([text(title)]),
            maybe(book.lock(step, &page.house).map(lock)),
            numbers,
            el("p", "step-rule", [text(book.rule(step.key.rule).to_owned())]),
            maybe(book.caution(step.key.rule).map(|words| caution(words.to_owned()))),
            source_line(step.source),
        ],
    );
    tag("li", class).key(id.clone()).around([tick(view, step, id), body])
}

fn tick(view: &View, step: &Step, heading: String) -> Html {
    if matches!(step.status, Status::LockedBy(_)) {
        return el("span", "step-tick", [icon(Icon::Lock)]);
    }
    let (key, hands) = (step.key, view.hands.clone());
    let told = Callback::from(move |event: Event| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            hands.edit(Edit::Tick(key, input.checked()));
        }
    });
    let input = tag("input", "tick").attr("type", "checkbox").attr("aria-labelledby", heading);
    let input = input.checked(step.status == Status::Done).on(ListenerKind::onchange, told);
    el("label", "step-tick", [input.html()])
}

fn number(view: &View, number: &Number) -> Html {
    let name = number_name(number.name);
    el("p", "step-number", [value(view, number, name), el("span", "soft", [text(name)])])
}

fn value(view: &View, number: &Number, name: &str) -> Html {
    let Some(value) = number.value else { return figure(format::DASH, say::TO_MEASURE, Size::Mid) };
    let shown: Shown = format::in_display(value, number.unit, view.page.display());
    match number.origin {
        Origin::Line(line) => view.figure(name, &shown, Size::Mid, line),
        Origin::Given(id) => {
            let pressed = view.hands.doing(move |hands| hands.make(Move::Explain(Topic::Given(id))));
            figure_button(name, &shown.number, shown.unit, Size::Mid, pressed)
        }
        Origin::Typed(_) | Origin::Counted | Origin::Printed(_) => figure(&shown.number, shown.unit, Size::Mid),
    }
}

/// A link to a step further down.
pub fn link(key: &StepKey, words: String) -> Html {
    let id = heading_id(key);
    let pressed = Callback::from(move |_: Event| {
        window::focus(&id);
    });
    button("as-link", pressed).around([el("b", "", [text(words)])])
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
