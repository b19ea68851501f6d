//! The answer: what is required at a level, what governs and by how much, and what is set.

use crate::context::{Hands, Page, View};
use crate::desk::Move;
use crate::parts::source::source_line;
use crate::ui::chips::chips;
use crate::ui::figure::{Size, figure};
use airtally::rules::Level;
use airtally::shares::LevelShares;
use airtally::source::{Source, Standing};
use airtally::working::{LineId, Origin};
use airtally_words::{format, label, page as say};
use yew::prelude::*;

/// The head of the screen.
pub fn answer(view: &View, level: Level) -> Html {
    let page = &view.page;
    let shares = page.report.shares().at(level);
    let required = format::flow(shares.required.value, page.display());
    html! {
        <header class="answer">
            <h1>{ say::ASK_AIR }</h1>
            { levels(&view.hands, level) }
            <p>{ view.figure(say::REQUIRED, &required, Size::Big, shares.required.line) }</p>
            { why(page, shares) }
            { totals(view, shares) }
        </header>
    }
}

fn levels(hands: &Hands, level: Level) -> Html {
    let hands = hands.clone();
    let chosen = Callback::from(move |at: usize| {
        if let Some(level) = Level::ALL.get(at) {
            hands.make(Move::Level(*level));
        }
    });
    let options = Level::ALL.iter().map(|one| (label::level(*one).into(), *one == level)).collect();
    chips("level".to_owned(), say::LEVEL, options, &chosen, "chips-main")
}

fn why(page: &Page, shares: &LevelShares) -> Html {
    let Some((first, margin)) = shares.margin() else { return html! {} };
    let source = says(page, first.line);
    let second =
        shares.asked.get(1).zip(margin).map(|(second, margin)| {
            say::margin(label::asks(second.by), &format::flow(margin, page.display()).to_string())
        });
    html! {
        <>
            <p class="answer-why">
                <span class="margin-over">{ say::governs(label::asks(first.by)) }</span>{ " " }{ second.unwrap_or_default() }
            </p>
            <p class="small soft">{ label::rules(page.house.choices.rules) }</p>
            if let Some(source) = source { { source_line(source) } }
        </>
    }
}

/// Who says so: where a line only picks the largest of others or adds them up, the line it picked.
fn says(page: &Page, line: LineId) -> Option<&'static Source> {
    let found = page.report.line(line)?;
    if found.source.standing != Standing::Arithmetic {
        return Some(found.source);
    }
    let terms = page.report.terms(line);
    let picked = terms.iter().filter(|term| term.value == found.value && term.unit == found.unit);
    let below = picked.filter_map(|term| if let Origin::Line(below) = term.origin { Some(below) } else { None }).next();
    below.map_or(Some(found.source), |below| says(page, below))
}

fn totals(view: &View, shares: &LevelShares) -> Html {
    let page = &view.page;
    let step = format::flow(page.report.shares().step, page.display());
    let set = format::flow(shares.total, page.display());
    let total = |name: &'static str, shown: &format::Shown| {
        html! { <div class="total"><dt>{ name }</dt><dd>{ figure(&shown.number, shown.unit, Size::Row) }</dd></div> }
    };
    html! {
        <dl class="totals">
            { total(say::SET_SUPPLY, &set) }
            { total(say::SET_EXTRACT, &set) }
            { total(say::STEP, &step) }
        </dl>
    }
}
