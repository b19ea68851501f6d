//! Chips: a few choices in a row, one of them taken.

use super::el::{el, tag, text};
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// One choice: what it says, and whether it is taken.
pub type Chip = (AttrValue, bool);

/// A row of chips. `name` keeps the group apart from others; `label` says what is chosen; the place of a chip comes out.
pub fn chips(class: &'static str, name: String, label: String, chips: Vec<Chip>, chosen: &Callback<usize>) -> Html {
    let chip = |(at, (words, taken)): (usize, Chip)| {
        let input = tag("input", "").attr("type", "radio").attr("name", name.clone()).checked(taken);
        let input = input.on(|| ListenerKind::onchange, chosen.reform(move |_: Event| at)).html();
        el("label", "chip", [input, el("span", "", [text(words)])])
    };
    let group = tag("div", class).attr("role", "radiogroup").attr("aria-label", label);
    group.around([chips.into_iter().enumerate().map(chip).collect()])
}
