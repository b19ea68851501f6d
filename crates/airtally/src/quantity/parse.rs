//! Reading what people type: `30`, `12,5 L/s`, `12 ft 6 1/2 in`, `3.2 + 1.4`.

use super::{
    Kind, Measure, Unit, cut,
    number::{number_at, plain, starts_number},
    spelling::unit_at,
    unit::convert_same_kind,
};

/// The longest text that is read, in characters.
pub const LONGEST_TEXT: usize = 200;

/// Why a text cannot be read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ParseError {
    /// Nothing but space.
    Empty,
    /// No number where one must stand. Only the digits 0 to 9 are read.
    NotANumber,
    /// One comma before three digits, as in `1,234`: a decimal comma or a thousands comma.
    Ambiguous {
        /// The number if the comma is a decimal comma.
        decimal: f64,
        /// The number if the comma parts thousands.
        thousands: f64,
    },
    /// Text that is no unit we know.
    UnknownUnit {
        /// Where it begins: bytes from the start of the text as typed.
        at: usize,
    },
    /// A unit that measures something else.
    WrongKind {
        /// The unit that was typed.
        unit: Unit,
    },
    /// A sum of numbers of which some have a unit and some have none, so that it is not clear what these are in.
    UnclearUnit,
    /// More than 200 characters.
    TooLong,
    /// A number too large to hold, or a division by nought.
    NotFinite,
    /// A count that is not a whole number.
    NotWhole,
}

/// The number and unit that a text stands for.
///
/// - The decimal mark is a point or a comma. Spaces, apostrophes, points and commas may part thousands. `1,234` alone is
///   refused, since it can be both; `1.234` is a decimal number.
/// - Powers of ten (`1e3`) and fractions (`1/2`, `6 1/2`, `6½`).
/// - A unit in any of its [spellings](Unit::spellings); none means `default`.
/// - Feet and inches, metres and centimetres, hours and minutes together: `12' 6"`, `12'-6"`, `12 ft 6`, `1 h 30 min`.
///   They are read in the first, larger unit.
/// - Sums, except of temperatures: `3.2 + 1.4`, `2 m + 50 cm`. The sum is in the first unit. A number without a unit
///   beside one in another unit than `default` is refused: `3 + 20 cm` could mean 3 m or 3 cm.
///
/// Valid range: any finite number of either sign. Whether it makes sense is checked where it is used.
///
/// Errors: see [`ParseError`].
///
/// ```
/// use airtally::quantity::{Kind, Measure, ParseError, Unit, parse};
///
/// let length = |text| parse(text, Kind::Length, Unit::Metre);
/// assert_eq!(length("3,2"), Ok(Measure::new(3.2, Unit::Metre)));
/// assert_eq!(length("12 ft 6 in"), Ok(Measure::new(12.5, Unit::Foot)));
/// assert_eq!(length("20 cfm"), Err(ParseError::WrongKind { unit: Unit::CubicFootPerMinute }));
/// assert_eq!(length("1,234"), Err(ParseError::Ambiguous { decimal: 1.234, thousands: 1234.0 }));
/// ```
pub fn parse(text: &str, kind: Kind, default: Unit) -> Result<Measure, ParseError> {
    let sum = match plain(text).filter(|_| default.kind() == kind) {
        Some(value) => Measure::new(value, default),
        None => written_out(text, kind, default)?,
    };
    if !sum.value().is_finite() {
        return Err(ParseError::NotFinite);
    }
    if kind == Kind::Count && sum.value() != sum.value().trunc() {
        return Err(ParseError::NotWhole);
    }
    Ok(sum)
}

fn written_out(text: &str, kind: Kind, default: Unit) -> Result<Measure, ParseError> {
    if text.chars().nth(LONGEST_TEXT).is_some() {
        return Err(ParseError::TooLong);
    }
    if text.trim().is_empty() {
        return Err(ParseError::Empty);
    }
    if default.kind() != kind {
        return Err(ParseError::WrongKind { unit: default });
    }
    sum(&mut Reader { text, at: 0, kind }, default)
}

/// One term, or several with a plus between them.
fn sum(reader: &mut Reader, default: Unit) -> Result<Measure, ParseError> {
    let first = term(reader)?;
    let unit = first.unit.unwrap_or(default);
    // From +0, so that a typed "-0" is 0.
    let mut value = 0.0 + first.value;
    let (mut has_bare, mut has_other) = (first.unit.is_none(), unit != default);
    while !reader.is_at_end() {
        reader.step_over_plus()?;
        let next = term(reader)?;
        let next_unit = next.unit.unwrap_or(default);
        value += convert_same_kind(next.value, next_unit, unit);
        has_bare |= next.unit.is_none();
        has_other |= next_unit != default;
    }
    if has_bare && has_other {
        return Err(ParseError::UnclearUnit);
    }
    Ok(Measure::new(value, unit))
}

