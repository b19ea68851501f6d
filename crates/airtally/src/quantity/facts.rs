//! What is known of each unit: one row each, in the order of [`Unit`].
//!
//! A factor is `times / over` of the first unit of the kind, in whole numbers, so that no factor is rounded.
//!
//! Source: International System of Units (SI); the international foot (0.3048 m) and inch (0.0254 m) as agreed on
//! 1 July 1959, exact. The inch of water is a convention, not a definition: see its row.

use super::unit::{Kind, Unit};

/// What is known of a unit.
pub(super) struct Facts {
    pub(super) unit: Unit,
    pub(super) kind: Kind,
    pub(super) id: &'static str,
    pub(super) symbol: &'static str,
    pub(super) times: u64,
    pub(super) over: u64,
    /// The reading that stands for nought of the first unit of the kind.
    pub(super) zero: f64,
    /// Lower case, plain powers; a space stands for any or no space or full stop.
    pub(super) spellings: &'static [&'static str],
}

pub(super) const TABLE: [Facts; 39] = [
    // The unit the calculation works in.
    row(
        Unit::CubicMetrePerHour,
        Kind::Flow,
        "m3/h",
        "m³/h",
        (1, 1),
        &["m3/h", "cbm/h", "cmh", "m3/hr", "cubic metres per hour", "cubic meters per hour"],
    ),
    // 1 L = 0.001 m³, 1 h = 3600 s: exact (SI).
    row(
        Unit::LitrePerSecond,
        Kind::Flow,
        "L/s",
        "L/s",
        (18, 5),
        &["l/s", "lps", "l/sec", "ltr/s", "litres per second", "liters per second"],
    ),
    // 0.3048³ · 60 = 1.69901079552: exact (foot of 1959).
    row(
        Unit::CubicFootPerMinute,
        Kind::Flow,
        "cfm",
        "cfm",
        (165_919_023, 97_656_250),
        &["cfm", "ft3/min", "cu ft/min", "cubic feet per minute"],
    ),
    // Exact (SI).
    row(
        Unit::LitrePerHour,
        Kind::Flow,
        "L/h",
        "L/h",
        (1, 1000),
        &["l/h", "lph", "l/hr", "litres per hour", "liters per hour"],
    ),
    // The unit the calculation works in.
    row(
        Unit::SquareMetre,
        Kind::Area,
        "m2",
        "m²",
        (1, 1),
        &["m2", "sq m", "qm", "square metres", "square meters", "square metre", "square meter"],
    ),
    // 0.3048² = 0.09290304: exact (foot of 1959).
    row(
        Unit::SquareFoot,
        Kind::Area,
        "ft2",
        "ft²",
        (145_161, 1_562_500),
        &["ft2", "sq ft", "sf", "square feet", "square foot"],
    ),
    // Exact (SI).
    row(Unit::SquareCentimetre, Kind::Area, "cm2", "cm²", (1, 10_000), &["cm2", "sq cm"]),
    // Exact (SI).
    row(Unit::SquareMillimetre, Kind::Area, "mm2", "mm²", (1, 1_000_000), &["mm2", "sq mm"]),
    // 0.0254² = 0.00064516: exact (inch of 1959).
    row(
        Unit::SquareInch,
        Kind::Area,
        "in2",
        "in²",
        (16_129, 25_000_000),
        &["in2", "sq in", "square inches", "square inch"],
    ),
    // The unit the calculation works in.
    row(Unit::Metre, Kind::Length, "m", "m", (1, 1), &["m", "metre", "metres", "meter", "meters"]),
    // Exact (SI).
    row(
        Unit::Centimetre,
        Kind::Length,
        "cm",
        "cm",
        (1, 100),
        &["cm", "centimetre", "centimetres", "centimeter", "centimeters"],
    ),
    // Exact (SI).
    row(
        Unit::Millimetre,
        Kind::Length,
        "mm",
        "mm",
        (1, 1000),
        &["mm", "millimetre", "millimetres", "millimeter", "millimeters"],
    ),
    // 0.3048: exact (foot of 1959).
    row(Unit::Foot, Kind::Length, "ft", "ft", (381, 1250), &["ft", "foot", "feet", "'"]),
    // 0.0254: exact (inch of 1959).
    row(Unit::Inch, Kind::Length, "in", "in", (127, 5000), &["in", "inch", "inches", "\"", "''"]),
    // The unit the calculation works in.
    row(Unit::CubicMetre, Kind::Volume, "m3", "m³", (1, 1), &["m3", "cbm", "cu m", "cubic metres", "cubic meters"]),
    // 0.3048³ = 0.028316846592: exact (foot of 1959).
    row(
        Unit::CubicFoot,
        Kind::Volume,
        "ft3",
        "ft³",
        (55_306_341, 1_953_125_000),
        &["ft3", "cu ft", "cubic feet", "cubic foot"],
    ),
    // The unit the calculation works in.
    row(Unit::MetrePerSecond, Kind::Velocity, "m/s", "m/s", (1, 1), &["m/s", "mps", "m/sec"]),
    // 0.3048 / 60 = 0.00508: exact (foot of 1959).
    row(Unit::FootPerMinute, Kind::Velocity, "ft/min", "ft/min", (127, 25_000), &["ft/min", "fpm", "feet per minute"]),
    // The unit the calculation works in.
    row(Unit::Pascal, Kind::Pressure, "Pa", "Pa", (1, 1), &["pa", "pascal", "pascals"]),
    // 248.84 Pa: convention, water at 60 °F; other conventions differ by up to 0.1 %.
    row(
        Unit::InchWater,
        Kind::Pressure,
        "inwc",
        "in w.c.",
        (6221, 25),
        &[
            "in wc",
            "in w c",
            "in wg",
            "in w g",
            "in h2o",
            "inch wc",
            "inch w c",
            "inch wg",
            "inch w g",
            "inches wc",
            "inches w c",
            "iwc",
            "iwg",
            "inches of water",
            "\" wc",
            "\" w c",
            "\" wg",
            "\" w g",
        ],
    ),
    // The unit the calculation works in.
    row(Unit::Celsius, Kind::Temperature, "degC", "°C", (1, 1), &["° c", "c", "deg c", "degrees c", "celsius", "℃"]),
    // (°F − 32) · 5 / 9: exact by definition.
    row(
        Unit::Fahrenheit,
        Kind::Temperature,
        "degF",
        "°F",
        (5, 9),
        &["° f", "f", "deg f", "degrees f", "fahrenheit", "℉"],
    )
    .with_zero(32.0),
    // The unit the calculation works in.
    row(Unit::PerHour, Kind::AirChange, "1/h", "1/h", (1, 1), &["1/h", "/h", "ach", "h-1", "1/hr", "/hr", "per hour"]),
    // The unit the calculation works in.
    row(Unit::PartPerMillion, Kind::Concentration, "ppm", "ppm", (1, 1), &["ppm"]),
    // The unit the calculation works in.
    row(Unit::Hour, Kind::Duration, "h", "h", (1, 1), &["h", "hr", "hrs", "hour", "hours"]),
    // Exact.
    row(Unit::Minute, Kind::Duration, "min", "min", (1, 60), &["min", "mins", "minute", "minutes"]),
    // Exact.
    row(Unit::Second, Kind::Duration, "s", "s", (1, 3600), &["s", "sec", "secs", "second", "seconds"]),
    // Exact.
    row(Unit::Day, Kind::Duration, "d", "d", (24, 1), &["d", "day", "days"]),
    // The unit the calculation works in.
    row(Unit::Degree, Kind::Angle, "deg", "°", (1, 1), &["°", "deg", "degree", "degrees"]),
    // The unit the calculation works in.
    row(Unit::Count, Kind::Count, "count", "", (1, 1), &["pcs", "people", "person", "persons"]),
    // The unit the calculation works in.
    row(Unit::Ratio, Kind::Ratio, "ratio", "", (1, 1), &[]),
    // Exact.
    row(Unit::Percent, Kind::Ratio, "%", "%", (1, 100), &["%", "percent", "pct"]),
    // The unit the calculation works in.
    row(
        Unit::CubicMetrePerHourSquareMetre,
        Kind::FlowPerArea,
        "m3/(h.m2)",
        "m³/(h·m²)",
        (1, 1),
        &["m3/(h m2)", "m3/h/m2", "m3/h m2"],
    ),
    // Exact (SI).
    row(
        Unit::LitrePerSecondSquareMetre,
        Kind::FlowPerArea,
        "L/(s.m2)",
        "L/(s·m²)",
        (18, 5),
        &["l/(s m2)", "l/s/m2", "l/s m2"],
    ),
    // 0.3048 · 60 = 18.288: exact (foot of 1959).
    row(
        Unit::CubicFootPerMinuteSquareFoot,
        Kind::FlowPerArea,
        "cfm/ft2",
        "cfm/ft²",
        (2286, 125),
        &["cfm/ft2", "cfm/sq ft", "cfm/sf"],
    ),
    // The unit the calculation works in.
    row(Unit::Watt, Kind::Power, "W", "W", (1, 1), &["w", "watt", "watts"]),
    // The unit the calculation works in.
    row(Unit::Money, Kind::Price, "money", "", (1, 1), &[]),
    // The unit the calculation works in.
    row(Unit::DecibelA, Kind::Sound, "dBA", "dB(A)", (1, 1), &["db(a)", "dba"]),
    // The unit the calculation works in.
    row(Unit::Decibel, Kind::Damping, "dB", "dB", (1, 1), &["db"]),
];

const fn row(
    unit: Unit,
    kind: Kind,
    id: &'static str,
    symbol: &'static str,
    (times, over): (u64, u64),
    spellings: &'static [&'static str],
) -> Facts {
    Facts { unit, kind, id, symbol, times, over, zero: 0.0, spellings }
}

impl Facts {
    const fn with_zero(self, zero: f64) -> Self {
        Self { zero, ..self }
    }
}

/// Rows stand at the place of their unit, or the crate does not build.
const _: () = {
    let mut place = 0;
    while place < TABLE.len() {
        assert!(TABLE[place].unit as usize == place);
        place += 1;
    }
};
