//! Runs, bends, plates with a hole and valves beside `fluids`, `scipy` and `numpy`.

use super::house::Tube;
use super::{answers, off};
use airtally::air::Air;
use airtally::duct::bend::{Bend, loss, mitre, slow};
use airtally::duct::change;
use airtally::duct::friction::friction;
use airtally::duct::restrictor::{hole_for, thin_plate};
use airtally::duct::terminal::PowerLaw;
use airtally::network::Law;
use airtally::quantity::{Flow, Length, Pressure};
use serde::Deserialize;

#[derive(Deserialize)]
struct Run {
    #[serde(flatten)]
    tube: Tube,
    flow: f64,
    pressure: f64,
}

/// Darcy and Weisbach with Churchill's factor in another program: 10⁻⁹ is room for another order of operations.
#[test]
fn a_run_takes_what_another_program_says() {
    for Run { tube, flow, pressure } in answers("run") {
        let ours = Law::default().duct(tube.duct()).pressure(Flow::from_m3h(flow)).as_pa();
        assert!(off(ours, pressure) < 1e-9, "{ours} and {pressure} Pa");
    }
}

#[derive(Deserialize, Debug)]
struct Turn {
    radius: f64,
    reynolds: f64,
    rennels: f64,
    miller: f64,
}

/// Two more published methods, both with the friction of the arc. They differ from each other by up to a third, as the
/// handbook of physics, section 5, says; ours may lie as far from their mean.
#[test]
fn a_bend_lies_among_other_methods() {
    for answer in answers::<Turn>("bend") {
        let bend = loss(Bend { angle: 90.0, radius: answer.radius }).expect("a bend");
        let ours = bend.shape * slow(answer.reynolds) + bend.arc * friction(answer.reynolds, 0.0).factor;
        let mean = (answer.rennels + answer.miller) / 2.0;
        assert!(off(ours, mean) < 1.0 / 3.0, "{ours} and {answer:?}");
    }
}

#[derive(Deserialize, Debug)]
struct Wider {
    narrow: f64,
    wide: f64,
    loss: f64,
}

/// Borda and Carnot's in both.
#[test]
fn a_sudden_widening_is_the_same_everywhere() {
    for answer in answers::<Wider>("widening") {
        let [narrow, wide] = [answer.narrow, answer.wide].map(|bore| Length::from_mm(bore).section());
        let ours = change::widening(narrow, wide).expect("a widening");
        assert!(off(ours, answer.loss) < 1e-9, "{ours} and {answer:?}");
    }
}

#[derive(Deserialize, Debug)]
struct Mitre {
    angle: f64,
    loss: f64,
}

#[derive(Deserialize, Debug)]
struct Edge {
    radius: f64,
    loss: f64,
}

/// The same equations of Rennels and Hudson.
#[test]
fn mitres_and_rounded_edges_are_the_same_everywhere() {
    for answer in answers::<Mitre>("mitre") {
        let ours = mitre(answer.angle).expect("a mitre");
        assert!(off(ours, answer.loss) < 1e-9, "{ours} and {answer:?}");
    }
    for answer in answers::<Edge>("edge") {
        let ours = change::into_rounded_tube(answer.radius).expect("an edge");
        assert!(off(ours, answer.loss) < 1e-9, "{ours} and {answer:?}");
    }
}

#[derive(Deserialize, Debug)]
struct Plate {
    hole: f64,
    bore: f64,
    loss: f64,
}

/// Another print, ISO 5167-2, of the same thing: the handbook of physics, section 6, gives 5 to 10 % below 0.65 bores.
#[test]
fn a_plate_takes_what_a_metering_orifice_loses() {
    for answer in answers::<Plate>("plate") {
        let ours = thin_plate(answer.hole / answer.bore).expect("a plate");
        assert!(off(ours, answer.loss) < 0.1, "{ours} and {answer:?}");
    }
}

#[derive(Deserialize, Debug)]
struct Hole {
    bore: f64,
    flow: f64,
    pressure: f64,
    hole: f64,
}

/// The same diagram, solved by Brent's method: we halve 40 times, to 10⁻¹² of a bore.
#[test]
fn the_hole_for_a_pressure_is_found() {
    for answer in answers::<Hole>("hole") {
        let (pressure, flow) = (Pressure::from_pa(answer.pressure), Flow::from_m3h(answer.flow));
        let ours = hole_for(pressure, flow, Length::from_mm(answer.bore), Air::STANDARD).expect("a hole").as_mm();
        assert!(off(ours, answer.hole) < 1e-9, "{ours} and {answer:?}");
    }
}

#[derive(Deserialize, Debug)]
struct Valve {
    points: Vec<(f64, f64)>,
    exponent: f64,
    scale: f64,
}

/// The same least squares by another method: 10⁻⁹ is room for its last digits.
#[test]
fn a_valve_is_fitted_as_another_program_fits_it() {
    for answer in answers::<Valve>("valve") {
        let points = answer.points.iter().map(|(q, p)| (Flow::from_m3h(*q), Pressure::from_pa(*p)));
        let ours = PowerLaw::through(&points.collect::<Vec<_>>()).expect("a law");
        assert!(off(ours.exponent, answer.exponent) < 1e-9, "{ours:?} and {answer:?}");
        assert!(off(ours.scale, answer.scale) < 1e-9, "{ours:?} and {answer:?}");
    }
}
