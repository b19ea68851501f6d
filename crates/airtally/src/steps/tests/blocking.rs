//! Locks, and ticks that survive edits.

use super::*;
use crate::edit::History;
use crate::house::{Choices, Fuel};
use crate::steps::{Item, Status};
use StepRule as R;

fn tick(house: &House, key: StepKey, done: bool) -> House {
    Edit::Tick(key, done).apply(house)
}

/// Every step ticked, nothing that burns fuel and the leak test on record, except those of these rules.
fn all_but(house: &House, rules: &[StepRule]) -> House {
    let house = &no_fuel(house);
    let house = &if rules.contains(&R::LeakTest) { house.clone() } else { tested(house, "0") };
    let steps = steps(house);
    let keys = steps.iter().flat_map(|step| step.list.iter().map(|it| it.key).chain([step.key]));
    let keys = keys.filter(|key| !rules.contains(&key.rule));
    keys.fold(house.clone(), |house, key| tick(&house, key, true))
}

fn no_fuel(house: &House) -> House {
    Edit::Choose(Choices { fuel: Some(Fuel::Nothing), ..house.choices }).apply(house)
}

fn status(house: &House, rule: StepRule) -> Status {
    steps(house).into_iter().find(|step| step.key.rule == rule).unwrap().status
}

fn locked_by(rule: StepRule) -> Status {
    Status::LockedBy(StepKey::house(rule))
}

#[test]
fn nothing_is_drilled_before_the_questions_that_stop_the_work() {
    let house = Edit::AddRoom(RoomKind::Garage).apply(&house());
    let questions = [R::AskOpenFlues, R::LookForSuspectBoard, R::CheckStructure, R::ListCrossings, R::KeepGarageClosed];
    for drill in [R::DrillCores, R::DrillTubeHoles] {
        assert_eq!(status(&house, drill), locked_by(R::AskOpenFlues));
        for question in questions {
            assert_eq!(status(&all_but(&house, &[question, drill]), drill), locked_by(question));
        }
        assert_eq!(status(&all_but(&house, &[drill]), drill), Status::Open);
    }
}

#[test]
fn a_step_with_a_list_is_done_when_all_of_it_is_ticked() {
    let house = all_but(&house(), &[R::CloseCrossings, R::CloseUp]);
    let list = |house: &House| find(house, StepKey::house(R::CloseCrossings)).unwrap().list;
    // Two cores to outdoors, and one floor between the two storeys (site practice, section 2: every crossing has a box).
    let items: Vec<_> = list(&house).iter().map(|it| it.key.item.unwrap()).collect();
    assert_eq!(items, [Item::OutdoorDuct, Item::ExhaustDuct, Item::Floor(1)]);
    let own = tick(&house, StepKey::house(R::CloseCrossings), true);
    assert_eq!(status(&own, R::CloseUp), locked_by(R::CloseCrossings), "its own tick is not enough");
    let closed = list(&house).iter().fold(house.clone(), |house, it| {
        assert_eq!(status(&house, R::CloseUp), locked_by(R::CloseCrossings));
        tick(&house, it.key, true)
    });
    assert_eq!((status(&closed, R::CloseCrossings), status(&closed, R::CloseUp)), (Status::Done, Status::Open));
    let again = tick(&closed, list(&house)[1].key, false);
    assert_eq!(status(&again, R::CloseUp), locked_by(R::CloseCrossings));
}

#[test]
fn no_start_before_filters_are_fitted_and_the_dust_is_gone() {
    let house = house();
    for missing in [R::FitFilters, R::DustGone, R::FillTrap, R::LeakTest, R::WireUnit, R::FitCoAlarms, R::AskOpenFlues]
    {
        assert_eq!(status(&all_but(&house, &[missing, R::StartUnit]), R::StartUnit), locked_by(missing));
    }
    assert_eq!(status(&all_but(&house, &[R::StartUnit]), R::StartUnit), Status::Open);
}

#[test]
fn caps_stay_on_until_the_dust_is_gone() {
    let house = house();
    let dusty = all_but(&house, &[R::DustGone, R::OpenValves]);
    assert_eq!(status(&dusty, R::OpenValves), locked_by(R::DustGone));
    assert_eq!(status(&all_but(&house, &[R::OpenValves, R::StartUnit]), R::StartUnit), locked_by(R::OpenValves));
}

