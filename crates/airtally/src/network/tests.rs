use super::*;
use crate::air::Air;
use crate::duct::bend::Bend;
use crate::duct::section::Section;
use crate::duct::terminal::PowerLaw;
use crate::quantity::{Flow, Length, Pressure};

fn quadratic(pascal: f64) -> Law {
    Law::default().rated(Pressure::ZERO, Pressure::from_pa(pascal), Flow::from_m3h(1.0))
}

fn tube(metres: f64) -> Law {
    let bends = [Bend { angle: 90.0, radius: 2.0 }; 3];
    Law::default()
        .duct(Duct {
            section: Section::Round(Length::from_mm(63.0)),
            roughness: Length::from_mm(0.1),
            length: Length::from_m(metres),
            bends: &bends,
            fittings: 1.5,
            air: Air::STANDARD,
        })
        .terminal(PowerLaw { scale: 0.01172, exponent: 1.954 })
}

fn open(joint: Joint, law: Law) -> Branch {
    Branch { from: End::At(joint), to: End::Open, law, fan: None }
}

/// Handbook of physics, section 10: two equal tubes to one room box quarter the tube part only.
#[test]
fn two_tubes_to_one_box_quarter_what_a_tube_takes() {
    let mut network = Network::default();
    let (manifold, room) = (network.joint(), network.joint());
    let fan = Some(Fan::Steady(Flow::from_m3h(40.0)));
    network.branch(Branch { from: End::Open, to: End::At(manifold), law: quadratic(0.001), fan }).unwrap();
    for _ in 0..2 {
        network.branch(Branch { from: End::At(manifold), to: End::At(room), law: quadratic(0.05), fan: None }).unwrap();
    }
    network.branch(open(room, quadratic(0.02))).unwrap();
    let flowing = network.solve(None).unwrap();
    let together = flowing.pressure(manifold).unwrap().as_pa() / (40.0 * 40.0);
    assert!((together - 0.0325).abs() < 1e-9, "{together}");
}

/// Site handbook, section 2: twins of unequal length 1.3 : 1 share the flow 1 : 0.86.
#[test]
fn twins_of_unequal_length_share_unequally() {
    let mut network = Network::default();
    let (manifold, room) = (network.joint(), network.joint());
    let fan = Some(Fan::Steady(Flow::from_m3h(60.0)));
    network.branch(Branch { from: End::Open, to: End::At(manifold), law: quadratic(0.001), fan }).unwrap();
    for metres in [10.0, 13.0] {
        let straight = Duct {
            section: Section::Round(Length::from_mm(63.0)),
            roughness: Length::from_mm(0.1),
            length: Length::from_m(metres),
            bends: &[],
            fittings: 0.0,
            air: Air::STANDARD,
        };
        let law = Law::default().duct(straight);
        network.branch(Branch { from: End::At(manifold), to: End::At(room), law, fan: None }).unwrap();
    }
    network.branch(open(room, quadratic(0.005))).unwrap();
    let flowing = network.solve(None).unwrap();
    let ratio = flowing.flows[2].as_m3h() / flowing.flows[1].as_m3h();
    assert!((ratio - 0.86).abs() < 0.006, "{ratio}");
}

/// Handbook of physics, section 8: fan 300 − 0.15·Q − 0.0012·Q² on 0.0035·Q², at sea level, at 1500 m, at 0.7 of its speed.
#[test]
fn a_fan_meets_its_system_where_the_handbook_says() {
    let fan = Fan::Formula { shut: 300.0, linear: 0.15, square: 0.0012 };
    let flow = |fan: Fan, pascal: f64, filter: f64| {
        let mut network = Network::default();
        let joint = network.joint();
        let law = quadratic(pascal * 0.5).rated(Pressure::from_pa(filter), Pressure::ZERO, Flow::from_m3h(1.0));
        network.branch(Branch { from: End::Open, to: End::At(joint), law, fan: Some(fan) }).unwrap();
        network.branch(open(joint, quadratic(pascal * 0.5))).unwrap();
        network.solve(None).unwrap().flows[0].as_m3h()
    };
    let thin = 0.99961;
    assert!((flow(fan.at(1.0, 1.2), 0.0035, 0.0) - 237.2).abs() < 0.05);
    assert!((flow(fan.at(0.7, 1.2), 0.0035, 0.0) - 166.0).abs() < 0.1);
    assert!((flow(fan.at(1.0, thin), 0.0035 * thin / 1.2, 0.0) - 237.2).abs() < 0.05);
    assert!((flow(fan.at(1.0, 1.2), 0.0030, 0.15) - 233.9).abs() < 0.05);
    assert!((flow(fan.at(1.0, thin), 0.0030 * thin / 1.2, 0.15) - 230.8).abs() < 0.05);
}

