//! England: Approved Document F volume 1, 2021 edition, balanced system with heat recovery. Calculated in L/s and m².

use super::brief::flow;
use super::{Air, Brief, Level};
use crate::formula::Formula;
use crate::house::RoomKind;
use crate::issue::Trouble;
use crate::quantity::Unit::{LitrePerSecond as LS, Ratio, SquareMetre};
use crate::source::Source;
use crate::working::{Origin, Term};

static TABLE_1_3: Source = Source::published("Approved Document F vol 1", "2021", "table 1.3");
static AREA_RATE: Source = Source::published("Approved Document F vol 1", "2021", "table 1.3, 0.3 L/s per m²");
static TABLE_1_2: Source = Source::published("Approved Document F vol 1", "2021", "table 1.2, minimum high rate");
static BY_VOLUME: Source =
    Source::memory("Approved Document F vol 1", "2021", "supply by habitable-room volume").doubted();

/// What the document asks of the house.
pub fn ask(brief: &mut Brief) {
    whole_dwelling(brief);
    for room in brief.facts.drawn() {
        if let Some(rate) = high_rate(room.kind) {
            brief.room((room.id, Air::Extract), Level::Boost, (rate, LS), &TABLE_1_2);
        }
    }
    brief.split_supply(&BY_VOLUME, |room| match room.volume() {
        Some(volume) if habitable(room.kind) => volume.as_m3(),
        _ => 0.0,
    });
    brief.split_extract(&TABLE_1_2, |room| high_rate(room.kind).unwrap_or(LEAST_WEIGHT));
    brief.say(Trouble::NoAwayRate);
}

/// Table 1.3 in L/s for 1 to 5 bedrooms, and for each further bedroom.
const BEDROOMS: [f64; 5] = [19.0, 25.0, 31.0, 37.0, 43.0];
const FURTHER: f64 = 6.0;
/// One habitable room only.
const ONE_ROOM: f64 = 13.0;
/// L/s per m² of internal floor area.
const PER_AREA: f64 = 0.3;

fn whole_dwelling(brief: &mut Brief) {
    let (_, bedrooms_term) = brief.bedrooms();
    let habitable_rooms = brief.facts.supplied().filter(|room| habitable(room.kind)).count();
    let table = match (brief.facts.bedrooms(), habitable_rooms) {
        (0 | 1, 1) => ONE_ROOM,
        (count, _) => by_bedrooms(count.max(1)),
    };
    let table_line = brief.working.record(Formula::AdfTable, (table, LS), &TABLE_1_3, &[bedrooms_term]);
    let (area, area_term) = brief.floor_area(SquareMetre);
    let by_area = PER_AREA * area;
    let terms = [Term::new("a", PER_AREA, Ratio, Origin::Printed(&AREA_RATE)), area_term];
    let area_line = brief.working.record(Formula::AdfArea, (by_area, LS), &AREA_RATE, &terms);
    let table = ("Q_table", table, table_line);
    let (whole, line) = brief.larger(Formula::AdfWhole, LS, table, ("Q_area", by_area, area_line));
    brief.whole(Level::Normal, flow(whole, LS), line);
}

/// A cellar is not habitable: it counts neither as a room nor by its volume.
fn habitable(kind: RoomKind) -> bool {
    kind.role().takes_supply() && kind != RoomKind::Basement
}

fn by_bedrooms(count: u32) -> f64 {
    let last = BEDROOMS.len() as u32;
    let within = BEDROOMS[count.min(last) as usize - 1];
    within + FURTHER * f64::from(count.saturating_sub(last))
}

/// Table 1.2: minimum high rate of a continuous extract, L/s.
pub const fn high_rate(kind: RoomKind) -> Option<f64> {
    match kind {
        RoomKind::Kitchen | RoomKind::LivingKitchen => Some(13.0),
        RoomKind::Utility | RoomKind::Bathroom => Some(8.0),
        RoomKind::Wc => Some(6.0),
        _ => None,
    }
}

/// Weight of a drawn room that the table does not name: as its smallest entry.
pub const LEAST_WEIGHT: f64 = 6.0;
