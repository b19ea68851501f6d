//! Pressure difference.

use super::{
    Unit,
    newtype::{amount, quantity},
};

/// Pressure difference: a loss, a lift, a reading across a house wall.
///
/// Units: Pa inside.
///
/// Valid range: every finite number; below 0 is a pressure the other way.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Pressure(f64);

quantity!(Pressure, Unit::Pascal);
amount!(Pressure);

impl Pressure {
    /// Pressure from Pa.
    pub const fn from_pa(value: f64) -> Self {
        Self(value)
    }

    /// Pressure in Pa.
    pub const fn as_pa(self) -> f64 {
        self.0
    }

    /// Pressure from inches of water.
    ///
    /// Equation: `Pa = in w.c. · 248.84`
    ///
    /// Source: convention, water at 60 °F; other conventions differ by up to 0.1 %.
    ///
    /// ```
    /// use airtally::quantity::Pressure;
    ///
    /// assert_eq!(Pressure::from_inwc(1.0).as_pa(), 248.84);
    /// ```
    pub fn from_inwc(value: f64) -> Self {
        Self::from_unit(value, Unit::InchWater)
    }

    /// Pressure in inches of water: the way back from [`from_inwc`](Self::from_inwc).
    pub fn as_inwc(self) -> f64 {
        self.in_unit(Unit::InchWater)
    }
}
