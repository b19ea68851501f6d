//! What drives the air.

use super::law::{SECONDS_PER_HOUR, Slope, per_second};
use crate::quantity::{Flow, Pressure};

/// A fan and how it is held.
#[derive(Clone, Debug, PartialEq)]
pub enum Fan {
    /// Held at a speed: its pressure falls as more flows. Points of its curve by rising flow, straight between, and on beyond
    /// the ends.
    Curve(Vec<(Flow, Pressure)>),
    /// Held at a speed: `p = p₀ − a·q − b·q²`, in Pa and m³/h.
    Formula {
        /// Pressure with everything shut.
        shut: f64,
        /// Pa for each m³/h.
        linear: f64,
        /// Pa for each (m³/h)².
        square: f64,
    },
    /// Held at a flow, whatever it takes.
    Steady(Flow),
}

impl Fan {
    /// The same fan at another speed and in other air.
    ///
    /// * Equation: `q ~ n`, `p ~ n²·ρ/1.2`
    /// * Valid range: speed above nought. A fan held at a flow stays as it is
    /// * Errors: exact only where the resistance grows with the square
    /// * Source: similarity laws, EN ISO 5801
    pub fn at(&self, speed: f64, density: f64) -> Self {
        let lift = speed * speed * density / RATED;
        match self {
            Self::Curve(points) => Self::Curve(points.iter().map(|(q, p)| (*q * speed, *p * lift)).collect()),
            Self::Formula { shut, linear, square } => {
                Self::Formula { shut: shut * lift, linear: linear * lift / speed, square: square * density / RATED }
            }
            Self::Steady(flow) => Self::Steady(*flow),
        }
    }

    /// Its pressure at a flow; none for a fan that is held at a flow.
    pub fn pressure(&self, flow: Flow) -> Option<Pressure> {
        (self.steady().is_none()).then(|| Pressure::from_pa(self.drive(per_second(flow)).pressure))
    }

    /// Whether its pressure falls, or stays, as more flows: only then there is one answer.
    pub(super) fn falls(&self) -> bool {
        match self {
            Self::Curve(points) => {
                let falls = |pair: &[(Flow, Pressure)]| pair[1].0 > pair[0].0 && pair[1].1 <= pair[0].1;
                let finite = points.iter().all(|(q, p)| q.is_finite() && p.is_finite());
                points.len() >= 2 && finite && points.windows(2).all(falls)
            }
            Self::Formula { shut, linear, square } => {
                *linear >= 0.0 && *square >= 0.0 && [shut, linear, square].iter().all(|number| number.is_finite())
            }
            Self::Steady(flow) => flow.is_finite(),
        }
    }

    /// The flow it is held at, m³/s.
    pub(super) fn steady(&self) -> Option<f64> {
        match self {
            Self::Steady(flow) => Some(per_second(*flow)),
            Self::Curve(_) | Self::Formula { .. } => None,
        }
    }

    /// Pressure and slope at a flow in m³/s.
    pub(super) fn drive(&self, flow: f64) -> Slope {
        let q = flow * SECONDS_PER_HOUR;
        let (pressure, slope) = match self {
            Self::Curve(points) => on_curve(points, q),
            Self::Formula { shut, linear, square } => {
                let square = if q > 0.0 { *square } else { 0.0 };
                (shut - (linear + square * q) * q, -linear - 2.0 * square * q)
            }
            Self::Steady(_) => (0.0, 0.0),
        };
        Slope { pressure, slope: slope * SECONDS_PER_HOUR }
    }
}

/// On the straight line between the two points around a flow, or the nearest two.
fn on_curve(points: &[(Flow, Pressure)], q: f64) -> (f64, f64) {
    let last = points.len().saturating_sub(1);
    let after = points.iter().position(|(at, _)| at.as_m3h() > q).unwrap_or(last).max(1);
    let (Some(a), Some(b)) = (points.get(after - 1), points.get(after)) else { return (0.0, 0.0) };
    let slope = (b.1 - a.1).as_pa() / (b.0 - a.0).as_m3h();
    (a.1.as_pa() + slope * (q - a.0.as_m3h()), slope)
}

/// Fan curves are printed for air of 1.2 kg/m³.
const RATED: f64 = 1.2;
