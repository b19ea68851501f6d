//! Lists to choose from, for the choices of the document.

use crate::context::{Hands, Page};
use crate::ui::select::select;
use airtally::edit::Edit;
use airtally::house::WetRooms;
use airtally::house::{
    Building, Choice, Choices, Credit, Failing, Fans, Fuel, Joist, KitchenDraw, Manifolds, Outlets, Print, Stud, Table,
};
use airtally_words::{label, page as say};
use yew::prelude::*;

/// The lists of these choices.
pub fn choice_fields(page: &Page, hands: &Hands, choices: &[Choice]) -> Vec<Html> {
    choices.iter().map(|choice| choice_field(page, hands, *choice)).collect()
}

fn choice_field(page: &Page, hands: &Hands, choice: Choice) -> Html {
    let (choices, hands) = (page.house.choices, hands.clone());
    let listed = Listed::of(choice, &choices);
    let chosen = Callback::from(move |at: usize| {
        let mut choices = choices;
        choose(&mut choices, choice, at);
        hands.edit(Edit::Choose(choices));
    });
    let options = listed.names.into_iter().enumerate();
    let options = options.map(|(at, name)| (AttrValue::Static(name), at == listed.taken)).collect();
    select(listed.id.to_owned(), listed.label, listed.hint, options, &chosen)
}

/// A list: what it is called, its options, and the place of the one that is taken.
struct Listed {
    id: &'static str,
    label: &'static str,
    hint: &'static str,
    names: Vec<&'static str>,
    taken: usize,
}

impl Listed {
    fn of(choice: Choice, taken: &Choices) -> Self {
        let known = label::not_known();
        let rule = label::rule_default();
        let (id, label, hint, (names, taken)) = match choice {
            Choice::Credit => ("credit", say::CREDIT, say::CREDIT_HINT, all(&Credit::ALL, label::credit, taken.credit)),
            Choice::Print => ("print", say::PRINTED, say::PRINTED_HINT, all(&Print::ALL, label::print, taken.print)),
            Choice::Building => ("building", say::BUILDING, "", all(&Building::ALL, label::building, taken.building)),
            Choice::Outlets => ("outlets", say::OUTLETS, "", all(&Outlets::ALL, label::outlets, taken.outlets)),
            Choice::Fans => ("fans", say::FANS, "", all(&Fans::ALL, label::fans, taken.fans)),
            Choice::Manifolds => {
                ("manifolds", say::MANIFOLDS, "", all(&Manifolds::ALL, label::manifolds, taken.manifolds))
            }
            Choice::Failing => ("failing", say::FAILING, "", all(&Failing::ALL, label::failing, taken.failing)),
            Choice::Table => ("table", say::TABLE, "", perhaps(rule, &Table::ALL, label::table, taken.table)),
            Choice::Wet => ("wet", say::WET, "", perhaps(rule, &WetRooms::ALL, label::wet_rooms, taken.wet)),
            Choice::Kitchen => {
                ("kitchen", say::KITCHEN, "", perhaps(rule, &KitchenDraw::ALL, label::kitchen_draw, taken.kitchen))
            }
            Choice::Joist => ("joist", say::JOIST, "", perhaps(known, &Joist::ALL, label::joist, taken.joist)),
            Choice::Stud => ("stud", say::STUD, "", perhaps(known, &Stud::ALL, label::stud, taken.stud)),
            Choice::Fuel => ("fuel", say::FUEL, "", perhaps(known, &Fuel::ALL, label::fuel, taken.fuel)),
        };
        Self { id, label, hint, names, taken }
    }
}

/// All options, and the place of the taken one.
fn all<T: Copy + PartialEq>(all: &[T], name: fn(T) -> &'static str, taken: T) -> (Vec<&'static str>, usize) {
    let at = all.iter().position(|one| *one == taken).unwrap_or_default();
    (all.iter().map(|one| name(*one)).collect(), at)
}

/// The same after one for nothing taken.
fn perhaps<T: Copy + PartialEq>(
    nothing: &'static str,
    all: &[T],
    name: fn(T) -> &'static str,
    taken: Option<T>,
) -> (Vec<&'static str>, usize) {
    let at = all.iter().position(|one| Some(*one) == taken).map_or(0, |at| at + 1);
    ([nothing].into_iter().chain(all.iter().map(|one| name(*one))).collect(), at)
}

/// Takes the option at a place of the list.
fn choose(choices: &mut Choices, choice: Choice, at: usize) {
    let before = at.wrapping_sub(1);
    match choice {
        Choice::Credit => take(&mut choices.credit, &Credit::ALL, at),
        Choice::Print => take(&mut choices.print, &Print::ALL, at),
        Choice::Building => take(&mut choices.building, &Building::ALL, at),
        Choice::Outlets => take(&mut choices.outlets, &Outlets::ALL, at),
        Choice::Fans => take(&mut choices.fans, &Fans::ALL, at),
        Choice::Manifolds => take(&mut choices.manifolds, &Manifolds::ALL, at),
        Choice::Failing => take(&mut choices.failing, &Failing::ALL, at),
        Choice::Table => choices.table = Table::ALL.get(before).copied(),
        Choice::Wet => choices.wet = WetRooms::ALL.get(before).copied(),
        Choice::Kitchen => choices.kitchen = KitchenDraw::ALL.get(before).copied(),
        Choice::Joist => choices.joist = Joist::ALL.get(before).copied(),
        Choice::Stud => choices.stud = Stud::ALL.get(before).copied(),
        Choice::Fuel => choices.fuel = Fuel::ALL.get(before).copied(),
    }
}

fn take<T: Copy>(taken: &mut T, all: &[T], at: usize) {
    if let Some(one) = all.get(at) {
        *taken = *one;
    }
}
