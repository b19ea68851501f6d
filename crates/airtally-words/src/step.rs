//! The checklist in sentences.

mod fill;
mod lists;
mod sentence;

#[cfg(test)]
mod tests;

pub use lists::{change, listed};
pub use sentence::{mark, marks};

use airtally::steps::{NumberName, Phase, Visit};

/// A phase of the work.
pub const fn phase(phase: Phase) -> &'static str {
    match phase {
        Phase::Before => "Before you start",
        Phase::SetOut => "Set out",
        Phase::Drill => "Drill",
        Phase::Pull => "Pull the tubes",
        Phase::Fix => "Fix unit and manifolds",
        Phase::Connect => "Connect",
        Phase::Seal => "Seal and test",
        Phase::Insulate => "Insulate",
        Phase::Drain => "Drain",
        Phase::Protect => "Close up and cap",
        Phase::PreCheck => "Check before power",
        Phase::Power => "Power",
        Phase::Measure => "Measure",
        Phase::HandOver => "Hand over",
    }
}

/// A visit to the site.
pub const fn visit(visit: Visit) -> &'static str {
    match visit {
        Visit::Survey => "Visit 1: look and set out",
        Visit::FirstFix => "Visit 2: before the board",
        Visit::StartUp => "Visit 3: ready and start",
        Visit::Measuring => "Visit 4: measure, hand over",
    }
}

/// What a number of a step counts or measures.
pub const fn number_name(name: NumberName) -> &'static str {
    use NumberName as N;
    match name {
        N::Tubes => "Tubes",
        N::CutLength => "Length to cut for each tube",
        N::Ports => "Ports with spares",
        N::Spare => "Spare ports to cap",
        N::Flow => "Air flow",
        N::Distance => "Distance",
        N::Diameter => "Diameter",
        N::Area => "Free area",
        N::JoistDepth => "Least depth of the joist",
        N::Length => "Length",
        N::Crossing => "Height where two tubes cross",
        N::Thickness => "Thickness of insulation",
        N::SweatsMatt => "A matt jacket sweats below",
        N::SweatsBright => "Bright foil sweats below",
        N::SweatsInside => "A tube in a cold loft sweats inside below",
        N::Temperature => "Outdoor air at the unit",
        N::TrapDrop => "Drop of the trap",
        N::TrapSeal => "Water seal of the trap",
        N::Radius => "Smallest bend radius",
        N::Bends => "Most right-angle bends of a run",
        N::Fall => "Fall",
        N::Pressure => "Pressure",
        N::Leak => "Largest leak",
        N::Wait => "Time",
        N::Speed => "Air speed",
        N::SpeedLimit => "Largest air speed",
        N::Wind => "Strongest wind, Beaufort",
        N::Tolerance => "Allowed difference",
        N::Undercut => "Gap under the door",
        N::Months => "Months between checks",
        N::Allowed => "Allowed",
        N::Count => "Number",
    }
}
