//! The same house made in other ways, side by side, and which is advised.

use crate::context::View;
use crate::desk::Fold;
use crate::parts::fold::fold;
use crate::ui::el::{button, el, els, nodes, nothing, tag, text};
use crate::ui::part::part;
use airtally::alternatives::{Alternative, Way, Ways};
use airtally::quantity::{Pressure, Unit};
use airtally_words::{format, label, page as say, parts as words};
use yew::prelude::*;

/// The tables. Pressing a way takes it.
pub fn ways(view: &View) -> Html {
    fold(view, Fold::Ways, say::WAYS, say::WAYS_NOTE, || {
        nodes([
            Ways::ALL.into_iter().map(|ways| table(view, ways)).collect(),
            el("p", "soft small", [text(say::WAYS_HOW)]),
        ])
    })
}

fn table(view: &View, ways: Ways) -> Html {
    let all = view.page.report.alternatives(ways);
    if all.is_empty() {
        return nothing();
    }
    let head = |class: &'static str, words: &'static str| tag("th", class).attr("scope", "col").around([text(words)]);
    let first = tag("th", "").attr("scope", "col").around([el("span", "aloud", [text(say::WAY)])]);
    let heads = [first, head("number", say::WAY_MOST), head("number", say::WAY_UNIT)];
    let heads = heads.into_iter().chain([head("number", say::WAY_LOUDEST)]);
    let rows = all.iter().map(|own| row(view, own));
    let caption = el("caption", "aloud", [text(say::ways(ways))]);
    let table = el("table", "codes", [caption, el("thead", "", [els("tr", "", heads)]), els("tbody", "", rows)]);
    part(say::ways(ways), nothing(), table)
}

fn row(view: &View, own: &Alternative) -> Html {
    let display = view.page.display();
    let number =
        |label: &'static str, words: String| tag("td", "number").attr("data-label", label).around([text(words)]);
    let pascal = |pressure: Pressure| format::in_display(pressure.as_pa(), Unit::Pascal, display).to_string();
    let loudest = own.loudest.map_or(format::DASH.to_owned(), |level| format::value(level, Unit::DecibelA).number);
    let metres = format::length(own.metres, display).to_string();
    let price = (own.price != airtally::money::Money::ZERO).then(|| words::money(own.price));
    let why = say::way_why(own.against, own.advised, own.tubes, &metres, price.as_deref());
    let cells = [
        tag("th", "").attr("scope", "row").around([name(view, own)]),
        number(say::WAY_MOST, pascal(own.most)),
        number(say::WAY_UNIT, pascal(own.unit)),
        number(say::WAY_LOUDEST, loudest),
        el("td", "codes-why", [text(why)]),
    ];
    el("tr", if own.taken { "is-chosen" } else { "" }, cells)
}

/// Its name, to be pressed unless it is taken.
fn name(view: &View, own: &Alternative) -> Html {
    let words: AttrValue = match own.way {
        Way::Tube(tube) => label::tube(tube).into(),
        Way::Manifolds(manifolds) => label::manifolds(manifolds).into(),
        Way::Tubes(fewest) => say::fewest(fewest).into(),
        Way::Main(mm) => format::small_length(airtally::quantity::Length::from_mm(f64::from(mm)), view.page.display())
            .to_string()
            .into(),
    };
    if own.taken {
        return text(words);
    }
    button("as-link", view.hands.editing(own.way.edit(&view.page.house))).around([text(words)])
}
