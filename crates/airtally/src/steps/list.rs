//! Making the list for one house.

use super::making::Making;
use super::{Step, commissioning, finish, insulation, locks, rough, survey};
use crate::delivery::Delivery;
use crate::facts::Facts;
use crate::given::Givens;
use crate::house::House;
use crate::issue::Issue;
use crate::runs::Runs;
use crate::shares::Shares;
use crate::transfer::Opening;
use crate::working::Working;

/// What steps are made from.
pub struct Parts<'a> {
    /// The document, for its ticks.
    pub house: &'a House,
    /// The house as numbers.
    pub facts: &'a Facts,
    /// The registry.
    pub givens: &'a Givens,
    /// The flows.
    pub shares: &'a Shares,
    /// The tubes.
    pub runs: &'a Runs,
    /// The pressures.
    pub delivery: &'a Delivery,
    /// The gaps under doors.
    pub openings: &'a [Opening],
}

/// The checklist in working order. A house without tubes has none.
pub fn list(parts: &Parts, working: &mut Working, issues: &mut Vec<Issue>) -> Vec<Step> {
    if parts.runs.runs.is_empty() {
        return Vec::new();
    }
    let mut making = Making::new(parts, working, issues);
    survey::before(&mut making);
    survey::set_out(&mut making);
    rough::drill(&mut making);
    rough::pull(&mut making);
    rough::fix(&mut making);
    rough::connect(&mut making);
    finish::seal(&mut making);
    insulation::insulate(&mut making);
    finish::drain(&mut making);
    finish::protect(&mut making);
    finish::pre_check(&mut making);
    commissioning::power(&mut making);
    commissioning::measure(&mut making);
    commissioning::hand_over(&mut making);
    let mut steps = making.steps;
    locks::set(&mut steps, &parts.house.ticks);
    steps
}
