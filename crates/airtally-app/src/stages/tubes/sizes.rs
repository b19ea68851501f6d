//! The same house with each size of tube, and which is wisest.

use crate::context::View;
use crate::parts::choice::choosing;
use crate::ui::el::{el, els, nodes, tag, text};
use crate::ui::part::part;
use airtally::delivery::{Against, Size, wisest};
use airtally::house::TubeSize;
use airtally::quantity::Unit;
use airtally_words::{format, label, page as say};
use yew::prelude::*;

/// The table. Pressing a size chooses it.
pub fn sizes(view: &View) -> Html {
    let page = &view.page;
    let sizes = page.report.sizes();
    let wisest = wisest(&sizes);
    let head = |class: &'static str, words: &'static str| tag("th", class).attr("scope", "col").around([text(words)]);
    let heads = [head("", say::TUBE_USED), head("number", say::SIZE_TUBES)];
    let heads = heads.into_iter().chain([head("number", say::SIZE_MOST), head("number", say::SIZE_UNIT)]);
    let rows = sizes.iter().map(|size| row(view, size, wisest));
    let caption = el("caption", "aloud", [text(say::SIZES)]);
    let table = el("table", "codes", [caption, el("thead", "", [els("tr", "", heads)]), els("tbody", "", rows)]);
    part(say::SIZES, nodes([]), nodes([table, el("p", "soft small", [text(say::SIZES_NOTE)])]))
}

fn row(view: &View, size: &Size, wisest: Option<TubeSize>) -> Html {
    let display = view.page.display();
    let chosen = view.page.report.runs().tube == size.tube;
    let number =
        |label: &'static str, words: String| tag("td", "number").attr("data-label", label).around([text(words)]);
    let pascal = |pressure: airtally::quantity::Pressure| {
        format::in_display(pressure.as_pa(), Unit::Pascal, display).to_string()
    };
    let verdict = match size.against {
        Against::Nothing if wisest == Some(size.tube) => say::SIZE_WISEST,
        Against::Nothing => say::SIZE_FINE,
        Against::Pressure => say::SIZE_TAKES_MUCH,
        Against::Tubes => say::SIZE_MANY,
    };
    let name = match chosen {
        true => text(label::tube(size.tube)),
        false => choose(view, size.tube),
    };
    let metres = format::length(size.metres, display).to_string();
    let cells = [
        tag("th", "").attr("scope", "row").around([name]),
        number(say::SIZE_TUBES, format::count(size.tubes)),
        number(say::SIZE_MOST, pascal(size.most)),
        number(say::SIZE_UNIT, pascal(size.unit)),
        el("td", "codes-why", [text(say::size_why(verdict, &metres))]),
    ];
    el("tr", if chosen { "is-chosen" } else { "" }, cells)
}

fn choose(view: &View, tube: TubeSize) -> Html {
    let chosen = choosing(&view.page, &view.hands, &TubeSize::ALL, |choices, tube| choices.tube = tube);
    let at = TubeSize::ALL.iter().position(|own| *own == tube).unwrap_or_default();
    crate::ui::el::button("as-link", chosen.reform(move |_: Event| at)).around([text(label::tube(tube))])
}
