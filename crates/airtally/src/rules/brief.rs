//! What every rule set is handed, and how it writes down what it asks.

use super::{Air, Alternative, Demand, Follows, Level, Requirement, Scope, Weight};
use crate::facts::{Facts, RoomFacts};
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::house::{Field, HouseField, RoomId, RoomKind};
use crate::issue::{Issue, Place, Trouble};
use crate::quantity::{Flow, Unit};
use crate::source::{ARITHMETIC, PRACTICE, Source};
use crate::working::{LineId, Origin, Term, Working};

/// The facts, the givens, the page to calculate on and the demand to fill in.
pub struct Brief<'a> {
    /// The house as numbers.
    pub facts: &'a Facts,
    /// The registry with settings applied.
    pub givens: &'a Givens,
    /// Where lines are recorded.
    pub working: &'a mut Working,
    /// Where issues are collected.
    pub issues: &'a mut Vec<Issue>,
    /// What has been asked so far.
    pub demand: Demand,
}

impl<'a> Brief<'a> {
    /// An empty demand.
    pub fn new(facts: &'a Facts, givens: &'a Givens, working: &'a mut Working, issues: &'a mut Vec<Issue>) -> Self {
        let demand = Demand {
            requirements: Vec::with_capacity(2 * facts.rooms.len()),
            alternatives: Vec::new(),
            uncredited: None,
            supply: Vec::new(),
            supply_source: &PRACTICE,
            extract: Vec::new(),
            extract_source: &PRACTICE,
            most: None,
            boost: Follows::Stated,
            away: Follows::Stated,
        };
        Self { facts, givens, working, issues, demand }
    }

    /// Asks for a whole-dwelling flow at a level.
    pub fn whole(&mut self, level: Level, flow: Flow, line: LineId) {
        self.demand.requirements.push(Requirement { scope: Scope::Whole, level, flow, line });
    }

    /// Asks for a flow in one room as printed, in the unit it is printed in.
    pub fn room(
        &mut self,
        (room, air): (RoomId, Air),
        level: Level,
        (value, unit): (f64, Unit),
        source: &'static Source,
    ) {
        let terms = [Term::new("q", value, unit, Origin::Printed(source))];
        let line = self.working.record_for(Some(room), Formula::RoomMinimum, (value, unit), source, &terms);
        self.room_line((room, air), level, (value, unit), line);
    }

    /// Asks for a flow in one room that comes from the registry.
    pub fn room_given(&mut self, (room, air): (RoomId, Air), level: Level, id: GivenId) {
        let (resolved, unit) = (self.givens.get(id), id.given().unit);
        let terms = [self.givens.term("q", id)];
        let value = (resolved.value, unit);
        let line = self.working.record_for(Some(room), Formula::RoomMinimum, value, resolved.source, &terms);
        self.room_line((room, air), level, value, line);
    }

    /// Asks for a flow in one room that a line explains.
    pub fn room_line(&mut self, (room, air): (RoomId, Air), level: Level, (value, unit): (f64, Unit), line: LineId) {
        let flow = flow(value, unit);
        self.demand.requirements.push(Requirement { scope: Scope::Room(room, air), level, flow, line });
    }

    /// The larger of two rates, with the source of the one that wins.
    pub fn larger(
        &mut self,
        formula: Formula,
        unit: Unit,
        first: (&'static str, f64, LineId),
        second: (&'static str, f64, LineId),
    ) -> (f64, LineId) {
        let (_, rate, winner) = if second.1 > first.1 { second } else { first };
        let source = self.working.line(winner).map_or(&ARITHMETIC, |line| line.source);
        let terms = [first, second].map(|(symbol, rate, line)| Term::new(symbol, rate, unit, Origin::Line(line)));
        (rate, self.working.record(formula, (rate, unit), source, &terms))
    }

    /// Notes another legal reading.
    pub fn alternative(&mut self, formula: Formula, flow: Flow, line: LineId) {
        self.demand.alternatives.push(Alternative { formula, flow, line });
    }

    /// Splits supply by a weight per room.
    pub fn split_supply(&mut self, source: &'static Source, weight: impl Fn(&RoomFacts) -> f64) {
        self.demand.supply_source = source;
        self.demand.supply = self.facts.supplied().map(|room| Weight { room: room.id, weight: weight(room) }).collect();
    }

    /// Splits extract by a weight per room.
    pub fn split_extract(&mut self, source: &'static Source, weight: impl Fn(&RoomFacts) -> f64) {
        self.demand.extract_source = source;
        self.demand.extract = self.facts.drawn().map(|room| Weight { room: room.id, weight: weight(room) }).collect();
    }

    /// Splits supply by the registered weights: living 3, bedrooms 2, others 1.5.
    pub fn split_supply_by_kind(&mut self) {
        let source = self.givens.get(GivenId::WeightLiving).source;
        let [living, bedroom, other] =
            [GivenId::WeightLiving, GivenId::WeightBedroom, GivenId::WeightOther].map(|id| self.givens.value(id));
        self.split_supply(source, |room| match room.kind {
            RoomKind::Living | RoomKind::LivingKitchen => living,
            RoomKind::MainBedroom | RoomKind::Bedroom => bedroom,
            _ => other,
        });
    }

    /// The floor area in a unit, as a term.
    pub fn floor_area(&mut self, unit: Unit) -> (f64, Term) {
        let area = self.facts.floor_area_in(unit);
        let origin = match self.facts.floor_area {
            Some(_) => Origin::Typed(Field::House(HouseField::FloorArea)),
            None => {
                let terms = [Term::new("ΣA", area, unit, Origin::Counted)];
                Origin::Line(self.working.record(Formula::FloorArea, (area, unit), &ARITHMETIC, &terms))
            }
        };
        (area, Term::new("A", area, unit, origin))
    }

    /// The bedrooms that count: at least one, since every rule set has one in its first column.
    pub fn bedrooms(&self) -> (f64, Term) {
        let count = f64::from(self.facts.bedrooms().max(1));
        (count, Term::new("N", count, Unit::Count, Origin::Counted))
    }

    /// Reports something about the house.
    pub fn say(&mut self, trouble: Trouble) {
        self.issues.push(Issue::new(Place::House, trouble));
    }

    /// Reports something about a field of the house.
    pub fn say_at(&mut self, field: HouseField, trouble: Trouble) {
        self.issues.push(Issue::new(Place::Field(Field::House(field)), trouble));
    }
}

/// A flow from a value in one of the flow units; zero for a unit of another kind, which no rule set uses.
pub fn flow(value: f64, unit: Unit) -> Flow {
    match unit {
        Unit::LitrePerSecond => Flow::from_ls(value),
        Unit::CubicFootPerMinute => Flow::from_cfm(value),
        Unit::CubicMetrePerHour => Flow::from_m3h(value),
        _ => Flow::ZERO,
    }
}
