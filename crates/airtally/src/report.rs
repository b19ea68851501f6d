//! The whole chain, calculated when asked for and once only.

mod codes;
mod lines;

pub use codes::{CodeTotals, Governs, Unknown};

use crate::alternatives::{self, Alternative, Ways};
use crate::blown::{self, Blown};
use crate::co2::{self, Night};
use crate::delivery::{self, Delivery, Outcome, Trial};
use crate::facts::Facts;
use crate::given::Givens;
use crate::house::House;
use crate::issue::{Issue, Severity};
use crate::parts::{Quotation, TakeOff};
use crate::rules::{Demand, RuleSet};
use crate::runs::Runs;
use crate::shares::Shares;
use crate::sound::{self, Heard};
use crate::steps::{self, Step};
use crate::transfer::{self, Opening};
use crate::working::Working;
use std::cell::{OnceCell, RefCell};
use std::rc::Rc;

/// Everything that follows from a house. Each part is calculated the first time it is asked for.
///
/// ```
/// use airtally::{entry::Entry, edit::Edit, house::{Field, House, RoomField, RoomKind}};
/// use airtally::{quantity::Unit, report::Report, rules::Level};
/// let mut house = House::new();
/// for (kind, area) in [(RoomKind::Bedroom, "12"), (RoomKind::Living, "30 m2"), (RoomKind::Kitchen, "100 sq ft")] {
///     house = Edit::AddRoom(kind).apply(&house);
///     let id = house.rooms.last().unwrap().id;
///     house = Edit::Set(Field::Room(id, RoomField::Area), area.into(), Unit::SquareMetre).apply(&house);
/// }
/// let report = Report::of(house);
/// let normal = report.shares().at(Level::Normal);
/// // England, one bedroom: 19 L/s or 68.4 m³/h, set in steps of 5 m³/h.
/// assert_eq!(normal.total.as_m3h(), 70.0);
/// ```
pub struct Report {
    house: Rc<House>,
    working: RefCell<Working>,
    issues: RefCell<Vec<Issue>>,
    givens: OnceCell<Givens>,
    facts: OnceCell<Facts>,
    demand: OnceCell<Demand>,
    shares: OnceCell<Shares>,
    runs: OnceCell<Runs>,
    delivery: OnceCell<Delivery>,
    openings: OnceCell<Vec<Opening>>,
    nights: OnceCell<Vec<Night>>,
    steps: OnceCell<Vec<Step>>,
    codes: OnceCell<Vec<CodeTotals>>,
    parts: OnceCell<(TakeOff, Quotation)>,
    heard: OnceCell<Vec<Heard>>,
    blown: OnceCell<Vec<Blown>>,
}

impl Report {
    /// The report of a house. Nothing is calculated yet.
    pub fn of(house: impl Into<Rc<House>>) -> Self {
        let house = house.into();
        Self {
            working: RefCell::new(Working::with_space_for(house.rooms.len())),
            house,
            issues: RefCell::default(),
            givens: OnceCell::new(),
            facts: OnceCell::new(),
            demand: OnceCell::new(),
            shares: OnceCell::new(),
            runs: OnceCell::new(),
            delivery: OnceCell::new(),
            openings: OnceCell::new(),
            nights: OnceCell::new(),
            steps: OnceCell::new(),
            codes: OnceCell::new(),
            parts: OnceCell::new(),
            heard: OnceCell::new(),
            blown: OnceCell::new(),
        }
    }

    /// The house it is about.
    pub fn house(&self) -> &Rc<House> {
        &self.house
    }

    /// The registry with the house's settings.
    pub fn givens(&self) -> &Givens {
        self.givens.get_or_init(|| Givens::of(&self.house.settings, &mut self.issues.borrow_mut()))
    }

    /// The house as numbers.
    pub fn facts(&self) -> &Facts {
        let givens = self.givens();
        self.facts.get_or_init(|| Facts::of(&self.house, givens, &mut self.issues.borrow_mut()))
    }

    /// What the chosen rule set asks.
    pub fn demand(&self) -> &Demand {
        let (facts, givens) = (self.facts(), self.givens());
        self.demand.get_or_init(|| {
            let (working, issues) = (&mut self.working.borrow_mut(), &mut self.issues.borrow_mut());
            Demand::of(facts.choices.rules, facts, givens, working, issues)
        })
    }

    /// The flow of every terminal at every level.
    pub fn shares(&self) -> &Shares {
        let (facts, demand, givens) = (self.facts(), self.demand(), self.givens());
        self.shares.get_or_init(|| {
            let (working, issues) = (&mut self.working.borrow_mut(), &mut self.issues.borrow_mut());
            Shares::of(facts, demand, givens, working, issues)
        })
    }

