//! Names for things: stable, small, and below everything that gives them a meaning.

mod field;
mod given;
mod level;
mod room;
mod rules;
mod step;

pub use field::{Field, HouseField, RoomField};
pub use given::GivenId;
pub use level::{Air, Level};
pub use room::RoomId;
pub use rules::RuleSet;
pub use step::{Phase, StepKey, StepRule, Waits};
