//! ASHRAE 62.2, the form of 2016 to 2022: total rate, infiltration credit for a balanced system, local exhaust.
//!
//! The inch-pound and SI prints are not exact conversions of each other; the person chooses which is used.

use super::brief::flow;
use super::table::row;
use super::{Air, Brief, Follows, Level};
use crate::facts::RoomFacts;
use crate::formula::Formula;
use crate::given::GivenId;
use crate::house::{Credit, Field, HouseField, KitchenDraw, Print, RoomKind, Table, WetRooms};
use crate::issue::{Condition, Trouble};
use crate::quantity::Length;
use crate::quantity::Unit::{self, CubicFootPerMinute as CFM, LitrePerSecond as LS};
use crate::source::Source;
use crate::working::{LineId, Origin, Term};

static TOTAL: Source = Source::published("ASHRAE 62.2", "2016–2022", "section 4, total rate");
static TABLE_IP: Source = Source::published("ASHRAE 62.2", "2016–2022", "table 4.1a");
static TABLE_SI: Source = Source::memory("ASHRAE 62.2", "2016–2022", "table 4.1b");
static PEOPLE: Source = Source::memory("ASHRAE 62.2", "2016–2022", "section 4, more people than bedrooms + 1");
static INFILTRATION: Source = Source::published("ASHRAE 62.2", "2016–2022", "section 4, infiltration credit");
static BLOWER_DOOR: Source = Source::published("ASHRAE 62.2", "2016–2022", "flow at 50 Pa");
static BATHS: Source = Source::published("ASHRAE 62.2", "2013 and later", "section 5, bathrooms");
static KITCHENS: Source = Source::published("ASHRAE 62.2", "2013 and later", "section 5, kitchens");
static OTHER_KITCHEN: Source = Source::published("ASHRAE 62.2", "2013 and later", "section 5, other kitchen exhaust");

/// The coefficients and tables of one print.
struct Printed {
    area: Unit,
    rate: Unit,
    per_area: f64,
    per_person: f64,
    table: &'static Source,
    edges: [f64; 10],
    cells: [[f64; 5]; 10],
    bath: (f64, f64),
    other_kitchen: f64,
}

static INCH_POUND: Printed = Printed {
    area: Unit::SquareFoot,
    rate: CFM,
    per_area: 0.03,
    per_person: 7.5,
    table: &TABLE_IP,
    edges: [500.0, 1000.0, 1500.0, 2000.0, 2500.0, 3000.0, 3500.0, 4000.0, 4500.0, 5000.0],
    cells: [
        [30.0, 38.0, 45.0, 53.0, 60.0],
        [45.0, 53.0, 60.0, 68.0, 75.0],
        [60.0, 68.0, 75.0, 83.0, 90.0],
        [75.0, 83.0, 90.0, 98.0, 105.0],
        [90.0, 98.0, 105.0, 113.0, 120.0],
        [105.0, 113.0, 120.0, 128.0, 135.0],
        [120.0, 128.0, 135.0, 143.0, 150.0],
        [135.0, 143.0, 150.0, 158.0, 165.0],
        [150.0, 158.0, 165.0, 173.0, 180.0],
        [165.0, 173.0, 180.0, 188.0, 195.0],
    ],
    bath: (20.0, 50.0),
    other_kitchen: 300.0,
};

/// The SI print says "< 47" and "47–93": 47 m² itself is in the second row. The inch-pound rows include their upper edge.
const BELOW_47: f64 = 46.9999;

static SI: Printed = Printed {
    area: Unit::SquareMetre,
    rate: LS,
    per_area: 0.15,
    per_person: 3.5,
    table: &TABLE_SI,
    edges: [BELOW_47, 93.0, 139.0, 186.0, 232.0, 279.0, 325.0, 372.0, 418.0, 465.0],
    cells: [
        [14.0, 18.0, 21.0, 25.0, 28.0],
        [21.0, 24.0, 28.0, 31.0, 35.0],
        [28.0, 31.0, 35.0, 38.0, 42.0],
        [35.0, 38.0, 42.0, 45.0, 49.0],
        [42.0, 45.0, 49.0, 52.0, 56.0],
        [49.0, 52.0, 56.0, 59.0, 63.0],
        [56.0, 59.0, 63.0, 66.0, 70.0],
        [63.0, 66.0, 70.0, 73.0, 77.0],
        [70.0, 73.0, 77.0, 80.0, 84.0],
        [77.0, 80.0, 84.0, 87.0, 91.0],
    ],
    bath: (10.0, 25.0),
    other_kitchen: 150.0,
};

