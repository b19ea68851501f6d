//! Rooms and houses.

use super::{
    Unit,
    newtype::{amount, quantity},
};

/// Volume of a room or a house.
///
/// Units: m³ inside.
///
/// Valid range: every finite number; what is sensible is checked where it is used.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Volume(f64);

quantity!(Volume, Unit::CubicMetre);
amount!(Volume);

impl Volume {
    /// Volume from m³.
    pub const fn from_m3(value: f64) -> Self {
        Self(value)
    }

    /// Volume in m³.
    pub const fn as_m3(self) -> f64 {
        self.0
    }

    /// Volume from cubic feet.
    ///
    /// Equation: `m³ = ft³ · 0.3048³`
    ///
    /// Source: the international foot of 1959, exact.
    ///
    /// ```
    /// use airtally::quantity::Volume;
    ///
    /// assert_eq!(Volume::from_ft3(1.0).as_m3(), 0.028_316_846_592);
    /// ```
    pub fn from_ft3(value: f64) -> Self {
        Self::from_unit(value, Unit::CubicFoot)
    }

    /// Volume in cubic feet: the way back from [`from_ft3`](Self::from_ft3).
    pub fn as_ft3(self) -> f64 {
        self.in_unit(Unit::CubicFoot)
    }
}
