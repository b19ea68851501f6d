//! Cases about what flows in a small network, and about what that costs. What has no typed unit reads as a `ratio`.

use super::call::{as_flow, as_pressure};
use super::physics::{bare, measure};
use super::read::Found;
use airtally::network::{Branch, End, Fan, Joint, Law, Network, Readings, SpecificPower, balance, fit};
use airtally::quantity::{Flow, Pressure};
use serde::Deserialize;

/// A network, or a fan.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub enum Flows {
    /// A fan, its path, and tubes out of one manifold, in Pa and m³/h: reads as `all`, `tube 1`, `manifold`, `given`.
    Tubes(Tubes),
    /// Equal tubes into one box with one valve, in Pa for each (m³/h)²: reads as `resistance` of all together.
    IntoBox { tube: f64, tubes: u32, valve: f64 },
    /// Tubes that are to carry so much: reads as `index`, `needed`, `add 1`, `resistance 1` of what is added.
    Balance { tubes: Vec<f64>, wanted: Vec<f64> },
    /// Rounds of readings of a fan 300 − 0.15·Q − 0.0012·Q² on a path and tubes: reads as `path`, `tube 1`; absent where they do
    /// not tell the parts apart.
    Fit { rounds: Vec<Round>, tubes: usize },
    /// A unit: reads as `specific` in W/(m³/s), `by-volume` in Wh/m³.
    Power { watts: f64, flow: String },
    /// A fan with its motor: reads as `specific`, `class`.
    Lifting { pressure: String, efficiency: f64 },
}

/// Speed of the fan, what is added to each tube, what was read.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Round {
    #[serde(default = "one")]
    speed: f64,
    #[serde(default)]
    added: Vec<f64>,
    read: Vec<f64>,
    #[serde(default)]
    manifold: Option<f64>,
}

impl Flows {
    pub fn read(&self, what: &str) -> Found {
        let power = match self {
            Self::Tubes(tubes) => return tubes.read(what),
            Self::IntoBox { tube, tubes, valve } => return bare(Some(into_box(*tube, *tubes, *valve))),
            Self::Balance { tubes, wanted } => return balanced(tubes, wanted, what),
            Self::Fit { rounds, tubes } => return fitted(rounds, *tubes, what),
            Self::Power { watts, flow } => SpecificPower::of(*watts, as_flow(flow)),
            Self::Lifting { pressure, efficiency } => SpecificPower::lifting(as_pressure(pressure), *efficiency),
        };
        match what {
            "specific" => bare(power.map(SpecificPower::as_w_per_m3s)),
            "by-volume" => bare(power.map(SpecificPower::as_wh_per_m3)),
            "class" => bare(power.and_then(SpecificPower::class).map(f64::from)),
            _ => panic!("nothing reads as \"{what}\" of power"),
        }
    }
}

#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Tubes {
    shut: f64,
    #[serde(default)]
    fan_linear: f64,
    fan_square: f64,
    #[serde(default = "one")]
    speed: f64,
    #[serde(default = "rated")]
    density: f64,
    #[serde(default)]
    path_linear: f64,
    path_square: f64,
    tubes: Vec<f64>,
    /// What throttles take in these tubes: Pa at a flow.
    #[serde(default)]
    throttles: Vec<(f64, f64)>,
}

fn one() -> f64 {
    1.0
}

/// kg/m³ for which resistances are stated.
fn rated() -> f64 {
    1.2
}

impl Tubes {
    fn read(&self, what: &str) -> Found {
        let (network, manifold) = self.network();
        let flowing = network.solve(None).expect("an answer");
        let flow = |at: usize| measure(flowing.flows.get(at).copied());
        let fan = network.branches()[0].fan.as_ref().expect("the fan");
        match what.split_once(' ') {
            Some(("tube", number)) => flow(number.parse().expect("the number of a tube")),
            _ if what == "all" => flow(0),
            _ if what == "manifold" => measure(flowing.pressure(manifold)),
            _ if what == "given" => measure(fan.pressure(flowing.flows[0])),
            _ => panic!("nothing reads as \"{what}\" of tubes"),
        }
    }

