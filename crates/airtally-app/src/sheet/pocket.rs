//! The pocket: single questions that need no house, one at a time, each with its working.

use super::line::{equation, letter};
use crate::context::View;
use crate::desk::Move;
use crate::parts::choice::options;
use crate::parts::entry::{Typing, typing};
use crate::parts::source::{source_line, source_mark};
use crate::ui::chips::chips;
use crate::ui::el::{el, els, nodes, nothing, tag, text};
use crate::ui::figure::{Size, figure};
use crate::ui::part::{caution, soft};
use airtally::formula::Formula;
use airtally::issue::Trouble;
use airtally::pocket::figures::{MAIN_BORES, MAIN_SPEEDS, main_flow};
use airtally::pocket::{Answer, Ask, Slot, Usual, answer};
use airtally::quantity::{Kind, Length, Unit};
use airtally::working::{LineId, Term};
use airtally_words::format::{self, Shown};
use airtally_words::formula::meaning;
use airtally_words::issue::{Typed, about_typed};
use airtally_words::page as say;
use yew::prelude::*;

/// The pocket, open at one question.
pub fn pocket(view: &View) -> Html {
    let ask = view.desk.ask;
    let chosen = {
        let hands = view.hands.clone();
        Callback::from(move |at: usize| Ask::ALL.get(at).into_iter().for_each(|ask| hands.make(Move::Ask(*ask))))
    };
    let asks = options(&Ask::ALL, ask, say::pocket_short);
    let asks = chips("chips", "pocket".to_owned(), say::POCKET_ASKS.to_owned(), asks, &chosen);
    let fields = els("div", "fields", ask.slots().iter().map(|slot| slot_field(view, *slot)));
    let question = el("h3", "pocket-ask", [text(say::pocket_ask(ask))]);
    let page = &view.page;
    let found = answer(ask, &view.desk.scratch, page.report.givens(), usual_tube(view));
    let (figures, working) = match &found {
        Some(found) if found.lines.is_empty() => (caution(say::POCKET_TOO_WIDE), nothing()),
        Some(found) => (figures(view, found), working(found)),
        None => (el("p", "soft", [text(say::POCKET_NOTHING)]), nothing()),
    };
    let figures = tag("div", "").attr("role", "status").around([figures]);
    let found = el("div", "pocket-answer", [figures, working]);
    let mains = if ask == Ask::Main { mains(view) } else { nothing() };
    let note = el("p", "", [soft(say::pocket_note(ask, page.display()))]);
    nodes([asks, question, fields, found, note, mains])
}

fn usual_tube(view: &View) -> Usual {
    let runs = view.page.report.runs();
    Usual { bore: runs.bore, outside: Length::from_mm(runs.tube.outside_mm()) }
}

fn slot_field(view: &View, slot: Slot) -> Html {
    let (hands, scratch) = (view.hands.clone(), &view.desk.scratch);
    let display = view.page.display();
    let entry = scratch.entry(slot);
    let unit = entry.map_or_else(|| slot.unit(display), |entry| entry.unit);
    let text = entry.map(|entry| entry.text.clone()).unwrap_or_default();
    let label = say::pocket_field(slot);
    let limit = slot.limit();
    let trouble = match scratch.read(slot) {
        Ok(measure) => measure.and_then(|measure| limit.remark(measure)),
        Err(trouble) => Some(trouble),
    };
    let said = |trouble: Trouble| {
        let kind = Some(limit.unit.kind());
        about_typed(trouble, &Typed { name: label.name.to_owned(), text: &text, kind, unit: Some(unit) })
    };
    let trouble = trouble.map(|trouble| (trouble, said(trouble)));
    typing(Typing {
        id: ["pocket-", &(slot as usize).to_string()].concat(),
        label,
        text,
        usual: usual(view, slot, unit),
        unit,
        units: slot.units(),
        limit: Some(limit),
        legs: false,
        trouble,
        typed: Callback::from(move |(text, unit): (String, Unit)| hands.make(Move::Scratch(slot, text, unit))),
        on_enter: None,
    })
}

