//! The inside of a tube or duct: round, flat oval, rectangular.

use crate::power::power;
use crate::quantity::{Area, Length};

/// The clear inside of a duct. Outside sizes have no place here: "75" is a tube with a bore of about 63 mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Section {
    /// A circle of this bore.
    Round(Length),
    /// Two half circles and a rectangle between.
    Oval {
        /// The longer side.
        wide: Length,
        /// The shorter side.
        high: Length,
    },
    /// A rectangle.
    Rectangle {
        /// One side.
        wide: Length,
        /// The other.
        high: Length,
    },
}

impl Section {
    /// Clear area.
    ///
    /// * Equation: round `π·d²/4`, oval `π·a²/4 + a·(B − a)`, rectangle `a·b`
    /// * Source: geometry
    ///
    /// ```
    /// use airtally::{duct::section::Section, quantity::Length};
    /// let oval = Section::Oval { wide: Length::from_mm(130.0), high: Length::from_mm(45.0) };
    /// // Worked number of a handbook table: 5415.4 mm².
    /// assert!((oval.area().as_m2() * 1e6 - 5415.4).abs() < 0.05);
    /// ```
    pub fn area(self) -> Area {
        match self {
            Self::Round(bore) => bore.section(),
            Self::Oval { wide, high } => high.section() + high * (wide - high),
            Self::Rectangle { wide, high } => wide * high,
        }
    }

    /// Length of the wall around it.
    pub fn perimeter(self) -> Length {
        match self {
            Self::Round(bore) => bore * std::f64::consts::PI,
            Self::Oval { wide, high } => high * std::f64::consts::PI + (wide - high) * 2.0,
            Self::Rectangle { wide, high } => (wide + high) * 2.0,
        }
    }

    /// The bore that counts for friction, with the true speed of the section.
    ///
    /// * Equation: `d_h = 4·A / P`
    /// * Errors: equal-friction diameters of tables are unsupported by later work (Koch 2008) and are not used
    /// * Source: definition
    ///
    /// ```
    /// use airtally::{duct::section::Section, quantity::Length};
    /// let oval = Section::Oval { wide: Length::from_mm(102.0), high: Length::from_mm(49.0) };
    /// // Worked number of a handbook table: 68.98 mm.
    /// assert!((oval.hydraulic_bore().as_mm() - 68.98).abs() < 0.005);
    /// ```
    pub fn hydraulic_bore(self) -> Length {
        match self {
            Self::Round(bore) => bore,
            Self::Oval { .. } | Self::Rectangle { .. } => {
                Length::from_m(4.0 * self.area().as_m2() / self.perimeter().as_m())
            }
        }
    }

    /// The round duct that tables of equal friction put beside it, at the same flow. For telling and choosing only: losses are
    /// calculated from [`Section::hydraulic_bore`].
    ///
    /// * Equation: rectangle `D_e = 1.30·(a·b)^0.625 / (a + b)^0.25`, oval `D_e = 1.55·A^0.625 / P^0.25`
    /// * Errors: later work (Koch 2008) finds both unsupported; within 3 % of the pressure for the flat ovals of houses
    /// * Source: Huebscher 1948 for rectangles, Heyt and Diaz 1975 for flat ovals
    ///
    /// ```
    /// use airtally::{duct::section::Section, quantity::Length};
    /// let flat = Section::Rectangle { wide: Length::from_mm(200.0), high: Length::from_mm(100.0) };
    /// // Worked number of a handbook: 152.3 mm.
    /// assert!((flat.equal_round().as_mm() - 152.3).abs() < 0.05);
    /// ```
    pub fn equal_round(self) -> Length {
        let area = self.area().as_m2();
        match self {
            Self::Round(bore) => bore,
            Self::Oval { .. } => Length::from_m(1.55 * power(area, 0.625) / power(self.perimeter().as_m(), 0.25)),
            Self::Rectangle { wide, high } => {
                Length::from_m(1.30 * power(area, 0.625) / power((wide + high).as_m(), 0.25))
            }
        }
    }

    /// Whether it has an inside at all: sides above nought, an oval at least as wide as high.
    pub fn is_open(self) -> bool {
        match self {
            Self::Round(bore) => bore > Length::ZERO && bore.is_finite(),
            Self::Oval { wide, high } => high > Length::ZERO && wide >= high && wide.is_finite(),
            Self::Rectangle { wide, high } => {
                wide > Length::ZERO && high > Length::ZERO && (wide * high).as_m2().is_finite()
            }
        }
    }
}
