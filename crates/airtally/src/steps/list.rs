//! Making the list for one house.

use super::Step;
use crate::facts::Facts;
use crate::given::Givens;
use crate::house::House;
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
    /// The gaps under doors.
    pub openings: &'a [Opening],
}

/// The checklist in working order.
pub fn list(_parts: &Parts, _working: &mut Working) -> Vec<Step> {
    Vec::new()
}
