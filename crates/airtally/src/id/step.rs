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
    /// One thing of a step that works through a list.
    pub item: Option<Item>,
}

/// A thing on the list of a step; a room's own is named by the key it stands in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Item {
    /// The outdoor duct through the outside wall or roof.
    OutdoorDuct,
    /// The exhaust duct through the outside wall or roof.
    ExhaustDuct,
    /// Tubes through the floor of this storey.
    Floor(i8),
    /// The cable of a boost switch.
    BoostSwitch,
    /// The cable of a humidity sensor.
    HumiditySensor,
    /// The cable of the control panel.
    Panel,
    /// The cable of the isolator, with the supply.
    Isolator,
}

impl Item {
    /// One of each kind.
    pub const ALL: [Self; 7] = [
        Self::OutdoorDuct,
        Self::ExhaustDuct,
        Self::Floor(0),
        Self::BoostSwitch,
        Self::HumiditySensor,
        Self::Panel,
        Self::Isolator,
    ];

    /// Id in files. The storey of a floor is written beside it.
    pub const fn id(self) -> &'static str {
        match self {
            Self::OutdoorDuct => "outdoor-duct",
            Self::ExhaustDuct => "exhaust-duct",
            Self::Floor(_) => "floor",
            Self::BoostSwitch => "boost-switch",
            Self::HumiditySensor => "humidity-sensor",
            Self::Panel => "panel",
            Self::Isolator => "isolator",
        }
    }
}

impl StepKey {
    /// A step of the whole house.
    pub const fn house(rule: StepRule) -> Self {
        Self { rule, room: None, air: None, item: None }
    }

    /// A step of one room.
    pub const fn room(rule: StepRule, room: RoomId) -> Self {
        Self { rule, room: Some(room), air: None, item: None }
    }

    /// A step of one side of the system.
    pub const fn side(rule: StepRule, air: Air) -> Self {
        Self { rule, room: None, air: Some(air), item: None }
    }

    /// A step of one run.
    pub const fn run(rule: StepRule, room: RoomId, air: Air) -> Self {
        Self { rule, room: Some(room), air: Some(air), item: None }
    }

    /// A thing on the list of this step.
    pub const fn with(self, item: Item) -> Self {
        Self { item: Some(item), ..self }
    }
}
