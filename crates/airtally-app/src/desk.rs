//! What lies open on the desk: stage, row, level, working, menu. Not part of the document, not saved, not undone.

mod fold;
mod ids;
mod link;
mod shelf;
mod stage;
mod steps;
mod visit;

pub use fold::{Fold, Folds};
pub use ids::{MAIN, OPEN_STEP, ROOMS, field_id, row_id};
pub use link::{Link, Made};
pub use shelf::{Shelf, Told};
pub use stage::Stage;
pub use steps::{Book, InSight, OpenStep, When};

use crate::state::HouseId;
use airtally::delivery::Trial;
use airtally::given::GivenId;
use airtally::house::{Field, RoomId};
use airtally::issue::Place;
use airtally::pocket::{Ask, Scratch, Slot};
use airtally::quantity::Unit;
use airtally::rules::{Air, Level, RuleSet};
use airtally::working::Address;
use std::rc::Rc;
use yew::{AttrValue, Reducible};

/// What a sheet explains.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Topic {
    /// A line of the working.
    Line(Address),
    /// A line of the working of the same house under another rule set.
    Under(RuleSet, Address),
    /// A registered value, and the person's own in its place.
    Given(GivenId),
    /// Everything that wants a look.
    Issues,
    /// Figures that need no house.
    Pocket,
    /// The houses of this device.
    Houses,
    /// One of them.
    Kept(HouseId),
    /// The way of the house to another device.
    Send,
    /// The house of a link that was followed.
    Came,
}

/// A short remark with or without a way back.
#[derive(Clone, Debug, PartialEq)]
pub struct Said {
    /// The words.
    pub words: AttrValue,
    /// Whether the last change can be taken back from here.
    pub undo: bool,
}

/// Where the focus goes next. The count tells two wishes for the same place apart.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Aim {
    count: u32,
    /// Id of the element.
    pub at: String,
    /// Where a row stood that was pressed: the page keeps it there, and the focus stays where it is.
    pub stood: Option<f64>,
}

/// The desk.
#[derive(Clone, Debug, PartialEq)]
pub struct Desk {
    /// The screen in sight.
    pub stage: Stage,
    /// A house without rooms has been begun: show where rooms are added.
    pub begun: bool,
    /// The room whose row is open.
    pub open: Option<RoomId>,
    /// The level whose flows are shown.
    pub level: Level,
    /// What the sheet explains, deepest last; empty when it is closed.
    pub sheet: Vec<Topic>,
    /// Whether the menu is open.
    pub menu: bool,
    /// A short remark.
    pub said: Option<Said>,
    /// Where the focus goes.
    pub aim: Aim,
    /// Which steps are in sight.
    pub shown: InSight,
    /// Which of them is open.
    pub step: OpenStep,
    /// Where the book is.
    pub book: Book,
    /// It goes to paper. Only there is a closed step drawn whole: to draw all of them at every key takes too long.
    pub paper: bool,
    /// The run whose row is open.
    pub run: Option<(Air, RoomId)>,
    /// Parts that are open.
    pub folds: Folds,
    /// What is tried on the house.
    pub trial: Trial,
    /// The question the pocket is open at.
    pub ask: Ask,
    /// What is typed into the pocket.
    pub scratch: Scratch,
    /// The houses of this device.
    pub shelf: Shelf,
    /// A house on its way.
    pub link: Link,
    /// Units taken for fields that are still empty.
    units: Vec<(Field, Unit)>,
}

