//! Finding the flows.
//!
//! The flows that every joint keeps are sought for which the branches' pressures add up: the lowest point of a bowl, since
//! every branch resists more the more flows. Newton's steps go there; where a step would climb the other wall it is cut
//! short on the line between. Joints form a tree, so each step eliminates them from the leaves to the root: its cost grows
//! with the number of branches and nothing is allocated on the way. Sums over the tree have one sign and falls of pressure are
//! found as such, not as differences: a hair-thin tube beside a wide one is as exact as the wide one.

use super::law::SECONDS_PER_HOUR;
use super::{Branch, End, Fault, Joint, Network};
use crate::quantity::Flow;

/// What flows.
#[derive(Clone, Debug, PartialEq)]
pub struct Flowing {
    /// The flow of each branch, in their order.
    pub flows: Vec<Flow>,
    /// Pressure of each joint, Pa.
    pub(super) pressures: Vec<f64>,
    /// Steps it took.
    pub steps: u32,
    /// Whether the steps came to rest. They do; a page says so if ever they should not.
    pub at_rest: bool,
}

/// Where the search begins: the flows of a house that is like this one.
pub type Start<'a> = Option<&'a Flowing>;

impl Network {
    /// The flows of all branches.
    ///
    /// * Errors: [`Fault::DeadEnd`]; every flow, however small beside the others, agrees to about 10⁻⁹ of itself with the exact
    ///   answer of the same laws, as long as it is more than 10⁻⁹ of the largest
    /// * Source: Newton's method on the flows with the pressures eliminated, after Todini and Pilati 1988 (from memory)
    ///
    /// ```
    /// use airtally::network::{Branch, End, Fan, Law, Network};
    /// use airtally::quantity::{Flow, Pressure};
    /// // Worked numbers of a handbook: fan 200 − 0.004·Q², common path 0.002·Q², two tubes 0.05·q² and 0.08·q².
    /// let quadratic = |pascal: f64| Law::default().rated(Pressure::ZERO, Pressure::from_pa(pascal), Flow::from_m3h(1.0));
    /// let mut network = Network::default();
    /// let manifold = network.joint();
    /// let fan = Some(Fan::Formula { shut: 200.0, linear: 0.0, square: 0.004 });
    /// network.branch(Branch { from: End::Open, to: End::At(manifold), law: quadratic(0.002), fan })?;
    /// for pascal in [0.05, 0.08] {
    ///     network.branch(Branch { from: End::At(manifold), to: End::Open, law: quadratic(pascal), fan: None })?;
    /// }
    /// let flowing = network.solve(None)?;
    /// let [all, wide, narrow] = [0, 1, 2].map(|at| flowing.flows[at].as_m3h());
    /// assert!((all - 96.24).abs() < 0.005 && (wide - 53.75).abs() < 0.005 && (narrow - 42.49).abs() < 0.005);
    /// assert!((flowing.pressure(manifold).unwrap().as_pa() - 144.4).abs() < 0.1);
    /// # Ok::<(), airtally::network::Fault>(())
    /// ```
    pub fn solve(&self, start: Start) -> Result<Flowing, Fault> {
        if let Some(joint) = self.dead_end() {
            return Err(Fault::DeadEnd { joint });
        }
        let mut search = Search::begin(self, start);
        let mut steps = 0;
        while steps < MOST_STEPS && !search.step(self, steps) {
            steps += 1;
        }
        let flows = search.flow.iter().map(|flow| Flow::from_m3h(flow * SECONDS_PER_HOUR)).collect();
        Ok(Flowing { flows, pressures: search.pressure, steps, at_rest: steps < MOST_STEPS })
    }
}

/// All that a step needs, allocated once.
struct Search {
    /// m³/s of each branch.
    flow: Vec<f64>,
    /// What each branch takes beyond its fan, Pa.
    taken: Vec<f64>,
    /// How easily each branch gives: m³/s for each Pa.
    ease: Vec<f64>,
    /// The change that the step asks for.
    change: Vec<f64>,
    /// Pa of each joint.
    pressure: Vec<f64>,
    /// Pa from the parent of each joint to it.
    fall: Vec<f64>,
    /// The joints' equations: how easily air goes to the open through all that hangs on a joint, and to its parent; right side.
    out: Vec<f64>,
    up: Vec<f64>,
    right: Vec<f64>,
}

