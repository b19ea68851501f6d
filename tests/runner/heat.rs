//! Cases about water in air and about cold ducts. What has no typed unit reads as a `ratio`.

use super::call::{as_flow, as_length, as_pressure, as_temperature};
use super::physics::{bare, measure};
use super::read::Found;
use airtally::air::{self, Air};
use airtally::cold::{ColdDuct, Film, Jacket, outer};
use airtally::quantity::{Pressure, Temperature};
use serde::Deserialize;

/// An equation with what is put into it.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub enum Heat {
    /// Reads as `ratio` in kg/kg, `enthalpy` in J/kg, `wet-bulb`.
    Moist { temperature: String, humidity: f64, pressure: String },
    /// How heat goes into a jacket: reads as `matt`, `bright`, in W/(m²·K).
    Jacket { diameter: String, colder: f64, room: String },
    /// λ 0.035 W/(m·K), outer coefficient 8 W/(m²·K): reads as `least`.
    Insulation { bore: String, inside: String, room: String, humidity: f64 },
    /// The same insulation around warm air in the cold, inner coefficient 8 W/(m²·K): reads as `least`.
    Within { bore: String, inside: String, loft: String, humidity: f64 },
    /// The same insulation, so thick: reads as `per-metre` in W/(m·K), and as `warmer` in K after a length, with the density of
    /// its own air, or as `warmer-at-rated-density`.
    Warming { bore: String, thickness: String, inside: String, room: String, length: String, flow: String },
}

const CONDUCTIVITY: f64 = 0.035;
const OUTER: f64 = 8.0;
const INNER: f64 = 8.0;

impl Heat {
    pub fn read(&self, what: &str) -> Found {
        match self {
            Self::Moist { temperature, humidity, pressure } => {
                of_moist(as_temperature(temperature), *humidity, as_pressure(pressure), what)
            }
            Self::Jacket { diameter, colder, room } => {
                let jacket = match what {
                    "matt" => Jacket::Matt,
                    "bright" => Jacket::Bright,
                    _ => panic!("no jacket is \"{what}\""),
                };
                bare(Some(outer(as_length(diameter), *colder, as_temperature(room), jacket)))
            }
            Self::Insulation { bore, inside, room, humidity } => {
                assert_eq!(what, "least");
                measure(duct(bore, inside, room).least(*humidity, |_| Film::steady(OUTER)))
            }
            Self::Within { bore, inside, loft, humidity } => {
                assert_eq!(what, "least");
                let tube = ColdDuct { inner: INNER, ..duct(bore, inside, loft) };
                measure(tube.least_within(*humidity, |_| Film::steady(OUTER)))
            }
            Self::Warming { bore, thickness, inside, room, length, flow } => {
                let duct = duct(bore, inside, room);
                let thickness = as_length(thickness);
                let own = || Air::at(duct.inside, 0.8, Pressure::from_pa(101_325.0)).expect("air");
                let warmer = |air: Air| {
                    let after = duct.after(as_length(length), thickness, OUTER, as_flow(flow), air);
                    bare(Some(after.as_celsius() - duct.inside.as_celsius()))
                };
                match what {
                    "per-metre" => bare(Some(duct.per_metre(thickness, OUTER))),
                    "warmer" => warmer(own()),
                    "warmer-at-rated-density" => warmer(Air::STANDARD),
                    _ => panic!("nothing reads as \"{what}\" of a duct that warms up"),
                }
            }
        }
    }
}

fn of_moist(temperature: Temperature, humidity: f64, pressure: Pressure, what: &str) -> Found {
    let vapour = air::saturation(temperature).expect("a temperature with a vapour pressure") * humidity;
    let ratio = air::humidity_ratio(vapour, pressure);
    match what {
        "ratio" => bare(ratio),
        "enthalpy" => bare(ratio.map(|ratio| air::enthalpy(temperature, ratio))),
        "wet-bulb" => measure(air::wet_bulb(temperature, vapour, pressure)),
        _ => panic!("nothing reads as \"{what}\" of moist air"),
    }
}

fn duct(bore: &str, inside: &str, room: &str) -> ColdDuct {
    ColdDuct {
        bore: as_length(bore),
        inside: as_temperature(inside),
        room: as_temperature(room),
        conductivity: CONDUCTIVITY,
        inner: f64::INFINITY,
    }
}
