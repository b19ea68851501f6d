//! Every field that can be typed into, and what it accepts.

use super::{Display, RoomId};
use crate::entry::Limit;
use crate::given::GivenId;
use crate::quantity::{Kind, Unit};

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

    /// What is accepted. The bounds are ours: wide enough for any dwelling, no rule behind them.
    pub const fn limit(self) -> Limit {
        match self {
            Self::FloorArea => Limit::new((5.0, 5000.0), (20.0, 600.0), Unit::SquareMetre),
            Self::Ceiling => HEIGHT,
            Self::Ach50 => Limit::new((0.02, 50.0), (0.1, 15.0), Unit::PerHour),
            Self::EnvelopeHeight => Limit::new((1.5, 60.0), (2.0, 15.0), Unit::Metre),
            Self::WeatherFactor => Limit::new((0.1, 2.0), (0.3, 1.1), Unit::Ratio),
            Self::RunTime => Limit::new((1.0, 100.0), (25.0, 100.0), Unit::Percent),
            Self::People => Limit::new((1.0, 100.0), (1.0, 12.0), Unit::Count),
        }
    }

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

    /// What is accepted. The bounds are ours: wide enough for any room, no rule behind them.
    pub const fn limit(self) -> Limit {
        match self {
            Self::Area => Limit::new((0.3, 2000.0), (0.8, 120.0), Unit::SquareMetre),
            Self::Length | Self::Width => Limit::new((0.3, 200.0), (0.6, 20.0), Unit::Metre),
            Self::Height => HEIGHT,
            Self::Sleepers => Limit::new((0.0, 20.0), (0.0, 4.0), Unit::Count),
            Self::SupplyRun | Self::ExtractRun => Limit::new((0.2, 200.0), (1.0, 20.0), Unit::Metre),
        }
    }

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

const HEIGHT: Limit = Limit::new((1.0, 20.0), (2.0, 4.0), Unit::Metre);

/// Most characters of a name that fit on a label. Longer names are kept, with a remark.
pub const NAME_FITS: usize = 40;

impl Field {
    /// What the field accepts; `None` for names, which accept any text.
    pub fn limit(self) -> Option<Limit> {
        match self {
            Self::HouseName | Self::RoomName(_) => None,
            Self::House(field) => Some(field.limit()),
            Self::Room(_, field) => Some(field.limit()),
            Self::Given(id) => Some(id.given().limit()),
        }
    }

    /// The unit a bare number is taken in while these units are shown.
    pub fn unit(self, display: Display) -> Unit {
        let own = self.limit().map_or(Unit::Ratio, |limit| limit.unit);
        match (self, own.kind()) {
            (Self::Given(_), _) => own,
            (_, Kind::Area) => display.area(),
            (_, Kind::Length) => display.length(),
            _ => own,
        }
    }

    /// The units its chips offer.
    pub fn units(self) -> &'static [Unit] {
        match self.limit().map(|limit| limit.unit.kind()) {
            Some(Kind::Area) => &[Unit::SquareMetre, Unit::SquareFoot],
            Some(Kind::Length) if matches!(self, Self::Given(_)) => &[Unit::Millimetre, Unit::Metre, Unit::Inch],
            Some(Kind::Length) => &[Unit::Metre, Unit::Foot, Unit::Inch],
            Some(Kind::Flow) => &[Unit::CubicMetrePerHour, Unit::LitrePerSecond, Unit::CubicFootPerMinute],
            Some(Kind::Velocity) => &[Unit::MetrePerSecond, Unit::FootPerMinute],
            _ => &[],
        }
    }
}
