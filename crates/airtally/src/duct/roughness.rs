//! How rough the inside of a duct is.

use crate::quantity::Length;
use crate::source::{PRACTICE, Source};

/// What a duct is made of, as far as the air feels it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Surface {
    /// Smooth plastic tube.
    Smooth,
    /// Semi-rigid tube of two walls with a smooth bore.
    TwoWalls,
    /// Spiral or seamed steel duct.
    Steel,
    /// Flexible duct with a wire, fully stretched.
    Flexible,
}

/// Published roughness of a surface: what is used, and the range it may lie in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Roughness {
    /// Used when nothing better is known.
    pub usual: Length,
    /// The smoothest that is published.
    pub low: Length,
    /// The roughest that is published.
    pub high: Length,
    /// Who says so.
    pub source: &'static Source,
}

static ASHRAE: Source = Source::published("ASHRAE Fundamentals", "2021", "chapter 21, table 1");
static WATER: Source = Source::memory("water practice", "", "smooth PE and PVC tube, 0.0015 to 0.007 mm");

impl Surface {
    /// Every surface.
    pub const ALL: [Self; 4] = [Self::Smooth, Self::TwoWalls, Self::Steel, Self::Flexible];

    /// Absolute roughness.
    ///
    /// * Units: mm
    /// * Errors: nobody has published a measurement of the 63 to 90 mm ventilation tube; from smooth to 0.5 mm the pressure of
    ///   a tube grows by 37 % at 30 m³/h. A measured curve of the tube at hand replaces it
    /// * Source: beside each value
    pub fn roughness(self) -> Roughness {
        let of = |usual: f64, low: f64, high: f64, source: &'static Source| Roughness {
            usual: Length::from_mm(usual),
            low: Length::from_mm(low),
            high: Length::from_mm(high),
            source,
        };
        match self {
            Self::Smooth => of(0.007, 0.0015, 0.045, &WATER),
            Self::TwoWalls => of(0.1, 0.0015, 0.5, &PRACTICE),
            Self::Steel => of(0.09, 0.049, 0.12, &ASHRAE),
            Self::Flexible => of(0.9, 0.09, 0.9, &ASHRAE),
        }
    }
}