/// What can be done on the desk.
pub enum Move {
    /// Another screen.
    Go(Stage),
    /// A first house.
    Begin,
    /// A room's row opened, or all closed.
    Open(Option<RoomId>),
    /// Another level.
    Level(Level),
    /// A new explanation.
    Explain(Topic),
    /// A further explanation, with a way back.
    Deeper(Topic),
    /// Back to the explanation before.
    Back,
    /// The sheet put away.
    CloseSheet,
    /// The menu opened or put away.
    Menu(bool),
    /// A remark made.
    Say(Said),
    /// The remark put away.
    Hush,
    /// The document changed: a remark with a way back is out of date.
    Changed,
    /// To the place of an issue or of something typed.
    Visit(Place),
    /// The focus to an element.
    Aim(String),
    /// A step pressed: another opened, or all closed, while the row with this id stays under the thumb.
    Press(OpenStep, String, Option<f64>),
    /// A unit taken for a field.
    Unit(Field, Unit),
    /// Other steps in sight.
    Show(InSight),
    /// Another step opened, or all closed.
    Step(OpenStep),
    /// A run's row opened, or all closed.
    Run(Option<(Air, RoomId)>),
    /// A part opened or closed.
    Fold(Fold),
    /// Something else tried.
    Try(Trial),
    /// Another question of the pocket.
    Ask(Ask),
    /// A text typed into the pocket, and the unit it shows.
    Scratch(Slot, String, Unit),
    /// The book of the steps has come, or has not.
    Book(Book),
    /// A house is on its way.
    Link(Link),
    /// Onto paper, or back to the screen.
    Paper(bool),
    /// What the store of houses says, or what a person looks for in it.
    Shelf(Told, AttrValue),
}

impl Desk {
    /// A tidy desk.
    pub fn at(stage: Stage, said: Option<Said>) -> Self {
        Self {
            stage,
            begun: false,
            open: None,
            level: Level::Normal,
            sheet: Vec::new(),
            menu: false,
            said,
            aim: Aim::default(),
            shown: InSight::default(),
            step: OpenStep::Next,
            book: Book::OnItsWay,
            paper: false,
            run: None,
            folds: Folds::default(),
            trial: Trial::default(),
            ask: Ask::default(),
            scratch: Scratch::default(),
            shelf: Shelf::default(),
            link: Link::None,
            units: Vec::new(),
        }
    }

    /// The unit taken for a field while it was empty.
    pub fn unit_of(&self, field: Field) -> Option<Unit> {
        self.units.iter().find(|(own, _)| *own == field).map(|(_, unit)| *unit)
    }

    fn aim(&mut self, at: String) {
        self.aim = Aim { count: self.aim.count.wrapping_add(1), at, stood: None };
    }

    fn go(&mut self, stage: Stage) {
        if stage != self.stage {
            self.stage = stage;
            self.menu = false;
            self.aim(MAIN.to_owned());
        }
    }

    /// What is not kept as it should be is said once.
    fn tell(&mut self, told: Told, words: AttrValue) {
        let before = self.shelf.trouble();
        self.shelf.tell(told, words);
        if let Some(words) = self.shelf.trouble().filter(|words| before != Some(words)) {
            self.said = Some(Said { words: words.into(), undo: false });
        }
    }
}

impl Reducible for Desk {
    type Action = Move;

    fn reduce(self: Rc<Self>, step: Move) -> Rc<Self> {
        let mut next = (*self).clone();
        match step {
            Move::Go(stage) => next.go(stage),
            Move::Begin => {
                next.begun = true;
                next.aim(ROOMS.to_owned());
            }
            Move::Open(room) => next.open = room,
            Move::Level(level) => next.level = level,
            Move::Explain(topic) => next.sheet = vec![topic],
            Move::Deeper(topic) => next.sheet.push(topic),
            Move::Back => drop(next.sheet.pop()),
            Move::CloseSheet => next.sheet.clear(),
            Move::Menu(open) => next.menu = open,
            Move::Say(said) => next.said = Some(said),
            Move::Hush => next.said = None,
            Move::Changed => next.said = next.said.filter(|said| !said.undo),
            Move::Visit(place) => next.visit(place),
            Move::Aim(at) => next.aim(at),
            Move::Press(step, row, stood) => {
                next.step = step;
                next.aim(row);
                next.aim.stood = stood;
            }
            Move::Book(book) => next.book = book,
            Move::Link(link) => next.link = link,
            Move::Paper(paper) => next.paper = paper,
            Move::Show(shown) => next.shown = shown,
            Move::Step(step) => next.step = step,
            Move::Run(run) => next.run = run,
            Move::Fold(fold) => next.folds = next.folds.turned(fold),
            Move::Try(trial) => next.trial = trial,
            Move::Shelf(told, words) => next.tell(told, words),
            Move::Ask(ask) => next.ask = ask,
            Move::Scratch(slot, text, unit) => next.scratch.set(slot, text, unit),
            Move::Unit(field, unit) => {
                next.units.retain(|(own, _)| *own != field);
                next.units.push((field, unit));
            }
        }
        if next == *self { self } else { Rc::new(next) }
    }
}
