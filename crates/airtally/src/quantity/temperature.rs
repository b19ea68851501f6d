//! Temperature on a scale.

use super::{Unit, newtype::quantity};

/// Temperature on a scale. Two temperatures have a difference, never a sum.
///
/// Units: °C inside.
///
/// Valid range: every finite number; what is sensible is checked where it is used.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Temperature(f64);

quantity!(Temperature, Unit::Celsius);

impl Temperature {
    /// Temperature from °C.
    pub const fn from_celsius(value: f64) -> Self {
        Self(value)
    }

    /// Temperature in °C.
    pub const fn as_celsius(self) -> f64 {
        self.0
    }

    /// Temperature from °F.
    ///
    /// Equation: `°C = (°F − 32) · 5 / 9`
    ///
    /// Source: exact by definition.
    ///
    /// ```
    /// use airtally::quantity::Temperature;
    ///
    /// assert_eq!(Temperature::from_fahrenheit(68.0).as_celsius(), 20.0);
    /// ```
    pub fn from_fahrenheit(value: f64) -> Self {
        Self::from_unit(value, Unit::Fahrenheit)
    }

    /// Temperature in °F: the way back from [`from_fahrenheit`](Self::from_fahrenheit).
    pub fn as_fahrenheit(self) -> f64 {
        self.in_unit(Unit::Fahrenheit)
    }

    /// How much warmer this is than the other, in kelvins.
    ///
    /// ```
    /// use airtally::quantity::Temperature;
    ///
    /// assert_eq!(Temperature::from_celsius(21.0).kelvins_above(Temperature::from_celsius(-7.0)), 28.0);
    /// ```
    pub const fn kelvins_above(self, other: Self) -> f64 {
        self.0 - other.0
    }
}