impl Search {
    fn begin(network: &Network, start: Start) -> Self {
        let (branches, joints) = (network.branches.len(), network.parents.len());
        let like = start.filter(|start| start.flows.len() == branches);
        let mut flow = first_guess(network);
        for (at, branch) in network.branches.iter().enumerate() {
            let held = branch.fan.as_ref().and_then(|fan| fan.steady());
            let before = like.and_then(|like| like.flows.get(at)).map(|flow| flow.as_m3h() / SECONDS_PER_HOUR);
            flow[at] = held.or(before).unwrap_or(flow[at]);
        }
        let mut search = Self {
            flow,
            taken: vec![0.0; branches],
            ease: vec![0.0; branches],
            change: vec![0.0; branches],
            pressure: vec![0.0; joints],
            fall: vec![0.0; joints],
            out: vec![0.0; joints],
            up: vec![0.0; joints],
            right: vec![0.0; joints],
        };
        search.weigh(network);
        search
    }

    /// One step; `true` when it changed next to nothing.
    fn step(&mut self, network: &Network, steps: u32) -> bool {
        self.balance(network);
        let largest = self.flow.iter().fold(STILL, |largest, flow| flow.abs().max(largest));
        let mut rests = true;
        for (at, branch) in network.branches.iter().enumerate() {
            let (ease, taken) = (self.ease[at], self.taken[at]);
            let change = ease * (self.drop(branch) - taken);
            self.change[at] = change;
            self.flow[at] += change;
            rests &= change.abs() <= REST * self.flow[at].abs() + ROUNDED * (largest + ease * taken.abs());
        }
        if rests {
            return true;
        }
        let falls = self.downhill();
        self.weigh(network);
        if steps > 0 {
            self.shorten(network, falls);
        }
        false
    }

    /// The pressure along a branch.
    fn drop(&self, branch: &Branch) -> f64 {
        match (branch.from, branch.to) {
            (End::Open, End::Open) => 0.0,
            (End::At(Joint(from)), End::Open) => self.pressure[from],
            (End::Open, End::At(Joint(to))) => -self.pressure[to],
            (End::At(from), End::At(to)) if from < to => self.fall[to.0],
            (End::At(from), End::At(_)) => -self.fall[from.0],
        }
    }

    /// What every branch takes, and how easily it gives, at the flows of now.
    fn weigh(&mut self, network: &Network) {
        for (at, branch) in network.branches.iter().enumerate() {
            let law = branch.law.at(self.flow[at]);
            let Some(fan) = &branch.fan else {
                self.taken[at] = law.pressure;
                self.ease[at] = 1.0 / law.slope.max(FLATTEST);
                continue;
            };
            let drive = fan.drive(self.flow[at]);
            self.taken[at] = law.pressure - drive.pressure;
            let ease = 1.0 / (law.slope - drive.slope).max(FLATTEST);
            self.ease[at] = if fan.steady().is_some() { 0.0 } else { ease };
        }
    }

    /// The pressures at which every joint keeps its air, branches taken as straight lines.
    fn balance(&mut self, network: &Network) {
        self.out.fill(0.0);
        self.up.fill(0.0);
        self.right.fill(0.0);
        for (at, branch) in network.branches.iter().enumerate() {
            let ease = self.ease[at];
            let straight = self.flow[at] - ease * self.taken[at];
            match (branch.from, branch.to) {
                (End::At(from), End::At(to)) => self.up[from.max(to).0] += ease,
                (End::At(Joint(at)), End::Open) | (End::Open, End::At(Joint(at))) => self.out[at] += ease,
                (End::Open, End::Open) => {}
            }
            if let End::At(Joint(from)) = branch.from {
                self.right[from] -= straight;
            }
            if let End::At(Joint(to)) = branch.to {
                self.right[to] += straight;
            }
        }
        self.eliminate(&network.parents);
    }

