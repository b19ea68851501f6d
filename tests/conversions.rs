//! Every conversion between two units against the reference library `uom` (and so against the SI brochure and the
//! tables of NIST Special Publication 811, where its factors come from).
#![cfg(not(target_family = "wasm"))]

use airtally::quantity::{Kind, Unit, convert};
use uom::si::{
    area::{square_centimeter, square_foot, square_inch, square_meter, square_millimeter},
    f64::{Area, Length, Pressure, Ratio, ThermodynamicTemperature, Time, Velocity, Volume, VolumeRate},
    length::{centimeter, foot, inch, meter, millimeter},
    pressure::{inch_of_water_60, pascal},
    ratio::{percent, ratio},
    thermodynamic_temperature::{degree_celsius, degree_fahrenheit, kelvin},
    time::{day, hour, minute, second},
    velocity::{foot_per_minute, meter_per_second},
    volume::{cubic_foot, cubic_meter, liter},
    volume_rate::{cubic_foot_per_minute, cubic_meter_per_hour, cubic_meter_per_second, liter_per_second},
};

/// Ten roundings of half a last place are near 1e-15; the library's own constants are printed to 13 or more places.
const TOLERANCE: f64 = 1e-12;

/// The library prints the cubic foot to seven places (0.028 316 85); half the last place is 1.8e-7 of it.
const SEVEN_PLACES: f64 = 1.8e-7;

/// Temperatures pass through kelvins there, so an error is relative to the kelvins, not to degrees near nought.
const ICE_POINT: f64 = 273.15;

const VALUES: [f64; 7] = [-40.0, 0.001, 0.5, 1.0, 37.5, 1500.0, 1e6];

#[test]
fn every_pair_of_units_agrees_with_the_library() {
    let mut pairs = 0;
    for from in Unit::all() {
        for to in from.kind().units().filter(|to| *to != from) {
            let to_base = library(from).expect("a unit with a neighbour is in the library").0;
            let from_base = library(to).expect("a unit with a neighbour is in the library").1;
            for value in VALUES {
                check(value, from, to, from_base(to_base(value)), TOLERANCE);
            }
            pairs += 1;
        }
    }
    assert!(pairs >= 80, "only {pairs} pairs of units were compared");
}

#[test]
fn the_printed_cubic_foot_agrees_to_its_seven_places() {
    for value in VALUES {
        let volume = Volume::new::<cubic_foot>(value).get::<cubic_meter>();
        check(value, Unit::CubicFoot, Unit::CubicMetre, volume, SEVEN_PLACES);
        let flow = VolumeRate::new::<cubic_foot_per_minute>(value).get::<cubic_meter_per_hour>();
        check(value, Unit::CubicFootPerMinute, Unit::CubicMetrePerHour, flow, SEVEN_PLACES);
    }
}

fn check(value: f64, from: Unit, to: Unit, expect: f64, tolerance: f64) {
    let scale = if from.kind() == Kind::Temperature { expect.abs() + ICE_POINT } else { expect.abs() };
    let answer = convert(value, from, to).expect("units of one kind convert");
    let error = (answer - expect).abs() / scale;
    assert!(error <= tolerance, "{value} {from:?} is {expect} {to:?} there and {answer} here ({error:e})");
}

/// From a number in a unit to the library's number in its base unit, and back.
type Ways = (fn(f64) -> f64, fn(f64) -> f64);

macro_rules! ways {
    ($quantity:ident, $base:ident, $unit:ident) => {
        (|value| $quantity::new::<$unit>(value).get::<$base>(), |base| $quantity::new::<$base>(base).get::<$unit>())
    };
}

fn library(unit: Unit) -> Option<Ways> {
    flow(unit).or_else(|| length_or_area(unit)).or_else(|| flow_per_area(unit)).or_else(|| other(unit))
}

