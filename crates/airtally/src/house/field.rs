//! What every field accepts, and the units it offers.

use super::Display;
use crate::entry::Limit;
use crate::id::{Air, Field, HouseField, RoomField};
use crate::quantity::{Kind, Unit};

impl HouseField {
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
            Self::JoistDepth => Limit::new((30.0, 1000.0), (90.0, 400.0), Unit::Millimetre),
            Self::JoistNotch | Self::StudNotch => Limit::new((0.0, 500.0), (3.0, 120.0), Unit::Millimetre),
            Self::JoistNotchAt => Limit::new((0.0, 10.0), (0.0, 3.5), Unit::Metre),
            Self::JoistNotchLength => Limit::new((0.0, 3000.0), (10.0, 300.0), Unit::Millimetre),
            Self::StudDepth => Limit::new((20.0, 500.0), (60.0, 250.0), Unit::Millimetre),
            Self::JoistSpan => Limit::new((0.3, 20.0), (1.0, 7.0), Unit::Metre),
            Self::JoistClear => Limit::new((50.0, 3000.0), (250.0, 800.0), Unit::Millimetre),
            Self::OtherFans | Self::LargestFans => Limit::new((0.0, 5000.0), (0.0, 1500.0), Unit::CubicMetrePerHour),
            Self::IntakeGround
            | Self::IntakeSource
            | Self::IntakeExhaust
            | Self::ExhaustOpening
            | Self::ExhaustBoundary
            | Self::ExhaustGround
            | Self::IntakeBoundary
            | Self::IntakeStreet
            | Self::DryerOpening => Limit::new((0.0, 200.0), (0.0, 50.0), Unit::Metre),
            Self::IntakeBelow | Self::ExhaustAbove | Self::ExhaustOver => {
                Limit::new((-50.0, 50.0), (-10.0, 10.0), Unit::Metre)
            }
            Self::LeakPressure => Limit::new((5.0, 2000.0), (50.0, 300.0), Unit::Pascal),
            Self::LeakSupply | Self::LeakExtract => Limit::new((0.0, 2000.0), (0.0, 100.0), Unit::CubicMetrePerHour),
        }
    }
}

impl RoomField {
    /// Where the legs of a room's run are typed.
    pub const fn legs(air: Air) -> Self {
        match air {
            Air::Supply => Self::SupplyRun,
            Air::Extract => Self::ExtractRun,
        }
    }

    /// What is accepted. The bounds are ours: wide enough for any room, no rule behind them.
    pub const fn limit(self) -> Limit {
        match self {
            Self::Area => Limit::new((0.3, 2000.0), (0.8, 120.0), Unit::SquareMetre),
            Self::Length | Self::Width => Limit::new((0.3, 200.0), (0.6, 20.0), Unit::Metre),
            Self::Height => HEIGHT,
            Self::Sleepers => Limit::new((0.0, 20.0), (0.0, 4.0), Unit::Count),
            Self::SupplyRun | Self::ExtractRun | Self::SupplyBuilt | Self::ExtractBuilt => {
                Limit::new((0.2, 200.0), (1.0, 20.0), Unit::Metre)
            }
            Self::SupplyTubes | Self::ExtractTubes => Limit::new((1.0, 50.0), (1.0, 8.0), Unit::Count),
        }
    }
}

const HEIGHT: Limit = Limit::new((1.0, 20.0), (2.0, 4.0), Unit::Metre);

/// Far beyond any part, and small enough for exact sums.
const MOST_PRICE: f64 = 1e7;

/// Most characters of a name that fit on a label. Longer names are kept, with a remark.
pub const NAME_FITS: usize = 40;

impl Field {
    /// What the field accepts; `None` for names, which accept any text, and for curves, which are more than one value.
    pub fn limit(self) -> Option<Limit> {
        match self {
            Self::HouseName | Self::RoomName(_) => None,
            Self::House(field) => Some(field.limit()),
            Self::Room(_, field) => Some(field.limit()),
            Self::Given(id) => Some(id.given().limit()),
            Self::Price(_) => Some(Limit::new((0.0, MOST_PRICE), (0.0, MOST_PRICE), Unit::Money)),
            Self::Curve(_) => None,
        }
    }

    /// Whether it may be a way of several legs, with bends.
    pub const fn has_legs(self) -> bool {
        matches!(self, Self::Room(_, RoomField::SupplyRun | RoomField::ExtractRun))
    }

    /// The unit a bare number is taken in while these units are shown.
    pub fn unit(self, display: Display) -> Unit {
        let own = self.limit().map_or(Unit::Ratio, |limit| limit.unit);
        match (self, own.kind()) {
            (Self::Given(_), _) => own,
            (Self::Curve(_), _) => display.flow(),
            (_, Kind::Area) => display.area(),
            (_, Kind::Length) if own == Unit::Millimetre => display.small_length(),
            (_, Kind::Length) => display.length(),
            (_, Kind::Flow) => display.flow(),
            _ => own,
        }
    }

    /// The units its chips offer.
    pub fn units(self) -> &'static [Unit] {
        let own = self.limit().map(|limit| limit.unit);
        let kind = if let Self::Curve(_) = self { Some(Kind::Flow) } else { own.map(Unit::kind) };
        match kind {
            Some(Kind::Area) if own == Some(Unit::SquareCentimetre) => &[Unit::SquareCentimetre, Unit::SquareInch],
            Some(Kind::Area) => &[Unit::SquareMetre, Unit::SquareFoot],
            Some(Kind::Length) if matches!(self, Self::Given(_)) => &[Unit::Millimetre, Unit::Metre, Unit::Inch],
            Some(Kind::Length) if own == Some(Unit::Millimetre) => &[Unit::Millimetre, Unit::Centimetre, Unit::Inch],
            Some(Kind::Length) => &[Unit::Metre, Unit::Foot, Unit::Inch],
            Some(Kind::Flow) => &[Unit::CubicMetrePerHour, Unit::LitrePerSecond, Unit::CubicFootPerMinute],
            Some(Kind::Velocity) => &[Unit::MetrePerSecond, Unit::FootPerMinute],
            _ => &[],
        }
    }
}
