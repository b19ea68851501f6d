//! Parts of a page: a heading with what belongs to it, a row of a ledger, a caution.

use super::el::{el, nothing, tag, text};
use super::icon::{Icon, icon};
use yew::prelude::*;

/// A part with its heading, a remark beside it and a body.
pub fn part(heading: &'static str, aside: Html, body: Html) -> Html {
    el("section", "part", [el("div", "part-head", [el("h2", "", [text(heading)]), aside]), body])
}

/// A row of a ledger.
pub fn row(mark: Html, name: Html, note: Html, figure: Html, under: Option<Html>) -> Html {
    let name = el("h3", "row-name", [name]);
    let under = under.map_or_else(nothing, |under| el("div", "row-under", [under]));
    let main = el("div", "row-main", [name, el("p", "row-note", [note])]);
    el("li", "row", [el("span", "row-mark", [mark]), main, el("div", "row-figure", [figure]), under])
}

/// The last row of a ledger: what it comes to.
pub fn row_sum(name: &'static str, figure: Html) -> Html {
    let main = el("div", "row-main", [el("h3", "row-name", [text(name)])]);
    el("li", "row row-sum", [el("span", "row-mark", []), main, el("div", "row-figure", [figure])])
}

/// Soft small text.
pub fn soft(words: impl Into<AttrValue>) -> Html {
    el("span", "soft small", [text(words)])
}

/// Where work can hurt someone.
pub fn caution(words: impl Into<AttrValue>) -> Html {
    caution_of(el("span", "", [text(words)]))
}

/// A caution around more than words.
pub fn caution_of(body: Html) -> Html {
    el("p", "caution", [icon(Icon::Caution), body])
}

/// The way on to another screen.
pub fn next(address: &'static str, words: &'static str) -> Html {
    el("p", "", [tag("a", "button-main").attr("href", address).around([text(words)])])
}
