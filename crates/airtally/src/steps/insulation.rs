//! Cold ducts: how thick their insulation must be, and how far the air in them warms up.

use super::making::Making;
use super::{Number, NumberName as N, StepRule as R};
use crate::air::{self, Air};
use crate::cold::{self, ColdDuct, Film, Jacket};
use crate::formula::Formula;
use crate::given::GivenId as G;
use crate::quantity::{Length, Temperature, Unit, Velocity};
use crate::rules::{self, Level};
use crate::source::Source;
use crate::working::{Origin, Term};

static SWEATING: Source = Source::memory("ISO 12241", "2022", "surface coefficient after Churchill and Chu 1975");
static INSIDE: Source = Source::memory("ISO 12241", "2022", "inner coefficient after Gnielinski 1976");
static WARMING: Source = Source::memory("ISO 12241", "2022", "energy balance along a duct");

/// The fall of the exhaust duct, and what goes around all cold ones.
pub(super) fn insulate(making: &mut Making) {
    making.step_by(R::SlopeExhaust, G::CoreFall, [making.given(N::Fall, G::CoreFall)]);
    let [matt, bright] = [Jacket::Matt, Jacket::Bright].map(|jacket| least(making, jacket));
    let inside = least_around_tubes(making);
    let planned = making.given(N::Thickness, G::CoreInsulation);
    let warmed = warmed(making);
    making.step_by(R::InsulateColdDucts, G::CoreInsulation, [planned, matt, bright, inside, warmed]);
}

fn temperature(making: &Making, id: G) -> Temperature {
    Temperature::of(making.parts.givens.measure(id)).unwrap_or(Temperature::from_celsius(0.0))
}

/// The duct from outdoors to the unit, in the house.
fn outdoor_duct(making: &Making) -> ColdDuct {
    ColdDuct {
        bore: making.length(G::ColdDuct),
        inside: temperature(making, G::OutdoorTemperature),
        room: temperature(making, G::IndoorTemperature),
        conductivity: making.parts.givens.value(G::Conductivity),
        inner: f64::INFINITY,
    }
}

/// What keeps the jacket of a cold duct above the dew point of the room.
fn least(making: &mut Making, jacket: Jacket) -> Number {
    let (givens, duct) = (making.parts.givens, outdoor_duct(making));
    let least = duct.least(givens.value(G::IndoorHumidity), |colder| Film::of(colder, duct.room, jacket));
    let name = if jacket == Jacket::Bright { N::SweatsBright } else { N::SweatsMatt };
    let Some(least) = least else { return unknown(name, Unit::Millimetre) };
    let terms = [
        givens.term("T_i", G::OutdoorTemperature),
        givens.term("T_a", G::IndoorTemperature),
        givens.term("φ", G::IndoorHumidity),
        givens.term("d", G::ColdDuct),
        givens.term("λ", G::Conductivity),
    ];
    making.line((name, Formula::LeastInsulation), (least.as_mm(), Unit::Millimetre), &SWEATING, &terms)
}

/// What keeps the inside of an extract tube in a loft as cold as outdoors above the dew point of its air. None where it never
/// sweats.
fn least_around_tubes(making: &mut Making) -> Number {
    let (givens, runs) = (making.parts.givens, making.parts.runs);
    let (inside, room) = (temperature(making, G::IndoorTemperature), temperature(making, G::OutdoorTemperature));
    let humidity = givens.value(G::IndoorHumidity);
    let speeds = runs.side(rules::Air::Extract).map(|run| run.speed_normal.value);
    let slowest = speeds.filter(|speed| *speed > Velocity::ZERO).reduce(Velocity::min);
    let (bore, conductivity) = (runs.section.hydraulic_bore(), givens.value(G::Conductivity));
    let least = slowest.zip(air_of(making, inside, humidity)).and_then(|(speed, air)| {
        let tube = ColdDuct { bore, inside, room, conductivity, inner: cold::inner(speed, bore, air) };
        tube.least_within(humidity, |colder| Film::of(colder, room, Jacket::Matt))
    });
    let Some((slowest, least)) = slowest.zip(least.filter(|least| *least > Length::ZERO)) else {
        return unknown(N::SweatsInside, Unit::Millimetre);
    };
    let terms = [
        givens.term("T_i", G::IndoorTemperature),
        givens.term("T_a", G::OutdoorTemperature),
        givens.term("φ", G::IndoorHumidity),
        Term::new("d", bore.as_mm(), Unit::Millimetre, Origin::Counted),
        Term::new("v", slowest.as_ms(), Unit::MetrePerSecond, Origin::Counted),
        givens.term("λ", G::Conductivity),
    ];
    making.line((N::SweatsInside, Formula::LeastAround), (least.as_mm(), Unit::Millimetre), &INSIDE, &terms)
}

/// How warm the outdoor air is when it comes to the unit, in a matt jacket of the planned thickness.
fn warmed(making: &mut Making) -> Number {
    let (givens, duct) = (making.parts.givens, outdoor_duct(making));
    let flow = making.parts.shares.at(Level::Normal).total;
    let Some(air) = air_of(making, duct.inside, air::OUTDOOR_HUMIDITY) else {
        return unknown(N::Temperature, Unit::Celsius);
    };
    let (length, thickness) = (making.length(G::OutdoorDuct), making.length(G::CoreInsulation));
    let warmed = duct.after(length, thickness, film(duct, thickness), flow, air);
    let terms = [
        givens.term("T_0", G::OutdoorTemperature),
        givens.term("T_a", G::IndoorTemperature),
        givens.term("d", G::ColdDuct),
        givens.term("s", G::CoreInsulation),
        givens.term("λ", G::Conductivity),
        givens.term("L", G::OutdoorDuct),
        making.term("Q", making.total(Level::Normal)),
    ];
    let value = (warmed.as_celsius(), Unit::Celsius);
    making.line((N::Temperature, Formula::WarmedAir), value, &WARMING, &terms)
}

/// How well heat goes into the matt jacket of a duct, W/(m²·K): by the temperature it has in its room. The first guess hardly matters.
fn film(duct: ColdDuct, thickness: Length) -> f64 {
    let outer = |jacket: Temperature| {
        let colder = duct.room.as_celsius() - jacket.as_celsius();
        cold::outer(duct.bore + thickness * 2.0, colder, duct.room, Jacket::Matt)
    };
    outer(duct.surface(thickness, outer(duct.inside)))
}

fn air_of(making: &Making, temperature: Temperature, humidity: f64) -> Option<Air> {
    Air::at(temperature, humidity, air::standard_pressure(making.length(G::Altitude))?)
}

/// Not to be had for these temperatures.
fn unknown(name: N, unit: Unit) -> Number {
    Number { name, value: None, unit, origin: Origin::Given(G::OutdoorTemperature) }
}
