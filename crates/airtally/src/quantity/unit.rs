//! The units people type and read, and the one conversion between them.

use super::facts::{self, Facts};

/// What a number measures. Units convert within a kind and never across kinds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Kind {
    /// Air (or carbon dioxide) per time.
    Flow,
    /// Floor, duct section, opening.
    Area,
    /// Rooms, runs, bores, height above the sea.
    Length,
    /// Rooms and houses.
    Volume,
    /// Speed of air.
    Velocity,
    /// Pressure difference.
    Pressure,
    /// Temperature on a scale, not a difference.
    Temperature,
    /// Room volumes per time.
    AirChange,
    /// Parts of a gas in a million parts of air.
    Concentration,
    /// Time that passes.
    Duration,
    /// Bends and roof pitches.
    Angle,
    /// Whole things: rooms, people, tubes.
    Count,
    /// A share of a whole.
    Ratio,
    /// Flow per floor area.
    FlowPerArea,
    /// Electrical power.
    Power,
    /// What one of something costs, in a currency that nobody has to name.
    Price,
    /// How loud something is.
    Sound,
    /// By how much sound is weakened.
    Damping,
}

/// A unit that may be typed or shown. Saved as its [`id`](Unit::id).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[allow(missing_docs, reason = "the variant says it all; symbols and factors stand in facts.rs")]
pub enum Unit {
    CubicMetrePerHour,
    LitrePerSecond,
    CubicFootPerMinute,
    LitrePerHour,
    SquareMetre,
    SquareFoot,
    SquareCentimetre,
    SquareMillimetre,
    SquareInch,
    Metre,
    Centimetre,
    Millimetre,
    Foot,
    Inch,
    CubicMetre,
    CubicFoot,
    MetrePerSecond,
    FootPerMinute,
    Pascal,
    InchWater,
    Celsius,
    Fahrenheit,
    PerHour,
    PartPerMillion,
    Hour,
    Minute,
    Second,
    Day,
    Degree,
    Count,
    Ratio,
    Percent,
    CubicMetrePerHourSquareMetre,
    LitrePerSecondSquareMetre,
    CubicFootPerMinuteSquareFoot,
    Watt,
    Money,
    DecibelA,
    Decibel,
}

impl Kind {
    /// The units of this kind; the first is the one the calculation works in.
    pub fn units(self) -> impl Iterator<Item = Unit> {
        Unit::all().filter(move |unit| unit.kind() == self)
    }
}

impl Unit {
    /// Every unit, in a fixed order.
    pub fn all() -> impl Iterator<Item = Unit> {
        facts::TABLE.iter().map(|facts| facts.unit)
    }

    /// What the unit measures.
    pub const fn kind(self) -> Kind {
        self.facts().kind
    }

    /// How the unit is written beside a number: `m³/h`. Empty for plain numbers.
    pub const fn symbol(self) -> &'static str {
        self.facts().symbol
    }

    /// Stable ASCII name, part of the file format: `m3/h`.
    pub const fn id(self) -> &'static str {
        self.facts().id
    }

    /// The unit with this [`id`](Unit::id).
    pub fn from_id(id: &str) -> Option<Unit> {
        Unit::all().find(|unit| unit.id() == id)
    }

    /// What may be typed for this unit. Capitals do not matter, a space stands for any or no space or full stop,
    /// and powers, quote marks and full stops may be written in the usual other ways (`m²`, `m^2`; `″`; `ft.`).
    pub const fn spellings(self) -> &'static [&'static str] {
        self.facts().spellings
    }

    pub(super) const fn facts(self) -> &'static Facts {
        &facts::TABLE[self as usize]
    }
}

/// A value in another unit of the same kind.
///
/// Equation: `(value − zero₁) · factor₁ ÷ factor₂ + zero₂`; only °F has a zero (32) that is not 0.
/// Factors are whole-number fractions, so whole multiples stay exact (12 in = 1 ft).
///
/// Valid range: every finite value. `None` when the kinds differ, or when `value` or the answer is not a finite number.
/// The value itself when `from == to`.
///
/// Source: beside each unit in `facts.rs`.
///
/// ```
/// use airtally::quantity::{Unit, convert};
///
/// assert_eq!(convert(50.0, Unit::Fahrenheit, Unit::Celsius), Some(10.0));
/// assert_eq!(convert(10.0, Unit::LitrePerSecond, Unit::CubicMetrePerHour), Some(36.0));
/// assert_eq!(convert(10.0, Unit::LitrePerSecond, Unit::Pascal), None);
/// ```
pub fn convert(value: f64, from: Unit, to: Unit) -> Option<f64> {
    if from.kind() != to.kind() {
        return None;
    }
    Some(convert_same_kind(value, from, to)).filter(|answer| answer.is_finite())
}

