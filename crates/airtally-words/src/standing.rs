//! Who says so, in words.

use airtally::source::{Source, Standing};

/// The mark beside a number.
pub const fn mark(standing: Standing) -> &'static str {
    match standing {
        Standing::Published => "published",
        Standing::CommonPractice => "common practice, no source",
        Standing::FromMemory => "from memory",
        Standing::YourSetting => "your setting",
        Standing::Arithmetic => "arithmetic",
    }
}

/// The mark in one word, where there is little room.
pub const fn mark_short(standing: Standing) -> &'static str {
    match standing {
        Standing::Published => "published",
        Standing::CommonPractice => "practice",
        Standing::FromMemory => "memory",
        Standing::YourSetting => "yours",
        Standing::Arithmetic => "arithmetic",
    }
}

/// What is said of the values we are least sure of.
pub const LEAST_SURE: &str = "least sure: check before you rely on it";

/// The document, its edition and the place in it: `IRC 2021, table M1505.4.3(1)`. The mark alone where there is none.
///
/// ```
/// use airtally::source::{PRACTICE, Source};
/// use airtally_words::standing::cite;
/// assert_eq!(cite(&Source::published("IRC", "2021", "table 1")), "IRC 2021, table 1");
/// assert_eq!(cite(&PRACTICE), "common practice, no source");
/// ```
pub fn cite(source: &Source) -> String {
    let mut text = if source.document.is_empty() { mark(source.standing).to_owned() } else { document(source) };
    if source.doubtful {
        text.push_str("; ");
        text.push_str(LEAST_SURE);
    }
    text
}

fn document(source: &Source) -> String {
    let mut text = source.document.to_owned();
    if !source.edition.is_empty() {
        // "DIN 1946-6, 2009-05": a number that follows a number needs a comma.
        text.push_str(if text.ends_with(|last: char| last.is_ascii_digit()) { ", " } else { " " });
        text.push_str(source.edition);
    }
    if !source.clause.is_empty() {
        text.push_str(", ");
        text.push_str(source.clause);
    }
    text
}
