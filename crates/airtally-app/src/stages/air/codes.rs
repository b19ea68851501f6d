//! The same house under every rule set, and other legal readings of the chosen one.

use crate::context::{Hands, Page, View};
use crate::ui::el::{button, el, els, nodes, nothing, tag, text};
use crate::ui::figure::{Size, figure};
use crate::ui::part::{part, row};
use airtally::edit::Edit;
use airtally::house::Choices;
use airtally::report::CodeTotals;
use airtally::rules::Level;
use airtally_words::{format, formula, label, page as say};
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

/// The table of rule sets.
pub fn codes(view: &View) -> Html {
    let (page, hands) = (&view.page, &view.hands);
    let head = |level: Level| tag("th", "number").attr("scope", "col").around([text(label::level(level))]);
    let caption = el("caption", "aloud", [text(say::CODES)]);
    let first = tag("th", "").attr("scope", "col").around([text(say::RULES)]);
    let head = el("tr", "", [first, Level::ALL.into_iter().map(head).collect()]);
    let rows = els("tbody", "", page.report.codes().iter().map(|code| code_row(page, hands, code)));
    let unit = text(page.display().flow().symbol());
    let note = el("p", "soft small", [text(say::CODES_NOTE), unit, text(".")]);
    let table = el("table", "codes", [caption, el("thead", "", [head]), rows]);
    part(say::CODES, nothing(), nodes([note, table]))
}

fn code_row(page: &Page, hands: &Hands, code: &CodeTotals) -> Html {
    let chosen = code.rules == page.house.choices.rules;
    let choices = Choices { rules: code.rules, ..page.house.choices };
    let cell = |(level, flow): (Level, airtally::quantity::Flow)| {
        let shown = format::flow(flow, page.display());
        let figure = figure(&shown.number, "", Size::Mid);
        tag("td", "number").attr("data-label", label::level(level)).around([figure])
    };
    let choose = button("button-quiet", hands.editing(Edit::Choose(choices))).attr("aria-pressed", chosen.to_string());
    let choose = choose.around([text(label::rules_short(code.rules))]);
    let yours = if chosen { el("span", "small", [text(" "), text(say::YOURS)]) } else { nothing() };
    let head = tag("th", "").attr("scope", "row").around([choose, yours]);
    let cells = Level::ALL.into_iter().zip(code.required).map(cell).collect();
    el("tr", if chosen { "is-chosen" } else { "" }, [head, cells])
}
