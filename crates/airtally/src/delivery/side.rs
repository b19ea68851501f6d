//! One side of the unit, with the working behind its pressures.

use super::ducts::{Ducts, Path, Taken};
use super::{Drop, Rung, Side, built};
use crate::duct::change::{INTO_BOX, INTO_TUBE};
use crate::duct::restrictor;
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::house::{Field, RoomField};
use crate::issue::{Issue, Place, Trouble};
use crate::quantity::{Flow, Length, Pressure, Unit, Velocity};
use crate::rules::{Air, Level};
use crate::runs::{Run, Runs};
use crate::shares::Shares;
use crate::source::{ARITHMETIC, PRACTICE, Source};
use crate::working::{Origin, Term, Traced, Working};

pub(super) static DARCY: Source =
    Source::published("Darcy and Weisbach", "", "friction after Churchill 1977, bends after Idelchik, diagram 6-1");
static PLATE: Source = Source::memory("Idelchik", "3rd edition", "diagram 4-11, thin sharp plate");

pub(super) struct Making<'a> {
    air: Air,
    runs: Vec<&'a Run>,
    ducts: Ducts,
    totals: [Flow; 2],
    givens: &'a Givens,
    working: &'a mut Working,
    issues: &'a mut Vec<Issue>,
}

/// A run with its valve open.
struct Open<'a> {
    run: &'a Run,
    normal: Traced<Pressure>,
    boost: Traced<Pressure>,
}

impl<'a> Making<'a> {
    /// `None` where nothing flows.
    pub fn new(
        air: Air,
        shares: &Shares,
        runs: &'a Runs,
        givens: &'a Givens,
        working: &'a mut Working,
        issues: &'a mut Vec<Issue>,
    ) -> Option<Self> {
        let ducts = Ducts::of(givens, runs.bore, runs.tube.outside_mm())?;
        let totals = [Level::Normal, Level::Boost].map(|level| shares.at(level).total);
        let flowing = runs.side(air).filter(|run| run.normal > Flow::ZERO && run.tubes.value > 0);
        let runs: Vec<&Run> = flowing.collect();
        (!runs.is_empty()).then_some(Self { air, runs, ducts, totals, givens, working, issues })
    }

    pub fn side(mut self) -> Option<Side> {
        let open: Vec<Open> = self.runs.clone().into_iter().map(|run| self.open(run)).collect();
        let (first, rest) = open.split_first()?;
        let more = |most: Traced<Pressure>, own: Traced<Pressure>| if own.value > most.value { own } else { most };
        let index = rest.iter().fold(first.normal, |most, open| more(most, open.normal));
        let index_boost = rest.iter().fold(first.boost, |most, open| more(most, open.boost));
        let planned: Vec<_> = open.iter().map(|open| (open.run, index.value - open.normal.value)).collect();
        let built = built::flows(&self.ducts, &planned);
        let runs: Vec<Drop> = open.iter().zip(built).map(|(open, built)| self.drop(open, index, built)).collect();
        self.warn(&runs);
        let [normal, boost] = self.totals;
        let (normal, ladder) = self.external(index, normal);
        let (boost, _) = self.external(index_boost, boost);
        Some(Side { air: self.air, normal, boost, ladder, runs })
    }

