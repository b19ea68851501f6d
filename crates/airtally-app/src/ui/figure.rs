//! A figure: number large, unit small. One that opens its working is a button.

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
pub fn figure(number: &str, unit: &str, size: Size) -> Html {
    html! { <span class={class(size)}>{ inside(number, unit) }</span> }
}

/// A figure that opens its working. `name` says what it is, in front of the number, to who cannot see where it stands.
pub fn figure_button(name: &str, number: &str, unit: &str, size: Size, onclick: Callback<MouseEvent>) -> Html {
    let label = [name, ": ", number, " ", unit].concat();
    html! {
        <button type="button" class={class(size)} aria-haspopup="dialog" aria-label={label} {onclick}>
            { inside(number, unit) }
        </button>
    }
}

fn inside(number: &str, unit: &str) -> Html {
    html! { <><b>{ number.to_owned() }</b>{ " " }if !unit.is_empty() { <small>{ unit.to_owned() }</small> }</> }
}

const fn class(size: Size) -> &'static str {
    match size {
        Size::Row => "figure",
        Size::Mid => "figure figure-mid",
        Size::Big => "figure figure-big",
    }
}