    /// Tubes and ports.
    pub fn runs(&self) -> &Runs {
        let (facts, shares, givens) = (self.facts(), self.shares(), self.givens());
        self.runs.get_or_init(|| {
            let (working, issues) = (&mut self.working.borrow_mut(), &mut self.issues.borrow_mut());
            Runs::of(facts, shares, givens, working, issues)
        })
    }

    /// Pressures, throttles, and what the unit must give.
    pub fn delivery(&self) -> &Delivery {
        let house = (self.facts(), self.givens());
        let chain = (self.shares(), self.runs());
        self.delivery.get_or_init(|| {
            let (working, issues) = (&mut self.working.borrow_mut(), &mut self.issues.borrow_mut());
            Delivery::of(house, chain, working, issues)
        })
    }

    /// How far every supply valve blows.
    pub fn blown(&self) -> &[Blown] {
        let (facts, runs, givens) = (self.facts(), self.runs(), self.givens());
        self.blown.get_or_init(|| blown::blown(facts, runs, givens, &mut self.working.borrow_mut()))
    }

    /// What every room hears of its runs.
    pub fn heard(&self) -> &[Heard] {
        let (facts, givens) = (self.facts(), self.givens());
        let chain = (self.shares(), self.runs(), self.delivery());
        self.heard.get_or_init(|| {
            let (working, issues) = (&mut self.working.borrow_mut(), &mut self.issues.borrow_mut());
            sound::heard((facts, givens), chain, working, issues)
        })
    }

    /// What is ordered and done.
    pub fn take_off(&self) -> &TakeOff {
        &self.parts().0
    }

    /// What that costs.
    pub fn quotation(&self) -> &Quotation {
        &self.parts().1
    }

    fn parts(&self) -> &(TakeOff, Quotation) {
        let (facts, givens) = (self.facts(), self.givens());
        let chain = (self.shares(), self.runs(), self.delivery());
        self.parts.get_or_init(|| {
            let (working, issues) = (&mut self.working.borrow_mut(), &mut self.issues.borrow_mut());
            let take_off = TakeOff::of((facts, givens), chain, working, issues);
            let quotation = Quotation::of(&take_off, &self.house, givens, issues);
            (take_off, quotation)
        })
    }

    /// The same house made in other ways. Calculated anew each time: only one page asks.
    pub fn alternatives(&self, ways: Ways) -> Vec<Alternative> {
        alternatives::alternatives(ways, &self.house, self.facts(), self.shares(), self.givens())
    }

    /// What comes in every room when something is not as it was planned. Calculated anew each time.
    pub fn tried(&self, trial: &Trial) -> Outcome {
        let chain = (self.shares(), self.runs(), self.delivery());
        delivery::tried((self.facts(), self.givens()), chain, trial)
    }

    /// Gaps under doors.
    pub fn openings(&self) -> &[Opening] {
        let (facts, shares, givens) = (self.facts(), self.shares(), self.givens());
        self.openings.get_or_init(|| {
            let (working, issues) = (&mut self.working.borrow_mut(), &mut self.issues.borrow_mut());
            transfer::openings(facts, shares, givens, working, issues)
        })
    }

    /// Bedroom air by morning.
    pub fn nights(&self) -> &[Night] {
        let (facts, shares, givens) = (self.facts(), self.shares(), self.givens());
        self.nights.get_or_init(|| {
            let (working, issues) = (&mut self.working.borrow_mut(), &mut self.issues.borrow_mut());
            co2::nights(facts, shares, givens, working, issues)
        })
    }

    /// The checklist.
    pub fn steps(&self) -> &[Step] {
        let parts = steps::Parts {
            house: &self.house,
            facts: self.facts(),
            givens: self.givens(),
            shares: self.shares(),
            runs: self.runs(),
            delivery: self.delivery(),
            openings: self.openings(),
        };
        self.steps.get_or_init(|| {
            let (working, issues) = (&mut self.working.borrow_mut(), &mut self.issues.borrow_mut());
            steps::list(&parts, working, issues)
        })
    }

    /// What every rule set asks of this house and why, the chosen one among them.
    pub fn codes(&self) -> &[CodeTotals] {
        let (facts, givens) = (self.facts(), self.givens());
        self.codes.get_or_init(|| {
            let mut aside = Working::default();
            RuleSet::ALL.into_iter().map(|rules| CodeTotals::of(rules, facts, givens, &mut aside)).collect()
        })
    }

    /// Every issue of the whole chain, worst first; within one severity in the order of the chain.
    pub fn issues(&self) -> Vec<Issue> {
        self.steps();
        self.delivery();
        self.nights();
        self.heard();
        self.blown();
        self.parts();
        self.issues_so_far()
    }

    /// Every issue of what has been asked for until now, in the same order.
    pub fn issues_so_far(&self) -> Vec<Issue> {
        let issues = self.issues.borrow();
        let of = |severity| issues.iter().filter(move |issue| issue.severity() == severity).copied();
        Severity::WORST_FIRST.into_iter().flat_map(of).collect()
    }
}
