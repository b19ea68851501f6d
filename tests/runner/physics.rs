//! Cases about moist air, one duct or a small network. What has no unit, or one that nobody types, reads as a `ratio`.

use super::call::{as_area, as_flow, as_length, as_pressure, as_temperature};
use super::fitting::{Fitting, tightness};
use super::read::Found;
use airtally::air::{self, Air};
use airtally::duct::band;
use airtally::duct::bend::{self, Bend};
use airtally::duct::roughness::Surface;
use airtally::duct::section::Section;
use airtally::duct::terminal::PowerLaw;
use airtally::duct::{change, friction, restrictor};
use airtally::network::{Duct, Law};
use airtally::quantity::{Flow, Length, Measure, Pressure, Temperature, Unit};
use serde::Deserialize;

/// An equation with what is put into it.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub enum Physics {
    /// Reads as `pressure`.
    Height { height: String },
    /// Reads as `density` in kg/m³, `viscosity` in µPa·s, `saturation`, `dew-point`.
    Air { temperature: String, humidity: f64, pressure: String },
    /// Reads as `factor`.
    Friction { reynolds: f64, roughness: f64 },
    /// Reads as `area`, `hydraulic-bore`.
    Section { shape: String, wide: String, high: String },
    /// A metre of duct in air of 20 °C and 50 % at sea level: reads as `pressure`, and against the same of a round bore, say
    /// `over 75 mm`.
    Metre { shape: String, wide: String, high: String, roughness: String, flow: String },
    /// A metre of round tube of two walls: reads as `jumps`, whether it may creep or be turbulent.
    Band { bore: String, flow: String },
    /// Reads as `local`, and with the friction of its arc as `whole`.
    Bend { angle: f64, radius: f64, reynolds: f64, roughness: f64 },
    /// Round ducts: reads as `widening`, `narrowing`.
    Change { narrow: String, wide: String },
    /// A thin plate in air of 20 °C and 50 %: reads as `loss`, and as `pressure` at a flow.
    Plate { hole: String, bore: String, flow: String },
    /// Reads as `hole`.
    HoleFor { pressure: String, flow: String, bore: String },
    /// Measured points in m³/h and Pa: reads as `exponent`, `scale`, and as `pressure` at a flow.
    Valve { points: Vec<(f64, f64)>, flow: String },
    /// Reads as `leak`.
    Loses { class: String, wall: String, pressure: String },
    /// What stands in a duct's way.
    Fitting(Fitting),
}

impl Physics {
    pub fn read(&self, what: &str) -> Found {
        match (self, what) {
            (Self::Height { height }, "pressure") => measure(air::standard_pressure(as_length(height))),
            (Self::Air { temperature, humidity, pressure }, what) => {
                of_air(as_temperature(temperature), *humidity, as_pressure(pressure), what)
            }
            (Self::Friction { reynolds, roughness }, "factor") => {
                bare(Some(friction::friction(*reynolds, *roughness).factor))
            }
            (Self::Section { shape, wide, high }, "area") => measure(Some(section(shape, wide, high).area())),
            (Self::Section { shape, wide, high }, "hydraulic-bore") => {
                measure(Some(section(shape, wide, high).hydraulic_bore()))
            }
            (Self::Metre { shape, wide, high, roughness, flow }, what) => {
                let of = |section| Law::default().duct(a_metre(section, as_length(roughness))).pressure(as_flow(flow));
                let own = of(section(shape, wide, high));
                match what.strip_prefix("over ") {
                    Some(bore) => bare(Some(own.as_pa() / of(Section::Round(as_length(bore))).as_pa())),
                    None => measure((what == "pressure").then_some(own)),
                }
            }
            (Self::Band { bore, flow }, "jumps") => {
                let roughness = Surface::TwoWalls.roughness();
                let band = band::per_metre(as_flow(flow), as_length(bore), roughness, usual_air());
                Found::Text(if band.expect("a tube").jumps { "yes" } else { "no" }.to_owned())
            }
            (Self::Bend { angle, radius, reynolds, roughness }, what) => {
                let wall = friction::friction(*reynolds, *roughness).factor;
                of_bend(Bend { angle: *angle, radius: *radius }, bend::slow(*reynolds), wall, what)
            }
            (Self::Change { narrow, wide }, what) => {
                let (narrow, wide) = (as_length(narrow).section(), as_length(wide).section());
                match what {
                    "widening" => bare(change::widening(narrow, wide)),
                    "narrowing" => bare(change::narrowing(narrow, wide)),
                    _ => panic!("nothing reads as \"{what}\" where a duct changes"),
                }
            }
            (Self::Plate { hole, bore, flow }, what) => of_plate(as_length(hole), as_length(bore), as_flow(flow), what),
            (Self::HoleFor { pressure, flow, bore }, "hole") => {
                measure(restrictor::hole_for(as_pressure(pressure), as_flow(flow), as_length(bore), usual_air()))
            }
            (Self::Valve { points, flow }, what) => of_valve(points, as_flow(flow), what),
            (Self::Loses { class, wall, pressure }, "leak") => {
                measure(Some(tightness(class).leak(as_area(wall), as_pressure(pressure))))
            }
            (Self::Fitting(fitting), what) => fitting.read(what),
            _ => panic!("nothing reads as \"{what}\" here"),
        }
    }
}

