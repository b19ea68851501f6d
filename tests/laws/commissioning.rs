//! What must hold when valves are set and readings are taken.

use super::few;
use airtally::air::Air;
use airtally::duct::section::Section;
use airtally::duct::terminal::PowerLaw;
use airtally::network::{Branch, Duct, End, Fan, Law, Network, Readings, balance, fit};
use airtally::quantity::{Flow, Length, Pressure};
use proptest::prelude::*;

/// A run of a house: length in m, valve in Pa at 30 m³/h, exponent of the valve.
type Run = (f64, f64, f64);

fn run() -> impl Strategy<Value = Run> {
    (2.0..30.0_f64, 1.0..60.0_f64, 1.7..2.1_f64)
}

fn law((length, valve, exponent): Run) -> Law {
    let duct = Duct {
        section: Section::Round(Length::from_mm(63.0)),
        roughness: Length::from_mm(0.1),
        length: Length::from_m(length),
        bends: &[],
        fittings: 1.5,
        air: Air::STANDARD,
    };
    Law::default().duct(duct).terminal(PowerLaw { scale: valve / libm::pow(30.0, exponent), exponent })
}

fn path() -> Law {
    Law::default().rated(Pressure::from_pa(5.0), Pressure::from_pa(40.0), Flow::from_m3h(200.0))
}

/// The flows of runs on one manifold, behind a path.
fn flows(fan: Fan, path: &Law, runs: &[Law]) -> Vec<Flow> {
    let mut network = Network::default();
    let manifold = network.joint();
    let mut add = |from, to, law: &Law, fan| network.branch(Branch { from, to, law: law.clone(), fan }).expect("fits");
    add(End::Open, End::At(manifold), path, Some(fan));
    for run in runs {
        add(End::At(manifold), End::Open, run, None);
    }
    network.solve(None).expect("no dead end").flows.split_off(1)
}

fn unit() -> Fan {
    Fan::Formula { shut: 300.0, linear: 0.15, square: 0.0012 }
}

proptest! {
    #![proptest_config(few(100))]

    /// Whatever the runs are: with the valves set as told every run carries its own, and one valve is left open.
    #[test]
    fn balanced_runs_carry_their_own(runs in prop::collection::vec((run(), 10.0..50.0_f64), 1..15)) {
        let wanted: Vec<(Law, Flow)> = runs.iter().map(|(run, m3h)| (law(*run), Flow::from_m3h(*m3h))).collect();
        let set = balance(&wanted).expect("runs that can be balanced");
        prop_assert!(set.added.iter().all(|valve| *valve >= Pressure::ZERO));
        prop_assert_eq!(set.added[set.index], Pressure::ZERO);
        let closed: Vec<Law> = wanted.iter().zip(&set.added).map(|((law, flow), valve)| law.clone().throttle(*valve, *flow)).collect();
        let whole = wanted.iter().fold(Flow::ZERO, |sum, (_, flow)| sum + *flow);
        for (flow, (_, wanted)) in flows(Fan::Steady(whole), &path(), &closed).iter().zip(&wanted) {
            prop_assert!((flow.as_m3h() / wanted.as_m3h() - 1.0).abs() < 1e-9, "{flow:?} and {wanted:?}");
        }
    }

    /// Readings without error, with one valve closed between two rounds, give back what stands there.
    #[test]
    fn readings_tell_what_is_there(
        runs in prop::collection::vec((run(), 0.3..3.0_f64), 2..10), more in 0.5..2.0_f64, closed in any::<prop::sample::Index>(),
    ) {
        let reckoned: Vec<Law> = runs.iter().map(|(run, _)| law(*run)).collect();
        let real: Vec<Law> = runs.iter().map(|(run, times)| law(*run).times(*times)).collect();
        let valve = Law::default().throttle(Pressure::from_pa(60.0), Flow::from_m3h(20.0));
        let round = |closed: Option<usize>| {
            let added: Vec<Law> = (0..runs.len()).map(|at| if closed == Some(at) { valve.clone() } else { Law::default() }).collect();
            let there: Vec<Law> = real.iter().zip(&added).map(|(run, added)| run.clone().and(added.clone())).collect();
            Readings { fan: unit(), flows: flows(unit(), &path().times(more), &there), added, pressure: None }
        };
        let found = fit(&path(), &reckoned, &[round(None), round(Some(closed.index(runs.len())))]).expect("two rounds tell");
        prop_assert!((found.path / more - 1.0).abs() < 1e-3, "{} and {more}", found.path);
        for (found, (_, times)) in found.tubes.iter().zip(&runs) {
            prop_assert!((found / times - 1.0).abs() < 1e-3, "{found} and {times}");
        }
    }
}