/// A number with the unit that was typed for it, if any.
#[derive(Clone, Copy)]
struct Term {
    value: f64,
    unit: Option<Unit>,
}

/// One number, or one in two units.
fn term(reader: &mut Reader) -> Result<Term, ParseError> {
    let sign = reader.sign();
    let mut term = part(reader).map_err(|error| signed(error, sign))?;
    let mut last = term.unit;
    while let (Some(larger), Some(whole)) = (last, term.unit)
        && reader.is_at_smaller_part(larger)
    {
        let more = part(reader)?;
        let smaller = more.unit.or(bare_after(larger)).filter(|smaller| goes_on(larger, *smaller));
        let Some(smaller) = smaller else {
            return Err(ParseError::NotANumber);
        };
        term.value += convert_same_kind(more.value, smaller, whole);
        last = Some(smaller);
    }
    term.value *= sign;
    Ok(term)
}

fn part(reader: &mut Reader) -> Result<Term, ParseError> {
    let value = reader.number()?;
    let unit = reader.unit()?;
    Ok(Term { value, unit })
}

fn signed(error: ParseError, sign: f64) -> ParseError {
    match error {
        ParseError::Ambiguous { decimal, thousands } => {
            ParseError::Ambiguous { decimal: sign * decimal, thousands: sign * thousands }
        }
        other => other,
    }
}

/// The unit of a bare number after this one: inches after feet.
fn bare_after(larger: Unit) -> Option<Unit> {
    (larger == Unit::Foot).then_some(Unit::Inch)
}

/// Whether people say these two units in one breath.
fn goes_on(larger: Unit, smaller: Unit) -> bool {
    matches!(
        (larger, smaller),
        (Unit::Foot, Unit::Inch)
            | (Unit::Metre, Unit::Centimetre | Unit::Millimetre)
            | (Unit::Centimetre, Unit::Millimetre)
            | (Unit::Day, Unit::Hour)
            | (Unit::Hour, Unit::Minute)
            | (Unit::Minute, Unit::Second)
    )
}

/// A place in the text.
struct Reader<'a> {
    text: &'a str,
    at: usize,
    kind: Kind,
}

impl<'a> Reader<'a> {
    fn rest(&mut self) -> &'a str {
        let rest = cut::after(self.text, self.at).trim_start();
        self.at = self.text.len() - rest.len();
        rest
    }

    fn is_at_end(&mut self) -> bool {
        self.rest().is_empty()
    }

    fn take<const N: usize>(&mut self, any: [char; N]) -> bool {
        let rest = self.rest();
        let after = rest.strip_prefix(any);
        self.at += after.map_or(0, |after| rest.len() - after.len());
        after.is_some()
    }

    /// The plus between two terms. An error for anything else, for a plus too many, and between temperatures.
    fn step_over_plus(&mut self) -> Result<(), ParseError> {
        if !self.take(['+']) {
            return Err(self.left_over());
        }
        let has_no_term = self.rest().starts_with('+');
        if has_no_term || self.kind == Kind::Temperature { Err(ParseError::NotANumber) } else { Ok(()) }
    }

    fn sign(&mut self) -> f64 {
        if self.take(['-', '−']) {
            return -1.0;
        }
        self.take(['+']);
        1.0
    }

    fn number(&mut self) -> Result<f64, ParseError> {
        let (value, length) = number_at(self.rest())?;
        self.at += length;
        Ok(value)
    }

    /// The unit here, if any. An error when it measures something else.
    fn unit(&mut self) -> Result<Option<Unit>, ParseError> {
        let Some((unit, length)) = unit_at(self.rest()) else {
            return Ok(None);
        };
        self.at += length;
        if unit.kind() == self.kind { Ok(Some(unit)) } else { Err(ParseError::WrongKind { unit }) }
    }

    /// Whether a number follows at once. Steps over the hyphen of `12'-6"`.
    fn is_at_smaller_part(&mut self, larger: Unit) -> bool {
        let rest = self.rest();
        let has_hyphen = larger == Unit::Foot && rest.starts_with('-');
        let is_number = cut::after(rest, usize::from(has_hyphen)).starts_with(starts_number);
        self.at += usize::from(has_hyphen && is_number);
        is_number
    }

    /// What to say of text that is neither a number's unit nor a plus.
    fn left_over(&mut self) -> ParseError {
        let is_number = self.rest().starts_with(|letter: char| letter.is_numeric() || starts_number(letter));
        if is_number { ParseError::NotANumber } else { ParseError::UnknownUnit { at: self.at } }
    }
}

#[cfg(test)]
mod tests;
