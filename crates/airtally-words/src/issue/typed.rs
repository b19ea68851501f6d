//! Sentences about what was typed. The text is quoted, never changed.

use super::place as place_name;
use crate::format;
use airtally::house::House;
use airtally::issue::Place;
use airtally::quantity::{Kind, LONGEST_TEXT, ParseError, Unit, convert};

/// A field that was typed into.
#[derive(Clone, Debug)]
pub struct Typed<'a> {
    /// What it is called.
    pub name: String,
    /// The text as typed.
    pub text: &'a str,
    /// What is asked for; `None` for any text.
    pub kind: Option<Kind>,
    /// The unit it showed.
    pub unit: Option<Unit>,
}

impl<'a> Typed<'a> {
    /// The field at a place of a house.
    pub(super) fn at(place: Place, house: &'a House) -> Self {
        let Place::Field(field) = place else {
            return Self { name: place_name(place, house), text: "", kind: None, unit: None };
        };
        let shown = || field.unit(house.choices.display);
        let unit = house.entry(field).map_or_else(shown, |entry| entry.unit);
        Self { name: place_name(place, house), text: house.text(field), kind: kind_at(place), unit: Some(unit) }
    }

    fn asked(&self) -> &'static str {
        self.kind.map_or("a text", kind)
    }
}

/// What the field at a place asks for.
pub fn kind_at(place: Place) -> Option<Kind> {
    match place {
        Place::Field(field) => field.limit().map(|limit| limit.unit.kind()),
        Place::House | Place::Room(_) => None,
    }
}

/// A text that cannot be read.
pub fn unreadable(error: ParseError, field: &Typed) -> String {
    let (name, typed) = (&field.name, field.text);
    let text = quoted(typed);
    match error {
        ParseError::Empty => format!("{name} holds nothing but spaces."),
        ParseError::NotANumber => format!("{name}: {text} cannot be read as {}. Nothing was changed.", field.asked()),
        ParseError::Ambiguous { decimal, thousands } => {
            let (decimal, thousands) = (either(decimal), either(thousands));
            format!("{name}: {text} can mean {decimal} or {thousands}. Which one?")
        }
        ParseError::UnknownUnit { at } => {
            let unit = quoted(typed.get(at..).unwrap_or(typed));
            format!("{name}: {unit} is no unit that is known here. Nothing was changed.")
        }
        ParseError::WrongKind { unit } => {
            let (wrong, right) = (kind(unit.kind()), field.asked());
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
pub fn out_of_range(range: (f64, f64, Unit), field: &Typed) -> String {
    let between = between(range, field.unit);
    format!("{} must be {between}. You typed {}. Nothing was changed.", field.name, quoted(field.text))
}

/// A value that is seldom right.
pub fn seldom_right(range: (f64, f64, Unit), field: &Typed) -> String {
    let between = between(range, field.unit);
    format!("{} is usually {between}. You typed {}; it is used as typed.", field.name, quoted(field.text))
}

/// A name that does not fit on a label.
pub fn long_name(length: u32, fits: u32, field: &Typed) -> String {
    let (length, fits) = (format::count(length), format::count(fits));
    let text = quoted(field.text);
    format!("{}: {text} has {length} characters, and a label holds {fits}. It is kept.", field.name)
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

/// `between 0.3 and 2000 m²`, in the unit the field showed when it was typed. Both ends are rounded inward, so that
/// what is said is accepted.
fn between((min, max, unit): (f64, f64, Unit), shown: Option<Unit>) -> String {
    let to = shown.filter(|to| to.kind() == unit.kind()).unwrap_or(unit);
    let convert = |value| convert(value, unit, to).unwrap_or(value);
    let (min, max) = (inward(convert(min), to, f64::ceil), inward(convert(max), to, f64::floor));
    format!("between {} and {}", format::value(min, to).number, format::text(max, to))
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
        Kind::Price => "a price",
        Kind::Sound => "a level of sound",
        Kind::Damping => "a damping",
    }
}
