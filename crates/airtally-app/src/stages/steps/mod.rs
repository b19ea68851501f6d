//! Steps: the checklist of this house in working order.

mod step;

use super::air::nothing_yet;
use crate::context::{Page, View};
use crate::ui::el::{el, els, nothing, tag, text};
use crate::ui::tally::tally;
use airtally::steps::{Phase, Status, Step};
use airtally_words::{page as say, step as words};
use yew::prelude::*;

/// The screen.
pub fn steps(view: &View) -> Html {
    let page = &view.page;
    let steps = page.report.steps();
    if steps.is_empty() || page.house.rooms.is_empty() {
        return nothing_yet(say::ASK_STEPS);
    }
    let phases = phases(steps);
    let (left, right) = phases.split_at(phases.len().div_ceil(2));
    let leaf = |phases: &[(Phase, Vec<&Step>)]| -> Html {
        phases.iter().map(|(phase, steps)| section(view, *phase, steps)).collect()
    };
    let left = el("div", "leaf", [answer(page, steps), leaf(left)]);
    el("div", "spread", [left, el("div", "leaf", [leaf(right)])])
}

/// The phases there are, each with its steps, in working order.
fn phases(steps: &[Step]) -> Vec<(Phase, Vec<&Step>)> {
    let mut phases: Vec<(Phase, Vec<&Step>)> = Vec::new();
    for step in steps {
        let phase = step.key.rule.phase();
        match phases.iter_mut().find(|(known, _)| *known == phase) {
            Some((_, steps)) => steps.push(step),
            None => phases.push((phase, vec![step])),
        }
    }
    phases
}

fn done_of<'a>(steps: impl Iterator<Item = &'a Step>) -> u32 {
    steps.filter(|step| step.status == Status::Done).count() as u32
}

fn answer(page: &Page, steps: &[Step]) -> Html {
    let (done, all) = (done_of(steps.iter()), steps.len() as u32);
    let next = steps.iter().find(|step| step.status == Status::Open);
    let next = match next {
        Some(next) => {
            let link = step::link(&next.key, words::title(next, &page.house, page.display()));
            el("p", "", [text(say::NEXT_STEP), text(" "), link])
        }
        None if done == all => el("p", "", [text(say::STEPS_FINISHED)]),
        None => nothing(),
    };
    let words = say::steps_done(done, all);
    el(
        "header",
        "answer",
        [
            el("h1", "", [text(say::ASK_STEPS)]),
            el("p", "progress", [tally(done, all, words.clone()), el("span", "", [text(words)])]),
            next,
            el("p", "soft small", [text(say::STEPS_DEFER)]),
        ],
    )
}

fn section(view: &View, phase: Phase, steps: &[&Step]) -> Html {
    let (done, all) = (done_of(steps.iter().copied()), steps.len() as u32);
    let count = el("span", "small soft", [text(say::of(done, all))]);
    let count = el("span", "tallied", [tally(done, all, say::steps_done(done, all)), count]);
    let head = el("div", "phase-head", [el("h2", "", [text(words::phase(phase))]), count]);
    let list = els("ol", "ledger steps", steps.iter().map(|step| step::item(view, step)));
    tag("section", "phase part").key(phase as usize).around([head, list])
}
