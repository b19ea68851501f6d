//! One side of the unit as a network: outdoors, trunk, manifolds, every run with its throttle, leaks.

use super::ducts::Ducts;
use super::mains::Mains;
use crate::duct::restrictor::thin_plate;
use crate::duct::terminal::PowerLaw;
use crate::house::RoomId;
use crate::network::{Branch, End, Fan, Joint, Law, Network};
use crate::quantity::{Flow, Length, Pressure};
use crate::runs::{Manifold, Run};

/// A side with its valves set.
pub(super) struct Plan<'a> {
    pub ducts: Ducts,
    pub mains: Mains,
    pub manifolds: &'a [Manifold],
    /// Every run with what its throttle takes at normal.
    pub runs: Vec<(&'a Run, Pressure)>,
    pub normal: Flow,
    pub boost: Flow,
}

/// How a side is met.
pub(super) struct Met {
    pub fan: Fan,
    /// What filters take more than clean ones, at normal.
    pub filter: Pressure,
    /// Leaks at each manifold by its share of the air, together.
    pub leak: Option<PowerLaw>,
    /// Whether runs lie as they were pulled, where that was written down.
    pub pulled: bool,
    /// What has happened to the run of a room.
    pub upset: Option<(RoomId, Upset)>,
}

/// What has happened to a run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Upset {
    /// The air of its room leaves or comes through a crack: what that takes at a flow.
    Door(Pressure, Flow),
    /// One of its tubes is kinked to half its bore.
    Kinked,
    /// One of its tubes is shut.
    Shut,
}

/// What flows.
pub(super) struct Flows {
    /// Through the unit.
    pub unit: Flow,
    /// Out of leaks, or into them.
    pub leaks: Flow,
    /// Each run.
    pub runs: Vec<Flow>,
    /// What the unit's fan had to give outside it.
    pub pressure: Pressure,
}

impl Plan<'_> {
    /// What flows; `None` where the network cannot be built or does not come to rest.
    pub fn flows(&self, met: &Met) -> Option<Flows> {
        let mut making = Making { network: Network::default(), leaks: Vec::new(), runs: Vec::new() };
        let law = self.mains.common(self.boost).rated(met.filter, Pressure::ZERO, self.normal);
        let root = making.network.joint();
        let fan = Some(met.fan.clone());
        making.network.branch(Branch { from: End::Open, to: End::At(root), law: law.clone(), fan }).ok()?;
        for (at, manifold) in self.manifolds.iter().enumerate() {
            let own: Vec<_> = self.runs.iter().enumerate().filter(|(_, (run, _))| run.manifold == at).collect();
            if own.is_empty() {
                continue;
            }
            let from = self.manifold(&mut making, root, manifold)?;
            for (place, (run, throttle)) in own {
                let tubes = self.run(&mut making, from, run, *throttle, met)?;
                making.runs.push((place, tubes));
            }
            self.leak(&mut making, from, manifold, met)?;
        }
        let flowing = making.network.solve(None).ok().filter(|flowing| flowing.at_rest)?;
        let mut runs = vec![Flow::ZERO; self.runs.len()];
        for (place, tubes) in &making.runs {
            runs[*place] = sum(&flowing.flows, tubes);
        }
        let unit = flowing.flows.first().copied()?;
        let pressure = law.pressure(unit) + flowing.pressure(root)?;
        Some(Flows { unit, leaks: sum(&flowing.flows, &making.leaks), runs, pressure })
    }

    fn manifold(&self, making: &mut Making, root: Joint, manifold: &Manifold) -> Option<Joint> {
        let Some(path) = self.mains.branch(manifold) else { return Some(root) };
        let joint = making.network.joint();
        making.put(End::At(root), End::At(joint), path.law())?;
        Some(joint)
    }

    /// The tubes of a run, its valve and its throttle. Gives back the branches that carry its air into the room.
    fn run(&self, making: &mut Making, from: Joint, run: &Run, throttle: Pressure, met: &Met) -> Option<Vec<usize>> {
        let planned = run.legs.unwrap_or(self.ducts.length);
        let built = run.built.filter(|_| met.pulled);
        let (length, tubes) =
            built.map_or((planned, run.tubes.value), |built| (built.length.unwrap_or(planned), built.tubes));
        let upset = met.upset.filter(|(room, _)| *room == run.room).map(|(_, upset)| upset);
        let end = |law: Law| law.throttle(throttle, run.normal);
        match upset {
            Some(Upset::Kinked) => self.kinked(making, from, run, (length, tubes), end),
            Some(Upset::Shut) if tubes <= 1 => Some(Vec::new()),
            Some(Upset::Shut) => making.end_in_room(from, end(self.ducts.run(run, length, tubes - 1))),
            Some(Upset::Door(pressure, flow)) => {
                let law = end(self.ducts.run(run, length, tubes.max(1)));
                making.end_in_room(from, law.rated(Pressure::ZERO, pressure, flow))
            }
            None => making.end_in_room(from, end(self.ducts.run(run, length, tubes.max(1)))),
        }
    }

    /// One tube with a kink beside the others, all into the box behind the valve.
    fn kinked(
        &self,
        making: &mut Making,
        from: Joint,
        run: &Run,
        (length, tubes): (Length, u32),
        end: impl Fn(Law) -> Law,
    ) -> Option<Vec<usize>> {
        let path = self.ducts.tube_of(run, length);
        let mut tight = path;
        tight.ends += thin_plate(HALF)?;
        let valve = end(self.ducts.valve_law(run));
        if tubes <= 1 {
            return making.end_in_room(from, tight.law().and(valve));
        }
        let behind = making.network.joint();
        making.put(End::At(from), End::At(behind), path.laws(tubes - 1))?;
        making.put(End::At(from), End::At(behind), tight.law())?;
        making.end_in_room(behind, valve)
    }

    /// Leaks where a manifold stands, as large as its share of the air.
    fn leak(&self, making: &mut Making, from: Joint, manifold: &Manifold, met: &Met) -> Option<()> {
        let Some(law) = met.leak else { return Some(()) };
        let share = manifold.normal.as_m3h() / self.normal.as_m3h();
        if share > 0.0 {
            let branch = making.put(End::At(from), End::Open, Law::default().terminal(law.part(share)))?;
            making.leaks.push(branch);
        }
        Some(())
    }
}

struct Making {
    network: Network,
    leaks: Vec<usize>,
    /// The place of each run with its branches.
    runs: Vec<(usize, Vec<usize>)>,
}

impl Making {
    fn put(&mut self, from: End, to: End, law: Law) -> Option<usize> {
        self.network.branch(Branch { from, to, law, fan: None }).ok()
    }

    fn end_in_room(&mut self, from: Joint, law: Law) -> Option<Vec<usize>> {
        Some(vec![self.put(End::At(from), End::Open, law)?])
    }
}

fn sum(flows: &[Flow], branches: &[usize]) -> Flow {
    branches.iter().filter_map(|at| flows.get(*at)).fold(Flow::ZERO, |sum, flow| sum + *flow)
}

/// In bores.
const HALF: f64 = 0.5;
