//! The house itself: its name, the rule set, the units, and what is known of it as a whole.

use super::choices::choice_fields;
use crate::context::View;
use crate::frame::top::unit_chips;
use crate::parts::choice::rules_select;
use crate::parts::entry::entry;
use airtally::house::{Field, HouseField};
use airtally::rules::Inputs;
use airtally_words::page as say;
use yew::prelude::*;

/// The part.
pub fn site(view: &View) -> Html {
    let (page, hands) = (&view.page, &view.hands);
    let Inputs { fields, choices } = Inputs::of(&page.house.choices);
    let always = [HouseField::FloorArea, HouseField::Ceiling].map(Field::House);
    html! {
        <section class="part">
            <h2>{ say::HOUSE_ITSELF }</h2>
            <div class="fields">
                { entry(view, Field::HouseName, None) }
                { rules_select(page, hands, say::RULES, say::RULES_HINT) }
                <div class="field">
                    <p class="field-label" aria-hidden="true">{ say::UNITS_SHOWN }</p>
                    <div class="entry">{ unit_chips(page, hands) }</div>
                </div>
                { for always.iter().chain(fields).map(|field| entry(view, *field, None)) }
                { for choice_fields(page, hands, choices) }
            </div>
        </section>
    }
}
