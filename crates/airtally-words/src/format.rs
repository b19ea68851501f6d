//! Numbers for people to read: as many digits as the job needs, a point before decimals, narrow spaces from 10 000.
//!
//! Never `-0`, never `NaN`: a value that is not a number is shown as a dash.

#[cfg(test)]
mod tests;

use airtally::house::Display;
use airtally::quantity::{Area, Flow, Length, Unit, Velocity, Volume, convert};
use std::fmt;

/// A number and its unit, apart, so that the unit can be set smaller.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shown {
    /// The number as read.
    pub number: String,
    /// The unit's symbol; empty for plain numbers.
    pub unit: &'static str,
}

impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.unit {
            "" => f.write_str(&self.number),
            "°" => write!(f, "{}°", self.number),
            unit => write!(f, "{}{NO_BREAK}{unit}", self.number),
        }
    }
}

/// Keeps a number and its unit on one line.
pub const NO_BREAK: char = '\u{a0}';
/// Parts thousands: narrow, and never the end of a line.
pub const NARROW: char = '\u{202f}';
/// Stands for a number that is not there.
pub const DASH: &str = "–";

/// A value in its own unit.
///
/// ```
/// use airtally::quantity::Unit;
/// use airtally_words::format::value;
/// assert_eq!(value(68.4, Unit::CubicMetrePerHour).number, "68.4");
/// assert_eq!(value(-0.0, Unit::Metre).number, "0");
/// assert_eq!(value(f64::NAN, Unit::Metre).number, "–");
/// ```
pub fn value(value: f64, unit: Unit) -> Shown {
    Shown { number: number(value, decimals(value, unit)), unit: unit.symbol() }
}

/// A value in its own unit as one text: `68.4 m³/h`.
pub fn text(amount: f64, unit: Unit) -> String {
    value(amount, unit).to_string()
}

/// A value in the unit the page shows.
pub fn in_display(amount: f64, unit: Unit, display: Display) -> Shown {
    let to = unit_in(unit, display);
    match convert(amount, unit, to) {
        Some(amount) => value(amount, to),
        None => value(f64::NAN, to),
    }
}

/// The unit the page shows in place of a unit. Small flows of CO2, pressures, temperatures and times stay as they are.
pub const fn unit_in(unit: Unit, display: Display) -> Unit {
    let feet = matches!(display, Display::CubicFeet);
    match unit {
        Unit::CubicMetrePerHour | Unit::LitrePerSecond | Unit::CubicFootPerMinute => display.flow(),
        Unit::SquareMetre | Unit::SquareFoot => display.area(),
        Unit::SquareCentimetre | Unit::SquareMillimetre | Unit::SquareInch if feet => Unit::SquareInch,
        Unit::SquareInch => Unit::SquareCentimetre,
        Unit::Metre | Unit::Foot => display.length(),
        Unit::Centimetre | Unit::Millimetre | Unit::Inch => display.small_length(),
        Unit::CubicMetre | Unit::CubicFoot if feet => Unit::CubicFoot,
        Unit::CubicFoot => Unit::CubicMetre,
        Unit::MetrePerSecond | Unit::FootPerMinute => display.velocity(),
        Unit::CubicMetrePerHourSquareMetre | Unit::LitrePerSecondSquareMetre | Unit::CubicFootPerMinuteSquareFoot => {
            match display {
                Display::CubicMetres => Unit::CubicMetrePerHourSquareMetre,
                Display::Litres => Unit::LitrePerSecondSquareMetre,
                Display::CubicFeet => Unit::CubicFootPerMinuteSquareFoot,
            }
        }
        other => other,
    }
}

/// An air flow as the page shows it.
pub fn flow(flow: Flow, display: Display) -> Shown {
    in_display(flow.as_m3h(), Unit::CubicMetrePerHour, display)
}

/// A floor area as the page shows it.
pub fn area(area: Area, display: Display) -> Shown {
    in_display(area.as_m2(), Unit::SquareMetre, display)
}

/// A length or height as the page shows it.
pub fn length(length: Length, display: Display) -> Shown {
    in_display(length.as_m(), Unit::Metre, display)
}

/// A gap, bore or spacing as the page shows it.
pub fn small_length(length: Length, display: Display) -> Shown {
    in_display(length.as_mm(), Unit::Millimetre, display)
}

/// The free area of an opening as the page shows it.
pub fn opening(area: Area, display: Display) -> Shown {
    in_display(area.as_cm2(), Unit::SquareCentimetre, display)
}

/// A speed of air as the page shows it.
pub fn velocity(velocity: Velocity, display: Display) -> Shown {
    in_display(velocity.as_ms(), Unit::MetrePerSecond, display)
}

