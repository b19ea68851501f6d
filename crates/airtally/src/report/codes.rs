//! What every rule set asks of the same house, what decides it there, and what it does not know.

use crate::facts::Facts;
use crate::formula::Formula;
use crate::given::Givens;
use crate::house::Role;
use crate::issue::Condition;
use crate::quantity::Flow;
use crate::rules::{Demand, RuleSet};
use crate::shares::{Asked, Asks, Shares};
use crate::working::{Line, LineId, Term, Working};

/// What a rule set would ask of the house.
#[derive(Clone, Debug, PartialEq)]
pub struct CodeTotals {
    /// The rule set.
    pub rules: RuleSet,
    /// Required totals at away, normal and boost, before rounding.
    pub required: [Flow; 3],
    /// What decides the normal total; `None` where nothing asks for any air.
    pub governs: Option<Governs>,
    /// What the normal total rests on and the house does not say.
    pub unknown: Vec<Unknown>,
}

/// What decides a total.
#[derive(Clone, Debug, PartialEq)]
pub struct Governs {
    /// What asks.
    pub by: Asks,
    /// The equation or table that made the number, with everything between it and the total left out that only picks.
    pub line: Line,
    /// The numbers put in.
    pub terms: Vec<Term>,
    /// Where the number is a share: of what.
    pub share_of: Option<Formula>,
}

/// Something a total rests on that was not typed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Unknown {
    /// A room's floor area: the total can only be too low.
    Areas,
    /// The people: the sleepers are counted in their place.
    People(f64),
    /// What a credit for leaks needs: it is not counted, so the total can only be too high.
    Credit(Condition),
}

impl CodeTotals {
    /// What a rule set asks. `aside` is a page to calculate on; it is wiped first.
    pub fn of(rules: RuleSet, facts: &Facts, givens: &Givens, aside: &mut Working) -> Self {
        aside.clear();
        let demand = Demand::of(rules, facts, givens, aside, &mut Vec::new());
        let (asked, required) = Shares::required(facts, &demand, givens, aside);
        let governs = asked.first().and_then(|first| governs(first, aside));
        let unknown = unknown(&asked, &demand, facts, aside);
        Self { rules, required, governs, unknown }
    }
}

fn governs(first: &Asked, working: &Working) -> Option<Governs> {
    let made = maker(first, working);
    let line = working.line(made)?;
    let terms = working.terms(made).to_vec();
    let share_of = match line.formula {
        Formula::LevelShare => terms.iter().find_map(Term::line).and_then(|whole| working.line(working.picked(whole))),
        _ => None,
    };
    Some(Governs { by: first.by, line, terms, share_of: share_of.map(|whole| whole.formula) })
}

/// A sum of rooms is an answer of its own; a whole-dwelling rate is followed to where it was made.
fn maker(first: &Asked, working: &Working) -> LineId {
    match first.by {
        Asks::WholeDwelling => working.picked(first.line),
        _ => first.line,
    }
}

fn unknown(asked: &[Asked], demand: &Demand, facts: &Facts, working: &Working) -> Vec<Unknown> {
    let Some(first) = asked.first() else { return Vec::new() };
    let unmeasured = facts.rooms.iter().any(|room| room.role != Role::Never && room.area.is_none());
    let area_counts = || asked.iter().any(|asked| rests(working, asked.line, by_area));
    let guessed = facts.people.is_none() && rests(working, maker(first, working), by_people);
    let credit = demand.uncredited.filter(|_| first.by == Asks::WholeDwelling);
    let mut found = Vec::new();
    if unmeasured && area_counts() {
        found.push(Unknown::Areas);
    }
    if guessed {
        found.push(Unknown::People(facts.persons()));
    }
    if let Some(missing) = credit {
        found.push(Unknown::Credit(missing));
    }
    found
}

const fn by_area(formula: Formula) -> bool {
    matches!(formula, Formula::FloorArea | Formula::SharedAreas | Formula::KitchenAirChanges)
}

const fn by_people(formula: Formula) -> bool {
    matches!(formula, Formula::PersonRate | Formula::ConstantAndPeople | Formula::AshraePeople)
}

/// Whether an equation of this kind made a line or a number put into it. Lines only ever point to earlier ones.
fn rests(working: &Working, line: LineId, kind: fn(Formula) -> bool) -> bool {
    working.line(line).is_some_and(|found| kind(found.formula))
        || working.terms(line).iter().filter_map(Term::line).any(|below| rests(working, below, kind))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::edit::Edit;
    use crate::house::{Field, House, HouseField, RoomField, RoomKind};
    use crate::quantity::Unit;
    use crate::report::Report;

    /// A living room of 30 m², a bedroom of 12 m² for two and a bathroom of 6 m².
    fn small() -> House {
        let rooms = [(RoomKind::Living, "30"), (RoomKind::MainBedroom, "12"), (RoomKind::Bathroom, "6")];
        rooms.into_iter().fold(House::new(), |house, (kind, area)| {
            let house = Edit::AddRoom(kind).apply(&house);
            let id = house.rooms[house.rooms.len() - 1].id;
            Edit::Set(Field::Room(id, RoomField::Area), area.to_owned(), Unit::SquareMetre).apply(&house)
        })
    }

    fn under(house: &House, rules: RuleSet) -> CodeTotals {
        Report::of(house.clone()).codes().iter().find(|code| code.rules == rules).expect("every rule set").clone()
    }

    fn made(code: &CodeTotals) -> Option<(Asks, Formula)> {
        code.governs.as_ref().map(|governs| (governs.by, governs.line.formula))
    }

    #[test]
    fn what_decides_is_followed_to_the_equation_that_made_it() {
        // England: 19 L/s for one bedroom against 0.3 L/s × 48 m² = 14.4 L/s.
        let england = under(&small(), RuleSet::Adf2021);
        assert_eq!(made(&england), Some((Asks::WholeDwelling, Formula::AdfTable)));
        // With 200 m² the area decides: 60 L/s.
        let large = Edit::Set(Field::House(HouseField::FloorArea), "200".to_owned(), Unit::SquareMetre).apply(&small());
        let england = under(&large, RuleSet::Adf2021);
        assert_eq!(made(&england), Some((Asks::WholeDwelling, Formula::AdfArea)));
    }

    #[test]
    fn a_share_says_of_what() {
        // Passive house: 2 people × 30 = 60 m³/h against a bathroom of 40; standard is 77 % of it.
        let passive = under(&small(), RuleSet::PassiveHouse);
        assert_eq!(made(&passive), Some((Asks::WholeDwelling, Formula::LevelShare)));
        assert_eq!(passive.governs.and_then(|governs| governs.share_of), Some(Formula::PersonRate));
    }

    #[test]
    fn what_a_total_rests_on_and_the_house_does_not_say_is_named() {
        let credit = Unknown::Credit(Condition::Tightness);
        assert!(under(&small(), RuleSet::Ashrae2016).unknown.contains(&credit));
        assert!(!under(&small(), RuleSet::Ashrae2010).unknown.contains(&credit), "its edition has no such credit");
        assert_eq!(under(&small(), RuleSet::Adf2021).unknown, [], "bedrooms and areas are all it asks");
        let room = Edit::AddRoom(RoomKind::Bedroom).apply(&small());
        assert_eq!(under(&room, RuleSet::Adf2021).unknown, [Unknown::Areas]);
        assert_eq!(under(&room, RuleSet::Canada).unknown, [], "a count of rooms needs no area");
    }
}
