//! What a step asks its person to type or choose, where the answer is found on site.

use super::{Home, StepKey, StepRule as R};
use crate::house::{Choice, Choices, Field, Fuel, HouseField as H, RoomField};
use crate::on_site::outside_rules;
use crate::rules::Air;

/// What a step asks.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Asks {
    /// To choose.
    pub choices: &'static [Choice],
    /// To type.
    pub fields: Vec<Field>,
}

impl Asks {
    /// What the step of this key asks under these choices. Nothing is asked that would change nothing.
    pub fn of(key: StepKey, choices: &Choices) -> Self {
        let house = |fields: &[H]| fields.iter().map(|field| Field::House(*field)).collect();
        match key.rule {
            R::AskOpenFlues if matches!(choices.fuel, Some(Fuel::Gas | Fuel::Solid)) => {
                let all: &[H] = match Home::of(choices.rules) {
                    Home::UnitedStates => &[H::OtherFans, H::LargestFans, H::Ach50],
                    _ => &[H::OtherFans, H::Ach50],
                };
                Self { choices: &[Choice::Fuel, Choice::Failing], fields: house(all) }
            }
            R::AskOpenFlues => Self { choices: &[Choice::Fuel], fields: Vec::new() },
            R::CheckStructure => match Home::of(choices.rules) {
                Home::UnitedStates => Self { choices: &[Choice::Joist, Choice::Stud], fields: house(&TIMBER) },
                _ => Self { choices: &[Choice::Joist], fields: house(TIMBER.split_at(JOISTS).0) },
            },
            R::PlaceIntake => outside(choices),
            R::PullTubes => Self { choices: &[], fields: built(key) },
            R::LeakTest => Self { choices: &[], fields: house(&[H::LeakPressure, H::LeakSupply, H::LeakExtract]) },
            _ => Self::default(),
        }
    }
}

/// The step that asks for a field; `None` for what is typed about the house and its rooms.
pub const fn asked_by(field: Field) -> Option<StepKey> {
    let rule = match field {
        Field::Room(room, RoomField::SupplyBuilt | RoomField::SupplyTubes) => {
            return Some(StepKey::run(R::PullTubes, room, Air::Supply));
        }
        Field::Room(room, RoomField::ExtractBuilt | RoomField::ExtractTubes) => {
            return Some(StepKey::run(R::PullTubes, room, Air::Extract));
        }
        Field::House(field) => match field {
            H::OtherFans | H::LargestFans => R::AskOpenFlues,
            H::JoistDepth | H::JoistSpan | H::JoistClear => R::CheckStructure,
            H::JoistNotch | H::JoistNotchAt | H::JoistNotchLength | H::StudDepth | H::StudNotch => R::CheckStructure,
            H::IntakeGround | H::IntakeSource | H::IntakeBelow | H::IntakeExhaust => R::PlaceIntake,
            H::IntakeBoundary | H::IntakeStreet | H::DryerOpening => R::PlaceIntake,
            H::ExhaustAbove | H::ExhaustOpening | H::ExhaustOver => R::PlaceIntake,
            H::ExhaustBoundary | H::ExhaustGround => R::PlaceIntake,
            H::LeakPressure | H::LeakSupply | H::LeakExtract => R::LeakTest,
            H::FloorArea | H::Ceiling | H::Ach50 | H::EnvelopeHeight => return None,
            H::WeatherFactor | H::RunTime | H::People => return None,
        },
        Field::HouseName
        | Field::RoomName(_)
        | Field::Room(..)
        | Field::Given(_)
        | Field::Price(_)
        | Field::Curve(_) => return None,
    };
    Some(StepKey::house(rule))
}

/// What is asked of joists everywhere, then what is asked of them and of studs in the United States.
const TIMBER: [H; 8] = [
    H::JoistDepth,
    H::JoistSpan,
    H::JoistClear,
    H::JoistNotch,
    H::JoistNotchAt,
    H::JoistNotchLength,
    H::StudDepth,
    H::StudNotch,
];
/// So many of them are asked everywhere.
const JOISTS: usize = 5;

/// The distances that the rule set judges, and the heights that may stand in for them.
fn outside(choices: &Choices) -> Asks {
    let rules = outside_rules(choices.rules);
    let mut fields = Vec::new();
    for rule in rules {
        for field in [Some(rule.field), rule.above.map(|(field, _)| field)].into_iter().flatten().map(Field::House) {
            if !fields.contains(&field) {
                fields.push(field);
            }
        }
    }
    let spared = rules.iter().any(|rule| rule.spared.is_some());
    Asks { choices: if spared { &[Choice::Outlets] } else { &[] }, fields }
}

/// Length and number of the tubes as pulled.
fn built(key: StepKey) -> Vec<Field> {
    let Some((room, air)) = key.room.zip(key.air) else { return Vec::new() };
    let fields = match air {
        Air::Supply => [RoomField::SupplyBuilt, RoomField::SupplyTubes],
        Air::Extract => [RoomField::ExtractBuilt, RoomField::ExtractTubes],
    };
    fields.map(|field| Field::Room(room, field)).to_vec()
}
