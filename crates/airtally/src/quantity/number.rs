//! Numbers as people write them: decimal point or comma, thousands apart, powers of ten, fractions.

use super::cut::{after, before};
use super::parse::ParseError;

/// The number at the start of the text, without a sign, and how many bytes it takes.
///
/// Errors: [`ParseError::NotANumber`], [`ParseError::Ambiguous`], [`ParseError::NotFinite`].
pub(super) fn number_at(text: &str) -> Result<(f64, usize), ParseError> {
    if let Some((value, length)) = vulgar_at(text) {
        return Ok((value, length));
    }
    let run = run_length(text);
    let exponent = exponent_length(after(text, run));
    let length = run + exponent;
    let has_no_decimals = exponent == 0 && !before(text, run).contains(['.', ',']);
    if !has_no_decimals {
        return Ok((interpret(before(text, run), before(after(text, run), exponent))?, length));
    }
    if let Some((fraction, length)) = fraction_at(text) {
        return Ok((finite(fraction)?, length));
    }
    let whole = interpret(before(text, run), "")?;
    match mixed_at(after(text, run)) {
        Some((fraction, more)) => Ok((finite(whole + fraction)?, run + more)),
        None => Ok((whole, run)),
    }
}

/// The value of digits with at most one point and nothing else, which most texts are: the same as by the whole grammar,
/// sooner.
pub(super) fn plain(text: &str) -> Option<f64> {
    let (mut digits, mut decimals, mut has_point) = (0_u64, 0, false);
    if text.len() > MOST_PLAIN {
        return None;
    }
    for byte in text.bytes() {
        match byte {
            b'0'..=b'9' => digits = digits * 10 + u64::from(byte - b'0'),
            b'.' if !has_point => has_point = true,
            _ => return None,
        }
        decimals += i32::from(has_point && byte != b'.');
    }
    let has_digits = text.len() > usize::from(has_point);
    has_digits.then(|| times_power_of_ten(digits as f64, -decimals))
}

/// So many digits fit, whatever they are.
const MOST_PLAIN: usize = 18;

/// Whether a number may begin with this.
pub(super) fn starts_number(letter: char) -> bool {
    letter.is_ascii_digit() || matches!(letter, '.' | ',') || vulgar(letter).is_some()
}

/// The value of a fraction that is one letter.
pub(super) fn vulgar(letter: char) -> Option<f64> {
    match letter {
        '½' => Some(0.5),
        '¼' => Some(0.25),
        '¾' => Some(0.75),
        '⅛' => Some(0.125),
        '⅜' => Some(0.375),
        '⅝' => Some(0.625),
        '⅞' => Some(0.875),
        '⅓' => Some(1.0 / 3.0),
        '⅔' => Some(2.0 / 3.0),
        _ => None,
    }
}

fn vulgar_at(text: &str) -> Option<(f64, usize)> {
    let letter = text.chars().next()?;
    vulgar(letter).map(|value| (value, letter.len_utf8()))
}

/// Bytes of digits, points, commas, and marks between thousands.
fn run_length(text: &str) -> usize {
    let mut has_decimals = false;
    for (place, letter) in text.char_indices() {
        let rest = after(text, place + letter.len_utf8());
        match letter {
            '0'..='9' => {}
            '.' | ',' => has_decimals = true,
            _ if parts_thousands(letter) && place > 0 && !has_decimals && begins_with_three_digits(rest) => {}
            _ => return place,
        }
    }
    text.len()
}

/// A space of any width, or an apostrophe.
fn parts_thousands(letter: char) -> bool {
    matches!(letter, ' ' | '\u{a0}' | '\u{2007}' | '\u{2009}' | '\u{202f}' | '\'' | '’')
}

/// Three digits, no fourth, and not the top of a fraction.
fn begins_with_three_digits(text: &str) -> bool {
    digits_length(text) == 3 && !after(text, 3).starts_with(['/', '⁄'])
}

fn digits_length(text: &str) -> usize {
    text.bytes().take_while(u8::is_ascii_digit).count()
}

/// Bytes of `e3`, `E-3` …; 0 when there is none.
fn exponent_length(text: &str) -> usize {
    let Some(power) = text.strip_prefix(['e', 'E']) else {
        return 0;
    };
    let digits = power.strip_prefix(['+', '-', '−']).unwrap_or(power);
    match digits_length(digits) {
        0 => 0,
        length => text.len() - digits.len() + length,
    }
}

/// What the points and commas of a run mean.
fn interpret(run: &str, exponent: &str) -> Result<f64, ParseError> {
    let (points, commas) = (count(run, b'.'), count(run, b','));
    let last = run.rfind(['.', ',']);
    let is_alone = |place: &usize| if after(run, *place).starts_with('.') { points == 1 } else { commas == 1 };
    let (whole, decimals) = match last.filter(is_alone) {
        Some(place) => (before(run, place), after(run, place + 1)),
        None if points > 0 && commas > 0 => return Err(ParseError::NotANumber),
        None => (run, ""),
    };
    if points == 0 && commas == 1 && decimals.len() == 3 && is_first_group(whole) {
        let decimal = value(whole, decimals, exponent)?;
        let thousands = value(run, "", exponent)?;
        return Err(ParseError::Ambiguous { decimal, thousands });
    }
    check_thousands(whole)?;
    value(whole, decimals, exponent)
}

