//! Cases about one function.

use super::build::by_id;
use super::flows::Flows;
use super::heat::Heat;
use super::physics::Physics;
use super::read::Found;
use super::sounds::Sound;
use airtally::given::Givens;
use airtally::id::CheckRule;
use airtally::on_site::{self, AMERICAN_NOTCH, BRITISH_NOTCH, Least, Member};
use airtally::quantity::{
    Area, Concentration, Duration, Flow, Kind, Length, Measure, Pressure, Temperature, Unit, Volume, parse,
};
use airtally::rules::{RuleSet, balance::Balance};
use airtally::{co2, transfer};
use serde::Deserialize;

/// A function with what is put into it, quantities as a person types them.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub enum Call {
    /// Reads as `area`, and as `gap` under a door of the given width.
    FreeArea { flow: String, pressure: String, discharge: f64, density: f64 },
    /// Reads as `pressure`; absent where there is no opening.
    PressureAcross { flow: String, area: String, discharge: f64, density: f64 },
    /// Reads as `co2`; absent outside its range.
    Co2After { time: String, generation: String, fresh: String, volume: String, outdoor: String },
    /// A member of the frame by its depth: reads as `hole`, `notch`, and as `edge`.
    Wood { member: String, depth: String },
    /// A notch in a joist, under the American or the British rule: reads as `notch`.
    Notch { rule: String, depth: String, span: String, at: String },
    /// Reads as `pressure`.
    HousePressure { net: String, at_50: String },
    /// Reads as `leak`: at the pressure of normal running.
    Leak { flow: String, pressure: String },
    /// Reads as `tubes`.
    Bay { clear: String, outside: String },
    /// Reads as `verdict`: whether it is far enough away, or high enough above.
    Away { distance: String, least: String, height: Option<String>, above: Option<String> },
    /// A distance of a rule set: reads as `least`, `above`, and as `spared`; absent where it asks for none.
    Outside { rules: String, check: String },
    /// Reads as `of-larger`, `of-average`, `from-average`, `within-tenth-of-supply`, `within-tenth-of-average`.
    Balance { supply: String, extract: String },
    /// Moist air, a duct.
    Physics(Physics),
    /// A network, a fan.
    Flows(Flows),
    /// Water in air, cold ducts.
    Heat(Heat),
    /// Noise.
    Sound(Sound),
}

impl Call {
    pub fn read(&self, what: &str) -> Found {
        match (self, what) {
            (Self::FreeArea { flow, pressure, discharge, density }, "area") => {
                let area = transfer::free_area(as_flow(flow), as_pressure(pressure), *discharge, *density);
                Found::Number(area.into())
            }
            (Self::PressureAcross { flow, area, discharge, density }, "pressure") => {
                let across = transfer::pressure_across(as_flow(flow), as_area(area), *discharge, *density);
                across.map_or(Found::Nothing, |pressure| Found::Number(pressure.into()))
            }
            (Self::Co2After { time, generation, fresh, volume, outdoor }, "co2") => {
                let after = co2::after(
                    as_duration(time),
                    as_flow(generation),
                    as_flow(fresh),
                    as_volume(volume),
                    as_concentration(outdoor),
                );
                after.map_or(Found::Nothing, |co2| Found::Number(co2.into()))
            }
            (Self::Physics(physics), what) => physics.read(what),
            (Self::Flows(flows), what) => flows.read(what),
            (Self::Heat(heat), what) => heat.read(what),
            (Self::Sound(sound), what) => sound.read(what),
            (Self::Wood { member, depth }, what) => Found::Number(of_wood(member, as_length(depth), what).into()),
            (Self::Notch { rule, depth, span, at }, "notch") => {
                let rule = if rule == "british" { &BRITISH_NOTCH } else { &AMERICAN_NOTCH };
                Found::Number((as_length(depth) * rule.share_at(as_length(at), as_length(span))).into())
            }
            (Self::HousePressure { net, at_50 }, "pressure") => {
                let pressure = on_site::house_pressure(as_flow(net), as_flow(at_50));
                pressure.map_or(Found::Nothing, |pressure| Found::Number(pressure.into()))
            }
            (Self::Leak { flow, pressure }, "leak") => {
                Found::Number(on_site::leak_at(as_flow(flow), as_pressure(pressure)).into())
            }
            (Self::Bay { clear, outside }, "tubes") => {
                let tubes = on_site::tubes_in_bay(as_length(clear), as_length(outside));
                Found::Number(Measure::new(f64::from(tubes), Unit::Count))
            }
            (Self::Away { distance, least, height, above }, "verdict") => {
                let above = height.as_ref().zip(above.as_ref()).map(|(own, least)| (as_length(own), as_length(least)));
                let verdict = on_site::far_enough(as_length(distance), as_length(least), above);
                Found::Text(format!("{verdict:?}").to_ascii_lowercase())
            }
            (Self::Outside { rules, check }, what) => of_outside(rules, check, what),
            (Self::Balance { supply, extract }, what) => match Balance::of(as_flow(supply), as_flow(extract)) {
                Some(balance) => of_balance(&balance, what),
                None => Found::Nothing,
            },
            _ => panic!("nothing reads as \"{what}\" here"),
        }
    }
}

