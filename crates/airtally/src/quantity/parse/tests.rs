mod any_text;

use super::ParseError::{
    Ambiguous, Empty, NotANumber, NotFinite, NotWhole, TooLong, UnclearUnit, UnknownUnit, WrongKind,
};
use super::*;

#[test]
fn plain_numbers() {
    check("30", Ok(30.0));
    check("  30\t", Ok(30.0));
    check("3.2", Ok(3.2));
    check("3,2", Ok(3.2));
    check(".5", Ok(0.5));
    check(",5", Ok(0.5));
    check("5.", Ok(5.0));
    check("5,", Ok(5.0));
    check("007", Ok(7.0));
    check("+4", Ok(4.0));
    check("-4", Ok(-4.0));
    check("\u{2212}4", Ok(-4.0));
    check("- 4", Ok(-4.0));
    check("1e3", Ok(1000.0));
    check("1.5E-2", Ok(0.015));
    check("2e\u{2212}1", Ok(0.2));
    check("1e22", Ok(1e22));
    check("1e-22", Ok(1e-22));
    check("1e-400", Ok(0.0));
}

#[test]
fn a_typed_minus_nought_is_nought() {
    let zero = parse("-0", Kind::Length, Unit::Metre).map(|measure| measure.value().to_bits());
    assert_eq!(zero, Ok(0));
}

#[test]
fn thousands() {
    check("1 234", Ok(1234.0));
    check("1\u{a0}234,5", Ok(1234.5));
    check("1\u{202f}234\u{202f}567", Ok(1_234_567.0));
    check("1\u{2009}234.5", Ok(1234.5));
    check("12'345", Ok(12345.0));
    check("1’234,5", Ok(1234.5));
    check("1,234.5", Ok(1234.5));
    check("1.234,5", Ok(1234.5));
    check("1,234,567", Ok(1_234_567.0));
    check("1.234.567", Ok(1_234_567.0));
    check("1,234,567.89", Ok(1_234_567.89));
    check("1 234,567", Ok(1234.567));
    check("1.234", Ok(1.234));
    check("1234,567", Ok(1234.567));
    check("0,123", Ok(0.123));
    check("1,23", Ok(1.23));
    check("1,2345", Ok(1.2345));
}

#[test]
fn thousands_in_the_wrong_places() {
    for text in ["12 34", "1234 567", "0 123", "1 2345", "1,2,3", "12,34.5", "1,234.5,6", "1.234,567.8", "1,234,567,"] {
        check(text, Err(NotANumber));
    }
    for text in ["1 234'567", "1 234,567,890", "3, 5", "1..2", ",", ".", "-", "1.2.3"] {
        check(text, Err(NotANumber));
    }
}

#[test]
fn one_comma_before_three_digits_can_be_both() {
    check("1,234", Err(Ambiguous { decimal: 1.234, thousands: 1234.0 }));
    check("-12,500 m", Err(Ambiguous { decimal: -12.5, thousands: -12500.0 }));
    check("2 + 1,234", Err(Ambiguous { decimal: 1.234, thousands: 1234.0 }));
    check("1,234e1", Err(Ambiguous { decimal: 12.34, thousands: 12340.0 }));
    check("1,234e999", Err(NotFinite));
}

#[test]
fn too_large() {
    check("1e999", Err(NotFinite));
    check("1e308 + 1e308", Err(NotFinite));
    check("1/0", Err(NotFinite));
    check("0/0", Err(NotFinite));
    check("6 1/0", Err(NotFinite));
    check_nearly("1e308", 1e308);
    check_nearly("1e308 m 1e305 mm", 1e308 + 1e302);
    check_nearly(&"9".repeat(200), 1e200);
    check(&"9".repeat(201), Err(TooLong));
    check(&"é".repeat(200), Err(NotANumber));
    check(&" ".repeat(201), Err(TooLong));
}

#[test]
fn not_numbers() {
    check("", Err(Empty));
    check(" \u{a0}\n", Err(Empty));
    for text in ["nan", "NaN", "inf", "-inf", "infinity", "abc", "m", "😀", "１２", "١٢", "0x10", "5 ５", "12３", "--4"]
    {
        let expect = if text == "0x10" { UnknownUnit { at: 1 } } else { NotANumber };
        check(text, Err(expect));
    }
}

