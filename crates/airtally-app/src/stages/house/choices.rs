//! What the chosen rule set wants to know: nothing is asked that would change nothing.

use crate::context::{Hands, Page};
use crate::parts::choice::{choosing, options};
use crate::ui::select::select;
use airtally::house::{Choices, Credit, HouseField, KitchenDraw, Print, Table, WetRooms};
use airtally::rules::RuleSet;
use airtally_words::{label, page as say};
use yew::prelude::*;

/// A choice that can matter.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Choice {
    /// A credit the rule offers.
    Credit,
    /// Printed table or equation.
    Table,
    /// Printed coefficients.
    Print,
    /// How wet rooms get their exhaust.
    Wet,
    /// Who exhausts the kitchen.
    Kitchen,
}

/// What is asked.
pub struct Ask {
    /// Values about the house.
    pub fields: Vec<HouseField>,
    /// Choices.
    pub choices: Vec<Choice>,
}

/// What matters under the chosen rule set.
pub fn asked(page: &Page) -> Ask {
    let chosen = &page.house.choices;
    let (extra, choices): (&[HouseField], &[Choice]) = match chosen.rules {
        RuleSet::Ashrae2016 => (
            if chosen.credit == Credit::Claimed { &WITH_CREDIT } else { &[HouseField::People] },
            &[Choice::Wet, Choice::Kitchen, Choice::Table, Choice::Print, Choice::Credit],
        ),
        RuleSet::Irc2015 => (&[HouseField::RunTime], &[Choice::Wet, Choice::Kitchen]),
        RuleSet::Irc2018 => (&[HouseField::RunTime], &[Choice::Wet, Choice::Kitchen, Choice::Table]),
        RuleSet::Irc2021 | RuleSet::Irc2024 => {
            (&[HouseField::RunTime], &[Choice::Wet, Choice::Kitchen, Choice::Table, Choice::Credit])
        }
        RuleSet::Canada => (&[], &[Choice::Wet, Choice::Kitchen]),
        RuleSet::Din2009 | RuleSet::Din2019 => (&[HouseField::People], &[]),
        RuleSet::Adf2021 => (&[], &[]),
    };
    let mut fields = vec![HouseField::FloorArea, HouseField::Ceiling];
    fields.extend_from_slice(extra);
    Ask { fields, choices: choices.to_vec() }
}

const WITH_CREDIT: [HouseField; 4] =
    [HouseField::People, HouseField::Ach50, HouseField::EnvelopeHeight, HouseField::WeatherFactor];

/// The lists of these choices.
pub fn choice_fields(page: &Page, hands: &Hands, choices: &[Choice]) -> Vec<Html> {
    choices.iter().map(|choice| choice_field(page, hands, *choice)).collect()
}

fn choice_field(page: &Page, hands: &Hands, choice: Choice) -> Html {
    let taken = &page.house.choices;
    match choice {
        Choice::Credit => {
            let chosen = choosing(page, hands, &Credit::ALL, |choices, credit| choices.credit = credit);
            let options = options(&Credit::ALL, taken.credit, label::credit);
            select("credit".to_owned(), say::CREDIT, say::CREDIT_HINT, options, &chosen)
        }
        Choice::Print => {
            let chosen = choosing(page, hands, &Print::ALL, |choices, print| choices.print = print);
            let options = options(&Print::ALL, taken.print, label::print);
            select("print".to_owned(), say::PRINTED, say::PRINTED_HINT, options, &chosen)
        }
        Choice::Table => {
            or_default(page, hands, &TABLES, taken.table, ("table", say::TABLE, label::table), |choices, table| {
                choices.table = table;
            })
        }
        Choice::Wet => or_default(page, hands, &WET, taken.wet, ("wet", say::WET, label::wet_rooms), |choices, wet| {
            choices.wet = wet;
        }),
        Choice::Kitchen => or_default(
            page,
            hands,
            &KITCHEN,
            taken.kitchen,
            ("kitchen", say::KITCHEN, label::kitchen_draw),
            |choices, draw| {
                choices.kitchen = draw;
            },
        ),
    }
}

const TABLES: [Option<Table>; 3] = [None, Some(Table::Table), Some(Table::Equation)];
const WET: [Option<WetRooms>; 3] = [None, Some(WetRooms::Continuous), Some(WetRooms::OnDemand)];
const KITCHEN: [Option<KitchenDraw>; 3] = [None, Some(KitchenDraw::System), Some(KitchenDraw::Hood)];

/// A list whose first option is what the rule set has.
fn or_default<T: Copy + PartialEq + 'static>(
    page: &Page,
    hands: &Hands,
    all: &'static [Option<T>],
    taken: Option<T>,
    (id, name, words): (&str, &'static str, fn(T) -> &'static str),
    set: fn(&mut Choices, Option<T>),
) -> Html {
    let option = |one: &Option<T>| {
        let words = one.map_or(label::rule_default(), words);
        (AttrValue::Static(words), *one == taken)
    };
    select(id.to_owned(), name, "", all.iter().map(option).collect(), &choosing(page, hands, all, set))
}