fn of_air(temperature: Temperature, humidity: f64, pressure: Pressure, what: &str) -> Found {
    let air = Air::at(temperature, humidity, pressure);
    let saturation = air::saturation(temperature);
    match what {
        "density" => bare(air.map(Air::density)),
        "viscosity" => bare(air.map(|air| air.viscosity() * 1e6)),
        "saturation" => measure(saturation),
        "dew-point" => measure(saturation.and_then(|saturation| air::dew_point(saturation * humidity))),
        _ => panic!("nothing reads as \"{what}\" of air"),
    }
}

pub(super) fn section(shape: &str, wide: &str, high: &str) -> Section {
    let (wide, high) = (as_length(wide), as_length(high));
    match shape {
        "round" => Section::Round(wide),
        "oval" => Section::Oval { wide, high },
        "rectangle" => Section::Rectangle { wide, high },
        _ => panic!("no shape is called \"{shape}\""),
    }
}

fn a_metre(section: Section, roughness: Length) -> Duct<'static> {
    Duct { section, roughness, length: Length::from_m(1.0), bends: &[], fittings: 0.0, air: usual_air() }
}

fn of_bend(bend: Bend, slow: f64, wall: f64, what: &str) -> Found {
    let loss = bend::loss(bend);
    match what {
        "local" => bare(loss.map(|loss| loss.shape * slow)),
        "whole" => bare(loss.map(|loss| loss.shape * slow + loss.arc * wall)),
        _ => panic!("nothing reads as \"{what}\" of a bend"),
    }
}

fn of_plate(hole: Length, bore: Length, flow: Flow, what: &str) -> Found {
    let loss = restrictor::thin_plate(hole.as_m() / bore.as_m());
    if what == "loss" {
        return bare(loss);
    }
    let speed = (flow / bore.section()).as_ms();
    measure(loss.map(|loss| Pressure::from_pa(loss * usual_air().density() * speed * speed / 2.0)))
}

fn of_valve(points: &[(f64, f64)], flow: Flow, what: &str) -> Found {
    let points = points.iter().map(|(q, p)| (Flow::from_m3h(*q), Pressure::from_pa(*p)));
    let law = PowerLaw::through(&points.collect::<Vec<_>>());
    match what {
        "exponent" => bare(law.map(|law| law.exponent)),
        "scale" => bare(law.map(|law| law.scale)),
        "pressure" => measure(law.map(|law| law.pressure(flow))),
        _ => panic!("nothing reads as \"{what}\" of a valve"),
    }
}

/// 20 °C, 50 %, at sea level.
fn usual_air() -> Air {
    Air::at(Temperature::from_celsius(20.0), 0.5, Pressure::from_pa(101_325.0)).expect("air")
}

pub(super) fn measure(found: Option<impl Into<Measure>>) -> Found {
    found.map_or(Found::Nothing, |found| Found::Number(found.into()))
}

pub(super) fn bare(number: Option<f64>) -> Found {
    measure(number.map(|number| Measure::new(number, Unit::Ratio)))
}
