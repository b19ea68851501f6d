//! Passive house criteria. Calculated in m³/h and m².
//!
//! The maximum level covers 30 m³/h per person and the wet rooms; the standard level is 0.77 of it and must change the
//! air of 2.5 m over the floor area 0.3 times an hour; the basic level is 0.54 of it.

use super::brief::flow;
use super::{Air, Brief, Level};
use crate::facts::RoomFacts;
use crate::formula::Formula;
use crate::given::GivenId;
use crate::house::RoomKind;
use crate::quantity::Unit::{Count, CubicMetre, CubicMetrePerHour as M3H, PerHour, Ratio, SquareMetre};
use crate::source::{ARITHMETIC, Source};
use crate::working::{LineId, Origin, Term};

static CRITERIA: Source = Source::memory("Passive house criteria", "", "average air change ≥ 0.3 1/h");
static SUPPLY: Source = Source::memory("Passive house practice", "", "bedrooms 20 to 50, living rooms 30 to 60 m³/h");
static HEIGHT_RULE: Source = Source::published("Passive house criteria", "", "volume = floor area × 2.5 m");

/// Height that counts, m.
const HEIGHT: f64 = 2.5;

/// What the criteria ask of the house.
pub fn ask(brief: &mut Brief) {
    let (maximum, line) = maximum(brief);
    for (level, id) in [(Level::Normal, GivenId::PassiveStandard), (Level::Away, GivenId::PassiveBasic)] {
        let share = brief.givens.get(id);
        let rate = share.value * maximum;
        let terms = [brief.givens.term("f", id), Term::new("q_max", maximum, M3H, Origin::Line(line))];
        let line = brief.working.record(Formula::LevelShare, (rate, M3H), share.source, &terms);
        brief.whole(level, flow(rate, M3H), line);
    }
    brief.whole(Level::Boost, flow(maximum, M3H), line);
    for room in brief.facts.drawn() {
        brief.room_given((room.id, Air::Extract), Level::Boost, rate_of(room.kind));
    }
    let givens = brief.givens;
    brief.demand.away = super::Follows::Stated;
    brief.split_extract(givens.get(GivenId::PassiveKitchen).source, |room| givens.value(rate_of(room.kind)));
    brief.split_supply(&SUPPLY, supply_weight);
}

/// What a supply room would get of 160 m³/h: 30 for one sleeper and 45 for two, bedrooms 20 to 50; a living room 55;
/// any other room what one person needs.
fn supply_weight(room: &RoomFacts) -> f64 {
    match room.kind {
        kind if kind.is_bedroom() => (15.0 + 15.0 * room.sleepers).clamp(20.0, 50.0),
        RoomKind::Living | RoomKind::LivingKitchen => 55.0,
        _ => 30.0,
    }
}

/// q_max = max(30·P, ΣE), raised where the standard level would not reach 0.3 air changes.
fn maximum(brief: &mut Brief) -> (f64, LineId) {
    let persons = brief.facts.persons();
    let by_people = persons * brief.givens.value(GivenId::PassivePerson);
    let terms = [Term::new("P", persons, Count, Origin::Counted), brief.givens.term("q_P", GivenId::PassivePerson)];
    let source = brief.givens.get(GivenId::PassivePerson).source;
    let people_line = brief.working.record(Formula::PersonRate, (by_people, M3H), source, &terms);
    let wet = brief.facts.drawn().fold(0.0, |sum, room| sum + brief.givens.value(rate_of(room.kind)));
    let needed = by_people.max(wet);
    let terms = [Term::new("Σq", wet, M3H, Origin::Counted)];
    let wet_source = brief.givens.get(GivenId::PassiveKitchen).source;
    let wet_line = brief.working.record(Formula::SumOfRooms, (wet, M3H), wet_source, &terms);
    let terms = [
        Term::new("q_1", by_people, M3H, Origin::Line(people_line)),
        Term::new("q_2", wet, M3H, Origin::Line(wet_line)),
    ];
    let line = brief.working.record(Formula::Larger, (needed, M3H), &ARITHMETIC, &terms);
    let (area, area_term) = brief.floor_area(SquareMetre);
    let volume = area * HEIGHT;
    let changes = brief.givens.value(GivenId::PassiveChanges);
    let standard = brief.givens.value(GivenId::PassiveStandard);
    let floor = changes * volume / standard;
    let terms = [area_term, Term::new("h", HEIGHT, Ratio, Origin::Printed(&HEIGHT_RULE))];
    let volume_line = brief.working.record(Formula::FloorVolume, (volume, CubicMetre), &HEIGHT_RULE, &terms);
    let terms = [
        Term::new("q", needed, M3H, Origin::Line(line)),
        Term::new("n", changes, PerHour, Origin::Given(GivenId::PassiveChanges)),
        Term::new("V", volume, CubicMetre, Origin::Line(volume_line)),
        brief.givens.term("f", GivenId::PassiveStandard),
    ];
    let raised = needed.max(floor);
    (raised, brief.working.record(Formula::PassiveMaximum, (raised, M3H), &CRITERIA, &terms))
}

const fn rate_of(kind: RoomKind) -> GivenId {
    match kind {
        RoomKind::Kitchen | RoomKind::LivingKitchen => GivenId::PassiveKitchen,
        RoomKind::Bathroom => GivenId::PassiveBathroom,
        _ => GivenId::PassiveOther,
    }
}
