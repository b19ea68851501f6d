//! What must hold of every network of tubes.

use super::few;
use airtally::air::Air;
use airtally::duct::section::Section;
use airtally::network::{Branch, Duct, End, Fan, Flowing, Joint, Law, Network};
use airtally::quantity::{Flow, Length, Pressure};
use proptest::prelude::*;

/// A tube: bore in mm, length in m, fixed losses, throttle in Pa at 30 m³/h.
type Tube = (f64, f64, f64, f64);

/// Manifolds, each with its tubes, behind one fan.
#[derive(Clone, Debug)]
struct House {
    fan: Fan,
    manifolds: Vec<Vec<Tube>>,
}

fn tube() -> impl Strategy<Value = Tube> {
    (10.0..500.0_f64, 0.1..200.0_f64, 0.0..10.0_f64, 0.0..200.0_f64)
}

fn fan() -> impl Strategy<Value = Fan> {
    let flow = |m3h| Flow::from_m3h(m3h);
    prop_oneof![
        (10.0..600.0_f64, 0.0..0.5_f64, 0.0..0.01_f64).prop_map(|(shut, linear, square)| Fan::Formula {
            shut,
            linear,
            square
        }),
        (1.0..2000.0_f64).prop_map(move |m3h| Fan::Steady(flow(m3h))),
        (50.0..600.0_f64, 50.0..2000.0_f64).prop_map(move |(pa, m3h)| {
            Fan::Curve(vec![(flow(0.0), Pressure::from_pa(pa)), (flow(m3h), Pressure::ZERO)])
        }),
    ]
}

fn house() -> impl Strategy<Value = House> {
    let manifolds = prop::collection::vec(prop::collection::vec(tube(), 1..12), 1..4);
    (fan(), manifolds).prop_map(|(fan, manifolds)| House { fan, manifolds })
}

fn law((bore, length, losses, throttle): Tube) -> Law {
    let duct = Duct {
        section: Section::Round(Length::from_mm(bore)),
        roughness: Length::from_mm(0.1),
        length: Length::from_m(length),
        bends: &[],
        fittings: losses,
        air: Air::STANDARD,
    };
    Law::default().duct(duct).throttle(Pressure::from_pa(throttle), Flow::from_m3h(30.0))
}

/// The flows, and the numbers of the branches: fan, mains, then the tubes of each manifold.
fn solved(house: &House) -> (Flowing, Network, Vec<(usize, Vec<usize>)>) {
    let mut network = Network::default();
    let unit = network.joint();
    let add = |network: &mut Network, from, to, law, fan| network.branch(Branch { from, to, law, fan }).expect("fits");
    add(&mut network, End::Open, End::At(unit), law((160.0, 3.0, 2.0, 0.0)), Some(house.fan.clone()));
    let mut numbers = Vec::new();
    for tubes in &house.manifolds {
        let manifold: Joint = network.joint();
        let main = add(&mut network, End::At(unit), End::At(manifold), law((160.0, 3.0, 2.0, 0.0)), None);
        let tubes = tubes.iter().map(|tube| add(&mut network, End::At(manifold), End::Open, law(*tube), None));
        numbers.push((main, tubes.collect()));
    }
    let flowing = network.solve(None).expect("a network without dead ends");
    (flowing, network, numbers)
}

fn m3h(flowing: &Flowing, branch: usize) -> f64 {
    flowing.flows[branch].as_m3h()
}

proptest! {
    #![proptest_config(few(150))]

    #[test]
    fn it_comes_to_rest_and_every_joint_keeps_its_air(house in house()) {
        let (flowing, _, numbers) = solved(&house);
        prop_assert!(flowing.at_rest, "{} steps", flowing.steps);
        let whole = m3h(&flowing, 0);
        let mains: f64 = numbers.iter().map(|(main, _)| m3h(&flowing, *main)).sum();
        prop_assert!((whole - mains).abs() <= 1e-7 * whole.abs().max(1e-3));
        for (main, tubes) in &numbers {
            let out: f64 = tubes.iter().map(|tube| m3h(&flowing, *tube)).sum();
            prop_assert!((m3h(&flowing, *main) - out).abs() <= 1e-7 * whole.abs().max(1e-3));
        }
    }

    /// What the fan gives is what is used up: the sum over all branches of flow times pressure.
    #[test]
    fn energy_is_kept(house in house()) {
        let (flowing, network, _) = solved(&house);
        let used: f64 = network.branches().iter().zip(&flowing.flows)
            .map(|(branch, flow)| flow.as_m3h() * branch.law.pressure(*flow).as_pa()).sum();
        let given = match house.fan.pressure(flowing.flows[0]) {
            Some(pressure) => m3h(&flowing, 0) * pressure.as_pa(),
            None => {
                let unit = network.branches()[1].from;
                let End::At(unit) = unit else { unreachable!("the first main begins at the unit") };
                let own = network.branches()[0].law.pressure(flowing.flows[0]);
                m3h(&flowing, 0) * (flowing.pressure(unit).expect("the unit").as_pa() + own.as_pa())
            }
        };
        prop_assert!((used - given).abs() <= 1e-6 * used.abs().max(1e-6), "{used} and {given}");
    }

    #[test]
    fn a_valve_that_opens_never_gives_less(house in house(), at in any::<prop::sample::Index>()) {
        let (flowing, _, numbers) = solved(&house);
        let manifold = at.index(house.manifolds.len());
        let mut opened = house.clone();
        let tube = at.index(opened.manifolds[manifold].len());
        opened.manifolds[manifold][tube].3 *= 0.5;
        let (after, ..) = solved(&opened);
        let branch = numbers[manifold].1[tube];
        prop_assert!(m3h(&after, branch) >= m3h(&flowing, branch) * (1.0 - 1e-7) - 1e-9);
    }

    #[test]
    fn a_wider_tube_never_takes_more(tube in tube(), wider in 1.0..3.0_f64, flow in 0.01..500.0_f64) {
        let (bore, length, losses, throttle) = tube;
        let taken = |bore: f64| law((bore, length, losses, throttle)).pressure(Flow::from_m3h(flow)).as_pa();
        prop_assert!(taken(bore * wider) <= taken(bore) * (1.0 + 1e-12));
    }

    #[test]
    fn the_order_of_tubes_does_not_matter(house in house()) {
        let (flowing, _, numbers) = solved(&house);
        let mut turned = house.clone();
        turned.manifolds.iter_mut().for_each(|tubes| tubes.reverse());
        let (after, ..) = solved(&turned);
        let whole = m3h(&flowing, 0).abs().max(1e-3);
        for (_, tubes) in &numbers {
            for (one, other) in tubes.iter().zip(tubes.iter().rev()) {
                prop_assert!((m3h(&flowing, *one) - m3h(&after, *other)).abs() <= 1e-7 * whole);
            }
        }
    }
}
