//! The law: every number of every step changes when what it is made from does. A new step does not compile here until
//! it says what moves it.

mod movers;

use super::numbers::nudged;
use super::*;
use crate::given::GivenId as G;
use crate::house::{Building, Failing, Fuel, HouseField as H, Stud, TubeSize};
use crate::id::CheckRule;
use crate::steps::{Asks, asked_by};
use crate::working::Origin;
use movers::{checked_by, is_fixed, moved_by};

/// What a person can change.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Input {
    /// A registered value, set otherwise.
    Set(G),
    /// More and larger rooms: every flow rises.
    Larger,
    /// One more room of a kind.
    OneMore(RoomKind),
    /// A storey below the ground.
    Cellar,
    /// A wider tube.
    Tube,
    /// Legs of every run, typed.
    Legs,
    /// A field of what is found, typed otherwise.
    Found(H, &'static str, Unit),
    /// A unit that stops both fans when one fails.
    BothStop,
    /// One tube pulled, however many were planned.
    OneTube,
}

/// An invented house that has every step, with everything found and a run of every kind pulled.
fn full(rules: RuleSet) -> House {
    let mut house = Edit::AddRoom(RoomKind::Garage).apply(&under(rules, &house()));
    let mut choices = house.choices;
    choices.building = Building::Old;
    choices.fuel = Some(Fuel::Gas);
    choices.stud = Some(Stud::Bearing);
    house = Edit::Choose(choices).apply(&house);
    house = SITES.into_iter().fold(house, |house, field| found(&house, field, "3.5", Unit::Metre));
    house = TIMBER.into_iter().fold(house, |house, (field, mm)| found(&house, field, mm, Unit::Millimetre));
    house = found(&house, H::Ach50, "0.8", Unit::PerHour);
    for fans in [H::OtherFans, H::LargestFans] {
        house = found(&house, fans, "50", Unit::CubicMetrePerHour);
    }
    let house = legs(&tested(&house, "1"), "3.2 + 1.4");
    of_runs(&house, [RoomField::SupplyBuilt, RoomField::ExtractBuilt], "9", Unit::Metre)
}

const SITES: [H; 9] = [
    H::IntakeGround,
    H::IntakeSource,
    H::IntakeExhaust,
    H::IntakeBoundary,
    H::IntakeStreet,
    H::ExhaustOpening,
    H::ExhaustBoundary,
    H::ExhaustGround,
    H::DryerOpening,
];

const TIMBER: [(H, &str); 8] = [
    (H::JoistSpan, "4000"),
    (H::JoistDepth, "350"),
    (H::JoistClear, "420"),
    (H::JoistNotch, "20"),
    (H::JoistNotchAt, "500"),
    (H::JoistNotchLength, "60"),
    (H::StudDepth, "140"),
    (H::StudNotch, "20"),
];

fn found(house: &House, field: H, text: &str, unit: Unit) -> House {
    with(house, Field::House(field), text, unit)
}

fn legs(house: &House, text: &str) -> House {
    of_runs(house, [RoomField::SupplyRun, RoomField::ExtractRun], text, Unit::Metre)
}

fn of_runs(house: &House, fields: [RoomField; 2], text: &str, unit: Unit) -> House {
    let rooms = house.rooms.iter().map(|room| room.id);
    let fields = rooms.flat_map(|room| fields.map(|field| Field::Room(room, field)));
    fields.fold(house.clone(), |house, field| with(&house, field, text, unit))
}

fn changed(house: &House, input: Input) -> House {
    let one_more = |house: &House, kind| Edit::DuplicateRoom(room(house, kind)).apply(house);
    let mut choices = house.choices;
    match input {
        Input::Set(id) => return nudged(house, id),
        Input::Larger => {
            let living = Field::Room(room(house, RoomKind::Living), RoomField::Area);
            let wide = with(house, living, "228", Unit::SquareMetre);
            return one_more(&one_more(&one_more(&wide, RoomKind::Bedroom), RoomKind::MainBedroom), RoomKind::Bathroom);
        }
        Input::OneMore(kind) => return one_more(house, kind),
        Input::Cellar => return Edit::SetStorey(room(house, RoomKind::Utility), -1).apply(house),
        Input::Legs => return legs(house, "7.1 + 0.5"),
        Input::Found(field, text, unit) => return found(house, field, text, unit),
        Input::OneTube => return of_runs(house, [RoomField::SupplyTubes, RoomField::ExtractTubes], "1", Unit::Count),
        Input::Tube => choices.tube = TubeSize::Od90,
        Input::BothStop => choices.failing = Failing::BothStop,
    }
    Edit::Choose(choices).apply(house)
}

