//! Which unit is spelled at a place in a text.

use super::{number::vulgar, unit::Unit};

/// The unit with the longest spelling at the start of the text, and how many bytes it takes.
pub(super) fn unit_at(text: &str) -> Option<(Unit, usize)> {
    let first = plain(text.chars().next()?);
    if first == '+' {
        // Between two numbers of a sum.
        return None;
    }
    // Looking at the first byte before the rest: this runs on every keystroke, for every unit there is.
    let mut bytes = [0; 4];
    let lead = *first.encode_utf8(&mut bytes).as_bytes().first()?;
    let mut longest = None;
    for unit in Unit::all() {
        for spelling in unit.spellings().iter().filter(|spelling| spelling.as_bytes().first() == Some(&lead)) {
            let length = spelled_length(text, spelling);
            longest = longest.max(length.map(|length| (length, unit)));
        }
    }
    longest.map(|(length, unit)| (unit, length))
}

/// Bytes of text that this spelling takes, when the text begins with it and the word ends there.
fn spelled_length(text: &str, spelling: &str) -> Option<usize> {
    let mut rest = text;
    for letter in spelling.chars() {
        rest = match letter {
            ' ' => skip_gap(rest),
            '/' => skip_gap(skip_gap(rest).strip_prefix('/')?),
            digit if digit.is_ascii_digit() => strip_letter(rest.strip_prefix('^').unwrap_or(rest), digit)?,
            other => strip_letter(rest, other)?,
        };
    }
    rest = strip_full_stop(rest, spelling);
    ends_word(rest).then_some(text.len() - rest.len())
}

fn skip_gap(text: &str) -> &str {
    text.trim_start_matches(|letter: char| letter.is_whitespace() || matches!(letter, '.' | '·' | '*'))
}

fn strip_letter(text: &str, expected: char) -> Option<&str> {
    let mut letters = text.chars();
    (plain(letters.next()?) == expected).then_some(letters.as_str())
}

/// The letter as the spellings have it: small, with plain powers and quote marks.
fn plain(letter: char) -> char {
    match letter {
        '²' | '₂' => '2',
        '³' => '3',
        '¹' => '1',
        '⁻' | '−' => '-',
        '’' | '′' => '\'',
        '”' | '″' => '"',
        'º' | '˚' => '°',
        _ => letter.to_ascii_lowercase(),
    }
}

/// Drops the full stop of `ft.`, but not the point of `.5`.
fn strip_full_stop<'a>(text: &'a str, spelling: &str) -> &'a str {
    match text.strip_prefix('.') {
        Some(after)
            if spelling.ends_with(|c: char| c.is_ascii_alphabetic())
                && !after.starts_with(|c: char| c.is_ascii_digit()) =>
        {
            after
        }
        _ => text,
    }
}

/// Whether what follows cannot belong to the same word. A digit may follow: `12ft6in`.
fn ends_word(rest: &str) -> bool {
    let Some(next) = rest.chars().next() else {
        return true;
    };
    let is_digit = next.is_ascii_digit() || vulgar(next).is_some();
    is_digit || !(is_letter(next) || matches!(next, '/' | '^' | '⁻'))
}

/// A letter or digit of any script, by the blocks they stand in: the tables of all letters would be a tenth of the page.
fn is_letter(letter: char) -> bool {
    let in_a_block =
        matches!(letter, 'ª' | 'µ' | 'º' | '\u{c0}'..='\u{1fff}' | '\u{2c00}'..='\u{2dff}' | '\u{3040}'..='\u{ffdc}');
    letter.is_ascii_alphanumeric() || (in_a_block && !matches!(letter, '×' | '÷'))
}
