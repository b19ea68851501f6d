//! Steps: the checklist of this house in working order.

mod step;

use super::air::nothing_yet;
use crate::context::{Page, View};
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
    html! {
        <div class="spread">
            <div class="leaf">{ answer(page, steps) }{ leaf(left) }</div>
            <div class="leaf">{ leaf(right) }</div>
        </div>
    }
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
    html! {
        <header class="answer">
            <h1>{ say::ASK_STEPS }</h1>
            <p class="progress">{ tally(done, all, say::steps_done(done, all)) }<span>{ say::steps_done(done, all) }</span></p>
            if let Some(next) = next {
                <p>{ say::NEXT_STEP }{ " " }{ step::link(&next.key, words::title(next, &page.house, page.display())) }</p>
            } else if done == all {
                <p>{ say::STEPS_FINISHED }</p>
            }
            <p class="soft small">{ say::STEPS_DEFER }</p>
        </header>
    }
}

fn section(view: &View, phase: Phase, steps: &[&Step]) -> Html {
    let (done, all) = (done_of(steps.iter().copied()), steps.len() as u32);
    html! {
        <section class="phase part" key={phase as usize}>
            <div class="phase-head">
                <h2>{ words::phase(phase) }</h2>
                <span class="tallied">{ tally(done, all, say::steps_done(done, all)) }<span class="small soft">{ say::of(done, all) }</span></span>
            </div>
            <ol class="ledger steps">{ for steps.iter().map(|step| step::item(view, step)) }</ol>
        </section>
    }
}
