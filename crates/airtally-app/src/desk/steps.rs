//! What of the steps lies on the desk: their sentences, which are in sight, and which is open.

use airtally::house::RoomId;
use airtally::steps::{Phase, StepKey, Visit};
use airtally_words::step::StepBook;
use std::rc::Rc;

/// The book of the steps: loaded after the first paint.
#[derive(Clone, Debug)]
pub enum Book {
    /// Being loaded.
    OnItsWay,
    /// It could not be loaded.
    Missing,
    /// Here it is.
    Open(Rc<StepBook>),
}

impl PartialEq for Book {
    fn eq(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Open(one), Self::Open(other)) => Rc::ptr_eq(one, other),
            (Self::OnItsWay, Self::OnItsWay) | (Self::Missing, Self::Missing) => true,
            _ => false,
        }
    }
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
