//! What a text like `1,234 sq ft` may have meant.

/// The text with the first comma that can be read both ways as a point, and without it. Everything else stays as typed, so
/// that units and further numbers keep their meaning. `None` when no comma can be read both ways.
///
/// ```
/// use airtally_words::reading::both;
/// assert_eq!(both("1,234 sq ft"), Some(["1.234 sq ft".to_owned(), "1234 sq ft".to_owned()]));
/// assert_eq!(both("1,5"), None);
/// ```
pub fn both(text: &str) -> Option<[String; 2]> {
    let mut commas = text.match_indices(',').map(|(at, _)| at);
    let parts = |at: usize| Some((text.get(..at)?, text.get(at + 1..)?));
    let (before, after) = commas.find_map(|at| parts(at).filter(|(before, after)| can_be_both(before, after)))?;
    Some([".", ""].map(|mark| [before, mark, after].concat()))
}

/// One to three digits before the comma, the first not 0 and no number in front of them, and three digits after it.
fn can_be_both(before: &str, after: &str) -> bool {
    let stem = before.trim_end_matches(is_digit);
    let first = before.get(stem.len()..).unwrap_or_default();
    let goes_on = stem.trim_end_matches(parts_thousands).ends_with(is_of_a_number);
    let decimals = after.len() - after.trim_start_matches(is_digit).len();
    let ends = !after.get(decimals..).unwrap_or_default().starts_with(['.', ',']);
    (1..=3).contains(&first.len()) && !first.starts_with('0') && !goes_on && decimals == 3 && ends
}

fn is_digit(letter: char) -> bool {
    letter.is_ascii_digit()
}

fn is_of_a_number(letter: char) -> bool {
    is_digit(letter) || matches!(letter, '.' | ',')
}

fn parts_thousands(letter: char) -> bool {
    letter.is_whitespace() || matches!(letter, '\'' | '’')
}

#[cfg(test)]
mod tests {
    use super::both;
    use airtally::quantity::{Kind, ParseError, Unit, parse};

    /// Each reading is the number that the message names, in the unit that was typed: 1 234 ft² never becomes 1 234 m².
    #[test]
    fn units_and_further_numbers_stay() {
        for (text, point, none) in [
            ("1,234", "1.234", "1234"),
            ("1,234 sq ft", "1.234 sq ft", "1234 sq ft"),
            ("-1,234ft²", "-1.234ft²", "-1234ft²"),
            ("2 m2 + 1,234 m2", "2 m2 + 1.234 m2", "2 m2 + 1234 m2"),
            ("1,234 + 5,678", "1.234 + 5,678", "1234 + 5,678"),
            ("12 345,678 + 9,012", "12 345,678 + 9.012", "12 345,678 + 9012"),
            ("0,500 + 1,234", "0,500 + 1.234", "0,500 + 1234"),
            ("1,234e1 m2", "1.234e1 m2", "1234e1 m2"),
        ] {
            let ambiguous = parse(text, Kind::Area, Unit::SquareMetre);
            assert!(matches!(ambiguous, Err(ParseError::Ambiguous { .. })), "{text}: {ambiguous:?}");
            assert_eq!(both(text), Some([point.to_owned(), none.to_owned()]), "{text}");
        }
    }

    #[test]
    fn what_reads_one_way_is_left_alone() {
        for text in ["", "1234", "1,5", "0,500", "1,234.5", "1,234,567", "12 345,678", "1.234", ",234", "1,2345"] {
            assert_eq!(both(text), None, "{text}");
        }
    }
}
