//! The house itself: its name, the rule set, the units, and what is known of it as a whole.

use crate::context::View;
use crate::frame::top::unit_chips;
use crate::parts::choice::rules_select;
use crate::parts::choices::choice_fields;
use crate::parts::entry::entry;
use crate::ui::el::{el, tag, text};
use airtally::house::{Choice, Field, HouseField};
use airtally::rules::Inputs;
use airtally_words::page as say;
use yew::prelude::*;

/// The part.
pub fn site(view: &View) -> Html {
    let (page, hands) = (&view.page, &view.hands);
    let Inputs { fields, choices } = Inputs::of(&page.house.choices);
    let always = [HouseField::FloorArea, HouseField::Ceiling].map(Field::House);
    let units = tag("p", "field-label").attr("aria-hidden", "true").around([text(say::UNITS_SHOWN)]);
    let units = el("div", "field", [units, el("div", "entry", [unit_chips(page, hands)])]);
    let fields = el(
        "div",
        "fields",
        [
            entry(view, Field::HouseName, None),
            rules_select(page, hands, say::RULES, say::RULES_HINT),
            units,
            always.iter().chain(fields).map(|field| entry(view, *field, None)).collect(),
            choice_fields(page, hands, choices).into_iter().collect(),
            choice_fields(page, hands, &[Choice::Building, Choice::Fuel]).into_iter().collect(),
        ],
    );
    el("section", "part", [el("h2", "", [text(say::HOUSE_ITSELF)]), fields])
}
