//! What of the steps lies on the desk: where their sentences are, which are in sight, and which is open.

use airtally::house::RoomId;
use airtally::steps::{Phase, StepKey, Visit};

/// Where the book is: words that are loaded after the first paint.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Book {
    /// Being loaded.
    OnItsWay,
    /// It could not be loaded.
    Missing,
    /// It is open.
    Open,
}

/// When the steps in sight are done.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum When {
    /// Whenever.
    #[default]
    Always,
    /// On a visit.
    Visit(Visit),
    /// In a phase.
    Phase(Phase),
}

/// Which steps are in sight.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct InSight {
    /// When they are done.
    pub when: When,
    /// The room they belong to.
    pub room: Option<RoomId>,
}

/// The step whose row is open.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum OpenStep {
    /// The next one to do.
    #[default]
    Next,
    /// This one.
    This(StepKey),
    /// None.
    None,
}