/// A volume as the page shows it.
pub fn volume(volume: Volume, display: Display) -> Shown {
    in_display(volume.as_m3(), Unit::CubicMetre, display)
}

/// A whole number of things.
pub fn count(count: u32) -> String {
    number(f64::from(count), 0)
}

/// Tubes side by side: `1 tube`, `2 tubes`.
pub fn tubes(tubes: u32) -> String {
    let noun = if tubes == 1 { "tube" } else { "tubes" };
    format!("{}{NO_BREAK}{noun}", count(tubes))
}

/// A number with at most so many decimals; zeros at the end are left out.
pub fn number(value: f64, decimals: usize) -> String {
    if !value.is_finite() {
        return DASH.to_owned();
    }
    let rounded = rounded(value, decimals);
    let plain = plain(rounded.abs(), decimals);
    let text = if rounded.abs() < GROUPED_FROM { plain } else { grouped(&plain) };
    if rounded < 0.0 { format!("−{text}") } else { text }
}

/// Narrow spaces between thousands: `12 345`.
pub fn grouped(plain: &str) -> String {
    let (whole, rest) = plain.split_once('.').map_or((plain, None), |(whole, rest)| (whole, Some(rest)));
    let digits = whole.chars().count();
    let mut text = String::with_capacity(plain.len() + digits);
    for (at, digit) in whole.chars().enumerate() {
        if at > 0 && (digits - at).is_multiple_of(3) {
            text.push(NARROW);
        }
        text.push(digit);
    }
    if let Some(rest) = rest {
        text.push('.');
        text.push_str(rest);
    }
    text
}

/// The most decimals of a value that help at work.
pub fn decimals(value: f64, unit: Unit) -> usize {
    if value.abs() >= GROUPED_FROM {
        return 0;
    }
    match unit {
        // A rough wall: a tenth of a millimetre counts.
        Unit::Millimetre if value.abs() < 0.5 => 2,
        Unit::Millimetre
        | Unit::SquareMillimetre
        | Unit::FootPerMinute
        | Unit::CubicFoot
        | Unit::PartPerMillion
        | Unit::Count
        | Unit::Second
        | Unit::DecibelA
        | Unit::Degree => 0,
        Unit::CubicMetrePerHour
        | Unit::LitrePerSecond
        | Unit::CubicFootPerMinute
        | Unit::LitrePerHour
        | Unit::SquareMetre
        | Unit::SquareFoot
        | Unit::SquareCentimetre
        | Unit::SquareInch
        | Unit::CubicMetre
        | Unit::Centimetre
        | Unit::Foot
        | Unit::Pascal
        | Unit::Celsius
        | Unit::Fahrenheit
        | Unit::Hour
        | Unit::Minute
        | Unit::Day
        | Unit::Percent
        | Unit::Decibel
        | Unit::Watt => 1,
        Unit::Metre
        | Unit::Inch
        | Unit::MetrePerSecond
        | Unit::InchWater
        | Unit::PerHour
        | Unit::Money
        | Unit::CubicMetrePerHourSquareMetre => 2,
        Unit::Ratio if value.abs() < 0.01 => 4,
        Unit::Ratio | Unit::LitrePerSecondSquareMetre | Unit::CubicFootPerMinuteSquareFoot => 3,
    }
}

const GROUPED_FROM: f64 = 10_000.0;

/// Half away from nought, as people round.
fn rounded(value: f64, decimals: usize) -> f64 {
    let scale = (0..decimals).fold(1.0, |scale, _| scale * 10.0);
    let scaled = value * scale;
    if scaled.is_finite() { scaled.round() / scale } else { value }
}

/// Whole digits and a point: std's own printer would bring 8 kB of tables that every visitor of the page would load.
fn plain(value: f64, decimals: usize) -> String {
    let scale = (0..decimals).fold(1_u64, |scale, _| scale * 10);
    let scaled = (value * scale as f64).round();
    if scaled >= TOO_LARGE {
        return VAST.to_owned();
    }
    let (whole, mut part) = (scaled as u64 / scale, scaled as u64 % scale);
    let mut places = decimals;
    while places > 0 && part.is_multiple_of(10) {
        part /= 10;
        places -= 1;
    }
    let mut text = whole.to_string();
    if places > 0 {
        let digits = part.to_string();
        text.push('.');
        text.extend(std::iter::repeat_n('0', places - digits.len()));
        text.push_str(&digits);
    }
    text
}

/// From here on a number has more digits than it knows, and none of them helps at work.
const TOO_LARGE: f64 = 1e18;
const VAST: &str = "over 10¹⁸";
