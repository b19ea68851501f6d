//! The lines behind the numbers: equation, numbers put in, value, source.

use crate::id;
use crate::issues::{field_of, room_of};
use crate::shape::{count, map, measure, or_null, text};
use airtally::issue::Place;
use airtally::report::Report;
use airtally::save::Tree;
use airtally::working::{Line, LineId, Origin, Term};
use airtally_words::{formula, standing};

/// Every line, so that the number of a line is its place in the list.
pub fn tree(report: &Report) -> Tree {
    let lines = report.lines().into_iter().filter_map(|id| Some(one(report, id, report.line(id)?)));
    Tree::List(lines.collect())
}

fn one(report: &Report, id: LineId, line: Line) -> Tree {
    let terms = report.terms(id).iter().map(|put_in| term(put_in, &line)).collect();
    map([
        ("title", formula::title(line.formula).into()),
        ("equation", formula::notation(line.formula).into()),
        ("room", or_null(line.room, |room| count(room.0))),
        ("result", measure(line.value, line.unit)),
        ("terms", Tree::List(terms)),
        ("source", text(standing::cite(line.source))),
        ("mark", id::mark(line.source.standing).into()),
        ("leastSure", Tree::Flag(line.source.doubtful)),
    ])
}

/// A number that was put in, in the unit of the equation.
fn term(term: &Term, line: &Line) -> Tree {
    map([
        ("symbol", term.symbol.into()),
        ("meaning", formula::meaning(line.formula, term.symbol).unwrap_or_default().into()),
        ("is", measure(term.value, term.unit)),
        ("from", from(&term.origin)),
    ])
}

fn from(origin: &Origin) -> Tree {
    match origin {
        Origin::Line(line) => map([("kind", "line".into()), ("line", count(line.number()))]),
        Origin::Given(id) => map([("kind", "setting".into()), ("key", id.given().key.into())]),
        Origin::Typed(field) => {
            let place = Place::Field(*field);
            let (field, room) = (field_of(place), room_of(place));
            map([
                ("kind", "typed".into()),
                ("field", or_null(field, Tree::from)),
                ("room", or_null(room, |room| count(room.0))),
            ])
        }
        Origin::Counted => map([("kind", "counted".into())]),
        Origin::Printed(source) => map([("kind", "printed".into()), ("source", text(standing::cite(source)))]),
    }
}
