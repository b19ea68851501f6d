//! Chips: a few choices in a row, one of them taken.

use yew::prelude::*;

/// One choice: what it says, and whether it is taken.
pub type Chip = (AttrValue, bool);

/// A row of chips. `name` keeps the group apart from others; `label` says what is chosen; the place of a chip comes out.
pub fn chips(name: String, label: &str, chips: Vec<Chip>, chosen: &Callback<usize>, class: &'static str) -> Html {
    let chip = |(at, (words, taken)): (usize, Chip)| {
        let onchange = chosen.reform(move |_: Event| at);
        html! {
            <label class="chip" key={at}>
                <input type="radio" name={name.clone()} checked={taken} {onchange} /><span>{ words }</span>
            </label>
        }
    };
    html! {
        <div class={classes!("chips", class)} role="radiogroup" aria-label={label.to_owned()}>
            { for chips.into_iter().enumerate().map(chip) }
        </div>
    }
}
