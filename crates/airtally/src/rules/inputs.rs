//! What each rule set wants to know beyond the rooms, so that nobody is asked what would change nothing.

use super::RuleSet;
use crate::house::{Choice, Choices, Credit};
use crate::id::{Field, GivenId, HouseField};

/// What a rule set wants to know.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Inputs {
    /// Values about the house and settings that stand for a choice.
    pub fields: &'static [Field],
    /// Choices.
    pub choices: &'static [Choice],
}

impl Inputs {
    /// What matters under the chosen rule set with the choices made so far.
    pub const fn of(choices: &Choices) -> Self {
        let claimed = matches!(choices.credit, Credit::Claimed);
        let (fields, choices): (&[Field], &[Choice]) = match choices.rules {
            RuleSet::Ashrae2016 | RuleSet::Ashrae2013 if claimed => (&LEAKS, &ALL),
            RuleSet::Ashrae2016 | RuleSet::Ashrae2013 => (&PEOPLE, &ALL),
            RuleSet::Ashrae2010 => (&PEOPLE, &[Choice::Wet, Choice::Kitchen, Choice::Table, Choice::Print]),
            RuleSet::Irc2015 => (&RUN_TIME, &LOCAL),
            RuleSet::Irc2018 => (&RUN_TIME, &[Choice::Wet, Choice::Kitchen, Choice::Table]),
            RuleSet::Irc2021 | RuleSet::Irc2024 => {
                (&RUN_TIME, &[Choice::Wet, Choice::Kitchen, Choice::Table, Choice::Credit])
            }
            RuleSet::Imc => (&RUN_TIME, &[Choice::Wet, Choice::Kitchen, Choice::Credit]),
            RuleSet::Washington2021 => (&WASHINGTON, &LOCAL),
            RuleSet::Canada | RuleSet::CanadaNbc => (&[], &LOCAL),
            RuleSet::En16798 => (&CATEGORY, &[]),
            RuleSet::Din2009 | RuleSet::Din2019 | RuleSet::PassiveHouse | RuleSet::Ireland2019 => (&PEOPLE, &[]),
            RuleSet::Adf2021 | RuleSet::Netherlands2012 | RuleSet::France1982 => (&[], &[]),
        };
        Self { fields, choices }
    }
}

const ALL: [Choice; 5] = [Choice::Wet, Choice::Kitchen, Choice::Table, Choice::Print, Choice::Credit];
const LOCAL: [Choice; 2] = [Choice::Wet, Choice::Kitchen];
const PEOPLE: [Field; 1] = [Field::House(HouseField::People)];
const RUN_TIME: [Field; 1] = [Field::House(HouseField::RunTime)];
const WASHINGTON: [Field; 2] = [Field::Given(GivenId::WashingtonQuality), Field::House(HouseField::RunTime)];
const CATEGORY: [Field; 2] = [Field::House(HouseField::People), Field::Given(GivenId::EnCategory)];
const LEAKS: [Field; 4] = [
    Field::House(HouseField::People),
    Field::House(HouseField::Ach50),
    Field::House(HouseField::EnvelopeHeight),
    Field::House(HouseField::WeatherFactor),
];
