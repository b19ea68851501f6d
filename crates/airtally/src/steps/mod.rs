//! The checklist of one house in working order. Ids, conditions and numbers here; the sentences in `airtally-words`.
//!
//! A step is made by a rule for the house, for a room, or for each run. It carries the numbers of this house, who says
//! so, and what keeps it locked. Ticks are keyed by rule, room, direction and thing on a list, so that they survive any edit.

mod asks;
mod checks;
mod commissioning;
mod finish;
mod insulation;
mod list;
mod lists;
mod locks;
mod making;
mod rough;
mod structure;
mod sums;
mod survey;
#[cfg(test)]
mod tests;

pub use crate::id::{Home, Item, Phase, StepKey, StepRule, Visit, Waits};
pub use asks::{Asks, asked_by};
pub use checks::Check;
pub use list::{Parts, list};
pub use lists::{Change, Listed, changes};
pub use sums::{bend_radius, grille_area, joist_depth, part_of_flow, trap_drop, trap_seal, unit_maximum, wall_core};

use crate::id::CheckRule;
use crate::on_site::Verdict;
use crate::quantity::Unit;
use crate::rules::Air;
use crate::source::Source;
use crate::working::Origin;

/// One step for this house.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What it is and what its tick belongs to.
    pub key: StepKey,
    /// This house's numbers, in the order in which the step's sentence uses them.
    pub numbers: Vec<Number>,
    /// The mark on the tubes, for steps about a run: manifold side and number.
    pub mark: Option<(Air, u32)>,
    /// Who says so.
    pub source: &'static Source,
    /// Whether it is ticked, open or locked.
    pub status: Status,
    /// What was found on site, with its verdict.
    pub checks: Vec<Check>,
    /// The list that it works through; it is done when all of that is ticked.
    pub list: Vec<Listed>,
}

impl Step {
    /// Whether it cannot be ticked: something on site is not as it must be, only a record makes it done, or nobody has yet
    /// found out whether the house may draw poisonous gas indoors.
    pub fn is_held(&self) -> bool {
        let stops = |check: &Check| match check.verdict {
            Verdict::Fails => true,
            Verdict::Unknown => check.rule == CheckRule::HousePressure,
            Verdict::Holds | Verdict::Excepted | Verdict::Designer => false,
        };
        self.is_recorded() || self.checks.iter().any(stops)
    }

    /// Whether its record shows that it is done.
    pub fn is_done_by_record(&self) -> bool {
        let (checks, list) = (&self.checks, &self.list);
        self.is_recorded() && checks.iter().all(|it| it.verdict == Verdict::Holds) && list.iter().all(|it| it.done)
    }

    /// Whether a record or a list makes it done, not a tick.
    pub fn is_recorded(&self) -> bool {
        self.key.rule == StepRule::LeakTest || !self.list.is_empty()
    }
}

/// A number of a step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Number {
    /// What it counts or measures.
    pub name: NumberName,
    /// Its value; `None` when something must be measured or typed first.
    pub value: Option<f64>,
    /// Unit of the value.
    pub unit: Unit,
    /// Where it comes from.
    pub origin: Origin,
}

/// What a number of a step counts or measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NumberName {
    /// Tubes.
    Tubes,
    /// Length to cut for each tube.
    CutLength,
    /// Ports with spares.
    Ports,
    /// Spare ports to cap.
    Spare,
    /// Air flow to set or to expect.
    Flow,
    /// A smallest or largest distance, height, size or spacing.
    Distance,
    /// A diameter of a hole or core.
    Diameter,
    /// A free area.
    Area,
    /// The least depth of a joist.
    JoistDepth,
    /// A length of a part.
    Length,
    /// Height where two tubes cross.
    Crossing,
    /// A thickness of insulation.
    Thickness,
    /// Below which a matt jacket sweats.
    SweatsMatt,
    /// Below which a jacket of bright foil sweats.
    SweatsBright,
    /// Below which a tube in the cold sweats inside.
    SweatsInside,
    /// Temperature of the outdoor air at the unit.
    Temperature,
    /// The drop of a trap.
    TrapDrop,
    /// The water seal of a trap.
    TrapSeal,
    /// A smallest bend radius.
    Radius,
    /// Most bends.
    Bends,
    /// A fall as a share of the length.
    Fall,
    /// A pressure.
    Pressure,
    /// A largest leak.
    Leak,
    /// A time to wait.
    Wait,
    /// An air speed.
    Speed,
    /// The largest air speed.
    SpeedLimit,
    /// Wind on the Beaufort scale.
    Wind,
    /// An allowed difference.
    Tolerance,
    /// Height of the gap under a door.
    Undercut,
    /// Months between checks.
    Months,
    /// What a check allows.
    Allowed,
    /// Rooms, doors or terminals.
    Count,
}

/// Whether a step can be done.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Status {
    /// Ticked.
    Done,
    /// Can be done now.
    Open,
    /// Locked until another step is ticked.
    LockedBy(StepKey),
}