    /// From the leaves to the root, and back.
    fn eliminate(&mut self, parents: &[Option<Joint>]) {
        for at in (0..parents.len()).rev() {
            let all = (self.out[at] + self.up[at]).max(f64::MIN_POSITIVE);
            if let Some(Joint(parent)) = parents[at] {
                let share = self.up[at] / all;
                self.out[parent] += share * self.out[at];
                self.right[parent] += share * self.right[at];
            }
        }
        for (at, parent) in parents.iter().enumerate() {
            let all = (self.out[at] + self.up[at]).max(f64::MIN_POSITIVE);
            let above = parent.map_or(0.0, |Joint(parent)| self.pressure[parent]);
            self.pressure[at] = (self.right[at] + self.up[at] * above) / all;
            self.fall[at] = (self.out[at] * above - self.right[at]) / all;
        }
    }

    /// How steeply the bowl falls along the change: below nought on the way down.
    fn downhill(&self) -> f64 {
        self.taken.iter().zip(&self.change).map(|(taken, change)| taken * change).sum()
    }

    /// Cuts a step short that went too far up the other side.
    fn shorten(&mut self, network: &Network, falls: f64) {
        let mut part = 1.0;
        for _ in 0..MOST_CUTS {
            let rises = self.downhill();
            if falls >= 0.0 || rises <= -STEEP * falls {
                return;
            }
            let shorter = part * (falls / (falls - rises)).max(SHORTEST);
            for (flow, change) in self.flow.iter_mut().zip(&self.change) {
                *flow -= (part - shorter) * change;
            }
            part = shorter;
            self.weigh(network);
        }
    }
}

/// Every tube into the open carries the same, and what leads to tubes carries what they carry.
fn first_guess(network: &Network) -> Vec<f64> {
    let mut tubes = vec![0_u32; network.parents.len()];
    let mut ways = vec![0_u32; network.parents.len()];
    let (mut all, mut fans) = (0_u32, 0_u32);
    for branch in &network.branches {
        match (branch.from, branch.to) {
            (End::At(from), End::At(to)) => ways[from.max(to).0] += 1,
            _ if branch.fan.is_some() => fans += 1,
            (End::At(Joint(at)), End::Open) | (End::Open, End::At(Joint(at))) => {
                tubes[at] += 1;
                all += 1;
            }
            (End::Open, End::Open) => {}
        }
    }
    for at in (0..tubes.len()).rev() {
        if let Some(Joint(parent)) = network.parents[at] {
            tubes[parent] += tubes[at];
        }
    }
    let share = |tubes: u32, ways: u32| FIRST_GUESS * f64::from(tubes.max(1)) / f64::from(ways.max(1));
    let guess = |branch: &Branch| match (branch.from, branch.to) {
        (End::At(from), End::At(to)) => share(tubes[from.max(to).0], ways[from.max(to).0]),
        _ if branch.fan.is_some() => share(all, fans),
        _ => FIRST_GUESS,
    };
    network.branches.iter().map(guess).collect()
}

/// m³/s: 18 m³/h, what a tube of a house carries.
const FIRST_GUESS: f64 = 0.005;
/// Steps come to rest when no flow changes by more than this share of itself: what is left is about its square …
const REST: f64 = 2e-5;
/// … or by what rounding makes of the largest flow and of the pressure of a fan.
const ROUNDED: f64 = 2e-15;
/// m³/s: a house in which nothing flows faster than this is still.
const STILL: f64 = 1e-6;
/// Newton takes 5 to 8.
const MOST_STEPS: u32 = 200;
const MOST_CUTS: u32 = 30;
/// A step may climb as steeply as it fell, but for this.
const STEEP: f64 = 0.9;
/// A step is never cut below this part of itself at once.
const SHORTEST: f64 = 0.05;
/// Pa for each m³/s: a branch never counts as easier than this.
const FLATTEST: f64 = 1e-3;
