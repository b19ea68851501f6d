//! Every field that can be typed into.

use super::{GivenId, RoomId};

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
}

impl HouseField {
    /// All of them, in reading order.
    pub const ALL: [HouseField; 7] = [
        Self::FloorArea,
        Self::Ceiling,
        Self::People,
        Self::Ach50,
        Self::EnvelopeHeight,
        Self::WeatherFactor,
        Self::RunTime,
    ];

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
        }
    }
}

impl RoomField {
    /// All of them, in reading order.
    pub const ALL: [RoomField; 7] =
        [Self::Area, Self::Length, Self::Width, Self::Height, Self::Sleepers, Self::SupplyRun, Self::ExtractRun];

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
        }
    }
}
