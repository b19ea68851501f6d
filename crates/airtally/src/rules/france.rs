//! France: order of 24 March 1982, amended 1983. Calculated in m³/h by the number of main rooms.
//!
//! Boost is the largest flow every wet room must reach (article 3); normal is the reduced total (article 4).

use super::brief::flow;
use super::{Air, Brief, Level};
use crate::formula::Formula;
use crate::house::RoomKind;
use crate::issue::Trouble;
use crate::quantity::Unit::{Count, CubicMetrePerHour as M3H};
use crate::source::Source;
use crate::working::{Origin, Term};

static LARGEST: Source = Source::published("Arrêté du 24 mars 1982", "amended 1983", "article 3, seen at second hand");
static REDUCED: Source = Source::published("Arrêté du 24 mars 1982", "amended 1983", "article 4, seen at second hand");

/// Article 3 by main rooms, 1 to 5 and more.
const KITCHEN: [f64; 5] = [75.0, 90.0, 105.0, 120.0, 135.0];
const BATH: [f64; 5] = [15.0, 15.0, 30.0, 30.0, 30.0];
const SINGLE_WC: [f64; 5] = [15.0, 15.0, 15.0, 30.0, 30.0];
const OTHER: f64 = 15.0;
/// Article 4 by main rooms, 1 to 7.
const TOTAL: [f64; 7] = [35.0, 60.0, 75.0, 90.0, 105.0, 120.0, 135.0];
const REDUCED_KITCHEN: [f64; 7] = [20.0, 30.0, 45.0, 45.0, 45.0, 45.0, 45.0];

/// What the order asks of the house.
pub fn ask(brief: &mut Brief) {
    // A cellar is no main room, whatever air it gets.
    let main = brief.facts.supplied().filter(|room| room.kind != RoomKind::Basement).count().max(1);
    let wcs = brief.facts.drawn().filter(|room| room.kind == RoomKind::Wc).count();
    let total = cell(&TOTAL, main);
    let terms = [Term::new("n", main as f64, Count, Origin::Counted)];
    let line = brief.working.record(Formula::RoomsTable, (total, M3H), &REDUCED, &terms);
    brief.whole(Level::Normal, flow(total, M3H), line);
    let largest = |kind: RoomKind| match kind {
        kind if kind.is_kitchen() => cell(&KITCHEN, main),
        RoomKind::Bathroom => cell(&BATH, main),
        RoomKind::Wc if wcs == 1 => cell(&SINGLE_WC, main),
        _ => OTHER,
    };
    for room in brief.facts.drawn() {
        brief.room((room.id, Air::Extract), Level::Boost, (largest(room.kind), M3H), &LARGEST);
        if room.kind.is_kitchen() {
            brief.room((room.id, Air::Extract), Level::Normal, (cell(&REDUCED_KITCHEN, main), M3H), &REDUCED);
        }
    }
    brief.split_extract(&LARGEST, |room| largest(room.kind));
    brief.split_supply_by_kind();
    brief.say(Trouble::NoAwayRate);
}

/// The cell for a number of main rooms; the last column counts for all beyond it.
fn cell<const N: usize>(table: &[f64; N], rooms: usize) -> f64 {
    table[rooms.clamp(1, N) - 1]
}
