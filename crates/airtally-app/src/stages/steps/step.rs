//! One step: its tick or lock, this house's numbers, the rule of thumb, the caution and who says so.

use super::{found, lists};
use crate::context::{Hands, View};
use crate::desk::{InSight, Move, OPEN_STEP, OpenStep, Topic};
use crate::parts::source::source_line;
use crate::platform::page;
use crate::ui::el::{button, el, els, maybe, nothing, tag, text};
use crate::ui::figure::{Size, figure, figure_button};
use crate::ui::icon::{Icon, icon};
use crate::ui::part::caution;
use airtally::edit::Edit;
use airtally::steps::{Number, Status, Step, StepKey};
use airtally::working::Origin;
use airtally_words::book::Book;
use airtally_words::format::{self, Shown};
use airtally_words::page as say;
use airtally_words::step::number_name;
use web_sys::HtmlInputElement;
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// The row of a step: what to do, and when it is open how, with this house's numbers.
pub fn item(view: &View, book: &Book, step: &Step, next: Option<StepKey>) -> Html {
    let page = &view.page;
    let open = match view.desk.step {
        OpenStep::Next => next == Some(step.key),
        OpenStep::This(key) => key == step.key,
        OpenStep::None => false,
    };
    let whole = open || view.desk.paper;
    let id = heading_id(&step.key);
    let title = book.title(step, &page.house, page.display());
    let class = match (step.status, open) {
        (Status::Done, false) => "step is-done",
        (Status::Done, true) => "step is-done is-open",
        (Status::Open, false) => "step",
        (Status::Open, true) => "step is-open",
        (Status::LockedBy(_), false) => "step is-locked",
        (Status::LockedBy(_), true) => "step is-locked is-open",
    };
    let head = tag("h3", "step-do").attr("id", id.clone()).attr("tabindex", "-1");
    let body = [
        head.around([turn(view, (step.key, &id), open, title)]),
        found::checks(view, book, step, true),
        maybe(whole.then(|| el("div", "step-more", more(view, book, (step, open), next)))),
    ];
    let row = tag("li", class).key(id.clone()).attr_if("id", open.then_some(OPEN_STEP));
    row.around([tick(view, step, id), el("div", "step-body", body)])
}

/// How it is done, this house's numbers, what is asked on site, and who says so. A closed step has no fields, also on paper.
fn more(view: &View, book: &Book, (step, open): (&Step, bool), next: Option<StepKey>) -> [Html; 10] {
    let rule = book.rule(step.key.rule).to_owned();
    let lock = |words: String| el("p", "step-lock", [icon(Icon::Lock), el("span", "", [text(words)])]);
    [
        maybe(book.lock(step, &view.page.house).map(lock)),
        numbers(view, &step.numbers),
        el("p", "step-rule", [text(rule)]),
        lists::list(view, step),
        maybe(book.caution(step.key.rule).map(|words| caution(words.to_owned()))),
        source_line(step.source),
        if open { found::asks(view, step) } else { nothing() },
        found::checks(view, book, step, false),
        if open && step.is_done_by_record() { maybe(next.map(|next| way_on(view, next))) } else { nothing() },
        found::behind(view, step),
    ]
}

/// From a step that no tick closes.
fn way_on(view: &View, next: StepKey) -> Html {
    el("p", "", [link(view, next, say::NEXT_ONE.to_owned())])
}

/// The title, which opens and closes the row.
fn turn(view: &View, (key, id): (StepKey, &str), open: bool, title: String) -> Html {
    let other = if open { OpenStep::None } else { OpenStep::This(key) };
    let row = id.to_owned();
    let pressed = view.hands.doing(move |hands| press(hands, other, &row));
    let turn = button("step-turn", pressed).attr("aria-expanded", if open { "true" } else { "false" });
    let sign = icon(if open { Icon::Up } else { Icon::Down });
    turn.around([el("span", "", [text(title)]), sign])
}

fn tick(view: &View, step: &Step, heading: String) -> Html {
    if matches!(step.status, Status::LockedBy(_)) {
        return el("span", "step-tick", [icon(Icon::Lock)]);
    }
    if !step.list.is_empty() && step.status != Status::Done {
        let done = step.list.iter().filter(|it| it.done).count() as u32;
        return el("span", "step-tick small", [text(say::of(done, step.list.len() as u32))]);
    }
    if step.is_held() {
        let sign = if step.status == Status::Done { Icon::Fine } else { Icon::Caution };
        return el("span", "step-tick", [icon(sign), el("span", "aloud", [text(say::HELD)])]);
    }
    let (key, hands, row) = (step.key, view.hands.clone(), heading.clone());
    let told = Callback::from(move |event: Event| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            hands.edit(Edit::Tick(key, input.checked()));
            press(&hands, OpenStep::Next, &row);
        }
    });
    let input = tag("input", "tick").attr("type", "checkbox").attr("aria-labelledby", heading);
    let input = input.checked(step.status == Status::Done).on(|| ListenerKind::onchange, told);
    el("label", "step-tick", [input.html()])
}

/// Opens and closes while the pressed row stays under the thumb. Nothing is drawn anew before this has been done.
fn press(hands: &Hands, step: OpenStep, row: &str) {
    hands.make(Move::Press(step, row.to_owned(), page::top(row)));
}

/// Numbers with their names; those that were worked out open their working.
pub fn numbers(view: &View, numbers: &[Number]) -> Html {
    match numbers.is_empty() {
        true => nothing(),
        false => els("div", "step-numbers", numbers.iter().map(|one| number(view, one))),
    }
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
pub fn link(view: &View, key: StepKey, words: String) -> Html {
    let pressed = view.hands.doing(move |hands| {
        hands.make(Move::Show(InSight::default()));
        hands.make(Move::Step(OpenStep::This(key)));
        hands.make(Move::Aim(heading_id(&key)));
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