#[test]
fn a_field_is_asked_by_the_step_that_names_it() {
    for rules in RuleSet::ALL {
        let house = full(rules);
        for step in steps(&house) {
            let fields = Asks::of(step.key, &house.choices).fields;
            // The blower-door test is also typed on the page of the house.
            for field in fields.into_iter().filter(|field| *field != Field::House(H::Ach50)) {
                assert_eq!(asked_by(field), Some(step.key), "{field:?} under {}", rules.id());
            }
        }
    }
}

/// Whether a number somewhere under this rule is another one after the change.
fn moves<T>(before: &[Step], after: &[Step], numbers: impl Fn(&Step) -> T) -> bool
where
    T: PartialEq,
{
    let same = |step: &Step| after.iter().find(|other| other.key == step.key);
    before.iter().any(|step| same(step).is_some_and(|other| numbers(other) != numbers(step)))
}

#[test]
fn every_number_of_every_step_follows_what_it_is_made_from() {
    let mut idle: Vec<(StepRule, Input)> =
        StepRule::ALL.iter().flat_map(|rule| moved_by(*rule).iter().map(|input| (*rule, *input))).collect();
    for rules in RuleSet::ALL {
        let house = full(rules);
        let all = steps(&house);
        for rule in StepRule::ALL {
            let before: Vec<Step> = all.iter().filter(|step| step.key.rule == rule).cloned().collect();
            let after: Vec<_> = moved_by(rule).iter().map(|input| (*input, steps(&changed(&house, *input)))).collect();
            for at in before.iter().flat_map(|step| 0..step.numbers.len()) {
                let value = |step: &Step| step.numbers.get(at).map(|number| number.value);
                let movers = after.iter().filter(|(_, after)| moves(&before, after, value));
                let movers: Vec<Input> = movers.map(|(input, _)| *input).collect();
                let fixed = is_fixed(rule, at);
                assert_eq!(movers.is_empty(), fixed, "number {at} of {} under {}", rule.id(), rules.id());
                idle.retain(|(other, input)| *other != rule || !movers.contains(input));
            }
        }
    }
    assert_eq!(idle, [], "these move nothing");
}

#[test]
fn every_number_of_every_check_follows_what_was_found() {
    let mut idle: Vec<(CheckRule, Input)> =
        CheckRule::ALL.iter().flat_map(|rule| checked_by(*rule).iter().map(|input| (*rule, *input))).collect();
    for rules in RuleSet::ALL {
        let house = full(rules);
        let before = steps(&house);
        for check in CheckRule::ALL {
            let numbers = |step: &Step| {
                let own = step.checks.iter().find(|own| own.rule == check);
                own.map(|own| own.numbers.clone()).unwrap_or_default()
            };
            let most = before.iter().map(|step| numbers(step).len()).max().unwrap_or_default();
            let after: Vec<_> =
                checked_by(check).iter().map(|input| (*input, steps(&changed(&house, *input)))).collect();
            for at in 0..most {
                let value = |step: &Step| numbers(step).get(at).map(|number| number.value);
                let movers = after.iter().filter(|(_, after)| moves(&before, after, value));
                let movers: Vec<Input> = movers.map(|(input, _)| *input).collect();
                let printed = |step: &Step| {
                    numbers(step).get(at).is_some_and(|number| matches!(number.origin, Origin::Printed(_)))
                };
                let fixed = movers.is_empty() && before.iter().any(printed);
                assert!(fixed || !movers.is_empty(), "number {at} of {} under {}", check.id(), rules.id());
                idle.retain(|(other, input)| *other != check || !movers.contains(input));
            }
        }
    }
    assert_eq!(idle, [], "these move nothing");
}
