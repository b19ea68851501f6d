//! More people or more area never lower a requirement, unless the standard itself does. The exceptions, each shown to
//! be one:
//!
//! * ASHRAE 62.2 with the infiltration credit: more volume at the same air changes means more infiltration.
//! * ASHRAE 62.2 by the printed table: its cells are the upper edge of their row, so the equation beyond it can be less.
//! * Approved Document F asks 13 L/s of a dwelling of one habitable room. While no habitable room is entered, a bedroom
//!   is counted and 19 L/s are asked, so the first room entered lowers the rate.
//!
//! DIN 1946-6 turns down beyond 287 m² (2019); it is held at 210 m², so it is no exception here.

use super::{config, houses};
use airtally::edit::Edit;
use airtally::house::{Choices, Credit, Field, House, HouseField, RoomField, RoomId, RoomKind, Table};
use airtally::quantity::Unit;
use airtally::report::Report;
use airtally::rules::{Level, RuleSet};
use proptest::prelude::*;

/// Of a flow: what adding areas in another unit may lose.
const NOISE: f64 = 1e-9;

proptest! {
    #![proptest_config(config())]

    #[test]
    fn more_area_never_asks_for_less(house in houses::house(), more in 1..3000_u32, which in any::<prop::sample::Index>()) {
        prop_assume!(!may_fall(&house) && !house.rooms.is_empty());
        let room = house.rooms[which.index(house.rooms.len())].id;
        let larger = with_area(&house, room, f64::from(more) / 100.0);
        prop_assert!(asks_no_less(&house, &larger), "{:?} {:?}", required(&house), required(&larger));
    }

    #[test]
    fn a_larger_floor_area_never_asks_for_less(house in houses::house(), area in 500..60_000_u32, more in 1..5_000_u32) {
        prop_assume!(!may_fall(&house));
        let (small, large) = (with_floor(&house, area), with_floor(&house, area + more));
        prop_assert!(asks_no_less(&small, &large), "{:?} {:?}", required(&small), required(&large));
    }

    #[test]
    fn one_more_bedroom_never_asks_for_less(house in houses::house(), kind in prop::sample::select(vec![RoomKind::Bedroom, RoomKind::MainBedroom])) {
        prop_assume!(!may_fall(&house) && house.rooms.iter().any(|room| is_habitable(room.kind)));
        let larger = Edit::AddRoom(kind).apply(&house);
        prop_assert!(asks_no_less(&house, &larger), "{:?} {:?}", required(&house), required(&larger));
    }

    #[test]
    fn one_more_sleeper_never_asks_for_less(house in houses::house(), sleepers in 0..5_u32, which in any::<prop::sample::Index>()) {
        prop_assume!(!house.rooms.is_empty());
        let room = house.rooms[which.index(house.rooms.len())].id;
        let field = Field::Room(room, RoomField::Sleepers);
        let [few, more] = [sleepers, sleepers + 1].map(|n| houses::set(&house, field, &n.to_string(), Unit::Count));
        prop_assert!(asks_no_less(&few, &more), "{:?} {:?}", required(&few), required(&more));
    }

    #[test]
    fn the_order_of_rooms_does_not_matter(house in houses::house(), from in any::<prop::sample::Index>(), to in any::<prop::sample::Index>()) {
        prop_assume!(!house.rooms.is_empty());
        let room = house.rooms[from.index(house.rooms.len())].id;
        let moved = Edit::MoveRoom(room, to.index(house.rooms.len())).apply(&house);
        prop_assert!(asks_no_less(&house, &moved) && asks_no_less(&moved, &house), "{:?} {:?}", required(&house), required(&moved));
    }

    /// The comparison of rule sets says the same as choosing each.
    #[test]
    fn the_comparison_agrees_with_choosing(house in houses::house()) {
        let report = Report::of(house.clone());
        for codes in report.codes() {
            let choices = Choices { rules: codes.rules, ..house.choices };
            let chosen = Edit::Choose(choices).apply(&house);
            prop_assert_eq!(required(&chosen), codes.required.map(|flow| flow.as_m3h()));
        }
    }
}

/// A room that people stay in: a cellar is none.
fn is_habitable(kind: RoomKind) -> bool {
    kind.role().takes_supply() && kind != RoomKind::Basement
}

/// The standard itself may ask for less.
fn may_fall(house: &House) -> bool {
    let Choices { rules, credit, table, .. } = house.choices;
    rules.is_ashrae() && (credit == Credit::Claimed || table == Some(Table::Table))
}

#[test]
fn ashrae_asks_for_less_where_more_volume_leaks_more() {
    let mut house = ashrae(Choices { credit: Credit::Claimed, ..Choices::default() });
    for (field, text) in [
        (HouseField::Ach50, "5"),
        (HouseField::EnvelopeHeight, "18 ft"),
        (HouseField::WeatherFactor, "0.65"),
        (HouseField::Ceiling, "9 ft"),
    ] {
        let field = Field::House(field);
        house = houses::set(&house, field, text, field.unit(house.choices.display));
    }
    let house = (0..5).fold(house, |house, _| Edit::AddRoom(RoomKind::Bedroom).apply(&house));
    let (small, large) = (with_floor(&house, 9_000), with_floor(&house, 12_000));
    assert!(required(&large)[1] < required(&small)[1]);
}

#[test]
fn ashrae_asks_for_less_where_the_table_ends() {
    let house = ashrae(Choices { table: Some(Table::Table), ..Choices::default() });
    let five = (0..5).fold(with_floor(&house, 1_000), |house, _| Edit::AddRoom(RoomKind::Bedroom).apply(&house));
    let six = Edit::AddRoom(RoomKind::Bedroom).apply(&five);
    assert!(required(&six)[1] < required(&five)[1]);
}

fn ashrae(choices: Choices) -> House {
    Edit::Choose(Choices { rules: RuleSet::Ashrae2016, ..choices }).apply(&House::new())
}

fn required(house: &House) -> [f64; 3] {
    let report = Report::of(house.clone());
    Level::ALL.map(|level| report.shares().at(level).required.value.as_m3h())
}

fn asks_no_less(before: &House, after: &House) -> bool {
    required(before).iter().zip(required(after)).all(|(before, after)| after >= before - NOISE * (1.0 + before))
}

/// The room with more area than it has.
fn with_area(house: &House, room: RoomId, more: f64) -> House {
    let field = Field::Room(room, RoomField::Area);
    let text = house.text(field).to_owned();
    let text = if text.is_empty() { format!("{more} m2") } else { format!("{text} + {more} m2") };
    let text = if text.contains("sq ft") || house.text(field).is_empty() { text } else { bare(house, field, more) };
    houses::set(house, field, &text, field.unit(house.choices.display))
}

/// A bare number stays in the unit of its chip.
fn bare(house: &House, field: Field, more: f64) -> String {
    format!("{} + {more}", house.text(field))
}

/// The house with a floor area of this many hundredths of a square metre.
fn with_floor(house: &House, hundredths: u32) -> House {
    let field = Field::House(HouseField::FloorArea);
    houses::set(house, field, &format!("{}.{:02}", hundredths / 100, hundredths % 100), Unit::SquareMetre)
}
