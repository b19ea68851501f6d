//! Equations: their titles, how they are written, and what their symbols mean. All are in the book: empty until it is open.

#[cfg(test)]
pub(crate) mod tests;

use crate::book::book;
use airtally::formula::Formula;

/// What an equation works out.
///
/// ```
/// use airtally::formula::Formula;
/// assert_eq!(airtally_words::formula::title(Formula::TubeCount), "Number of tubes");
/// ```
pub fn title(formula: Formula) -> &'static str {
    line(formula, '-')
}

/// How an equation is written. A subscript follows `_`.
///
/// ```
/// use airtally::formula::Formula;
/// assert_eq!(airtally_words::formula::notation(Formula::TubeLimit), "limit = v·π·d² / 4");
/// ```
pub fn notation(formula: Formula) -> &'static str {
    line(formula, '~')
}

/// What a symbol means in one equation: the same letter is an area here and a number of tubes there.
///
/// ```
/// use airtally::formula::Formula;
/// use airtally_words::formula::meaning;
/// assert_eq!(meaning(Formula::Undercut, "b"), Some("width of the door"));
/// assert_eq!(meaning(Formula::AshraeTotal, "b"), Some("rate for each person"));
/// ```
pub fn meaning(formula: Formula, symbol: &str) -> Option<&'static str> {
    let book = book()?;
    let its = |line: &'static str| line.strip_prefix(symbol)?.strip_prefix(' ');
    book.sum(formula, '.').find_map(its).or_else(|| book.symbols().find_map(its))
}

fn line(formula: Formula, mark: char) -> &'static str {
    book().and_then(|book| book.sum(formula, mark).next()).unwrap_or_default()
}
