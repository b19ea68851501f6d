//! How a tube runs, as it is typed: `3.2 + 1.4 + 2.6, 3 bends`.

use crate::entry::{Entry, Limit};
use crate::issue::Trouble;
use crate::quantity::{Kind, Length, Measure, ParseError, Unit, parse};

/// The way of a tube, as far as it was typed.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Legs {
    /// Its legs together; none where only bends were typed.
    pub length: Option<Length>,
    /// Its bends, where they were typed.
    pub bends: Option<Bends>,
}

/// Bends of a tube: right-angle ones, and some of one other angle.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Bends {
    /// Of 90°.
    pub right: u32,
    /// Of another angle.
    pub other: u32,
    /// That angle, degrees.
    pub angle: f64,
}

impl Bends {
    /// So many right-angle bends.
    pub const fn right(count: u32) -> Self {
        Self { right: count, other: 0, angle: 0.0 }
    }

    /// All of them.
    pub const fn count(self) -> u32 {
        self.right.saturating_add(self.other)
    }

    /// The same angle goes together; a third angle has no place.
    fn with(self, count: u32, angle: f64) -> Option<Self> {
        if angle == RIGHT {
            return Some(Self { right: self.right + count, ..self });
        }
        (self.other == 0 || self.angle == angle).then(|| Self { other: self.other + count, angle, ..self })
    }
}

impl Legs {
    /// Reads the text of a run: legs, bends, or legs and bends behind a comma.
    ///
    /// * Valid range: up to 20 bends of two kinds, right-angle ones and those of one other angle from 5° to 180°
    /// * Errors: as a length's; [`ParseError::NotANumber`] for bends that cannot be read
    ///
    /// ```
    /// use airtally::{entry::Entry, house::RoomField, legs::{Bends, Legs}, quantity::Unit};
    /// let read = |text: &str| Legs::read(&Entry::new(text, Unit::Metre), RoomField::SupplyRun.limit()).unwrap();
    /// let run = read("3.2 + 1.4 + 2.6, 3 bends");
    /// assert!((run.length.unwrap().as_m() - 7.2).abs() < 1e-12);
    /// assert_eq!(run.bends, Some(Bends::right(3)));
    /// assert_eq!(read("9.4, 2 bends, 1 bend 45°").bends, Some(Bends { right: 2, other: 1, angle: 45.0 }));
    /// ```
    pub fn read(entry: &Entry, limit: Limit) -> Result<Self, Trouble> {
        let unreadable = |error| Trouble::Unreadable(error);
        let (legs, bends) = split(&entry.text);
        let bends = bends.map(|text| read_bends(text).ok_or(unreadable(ParseError::NotANumber))).transpose()?;
        if legs.is_empty() && bends.is_some() {
            return Ok(Self { length: None, bends });
        }
        let measure = parse(legs, Kind::Length, entry.unit).map_err(unreadable)?;
        Ok(Self { length: Length::of(limit.admit(measure)?), bends })
    }

    /// The legs as a measure in the unit they were typed in, for remarks.
    pub fn measure(self, entry: &Entry) -> Option<Measure> {
        let (legs, _) = split(&entry.text);
        self.length.and_then(|_| parse(legs, Kind::Length, entry.unit).ok())
    }
}

/// Legs before the first number of bends, and the bends.
fn split(text: &str) -> (&str, Option<&str>) {
    let Some(word) = find_bend(text) else { return (text, None) };
    let before = text[..word].trim_end().trim_end_matches(['x', '×']).trim_end();
    let legs = before.trim_end_matches(|letter: char| letter.is_ascii_digit());
    let is_apart = legs.is_empty() || legs.trim_end().ends_with([',', ';', '+']);
    if legs.len() == before.len() || !is_apart {
        return (text, None);
    }
    (legs.trim_end_matches([' ', ',', ';', '+']), Some(text[legs.len()..].trim()))
}

/// Where the word stands, in any case.
fn find_bend(text: &str) -> Option<usize> {
    text.as_bytes().windows(BEND.len()).position(|word| word.eq_ignore_ascii_case(BEND))
}

fn read_bends(text: &str) -> Option<Bends> {
    let groups = text.split([',', ';']).filter(|group| !group.trim().is_empty());
    groups.map(one_kind).try_fold(Bends::default(), |bends, group| {
        let (count, angle) = group?;
        bends.with(count, angle)
    })
}

/// `2 bends`, `1 bend 45°`.
fn one_kind(text: &str) -> Option<(u32, f64)> {
    let word = find_bend(text)?;
    let count = text[..word].trim().trim_end_matches(['x', '×']).trim_end();
    let count: u32 = count.parse().ok().filter(|count| *count <= MOST)?;
    let behind = &text[word + BEND.len()..];
    let behind = behind.strip_prefix(['s', 'S']).unwrap_or(behind).trim();
    let behind = behind.strip_prefix("of").unwrap_or(behind).trim();
    if behind.is_empty() {
        return Some((count, RIGHT));
    }
    let angle = parse(behind, Kind::Angle, Unit::Degree).ok()?.value_in(Unit::Degree)?;
    ANGLES.contains(&angle).then_some((count, angle))
}

const BEND: &[u8] = b"bend";
const RIGHT: f64 = 90.0;
/// Ours: more bends than this are no run of a tube.
const MOST: u32 = 20;
/// Degrees.
const ANGLES: std::ops::RangeInclusive<f64> = 5.0..=180.0;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::house::RoomField;
    use crate::quantity::Unit;

    fn read(text: &str) -> Result<Legs, Trouble> {
        Legs::read(&Entry::new(text, Unit::Metre), RoomField::SupplyRun.limit())
    }

    #[test]
    fn legs_and_bends_are_read_in_the_ways_people_write_them() {
        let three = Some(Bends::right(3));
        for text in
            ["7.2, 3 bends", "7,2; 3 Bends", "7.2 m, 3 x bends", "7.2,3 bend", "3.2 + 4, 3 bends 90°", "7.2 + 3 bends"]
        {
            let legs = read(text).unwrap();
            assert!((legs.length.unwrap().as_m() - 7.2).abs() < 1e-12, "{text}");
            assert_eq!(legs.bends, three, "{text}");
        }
        assert_eq!(read("3 bends").unwrap(), Legs { length: None, bends: three });
        assert_eq!(read("9.4").unwrap().bends, None);
        assert_eq!(
            read("12 ft 6 in, 1 bend of 45 deg").unwrap().bends,
            Some(Bends { right: 0, other: 1, angle: 45.0 })
        );
    }

    #[test]
    fn bends_that_make_no_sense_are_refused() {
        for text in [
            "9.4, bends",
            "9.4, many bends",
            "9.4, 21 bends",
            "9.4, 1 bend 3",
            "9.4, 1 bend 30, 1 bend 45",
            "9 3 bends",
            "9.4, -1 bends",
        ] {
            assert!(read(text).is_err(), "{text}");
        }
        assert!(matches!(read("0.01, 3 bends"), Err(Trouble::OutOfRange { .. })));
        for text in ["bend", "ßbend", "3 ßends", "3 bends\u{301}", "\u{301}bend"] {
            let _ = read(text);
        }
    }
}
