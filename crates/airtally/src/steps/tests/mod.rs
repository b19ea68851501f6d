//! What must hold of a checklist.

mod blocking;
mod moves;
mod numbers;
mod on_site;

use super::{Number, NumberName, Phase, Step, StepKey, StepRule};
use crate::edit::Edit;
use crate::house::{Field, House, HouseField, RoomField, RoomId, RoomKind};
use crate::quantity::Unit;
use crate::report::Report;
use crate::rules::{Air, RuleSet};
use crate::source::Standing;

/// An invented house on two floors.
fn house() -> House {
    let rooms = [
        (RoomKind::Living, "28", 0),
        (RoomKind::Kitchen, "22", 0),
        (RoomKind::Wc, "2.2", 0),
        (RoomKind::Utility, "6", 0),
        (RoomKind::Hall, "12", 0),
        (RoomKind::MainBedroom, "16", 1),
        (RoomKind::Bedroom, "12", 1),
        (RoomKind::Bathroom, "7", 1),
    ];
    rooms.into_iter().fold(House::new(), |house, (kind, area, storey)| {
        let house = Edit::AddRoom(kind).apply(&house);
        let id = house.rooms.last().unwrap().id;
        let house = Edit::Set(Field::Room(id, RoomField::Area), area.into(), Unit::SquareMetre).apply(&house);
        Edit::SetStorey(id, storey).apply(&house)
    })
}

fn room(house: &House, kind: RoomKind) -> RoomId {
    house.rooms.iter().find(|room| room.kind == kind).unwrap().id
}

fn steps(house: &House) -> Vec<Step> {
    Report::of(house.clone()).steps().to_vec()
}

fn find(house: &House, key: StepKey) -> Option<Step> {
    steps(house).into_iter().find(|step| step.key == key)
}

fn number(house: &House, rule: StepRule, name: NumberName) -> Option<Number> {
    let step = steps(house).into_iter().find(|step| step.key.rule == rule)?;
    step.numbers.into_iter().find(|number| number.name == name)
}

fn under(rules: RuleSet, house: &House) -> House {
    let mut choices = house.choices;
    choices.rules = rules;
    Edit::Choose(choices).apply(house)
}

fn with(house: &House, field: Field, text: &str, unit: Unit) -> House {
    Edit::Set(field, text.into(), unit).apply(house)
}

/// With a record of the leak test: so many m³/h each side at 30 Pa.
fn tested(house: &House, leak: &str) -> House {
    let house = with(house, Field::House(HouseField::LeakPressure), "30", Unit::Pascal);
    let house = with(&house, Field::House(HouseField::LeakSupply), leak, Unit::CubicMetrePerHour);
    with(&house, Field::House(HouseField::LeakExtract), leak, Unit::CubicMetrePerHour)
}

fn without(house: &House, kind: RoomKind) -> House {
    Edit::RemoveRoom(room(house, kind)).apply(house)
}

#[test]
fn every_phase_has_work_and_the_list_is_in_working_order() {
    let steps = steps(&house());
    assert!(steps.len() >= 24);
    assert!(Phase::ALL.iter().all(|phase| steps.iter().any(|step| step.key.rule.phase() == *phase)));
    assert!(steps.is_sorted_by_key(|step| step.key.rule));
    let mut keys: Vec<StepKey> = steps.iter().map(|step| step.key).collect();
    keys.sort_unstable();
    keys.dedup();
    assert_eq!(keys.len(), steps.len());
}

#[test]
fn every_step_says_who_says_so_under_every_rule_set() {
    for rules in RuleSet::ALL {
        for step in steps(&under(rules, &house())) {
            let named = matches!(step.source.standing, Standing::Published | Standing::FromMemory);
            assert!(!named || !step.source.document.is_empty(), "{}", step.key.rule.id());
            assert_ne!(step.source.standing, Standing::YourSetting, "{}", step.key.rule.id());
        }
    }
}

#[test]
fn a_house_without_rooms_has_no_steps() {
    assert!(steps(&House::new()).is_empty());
}

#[test]
fn a_step_is_there_only_where_it_applies() {
    let house = house();
    let has = |house: &House, rule| steps(house).iter().any(|step| step.key.rule == rule);
    assert!(has(&house, StepRule::PlaceKitchenValve));
    assert!(!has(&without(&house, RoomKind::Kitchen), StepRule::PlaceKitchenValve));
    assert!(!has(&house, StepRule::KeepGarageClosed));
    assert!(has(&Edit::AddRoom(RoomKind::Garage).apply(&house), StepRule::KeepGarageClosed));
    let no_bedroom = without(&without(&house, RoomKind::MainBedroom), RoomKind::Bedroom);
    assert!(!has(&no_bedroom, StepRule::PlaceBedroomValves));
}

#[test]
fn one_step_for_each_run_with_its_mark() {
    let house = house();
    let pulls: Vec<Step> = steps(&house).into_iter().filter(|step| step.key.rule == StepRule::PullTubes).collect();
    let marks: Vec<_> = pulls.iter().filter_map(|step| step.mark).collect();
    let supply = [1, 2, 3].map(|mark| (Air::Supply, mark));
    let extract = [1, 2, 3, 4].map(|mark| (Air::Extract, mark));
    assert_eq!(marks, [&supply[..], &extract[..]].concat());
    assert_eq!(pulls.len(), marks.len());
}