fn of_wood(member: &str, depth: Length, what: &str) -> Length {
    let member = match member {
        "joist" => Member::Joist,
        "bearing stud" => Member::BearingStud,
        "doubled stud" => Member::DoubledStud,
        "partition stud" => Member::PartitionStud,
        _ => panic!("no member is called \"{member}\""),
    };
    match what {
        "hole" => member.hole(depth),
        "notch" => member.notch(depth),
        "edge" => member.edge(),
        _ => panic!("nothing reads as \"{what}\" of a {member:?}"),
    }
}

fn of_outside(rules: &str, check: &str, what: &str) -> Found {
    let rules = by_id(RuleSet::ALL, RuleSet::id, rules);
    let check = by_id(CheckRule::ALL, CheckRule::id, check);
    let Some(row) = on_site::outside_rules(rules).iter().find(|row| row.check == check) else { return Found::Nothing };
    match (what, row.least) {
        ("least", Least::Given(id)) => Found::Number(Givens::registered().measure(id)),
        ("least", Least::Printed(value, unit)) => Found::Number(Measure::new(value, unit)),
        ("above", _) => row.above.map_or(Found::Nothing, |(_, feet)| Found::Number(Measure::new(feet, Unit::Foot))),
        ("spared", _) => row.spared.map_or(Found::Nothing, |outlets| Found::Text(outlets.id().to_owned())),
        _ => panic!("nothing reads as \"{what}\" of a distance outside"),
    }
}

pub(super) fn as_length(text: &str) -> Length {
    Length::of(typed(text, Kind::Length, Unit::Inch)).expect("a length")
}

fn of_balance(balance: &Balance, what: &str) -> Found {
    let share = |ratio| Found::Number(Measure::new(ratio, Unit::Ratio));
    let answer = |yes: bool| Found::Text(if yes { "yes" } else { "no" }.to_owned());
    match what {
        "of-larger" => share(balance.of_larger()),
        "of-average" => share(balance.of_average()),
        "from-average" => share(balance.from_average()),
        "within-tenth-of-supply" => answer(balance.within_tenth_of_supply()),
        "within-tenth-of-average" => answer(balance.within_tenth_of_average()),
        _ => panic!("nothing reads as \"{what}\" of a balance"),
    }
}

pub(super) fn as_flow(text: &str) -> Flow {
    Flow::of(typed(text, Kind::Flow, Unit::CubicMetrePerHour)).expect("a flow")
}

pub(super) fn as_area(text: &str) -> Area {
    Area::of(typed(text, Kind::Area, Unit::SquareMillimetre)).expect("an area")
}

pub(super) fn as_pressure(text: &str) -> Pressure {
    Pressure::of(typed(text, Kind::Pressure, Unit::Pascal)).expect("a pressure")
}

pub(super) fn as_temperature(text: &str) -> Temperature {
    Temperature::of(typed(text, Kind::Temperature, Unit::Celsius)).expect("a temperature")
}

fn as_duration(text: &str) -> Duration {
    Duration::of(typed(text, Kind::Duration, Unit::Hour)).expect("a time")
}

pub(super) fn as_volume(text: &str) -> Volume {
    Volume::of(typed(text, Kind::Volume, Unit::CubicMetre)).expect("a volume")
}

fn as_concentration(text: &str) -> Concentration {
    Concentration::of(typed(text, Kind::Concentration, Unit::PartPerMillion)).expect("a concentration")
}

fn typed(text: &str, kind: Kind, unit: Unit) -> Measure {
    parse(text, kind, unit).unwrap_or_else(|error| panic!("\"{text}\": {error:?}"))
}
