//! One side of the unit, with the working behind its pressures.

use super::ducts::{Ducts, Measured};
use super::lines::{SETTING_FLOW, pascal};
use super::mains::Mains;
use super::plan::{Met, Plan};
use super::unit::Blower;
use super::{Drop, Rung, Side, built};
use crate::curve::{Points, over_flow};
use crate::duct::section::Section;
use crate::duct::terminal::PowerLaw;
use crate::facts::Facts;
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::house::Field;
use crate::id::Curve;
use crate::issue::{Issue, Place, Trouble};
use crate::network::Fan;
use crate::quantity::{Flow, Pressure, Unit};
use crate::rules::{Air, Level};
use crate::runs::{Manifold, Run, Runs};
use crate::shares::Shares;
use crate::source::{ARITHMETIC, Source};
use crate::working::{Origin, Term, Traced, Working};

pub(super) static DARCY: Source =
    Source::published("Darcy and Weisbach", "", "friction after Churchill 1977, bends after Idelchik, diagram 6-1");

pub(super) struct Making<'a> {
    pub(super) air: Air,
    pub(super) runs: Vec<&'a Run>,
    pub(super) manifolds: &'a [Manifold],
    pub(super) section: Section,
    pub(super) ducts: Ducts,
    pub(super) mains: Mains,
    pub(super) fan: Option<&'a Points>,
    pub(super) settings: Option<&'a Points>,
    pub(super) totals: [Flow; 2],
    pub(super) givens: &'a Givens,
    pub(super) working: &'a mut Working,
    pub(super) issues: &'a mut Vec<Issue>,
}

/// A run with its valve open: its own pressure, and with the main of its own that leads to its manifold.
struct Open<'a> {
    run: &'a Run,
    normal: Traced<Pressure>,
    boost: Traced<Pressure>,
    way: Traced<Pressure>,
    way_boost: Traced<Pressure>,
}