#[test]
fn fractions() {
    check("1/2", Ok(0.5));
    check("1⁄4", Ok(0.25));
    check("½", Ok(0.5));
    check("6½", Ok(6.5));
    check("6 ½", Ok(6.5));
    check("6 1/2", Ok(6.5));
    check("-6 1/2", Ok(-6.5));
    check("1 234 1/2", Ok(1234.5));
    check("3 125/1000", Ok(3.125));
    check("1.5 1/2", Err(NotANumber));
    check("1.5/2", Err(UnknownUnit { at: 3 }));
    check("1/2/3", Err(UnknownUnit { at: 3 }));
    check("1/2.5", Err(NotANumber));
}

#[test]
fn feet_and_inches() {
    for text in ["12 ft 6 in", "12' 6\"", "12'6\"", "12′ 6″", "12’6”", "12'6''", "12'-6\"", "12ft6in", "12 FT. 6 IN."]
    {
        check_unit(text, Ok((12.5, Unit::Foot)));
    }
    for text in ["12 feet 6 inches", "12 ft 6", "12'6", "12 foot 5 12/12 in"] {
        check_unit(text, Ok((12.5, Unit::Foot)));
    }
    check_unit("12'6 1/2\"", Ok((12.0 + 6.5 / 12.0, Unit::Foot)));
    check_unit("12' 6½\"", Ok((12.0 + 6.5 / 12.0, Unit::Foot)));
    check_unit("12 ft 2 in", Ok((12.0 + 2.0 / 12.0, Unit::Foot)));
    check_unit("12ft2in", Ok((12.0 + 2.0 / 12.0, Unit::Foot)));
    check_unit("-1' 6\"", Ok((-1.5, Unit::Foot)));
    check_unit("6 1/2 in", Ok((6.5, Unit::Inch)));
    check_unit("½\"", Ok((0.5, Unit::Inch)));
    check_unit("8'", Ok((8.0, Unit::Foot)));
    check_unit("6\" 2'", Err(NotANumber));
    check_unit("12 ft -6 in 3", Err(NotANumber));
    check_unit("12 ft 6 mm", Err(NotANumber));
}

#[test]
fn other_pairs_of_units() {
    check_unit("2 m 40 cm", Ok((2.4, Unit::Metre)));
    check_unit("2 m 40 cm 5 mm", Ok((2.405, Unit::Metre)));
    check_unit("2 m 40", Err(NotANumber));
    check_of("1 h 30 min", Kind::Duration, Unit::Minute, Ok((1.5, Unit::Hour)));
    check_of("1 day 12 h", Kind::Duration, Unit::Hour, Ok((1.5, Unit::Day)));
}

#[test]
fn sums() {
    check("3.5 + 1.5 + 2", Ok(7.0));
    check("3,5+1,5+2", Ok(7.0));
    check("3 + -1", Ok(2.0));
    check("3 +", Err(NotANumber));
    check("3 + + 4", Err(NotANumber));
    check("3 - 1", Err(UnknownUnit { at: 2 }));
    check("3 + 1.5 m", Ok(4.5));
    check("3 m + 1.5", Ok(4.5));
    check_unit("3 ft + 6 in", Ok((3.5, Unit::Foot)));
    for text in ["3 + 20 cm", "3 ft + 6", "3 ft + 6 in + 6", "3 + 1' 6\"", "3 m + 20 cm + 1"] {
        check_unit(text, Err(UnclearUnit));
    }
    check_of("3 + 1' 6\"", Kind::Length, Unit::Foot, Ok((4.5, Unit::Foot)));
    check_unit("1' 6\" + 1' 6\"", Ok((3.0, Unit::Foot)));
    check_unit("2 m + 50 cm", Ok((2.5, Unit::Metre)));
    check_unit("2 m + 50 cfm", Err(WrongKind { unit: Unit::CubicFootPerMinute }));
    check_of("20 + 1 °C", Kind::Temperature, Unit::Celsius, Err(NotANumber));
}

#[test]
fn every_spelling_is_read() {
    for unit in Unit::all() {
        for spelling in unit.spellings() {
            check_of(&format!("5 {spelling}"), unit.kind(), unit, Ok((5.0, unit)));
            check_of(&format!("½{}", spelling.to_ascii_uppercase()), unit.kind(), unit, half_of(unit));
        }
        check_of(&format!("5 {}", unit.symbol()), unit.kind(), unit, Ok((5.0, unit)));
    }
}

