//! What is checked against what was found on site.

/// A question with a verdict.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum CheckRule {
    /// Pressure of the house in the worst case, beside an open flue.
    HousePressure,
    /// What the two largest exhaust fans draw beside an open flue.
    FanDraw,
    /// Whether a joist bears the hole of a tube.
    JoistHole,
    /// How many tubes lie between two joists.
    JoistBay,
    /// Whether a joist bears the depth of a notch where it is.
    JoistNotch,
    /// Whether a joist bears the length of a notch.
    JoistNotchLength,
    /// Whether a stud bears the hole of a tube.
    StudHole,
    /// Whether a stud bears a notch.
    StudNotch,
    /// Height of the intake.
    IntakeGround,
    /// Distance of the intake from what fouls the air.
    IntakeSource,
    /// Distance of the intake from the exhaust.
    IntakeExhaust,
    /// Distance of the exhaust from windows and doors.
    ExhaustOpening,
    /// Distance of the exhaust from the boundary.
    ExhaustBoundary,
    /// Height of the exhaust.
    ExhaustGround,
    /// Distance of the intake from the boundary and from other buildings.
    IntakeBoundary,
    /// Distance of the intake from streets and parking.
    IntakeStreet,
    /// Distance of a dryer's outlet from openings.
    DryerOpening,
    /// A run as it was pulled.
    Built,
    /// Leaks on the supply side.
    LeakSupply,
    /// Leaks on the extract side.
    LeakExtract,
}

impl CheckRule {
    /// All of them, in working order.
    pub const ALL: [Self; 20] = [
        Self::HousePressure,
        Self::FanDraw,
        Self::JoistHole,
        Self::JoistBay,
        Self::JoistNotch,
        Self::JoistNotchLength,
        Self::StudHole,
        Self::StudNotch,
        Self::IntakeGround,
        Self::IntakeSource,
        Self::IntakeExhaust,
        Self::ExhaustOpening,
        Self::ExhaustBoundary,
        Self::ExhaustGround,
        Self::IntakeBoundary,
        Self::IntakeStreet,
        Self::DryerOpening,
        Self::Built,
        Self::LeakSupply,
        Self::LeakExtract,
    ];

    /// A stable id for texts.
    pub const fn id(self) -> &'static str {
        match self {
            Self::HousePressure => "house-pressure",
            Self::FanDraw => "fan-draw",
            Self::JoistHole => "joist-hole",
            Self::JoistBay => "joist-bay",
            Self::JoistNotch => "joist-notch",
            Self::JoistNotchLength => "joist-notch-length",
            Self::StudHole => "stud-hole",
            Self::StudNotch => "stud-notch",
            Self::IntakeGround => "intake-ground",
            Self::IntakeSource => "intake-source",
            Self::IntakeExhaust => "intake-exhaust",
            Self::ExhaustOpening => "exhaust-opening",
            Self::ExhaustBoundary => "exhaust-boundary",
            Self::ExhaustGround => "exhaust-ground",
            Self::IntakeBoundary => "intake-boundary",
            Self::IntakeStreet => "intake-street",
            Self::DryerOpening => "dryer-opening",
            Self::Built => "built",
            Self::LeakSupply => "leak-supply",
            Self::LeakExtract => "leak-extract",
        }
    }
}