impl<'a> Making<'a> {
    /// `None` where nothing flows.
    pub fn new(
        air: Air,
        (facts, givens): (&'a Facts, &'a Givens),
        (shares, runs): (&Shares, &'a Runs),
        working: &'a mut Working,
        issues: &'a mut Vec<Issue>,
    ) -> Option<Self> {
        let ducts = ducts(facts, givens, runs)?;
        let totals = [Level::Normal, Level::Boost].map(|level| shares.at(level).total);
        let own: Vec<&Run> = flowing(runs, air).collect();
        let mains = Mains::of(givens, &ducts, by_storey(runs));
        (!own.is_empty()).then_some(Self {
            air,
            runs: own,
            manifolds: &runs.manifolds,
            section: runs.section,
            ducts,
            mains,
            fan: facts.curve(Curve::Fan),
            settings: facts.curve(Curve::Setting),
            totals,
            givens,
            working,
            issues,
        })
    }

    pub fn side(mut self) -> Option<Side> {
        let mains = self.branches();
        let open: Vec<Open> = self.runs.clone().into_iter().map(|run| self.open(run, &mains)).collect();
        let index = most(open.iter().map(|open| open.way))?;
        let index_boost = most(open.iter().map(|open| open.way_boost))?;
        let plan = self.plan(open.iter().map(|open| (open.run, index.value - open.way.value)).collect());
        let built = built::flows(&plan);
        let runs: Vec<Drop> = open.iter().zip(built).map(|(open, built)| self.drop(open, index, built)).collect();
        self.warn(&runs);
        let [normal, boost] = self.totals;
        let (given, ladder) = self.external(index, normal);
        let own = open.iter().find(|open| open.way.line == index.line).map_or(index, |open| open.normal);
        let ladder = with_branch(ladder, own.value);
        let (open_boost, _) = self.external(index_boost, boost);
        let given_boost = self.at_boost(open_boost, given, &plan);
        let duties = [(normal, given.value), (boost, given_boost.value)];
        let blower = Blower::of(self.fan, duties[0], duties[1], self.givens, self.ducts.indoor);
        self.warn_of(&blower, duties[1]);
        Some(Side { air: self.air, normal: given, boost: given_boost, ladder, runs, blower })
    }

    fn plan(&self, runs: Vec<(&'a Run, Pressure)>) -> Plan<'a> {
        let [normal, boost] = self.totals;
        Plan { ducts: self.ducts, mains: self.mains, manifolds: self.manifolds, runs, normal, boost }
    }

    /// What the main of its own takes to each manifold, at normal and at boost; nothing where there is none.
    fn branches(&mut self) -> Vec<Option<[Traced<Pressure>; 2]>> {
        let (manifolds, mains, air) = (self.manifolds, self.mains, self.air);
        let own = |manifold: &Manifold| Some(manifold).filter(|own| own.air == air).and_then(|own| mains.branch(own));
        let taken = manifolds.iter().map(|manifold| {
            let path = own(manifold)?;
            Some(
                [manifold.normal, manifold.boost]
                    .map(|flow| self.duct(&path, flow, Origin::Given(GivenId::MainLength))),
            )
        });
        taken.collect()
    }

    fn open(&mut self, run: &'a Run, mains: &[Option<[Traced<Pressure>; 2]>]) -> Open<'a> {
        let (normal, boost) = (self.pressure(run, run.normal), self.pressure(run, run.boost));
        let main = mains.get(run.manifold).copied().flatten();
        let way = main.map_or(normal, |[main, _]| self.with_main(run, normal, main));
        let way_boost = main.map_or(boost, |[_, main]| self.with_main(run, boost, main));
        Open { run, normal, boost, way, way_boost }
    }

    /// What the unit gives at boost: what the worst run takes with its valve open or, where that is more, what all air takes
    /// through the throttles as they are set at normal.
    fn at_boost(&mut self, open: Traced<Pressure>, given: Traced<Pressure>, plan: &Plan) -> Traced<Pressure> {
        let [normal, boost] = self.totals;
        let met = Met { fan: Fan::Steady(boost), filter: Pressure::ZERO, leak: None, pulled: false, upset: None };
        let set = plan.flows(&met).map(|flows| flows.pressure).filter(|set| *set > open.value + HARDLY);
        let Some(value) = set else { return open };
        let air = |symbol, flow: Flow| Term::new(symbol, flow.as_m3h(), Unit::CubicMetrePerHour, Origin::Counted);
        let terms = [pascal("p_open", open), pascal("p", given), air("q_boost", boost), air("q", normal)];
        let line = self.working.record(Formula::SetPressure, (value.as_pa(), Unit::Pascal), &DARCY, &terms);
        Traced { value, line }
    }

    fn with_main(&mut self, run: &Run, own: Traced<Pressure>, main: Traced<Pressure>) -> Traced<Pressure> {
        let value = own.value + main.value;
        let terms = [pascal("p_run", own), pascal("p_main", main)];
        let line = (value.as_pa(), Unit::Pascal);
        let line = self.working.record_for(Some(run.room), Formula::WayPressure, line, &ARITHMETIC, &terms);
        Traced { value, line }
    }

    fn drop(&mut self, open: &Open, index: Traced<Pressure>, built: Option<Flow>) -> Drop {
        let Open { run, normal, boost, way, .. } = *open;
        let is_index = way.line == index.line;
        let added = index.value - way.value;
        let terms = [pascal("p_index", index), pascal("p", way)];
        let line = (added.as_pa(), Unit::Pascal);
        let line = self.working.record_for(Some(run.room), Formula::Throttle, line, &ARITHMETIC, &terms);
        let throttle = Traced { value: added, line };
        let hole = if is_index { None } else { self.hole(run, throttle) };
        let setting = self.setting(run, throttle);
        let built = built.map(|flow| self.built(run, flow));
        let likely = self.likely(run, normal.value);
        Drop { room: run.room, normal, likely, boost, index: is_index, throttle, hole, setting, built }
    }

    /// What the unit must give: the index run, the main with its silencer, the outside duct and its grille.
    fn external(&mut self, index: Traced<Pressure>, total: Flow) -> (Traced<Pressure>, [(Rung, Pressure); 5]) {
        let Mains { trunk, outside, .. } = self.mains;
        let main = self.duct(&trunk, total, Origin::Given(GivenId::MainLength));
        let outside = self.duct(&outside, total, Origin::Given(GivenId::OutdoorDuct));
        let grille = self.grille(total);
        let value = index.value + main.value + outside.value + grille.value;
        let parts = [("p_index", index), ("p_main", main), ("p_outside", outside), ("p_grille", grille)];
        let terms = parts.map(|(symbol, part)| pascal(symbol, part));
        let line = self.working.record(Formula::ExternalPressure, (value.as_pa(), Unit::Pascal), &ARITHMETIC, &terms);
        let rungs = [Rung::Grille, Rung::Outside, Rung::Main, Rung::IndexRun, Rung::Whole];
        let pressures = [grille.value, outside.value, main.value, index.value, value];
        (Traced { value, line }, std::array::from_fn(|at| (rungs[at], pressures[at])))
    }

    fn warn(&mut self, runs: &[Drop]) {
        let most = self.givens.value(GivenId::RunPressureMost);
        for drop in runs.iter().filter(|drop| drop.normal.value.as_pa() > most) {
            let trouble = Trouble::RunTakesMuch { pascal: drop.normal.value.as_pa(), limit: most };
            self.issues.push(Issue::new(Place::Room(drop.room), trouble));
        }
    }

    fn warn_of(&mut self, blower: &Blower, (flow, needs): (Flow, Pressure)) {
        let known = self.issues.iter().any(|issue| matches!(issue.trouble, Trouble::UnitWeak { .. }));
        if blower.typed && blower.boost.is_none() && !known {
            let trouble =
                Trouble::UnitWeak { gives: blower.most(flow).max(Pressure::ZERO).as_pa(), needs: needs.as_pa() };
            self.issues.push(Issue::new(Place::Field(Field::Curve(Curve::Fan)), trouble));
        }
    }
}

/// A valve that is known by its pressure at 30 m³/h.
fn wide_open(pascal: f64) -> PowerLaw {
    PowerLaw { scale: pascal / (SETTING_FLOW * SETTING_FLOW), exponent: 2.0 }
}

/// The ducts of a house with what was measured of them.
fn ducts(facts: &Facts, givens: &Givens, runs: &Runs) -> Option<Ducts> {
    let law = |curve| facts.curve(curve).and_then(|points| PowerLaw::through(&over_flow(points)));
    let widest = || facts.curve(Curve::Setting).and_then(|points| points.last()).map(|(_, pascal)| wide_open(*pascal));
    let measured = Measured { tube: law(Curve::Tube), valve: law(Curve::Valve).or_else(widest) };
    Ducts::of(givens, runs.section, runs.tube.outside_mm(), measured)
}

/// A side of a house as a network, its runs with what their throttles take.
pub(super) fn plan_of<'a>(
    (facts, givens): (&Facts, &Givens),
    (shares, runs): (&Shares, &'a Runs),
    set: Vec<(&'a Run, Pressure)>,
) -> Option<Plan<'a>> {
    let ducts = ducts(facts, givens, runs)?;
    let mains = Mains::of(givens, &ducts, by_storey(runs));
    let [normal, boost] = [Level::Normal, Level::Boost].map(|level| shares.at(level).total);
    Some(Plan { ducts, mains, manifolds: &runs.manifolds, runs: set, normal, boost })
}

/// Whether each storey has its own manifolds.
fn by_storey(runs: &Runs) -> bool {
    runs.manifolds.iter().any(|own| own.storey.is_some())
}

/// The runs of a side in which something flows.
pub(super) fn flowing(runs: &Runs, air: Air) -> impl Iterator<Item = &Run> {
    runs.side(air).filter(|run| run.normal > Flow::ZERO && run.tubes.value > 0)
}

/// The first of those that take most.
fn most(taken: impl Iterator<Item = Traced<Pressure>>) -> Option<Traced<Pressure>> {
    taken.reduce(|most, own| if own.value > most.value { own } else { most })
}

/// The ladder with the main of the index run's own manifold counted to the mains.
fn with_branch(mut ladder: [(Rung, Pressure); 5], own: Pressure) -> [(Rung, Pressure); 5] {
    let branch = ladder[INDEX].1 - own;
    ladder[INDEX].1 = own;
    ladder[INDEX - 1].1 += branch;
    ladder
}

/// Where the index run stands on the ladder, behind the mains.
const INDEX: usize = 3;
/// Less than any gauge shows.
const HARDLY: Pressure = Pressure::from_pa(0.05);
