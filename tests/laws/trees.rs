//! What must hold of wild trees of ducts: hair-thin beside huge ones, up to six joints one behind the other, with any fan at
//! the root and perhaps one in a duct far from it. All of it holds for each duct by itself, not for the tree as a whole.

use super::few;
use airtally::air::Air;
use airtally::duct::section::Section;
use airtally::network::{Branch, Duct, End, Fan, Flowing, Joint, Law, Network};
use airtally::quantity::{Flow, Length, Pressure};
use proptest::prelude::*;
use proptest::sample::Index;

/// A duct: bore in mm, length in m, fixed losses.
type Tube = (f64, f64, f64);

#[derive(Clone, Debug)]
struct Tree {
    fan: Fan,
    /// In the first duct from the last joint into the open.
    helper: Option<Fan>,
    extracts: bool,
    joints: Vec<Place>,
}

/// A joint: the earlier one it hangs on, the ducts from there, and those into the open.
#[derive(Clone, Debug)]
struct Place {
    hangs_on: Index,
    ways: Vec<Tube>,
    out: Vec<Tube>,
}

const DEEPEST: usize = 6;

/// Spread evenly over the orders of magnitude.
fn any_size(least: f64, most: f64) -> impl Strategy<Value = f64> {
    (libm::log(least)..libm::log(most)).prop_map(libm::exp)
}

fn tube() -> impl Strategy<Value = Tube> {
    (any_size(10.0, 400.0), any_size(0.1, 100.0), 0.0..10.0_f64)
}

fn held_at_speed() -> impl Strategy<Value = Fan> {
    let formula = |(shut, linear, square)| Fan::Formula { shut, linear, square };
    let curve = |(shut, knee, open): (f64, f64, f64)| {
        let points = [(0.0, shut), (knee * open, shut * (1.0 - knee * knee)), (open, 0.0)];
        Fan::Curve(points.map(|(q, p)| (Flow::from_m3h(q), Pressure::from_pa(p))).to_vec())
    };
    prop_oneof![
        (10.0..600.0_f64, 0.0..0.5_f64, 0.0..0.01_f64).prop_map(formula),
        (10.0..600.0_f64, 0.1..0.9_f64, any_size(20.0, 3000.0)).prop_map(curve),
    ]
}

fn any_fan() -> impl Strategy<Value = Fan> {
    prop_oneof![held_at_speed(), any_size(1.0, 3000.0).prop_map(|m3h| Fan::Steady(Flow::from_m3h(m3h)))]
}

fn tree() -> impl Strategy<Value = Tree> {
    let ducts = |most| prop::collection::vec(tube(), 1..=most);
    let place = (any::<Index>(), ducts(3), ducts(4));
    let places = prop::collection::vec(place.prop_map(|(hangs_on, ways, out)| Place { hangs_on, ways, out }), 1..20);
    let whole = (any_fan(), prop::option::of(held_at_speed()), any::<bool>(), places);
    whole.prop_map(|(fan, helper, extracts, joints)| Tree { fan, helper, extracts, joints })
}

fn law((bore, length, losses): Tube) -> Law {
    Law::default().duct(Duct {
        section: Section::Round(Length::from_mm(bore)),
        roughness: Length::from_mm(0.09),
        length: Length::from_m(length),
        bends: &[],
        fittings: losses,
        air: Air::STANDARD,
    })
}

/// A tree with what flows in it.
struct Flows {
    network: Network,
    joints: Vec<Joint>,
    flowing: Flowing,
}

