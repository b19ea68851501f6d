//! The house itself: its name, the rule set, the units, and what is known of it as a whole.

use super::choices::{Ask, asked, choice_fields};
use crate::context::{use_hands, use_page};
use crate::frame::top::unit_chips;
use crate::parts::choice::rules_select;
use crate::parts::entry::Entry;
use airtally::house::{Field, HouseField};
use airtally_words::page as say;
use yew::prelude::*;

/// The part.
#[component]
pub fn Site() -> Html {
    let (page, hands) = (use_page(), use_hands());
    let Ask { fields, choices } = asked(&page);
    html! {
        <section class="part">
            <h2>{ say::HOUSE_ITSELF }</h2>
            <div class="fields">
                <Entry field={Field::HouseName} />
                { rules_select(&page, &hands, say::RULES, say::RULES_HINT) }
                <div class="field">
                    <p class="field-label" aria-hidden="true">{ say::UNITS_SHOWN }</p>
                    <div class="entry">{ unit_chips(&page, &hands) }</div>
                </div>
                { for fields.iter().map(|field: &HouseField| html! { <Entry key={field.id()} field={Field::House(*field)} /> }) }
                { for choice_fields(&page, &hands, &choices) }
            </div>
        </section>
    }
}
