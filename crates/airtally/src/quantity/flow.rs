//! Air per time.

use super::{
    Unit,
    newtype::{amount, quantity},
};

/// Volume of air per time.
///
/// Units: m³/h inside.
///
/// Valid range: every finite number; what is sensible is checked where it is used.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Flow(f64);

quantity!(Flow, Unit::CubicMetrePerHour);
amount!(Flow);

impl Flow {
    /// Flow from m³/h.
    pub const fn from_m3h(value: f64) -> Self {
        Self(value)
    }

    /// Flow in m³/h.
    pub const fn as_m3h(self) -> f64 {
        self.0
    }

    /// Flow from L/s.
    ///
    /// Equation: `m³/h = L/s · 3.6`
    ///
    /// Source: SI, exact.
    ///
    /// ```
    /// use airtally::quantity::Flow;
    ///
    /// assert_eq!(Flow::from_ls(10.0).as_m3h(), 36.0);
    /// ```
    pub fn from_ls(value: f64) -> Self {
        Self::from_unit(value, Unit::LitrePerSecond)
    }

    /// Flow in L/s: the way back from [`from_ls`](Self::from_ls).
    pub fn as_ls(self) -> f64 {
        self.in_unit(Unit::LitrePerSecond)
    }

    /// Flow from cubic feet per minute.
    ///
    /// Equation: `m³/h = cfm · 60 · 0.3048³`
    ///
    /// Source: the international foot of 1959, exact.
    ///
    /// ```
    /// use airtally::quantity::Flow;
    ///
    /// assert_eq!(Flow::from_cfm(1.0).as_m3h(), 1.699_010_795_52);
    /// ```
    pub fn from_cfm(value: f64) -> Self {
        Self::from_unit(value, Unit::CubicFootPerMinute)
    }

    /// Flow in cubic feet per minute: the way back from [`from_cfm`](Self::from_cfm).
    pub fn as_cfm(self) -> f64 {
        self.in_unit(Unit::CubicFootPerMinute)
    }

    /// Flow from L/h.
    ///
    /// Equation: `m³/h = L/h / 1000`
    ///
    /// Source: SI, exact.
    ///
    /// ```
    /// use airtally::quantity::Flow;
    ///
    /// assert_eq!(Flow::from_lh(20.0).as_m3h(), 0.02);
    /// ```
    pub fn from_lh(value: f64) -> Self {
        Self::from_unit(value, Unit::LitrePerHour)
    }

    /// Flow in L/h: the way back from [`from_lh`](Self::from_lh).
    pub fn as_lh(self) -> f64 {
        self.in_unit(Unit::LitrePerHour)
    }
}
