//! Speed of air.

use super::{
    Unit,
    newtype::{amount, quantity},
};

/// Speed of air in a duct or at an opening.
///
/// Units: m/s inside.
///
/// Valid range: every finite number; what is sensible is checked where it is used.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Velocity(f64);

quantity!(Velocity, Unit::MetrePerSecond);
amount!(Velocity);

impl Velocity {
    /// Velocity from m/s.
    pub const fn from_ms(value: f64) -> Self {
        Self(value)
    }

    /// Velocity in m/s.
    pub const fn as_ms(self) -> f64 {
        self.0
    }

    /// Velocity from feet per minute.
    ///
    /// Equation: `m/s = ft/min · 0.3048 / 60`
    ///
    /// Source: the international foot of 1959, exact.
    ///
    /// ```
    /// use airtally::quantity::Velocity;
    ///
    /// assert_eq!(Velocity::from_fpm(500.0).as_ms(), 2.54);
    /// ```
    pub fn from_fpm(value: f64) -> Self {
        Self::from_unit(value, Unit::FootPerMinute)
    }

    /// Velocity in feet per minute: the way back from [`from_fpm`](Self::from_fpm).
    pub fn as_fpm(self) -> f64 {
        self.in_unit(Unit::FootPerMinute)
    }
}
