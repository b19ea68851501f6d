//! What the house allows: holes in its structure, places outside, the pressure it can be drawn to.
//!
//! Plain functions and printed tables here; `steps` asks them with what was typed.

mod outside;
mod pressure;
mod wood;

pub use outside::{Least, Outside, far_enough, outside_rules};
pub use pressure::{house_pressure, leak_at, leak_in_test};
pub use wood::{AMERICAN_NOTCH, BRITISH_HOLES, BRITISH_NOTCH, BRITISH_ZONE, Member, NotchRule};
pub use wood::{largest_hole, tubes_in_bay};

use crate::quantity::Length;

/// What a check comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Verdict {
    /// It is as it must be.
    Holds,
    /// It is not, but an exception of the rule covers it.
    Excepted,
    /// It is not as it must be.
    Fails,
    /// Something must be found out first.
    Unknown,
    /// Only a maker or a designer may say.
    Designer,
}

/// Whether a length is no less than another, to a hundredth of a millimetre: a typed 10 ft is 10 ft, in whatever unit it
/// was typed.
pub fn at_least(length: Length, least: Length) -> bool {
    length.as_mm() >= least.as_mm() - AGREES_MM
}

const AGREES_MM: f64 = 0.01;
