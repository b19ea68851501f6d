//! What a duct loses through its own joints.

use crate::power::power;
use crate::quantity::{Area, Flow, Pressure};

/// Classes of tightness, from the least tight.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tightness {
    /// Class A.
    A,
    /// Class B.
    B,
    /// Class C.
    C,
    /// Class D.
    D,
}

impl Tightness {
    /// Every class.
    pub const ALL: [Self; 4] = [Self::A, Self::B, Self::C, Self::D];

    /// L/s for each m² of wall at 1 Pa. EN 12237 and EN 1507.
    const fn factor(self) -> f64 {
        match self {
            Self::A => 0.027,
            Self::B => 0.009,
            Self::C => 0.003,
            Self::D => 0.001,
        }
    }

    /// The same limit as a leakage class of American tests: cfm for each 100 ft² of wall at 1 inch of water.
    ///
    /// * Equation: `C_L = F / p^0.65`
    /// * Errors: classes there are 48, 24, 12, 6 and 3; what is given here lies between them. Inches of water of 60 °F; of 4 °C it
    ///   is 0.07 % more
    /// * Source: HVAC Air Duct Leakage Test Manual; units by definition
    ///
    /// ```
    /// use airtally::duct::leak::Tightness;
    /// // Worked number of a handbook table, for an inch of water of 4 °C.
    /// assert!((Tightness::C.american() / 2.132 - 1.0).abs() < 1e-3);
    /// ```
    pub fn american(self) -> f64 {
        self.leak(Area::from_ft2(100.0), Pressure::from_inwc(1.0)).as_cfm()
    }

    /// The most that a duct of this class may lose.
    ///
    /// * Equation: `q = K·A·p^0.65`
    /// * Units: L/s, m² of duct wall, Pa
    /// * Valid range: p ≥ 0, the mean gauge pressure
    /// * Errors: a limit, not a prediction: an untested hand-made system leaks 1 to 3 times class A
    /// * Source: EN 12237, EN 1507; the form and the list also in EN 16798-3:2017
    ///
    /// ```
    /// use airtally::{duct::leak::Tightness, quantity::{Area, Length, Pressure}};
    /// // Worked number of a handbook: 12 m of 160 mm in class B lose 3.899 m³/h at 100 Pa.
    /// let wall = Length::from_mm(160.0) * Length::from_m(12.0) * std::f64::consts::PI;
    /// assert!((Tightness::B.leak(wall, Pressure::from_pa(100.0)).as_m3h() - 3.899).abs() < 5e-4);
    /// ```
    pub fn leak(self, wall: Area, pressure: Pressure) -> Flow {
        Flow::from_ls(self.factor() * wall.as_m2() * power(pressure.as_pa(), EXPONENT))
    }
}

/// EN 12237.
pub const EXPONENT: f64 = 0.65;
