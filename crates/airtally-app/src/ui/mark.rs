//! How sure a value is, in a word with an outline.

use super::el::{el, text};
use yew::prelude::*;

/// A mark. `class` picks the outline, `words` say what it means.
pub fn mark(class: &'static str, words: &'static str) -> Html {
    el("span", class, [text(words)])
}