impl Flows {
    fn of(tree: &Tree) -> Self {
        let mut network = Network::default();
        let add = |network: &mut Network, a, b, tube: &Tube, fan: Option<&Fan>| {
            let (from, to) = if tree.extracts { (b, a) } else { (a, b) };
            network.branch(Branch { from, to, law: law(*tube), fan: fan.cloned() }).expect("a branch of a tree");
        };
        let mut shallow: Vec<(Joint, usize)> = Vec::new();
        let mut joints = Vec::new();
        for (at, place) in tree.joints.iter().enumerate() {
            let joint = network.joint();
            joints.push(joint);
            let above = (at > 0).then(|| shallow[place.hangs_on.index(shallow.len())]);
            let (parent, depth) = above.map_or((End::Open, 1), |(parent, depth)| (End::At(parent), depth + 1));
            if depth < DEEPEST {
                shallow.push((joint, depth));
            }
            let (ways, fan) = if at == 0 { (1, Some(&tree.fan)) } else { (place.ways.len(), None) };
            place.ways[..ways].iter().for_each(|way| add(&mut network, parent, End::At(joint), way, fan));
            let last = at + 1 == tree.joints.len();
            for (nth, out) in place.out.iter().enumerate() {
                let helper = tree.helper.as_ref().filter(|_| last && nth == 0);
                add(&mut network, End::At(joint), End::Open, out, helper);
            }
        }
        let flowing = network.solve(None).expect("no joint is a dead end");
        Self { network, joints, flowing }
    }

    fn branches(&self) -> impl Iterator<Item = (&Branch, f64)> {
        self.network.branches().iter().zip(self.flowing.flows.iter().map(|flow| flow.as_m3h()))
    }

    fn pressure(&self, end: End) -> f64 {
        match end {
            End::Open => 0.0,
            End::At(joint) => self.flowing.pressure(joint).expect("a joint of this tree").as_pa(),
        }
    }

    /// What a branch takes, what its fan gives, and the pressures at its ends.
    fn pressures(&self, branch: &Branch, m3h: f64) -> (f64, f64, [f64; 2]) {
        let flow = Flow::from_m3h(m3h);
        let ends = [branch.from, branch.to].map(|end| self.pressure(end));
        let taken = branch.law.pressure(flow).as_pa();
        let given =
            branch.fan.as_ref().map(|fan| fan.pressure(flow).map_or(taken - ends[0] + ends[1], Pressure::as_pa));
        (taken, given.unwrap_or(0.0), ends)
    }
}

proptest! {
    #![proptest_config(few(400))]

    #[test]
    fn every_joint_keeps_its_air(tree in tree()) {
        let flows = Flows::of(&tree);
        prop_assert!(flows.flowing.at_rest, "{} steps", flows.flowing.steps);
        let largest = flows.branches().fold(0.0_f64, |largest, (_, m3h)| largest.max(m3h.abs()));
        for joint in flows.joints.iter().map(|joint| End::At(*joint)) {
            let there = flows.branches().filter(|(branch, _)| branch.from == joint || branch.to == joint);
            let (sum, most) = there.fold((0.0_f64, 0.0_f64), |(sum, most), (branch, m3h)| {
                (if branch.from == joint { sum + m3h } else { sum - m3h }, most.max(m3h.abs()))
            });
            prop_assert!(sum.abs() <= 1e-12 * most + 1e-16 * largest, "{joint:?}: {sum} of {most} m³/h");
        }
    }

    /// Along every duct, and so along every way through the tree, to a part of what that duct takes and its fan gives. The last
    /// term is how exactly a difference of two pressures can be written down.
    #[test]
    fn pressures_add_up(tree in tree()) {
        let flows = Flows::of(&tree);
        for (branch, m3h) in flows.branches() {
            let (taken, given, [from, to]) = flows.pressures(branch, m3h);
            let off = (from + given - taken - to).abs();
            let written = 1e-14 * (from.abs() + to.abs() + given.abs());
            prop_assert!(off <= 3e-9 * (taken.abs() + given.abs()) + written, "{m3h} m³/h take {taken} and not {} Pa", from + given - to);
        }
    }

    /// What the fans give is what the ducts use up.
    #[test]
    fn energy_is_kept(tree in tree()) {
        let flows = Flows::of(&tree);
        let (mut used, mut given, mut turned) = (0.0, 0.0, 0.0);
        for (branch, m3h) in flows.branches() {
            let (taken, lift, _) = flows.pressures(branch, m3h);
            used += m3h * taken;
            given += m3h * lift;
            turned += (m3h * taken).abs() + (m3h * lift).abs();
        }
        prop_assert!((used - given).abs() <= 1e-9 * turned, "{used} and {given}");
    }
}
