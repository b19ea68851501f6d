//! Figures for the pocket: single questions that need no house. What is typed here is scratch, never part of a document.

mod answer;
pub mod figures;
mod scratch;

#[cfg(test)]
mod tests;

pub use answer::{Answer, Usual, answer};
pub use scratch::Scratch;

use crate::entry::Limit;
use crate::house::{Display, HouseField};
use crate::quantity::{Kind, Unit};

/// A question of the pocket.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Ask {
    /// How fast is the air in a tube or duct, and what pressure does a metre take?
    #[default]
    Tube,
    /// How high a gap under a door?
    Door,
    /// How much air passes a valve, from the pressure at its tap?
    Valve,
    /// How wide a main?
    Main,
    /// What pressure at boost?
    Boost,
    /// How large a hole does a joist bear?
    Joist,
    /// What is a flow in other units?
    Convert,
}

impl Ask {
    /// All of them, in the order of the page.
    pub const ALL: [Self; 7] =
        [Self::Tube, Self::Door, Self::Valve, Self::Main, Self::Boost, Self::Joist, Self::Convert];

    /// What has to be typed.
    pub const fn slots(self) -> &'static [Slot] {
        match self {
            Self::Tube => &[Slot::TubeFlow, Slot::TubeBore],
            Self::Door => &[Slot::DoorFlow, Slot::DoorWidth],
            Self::Valve => &[Slot::ValveFactor, Slot::ValvePressure],
            Self::Main => &[Slot::MainFlow],
            Self::Boost => &[Slot::NormalPressure, Slot::NormalFlow, Slot::BoostFlow],
            Self::Joist => &[Slot::JoistDepth, Slot::JoistSpan, Slot::JoistClear],
            Self::Convert => &[Slot::AnyFlow],
        }
    }
}

/// One field of the pocket.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slot {
    /// Air in the tube.
    TubeFlow,
    /// Inside width of the tube; absent: the bore of the usual tube.
    TubeBore,
    /// Air that passes the closed door.
    DoorFlow,
    /// Width of the door; absent: the registered one.
    DoorWidth,
    /// k of the valve: its flow at 1 Pa.
    ValveFactor,
    /// Pressure at the tap of the valve.
    ValvePressure,
    /// Air in the main.
    MainFlow,
    /// Pressure at normal.
    NormalPressure,
    /// Air at normal.
    NormalFlow,
    /// Air at boost.
    BoostFlow,
    /// Depth of the joist.
    JoistDepth,
    /// Span of the joist from bearing to bearing; absent: no zone is given.
    JoistSpan,
    /// Clear distance between two joists; absent: no tubes are counted.
    JoistClear,
    /// A flow to convert.
    AnyFlow,
}

impl Slot {
    /// What is accepted. The bounds are ours: wide enough for any dwelling, no rule behind them.
    pub const fn limit(self) -> Limit {
        match self {
            Self::TubeBore => Limit::new((10.0, 1000.0), (40.0, 250.0), Unit::Millimetre),
            Self::DoorWidth => Limit::new((200.0, 3000.0), (500.0, 1200.0), Unit::Millimetre),
            Self::JoistDepth => HouseField::JoistDepth.limit(),
            Self::JoistSpan => HouseField::JoistSpan.limit(),
            Self::JoistClear => HouseField::JoistClear.limit(),
            Self::ValveFactor => Limit::new((0.01, 1000.0), (0.3, 60.0), Unit::CubicMetrePerHour),
            Self::ValvePressure | Self::NormalPressure => Limit::new((0.1, 2500.0), (1.0, 400.0), Unit::Pascal),
            Self::TubeFlow | Self::DoorFlow | Self::MainFlow | Self::NormalFlow | Self::BoostFlow | Self::AnyFlow => {
                Limit::new((0.1, 10_000.0), (1.0, 1500.0), Unit::CubicMetrePerHour)
            }
        }
    }

    /// The unit a bare number is taken in while these units are shown.
    pub const fn unit(self, display: Display) -> Unit {
        match self.limit().unit.kind() {
            Kind::Length if matches!(self, Self::JoistSpan) => display.length(),
            Kind::Flow => display.flow(),
            Kind::Length => display.small_length(),
            _ => self.limit().unit,
        }
    }

    /// The units its chips offer.
    pub const fn units(self) -> &'static [Unit] {
        match self.limit().unit.kind() {
            Kind::Flow => &[Unit::CubicMetrePerHour, Unit::LitrePerSecond, Unit::CubicFootPerMinute],
            Kind::Length if matches!(self, Self::JoistSpan) => &[Unit::Metre, Unit::Foot],
            Kind::Length => &[Unit::Millimetre, Unit::Inch],
            _ => &[Unit::Pascal, Unit::InchWater],
        }
    }
}
