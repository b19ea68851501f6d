//! What the chosen rule set wants to know: nothing is asked that would change nothing.

use crate::context::{Hands, Page};
use crate::parts::choice::{choosing, options};
use crate::ui::select::select;
use airtally::house::{Choice, Choices, Credit, KitchenDraw, Print, Table, WetRooms};
use airtally_words::{label, page as say};
use yew::prelude::*;

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
