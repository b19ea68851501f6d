use super::*;

fn check(amount: f64, unit: Unit, expect: &str) {
    assert_eq!(text(amount, unit).replace([NO_BREAK, NARROW], " "), expect, "{amount:?} {unit:?}");
}

#[test]
fn digits_suit_the_unit() {
    check(68.4, Unit::CubicMetrePerHour, "68.4 m³/h");
    check(70.0, Unit::CubicMetrePerHour, "70 m³/h");
    check(19.04, Unit::LitrePerSecond, "19 L/s");
    check(877.3, Unit::PartPerMillion, "877 ppm");
    check(2.046, Unit::MetrePerSecond, "2.05 m/s");
    check(11.4, Unit::Millimetre, "11 mm");
    check(9.4, Unit::Metre, "9.4 m");
    check(9.456, Unit::Metre, "9.46 m");
    check(12.5, Unit::Foot, "12.5 ft");
    check(71.68, Unit::SquareCentimetre, "71.7 cm²");
    check(0.8, Unit::PerHour, "0.8 1/h");
    check(-0.002, Unit::Ratio, "−0.002");
    check(2.0 / 3.0, Unit::Ratio, "0.667");
    check(4.0, Unit::Count, "4");
    check(45.0, Unit::Degree, "45°");
}

#[test]
fn halves_go_up_and_zeros_at_the_end_go_away() {
    check(0.5, Unit::Millimetre, "1 mm");
    check(2.5, Unit::Millimetre, "3 mm");
    check(-2.5, Unit::Millimetre, "−3 mm");
    check(100.0, Unit::Millimetre, "100 mm");
    check(30.04, Unit::CubicMetrePerHour, "30 m³/h");
}

#[test]
fn one_tube_is_not_many() {
    assert_eq!([1, 2].map(tubes), ["1\u{a0}tube", "2\u{a0}tubes"]);
}

#[test]
fn thousands_are_parted_from_ten_thousand() {
    check(9_999.0, Unit::PartPerMillion, "9999 ppm");
    check(9_999.96, Unit::CubicMetrePerHour, "10 000 m³/h");
    check(10_000.0, Unit::PartPerMillion, "10 000 ppm");
    check(21_527.8, Unit::SquareFoot, "21 528 ft²");
    check(1_234_567.0, Unit::Millimetre, "1 234 567 mm");
    check(-123_456.0, Unit::Pascal, "−123 456 Pa");
}

#[test]
fn there_is_no_minus_nought_and_no_text_for_what_is_no_number() {
    check(-0.0, Unit::CubicMetrePerHour, "0 m³/h");
    check(-0.04, Unit::CubicMetrePerHour, "0 m³/h");
    check([].iter().sum::<f64>(), Unit::SquareMetre, "0 m²");
    for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        check(bad, Unit::Metre, "– m");
    }
    assert!(!in_display(f64::MAX, Unit::Foot, Display::CubicMetres).number.contains("inf"));
}

#[test]
fn every_unit_shows_every_size_cleanly() {
    for unit in Unit::all() {
        for amount in [0.0, 1e-300, 0.005, 0.05, 0.5, 1.0, 9.999, 123.456, 9_999.99, 1e6, 1e15, -1.0] {
            let shown = text(amount, unit);
            crate::prose::is_clean(&shown);
            assert!(!shown.starts_with("−0") || shown.starts_with("−0."), "{shown}");
        }
    }
}

#[test]
fn the_page_shows_its_own_units() {
    let show = |shown: Shown| shown.to_string().replace([NO_BREAK, NARROW], " ");
    let flow = |display| show(super::flow(Flow::from_ls(10.0), display));
    assert_eq!(Display::ALL.map(flow), ["36 m³/h", "10 L/s", "21.2 cfm"]);
    assert_eq!(show(area(Area::from_m2(148.0), Display::CubicFeet)), "1593.1 ft²");
    assert_eq!(show(length(Length::from_m(3.81), Display::CubicFeet)), "12.5 ft");
    assert_eq!(show(small_length(Length::from_mm(25.4), Display::CubicFeet)), "1 in");
    assert_eq!(show(small_length(Length::from_mm(25.4), Display::Litres)), "25 mm");
    assert_eq!(show(velocity(Velocity::from_ms(2.54), Display::CubicFeet)), "500 ft/min");
    assert_eq!(show(opening(Area::from_cm2(64.516), Display::CubicFeet)), "10 in²");
}

#[test]
fn a_unit_stays_of_its_kind_in_every_display() {
    for unit in Unit::all() {
        for display in Display::ALL {
            let shown = unit_in(unit, display);
            assert_eq!(shown.kind(), unit.kind());
            assert_eq!(unit_in(shown, display), shown, "{unit:?} {display:?}");
        }
    }
}

#[test]
fn what_is_shown_can_be_typed_again() {
    for unit in [Unit::Metre, Unit::SquareFoot, Unit::CubicMetrePerHour, Unit::Pascal, Unit::Percent] {
        for amount in [-12.5, 0.0, 3.2, 12_345.0, 1_234_567.0] {
            let read = airtally::quantity::parse(&text(amount, unit), unit.kind(), unit).map(|m| m.value());
            assert_eq!(read, Ok(amount), "{unit:?}");
        }
    }
}
