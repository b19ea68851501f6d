//! Words of the pocket.

use crate::book::book;
use crate::format;
use crate::formula::title;
use crate::label::Label;
use airtally::formula::Formula;
use airtally::house::Display;
use airtally::pocket::figures::METRE_RANGE;
use airtally::pocket::{Ask, Slot};
use airtally::quantity::Unit;
use airtally::working::{Line, Term};

/// Opens it, and stands over it.
pub const POCKET: &str = "Pocket";
/// Puts it away.
pub const CLOSE_POCKET: &str = "Put the pocket away";
/// The row of questions.
pub const POCKET_ASKS: &str = "What to work out";
/// Opens the working of the figures.
pub const POCKET_WORKING: &str = "How it is worked out";
/// Before anything can be worked out.
pub const POCKET_NOTHING: &str = "Type what you know; the answer stands here.";
/// No main is wide enough.
pub const POCKET_TOO_WIDE: &str = "Even 200 mm is too narrow at 3 m/s. Share the air between two mains.";
/// Over the table of mains.
pub const POCKET_MAINS: &str = "Most air in a main";
/// A column of it.
pub const POCKET_BORE: &str = "Bore";

/// A question in one word.
pub fn pocket_short(ask: Ask) -> &'static str {
    of_ask(ask, '-')
}

/// The question in full.
pub fn pocket_ask(ask: Ask) -> &'static str {
    of_ask(ask, '?')
}

fn of_ask(ask: Ask, mark: char) -> &'static str {
    book().and_then(|book| book.ask(ask, mark)).unwrap_or_default()
}

/// A field.
pub fn pocket_field(slot: Slot) -> Label {
    book().map_or(Label { name: "", hint: "" }, |book| book.slot(slot))
}

/// What limits an answer.
pub fn pocket_note(ask: Ask, display: Display) -> String {
    let note = of_ask(ask, ':');
    let Some((before, after)) = note.split_once("{}") else { return note.to_owned() };
    let [from, to] = METRE_RANGE.map(|flow| format::flow(flow, display));
    [before, &from.number, " to ", &to.to_string(), after].concat()
}

/// What a figure is, told apart from its like.
pub fn pocket_line(line: &Line, terms: &[Term]) -> String {
    let name = title(line.formula);
    let apart = match line.formula {
        Formula::HoleLimit => {
            let american = terms.iter().any(|term| term.symbol == "e" && term.value > 0.0);
            return [name, if american { ", America" } else { ", Britain" }].concat();
        }
        Formula::HoleZone => ", at ",
        Formula::MainBore | Formula::TubesBeside => ", at most ",
        Formula::BoostPressure => ", exponent ",
        _ => return name.to_owned(),
    };
    let symbols = match line.formula {
        Formula::TubesBeside => ["v_max", ""],
        Formula::HoleZone => ["s", ""],
        _ => ["v", "n"],
    };
    let term = terms.iter().find(|term| symbols.contains(&term.symbol));
    let value = term.map(|term| format::text(term.value, term.unit));
    [name, apart, &value.unwrap_or_default()].concat()
}

/// A column of the table of mains.
pub fn pocket_at(speed: f64) -> String {
    ["at ", &format::text(speed, Unit::MetrePerSecond)].concat()
}
