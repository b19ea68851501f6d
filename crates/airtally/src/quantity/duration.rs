//! Time that passes.

use super::{
    Unit,
    newtype::{amount, quantity},
};

/// Time that passes.
///
/// Units: h inside.
///
/// Valid range: every finite number; what is sensible is checked where it is used.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Duration(f64);

quantity!(Duration, Unit::Hour);
amount!(Duration);

impl Duration {
    /// Duration from hours.
    pub const fn from_hours(value: f64) -> Self {
        Self(value)
    }

    /// Duration in hours.
    pub const fn as_hours(self) -> f64 {
        self.0
    }

    /// Duration from minutes.
    ///
    /// Equation: `h = min / 60`
    ///
    /// Source: exact.
    ///
    /// ```
    /// use airtally::quantity::Duration;
    ///
    /// assert_eq!(Duration::from_minutes(90.0).as_hours(), 1.5);
    /// ```
    pub fn from_minutes(value: f64) -> Self {
        Self::from_unit(value, Unit::Minute)
    }

    /// Duration in minutes: the way back from [`from_minutes`](Self::from_minutes).
    pub fn as_minutes(self) -> f64 {
        self.in_unit(Unit::Minute)
    }

    /// Duration from seconds.
    ///
    /// Equation: `h = s / 3600`
    ///
    /// Source: exact.
    ///
    /// ```
    /// use airtally::quantity::Duration;
    ///
    /// assert_eq!(Duration::from_seconds(5400.0).as_hours(), 1.5);
    /// ```
    pub fn from_seconds(value: f64) -> Self {
        Self::from_unit(value, Unit::Second)
    }

    /// Duration in seconds: the way back from [`from_seconds`](Self::from_seconds).
    pub fn as_seconds(self) -> f64 {
        self.in_unit(Unit::Second)
    }
}