#[test]
fn units_as_people_write_them() {
    let flow = |text, unit| check_of(text, Kind::Flow, Unit::LitrePerSecond, Ok((20.0, unit)));
    flow("20 m3/h", Unit::CubicMetrePerHour);
    flow("20m³/h", Unit::CubicMetrePerHour);
    flow("20 m^3/h", Unit::CubicMetrePerHour);
    flow("20 cbm/h", Unit::CubicMetrePerHour);
    flow("20 m³ / h", Unit::CubicMetrePerHour);
    flow("20 lps", Unit::LitrePerSecond);
    flow("20 CFM", Unit::CubicFootPerMinute);
    flow("20 ft³/min", Unit::CubicFootPerMinute);
    flow("20 cu. ft./min.", Unit::CubicFootPerMinute);
    let pressure = |text| check_of(text, Kind::Pressure, Unit::Pascal, Ok((0.2, Unit::InchWater)));
    for text in ["0.2 in w.c.", "0.2 in. w.c.", "0.2 in. w.g.", "0,2 inwg", "0.2\" w.g.", "0.2 in H₂O", "0.2 Inch WC"]
    {
        pressure(text);
    }
    for text in ["1500 sq ft", "1500 sq. ft.", "1500 sqft", "1500 ft²", "1500 ft^2", "1 500 SF"] {
        check_of(text, Kind::Area, Unit::SquareMetre, Ok((1500.0, Unit::SquareFoot)));
    }
    for text in ["1/2 /h", "0.5/h", "0.5 1/h", "0.5 ACH", "0.5 h⁻¹", "0.5 h-1", "½ ach"] {
        check_of(text, Kind::AirChange, Unit::PerHour, Ok((0.5, Unit::PerHour)));
    }
    for text in ["-7 °C", "-7C", "−7 degC", "-7 º c", "-7 deg. C"] {
        check_of(text, Kind::Temperature, Unit::Fahrenheit, Ok((-7.0, Unit::Celsius)));
    }
    check_of("85 %", Kind::Ratio, Unit::Ratio, Ok((85.0, Unit::Percent)));
    check_of("3 people", Kind::Count, Unit::Count, Ok((3.0, Unit::Count)));
    check_of(
        "0.15 L/(s·m²)",
        Kind::FlowPerArea,
        Unit::CubicMetrePerHourSquareMetre,
        Ok((0.15, Unit::LitrePerSecondSquareMetre)),
    );
}

#[test]
fn unknown_and_wrong_units() {
    check_unit("12 furlongs", Err(UnknownUnit { at: 3 }));
    check_unit("  12 furlongs", Err(UnknownUnit { at: 5 }));
    check_unit("12 😀", Err(UnknownUnit { at: 3 }));
    check_unit("12½ 😀", Err(UnknownUnit { at: 5 }));
    check_unit("12 mx", Err(UnknownUnit { at: 3 }));
    check_unit("12 m/x", Err(UnknownUnit { at: 3 }));
    check_unit("12 m long", Err(UnknownUnit { at: 5 }));
    check_unit("5 m²", Err(WrongKind { unit: Unit::SquareMetre }));
    check_unit("5 in w.c.", Err(WrongKind { unit: Unit::InchWater }));
    check_of("5'10", Kind::Flow, Unit::LitrePerSecond, Err(WrongKind { unit: Unit::Foot }));
    check_of("5", Kind::Flow, Unit::Metre, Err(WrongKind { unit: Unit::Metre }));
}

#[test]
fn counts_are_whole() {
    check_of("3", Kind::Count, Unit::Count, Ok((3.0, Unit::Count)));
    check_of("1 + 2", Kind::Count, Unit::Count, Ok((3.0, Unit::Count)));
    check_of("2.5", Kind::Count, Unit::Count, Err(NotWhole));
    check_of("½", Kind::Count, Unit::Count, Err(NotWhole));
}

fn half_of(unit: Unit) -> Result<(f64, Unit), ParseError> {
    if unit == Unit::Count { Err(NotWhole) } else { Ok((0.5, unit)) }
}

fn check(text: &str, expect: Result<f64, ParseError>) {
    check_unit(text, expect.map(|value| (value, Unit::Metre)));
}

fn check_unit(text: &str, expect: Result<(f64, Unit), ParseError>) {
    check_of(text, Kind::Length, Unit::Metre, expect);
}

fn check_of(text: &str, kind: Kind, default: Unit, expect: Result<(f64, Unit), ParseError>) {
    let expect = expect.map(|(value, unit)| Measure::new(value, unit));
    assert_eq!(parse(text, kind, default), expect, "{text:?}");
}

#[cfg(not(target_family = "wasm"))]
fn check_nearly(text: &str, expect: f64) {
    assert!(is_nearly(text, expect), "{text:?}");
}

/// Very large and very small numbers may be off in the last places.
fn is_nearly(text: &str, expect: f64) -> bool {
    let value = parse(text, Kind::Length, Unit::Metre).map(Measure::value);
    value.is_ok_and(|value| (value - expect).abs() <= 1e-14 * expect.abs())
}