#[test]
fn no_reading_before_every_pre_check_is_ticked() {
    let house = house();
    let reads = [R::ReadTerminals, R::ReadBoost, R::TestSpillage];
    let needed = R::ALL.into_iter().filter(|rule| matches!(rule.phase(), Phase::PreCheck | Phase::Power));
    for missing in needed {
        let house = all_but(&house, &[&reads[..], &[missing]].concat());
        let first = steps(&house).into_iter().find(|step| step.key.rule == missing).unwrap();
        for read in reads {
            assert_eq!(status(&house, read), Status::LockedBy(first.key), "{}", missing.id());
        }
    }
    let ready = all_but(&house, &reads);
    assert!(reads.iter().all(|read| status(&ready, *read) == Status::Open));
}

#[test]
fn nothing_is_closed_up_before_the_leak_test() {
    let house = house();
    let untested = all_but(&house, &[R::LeakTest, R::CloseUp]);
    assert_eq!(status(&untested, R::CloseUp), locked_by(R::LeakTest));
    // Neither a tick nor a record that fails will do.
    let ticked = tick(&untested, StepKey::house(R::LeakTest), true);
    assert_eq!(status(&ticked, R::CloseUp), locked_by(R::LeakTest));
    assert_eq!(status(&tested(&untested, "40"), R::CloseUp), locked_by(R::LeakTest));
    assert_eq!(status(&tested(&untested, "1"), R::CloseUp), Status::Open);
}

#[test]
fn a_lock_names_the_first_open_step_however_far_back() {
    let house = house();
    // The reading waits for the start, the start for the leak test, the leak test for every pull.
    let wc = StepKey::run(R::PullTubes, room(&house, RoomKind::Wc), Air::Extract);
    let house = tick(&all_but(&house, &[R::ReadBoost]), wc, false);
    assert_eq!(status(&house, R::ReadBoost), Status::LockedBy(wc));
}

#[test]
fn a_tick_stays_when_what_it_waited_for_is_unticked_and_what_follows_is_locked_again() {
    let house = all_but(&house(), &[R::ReadBoost]);
    let filters = StepKey::house(R::FitFilters);
    let house = tick(&house, filters, false);
    assert_eq!(status(&house, R::FitFilters), Status::Open);
    assert_eq!(status(&house, R::StartUnit), Status::Done);
    assert_eq!(status(&house, R::ReadBoost), Status::LockedBy(filters));
}

#[test]
fn ticks_survive_names_order_new_rooms_and_new_areas() {
    let house = house();
    let bedroom = room(&house, RoomKind::Bedroom);
    let key = StepKey::run(R::PullTubes, bedroom, Air::Supply);
    let mut house = tick(&house, key, true);
    let edits = [
        Edit::Set(Field::RoomName(bedroom), "Nook".into(), Unit::Ratio),
        Edit::MoveRoom(bedroom, 0),
        Edit::AddRoom(RoomKind::Bedroom),
        Edit::DuplicateRoom(bedroom),
        Edit::Set(Field::Room(bedroom, RoomField::Area), "31".into(), Unit::SquareMetre),
        Edit::SetKind(bedroom, RoomKind::Study),
    ];
    for edit in edits {
        house = edit.apply(&house);
        let done: Vec<StepKey> =
            steps(&house).into_iter().filter(|step| step.status == Status::Done).map(|step| step.key).collect();
        assert_eq!(done, [key], "{edit:?}");
    }
}

#[test]
fn a_tick_comes_back_with_its_room() {
    let house = house();
    let bedroom = room(&house, RoomKind::Bedroom);
    let key = StepKey::run(R::PullTubes, bedroom, Air::Supply);
    let mut history = History::starting_with(tick(&house, key, true));
    history.edit(&Edit::RemoveRoom(bedroom));
    assert_eq!(find(history.now(), key), None);
    assert!(history.undo());
    assert_eq!(find(history.now(), key).unwrap().status, Status::Done);
}
