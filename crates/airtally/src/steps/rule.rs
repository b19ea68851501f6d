//! The steps there are, by phase.

/// A phase of the work, in working order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Phase {
    /// Before you start.
    Before,
    /// Set out.
    SetOut,
    /// Drill.
    Drill,
    /// Pull the tubes.
    Pull,
    /// Fix unit and manifolds.
    Fix,
    /// Connect.
    Connect,
    /// Seal and test.
    Seal,
    /// Insulate.
    Insulate,
    /// Drain.
    Drain,
    /// Cap and protect.
    Protect,
    /// Before power.
    PreCheck,
    /// Power.
    Power,
    /// Measure.
    Measure,
    /// Hand over.
    HandOver,
}

/// A kind of step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum StepRule {
    /// Pull this run's tubes.
    PullTubes,
}

impl StepRule {
    /// All of them, in working order.
    pub const ALL: [Self; 1] = [Self::PullTubes];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::PullTubes => "pull-tubes",
        }
    }

    /// The phase it belongs to.
    pub const fn phase(self) -> Phase {
        match self {
            Self::PullTubes => Phase::Pull,
        }
    }
}
