//! Rooms, runs, bores, heights.

use super::{
    Unit,
    newtype::{amount, quantity},
};

/// Length, width, bore or height.
///
/// Units: m inside.
///
/// Valid range: every finite number; what is sensible is checked where it is used.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Length(f64);

quantity!(Length, Unit::Metre);
amount!(Length);

impl Length {
    /// Length from m.
    pub const fn from_m(value: f64) -> Self {
        Self(value)
    }

    /// Length in m.
    pub const fn as_m(self) -> f64 {
        self.0
    }

    /// Length from mm.
    ///
    /// Equation: `m = mm / 1000`
    ///
    /// Source: SI, exact.
    ///
    /// ```
    /// use airtally::quantity::Length;
    ///
    /// assert_eq!(Length::from_mm(75.0).as_m(), 0.075);
    /// ```
    pub fn from_mm(value: f64) -> Self {
        Self::from_unit(value, Unit::Millimetre)
    }

    /// Length in mm: the way back from [`from_mm`](Self::from_mm).
    pub fn as_mm(self) -> f64 {
        self.in_unit(Unit::Millimetre)
    }

    /// Length from cm.
    ///
    /// Equation: `m = cm / 100`
    ///
    /// Source: SI, exact.
    ///
    /// ```
    /// use airtally::quantity::Length;
    ///
    /// assert_eq!(Length::from_cm(240.0).as_m(), 2.4);
    /// ```
    pub fn from_cm(value: f64) -> Self {
        Self::from_unit(value, Unit::Centimetre)
    }

    /// Length in cm: the way back from [`from_cm`](Self::from_cm).
    pub fn as_cm(self) -> f64 {
        self.in_unit(Unit::Centimetre)
    }

    /// Length from feet.
    ///
    /// Equation: `m = ft · 0.3048`
    ///
    /// Source: the international foot of 1959, exact.
    ///
    /// ```
    /// use airtally::quantity::Length;
    ///
    /// assert_eq!(Length::from_ft(8.0).as_m(), 2.4384);
    /// ```
    pub fn from_ft(value: f64) -> Self {
        Self::from_unit(value, Unit::Foot)
    }

    /// Length in feet: the way back from [`from_ft`](Self::from_ft).
    pub fn as_ft(self) -> f64 {
        self.in_unit(Unit::Foot)
    }

    /// Length from inches.
    ///
    /// Equation: `m = in · 0.0254`
    ///
    /// Source: the international inch of 1959, exact.
    ///
    /// ```
    /// use airtally::quantity::Length;
    ///
    /// assert_eq!(Length::from_inch(3.0).as_m(), 0.0762);
    /// ```
    pub fn from_inch(value: f64) -> Self {
        Self::from_unit(value, Unit::Inch)
    }

    /// Length in inches: the way back from [`from_inch`](Self::from_inch).
    pub fn as_inch(self) -> f64 {
        self.in_unit(Unit::Inch)
    }
}
