//! Parts: what is ordered and done, from which coil it is cut, and what it comes to.

mod coils;
mod lines;
mod list;
mod sheet;

use super::air::nothing_yet;
use crate::context::View;
use crate::parts::book::no_book;
use crate::ui::el::{el, nothing, text};
use crate::ui::figure::{Size, figure};
use crate::ui::part::{next, part};
use airtally::given::GivenId;
use airtally::money::Money;
use airtally_words::book::book;
use airtally_words::format::{Shown, value};
use airtally_words::{page as say, parts as words};
use yew::prelude::*;

/// The screen; on paper the quotation, and on a sheet of its own what is cut from which coil.
pub fn parts(view: &View) -> Html {
    let report = &view.page.report;
    let (take_off, quotation) = (report.take_off(), report.quotation());
    if take_off.lines.is_empty() {
        return nothing_yet(say::ASK_PARTS);
    }
    let Some(book) = book() else {
        let head = [el("h1", "", [text(say::ASK_PARTS)]), no_book(view)];
        return el("div", "spread", [el("div", "leaf", [el("header", "answer", head)])]);
    };
    if view.desk.paper {
        let sheet = el("div", "leaf", [sheet::sheet(view, book)]);
        return el("div", "spread", [sheet, el("div", "leaf page-new", [coils::coils(view, take_off)])]);
    }
    let left = [answer(view), sums(view), list::list(view, book), next("#steps", say::NEXT_STEPS)];
    let right = [lines::lines(view, book, take_off, quotation), coils::coils(view, take_off)];
    el("div", "spread", [el("div", "leaf", left), el("div", "leaf", right)])
}

fn answer(view: &View) -> Html {
    let quotation = view.page.report.quotation();
    let priced = quotation.lines.len() - quotation.unpriced;
    let big = match priced {
        0 => {
            let (count, lines) = say::kinds(quotation.lines.len());
            figure(&count, lines, Size::Big)
        }
        _ => figure(&words::money(quotation.total), "", Size::Big),
    };
    let without = match quotation.unpriced {
        0 => nothing(),
        count => el("p", "answer-why", [text(say::unpriced(count))]),
    };
    let head = [el("h1", "", [text(say::ASK_PARTS)]), el("p", "", [big]), without];
    el("header", "answer", [head.into_iter().collect(), el("p", "soft small", [text(say::PARTS_NOTE)])])
}

fn sums(view: &View) -> Html {
    let quotation = view.page.report.quotation();
    let row = |name: &'static str, money: Money, rate: Option<GivenId>| {
        let rate = rate.map_or(nothing(), |id| rated(view, name, id));
        el("div", "sum", [el("dt", "", [text(name), text(" "), rate]), el("dd", "", [text(words::money(money))])])
    };
    let rows = [
        row(say::SUM_PARTS, quotation.parts, None),
        row(say::SUM_MARGIN, quotation.margin, Some(GivenId::PartsMargin)),
        row(say::SUM_WORK, quotation.work, None),
        row(say::SUM_NET, quotation.net, None),
        row(say::SUM_TAX, quotation.tax, Some(GivenId::Tax)),
        row(say::SUM_TOTAL, quotation.total, None),
    ];
    part(say::SUMS, nothing(), el("dl", "sums", rows))
}

/// The rate of a sum, to be changed.
fn rated(view: &View, name: &str, id: GivenId) -> Html {
    let shown: Shown = value(view.page.report.givens().value(id), id.given().unit);
    view.given_figure(name, &shown, Size::Mid, id)
}
