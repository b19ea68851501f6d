//! A figure: number large, unit small. One that opens its working is a button.

use super::el::{button, el, nothing, text};
use yew::prelude::*;

/// How large.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Size {
    /// In a row.
    Row,
    /// Beside text.
    Mid,
    /// The answer of a screen.
    Big,
}

/// A figure that is only read.
pub fn figure(number: &str, unit: &'static str, size: Size) -> Html {
    el("span", class(size), inside(number, unit))
}

/// A figure that opens its working. `name` says what it is, in front of the number, to who cannot see where it stands.
pub fn figure_button(name: &str, number: &str, unit: &'static str, size: Size, pressed: Callback<Event>) -> Html {
    let label = [name, ": ", number, " ", unit].concat();
    button(class(size), pressed).attr("aria-haspopup", "dialog").attr("aria-label", label).around(inside(number, unit))
}

fn inside(number: &str, unit: &'static str) -> [Html; 3] {
    let unit = if unit.is_empty() { nothing() } else { el("small", "", [text(unit)]) };
    [el("b", "", [text(number.to_owned())]), text(" "), unit]
}

const fn class(size: Size) -> &'static str {
    match size {
        Size::Row => "figure",
        Size::Mid => "figure figure-mid",
        Size::Big => "figure figure-big",
    }
}
