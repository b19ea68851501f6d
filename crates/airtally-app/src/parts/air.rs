//! The letter of an air: a tag that points into the room or out of it, and the colour of EN 16798-3.

use crate::ui::el::{el, nodes, tag, text};
use crate::ui::icon::{drawing, stroke};
use airtally::house::Role;
use airtally::rules::Air;
use airtally_words::label;
use yew::prelude::*;

/// The tag of one air.
pub fn air_tag(air: Air) -> Html {
    match air {
        Air::Supply => made("air air-supply", "M1 1h22l8 12-8 12H1z", label::air_letter(air), label::air(air)),
        Air::Extract => made("air air-extract", "M31 1H9L1 13l8 12h22z", label::air_letter(air), label::air(air)),
    }
}

/// The tag of outdoor air.
pub fn outdoor_tag() -> Html {
    made("air air-outdoor", "M1 1h30v24H1z", "O", airtally_words::page::OUTDOOR)
}

/// The tags of what the air does in a room.
pub fn role_tag(role: Role) -> Html {
    match role {
        Role::Supply => air_tag(Air::Supply),
        Role::Extract => air_tag(Air::Extract),
        Role::Both => nodes([air_tag(Air::Supply), air_tag(Air::Extract)]),
        Role::Transfer | Role::Never => tag("span", "air air-none").attr("aria-hidden", "true").around([text("·")]),
    }
}

fn made(class: &'static str, shape: &'static str, letter: &'static str, name: &'static str) -> Html {
    let letter = tag("abbr", "").attr("title", name).around([text(letter)]);
    el("span", class, [drawing("", "0 0 32 26", [stroke("", shape)]), letter])
}
