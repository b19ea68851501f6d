//! A valve or grille as a power of its flow.

use crate::power::power;
use crate::quantity::{Flow, Pressure};

/// `Δp = c·qⁿ`, q in m³/h and Δp in Pa.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PowerLaw {
    /// Pressure at 1 m³/h.
    pub scale: f64,
    /// 2 where only inertia counts.
    pub exponent: f64,
}

impl PowerLaw {
    /// The law nearest to measured points, on logarithmic paper.
    ///
    /// * Equation: least squares of `ln Δp = ln c + n·ln q`
    /// * Valid range: two points or more, flows and pressures above nought, not all flows the same; `None` otherwise
    /// * Source: definition; worked numbers from a public reference library
    ///
    /// ```
    /// use airtally::{duct::terminal::PowerLaw, quantity::{Flow, Pressure}};
    /// let points = [(20.0, 4.1), (30.0, 9.0), (40.0, 15.8), (50.0, 24.6)];
    /// let points = points.map(|(q, p)| (Flow::from_m3h(q), Pressure::from_pa(p)));
    /// let law = PowerLaw::through(&points).unwrap();
    /// assert!((law.exponent - 1.954).abs() < 5e-4 && (law.scale - 0.01172).abs() < 5e-6);
    /// assert!((law.pressure(Flow::from_m3h(25.0)).as_pa() - 6.324).abs() < 5e-4);
    /// ```
    pub fn through(points: &[(Flow, Pressure)]) -> Option<Self> {
        let count = points.len() as f64;
        let logs = || points.iter().map(|(q, p)| (libm::log(q.as_m3h()), libm::log(p.as_pa())));
        let sum = |part: fn((f64, f64)) -> f64| logs().map(part).sum::<f64>() / count;
        let (x, y) = (sum(|(x, _)| x), sum(|(_, y)| y));
        let (spread, together) =
            logs().fold((0.0, 0.0), |(s, t), (at, height)| (s + (at - x) * (at - x), t + (at - x) * (height - y)));
        let law = Self { exponent: together / spread, scale: libm::exp(y - together / spread * x) };
        (law.exponent > 0.0 && law.exponent.is_finite() && law.scale.is_finite() && law.scale > 0.0).then_some(law)
    }

    /// What each of so many side by side takes, by the flow of all. Equation: `c·(q/k)ⁿ`.
    pub fn shared_by(self, count: u32) -> Self {
        self.part(f64::from(count.max(1)))
    }

    /// An opening that lets this share of the air through at the same pressure. Equation: `c·(q/s)ⁿ`.
    pub fn part(self, share: f64) -> Self {
        Self { scale: self.scale * power(1.0 / share, self.exponent), ..self }
    }

    /// So many one behind the other.
    pub fn times(self, count: f64) -> Self {
        Self { scale: self.scale * count, ..self }
    }

    /// Pressure across the terminal.
    pub fn pressure(self, flow: Flow) -> Pressure {
        let q = flow.as_m3h();
        let size = self.scale * power(q.abs(), self.exponent);
        Pressure::from_pa(if q < 0.0 { -size } else { size })
    }
}
