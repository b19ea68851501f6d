//! One line of the working: the equation, the numbers put in, the value, where each comes from, and who says so.

use super::put_in::{put_in, sides, word_length};
use super::visiting;
use crate::context::{Page, View};
use crate::desk::{Move, Topic};
use crate::parts::source::{document, source_mark};
use crate::ui::el::{el, els, nodes, nothing, tag, text};
use crate::ui::figure::{Size, figure, figure_button};
use airtally::formula::Formula;
use airtally::house::RoomId;
use airtally::issue::Place;
use airtally::source::{ARITHMETIC, Source, YOURS};
use airtally::working::{Address, Line, Origin, Term};
use airtally_words::format::{self, Shown};
use airtally_words::{formula, page as say, room};
use yew::prelude::*;

/// The line. It follows the house: what is typed beside an open sheet changes it.
pub fn working(view: &View, address: Address) -> Html {
    let page = &view.page;
    let visit = visiting(view);
    let found = page.report.find(address).and_then(|id| Some((page.report.line(id)?, page.report.terms(id))));
    let Some((line, terms)) = found else { return el("p", "", [text(say::LINE_GONE)]) };
    let rows = Rows { view, visit: &visit, formula: line.formula, room: line.room };
    let terms_list = || {
        let list = els("dl", "terms", terms.iter().map(|term| rows.term(term)));
        el("section", "", [el("h3", "", [text(say::PUT_IN)]), list])
    };
    nodes([
        equation(&line, &terms),
        in_shown_units(page, &line),
        if terms.is_empty() { nothing() } else { terms_list() },
        source_part(line.source),
    ])
}

/// Who says so.
pub fn source_part(source: &Source) -> Html {
    let heading = el("h3", "", [text(say::SOURCE)]);
    el("section", "source", [heading, source_mark(source), el("cite", "", [document(source)])])
}

/// The equation, with letters, with numbers, and with its value.
pub fn equation(line: &Line, terms: &[Term]) -> Html {
    let (symbol, letters) = sides(line.formula);
    let numbers: Vec<_> = terms.iter().map(|term| (term.symbol, format::text(term.value, term.unit))).collect();
    let value = format::value(line.value, line.unit);
    let mut parts = vec![el("dt", "", [letter(symbol)])];
    if !letters.is_empty() {
        parts.extend([equals(), el("dd", "formula-letters", [lettered(letters)])]);
    }
    if let Some(numbers) = put_in(letters, &numbers) {
        parts.extend([equals(), el("dd", "", [text(numbers)])]);
    }
    let value = [el("b", "", [text(value.number)]), text(" "), el("small", "", [text(value.unit)])];
    parts.extend([equals(), el("dd", "formula-value", value)]);
    els("dl", "formula", parts.into_iter())
}

fn equals() -> Html {
    tag("dd", "equals").attr("aria-hidden", "true").around([text("=")])
}

/// A symbol with its subscript set low: `q_min`.
pub fn letter(symbol: &str) -> Html {
    match symbol.split_once('_') {
        Some((letter, low)) => nodes([text(letter.to_owned()), el("sub", "", [text(low.to_owned())])]),
        None => text(symbol.to_owned()),
    }
}

/// An equation whose symbols have their subscripts set low.
fn lettered(equation: &str) -> Html {
    let piece = |piece: &str| {
        let (symbol, rest) = piece.split_at_checked(word_length(piece)).unwrap_or((piece, ""));
        nodes([letter(symbol), text(rest.to_owned())])
    };
    let ends = |letter: char| matches!(letter, ' ' | '·' | '(' | '/' | '√');
    equation.split_inclusive(ends).map(piece).collect()
}

/// The value once more in the units of the page, when they are others.
fn in_shown_units(page: &Page, line: &Line) -> Html {
    if format::unit_in(line.unit, page.display()) == line.unit {
        return nothing();
    }
    let shown = format::in_display(line.value, line.unit, page.display());
    el("p", "small", [text(say::in_your_units(&shown.to_string()))])
}

struct Rows<'a> {
    view: &'a View,
    visit: &'a Callback<Place>,
    formula: Formula,
    room: Option<RoomId>,
}

impl Rows<'_> {
    fn term(&self, term: &Term) -> Html {
        let meaning = formula::meaning(self.formula, term.symbol).unwrap_or_default();
        let shown = format::value(term.value, term.unit);
        let name = if meaning.is_empty() { term.symbol } else { meaning };
        let symbol = el("var", "", [letter(term.symbol)]);
        let head = el("dt", "", [symbol, text(" "), text(meaning)]);
        let figure = el("dd", "", [self.figure(name, &shown, term.origin)]);
        el("div", "term", [head, figure, el("dd", "term-from", [self.from(term.origin)])])
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
                Some(line) => self.source(line.source, self.made_by(&line)),
                None => nothing(),
            },
            Origin::Given(id) => self.source(self.view.page.report.givens().get(id).source, String::new()),
            Origin::Typed(field) => {
                let words = say::typed_in(&airtally_words::label::field(field));
                nodes([source_mark(&YOURS), super::link(words, Place::Field(field), self.visit)])
            }
            Origin::Counted => self.source(&ARITHMETIC, say::COUNTED.to_owned()),
            Origin::Printed(source) => self.source(source, String::new()),
        }
    }

    /// What a number's own line works out, and in which room where that is another one.
    fn made_by(&self, line: &Line) -> String {
        let title = formula::title(line.formula);
        let other = line.room.filter(|_| line.room != self.room);
        other.map_or_else(|| title.to_owned(), |id| say::of_room(title, &room::name(&self.view.page.house, id)))
    }

    fn source(&self, source: &Source, words: String) -> Html {
        let words = if words.is_empty() { nothing() } else { el("span", "", [text(words)]) };
        nodes([source_mark(source), words, document(source)])
    }
}
