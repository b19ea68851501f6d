//! The fan of a side: its curve at full speed, and how fast it must turn.

use crate::air::Air as Moist;
use crate::curve::{Points, over_flow};
use crate::given::{GivenId, Givens};
use crate::network::Fan;
use crate::quantity::{Flow, Pressure};

/// The fan of a side, both duties within its reach or not.
#[derive(Clone, Debug, PartialEq)]
pub struct Blower {
    /// Pressure outside the unit at full speed, in the air of the house.
    pub full: Fan,
    /// Whether its curve was typed; otherwise it is one that just has the reserve that is asked for.
    pub typed: bool,
    /// Speed at normal as a share of full speed; none where full speed is not enough.
    pub normal: Option<f64>,
    /// The same at boost.
    pub boost: Option<f64>,
    /// Whether boost leaves less reserve than is asked for.
    pub tight: bool,
}

impl Blower {
    /// The fan whose curve was typed, or a usual one for these duties.
    ///
    /// * Equation: a usual fan is `p = k·p* − (k − 1)·p*·(q/q*)²` with its largest duty `q* = q_boost/r`, `p* = p_boost/r²`
    /// * Source: similarity laws; r and k are registered, common practice
    pub(super) fn of(
        typed: Option<&Points>,
        normal: (Flow, Pressure),
        boost: (Flow, Pressure),
        givens: &Givens,
        air: Moist,
    ) -> Self {
        let full = match typed {
            Some(points) => Fan::Curve(over_flow(points)).at(1.0, air.density()),
            None => usual(boost, givens),
        };
        let turned = |(flow, pressure)| speed(&full, flow, pressure);
        let at_boost = turned(boost);
        let tight = at_boost.is_some_and(|speed| speed > givens.value(GivenId::UnitReserve) + CLOSE);
        Self { normal: turned(normal), boost: at_boost, tight, typed: typed.is_some(), full }
    }

    /// The fan at a share of full speed.
    pub fn turning(&self, speed: f64) -> Fan {
        self.full.at(speed, RATED)
    }

    /// What it gives at full speed at a flow.
    pub fn most(&self, flow: Flow) -> Pressure {
        self.full.pressure(flow).unwrap_or(Pressure::ZERO)
    }
}

fn usual((flow, pressure): (Flow, Pressure), givens: &Givens) -> Fan {
    let reserve = givens.value(GivenId::UnitReserve);
    let (q, p) = (flow.as_m3h() / reserve, pressure.as_pa() / (reserve * reserve));
    let shut = givens.value(GivenId::FanShut) * p;
    Fan::Formula { shut, linear: 0.0, square: if q > 0.0 { (shut - p) / (q * q) } else { 0.0 } }
}

/// The share of full speed at which a fan gives this pressure at this flow. Equation: `n²·p(q/n) = p`, solved by halving: it
/// rises with n.
fn speed(full: &Fan, flow: Flow, pressure: Pressure) -> Option<f64> {
    let gives = |speed: f64| full.at(speed, RATED).pressure(flow).unwrap_or(Pressure::ZERO);
    if gives(1.0) < pressure {
        return None;
    }
    let (mut low, mut high) = (SLOWEST, 1.0);
    for _ in 0..HALVINGS {
        let middle = (low + high) / 2.0;
        if gives(middle) < pressure { low = middle } else { high = middle }
    }
    Some(high)
}

/// The density that curves are already corrected to here: no second correction.
const RATED: f64 = 1.2;
/// A share of the speed that nobody can tell.
const CLOSE: f64 = 1e-6;
const SLOWEST: f64 = 0.02;
/// Far below a thousandth of the speed.
const HALVINGS: usize = 30;

#[cfg(test)]
mod tests {
    use super::*;

    fn fan() -> Fan {
        Fan::Formula { shut: 300.0, linear: 0.15, square: 0.0012 }
    }

    /// Handbook of physics, section 8: at 0.7 of its speed a fan on a quadratic system moves 0.7 of the air, 166 m³/h.
    #[test]
    fn the_speed_is_found_again() {
        let (flow, pressure) = (Flow::from_m3h(166.0), Pressure::from_pa(0.0035 * 166.0 * 166.0));
        let found = speed(&fan(), flow, pressure).unwrap();
        assert!((found - 0.7).abs() < 0.001, "{found}");
    }

    #[test]
    fn a_unit_that_is_too_weak_has_no_speed() {
        assert_eq!(speed(&fan(), Flow::from_m3h(237.0), Pressure::from_pa(260.0)), None);
    }

    #[test]
    fn a_usual_fan_has_the_reserve_that_is_asked_for() {
        let boost = (Flow::from_m3h(200.0), Pressure::from_pa(160.0));
        let normal = (Flow::from_m3h(150.0), Pressure::from_pa(90.0));
        let blower = Blower::of(None, normal, boost, &Givens::registered(), Moist::STANDARD);
        // Site handbook, section 3: boost is at most 80 % of the maximum; similarity makes that its speed.
        assert!((blower.boost.unwrap() - 0.8).abs() < 1e-6, "{blower:?}");
        assert!(blower.normal.unwrap() < 0.8 && !blower.typed);
    }
}
