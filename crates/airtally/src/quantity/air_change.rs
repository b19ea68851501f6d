//! Room volumes per time.

use super::{
    Unit,
    newtype::{amount, quantity},
};

/// How many times an hour the air of a room or a house is replaced.
///
/// Units: 1/h inside.
///
/// Valid range: every finite number; what is sensible is checked where it is used.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct AirChange(f64);

quantity!(AirChange, Unit::PerHour);
amount!(AirChange);

impl AirChange {
    /// AirChange from 1/h.
    pub const fn from_per_hour(value: f64) -> Self {
        Self(value)
    }

    /// AirChange in 1/h.
    pub const fn as_per_hour(self) -> f64 {
        self.0
    }
}
