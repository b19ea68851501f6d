//! Sentences about what was typed. The text is quoted, never changed.

use super::place as place_name;
use crate::format;
use airtally::house::House;
use airtally::issue::Place;
use airtally::quantity::{Kind, LONGEST_TEXT, ParseError, Unit, convert};

/// A text that cannot be read.
pub fn unreadable(error: ParseError, place: Place, house: &House) -> String {
    let (name, typed) = (place_name(place, house), typed(place, house));
    let text = quoted(typed);
    match error {
        ParseError::Empty => format!("{name} holds nothing but spaces."),
        ParseError::NotANumber => format!("{name}: {text} cannot be read as {}. Nothing was changed.", asked(place)),
        ParseError::Ambiguous { decimal, thousands } => {
            let (decimal, thousands) = (either(decimal), either(thousands));
            format!("{name}: {text} can mean {decimal} or {thousands}. Which one?")
        }
        ParseError::UnknownUnit { at } => {
            let unit = quoted(typed.get(at..).unwrap_or(typed));
            format!("{name}: {unit} is no unit that is known here. Nothing was changed.")
        }
        ParseError::WrongKind { unit } => {
            let (wrong, right) = (kind(unit.kind()), asked(place));
            format!("{name}: {text} is {wrong}, and {right} is asked for. Nothing was changed.")
        }
        ParseError::UnclearUnit => {
            format!("{name}: {text} has numbers with and without a unit, so their units are not clear.")
        }
        ParseError::TooLong => {
            format!("{name}: the text has more than {LONGEST_TEXT} characters. Nothing was changed.")
        }
        ParseError::NotFinite => format!("{name}: {text} is too large a number, or divides by nought."),
        ParseError::NotWhole => format!("{name} must be a whole number. You typed {text}. Nothing was changed."),
    }
}

/// A value that cannot be calculated with.
pub fn out_of_range(range: (f64, f64, Unit), place: Place, house: &House) -> String {
    let (name, between) = (place_name(place, house), between(range, place, house));
    format!("{name} must be {between}. You typed {}. Nothing was changed.", quoted(typed(place, house)))
}

/// A value that is seldom right.
pub fn seldom_right(range: (f64, f64, Unit), place: Place, house: &House) -> String {
    let (name, between) = (place_name(place, house), between(range, place, house));
    format!("{name} is usually {between}. You typed {}; it is used as typed.", quoted(typed(place, house)))
}

/// A name that does not fit on a label.
pub fn long_name(length: u32, fits: u32, place: Place, house: &House) -> String {
    let (name, length, fits) = (place_name(place, house), format::count(length), format::count(fits));
    format!("{name}: {} has {length} characters, and a label holds {fits}. It is kept.", quoted(typed(place, house)))
}

/// At most so many characters of a text are quoted.
pub const QUOTED: usize = 40;

/// A text on one line, cut to [`QUOTED`] characters.
pub fn shortened(text: &str) -> String {
    let words: Vec<&str> = text.split(|letter: char| letter.is_whitespace() || letter.is_control()).collect();
    let line = words.iter().filter(|word| !word.is_empty()).copied().collect::<Vec<_>>().join(" ");
    if line.chars().nth(QUOTED).is_none() {
        return line;
    }
    let kept: String = line.chars().take(QUOTED - 1).collect();
    format!("{}…", kept.trim_end())
}

fn quoted(text: &str) -> String {
    format!("“{}”", shortened(text))
}

fn typed(place: Place, house: &House) -> &str {
    match place {
        Place::Field(field) => house.text(field),
        Place::House | Place::Room(_) => "",
    }
}

/// `between 0.3 and 2000 m²`, in the unit the field showed when it was typed. Both ends are rounded inward, so that
/// what is said is accepted.
fn between((min, max, unit): (f64, f64, Unit), place: Place, house: &House) -> String {
    let to = unit_of(place, house).filter(|to| to.kind() == unit.kind()).unwrap_or(unit);
    let convert = |value| convert(value, unit, to).unwrap_or(value);
    let (min, max) = (inward(convert(min), to, f64::ceil), inward(convert(max), to, f64::floor));
    format!("between {} and {}", format::value(min, to).number, format::text(max, to))
}

fn unit_of(place: Place, house: &House) -> Option<Unit> {
    let Place::Field(field) = place else { return None };
    let shown = || field.unit(house.choices.display);
    Some(house.entry(field).map_or_else(shown, |entry| entry.unit))
}

/// To the digits that are shown, except for what a conversion loses in the last place.
fn inward(value: f64, unit: Unit, round: fn(f64) -> f64) -> f64 {
    let scale = (0..format::decimals(value, unit)).fold(1.0, |scale, _| scale * 10.0);
    let nearest = (value * scale).round();
    let is_exact = (value * scale - nearest).abs() < 1e-6;
    if is_exact { nearest / scale } else { round(value * scale) / scale }
}

/// Both readings of `1,234`: enough digits to tell them apart.
fn either(value: f64) -> String {
    format::grouped(&format::number(value, 6).replace(format::NARROW, ""))
}

/// What a field asks for.
fn asked(place: Place) -> &'static str {
    match place {
        Place::Field(field) => field.limit().map_or("a text", |limit| kind(limit.unit.kind())),
        Place::House | Place::Room(_) => "a value",
    }
}

/// A kind of quantity with its article.
const fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Flow => "an air flow",
        Kind::Area => "an area",
        Kind::Length => "a length",
        Kind::Volume => "a volume",
        Kind::Velocity => "a speed",
        Kind::Pressure => "a pressure",
        Kind::Temperature => "a temperature",
        Kind::AirChange => "a number of air changes",
        Kind::Concentration => "a concentration",
        Kind::Duration => "a time",
        Kind::Angle => "an angle",
        Kind::Count => "a number of things",
        Kind::Ratio => "a share",
        Kind::FlowPerArea => "an air flow for each unit of area",
        Kind::Power => "a power",
    }
}