fn flow(unit: Unit) -> Option<Ways> {
    Some(match unit {
        Unit::CubicMetrePerHour => ways!(VolumeRate, cubic_meter_per_second, cubic_meter_per_hour),
        Unit::LitrePerSecond => ways!(VolumeRate, cubic_meter_per_second, liter_per_second),
        Unit::CubicFootPerMinute => (
            |value| (value * exact_cubic_foot() / Time::new::<minute>(1.0)).get::<cubic_meter_per_second>(),
            |base| {
                let volume = VolumeRate::new::<cubic_meter_per_second>(base) * Time::new::<minute>(1.0);
                (volume / exact_cubic_foot()).get::<ratio>()
            },
        ),
        Unit::LitrePerHour => (
            |value| (Volume::new::<liter>(value) / Time::new::<hour>(1.0)).get::<cubic_meter_per_second>(),
            |base| (VolumeRate::new::<cubic_meter_per_second>(base) * Time::new::<hour>(1.0)).get::<liter>(),
        ),
        _ => return None,
    })
}

/// A foot cubed by the library: its own cubic foot is printed to seven places only.
fn exact_cubic_foot() -> Volume {
    let side = Length::new::<foot>(1.0);
    side * side * side
}

fn length_or_area(unit: Unit) -> Option<Ways> {
    Some(match unit {
        Unit::Metre => ways!(Length, meter, meter),
        Unit::Centimetre => ways!(Length, meter, centimeter),
        Unit::Millimetre => ways!(Length, meter, millimeter),
        Unit::Foot => ways!(Length, meter, foot),
        Unit::Inch => ways!(Length, meter, inch),
        Unit::SquareMetre => ways!(Area, square_meter, square_meter),
        Unit::SquareFoot => ways!(Area, square_meter, square_foot),
        Unit::SquareCentimetre => ways!(Area, square_meter, square_centimeter),
        Unit::SquareMillimetre => ways!(Area, square_meter, square_millimeter),
        Unit::SquareInch => ways!(Area, square_meter, square_inch),
        Unit::CubicMetre => ways!(Volume, cubic_meter, cubic_meter),
        Unit::CubicFoot => (
            |value| (value * exact_cubic_foot()).get::<cubic_meter>(),
            |base| (Volume::new::<cubic_meter>(base) / exact_cubic_foot()).get::<ratio>(),
        ),
        _ => return None,
    })
}

/// Flow per area is a speed.
fn flow_per_area(unit: Unit) -> Option<Ways> {
    Some(match unit {
        Unit::CubicMetrePerHourSquareMetre => (
            |value| (VolumeRate::new::<cubic_meter_per_hour>(value) / one_square_metre()).get::<meter_per_second>(),
            |base| (Velocity::new::<meter_per_second>(base) * one_square_metre()).get::<cubic_meter_per_hour>(),
        ),
        Unit::LitrePerSecondSquareMetre => (
            |value| (VolumeRate::new::<liter_per_second>(value) / one_square_metre()).get::<meter_per_second>(),
            |base| (Velocity::new::<meter_per_second>(base) * one_square_metre()).get::<liter_per_second>(),
        ),
        Unit::CubicFootPerMinuteSquareFoot => ways!(Velocity, meter_per_second, foot_per_minute),
        _ => return None,
    })
}

fn one_square_metre() -> Area {
    Area::new::<square_meter>(1.0)
}

fn other(unit: Unit) -> Option<Ways> {
    Some(match unit {
        Unit::MetrePerSecond => ways!(Velocity, meter_per_second, meter_per_second),
        Unit::FootPerMinute => ways!(Velocity, meter_per_second, foot_per_minute),
        Unit::Pascal => ways!(Pressure, pascal, pascal),
        Unit::InchWater => ways!(Pressure, pascal, inch_of_water_60),
        Unit::Celsius => ways!(ThermodynamicTemperature, kelvin, degree_celsius),
        Unit::Fahrenheit => ways!(ThermodynamicTemperature, kelvin, degree_fahrenheit),
        Unit::Hour => ways!(Time, second, hour),
        Unit::Minute => ways!(Time, second, minute),
        Unit::Second => ways!(Time, second, second),
        Unit::Day => ways!(Time, second, day),
        Unit::Ratio => ways!(Ratio, ratio, ratio),
        Unit::Percent => ways!(Ratio, ratio, percent),
        _ => return None,
    })
}
