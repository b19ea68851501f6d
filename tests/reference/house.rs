//! Networks as the reference answers write them down.

use airtally::air::Air;
use airtally::duct::section::Section;
use airtally::duct::terminal::PowerLaw;
use airtally::network::{Branch, Duct, End, Fan, Joint, Law, Network};
use airtally::quantity::{Flow, Length, Pressure};
use serde::Deserialize;

#[derive(Deserialize)]
pub struct Answer {
    pub tubes: usize,
    joints: usize,
    branches: Vec<Way>,
    #[allow(dead_code, reason = "for the test")]
    pub flows: Vec<f64>,
}

#[derive(Deserialize)]
struct Way {
    from: Option<usize>,
    to: Option<usize>,
    linear: Option<f64>,
    square: Option<f64>,
    duct: Option<Tube>,
    power: Option<(f64, f64)>,
    fan: Option<Drive>,
}

#[derive(Deserialize)]
pub struct Tube {
    pub bore: f64,
    roughness: f64,
    length: f64,
    losses: f64,
}

#[derive(Deserialize)]
#[serde(untagged)]
enum Drive {
    Steady { steady: f64 },
    Curve { curve: Vec<(f64, f64)> },
    Formula { shut: f64, linear: f64, square: f64 },
}

impl Tube {
    pub fn duct(&self) -> Duct<'_> {
        Duct {
            section: Section::Round(Length::from_mm(self.bore)),
            roughness: Length::from_mm(self.roughness),
            length: Length::from_m(self.length),
            bends: &[],
            fittings: self.losses,
            air: Air::STANDARD,
        }
    }
}

impl Way {
    fn law(&self) -> Law {
        let metre = Flow::from_m3h(1.0);
        let law = self.duct.as_ref().map_or_else(Law::default, |tube| Law::default().duct(tube.duct()));
        let pascal = |pascal: Option<f64>| Pressure::from_pa(pascal.unwrap_or(0.0));
        let law = law.rated(pascal(self.linear), pascal(self.square), metre);
        self.power.map_or(law.clone(), |(scale, exponent)| law.terminal(PowerLaw { scale, exponent }))
    }

    fn fan(&self) -> Option<Fan> {
        Some(match self.fan.as_ref()? {
            Drive::Steady { steady } => Fan::Steady(Flow::from_m3h(*steady)),
            Drive::Curve { curve } => {
                Fan::Curve(curve.iter().map(|(q, p)| (Flow::from_m3h(*q), Pressure::from_pa(*p))).collect())
            }
            Drive::Formula { shut, linear, square } => Fan::Formula { shut: *shut, linear: *linear, square: *square },
        })
    }
}

impl Answer {
    /// The network it is about.
    pub fn network(&self) -> Network {
        let mut network = Network::default();
        let joints: Vec<Joint> = (0..self.joints).map(|_| network.joint()).collect();
        let end = |at: Option<usize>| at.map_or(End::Open, |at| End::At(joints[at]));
        for way in &self.branches {
            let branch = Branch { from: end(way.from), to: end(way.to), law: way.law(), fan: way.fan() };
            network.branch(branch).expect("a branch that fits");
        }
        network
    }
}

/// So many manifolds on one main, each with so many tubes of rising length.
#[allow(dead_code, reason = "for the benchmark")]
pub fn manifolds(count: u32, tubes: u32) -> Network {
    let tube = |bore, length| Tube { bore, roughness: 0.1, length, losses: 2.0 };
    let law = |tube: &Tube| Law::default().duct(tube.duct());
    let mut network = Network::default();
    let unit = network.joint();
    let fan = Fan::Formula { shut: 320.0, linear: 0.0, square: 1e-7 };
    let main = Branch { from: End::Open, to: End::At(unit), law: law(&tube(2000.0, 5.0)), fan: Some(fan) };
    network.branch(main).expect("the main");
    for at in 0..count {
        let manifold = network.joint();
        let riser = law(&tube(250.0, 2.0 + f64::from(at % 9)));
        network.branch(Branch { from: End::At(unit), to: End::At(manifold), law: riser, fan: None }).expect("a riser");
        for metres in 0..tubes {
            let law = law(&tube(63.0, 3.0 + f64::from(metres % 20)));
            network.branch(Branch { from: End::At(manifold), to: End::Open, law, fan: None }).expect("a tube");
        }
    }
    network
}
