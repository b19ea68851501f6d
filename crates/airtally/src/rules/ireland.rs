//! Ireland: Technical Guidance Document F, 2019, balanced system. Calculated in L/s and m².

use super::brief::flow;
use super::{Air, Brief, Level, adf};
use crate::formula::Formula;
use crate::issue::Trouble;
use crate::quantity::Unit::{Count, LitrePerSecond as LS, Ratio, SquareMetre};
use crate::source::{PRACTICE, Source};
use crate::working::{Origin, Term};

static PEOPLE: Source = Source::published("TGD F", "2019", "5 L/s + 4 L/s per person, seen at second hand");
static AREA_RATE: Source = Source::memory("TGD F", "2019", "0.3 L/s per m²").doubted();
static BOOST: Source = Source::memory("TGD F", "2019", "boost extract").doubted();

/// L/s whatever the number of people, per person, and per m².
const CONSTANT: f64 = 5.0;
const PER_PERSON: f64 = 4.0;
const PER_AREA: f64 = 0.3;

/// What the document asks of the house.
pub fn ask(brief: &mut Brief) {
    let persons = brief.facts.persons();
    let by_people = CONSTANT + PER_PERSON * persons;
    let printed = Origin::Printed(&PEOPLE);
    let terms = [
        Term::new("c", CONSTANT, LS, printed),
        Term::new("q_P", PER_PERSON, LS, printed),
        Term::new("P", persons, Count, Origin::Counted),
    ];
    let people_line = brief.working.record(Formula::ConstantAndPeople, (by_people, LS), &PEOPLE, &terms);
    let (area, area_term) = brief.floor_area(SquareMetre);
    let by_area = PER_AREA * area;
    let terms = [Term::new("a", PER_AREA, Ratio, Origin::Printed(&AREA_RATE)), area_term];
    let area_line = brief.working.record(Formula::AreaRate, (by_area, LS), &AREA_RATE, &terms);
    let people = ("q_1", by_people, people_line);
    let (whole, line) = brief.larger(Formula::Larger, LS, people, ("q_2", by_area, area_line));
    brief.whole(Level::Normal, flow(whole, LS), line);
    for room in brief.facts.drawn() {
        if let Some(rate) = adf::high_rate(room.kind) {
            brief.room((room.id, Air::Extract), Level::Boost, (rate, LS), &BOOST);
        }
    }
    brief.split_extract(&BOOST, |room| adf::high_rate(room.kind).unwrap_or(adf::LEAST_WEIGHT));
    brief.split_supply(&PRACTICE, |room| room.volume().map_or(0.0, |volume| volume.as_m3()));
    brief.say(Trouble::NoAwayRate);
}