    fn network(&self) -> (Network, Joint) {
        let mut network = Network::default();
        let manifold = network.joint();
        let one = Flow::from_m3h(1.0);
        let pascal = Pressure::from_pa;
        // What grows with the square grows with the air's density too.
        let heavy = self.density / rated();
        let fan = Fan::Formula { shut: self.shut, linear: self.fan_linear, square: self.fan_square };
        let fan = Some(fan.at(self.speed, self.density));
        let law = Law::default().rated(pascal(self.path_linear), pascal(self.path_square * heavy), one);
        network.branch(Branch { from: End::Open, to: End::At(manifold), law, fan }).expect("the path");
        for (at, square) in self.tubes.iter().enumerate() {
            let tube = Law::default().rated(Pressure::ZERO, pascal(square * heavy), one);
            let throttle = self.throttles.get(at);
            let law = throttle.map_or(tube.clone(), |(taken, m3h)| tube.throttle(pascal(*taken), Flow::from_m3h(*m3h)));
            network.branch(Branch { from: End::At(manifold), to: End::Open, law, fan: None }).expect("a tube");
        }
        (network, manifold)
    }
}

fn balanced(tubes: &[f64], wanted: &[f64], what: &str) -> Found {
    let tubes: Vec<(Law, Flow)> =
        tubes.iter().zip(wanted).map(|(pascal, m3h)| (square(*pascal), Flow::from_m3h(*m3h))).collect();
    let set = balance(&tubes).expect("tubes that can be balanced");
    let valve = |number: &str| number.parse::<usize>().expect("the number of a tube") - 1;
    match what.split_once(' ') {
        Some(("add", number)) => measure(Some(set.added[valve(number)])),
        Some(("resistance", number)) => {
            let m3h = wanted[valve(number)];
            bare(Some(set.added[valve(number)].as_pa() / (m3h * m3h)))
        }
        _ if what == "index" => bare(Some((set.index + 1) as f64)),
        _ if what == "needed" => measure(Some(set.pressure)),
        _ => panic!("nothing reads as \"{what}\" of tubes that are balanced"),
    }
}

/// Found from tubes and a path of 0.04 and 0.004, which are far from the truth.
fn fitted(rounds: &[Round], tubes: usize, what: &str) -> Found {
    let (path, tube) = (0.004, 0.04);
    let readings = rounds.iter().map(|round| Readings {
        fan: Fan::Formula { shut: 300.0, linear: 0.15, square: 0.0012 }.at(round.speed, rated()),
        added: (0..tubes).map(|at| round.added.get(at).map_or_else(Law::default, |pascal| square(*pascal))).collect(),
        flows: round.read.iter().map(|m3h| Flow::from_m3h(*m3h)).collect(),
        pressure: round.manifold.map(Pressure::from_pa),
    });
    let Some(found) = fit(&square(path), &vec![square(tube); tubes], &readings.collect::<Vec<_>>()) else {
        return Found::Nothing;
    };
    match what.split_once(' ') {
        Some(("tube", number)) => {
            let number: usize = number.parse().expect("the number of a tube");
            bare(Some(found.tubes[number - 1] * tube))
        }
        _ if what == "path" => bare(Some(found.path * path)),
        _ => panic!("nothing reads as \"{what}\" of readings"),
    }
}

fn square(pascal: f64) -> Law {
    Law::default().rated(Pressure::ZERO, Pressure::from_pa(pascal), Flow::from_m3h(1.0))
}

/// What the manifold takes at a flow, over that flow squared.
fn into_box(tube: f64, tubes: u32, valve: f64) -> f64 {
    let m3h = 40.0;
    let mut network = Network::default();
    let (manifold, room) = (network.joint(), network.joint());
    let mut add = |from, to, pascal, fan| {
        network.branch(Branch { from, to, law: square(pascal), fan }).expect("a branch");
    };
    add(End::Open, End::At(manifold), 0.001, Some(Fan::Steady(Flow::from_m3h(m3h))));
    (0..tubes).for_each(|_| add(End::At(manifold), End::At(room), tube, None));
    add(End::At(room), End::Open, valve, None);
    let flowing = network.solve(None).expect("an answer");
    flowing.pressure(manifold).expect("the manifold").as_pa() / (m3h * m3h)
}
