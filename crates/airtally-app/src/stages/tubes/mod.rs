//! Tubes: how many to each room and why, and the ports of the manifolds.

mod duty;
mod layout;
mod open_run;
mod run;
mod trial;
mod unit;
mod ways;

use super::air::nothing_yet;
use crate::context::{Page, View};
use crate::desk::Fold;
use crate::parts::doubt::doubt;
use crate::parts::fold::fold;
use crate::ui::drawing::drawing as draw;
use crate::ui::el::{el, els, nodes, nothing, tag, text};
use crate::ui::figure::{Size, figure};
use crate::ui::part::{next, part, soft};
use crate::ui::tally::tally;
use airtally::drawing;
use airtally::money::Money;
use airtally::quantity::Unit;
use airtally::rules::Air;
use airtally::runs::Runs;
use airtally::working::Traced;
use airtally_words::format::{self, Shown};
use airtally_words::parts::money;
use airtally_words::{drawing as words, label, page as say};
use yew::prelude::*;

/// The screen.
pub fn tubes(view: &View) -> Html {
    let page = &view.page;
    let runs = page.report.runs();
    if runs.runs.is_empty() {
        return nothing_yet(say::ASK_TUBES);
    }
    let [supply, extract] = Air::BOTH.map(|air| side(view, runs, air));
    let heard = el("p", "", [soft(say::HEARD_NOTE)]);
    let left = [answer(page, runs), doubt(view), ports(view, runs), supply, extract, heard];
    let right = [
        duty::duty(view),
        unit::unit(view),
        trial::trial(view),
        ways::ways(view),
        layout::layout(view),
        riser(view, runs),
        next("#parts", say::NEXT_PARTS),
    ];
    el("div", "spread", [el("div", "leaf", left), el("div", "leaf", right)])
}

fn answer(page: &Page, runs: &Runs) -> Html {
    let all = runs.all_tubes();
    let bore = format::small_length(runs.bore, page.display()).to_string();
    let count = figure(&format::count(all), say::tubes_word(all), Size::Big);
    el(
        "header",
        "answer",
        [
            el("h1", "", [text(say::ASK_TUBES)]),
            el("p", "tallied", [count, tally(all, all, say::tubes(all))]),
            el("p", "answer-why", [text(say::tube_note(&bore))]),
            price(page),
        ],
    )
}

/// What it all costs so far, so that a longer run shows at once.
fn price(page: &Page) -> Html {
    let quotation = page.report.quotation();
    if quotation.total == Money::ZERO {
        return nothing();
    }
    let link = tag("a", "").attr("href", "#parts").around([text(say::TO_PARTS)]);
    el("p", "soft", [text(say::price_so_far(&money(quotation.total))), link])
}

fn ports(view: &View, runs: &Runs) -> Html {
    let total = |name: &'static str, ports: Traced<u32>| {
        let shown = Shown { number: format::count(ports.value), unit: Unit::Count.symbol() };
        let figure = view.figure(name, &shown, Size::Row, ports.line);
        el("div", "total", [el("dt", "", [text(name)]), el("dd", "", [figure])])
    };
    let totals = [total(say::SUPPLY_PORTS, runs.supply_ports), total(say::EXTRACT_PORTS, runs.extract_ports)];
    nodes([el("dl", "totals", totals), el("p", "soft small", [text(say::PORTS_NOTE)])])
}

/// All of it in one drawing.
fn riser(view: &View, runs: &Runs) -> Html {
    let page = &view.page;
    let Some(riser) = drawing::riser(page.report.facts(), runs, page.report.givens()) else { return nothing() };
    let said = |said| words::said(said, &page.house, page.display());
    fold(view, Fold::Riser, say::RISER, say::RISER_NOTE, || draw(&riser, say::RISER_DESCRIBED, said))
}

fn side(view: &View, runs: &Runs, air: Air) -> Html {
    let count = say::tubes(runs.tubes(air));
    let aside = el("span", "soft", [text(count)]);
    let rows = runs.side(air).map(|run| run::row(view, run));
    part(label::air(air), aside, els("ol", "ledger", rows))
}
