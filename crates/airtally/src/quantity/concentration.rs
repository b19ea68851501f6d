//! Parts of a gas in air.

use super::{
    Unit,
    newtype::{amount, quantity},
};

/// Parts of a gas in a million parts of air, by volume.
///
/// Units: ppm inside.
///
/// Valid range: every finite number; what is sensible is checked where it is used.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Concentration(f64);

quantity!(Concentration, Unit::PartPerMillion);
amount!(Concentration);

impl Concentration {
    /// Concentration from ppm.
    pub const fn from_ppm(value: f64) -> Self {
        Self(value)
    }

    /// Concentration in ppm.
    pub const fn as_ppm(self) -> f64 {
        self.0
    }
}
