//! Choices of the document.

use crate::context::{Hands, Page};
use crate::ui::select::select;
use airtally::edit::Edit;
use airtally::house::Choices;
use airtally::rules::RuleSet;
use airtally_words::label;
use yew::prelude::*;

/// A change of the choices, as a callback that is handed the place of what was taken.
pub fn choosing<T: Copy + 'static>(
    page: &Page,
    hands: &Hands,
    all: &'static [T],
    set: fn(&mut Choices, T),
) -> Callback<usize> {
    let (choices, hands) = (page.house.choices, hands.clone());
    Callback::from(move |at: usize| {
        if let Some(taken) = all.get(at) {
            let mut choices = choices;
            set(&mut choices, *taken);
            hands.edit(Edit::Choose(choices));
        }
    })
}

/// Options with the one that is taken.
pub fn options<T: Copy + PartialEq>(all: &[T], taken: T, name: fn(T) -> &'static str) -> Vec<(AttrValue, bool)> {
    all.iter().map(|one| (AttrValue::Static(name(*one)), *one == taken)).collect()
}

/// The list of rule sets.
pub fn rules_select(page: &Page, hands: &Hands, name: &'static str, hint: &'static str) -> Html {
    let options = options(&RuleSet::ALL, page.house.choices.rules, label::rules);
    let chosen = choosing(page, hands, &RuleSet::ALL, |choices, rules| choices.rules = rules);
    select("rules".to_owned(), name, hint, options, &chosen)
}
