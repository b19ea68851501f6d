//! The same house under every rule set, with what decides there and why it differs; other legal readings of the chosen one.

use crate::context::View;
use crate::desk::{Move, Topic};
use crate::sheet::put_in::in_one;
use crate::ui::el::{el, els, nodes, nothing, tag, text};
use crate::ui::figure::{Size, figure_button};
use crate::ui::part::{part, row};
use airtally::quantity::Flow;
use airtally::report::CodeTotals;
use airtally::rules::{Level, RuleSet};
use airtally_words::{format, formula, label, page as say};
use std::rc::Rc;
use yew::prelude::*;

/// Other legal readings of the chosen rule set; nothing when there are none.
pub fn readings(view: &View) -> Html {
    let page = &view.page;
    let readings = &page.report.demand().alternatives;
    if readings.is_empty() {
        return nothing();
    }
    let rows = readings.iter().map(|reading| {
        let name = formula::title(reading.formula);
        let shown = format::flow(reading.flow, page.display());
        let note = page.report.line(reading.line).map(|line| airtally_words::standing::cite(line.source));
        let figure = view.figure(name, &shown, Size::Row, reading.line);
        row(nothing(), text(name), text(note.unwrap_or_default()), figure, None)
    });
    let note = el("p", "soft small", [text(say::READINGS_NOTE)]);
    part(say::READINGS, nothing(), nodes([note, els("ol", "ledger", rows)]))
}

/// The chosen rule set, and the others one press away beside it.
pub fn codes(view: &View) -> Html {
    let codes = view.page.report.codes();
    let chosen = view.page.house.choices.rules;
    let Some(own) = codes.iter().find(|code| code.rules == chosen) else { return nothing() };
    let others = codes.iter().filter(|code| code.rules != chosen).map(|code| code_row(view, code, own));
    let unit = text(view.page.display().flow().symbol());
    let note = el("p", "soft small", [text(say::CODES_NOTE), unit, text(".")]);
    let summary = el("summary", "", [text(say::other_codes(codes.len() - 1))]);
    let others = tag("details", "codes-others")
        .attr_if("open", view.wide.then_some(""))
        .around([summary, table(els("tbody", "", others))]);
    let own = table(el("tbody", "", [code_row(view, own, own)]));
    part(say::CODES, nothing(), nodes([note, own, others]))
}

fn table(rows: Html) -> Html {
    let head = |class: &'static str, words: &'static str| tag("th", class).attr("scope", "col").around([text(words)]);
    let levels = Level::ALL.into_iter().map(|level| head("number", label::level(level))).collect();
    let head = el("tr", "", [head("", say::RULES), levels, head("aloud", say::CODES_WHY)]);
    let caption = el("caption", "aloud", [text(say::CODES)]);
    el("table", "codes", [caption, el("thead", "", [head]), rows])
}

fn code_row(view: &View, code: &CodeTotals, own: &CodeTotals) -> Html {
    let cell = |(level, flow): (Level, Flow)| {
        let shown = format::flow(flow, view.page.display());
        let name = say::level_under(label::level(level), label::rules(code.rules));
        let figure = figure_button(&name, &shown.number, "", Size::Mid, explaining(view, code.rules, level));
        tag("td", "number").attr("data-label", label::level(level)).around([figure])
    };
    let head = tag("th", "").attr("scope", "row").around([text(label::rules(code.rules))]);
    let cells = Level::ALL.into_iter().zip(code.required).map(cell).collect();
    el("tr", if code.rules == own.rules { "is-chosen" } else { "" }, [head, cells, why(view, code, own)])
}

/// The working of a total, without choosing its rule set.
fn explaining(view: &View, rules: RuleSet, level: Level) -> Callback<Event> {
    let (hands, page) = (view.hands.clone(), Rc::clone(&view.page));
    Callback::from(move |_| {
        let report = page.under(rules).report;
        let address = report.address(report.shares().at(level).required.line);
        address.into_iter().for_each(|address| hands.make(Move::Explain(Topic::Under(rules, address))));
    })
}

/// How far it is from the chosen one, what decides by which equation, and what it does not know.
fn why(view: &View, code: &CodeTotals, own: &CodeTotals) -> Html {
    let difference = el("b", "", [text(difference(view, code, own))]);
    let governs = code.governs.as_ref().map(|governs| {
        let equation = el("span", "codes-equation", [text(in_one(&governs.line, &governs.terms))]);
        nodes([text(" · "), text(say::decides(governs)), text(": "), equation])
    });
    let unknown = code.unknown.iter().map(|unknown| el("span", "codes-unknown", [text(say::not_known(*unknown))]));
    el("td", "codes-why", [difference, governs.unwrap_or_else(nothing), unknown.collect()])
}

fn difference(view: &View, code: &CodeTotals, own: &CodeTotals) -> String {
    if code.rules == own.rules {
        return say::YOURS.to_owned();
    }
    let ([_, its, _], [_, ours, _]) = (code.required, own.required);
    let (more, by) = if its > ours { (true, its - ours) } else { (false, ours - its) };
    let by = format::flow(by, view.page.display());
    if by.number == "0" { say::NO_DIFFERENCE.to_owned() } else { say::difference(more, &by.to_string()) }
}
