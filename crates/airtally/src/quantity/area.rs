//! Floor, duct section or opening.

use super::{
    Unit,
    newtype::{amount, quantity},
};

/// Area of a floor, a duct section or an opening.
///
/// Units: m² inside.
///
/// Valid range: every finite number; what is sensible is checked where it is used.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Area(f64);

quantity!(Area, Unit::SquareMetre);
amount!(Area);

impl Area {
    /// Area from m².
    pub const fn from_m2(value: f64) -> Self {
        Self(value)
    }

    /// Area in m².
    pub const fn as_m2(self) -> f64 {
        self.0
    }

    /// Area from square feet.
    ///
    /// Equation: `m² = ft² · 0.3048²`
    ///
    /// Source: the international foot of 1959, exact.
    ///
    /// ```
    /// use airtally::quantity::Area;
    ///
    /// assert_eq!(Area::from_ft2(1.0).as_m2(), 0.092_903_04);
    /// ```
    pub fn from_ft2(value: f64) -> Self {
        Self::from_unit(value, Unit::SquareFoot)
    }

    /// Area in square feet: the way back from [`from_ft2`](Self::from_ft2).
    pub fn as_ft2(self) -> f64 {
        self.in_unit(Unit::SquareFoot)
    }

    /// Area from cm².
    ///
    /// Equation: `m² = cm² / 10 000`
    ///
    /// Source: SI, exact.
    ///
    /// ```
    /// use airtally::quantity::Area;
    ///
    /// assert_eq!(Area::from_cm2(76.0).as_m2(), 0.0076);
    /// ```
    pub fn from_cm2(value: f64) -> Self {
        Self::from_unit(value, Unit::SquareCentimetre)
    }

    /// Area in cm²: the way back from [`from_cm2`](Self::from_cm2).
    pub fn as_cm2(self) -> f64 {
        self.in_unit(Unit::SquareCentimetre)
    }

    /// Area from mm².
    ///
    /// Equation: `m² = mm² / 1 000 000`
    ///
    /// Source: SI, exact.
    ///
    /// ```
    /// use airtally::quantity::Area;
    ///
    /// assert_eq!(Area::from_mm2(7600.0).as_m2(), 0.0076);
    /// ```
    pub fn from_mm2(value: f64) -> Self {
        Self::from_unit(value, Unit::SquareMillimetre)
    }

    /// Area in mm²: the way back from [`from_mm2`](Self::from_mm2).
    pub fn as_mm2(self) -> f64 {
        self.in_unit(Unit::SquareMillimetre)
    }
}
