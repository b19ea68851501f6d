//! Netherlands: building decree 2012, article 3.29, kept by its 2024 successor. Calculated in L/s and m².
//!
//! Every living area asks for 0.9 L/s per m², 7 at least, 21 with a cooker. One system for several areas brings at least
//! the largest of them and 70 % of their sum, since nobody is everywhere at once. Each room with people in it counts as
//! an area of its own here.

use super::brief::flow;
use super::{Air, Brief, Level};
use crate::facts::RoomFacts;
use crate::formula::Formula;
use crate::house::RoomKind;
use crate::issue::Trouble;
use crate::quantity::Unit::{LitrePerSecond as LS, Ratio, SquareMetre};
use crate::source::Source;
use crate::working::{Origin, Term};

static AREAS: Source = Source::published("Bouwbesluit", "2012", "article 3.29");
static EXTRACT: Source = Source::published("Bouwbesluit", "2012", "articles 3.29 and 3.34");

/// L/s per m² of a living area, its least, and with a cooker.
const PER_AREA: f64 = 0.9;
const LEAST: f64 = 7.0;
const COOKER: f64 = 21.0;
/// Share of the sum that a shared supply brings.
const SHARED: f64 = 0.7;

/// What the decree asks of the house.
pub fn ask(brief: &mut Brief) {
    let facts = brief.facts;
    let rates: Vec<f64> = facts.supplied().map(area_rate).collect();
    let largest = rates.iter().fold(0.0_f64, |most, rate| most.max(*rate));
    let sum = rates.iter().fold(0.0, |sum, rate| sum + rate);
    let whole = largest.max(SHARED * sum);
    let terms = [
        Term::new("q_max", largest, LS, Origin::Counted),
        Term::new("s", SHARED, Ratio, Origin::Printed(&AREAS)),
        Term::new("Σq", sum, LS, Origin::Counted),
    ];
    let line = brief.working.record(Formula::SharedAreas, (whole, LS), &AREAS, &terms);
    brief.whole(Level::Normal, flow(whole, LS), line);
    for room in facts.drawn() {
        if let Some(rate) = extract_rate(room.kind) {
            brief.room((room.id, Air::Extract), Level::Normal, (rate, LS), &EXTRACT);
        }
    }
    brief.split_supply(&AREAS, area_rate);
    brief.split_extract(&EXTRACT, |room| extract_rate(room.kind).unwrap_or(LEAST));
    brief.say(Trouble::NoAwayRate);
}

fn area_rate(room: &RoomFacts) -> f64 {
    let area = room.area.and_then(|area| area.value_in(SquareMetre)).unwrap_or(0.0);
    let least = if room.kind.is_kitchen() { COOKER } else { LEAST };
    (PER_AREA * area).max(least)
}

const fn extract_rate(kind: RoomKind) -> Option<f64> {
    match kind {
        RoomKind::Kitchen | RoomKind::LivingKitchen => Some(COOKER),
        RoomKind::Bathroom => Some(14.0),
        RoomKind::Wc => Some(7.0),
        _ => None,
    }
}