/// Closed form: with a fan held at a flow and the pressure of the manifold read, R = p/q² for each tube, and nothing is said of
/// the path; without the pressure only shares are.
#[test]
fn a_held_flow_tells_the_tubes_and_not_the_path() {
    let read = [30.0, 20.0, 10.0].map(Flow::from_m3h);
    let round = |pressure: Option<f64>| Readings {
        fan: Fan::Steady(Flow::from_m3h(60.0)),
        added: vec![Law::default(); 3],
        flows: read.to_vec(),
        pressure: pressure.map(Pressure::from_pa),
    };
    let tubes = [0.1, 0.1, 0.1].map(quadratic);
    let found = fit(&quadratic(0.01), &tubes, &[round(Some(36.0))]).unwrap();
    assert!((found.path - 1.0).abs() < 1e-12 && found.off < 1e-9, "{found:?}");
    for (times, m3h) in found.tubes.iter().zip([30.0, 20.0, 10.0]) {
        assert!((times * 0.1 - 36.0 / (m3h * m3h)).abs() < 1e-8, "{times} at {m3h} m³/h");
    }
    assert_eq!(fit(&quadratic(0.01), &tubes, &[round(None)]), None);
    assert_eq!(fit(&quadratic(0.01), &tubes[..2], &[round(Some(36.0))]), None);
}

#[test]
fn forty_tubes_on_two_manifolds_keep_their_air() {
    let mut network = Network::default();
    let (unit, up, down) = (network.joint(), network.joint(), network.joint());
    let curve = [(0.0, 320.0), (200.0, 260.0), (400.0, 150.0), (600.0, 0.0)];
    let curve = curve.map(|(q, p)| (Flow::from_m3h(q), Pressure::from_pa(p)));
    let fan = Some(Fan::Curve(curve.to_vec()));
    network.branch(Branch { from: End::Open, to: End::At(unit), law: quadratic(0.0005), fan }).unwrap();
    for manifold in [up, down] {
        let law = quadratic(0.0003);
        network.branch(Branch { from: End::At(unit), to: End::At(manifold), law, fan: None }).unwrap();
        for at in 0..20 {
            network.branch(open(manifold, tube(5.0 + f64::from(at)))).unwrap();
        }
    }
    let flowing = network.solve(None).unwrap();
    assert!(flowing.at_rest && flowing.steps < 12, "{} steps", flowing.steps);
    let flow = |at: usize| flowing.flows[at].as_m3h();
    let out: f64 = (2..22).chain(23..43).map(flow).sum();
    assert!((flow(0) - out).abs() < 1e-9 * out, "{} and {out}", flow(0));
    let fan_gives = network.branches()[0].fan.as_ref().unwrap().pressure(flowing.flows[0]).unwrap();
    let taken = network.branches()[0].law.pressure(flowing.flows[0]);
    assert!((fan_gives - taken - flowing.pressure(unit).unwrap()).as_pa().abs() < 1e-7);
    let again = network.solve(Some(&flowing)).unwrap();
    assert!(again.steps <= 1);
}

#[test]
fn what_cannot_be_calculated_is_refused_with_its_place() {
    let mut network = Network::default();
    let (first, second, third) = (network.joint(), network.joint(), network.joint());
    let between = |from, to, law| Branch { from: End::At(from), to: End::At(to), law, fan: None };
    assert_eq!(network.branch(between(first, Joint(9), quadratic(1.0))), Err(Fault::Nowhere { branch: 0 }));
    assert_eq!(network.branch(between(first, second, Law::default())), Err(Fault::NoResistance { branch: 0 }));
    let flat = Duct {
        section: Section::Round(Length::ZERO),
        roughness: Length::ZERO,
        length: Length::from_m(1.0),
        bends: &[],
        fittings: 1.0,
        air: Air::STANDARD,
    };
    let law = Law::default().duct(flat);
    assert_eq!(network.branch(between(first, second, law)), Err(Fault::NoResistance { branch: 0 }));
    let rising = [(0.0, 50.0), (100.0, 60.0)].map(|(q, p)| (Flow::from_m3h(q), Pressure::from_pa(p)));
    let fan = Some(Fan::Curve(rising.to_vec()));
    let branch = Branch { from: End::Open, to: End::At(first), law: quadratic(1.0), fan };
    assert_eq!(network.branch(branch), Err(Fault::FanRises { branch: 0 }));
    network.branch(between(first, third, quadratic(1.0))).unwrap();
    network.branch(between(first, second, quadratic(1.0))).unwrap();
    assert_eq!(network.branch(between(second, third, quadratic(1.0))), Err(Fault::Loop { branch: 2 }));
    assert_eq!(network.solve(None), Err(Fault::DeadEnd { joint: second }));
}
