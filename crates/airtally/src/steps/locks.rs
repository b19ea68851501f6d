//! What keeps a step locked.
//!
//! One rule: a step is locked by the first step in working order that is not ticked and that it waits for, whether it
//! names it itself or a step it waits for does. A tick is a person's word and is never taken back: a ticked step stays
//! done when something it waits for is unticked, but what comes after it is locked again. A step that this house does
//! not have locks nothing. What was found on site is stronger than a tick: a step with a check that fails is not done,
//! the leak test is done by its record alone, and a step with a list when all of that is ticked.

use super::{Status, Step, StepKey, StepRule, Waits};
use std::collections::BinaryHeap;

/// Sets the status of every step. The steps are in working order.
pub(super) fn set(steps: &mut [Step], ticks: &[StepKey]) {
    // A heap sorts in a tenth of the code of a sort.
    let ticks = BinaryHeap::from(ticks.to_vec()).into_sorted_vec();
    let mut open: [Option<usize>; StepRule::ALL.len()] = [None; StepRule::ALL.len()];
    for (at, step) in steps.iter_mut().enumerate() {
        for it in &mut step.list {
            it.done = ticks.binary_search(&it.key).is_ok();
        }
        if step.is_done_by_record() || ticks.binary_search(&step.key).is_ok() && !step.is_held() {
            step.status = Status::Done;
        } else {
            open[step.key.rule as usize].get_or_insert(at);
        }
    }
    let blockers = blockers(&open);
    for at in 0..steps.len() {
        let blocker = blockers[steps[at].key.rule as usize].map(|blocker| steps[blocker].key);
        if let (Status::Open, Some(key)) = (steps[at].status, blocker) {
            steps[at].status = Status::LockedBy(key);
        }
    }
}

/// The first open step that each rule waits for, from the first open step of each rule.
fn blockers(open: &[Option<usize>; StepRule::ALL.len()]) -> [Option<usize>; StepRule::ALL.len()] {
    let mut blockers = [None; StepRule::ALL.len()];
    for rule in StepRule::ALL {
        for waits in rule.waits() {
            for other in StepRule::ALL.iter().filter(|other| waits.means(**other)) {
                let theirs = first(open[*other as usize], blockers[*other as usize]);
                blockers[rule as usize] = first(blockers[rule as usize], theirs);
            }
        }
    }
    blockers
}

impl Waits {
    fn means(self, rule: StepRule) -> bool {
        match self {
            Self::Step(step) => step == rule,
            Self::Phase(phase) => phase == rule.phase(),
        }
    }
}

fn first(one: Option<usize>, other: Option<usize>) -> Option<usize> {
    match (one, other) {
        (Some(one), Some(other)) => Some(one.min(other)),
        _ => one.or(other),
    }
}
