//! Every field that can be typed into.

use super::{Curve, GivenId, Part, RoomId};

/// One field of the document.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Field {
    /// The house's name: any text.
    HouseName,
    /// A room's name: any text.
    RoomName(RoomId),
    /// A value about the whole house.
    House(HouseField),
    /// A value about one room.
    Room(RoomId, RoomField),
    /// The person's own value in place of a registered one.
    Given(GivenId),
    /// What a part costs the person who builds it in: each, a metre or an hour.
    Price(Part),
    /// Points of a curve read off a sheet or measured.
    Curve(Curve),
}

/// Values about the whole house.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum HouseField {
    /// Floor area inside the air barrier; absent: the rooms together.
    FloorArea,
    /// Usual ceiling height.
    Ceiling,
    /// Air changes per hour at 50 Pa.
    Ach50,
    /// Vertical distance between the lowest and the highest above-grade points of the pressure boundary.
    EnvelopeHeight,
    /// Weather and shielding factor of the nearest station.
    WeatherFactor,
    /// Share of each 4-hour segment in which the system runs.
    RunTime,
    /// People; absent: the sleepers together.
    People,
    /// Depth of the joists that tubes must cross.
    JoistDepth,
    /// Free span of the joists.
    JoistSpan,
    /// Clear distance between two joists.
    JoistClear,
    /// Depth of a notch in a joist.
    JoistNotch,
    /// Distance of the notch from the nearest bearing.
    JoistNotchAt,
    /// Length of the notch along the joist.
    JoistNotchLength,
    /// Depth of the studs that tubes must cross.
    StudDepth,
    /// Depth of a notch in a stud.
    StudNotch,
    /// What cooker hood, dryer and other fans draw together.
    OtherFans,
    /// What the two largest of them draw together.
    LargestFans,
    /// Height of the intake above the ground or the usual snow.
    IntakeGround,
    /// Distance from the intake to the nearest vent, chimney, bin, street or parking place.
    IntakeSource,
    /// How far the intake lies below that source.
    IntakeBelow,
    /// Distance from the intake to this system's exhaust.
    IntakeExhaust,
    /// How far the exhaust lies above the intake.
    ExhaustAbove,
    /// Distance from the exhaust to the nearest window or door that opens.
    ExhaustOpening,
    /// How far the exhaust lies above the top of that window or door.
    ExhaustOver,
    /// Distance from the exhaust to the boundary of the plot.
    ExhaustBoundary,
    /// Height of the exhaust above the ground or the usual snow.
    ExhaustGround,
    /// Distance from the intake to the boundary of the plot, or to another building on it.
    IntakeBoundary,
    /// Level distance from the intake to the nearest street, alley, parking or loading place.
    IntakeStreet,
    /// Distance from the outlet of a clothes dryer to the nearest opening of the house.
    DryerOpening,
    /// Pressure of the leak test.
    LeakPressure,
    /// What leaked on the supply side.
    LeakSupply,
    /// What leaked on the extract side.
    LeakExtract,
}

/// Values about one room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum RoomField {
    /// Floor area.
    Area,
    /// Length.
    Length,
    /// Width.
    Width,
    /// Ceiling height, if it differs.
    Height,
    /// People who sleep here.
    Sleepers,
    /// Length of one supply tube from the manifold, as legs.
    SupplyRun,
    /// Length of one extract tube from the manifold, as legs.
    ExtractRun,
    /// Length of the supply tube as it was pulled.
    SupplyBuilt,
    /// Length of the extract tube as it was pulled.
    ExtractBuilt,
    /// Supply tubes as they were pulled.
    SupplyTubes,
    /// Extract tubes as they were pulled.
    ExtractTubes,
}

impl HouseField {
    /// All of them, in reading order.
    pub const ALL: [HouseField; 32] = [
        Self::FloorArea,
        Self::Ceiling,
        Self::People,
        Self::Ach50,
        Self::EnvelopeHeight,
        Self::WeatherFactor,
        Self::RunTime,
        Self::JoistDepth,
        Self::JoistSpan,
        Self::JoistClear,
        Self::JoistNotch,
        Self::JoistNotchAt,
        Self::JoistNotchLength,
        Self::StudDepth,
        Self::StudNotch,
        Self::OtherFans,
        Self::LargestFans,
        Self::IntakeGround,
        Self::IntakeSource,
        Self::IntakeBelow,
        Self::IntakeExhaust,
        Self::ExhaustAbove,
        Self::ExhaustOpening,
        Self::ExhaustOver,
        Self::ExhaustBoundary,
        Self::ExhaustGround,
        Self::IntakeBoundary,
        Self::IntakeStreet,
        Self::DryerOpening,
        Self::LeakPressure,
        Self::LeakSupply,
        Self::LeakExtract,
    ];

    /// Those of what is found on site: all from the joists on.
    pub const ON_SITE: &[HouseField] = Self::ALL.split_at(Self::JoistDepth as usize).1;

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::FloorArea => "floor-area",
            Self::Ceiling => "ceiling",
            Self::Ach50 => "ach50",
            Self::EnvelopeHeight => "envelope-height",
            Self::WeatherFactor => "weather-factor",
            Self::RunTime => "run-time",
            Self::People => "people",
            Self::JoistDepth => "joist-depth",
            Self::JoistSpan => "joist-span",
            Self::JoistClear => "joist-clear",
            Self::JoistNotch => "joist-notch",
            Self::JoistNotchAt => "joist-notch-at",
            Self::JoistNotchLength => "joist-notch-length",
            Self::StudDepth => "stud-depth",
            Self::StudNotch => "stud-notch",
            Self::OtherFans => "other-fans",
            Self::LargestFans => "largest-fans",
            Self::IntakeGround => "intake-ground",
            Self::IntakeSource => "intake-source",
            Self::IntakeBelow => "intake-below",
            Self::IntakeExhaust => "intake-exhaust",
            Self::ExhaustAbove => "exhaust-above",
            Self::ExhaustOpening => "exhaust-opening",
            Self::ExhaustOver => "exhaust-over",
            Self::ExhaustBoundary => "exhaust-boundary",
            Self::ExhaustGround => "exhaust-ground",
            Self::IntakeBoundary => "intake-boundary",
            Self::IntakeStreet => "intake-street",
            Self::DryerOpening => "dryer-opening",
            Self::LeakPressure => "leak-pressure",
            Self::LeakSupply => "leak-supply",
            Self::LeakExtract => "leak-extract",
        }
    }
}

impl RoomField {
    /// All of them, in reading order.
    pub const ALL: [RoomField; 11] = [
        Self::Area,
        Self::Length,
        Self::Width,
        Self::Height,
        Self::Sleepers,
        Self::SupplyRun,
        Self::ExtractRun,
        Self::SupplyBuilt,
        Self::ExtractBuilt,
        Self::SupplyTubes,
        Self::ExtractTubes,
    ];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Area => "area",
            Self::Length => "length",
            Self::Width => "width",
            Self::Height => "height",
            Self::Sleepers => "sleepers",
            Self::SupplyRun => "supply-run",
            Self::ExtractRun => "extract-run",
            Self::SupplyBuilt => "supply-built",
            Self::ExtractBuilt => "extract-built",
            Self::SupplyTubes => "supply-tubes",
            Self::ExtractTubes => "extract-tubes",
        }
    }
}
