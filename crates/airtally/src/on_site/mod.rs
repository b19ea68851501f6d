//! What the house allows: holes in its structure, places outside, the pressure it can be drawn to.
//!
//! Plain functions and printed tables here; `steps` asks them with what was typed.

mod outside;
mod pressure;
mod wood;

pub use outside::{Least, Outside, far_enough, outside_rules};
pub use pressure::{house_pressure, leak_at, leak_in_test};
pub use wood::{Member, largest_hole, tubes_in_bay};

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
