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
    let (inside, warmed) = (least_around_tubes(making), warmed(making));
    let planned = Some(making.given(N::Thickness, G::CoreInsulation));
    let numbers: Vec<Number> = [planned, matt, bright, inside, warmed].into_iter().flatten().collect();
    making.step_by(R::InsulateColdDucts, G::CoreInsulation, numbers);
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

/// What keeps the jacket of a cold duct above the dew point of the room. None where it never sweats, or whatever lies around it.
fn least(making: &mut Making, jacket: Jacket) -> Option<Number> {
    let (givens, duct) = (making.parts.givens, outdoor_duct(making));
    let least = duct.least(givens.value(G::IndoorHumidity), |colder| Film::of(colder, duct.room, jacket));
    let name = if jacket == Jacket::Bright { N::SweatsBright } else { N::SweatsMatt };
    let least = least.filter(|least| *least > Length::ZERO)?;
    let terms = [
        givens.term("T_i", G::OutdoorTemperature),
        givens.term("T_a", G::IndoorTemperature),
        givens.term("φ", G::IndoorHumidity),
        givens.term("d", G::ColdDuct),
        givens.term("λ", G::Conductivity),
    ];
    let least = (least.as_mm(), Unit::Millimetre);
    Some(making.line((name, Formula::LeastInsulation), least, &SWEATING, &terms))
}

/// What keeps the inside of an extract tube in a loft as cold as outdoors above the dew point of its air. None where it never
/// sweats.
fn least_around_tubes(making: &mut Making) -> Option<Number> {
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
    let (slowest, least) = slowest.zip(least.filter(|least| *least > Length::ZERO))?;
    let terms = [
        givens.term("T_i", G::IndoorTemperature),
        givens.term("T_a", G::OutdoorTemperature),
        givens.term("φ", G::IndoorHumidity),
        Term::new("d", bore.as_mm(), Unit::Millimetre, Origin::Counted),
        Term::new("v", slowest.as_ms(), Unit::MetrePerSecond, Origin::Counted),
        givens.term("λ", G::Conductivity),
    ];
    let least = (least.as_mm(), Unit::Millimetre);
    Some(making.line((N::SweatsInside, Formula::LeastAround), least, &INSIDE, &terms))
}

/// How warm the outdoor air is when it comes to the unit, in a matt jacket of the planned thickness.
fn warmed(making: &mut Making) -> Option<Number> {
    let (givens, duct) = (making.parts.givens, outdoor_duct(making));
    let flow = making.parts.shares.at(Level::Normal).total;
    let air = air_of(making, duct.inside, air::OUTDOOR_HUMIDITY)?;
    // Heat that hardly comes into the air warms it little: here it must not count as coming in at once.
    let duct = ColdDuct { inner: cold::inner(flow / duct.bore.section(), duct.bore, air), ..duct };
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
        Term::new("ρ", air.density(), Unit::Ratio, Origin::Counted),
    ];
    let value = (warmed.as_celsius(), Unit::Celsius);
    Some(making.line((N::Temperature, Formula::WarmedAir), value, &WARMING, &terms))
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::edit::Edit;
    use crate::house::{Field, House, RoomKind};
    use crate::report::Report;

    fn numbers(set: &[(G, &str)]) -> Vec<(N, f64)> {
        let rooms = [RoomKind::Living, RoomKind::Bedroom, RoomKind::Kitchen, RoomKind::Bathroom];
        let house = rooms.into_iter().fold(House::new(), |house, kind| Edit::AddRoom(kind).apply(&house));
        let set = set.iter().map(|(id, text)| Edit::Set(Field::Given(*id), (*text).to_owned(), id.given().unit));
        let report = Report::of(set.fold(house, |house, edit| edit.apply(&house)));
        let step = report.steps().iter().find(|step| step.key.rule == R::InsulateColdDucts).unwrap();
        step.numbers.iter().map(|number| (number.name, number.value.unwrap())).collect()
    }

    fn warmed(set: &[(G, &str)]) -> f64 {
        numbers(set).into_iter().find(|(name, _)| *name == N::Temperature).unwrap().1
    }

    #[test]
    fn outdoor_air_warms_up_more_where_more_heat_comes_in() {
        let usual = warmed(&[]);
        assert!(usual > -5.0 && usual < 20.0, "{usual}");
        assert!(warmed(&[(G::OutdoorDuct, "10")]) > usual);
        assert!(warmed(&[(G::CoreInsulation, "100")]) < usual);
        assert!(warmed(&[(G::Conductivity, "0.02")]) < usual);
    }

    /// Worked by hand with another law for the inside, Dittus and Boelter's: 70 m³/h of −5 °C in a bare duct of 160 mm are 0.97 m/s,
    /// Re 12 100, Nu 37, h 5.5; a matt jacket takes about 8.3 from its room. Together 1.66 W/(m·K); 10 m and 25.7 W/K leave
    /// e^(−0.65) of 25 K, so that it comes with 6.9 °C. Laws for the inside differ by a tenth or two.
    #[test]
    fn a_bare_duct_warms_outdoor_air_as_worked_by_hand() {
        let bare = warmed(&[(G::CoreInsulation, "0"), (G::OutdoorDuct, "10")]);
        assert!((bare - 6.9).abs() < 1.5, "{bare}");
    }

    #[test]
    fn what_never_sweats_is_not_named() {
        let names = |set: &[(G, &str)]| numbers(set).into_iter().map(|(name, _)| name).collect::<Vec<_>>();
        assert_eq!(names(&[]), [N::Thickness, N::SweatsMatt, N::SweatsBright, N::SweatsInside, N::Temperature]);
        assert_eq!(names(&[(G::OutdoorTemperature, "15")]), [N::Thickness, N::Temperature]);
    }
}
