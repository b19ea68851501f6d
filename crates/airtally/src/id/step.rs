//! Steps of the checklist by name: what ticks hang on.

mod order;
mod rule;

pub use rule::{Phase, StepRule, Visit, Waits};

use super::{Air, RoomId};

/// What a tick belongs to: a rule, and the room and direction it is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct StepKey {
    /// Which step.
    pub rule: StepRule,
    /// The room, for steps that every room has.
    pub room: Option<RoomId>,
    /// The direction, for steps that every run has.
    pub air: Option<Air>,
}

impl StepKey {
    /// A step of the whole house.
    pub const fn house(rule: StepRule) -> Self {
        Self { rule, room: None, air: None }
    }

    /// A step of one room.
    pub const fn room(rule: StepRule, room: RoomId) -> Self {
        Self { rule, room: Some(room), air: None }
    }

    /// A step of one side of the system.
    pub const fn side(rule: StepRule, air: Air) -> Self {
        Self { rule, room: None, air: Some(air) }
    }

    /// A step of one run.
    pub const fn run(rule: StepRule, room: RoomId, air: Air) -> Self {
        Self { rule, room: Some(room), air: Some(air) }
    }
}
