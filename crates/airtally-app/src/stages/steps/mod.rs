//! Steps: the checklist of this house in working order.

mod filter;
mod found;
mod lists;
mod step;

use super::air::nothing_yet;
use crate::context::View;
use crate::parts::book::no_book;
use crate::ui::el::{el, els, nodes, nothing, tag, text};
use crate::ui::tally::tally;
use airtally::steps::{Phase, Status, Step};
use airtally_words::book::{Book, book};
use airtally_words::page as say;
use airtally_words::step::phase as phase_name;
use yew::prelude::*;

/// The screen.
pub fn steps(view: &View) -> Html {
    let page = &view.page;
    let steps = page.report.steps();
    if steps.is_empty() || page.house.rooms.is_empty() {
        return nothing_yet(say::ASK_STEPS);
    }
    let Some(book) = book() else {
        let head = [el("h1", "", [text(say::ASK_STEPS)]), no_book(view)];
        return el("div", "spread", [el("div", "leaf", [el("header", "answer", head)])]);
    };
    let seen: Vec<&Step> = steps.iter().filter(|step| filter::is_shown(step, view.desk.shown)).collect();
    let phases = phases(&seen);
    let (left, right) = phases.split_at(phases.len().div_ceil(2));
    let next = steps.iter().find(|step| step.status == Status::Open);
    let leaf = |phases: &[(Phase, Vec<&Step>)]| -> Html {
        phases.iter().map(|(phase, steps)| section(view, (book, next), *phase, steps)).collect()
    };
    let none = if seen.is_empty() { el("p", "", [text(say::NO_STEPS_HERE)]) } else { nothing() };
    let head = [answer(view, (book, next), steps), filter::filter(view, steps), none, leaf(left)];
    el("div", "spread", [el("div", "leaf", head), el("div", "leaf", [leaf(right), lists::change_log(view)])])
}

/// Nobody keeps more in mind at once (common practice for checklists).
const MOST_AT_A_STOP: usize = 9;

/// The phases there are, each with its steps, in working order.
fn phases<'a>(steps: &[&'a Step]) -> Vec<(Phase, Vec<&'a Step>)> {
    let mut phases: Vec<(Phase, Vec<&Step>)> = Vec::new();
    for step in steps.iter().copied() {
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

fn answer(view: &View, (book, next): (&Book, Option<&Step>), steps: &[Step]) -> Html {
    let page = &view.page;
    let (done, all) = (done_of(steps.iter()), steps.len() as u32);
    let next = match next {
        Some(next) => {
            let link = step::link(view, next.key, book.title(next, &page.house, page.display()));
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

fn section(view: &View, (book, next): (&Book, Option<&Step>), phase: Phase, steps: &[&Step]) -> Html {
    let (done, all) = (done_of(steps.iter().copied()), steps.len() as u32);
    let count = el("span", "small soft", [text(say::of(done, all))]);
    let count = el("span", "tallied", [tally(done, all, say::steps_done(done, all)), count]);
    let head = el("div", "phase-head", [el("h2", "", [text(phase_name(phase))]), count]);
    let next = next.map(|next| next.key);
    let stops = steps.chunks(MOST_AT_A_STOP);
    let count = stops.len();
    let lists = stops.enumerate().map(|(at, stop)| {
        let name = if count > 1 { el("p", "stop-name", [text(say::stop(at + 1, count))]) } else { nothing() };
        nodes([name, els("ol", "ledger steps", stop.iter().map(|step| step::item(view, book, step, next)))])
    });
    tag("section", "phase part").key(phase as usize).around([head, lists.collect()])
}