/// [`convert`] for two units whose kinds are known to agree.
#[inline]
pub(super) fn convert_same_kind(value: f64, from: Unit, to: Unit) -> f64 {
    if from as usize == to as usize {
        return value;
    }
    let (from, to) = (from.facts(), to.facts());
    scale(value - from.zero, from.times * to.over, from.over * to.times) + to.zero
}

/// `value · times ÷ over`, rounding only once where one divides the other.
#[inline]
fn scale(value: f64, times: u64, over: u64) -> f64 {
    if times.is_multiple_of(over) {
        return value * (times / over) as f64;
    }
    if over.is_multiple_of(times) {
        return value / (over / times) as f64;
    }
    let product = value * times as f64;
    if product.is_finite() { product / over as f64 } else { value / over as f64 * times as f64 }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ids_find_their_unit() {
        for unit in Unit::all() {
            assert!(unit.id().is_ascii());
            assert_eq!(Unit::from_id(unit.id()), Some(unit));
        }
        assert_eq!(Unit::from_id("furlong"), None);
        assert_eq!(Unit::from_id(""), None);
    }

    #[test]
    fn no_spelling_means_two_units() {
        let spellings: Vec<_> = Unit::all().flat_map(Unit::spellings).collect();
        let distinct: std::collections::BTreeSet<_> = spellings.iter().collect();
        assert_eq!(spellings.len(), distinct.len());
    }

    #[test]
    fn the_same_unit_is_left_alone() {
        for unit in Unit::all() {
            for value in [0.1, -7.3, 1e308, 5e-324] {
                assert_eq!(convert(value, unit, unit), Some(value));
            }
            assert_eq!(convert(f64::NAN, unit, unit), None);
        }
    }

    #[test]
    fn there_and_back_is_the_same_to_the_last_few_bits() {
        for from in Unit::all() {
            for to in from.kind().units() {
                let back = convert(123.456, from, to).and_then(|there| convert(there, to, from));
                let error = back.map_or(f64::INFINITY, |back| (back - 123.456).abs());
                // Four roundings of half a last place each, and for temperatures one subtraction of 32.
                assert!(error < 123.456 * 1e-15, "{from:?} {to:?}: {error:e}");
            }
        }
    }

    #[test]
    fn answers_are_finite_or_none() {
        assert_eq!(convert(1e308, Unit::Metre, Unit::Millimetre), None);
        assert_eq!(convert(f64::INFINITY, Unit::Metre, Unit::Foot), None);
        let metres = convert(1e308, Unit::Foot, Unit::Metre);
        assert!(metres.is_some_and(|metres| (metres / 0.3048e308 - 1.0).abs() < 1e-15));
    }

    #[test]
    fn whole_multiples_are_exact() {
        check(12.0, Unit::Inch, Unit::Foot, 1.0);
        check(0.5, Unit::Foot, Unit::Inch, 6.0);
        check(1.0, Unit::Inch, Unit::Millimetre, 25.4);
        check(1.0, Unit::Foot, Unit::Metre, 0.3048);
        check(1.0, Unit::SquareFoot, Unit::SquareMetre, 0.092_903_04);
        check(1.0, Unit::SquareFoot, Unit::SquareInch, 144.0);
        check(1.0, Unit::CubicFoot, Unit::CubicMetre, 0.028_316_846_592);
        check(1.0, Unit::CubicFootPerMinute, Unit::CubicMetrePerHour, 1.699_010_795_52);
        check(1.0, Unit::FootPerMinute, Unit::MetrePerSecond, 0.005_08);
        check(1.0, Unit::InchWater, Unit::Pascal, 248.84);
        check(-40.0, Unit::Fahrenheit, Unit::Celsius, -40.0);
        check(212.0, Unit::Fahrenheit, Unit::Celsius, 100.0);
        check(90.0, Unit::Minute, Unit::Hour, 1.5);
        check(85.0, Unit::Percent, Unit::Ratio, 0.85);
    }

    fn check(value: f64, from: Unit, to: Unit, expect: f64) {
        assert_eq!(convert(value, from, to), Some(expect), "{value} {from:?} to {to:?}");
    }
}
