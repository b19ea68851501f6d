//! Whole networks beside scipy's sparse Newton method on equations written down anew, and beside `pandapipes`.

use super::house::{Answer, Tube};
use super::{answers, off};
use airtally::network::{Branch, End, Fan, Law, Network};
use airtally::quantity::{Flow, Pressure};
use serde::Deserialize;

/// The same equations, solved by another method: every tube to a part in a thousand million of its own flow.
#[test]
fn whole_houses_flow_as_a_sparse_newton_method_says() {
    for answer in answers::<Answer>("network") {
        let flowing = answer.network().solve(None).expect("an answer");
        assert!(flowing.at_rest, "{} tubes", answer.tubes);
        for (at, (ours, theirs)) in flowing.flows.iter().zip(&answer.flows).enumerate() {
            let ours = ours.as_m3h();
            assert!(off(ours, *theirs) < 1e-9, "{} tubes, branch {at}: {ours} and {theirs}", answer.tubes);
        }
    }
}

#[derive(Deserialize)]
struct Pipes {
    driving: f64,
    ducts: Vec<Tube>,
    flows: Vec<f64>,
}

/// Another program with a friction law of its own, Swamee and Jain's, which is Churchill's where the flow is turbulent, but
/// for rounded constants: 0.2 % where every Reynolds number is above 5000.
#[test]
fn tubes_on_a_manifold_flow_as_another_program_says() {
    for answer in answers::<Pipes>("pipes") {
        let mut network = Network::default();
        let (source, joint) = (network.joint(), network.joint());
        // Held at a pressure: a fan that gives it at any flow.
        let fan = Some(Fan::Formula { shut: answer.driving, linear: 0.0, square: 0.0 });
        let nothing = Law::default().rated(Pressure::ZERO, Pressure::from_pa(1e-12), Flow::from_m3h(1.0));
        network.branch(Branch { from: End::Open, to: End::At(source), law: nothing, fan }).expect("the fan");
        for (at, tube) in answer.ducts.iter().enumerate() {
            let (from, to) = if at == 0 { (source, End::At(joint)) } else { (joint, End::Open) };
            let law = Law::default().duct(tube.duct());
            network.branch(Branch { from: End::At(from), to, law, fan: None }).expect("a tube");
        }
        let flowing = network.solve(None).expect("an answer");
        for ((ours, theirs), tube) in flowing.flows[1..].iter().zip(&answer.flows).zip(&answer.ducts) {
            let bore = tube.bore / 1000.0;
            let reynolds = 1.2 * theirs / 3600.0 * 4.0 / (std::f64::consts::PI * bore) / 1.8134e-5;
            assert!(reynolds > 5000.0, "Re {reynolds}: this case is not for comparing");
            assert!(off(ours.as_m3h(), *theirs) < 2e-3, "{} and {theirs} m³/h", ours.as_m3h());
        }
    }
}
