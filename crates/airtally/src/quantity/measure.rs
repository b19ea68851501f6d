//! What was typed: a number in the unit it was typed in.

use super::unit::{Kind, Unit, convert};

/// A number and its unit, kept as typed: 1 500 ft² stays 1 500 ft².
///
/// The number should be finite; every reader answers `None` for one that is not.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measure {
    value: f64,
    unit: Unit,
}

impl Measure {
    /// This many of that unit.
    pub const fn new(value: f64, unit: Unit) -> Self {
        Self { value, unit }
    }

    /// The number, in [`unit`](Self::unit).
    pub const fn value(self) -> f64 {
        self.value
    }

    /// The unit it was typed in.
    pub const fn unit(self) -> Unit {
        self.unit
    }

    /// What is measured.
    pub const fn kind(self) -> Kind {
        self.unit.kind()
    }

    /// The number in another unit; exactly the typed number when the units are the same.
    ///
    /// Errors: `None` for a unit of another kind, and when the number or the answer is not finite.
    ///
    /// ```
    /// use airtally::quantity::{Measure, Unit};
    ///
    /// let floor = Measure::new(1500.0, Unit::SquareFoot);
    /// assert_eq!(floor.value_in(Unit::SquareFoot), Some(1500.0));
    /// assert_eq!(floor.value_in(Unit::Foot), None);
    /// ```
    pub fn value_in(self, unit: Unit) -> Option<f64> {
        convert(self.value, self.unit, unit)
    }

    /// The number when it counts whole things from 0 to 4 294 967 295.
    ///
    /// ```
    /// use airtally::quantity::{Measure, Unit};
    ///
    /// assert_eq!(Measure::new(3.0, Unit::Count).whole(), Some(3));
    /// assert_eq!(Measure::new(2.5, Unit::Count).whole(), None);
    /// assert_eq!(Measure::new(3.0, Unit::Metre).whole(), None);
    /// ```
    pub fn whole(self) -> Option<u32> {
        let value = self.value_in(Unit::Count)?;
        let is_whole = value == value.trunc() && (0.0..=f64::from(u32::MAX)).contains(&value);
        is_whole.then_some(value as u32)
    }

    /// The area of two lengths: in the square of their unit when they share one, else in m².
    ///
    /// Equation: `A = a · b`.
    ///
    /// Errors: `None` when either is not a length or the area is not a finite number.
    ///
    /// ```
    /// use airtally::quantity::{Measure, Unit};
    ///
    /// let (width, depth) = (Measure::new(30.0, Unit::Foot), Measure::new(50.0, Unit::Foot));
    /// assert_eq!(width.times(depth), Some(Measure::new(1500.0, Unit::SquareFoot)));
    /// ```
    pub fn times(self, other: Measure) -> Option<Measure> {
        if self.kind() != Kind::Length || other.kind() != Kind::Length {
            return None;
        }
        let area = match self.unit.squared().filter(|_| self.unit == other.unit) {
            Some(square) => Measure::new(self.value * other.value, square),
            None => {
                let metres = (self.value_in(Unit::Metre)?, other.value_in(Unit::Metre)?);
                Measure::new(metres.0 * metres.1, Unit::SquareMetre)
            }
        };
        area.value.is_finite().then_some(area)
    }
}

impl Unit {
    /// The area unit that is this length unit times itself.
    const fn squared(self) -> Option<Unit> {
        match self {
            Unit::Metre => Some(Unit::SquareMetre),
            Unit::Centimetre => Some(Unit::SquareCentimetre),
            Unit::Millimetre => Some(Unit::SquareMillimetre),
            Unit::Foot => Some(Unit::SquareFoot),
            Unit::Inch => Some(Unit::SquareInch),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_multiply_in_their_own_unit() {
        check((30.0, Unit::Foot), (50.0, Unit::Foot), Some((1500.0, Unit::SquareFoot)));
        check((4.0, Unit::Metre), (3.0, Unit::Metre), Some((12.0, Unit::SquareMetre)));
        check((760.0, Unit::Millimetre), (10.0, Unit::Millimetre), Some((7600.0, Unit::SquareMillimetre)));
        check((2.0, Unit::Metre), (50.0, Unit::Centimetre), Some((1.0, Unit::SquareMetre)));
        check((2.0, Unit::Metre), (2.0, Unit::SquareMetre), None);
        check((2.0, Unit::Pascal), (2.0, Unit::Pascal), None);
        check((1e200, Unit::Foot), (1e200, Unit::Foot), None);
        check((f64::NAN, Unit::Foot), (1.0, Unit::Inch), None);
    }

    #[test]
    fn every_length_has_a_square() {
        assert!(Kind::Length.units().all(|unit| unit.squared().is_some()));
    }

    #[test]
    fn only_whole_counts_are_whole() {
        for (value, expect) in [(0.0, Some(0)), (-1.0, None), (0.5, None), (1e10, None), (f64::NAN, None)] {
            assert_eq!(Measure::new(value, Unit::Count).whole(), expect, "{value}");
        }
    }

    fn check(a: (f64, Unit), b: (f64, Unit), expect: Option<(f64, Unit)>) {
        let expect = expect.map(|(value, unit)| Measure::new(value, unit));
        assert_eq!(Measure::new(a.0, a.1).times(Measure::new(b.0, b.1)), expect);
    }
}
