//! EN 16798-1:2019, residential defaults by category. Calculated in L/s and m². National annexes may replace them.

use super::brief::flow;
use super::{Brief, Level};
use crate::formula::Formula;
use crate::given::GivenId;
use crate::house::RoomKind;
use crate::issue::Trouble;
use crate::quantity::Unit::{Count, LitrePerSecond as LS, Ratio, SquareMetre};
use crate::source::Source;
use crate::working::{Origin, Term};

static BY_AREA: Source = Source::memory("EN 16798-1", "2019", "annex B, total by floor area");
static BY_PEOPLE: Source = Source::memory("EN 16798-1", "2019", "annex B, supply per person");
static EXTRACT: Source = Source::memory("EN 15251", "2007", "extract, category II").doubted();

/// L/s per m² and L/s per person, categories I to IV; category IV names no rate per person.
const PER_AREA: [f64; 4] = [0.49, 0.42, 0.35, 0.23];
const PER_PERSON: [f64; 4] = [10.0, 7.0, 4.0, 0.0];

/// What the chosen category asks of the house.
pub fn ask(brief: &mut Brief) {
    let category = (brief.givens.value(GivenId::EnCategory) as usize).clamp(1, PER_AREA.len()) - 1;
    let (area, area_term) = brief.floor_area(SquareMetre);
    let by_area = PER_AREA[category] * area;
    let category_term = brief.givens.term("category", GivenId::EnCategory);
    let terms = [Term::new("a", PER_AREA[category], Ratio, Origin::Printed(&BY_AREA)), area_term, category_term];
    let area_line = brief.working.record(Formula::AreaRate, (by_area, LS), &BY_AREA, &terms);
    let persons = brief.facts.persons();
    let by_people = PER_PERSON[category] * persons;
    let terms = [
        Term::new("P", persons, Count, Origin::Counted),
        Term::new("q_P", PER_PERSON[category], LS, Origin::Printed(&BY_PEOPLE)),
    ];
    let people_line = brief.working.record(Formula::PersonRate, (by_people, LS), &BY_PEOPLE, &terms);
    let area = ("q_1", by_area, area_line);
    let (whole, line) = brief.larger(Formula::Larger, LS, area, ("q_2", by_people, people_line));
    brief.whole(Level::Normal, flow(whole, LS), line);
    brief.demand.boost = super::Follows::Share(GivenId::BoostShare);
    brief.split_supply_by_kind();
    brief.split_extract(&EXTRACT, |room| match room.kind {
        RoomKind::Kitchen | RoomKind::LivingKitchen => 20.0,
        RoomKind::Bathroom => 15.0,
        _ => 10.0,
    });
    brief.say(Trouble::NoAwayRate);
}
