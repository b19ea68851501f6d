//! What the house is drawn to, and what leaks through tubes.

use crate::power::power;
use crate::quantity::{Flow, Pressure};

/// The usual exponent of leaks.
const EXPONENT: f64 = 0.65;
/// The pressure of the blower-door test.
const TEST_PA: f64 = 50.0;
/// The pressure in tubes at normal, about.
const TUBE_PA: f64 = 30.0;

/// The pressure at which a house lets as much in as is drawn out of it and not replaced.
///
/// * Equation: `Δp = 50·(Q/Q_50)^(1/0.65)`
/// * Units: Δp Pa; Q and Q_50 alike
/// * Valid range: Q ≥ 0, Q_50 > 0; `None` for anything else; the exponent is the usual one of leaks
/// * Source: rate handbook, section 6.8: 250 cfm out of a house of 850 cfm at 50 Pa is 7.6 Pa
///
/// ```
/// use airtally::{on_site::house_pressure, quantity::Flow};
/// let pressure = house_pressure(Flow::from_cfm(250.0), Flow::from_cfm(850.0)).unwrap();
/// assert!((pressure.as_pa() - 7.6).abs() < 0.05);
/// ```
pub fn house_pressure(net: Flow, at_50: Flow) -> Option<Pressure> {
    if net < Flow::ZERO || at_50 <= Flow::ZERO {
        return None;
    }
    Some(Pressure::from_pa(TEST_PA * power(net.as_m3h() / at_50.as_m3h(), 1.0 / EXPONENT)))
}

/// What leaks at the pressure of normal running, from what leaked in the test.
///
/// * Equation: `q_30 = q·(30/p)^0.65`
/// * Units: q any flow, p Pa
/// * Valid range: p > 0; zero for anything else
/// * Source: site handbook, section 6; EN 12237 has the same exponent
///
/// ```
/// use airtally::{on_site::leak_at, quantity::{Flow, Pressure}};
/// // At 30 Pa nothing is converted.
/// let leak = leak_at(Flow::from_m3h(6.0), Pressure::from_pa(30.0));
/// assert!((leak.as_m3h() - 6.0).abs() < 1e-9);
/// ```
pub fn leak_at(flow: Flow, pressure: Pressure) -> Flow {
    if pressure <= Pressure::ZERO {
        return Flow::ZERO;
    }
    flow * power(TUBE_PA / pressure.as_pa(), EXPONENT)
}

/// What may leak in a test, from what may leak at the pressure of normal running: [`leak_at`] the other way round.
///
/// * Equation: `q = q_30·(p/30)^0.65`
/// * Units: q any flow, p Pa
/// * Valid range: p > 0; zero for anything else
/// * Source: site handbook, section 6; there and back is the same
///
/// ```
/// use airtally::{on_site::{leak_at, leak_in_test}, quantity::{Flow, Pressure}};
/// let pressure = Pressure::from_pa(100.0);
/// let back = leak_at(leak_in_test(Flow::from_m3h(5.0), pressure), pressure);
/// assert!((back.as_m3h() - 5.0).abs() < 1e-9);
/// ```
pub fn leak_in_test(flow: Flow, pressure: Pressure) -> Flow {
    if pressure <= Pressure::ZERO {
        return Flow::ZERO;
    }
    flow * power(pressure.as_pa() / TUBE_PA, EXPONENT)
}
