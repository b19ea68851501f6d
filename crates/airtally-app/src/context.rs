//! What every component may ask for: the document with all that follows from it, the desk, and the ways to change both.

use crate::desk::{Desk, Move, Topic};
use crate::state::{Action, Notebook};
use airtally::edit::Edit;
use airtally::house::{Display, House};
use airtally::issue::Issue;
use airtally::report::Report;
use airtally::working::LineId;
use std::ops::Deref;
use std::rc::Rc;
use yew::prelude::*;

/// A house and everything that follows from it.
pub struct Page {
    /// The house.
    pub house: Rc<House>,
    /// What follows from it, calculated when asked for.
    pub report: Report,
    /// Everything that wants a look, worst first.
    pub issues: Vec<Issue>,
}

impl Page {
    /// The page of a house.
    pub fn of(house: Rc<House>) -> Self {
        let report = Report::of(Rc::clone(&house));
        let issues = report.issues();
        Self { house, report, issues }
    }

    /// The units numbers are shown in.
    pub fn display(&self) -> Display {
        self.house.choices.display
    }
}

/// A shared value that counts as changed when it is another one, whatever it holds.
pub struct Shared<T>(pub Rc<T>);

impl<T> Clone for Shared<T> {
    fn clone(&self) -> Self {
        Self(Rc::clone(&self.0))
    }
}

impl<T> PartialEq for Shared<T> {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

impl<T> Deref for Shared<T> {
    type Target = T;

    fn deref(&self) -> &T {
        &self.0
    }
}

/// The ways to change things. Never changes itself, so it never makes anything draw again.
#[derive(Clone, PartialEq)]
pub struct Hands {
    document: UseReducerDispatcher<Notebook>,
    desk: UseReducerDispatcher<Desk>,
}

impl Hands {
    /// Hands on a document and a desk.
    pub fn on(document: UseReducerDispatcher<Notebook>, desk: UseReducerDispatcher<Desk>) -> Self {
        Self { document, desk }
    }

    /// Changes the document.
    pub fn act(&self, action: Action) {
        self.document.dispatch(action);
    }

    /// Makes one change to the document.
    pub fn edit(&self, edit: Edit) {
        self.document.dispatch(Action::Edit(edit));
    }

    /// Changes the desk.
    pub fn make(&self, step: Move) {
        self.desk.dispatch(step);
    }

    /// A callback that makes one change to the document.
    pub fn editing<E: 'static>(&self, edit: Edit) -> Callback<E> {
        let hands = self.clone();
        Callback::from(move |_| hands.edit(edit.clone()))
    }

    /// A callback that does something with both.
    pub fn doing<E: 'static>(&self, work: impl Fn(&Hands) + 'static) -> Callback<E> {
        let hands = self.clone();
        Callback::from(move |_| work(&hands))
    }

    /// A callback that explains a line, or goes deeper when a sheet is being read.
    pub fn explaining<E: 'static>(&self, page: &Shared<Page>, line: LineId, deeper: bool) -> Callback<E> {
        let (hands, page) = (self.clone(), page.clone());
        Callback::from(move |_| {
            if let Some(address) = page.report.address(line) {
                let topic = Topic::Line(address);
                hands.make(if deeper { Move::Deeper(topic) } else { Move::Explain(topic) });
            }
        })
    }
}

/// The house and what follows from it; draws the component again on every change.
#[hook]
pub fn use_page() -> Shared<Page> {
    known(use_context::<Shared<Page>>())
}

/// The desk; draws the component again when something on it moves.
#[hook]
pub fn use_desk() -> Shared<Desk> {
    known(use_context::<Shared<Desk>>())
}

/// The ways to change things.
#[hook]
pub fn use_hands() -> Hands {
    known(use_context::<Hands>())
}

#[allow(clippy::expect_used, reason = "the app puts all three around every component")]
fn known<T>(found: Option<T>) -> T {
    found.expect("drawn outside the app")
}