    fn open(&mut self, run: &'a Run) -> Open<'a> {
        Open { run, normal: self.pressure(run, run.normal), boost: self.pressure(run, run.boost) }
    }

    fn drop(&mut self, open: &Open, index: Traced<Pressure>, built: Option<Flow>) -> Drop {
        let Open { run, normal, boost } = *open;
        let is_index = normal.line == index.line;
        let added = index.value - normal.value;
        let terms = [pascal("p_index", index), pascal("p", normal)];
        let line = (added.as_pa(), Unit::Pascal);
        let line = self.working.record_for(Some(run.room), Formula::Throttle, line, &ARITHMETIC, &terms);
        let throttle = Traced { value: added, line };
        let hole = if is_index { None } else { self.hole(run, throttle) };
        let built = built.map(|flow| self.built(run, flow));
        Drop { room: run.room, normal, boost, index: is_index, throttle, hole, built }
    }

    /// What a run takes with its valve open.
    fn pressure(&mut self, run: &Run, flow: Flow) -> Traced<Pressure> {
        let each = flow / f64::from(run.tubes.value);
        let path = self.ducts.tube(run.legs.unwrap_or(self.ducts.length));
        let valve = self.valve(run, each);
        let taken = path.at(each);
        let value = taken.pressure + valve.value;
        let length = match run.legs {
            Some(_) => Origin::Typed(Field::Room(run.room, legs_field(self.air))),
            None => Origin::Given(GivenId::RunLength),
        };
        let [f, l, d, k, v, rho] = duct_terms(&path, &taken, length, Origin::Counted);
        let terms = [f, l, d, k, v, rho, pascal("p_valve", valve)];
        let line = (value.as_pa(), Unit::Pascal);
        let line = self.working.record_for(Some(run.room), Formula::RunPressure, line, &DARCY, &terms);
        Traced { value, line }
    }

    fn valve(&mut self, run: &Run, flow: Flow) -> Traced<Pressure> {
        let value = self.ducts.valve_at(flow);
        let rated = self.givens.term("p_30", GivenId::ValvePressure);
        let terms = [rated, Term::new("q", flow.as_m3h(), Unit::CubicMetrePerHour, Origin::Counted)];
        let line = (value.as_pa(), Unit::Pascal);
        let line = self.working.record_for(Some(run.room), Formula::ValvePressure, line, &PRACTICE, &terms);
        Traced { value, line }
    }

    /// The hole of a plate in each tube.
    fn hole(&mut self, run: &Run, throttle: Traced<Pressure>) -> Option<Traced<Length>> {
        let each = run.normal / f64::from(run.tubes.value);
        let (bore, air) = (self.ducts.bore, self.ducts.indoor);
        let value = restrictor::hole_for(throttle.value, each, bore, air)?;
        let speed = self.ducts.tube(self.ducts.length).speed(each);
        let terms = [
            pascal("throttle", throttle),
            Term::new("d", bore.as_mm(), Unit::Millimetre, Origin::Counted),
            metres_a_second(speed),
            Term::new("ρ", air.density(), Unit::Ratio, Origin::Counted),
        ];
        let line = (value.as_mm(), Unit::Millimetre);
        let line = self.working.record_for(Some(run.room), Formula::ThrottleHole, line, &PLATE, &terms);
        Some(Traced { value, line })
    }

    fn built(&mut self, run: &Run, flow: Flow) -> Traced<Flow> {
        let (length, tubes) = built::pulled(&self.ducts, run);
        let terms = [
            Term::new("q_plan", run.normal.as_m3h(), Unit::CubicMetrePerHour, Origin::Counted),
            Term::new("L", length.as_m(), Unit::Metre, Origin::Counted),
            Term::new("n", f64::from(tubes), Unit::Count, Origin::Counted),
        ];
        let line = (flow.as_m3h(), Unit::CubicMetrePerHour);
        let line = self.working.record_for(Some(run.room), Formula::BuiltFlow, line, &DARCY, &terms);
        Traced { value: flow, line }
    }

    /// What the unit must give: the index run, the main with its silencer, the outside duct and its grille.
    fn external(&mut self, index: Traced<Pressure>, total: Flow) -> (Traced<Pressure>, [(Rung, Pressure); 5]) {
        let givens = self.givens;
        let (main, outside) = (givens.length(GivenId::MainLength), givens.length(GivenId::OutdoorDuct));
        let silencer = givens.length(GivenId::SilencerLength);
        let (indoor, outdoor) = (self.ducts.indoor, self.ducts.outdoor);
        let main = self.ducts.main(main + silencer * SILENCER, INTO_TUBE + INTO_BOX, indoor);
        let outside = self.ducts.main(outside, INTO_TUBE, outdoor);
        let main = self.duct(&main, total, Origin::Given(GivenId::MainLength));
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

    fn duct(&mut self, path: &Path, flow: Flow, length: Origin) -> Traced<Pressure> {
        let taken = path.at(flow);
        let value = taken.pressure;
        let terms = duct_terms(path, &taken, length, Origin::Given(GivenId::ColdDuct));
        let line = self.working.record(Formula::DuctPressure, (value.as_pa(), Unit::Pascal), &DARCY, &terms);
        Traced { value, line }
    }

    /// The grille is chosen so that its face is as fast as it may be at boost.
    fn grille(&mut self, flow: Flow) -> Traced<Pressure> {
        let fastest = Velocity::of(self.givens.measure(GivenId::FaceSpeed)).unwrap_or(Velocity::ZERO);
        let speed = fastest * (flow.as_m3h() / self.totals[1].as_m3h());
        let air = self.ducts.outdoor;
        let loss = self.givens.term("K", GivenId::GrilleLoss);
        let value = Pressure::from_pa(loss.value * air.density() * speed.as_ms() * speed.as_ms() / 2.0);
        let terms = [loss, metres_a_second(speed), Term::new("ρ", air.density(), Unit::Ratio, Origin::Counted)];
        let line = self.working.record(Formula::GrillePressure, (value.as_pa(), Unit::Pascal), &PRACTICE, &terms);
        Traced { value, line }
    }

    fn warn(&mut self, runs: &[Drop]) {
        let most = self.givens.value(GivenId::RunPressureMost);
        for drop in runs.iter().filter(|drop| drop.normal.value.as_pa() > most) {
            let trouble = Trouble::RunTakesMuch { pascal: drop.normal.value.as_pa(), limit: most };
            self.issues.push(Issue::new(Place::Room(drop.room), trouble));
        }
    }
}

fn legs_field(air: Air) -> RoomField {
    match air {
        Air::Supply => RoomField::SupplyRun,
        Air::Extract => RoomField::ExtractRun,
    }
}

/// What goes into a duct's pressure.
fn duct_terms(path: &Path, taken: &Taken, length: Origin, bore: Origin) -> [Term; 6] {
    [
        Term::new("f", taken.factor, Unit::Ratio, Origin::Counted),
        Term::new("L", path.length.as_m(), Unit::Metre, length),
        Term::new("d", path.bore.as_mm(), Unit::Millimetre, bore),
        Term::new("K", taken.losses, Unit::Ratio, Origin::Counted),
        metres_a_second(taken.speed),
        Term::new("ρ", path.air.density(), Unit::Ratio, Origin::Counted),
    ]
}

fn metres_a_second(speed: Velocity) -> Term {
    Term::new("v", speed.as_ms(), Unit::MetrePerSecond, Origin::Counted)
}

fn pascal(symbol: &'static str, pressure: Traced<Pressure>) -> Term {
    Term::new(symbol, pressure.value.as_pa(), Unit::Pascal, Origin::Line(pressure.line))
}

/// A straight round silencer takes about twice what a duct of its length takes: it adds as much again. Common practice.
const SILENCER: f64 = 2.0;
