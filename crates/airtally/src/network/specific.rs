//! What it costs to move the air.

use super::law::{SECONDS_PER_HOUR, per_second};
use crate::quantity::{Flow, Pressure};

/// Electric power for each flow, for air of 1.2 kg/m³.
///
/// Units: W/(m³/s) inside.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct SpecificPower(f64);

impl SpecificPower {
    /// From the electric power of a fan or of a whole unit, W.
    ///
    /// * Equation: `SFP = P/Q`
    /// * Valid range: power from nought on, flow above nought; `None` otherwise
    /// * Source: EN 13779, 2007, definition 3.5
    ///
    /// ```
    /// use airtally::{network::SpecificPower, quantity::Flow};
    /// // Worked numbers of a handbook: 62 W for both fans at 210 m³/h.
    /// let power = SpecificPower::of(62.0, Flow::from_m3h(210.0)).unwrap();
    /// assert!((power.as_w_per_m3s() - 1062.9).abs() < 0.05 && (power.as_wh_per_m3() - 0.2952).abs() < 5e-5);
    /// ```
    pub fn of(watts: f64, flow: Flow) -> Option<Self> {
        Self::checked(watts / per_second(flow)).filter(|_| flow > Flow::ZERO)
    }

    /// From what a fan lifts and how well it does so, motor and control with it.
    ///
    /// * Equation: `SFP = Δp_t/η`
    /// * Valid range: pressure from nought on, 0 < η ≤ 1; `None` otherwise
    /// * Source: EN 13779, 2007, definition 3.5
    ///
    /// ```
    /// use airtally::{network::SpecificPower, quantity::Pressure};
    /// // Worked number of a handbook: 150 Pa at 45 %.
    /// let power = SpecificPower::lifting(Pressure::from_pa(150.0), 0.45).unwrap();
    /// assert!((power.as_w_per_m3s() - 333.3).abs() < 0.05);
    /// ```
    pub fn lifting(pressure: Pressure, efficiency: f64) -> Option<Self> {
        Self::checked(pressure.as_pa() / efficiency).filter(|_| efficiency > 0.0 && efficiency <= 1.0)
    }

    /// Both fans of a unit together, for the same air.
    pub fn and(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }

    fn checked(specific: f64) -> Option<Self> {
        (specific >= 0.0 && specific.is_finite()).then_some(Self(specific))
    }

    /// In W/(m³/s).
    pub const fn as_w_per_m3s(self) -> f64 {
        self.0
    }

    /// In Wh/m³, the same as W/(m³/h).
    pub const fn as_wh_per_m3(self) -> f64 {
        self.0 / SECONDS_PER_HOUR
    }

    /// The class of one fan, 1 is the thriftiest; `None` from 3000 W/(m³/s) on.
    ///
    /// * Valid range: one fan, not the sum of two
    /// * Source: EN 16798-3, as EN 13779 before it (from memory; classes 1 to 5)
    ///
    /// ```
    /// use airtally::{network::SpecificPower, quantity::Pressure};
    /// let class = |pa| SpecificPower::lifting(Pressure::from_pa(pa), 1.0).unwrap().class();
    /// assert_eq!([499.0, 500.0, 1000.0, 1250.0, 2999.0, 3000.0].map(class), [Some(1), Some(2), Some(3), Some(4), Some(5), None]);
    /// ```
    pub fn class(self) -> Option<u8> {
        CLASSES.into_iter().find(|(_, below)| self.0 < *below).map(|(class, _)| class)
    }
}

/// Each class with where the next one begins, W/(m³/s).
const CLASSES: [(u8, f64); 5] = [(1, 500.0), (2, 750.0), (3, 1250.0), (4, 2000.0), (5, 3000.0)];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nonsense_has_no_specific_power() {
        let nonsense = [(62.0, 0.0), (62.0, -210.0), (-62.0, -210.0), (-1.0, 210.0), (f64::NAN, 210.0), (0.0, 0.0)];
        for (watts, m3h) in nonsense {
            assert_eq!(SpecificPower::of(watts, Flow::from_m3h(m3h)), None, "{watts} W, {m3h} m³/h");
        }
        for (pa, efficiency) in [(150.0, 0.0), (150.0, 1.1), (-150.0, -0.5), (-1.0, 0.5)] {
            assert_eq!(SpecificPower::lifting(Pressure::from_pa(pa), efficiency), None, "{pa} Pa, {efficiency}");
        }
    }
}
