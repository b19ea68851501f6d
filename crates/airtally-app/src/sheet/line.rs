//! One line of the working: the equation, the numbers put in, the value, where each comes from, and who says so.

use super::put_in::{is_symbol, put_in};
use super::visiting;
use crate::context::{Page, View};
use crate::desk::{Move, Topic};
use crate::parts::source::{document, source_mark};
use crate::ui::figure::{Size, figure, figure_button};
use airtally::formula::Formula;
use airtally::issue::Place;
use airtally::source::{ARITHMETIC, Source, YOURS};
use airtally::working::{Address, Line, Origin, Term};
use airtally_words::format::{self, Shown};
use airtally_words::{formula, page as say};
use yew::prelude::*;

/// The line. It follows the house: what is typed beside an open sheet changes it.
pub fn working(view: &View, address: Address) -> Html {
    let page = &view.page;
    let visit = visiting(view);
    let found = page.report.find(address).and_then(|id| Some((page.report.line(id)?, page.report.terms(id))));
    let Some((line, terms)) = found else { return html! { <p>{ say::LINE_GONE }</p> } };
    let rows = Rows { view, visit: &visit, formula: line.formula };
    html! {
        <>
            { equation(&line, &terms) }
            { in_shown_units(page, &line) }
            if !terms.is_empty() {
                <section>
                    <h3>{ say::PUT_IN }</h3>
                    <dl class="terms">{ for terms.iter().map(|term| rows.term(term)) }</dl>
                </section>
            }
            <section class="source">
                <h3>{ say::SOURCE }</h3>
                { source_mark(line.source) }
                <cite>{ document(line.source) }</cite>
            </section>
        </>
    }
}

fn equation(line: &Line, terms: &[Term]) -> Html {
    let notation = formula::notation(line.formula);
    let (symbol, letters) = notation.split_once(" = ").unwrap_or(("", notation));
    let numbers: Vec<_> = terms.iter().map(|term| (term.symbol, format::text(term.value, term.unit))).collect();
    let value = format::value(line.value, line.unit);
    let equals = || html! { <dd class="equals" aria-hidden="true">{ "=" }</dd> };
    html! {
        <dl class="formula">
            <dt>{ letter(symbol) }</dt>
            if !letters.is_empty() { { equals() }<dd class="formula-letters">{ lettered(letters) }</dd> }
            if let Some(numbers) = put_in(letters, &numbers) { { equals() }<dd>{ numbers }</dd> }
            { equals() }<dd class="formula-value"><b>{ value.number }</b>{ " " }<small>{ value.unit }</small></dd>
        </dl>
    }
}

/// A symbol with its subscript set low: `q_min`.
fn letter(symbol: &str) -> Html {
    match symbol.split_once('_') {
        Some((letter, low)) => html! { <>{ letter.to_owned() }<sub>{ low.to_owned() }</sub></> },
        None => html! { symbol.to_owned() },
    }
}

/// An equation whose symbols have their subscripts set low.
fn lettered(equation: &str) -> Html {
    let piece = |piece: &str| {
        let end = piece.find(|letter: char| !is_symbol(letter));
        let (symbol, rest) = piece.split_at(end.unwrap_or(piece.len()));
        html! { <>{ letter(symbol) }{ rest.to_owned() }</> }
    };
    let ends = |letter: char| " ·(/√".contains(letter);
    equation.split_inclusive(ends).map(piece).collect()
}

/// The value once more in the units of the page, when they are others.
fn in_shown_units(page: &Page, line: &Line) -> Html {
    if format::unit_in(line.unit, page.display()) == line.unit {
        return html! {};
    }
    let shown = format::in_display(line.value, line.unit, page.display());
    html! { <p class="small">{ say::in_your_units(&shown.to_string()) }</p> }
}

struct Rows<'a> {
    view: &'a View,
    visit: &'a Callback<Place>,
    formula: Formula,
}

impl Rows<'_> {
    fn term(&self, term: &Term) -> Html {
        let meaning = formula::meaning(self.formula, term.symbol).unwrap_or_default();
        let shown = format::value(term.value, term.unit);
        html! {
            <div class="term">
                <dt><var>{ letter(term.symbol) }</var>{ " " }{ meaning }</dt>
                <dd>{ self.figure(if meaning.is_empty() { term.symbol } else { meaning }, &shown, term.origin) }</dd>
                <dd class="term-from">{ self.from(term.origin) }</dd>
            </div>
        }
    }

    fn figure(&self, name: &str, shown: &Shown, origin: Origin) -> Html {
        let onclick = match origin {
            Origin::Line(line) => self.view.explaining(line, Move::Deeper),
            Origin::Given(id) => self.view.hands.doing(move |hands| hands.make(Move::Deeper(Topic::Given(id)))),
            Origin::Typed(_) | Origin::Counted | Origin::Printed(_) => {
                return figure(&shown.number, shown.unit, Size::Mid);
            }
        };
        figure_button(name, &shown.number, shown.unit, Size::Mid, onclick)
    }

    fn from(&self, origin: Origin) -> Html {
        match origin {
            Origin::Line(id) => match self.view.page.report.line(id) {
                Some(line) => self.source(line.source, formula::title(line.formula)),
                None => html! {},
            },
            Origin::Given(id) => self.source(self.view.page.report.givens().get(id).source, ""),
            Origin::Typed(field) => html! {
                <>{ source_mark(&YOURS) }{ super::link(say::typed_in(&airtally_words::label::field(field)), Place::Field(field), self.visit) }</>
            },
            Origin::Counted => self.source(&ARITHMETIC, say::COUNTED),
            Origin::Printed(source) => self.source(source, ""),
        }
    }

    fn source(&self, source: &Source, words: &'static str) -> Html {
        let words = (!words.is_empty()).then(|| html! { <span>{ words }</span> });
        html! { <>{ source_mark(source) }{ words }{ document(source) }</> }
    }
}
