//! How far supply and extract are apart, by each published definition.

use crate::quantity::Flow;

/// The gap between a supply and an extract total.
///
/// * Equation: `d1 = |S − E| / max(S, E)`, `d2 = |S − E| / ((S + E)/2)`, `d3 = d2/2`, `d_S = |S − E| / S`.
/// * Valid range: both flows ≥ 0, one of them > 0.
/// * Source: IRC 2021 chapter 2 (two wordings of "balanced"), IRC 2024 (the second).
///
/// ```
/// use airtally::{quantity::Flow, rules::balance::Balance};
/// let balance = Balance::of(Flow::from_cfm(110.0), Flow::from_cfm(90.0)).unwrap();
/// assert!(balance.within_tenth_of_average());     // 10 % of the average: passes
/// assert!(!balance.within_tenth_of_supply());     // 18 % of the supply: fails
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Balance {
    supply: f64,
    extract: f64,
}

/// "Within 10 %", with a millionth for arithmetic.
const TENTH: f64 = 0.10 + 1e-9;

impl Balance {
    /// The gap of two totals; `None` when nothing flows or a flow is negative.
    pub fn of(supply: Flow, extract: Flow) -> Option<Self> {
        let (supply, extract) = (supply.as_m3h(), extract.as_m3h());
        (supply >= 0.0 && extract >= 0.0 && supply + extract > 0.0).then_some(Self { supply, extract })
    }

    /// |S − E| as a share of the larger.
    pub fn of_larger(&self) -> f64 {
        self.gap() / self.supply.max(self.extract)
    }

    /// |S − E| as a share of the supply; of the extract alone where nothing is supplied.
    pub fn of_supply(&self) -> f64 {
        if self.supply > 0.0 { self.gap() / self.supply } else { self.of_larger() }
    }

    /// |S − E| as a share of the average.
    pub fn of_average(&self) -> f64 {
        self.gap() / ((self.supply + self.extract) / 2.0)
    }

    /// Each flow's distance from the average as a share of it.
    pub fn from_average(&self) -> f64 {
        self.of_average() / 2.0
    }

    /// IRC 2021, "balanced ventilation": extract within 10 % of supply.
    pub fn within_tenth_of_supply(&self) -> bool {
        self.gap() <= TENTH * self.supply
    }

    /// IRC 2021 "balanced ventilation system" and IRC 2024: both within 10 % of their average.
    pub fn within_tenth_of_average(&self) -> bool {
        self.from_average() <= TENTH
    }

    fn gap(&self) -> f64 {
        (self.supply - self.extract).abs()
    }
}