/// What the standard asks of the house.
pub fn ask(brief: &mut Brief) {
    let print = match brief.facts.choices.print {
        Print::InchPound => &INCH_POUND,
        Print::Si => &SI,
    };
    let total = total_rate(brief, print);
    let (total, line) = with_people(brief, print, total);
    let (rate, line) = fan_rate(brief, print, (total, line));
    brief.whole(Level::Normal, flow(rate, print.rate), line);
    local_exhaust(brief, print);
    brief.split_supply_by_kind();
    brief.say(Trouble::NoAwayRate);
}

fn total_rate(brief: &mut Brief, print: &'static Printed) -> (f64, LineId) {
    let (area, area_term) = brief.floor_area(print.area);
    let (bedrooms, bedrooms_term) = brief.bedrooms();
    let rate = print.per_area * area + print.per_person * (bedrooms + 1.0);
    let printed = Origin::Printed(&TOTAL);
    let terms = [
        Term::new("a", print.per_area, Unit::Ratio, printed),
        Term::new("b", print.per_person, Unit::Ratio, printed),
        area_term,
        bedrooms_term,
    ];
    let equation = (rate, brief.working.record(Formula::AshraeTotal, (rate, print.rate), &TOTAL, &terms));
    let cell = print.cells.get(row(area, &print.edges)).and_then(|cells| cells.get(bedrooms as usize - 1));
    let Some(&cell) = cell else { return equation };
    let terms = [area_term, bedrooms_term];
    let table = (cell, brief.working.record(Formula::AshraeTable, (cell, print.rate), print.table, &terms));
    let (formula, chosen, other) = match brief.facts.choices.table.unwrap_or(Table::Equation) {
        Table::Equation => (Formula::AshraeTable, equation, table),
        Table::Table => (Formula::AshraeTotal, table, equation),
    };
    brief.alternative(formula, flow(other.0, print.rate), other.1);
    chosen
}

/// More people than bedrooms + 1 add one person's rate each.
fn with_people(brief: &mut Brief, print: &'static Printed, (total, line): (f64, LineId)) -> (f64, LineId) {
    let extra = brief.facts.persons() - (brief.bedrooms().0 + 1.0);
    if extra <= 0.0 {
        return (total, line);
    }
    let rate = total + print.per_person * extra;
    let terms = [
        Term::new("Q_tot", total, print.rate, Origin::Line(line)),
        Term::new("b", print.per_person, Unit::Ratio, Origin::Printed(&TOTAL)),
        Term::new("P_extra", extra, Unit::Count, Origin::Counted),
    ];
    (rate, brief.working.record(Formula::AshraePeople, (rate, print.rate), &PEOPLE, &terms))
}

/// Q_fan = Q_tot − φ·Q_inf·A_ext with φ = 1 for a balanced system.
fn fan_rate(brief: &mut Brief, print: &'static Printed, (total, line): (f64, LineId)) -> (f64, LineId) {
    let (infiltration, source_line) = match infiltration(brief, print, (total, line)) {
        Ok(found) => found,
        Err(missing) => {
            if brief.facts.choices.credit == Credit::Claimed {
                brief.say(Trouble::CreditRefused(missing));
            }
            return (total, line);
        }
    };
    let exterior = brief.givens.value(GivenId::AshraeExteriorShare);
    let balanced = 1.0;
    let rate = (total - balanced * infiltration * exterior).max(0.0);
    let terms = [
        Term::new("Q_tot", total, print.rate, Origin::Line(line)),
        Term::new("φ", balanced, Unit::Ratio, Origin::Printed(&INFILTRATION)),
        Term::new("Q_inf", infiltration, print.rate, Origin::Line(source_line)),
        brief.givens.term("A_ext", GivenId::AshraeExteriorShare),
    ];
    let fan = brief.working.record(Formula::AshraeFan, (rate, print.rate), &INFILTRATION, &terms);
    if brief.facts.choices.credit == Credit::Claimed {
        return (rate, fan);
    }
    brief.alternative(Formula::AshraeFan, flow(rate, print.rate), fan);
    (total, line)
}

