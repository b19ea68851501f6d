//! The answer: what is required at a level, what governs and by how much, and what is set.

use crate::context::{Hands, Page, View};
use crate::desk::Move;
use crate::parts::doubt::doubt;
use crate::parts::source::source_line;
use crate::ui::chips::chips;
use crate::ui::el::{el, maybe, nodes, nothing, tag, text};
use crate::ui::figure::Size;
use airtally::quantity::Unit;
use airtally::rules::Level;
use airtally::shares::LevelShares;
use airtally::source::Source;
use airtally::working::LineId;
use airtally_words::{format, label, page as say};
use yew::prelude::*;

/// The head of the screen.
pub fn answer(view: &View, level: Level) -> Html {
    let page = &view.page;
    let shares = page.report.shares().at(level);
    let required = format::flow(shares.required.value, page.display());
    el(
        "header",
        "answer",
        [
            el("h1", "", [text(say::ASK_AIR)]),
            levels(&view.hands, level),
            el("p", "", [view.figure(say::REQUIRED, &required, Size::Big, shares.required.line)]),
            doubt(view),
            why(page, shares),
            totals(view, shares),
        ],
    )
}

fn levels(hands: &Hands, level: Level) -> Html {
    let hands = hands.clone();
    let chosen = Callback::from(move |at: usize| {
        if let Some(level) = Level::ALL.get(at) {
            hands.make(Move::Level(*level));
        }
    });
    let options = Level::ALL.iter().map(|one| (label::level(*one).into(), *one == level)).collect();
    chips("chips chips-main", "level".to_owned(), say::LEVEL.to_owned(), options, &chosen)
}

fn why(page: &Page, shares: &LevelShares) -> Html {
    let Some((first, margin)) = shares.margin() else { return nothing() };
    let source = says(page, first.line);
    let second =
        shares.asked.get(1).zip(margin).map(|(second, margin)| {
            say::margin(label::asks(second.by), &format::flow(margin, page.display()).to_string())
        });
    let governs = el("span", "margin-over", [text(say::governs(label::asks(first.by)))]);
    let whole = page
        .report
        .larger_of(first.line)
        .map(|([taken, left], by)| say::larger(taken, left, &format::flow(by, page.display()).to_string()));
    nodes([
        el(
            "p",
            "answer-why",
            [governs, text(" "), text(whole.unwrap_or_default()), text(" "), text(second.unwrap_or_default())],
        ),
        el("p", "small soft", [text(label::rules(page.house.choices.rules))]),
        maybe(source.map(source_line)),
    ])
}

/// Who says so: where a line only picks one of others, the line it picked.
fn says(page: &Page, line: LineId) -> Option<&'static Source> {
    page.report.line(page.report.picked(line)).map(|made| made.source)
}

fn totals(view: &View, shares: &LevelShares) -> Html {
    let (page, all) = (&view.page, view.page.report.shares());
    let set = format::flow(shares.total, page.display());
    let step = format::flow(all.step, page.display());
    let total =
        |name: AttrValue, figure: Html| el("div", "total", [el("dt", "", [text(name)]), el("dd", "", [figure])]);
    let side = |name: &'static str| total(name.into(), view.figure(name, &set, Size::Row, shares.total_line));
    let steps = view.given_figure(say::STEP, &step, Size::Row, all.step_id);
    let mut list = tag("dl", "totals");
    for row in [side(say::SET_SUPPLY), side(say::SET_EXTRACT), total(say::STEP.into(), steps)] {
        list = list.put(row);
    }
    for judged in shares.balance.iter().flatten() {
        let name = say::balanced(judged);
        let percent = format::value(judged.percent, Unit::Percent);
        let figure = view.figure(&name, &percent, Size::Row, judged.line);
        list = list.put(total(name.into(), figure));
    }
    list.html()
}