/// What counts while a field is empty, shown faintly in the unit of its chip.
fn usual(view: &View, slot: Slot, unit: Unit) -> String {
    let length = match slot {
        Slot::TubeBore => Some(usual_tube(view).bore),
        Slot::DoorWidth => Length::of(view.page.report.givens().measure(airtally::given::GivenId::DoorWidth)),
        _ => None,
    };
    length.and_then(|length| length.as_unit(unit)).map(|value| format::value(value, unit).number).unwrap_or_default()
}

fn figures(view: &View, found: &Answer) -> Html {
    let list = found.lines.iter().enumerate().map(|(at, id)| total(view, found, *id, at == 0));
    els("dl", "totals", list)
}

fn working(found: &Answer) -> Html {
    let summary = el("summary", "button-quiet", [text(say::POCKET_WORKING)]);
    let steps = found.lines.iter().map(|id| step(found, *id)).collect();
    el("details", "", [summary, el("div", "pocket-working", [steps])])
}

fn total(view: &View, found: &Answer, id: LineId, first: bool) -> Html {
    let (Some(line), terms) = (found.working.line(id), found.working.terms(id)) else { return nothing() };
    let shown = shown(view, line.value, line.unit);
    // Where several figures are alike, none is the main one.
    let alike = matches!(view.desk.ask, Ask::Main | Ask::Boost | Ask::Convert);
    let size = if first || alike || line.formula == Formula::HoleLimit { Size::Big } else { Size::Row };
    let figure = figure(&shown.number, shown.unit, size);
    let name = el("dt", "", [text(say::pocket_line(&line, terms))]);
    el("div", "total", [name, el("dd", "", [figure]), el("dd", "", [source_mark(line.source)])])
}

/// A flow stays in the unit it was asked in; all else follows the units of the page.
fn shown(view: &View, value: f64, unit: Unit) -> Shown {
    match unit.kind() {
        Kind::Flow => format::value(value, unit),
        _ => format::in_display(value, unit, view.page.display()),
    }
}

fn step(found: &Answer, id: LineId) -> Html {
    let (Some(line), terms) = (found.working.line(id), found.working.terms(id)) else { return nothing() };
    let name = el("h4", "", [text(say::pocket_line(&line, terms))]);
    el("section", "part", [name, equation(&line, terms), letters(line.formula, terms), source_line(line.source)])
}

/// What the letters mean.
fn letters(formula: Formula, terms: &[Term]) -> Html {
    let one = |term: &Term| {
        let meaning = meaning(formula, term.symbol).unwrap_or_default();
        el("li", "", [el("var", "", [letter(term.symbol)]), text(" "), text(meaning)])
    };
    els("ul", "soft small", terms.iter().map(one))
}

/// What each main carries at both speeds.
fn mains(view: &View) -> Html {
    let display = view.page.display();
    let head = |words: String| tag("th", "").attr("scope", "col").around([text(words)]);
    let speeds = MAIN_SPEEDS.map(|speed| head(say::pocket_at(speed.as_ms())));
    let heads = el("tr", "", [head(say::POCKET_BORE.to_owned()), nodes(speeds)]);
    let row = |bore: f64| {
        let bore = Length::from_mm(bore);
        let cells = MAIN_SPEEDS.map(|speed| {
            let shown = format::flow(main_flow(bore, speed), display);
            el("td", "", [text(shown.to_string())])
        });
        let name = format::text(bore.as_mm(), Unit::Millimetre);
        el("tr", "", [tag("th", "").attr("scope", "row").around([text(name)]), nodes(cells)])
    };
    let caption = el("caption", "", [text(say::POCKET_MAINS)]);
    let rows = els("tbody", "", MAIN_BORES.into_iter().map(row));
    el("table", "mains", [caption, el("thead", "", [heads]), rows])
}
