//! Names for things: stable, small, and below everything that gives them a meaning.

mod check;
mod curve;
mod field;
mod given;
mod home;
mod level;
mod part;
mod room;
mod rules;
mod step;

pub use check::CheckRule;
pub use curve::Curve;
pub use field::{Field, HouseField, RoomField};
pub use given::GivenId;
pub use home::Home;
pub use level::{Air, Level};
pub use part::{Group, Part};
pub use room::RoomId;
pub use rules::RuleSet;
pub use step::{Item, Phase, StepKey, StepRule, Visit, Waits};