fn count(run: &str, mark: u8) -> usize {
    run.bytes().filter(|byte| *byte == mark).count()
}

/// One to three digits, the first not 0.
fn is_first_group(text: &str) -> bool {
    (1..=3).contains(&text.len()) && digits_length(text) == text.len() && !text.starts_with('0')
}

/// An error unless the digits stand alone or one sort of mark parts groups of three.
fn check_thousands(whole: &str) -> Result<(), ParseError> {
    let Some(mark) = whole.chars().find(|letter| !letter.is_ascii_digit()) else {
        return Ok(());
    };
    let mut groups = whole.split(mark);
    let is_first_good = groups.next().is_some_and(is_first_group);
    let are_rest_good = groups.all(|group| group.len() == 3 && digits_length(group) == 3);
    if is_first_good && are_rest_good { Ok(()) } else { Err(ParseError::NotANumber) }
}

/// The digits of `whole`, whatever parts them, and those of `decimals`.
fn value(whole: &str, decimals: &str, exponent: &str) -> Result<f64, ParseError> {
    if whole.is_empty() && decimals.is_empty() {
        return Err(ParseError::NotANumber);
    }
    let digits = whole.bytes().chain(decimals.bytes()).filter(u8::is_ascii_digit);
    finite(nearest(digits, power_of(exponent) - decimals.len() as i32))
}

/// The power of ten of `e3`, `E-3` …; 0 when there is none. Powers without end stop where every number has run out.
fn power_of(exponent: &str) -> i32 {
    let digits = exponent.bytes().filter(u8::is_ascii_digit);
    let size = digits.fold(0, |size, digit| (size * 10 + i32::from(digit - b'0')).min(POWER_OF_NO_USE));
    if exponent.contains(['-', '−']) { -size } else { size }
}

const POWER_OF_NO_USE: i32 = 10_000;

/// The number `digits · 10^power`.
///
/// The nearest one, as std reads it, for up to 15 digits and powers from −22 to 22: there both factors are exact and only
/// one step rounds. Beyond that the last place may be off. std's own reader is right everywhere, but brings 13 kB that
/// every visitor of the page would load.
fn nearest(digits: impl Iterator<Item = u8>, power: i32) -> f64 {
    let (mut whole, mut power) = (0_u64, power);
    for digit in digits {
        if whole < LAST_DIGIT_FITS {
            whole = whole * 10 + u64::from(digit - b'0');
        } else {
            power = power.saturating_add(1);
        }
    }
    times_power_of_ten(whole as f64, power)
}

const LAST_DIGIT_FITS: u64 = 1_000_000_000_000_000_000;

fn times_power_of_ten(mut value: f64, mut power: i32) -> f64 {
    while power != 0 && value != 0.0 && value.is_finite() {
        let part = power.clamp(-EXACT_POWER, EXACT_POWER);
        let ten = (0..part.abs()).fold(1.0, |ten, _| ten * 10.0);
        value = if part > 0 { value * ten } else { value / ten };
        power -= part;
    }
    value
}

/// 10^22 is the largest power of ten that is a number exactly.
const EXACT_POWER: i32 = 22;

fn finite(value: f64) -> Result<f64, ParseError> {
    if value.is_finite() { Ok(value) } else { Err(ParseError::NotFinite) }
}

/// `1/2`, and how many bytes it takes.
fn fraction_at(text: &str) -> Option<(f64, usize)> {
    let top = digits_length(text);
    let under = after(text, top).strip_prefix(['/', '⁄'])?;
    let bottom = digits_length(under);
    let length = text.len() - under.len() + bottom;
    if top == 0 || bottom == 0 {
        return None;
    }
    let value = nearest(text.bytes().take(top), 0) / nearest(under.bytes().take(bottom), 0);
    Some((value, length))
}

/// The fraction after a whole number: `½`, ` ½`, ` 1/2`.
fn mixed_at(text: &str) -> Option<(f64, usize)> {
    let part = text.trim_start();
    let space = text.len() - part.len();
    let fraction = if space == 0 { None } else { fraction_at(part) };
    vulgar_at(part).or(fraction).map(|(value, length)| (value, space + length))
}

#[cfg(test)]
mod tests {
    use super::{number_at, plain};

    #[test]
    fn a_plain_number_is_the_same_by_both_ways() {
        for text in
            ["0", "7", "12.5", "0.1", ".5", "5.", "00.70", "1.234", "148", "99999999999999999", "0.000000000000001"]
        {
            assert_eq!(plain(text).map(|value| (value, text.len())), number_at(text).ok(), "{text}");
        }
    }

    #[test]
    fn anything_else_is_left_to_the_grammar() {
        for text in ["", ".", "1,5", "1.2.3", "-1", " 1", "1e3", "½", "1/2", "12345678901234567890"] {
            assert_eq!(plain(text), None, "{text}");
        }
    }
}
