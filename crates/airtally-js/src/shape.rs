//! The shapes that everything else is made of.

use airtally::house::Display;
use airtally::quantity::{Unit, convert};
use airtally::save::Tree;
use airtally::working::LineId;
use airtally_words::format;

/// A plain object.
pub fn map<const N: usize>(fields: [(&str, Tree); N]) -> Tree {
    Tree::Map(fields.into_iter().map(|(name, value)| (name.to_owned(), value)).collect())
}

/// A text.
pub fn text(text: String) -> Tree {
    Tree::Text(text)
}

/// A whole number.
pub fn count(count: u32) -> Tree {
    Tree::from(f64::from(count))
}

/// Something, or `null`.
pub fn or_null<T>(value: Option<T>, tree: impl FnOnce(T) -> Tree) -> Tree {
    value.map_or(Tree::Nothing, tree)
}

/// A value in its own unit, and the same for people to read.
pub fn measure(amount: f64, unit: Unit) -> Tree {
    map([("value", Tree::from(amount + 0.0)), ("unit", unit.id().into()), ("text", text(format::text(amount, unit)))])
}

/// A value in the unit that the house shows, not rounded; the same for people to read; the line that explains it.
pub fn quantity(amount: f64, unit: Unit, display: Display, line: Option<LineId>) -> Tree {
    let to = format::unit_in(unit, display);
    map([
        ("value", Tree::from(convert(amount, unit, to).unwrap_or(amount) + 0.0)),
        ("unit", to.id().into()),
        ("text", text(format::in_display(amount, unit, display).to_string())),
        ("line", or_null(line, |line| count(line.number()))),
    ])
}