/// Q_inf = 0.052·Q_50·wsf·(H/H_r)^0.4, H_r 8.2 ft, at most the cap's share of Q_tot.
fn infiltration(
    brief: &mut Brief,
    print: &'static Printed,
    (total, total_line): (f64, LineId),
) -> Result<(f64, LineId), Condition> {
    let ach50 = brief.facts.ach50.ok_or(Condition::Tightness)?;
    let factor = brief.facts.weather_factor.ok_or(Condition::WeatherFactor)?;
    let height = brief.facts.envelope_height.ok_or(Condition::EnvelopeHeight)?;
    let height_ft = height.value_in(Unit::Foot).ok_or(Condition::EnvelopeHeight)?;
    let (q50, q50_line) = blower_door_flow(brief, print, ach50)?;
    let (share, reference) = (0.052, 8.2);
    let stack = libm::pow(height_ft / reference, 0.4);
    let found = share * q50 * factor * stack;
    let typed = |field| Origin::Typed(Field::House(field));
    let terms = [
        Term::new("Q_50", q50, print.rate, Origin::Line(q50_line)),
        Term::new("wsf", factor, Unit::Ratio, typed(HouseField::WeatherFactor)),
        Term::new("H", height_ft, Unit::Foot, typed(HouseField::EnvelopeHeight)),
        Term::new("H_r", reference, Unit::Foot, Origin::Printed(&INFILTRATION)),
    ];
    let line = brief.working.record(Formula::AshraeInfiltration, (found, print.rate), &INFILTRATION, &terms);
    let cap = brief.givens.get(GivenId::AshraeCap);
    if found <= cap.value * total {
        return Ok((found, line));
    }
    let capped = cap.value * total;
    let terms = [
        Term::new("Q_inf", found, print.rate, Origin::Line(line)),
        brief.givens.term("cap", GivenId::AshraeCap),
        Term::new("Q_tot", total, print.rate, Origin::Line(total_line)),
    ];
    Ok((capped, brief.working.record(Formula::AshraeCapped, (capped, print.rate), cap.source, &terms)))
}

fn blower_door_flow(brief: &mut Brief, print: &'static Printed, ach50: f64) -> Result<(f64, LineId), Condition> {
    let volume = brief.facts.volume();
    let (value, unit, per_hour) = match print.rate {
        CFM => (volume.as_ft3(), Unit::CubicFoot, 60.0),
        _ => (volume.as_m3(), Unit::CubicMetre, 3.6),
    };
    if value <= 0.0 {
        return Err(Condition::Volume);
    }
    let q50 = value * ach50 / per_hour;
    let terms = [
        Term::new("V", value, unit, Origin::Counted),
        Term::new("ACH_50", ach50, Unit::PerHour, Origin::Typed(Field::House(HouseField::Ach50))),
    ];
    Ok((q50, brief.working.record(Formula::BlowerDoorFlow, (q50, print.rate), &BLOWER_DOOR, &terms)))
}

fn local_exhaust(brief: &mut Brief, print: &'static Printed) {
    let wet = brief.facts.choices.wet.unwrap_or(WetRooms::Continuous);
    let draw = brief.facts.choices.kitchen.unwrap_or(KitchenDraw::Hood);
    for room in brief.facts.drawn() {
        let place = (room.id, Air::Extract);
        match (room.kind, wet) {
            (RoomKind::Bathroom, WetRooms::Continuous) => {
                brief.room(place, Level::Normal, (print.bath.0, print.rate), &BATHS);
            }
            (RoomKind::Bathroom, WetRooms::OnDemand) => {
                brief.room(place, Level::Boost, (print.bath.1, print.rate), &BATHS);
            }
            (kind, _) if kind.is_kitchen() && draw == KitchenDraw::System => kitchen(brief, print, room, wet),
            _ => {}
        }
    }
    let bath = flow(if wet == WetRooms::Continuous { print.bath.0 } else { print.bath.1 }, print.rate);
    let asked = brief.demand.minimums(Air::Extract, &Level::ALL);
    brief.split_extract(&BATHS, |room| asked.get(&room.id).unwrap_or(&bath).as_m3h());
    if wet == WetRooms::Continuous {
        brief.demand.boost = Follows::Share(GivenId::BoostShare);
    }
}

/// Kitchen exhaust by the system: 5 air changes if enclosed, or the rate of "other kitchen exhaust" on demand.
fn kitchen(brief: &mut Brief, print: &'static Printed, room: &RoomFacts, wet: WetRooms) {
    let place = (room.id, Air::Extract);
    if wet == WetRooms::OnDemand || room.open {
        if wet == WetRooms::Continuous {
            brief.say(Trouble::OpenKitchenContinuous);
        }
        return brief.room(place, Level::Boost, (print.other_kitchen, print.rate), &OTHER_KITCHEN);
    }
    let (Some(volume), Some(height)) = (room.volume(), Length::of(room.height)) else { return };
    let changes = 5.0;
    let per_hour = volume.as_m3() * changes;
    let terms = [
        Term::new("n", changes, Unit::PerHour, Origin::Printed(&KITCHENS)),
        Term::new("V", volume.as_m3(), Unit::CubicMetre, Origin::Counted),
        Term::new("h", height.as_m(), Unit::Metre, Origin::Counted),
    ];
    let value = (per_hour, Unit::CubicMetrePerHour);
    let line = brief.working.record_for(Some(room.id), Formula::KitchenAirChanges, value, &KITCHENS, &terms);
    brief.room_line(place, Level::Normal, value, line);
}
