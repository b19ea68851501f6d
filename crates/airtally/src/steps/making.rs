//! The bench on which steps are made: numbers with their origins, lines with their terms.

use super::{Check, Listed, Number, NumberName, Parts, Status, Step, StepKey, StepRule};
use crate::formula::Formula;
use crate::given::GivenId;
use crate::house::{Field, HouseField};
use crate::id::Home;
use crate::id::{CheckRule, RoomId};
use crate::issue::{Issue, Place, Trouble};
use crate::on_site::Verdict;
use crate::quantity::{Flow, Length, Unit};
use crate::rules::{Air, Level};
use crate::source::Source;
use crate::working::{Origin, Term, Working};

/// Steps being made.
pub(super) struct Making<'a> {
    pub(super) parts: &'a Parts<'a>,
    pub(super) home: Home,
    working: &'a mut Working,
    issues: &'a mut Vec<Issue>,
    pub(super) steps: Vec<Step>,
}

impl<'a> Making<'a> {
    pub(super) fn new(parts: &'a Parts<'a>, working: &'a mut Working, issues: &'a mut Vec<Issue>) -> Self {
        let home = Home::of(parts.facts.choices.rules);
        Self { parts, home, working, issues, steps: Vec::new() }
    }

    /// A step of the whole house.
    pub(super) fn step(&mut self, rule: StepRule, source: &'static Source, numbers: impl Into<Vec<Number>>) {
        self.keyed(StepKey::house(rule), source, numbers);
    }

    /// A step of any key.
    pub(super) fn keyed(&mut self, key: StepKey, source: &'static Source, numbers: impl Into<Vec<Number>>) {
        self.put(key, source, numbers.into());
    }

    #[inline(never)]
    fn put(&mut self, key: StepKey, source: &'static Source, numbers: Vec<Number>) {
        self.steps.push(Step {
            key,
            numbers,
            mark: None,
            source,
            status: Status::Open,
            checks: Vec::new(),
            list: Vec::new(),
        });
    }

    /// The list of the step made last.
    pub(super) fn works_through(&mut self, list: Vec<Listed>) {
        if let Some(step) = self.steps.last_mut() {
            step.list = list;
        }
    }

    /// A check of the step made last. Its second number is what is allowed.
    pub(super) fn check(
        &mut self,
        rule: CheckRule,
        verdict: Verdict,
        source: &'static Source,
        numbers: impl Into<Vec<Number>>,
    ) {
        self.found((rule, verdict), source, numbers.into());
    }

    #[inline(never)]
    fn found(&mut self, (rule, verdict): (CheckRule, Verdict), source: &'static Source, mut numbers: Vec<Number>) {
        if let Some(allowed) = numbers.get_mut(1) {
            allowed.name = NumberName::Allowed;
        }
        if let Some(step) = self.steps.last_mut() {
            step.checks.push(Check { rule, verdict, numbers, source });
        }
    }

    /// The same of something typed into a field, which is told when it fails.
    pub(super) fn judge(
        &mut self,
        field: Field,
        (rule, verdict): (CheckRule, Verdict),
        source: &'static Source,
        numbers: impl Into<Vec<Number>>,
    ) {
        if verdict == Verdict::Fails {
            self.say(Issue::new(Place::Field(field), Trouble::CheckFails(rule)));
        }
        self.check(rule, verdict, source, numbers);
    }

    /// Reports something.
    #[inline(never)]
    pub(super) fn say(&mut self, issue: Issue) {
        self.issues.push(issue);
    }

    /// A step whose first number is a given: the given's source says so.
    pub(super) fn step_by(&mut self, rule: StepRule, id: GivenId, numbers: impl Into<Vec<Number>>) {
        self.step(rule, self.parts.givens.get(id).source, numbers);
    }

    /// A registered value, or the person's own.
    #[inline(never)]
    pub(super) fn given(&self, name: NumberName, id: GivenId) -> Number {
        let unit = id.given().unit;
        Number { name, value: Some(self.parts.givens.value(id)), unit, origin: Origin::Given(id) }
    }

    /// What was typed into a field of the house, in its own unit.
    #[inline(never)]
    pub(super) fn typed(&self, name: NumberName, field: HouseField) -> Option<Number> {
        let found = self.parts.facts.found(field)?;
        let origin = Origin::Typed(Field::House(field));
        Some(Number { name, value: Some(found.value()), unit: found.unit(), origin })
    }

    /// Counted in the house.
    pub(super) fn count(&self, name: NumberName, count: usize) -> Number {
        Number { name, value: Some(count as f64), unit: Unit::Count, origin: Origin::Counted }
    }

    /// A calculated value, with its line.
    #[inline(never)]
    pub(super) fn line(
        &mut self,
        (name, formula): (NumberName, Formula),
        (value, unit): (f64, Unit),
        source: &'static Source,
        terms: &[Term],
    ) -> Number {
        let line = self.working.record(formula, (value, unit), source, terms);
        Number { name, value: Some(value), unit, origin: Origin::Line(line) }
    }

    /// A calculated number as a term of another line.
    pub(super) fn term(&self, symbol: &'static str, number: Number) -> Term {
        Term::new(symbol, number.value.unwrap_or_default(), number.unit, number.origin)
    }

    /// The total that is set at normal or at boost, in whole steps.
    #[inline(never)]
    pub(super) fn total(&self, level: Level) -> Number {
        let shares = self.parts.shares.at(level);
        let (value, unit) = self.in_steps(shares.total);
        Number { name: NumberName::Flow, value: Some(value), unit, origin: Origin::Line(shares.total_line) }
    }

    /// What a room is set to at normal.
    pub(super) fn share(&self, room: RoomId, air: Air) -> Number {
        let share = self.parts.shares.at(Level::Normal).share(room, air);
        let (value, unit) = self.in_steps(share.map_or(Flow::ZERO, |share| share.flow));
        let origin = share.map_or(Origin::Counted, |share| Origin::Line(share.line));
        Number { name: NumberName::Flow, value: Some(value), unit, origin }
    }

    /// The same total as a flow.
    pub(super) fn total_flow(&self, level: Level) -> Flow {
        self.parts.shares.at(level).total
    }

    /// A flow in the unit in which flows are set.
    #[inline(never)]
    pub(super) fn in_steps(&self, flow: Flow) -> (f64, Unit) {
        let unit = self.parts.shares.unit;
        (flow.as_unit(unit).unwrap_or_default(), unit)
    }

    /// A given length.
    pub(super) fn length(&self, id: GivenId) -> Length {
        self.parts.givens.length(id)
    }

    /// Height of a tube that lies flat, mm.
    pub(super) fn flat(&self) -> f64 {
        self.parts.runs.tube.flat_mm()
    }

    /// Outside diameter of the tube, and its term.
    #[inline(never)]
    pub(super) fn outside(&self) -> (Length, Term) {
        let mm = self.parts.runs.tube.outside_mm();
        (Length::from_mm(mm), Term::new("OD", mm, Unit::Millimetre, Origin::Counted))
    }
}
