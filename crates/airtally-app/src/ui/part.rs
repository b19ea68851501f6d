//! Parts of a page: a heading with what belongs to it, a row of a ledger, a caution.

use super::icon::{Icon, icon};
use yew::prelude::*;

/// A part with its heading, a remark beside it and a body.
pub fn part(heading: &str, aside: Html, body: Html) -> Html {
    html! {
        <section class="part">
            <div class="part-head"><h2>{ heading.to_owned() }</h2>{ aside }</div>
            { body }
        </section>
    }
}

/// A row of a ledger.
pub fn row(mark: Html, name: Html, note: Html, figure: Html, under: Option<Html>) -> Html {
    html! {
        <li class="row">
            <span class="row-mark">{ mark }</span>
            <div class="row-main"><h3 class="row-name">{ name }</h3><p class="row-note">{ note }</p></div>
            <div class="row-figure">{ figure }</div>
            if let Some(under) = under { <div class="row-under">{ under }</div> }
        </li>
    }
}

/// The last row of a ledger: what it comes to.
pub fn row_sum(name: &'static str, figure: Html) -> Html {
    html! {
        <li class="row row-sum">
            <span class="row-mark"></span>
            <div class="row-main"><h3 class="row-name">{ name }</h3></div>
            <div class="row-figure">{ figure }</div>
        </li>
    }
}

/// Soft small text.
pub fn soft(text: impl Into<AttrValue>) -> Html {
    html! { <span class="soft small">{ text.into() }</span> }
}

/// Where work can hurt someone.
pub fn caution(words: impl Into<AttrValue>) -> Html {
    html! { <p class="caution">{ icon(Icon::Caution) }<span>{ words.into() }</span></p> }
}
