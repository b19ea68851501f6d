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
