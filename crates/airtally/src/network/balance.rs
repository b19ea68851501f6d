//! Setting the valves of one manifold, so that every tube carries its own.

use super::Law;
use crate::quantity::{Flow, Pressure};

/// What the valves of one manifold must take.
#[derive(Clone, Debug, PartialEq)]
pub struct Balance {
    /// The tube that takes most at its own flow, from 0. Its valve stays open.
    pub index: usize,
    /// What the manifold must have so that it carries its own.
    pub pressure: Pressure,
    /// What each valve must take beyond its tube, at the tube's own flow.
    pub added: Vec<Pressure>,
}

/// The valves that let each tube carry its own, with as little pressure as that takes.
///
/// * Equation: `p* = max Δp_i(q_i)`, `Δp_valve,i = p* − Δp_i(q_i)`
/// * Units: tubes with their valves open, and the flow each is to carry
/// * Valid range: flows above nought; `None` without a tube, or where one takes no finite pressure
/// * Source: proportional balancing, as in CIBSE Commissioning Code A, 1996, and BSRIA BG 49, 2015
///
/// ```
/// use airtally::network::{Law, balance};
/// use airtally::quantity::{Flow, Pressure};
/// // Worked numbers of a handbook: 0.030, 0.060, 0.050 and 0.025·q², to carry 30, 25, 20 and 40 m³/h.
/// let tubes = [(0.030, 30.0), (0.060, 25.0), (0.050, 20.0), (0.025, 40.0)].map(|(pascal, m3h)| {
///     let law = Law::default().rated(Pressure::ZERO, Pressure::from_pa(pascal), Flow::from_m3h(1.0));
///     (law, Flow::from_m3h(m3h))
/// });
/// let set = balance(&tubes).unwrap();
/// assert_eq!(set.index, 3);
/// assert!((set.pressure.as_pa() - 40.0).abs() < 1e-9);
/// for (valve, handbook) in set.added.iter().zip([13.0, 2.5, 20.0, 0.0]) {
///     assert!((valve.as_pa() - handbook).abs() < 1e-9);
/// }
/// ```
pub fn balance(tubes: &[(Law, Flow)]) -> Option<Balance> {
    let taken: Vec<Pressure> = tubes.iter().map(|(law, flow)| law.pressure(*flow)).collect();
    let flows = tubes.iter().all(|(_, flow)| *flow > Flow::ZERO);
    if !flows || taken.iter().any(|pressure| !pressure.is_finite()) {
        return None;
    }
    let more = |most: (usize, Pressure), own: (usize, Pressure)| if own.1 > most.1 { own } else { most };
    let (index, pressure) = taken.iter().copied().enumerate().reduce(more)?;
    Some(Balance { index, pressure, added: taken.iter().map(|own| pressure - *own).collect() })
}
