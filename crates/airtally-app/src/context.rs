//! What every screen is drawn from: the document with all that follows from it, the desk, and the ways to change both.

use crate::desk::{Desk, Move, Topic};
use crate::state::{Action, Notebook, Seen};
use crate::ui::figure::{Size, figure_button};
use airtally::edit::Edit;
use airtally::given::GivenId;
use airtally::house::{Choices, Display, House};
use airtally::issue::Issue;
use airtally::report::Report;
use airtally::rules::RuleSet;
use airtally::working::LineId;
use airtally_words::format::Shown;
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

    /// The same house under another rule set. Looking at it changes nothing.
    pub fn under(&self, rules: RuleSet) -> Self {
        let choices = Choices { rules, ..self.house.choices };
        let house = Rc::new(Edit::Choose(choices).apply(&self.house));
        Self { report: Report::of(Rc::clone(&house)), house, issues: Vec::new() }
    }

    /// The units numbers are shown in.
    pub fn display(&self) -> Display {
        self.house.choices.display
    }
}

/// A shared value that counts as changed when it is another one, whatever it holds.
pub struct Same<T>(pub Rc<T>);

impl<T> PartialEq for Same<T> {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
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

    /// Changes the document. A remark with a way back goes away: its way would lead back from this change instead.
    pub fn act(&self, action: Action) {
        self.document.dispatch(action);
        self.desk.dispatch(Move::Changed);
    }

    /// Shows something else of the document, or who may change it. What was done before can be taken back as before.
    pub fn see(&self, seen: Seen) {
        self.document.dispatch(Action::See(seen));
    }

    /// Makes one change to the document.
    pub fn edit(&self, edit: Edit) {
        self.act(Action::Edit(edit));
    }

    /// Changes the desk.
    pub fn make(&self, step: Move) {
        self.desk.dispatch(step);
    }

    /// A callback that makes one change to the document.
    pub fn editing(&self, edit: Edit) -> Callback<Event> {
        let hands = self.clone();
        Callback::from(move |_| hands.edit(edit.clone()))
    }

    /// A callback that does something with both.
    pub fn doing<E: 'static>(&self, work: impl Fn(&Hands) + 'static) -> Callback<E> {
        let hands = self.clone();
        Callback::from(move |_| work(&hands))
    }
}

/// What every screen is drawn from.
#[derive(Clone)]
pub struct View {
    /// The house and what follows from it.
    pub page: Rc<Page>,
    /// What lies open.
    pub desk: Rc<Desk>,
    /// The document: which house, and whether it is only looked at.
    pub notebook: UseReducerHandle<Notebook>,
    /// The ways to change both.
    pub hands: Hands,
    /// A sheet stands beside the page instead of in front of it.
    pub wide: bool,
    /// The page is that of the house under another rule set, to be looked at only.
    pub under: Option<RuleSet>,
}

impl View {
    /// The same desk with the house under another rule set.
    pub fn under(&self, rules: RuleSet) -> Self {
        Self { page: Rc::new(self.page.under(rules)), under: Some(rules), ..self.clone() }
    }

    /// A figure with the working of a line behind it. `name` is read out in front of it.
    pub fn figure(&self, name: &str, shown: &Shown, size: Size, line: LineId) -> Html {
        figure_button(name, &shown.number, shown.unit, size, self.explaining(line, Move::Explain))
    }

    /// A figure with a registered value behind it.
    pub fn given_figure(&self, name: &str, shown: &Shown, size: Size, id: GivenId) -> Html {
        let pressed = self.hands.doing(move |hands| hands.make(Move::Explain(Topic::Given(id))));
        figure_button(name, &shown.number, shown.unit, size, pressed)
    }

    /// A callback that explains a line, as a first explanation or a deeper one.
    pub fn explaining(&self, line: LineId, step: fn(Topic) -> Move) -> Callback<Event> {
        let (hands, page, under) = (self.hands.clone(), Rc::clone(&self.page), self.under);
        Callback::from(move |_| {
            if let Some(address) = page.report.address(line) {
                let topic = under.map_or(Topic::Line(address), |rules| Topic::Under(rules, address));
                hands.make(step(topic));
            }
        })
    }
}
