//! How sure a value is, in a word with an outline.

use yew::prelude::*;

/// A mark. `kind` picks the outline, `words` say what it means.
pub fn mark(kind: &'static str, words: &'static str) -> Html {
    html! { <span class={classes!("mark", kind)}>{ words }</span> }
}
