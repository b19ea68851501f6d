//! How much of what.

use super::coils::{Coil, Piece, coils};
use crate::delivery::Delivery;
use crate::facts::Facts;
use crate::formula::Formula;
use crate::given::{GivenId as G, Givens};
use crate::house::TubeSize;
use crate::id::{Home, Part as P};
use crate::issue::{Issue, Place, Trouble};
use crate::quantity::{Flow, Length, Pressure, Unit};
use crate::rules::{Air, Level};
use crate::runs::{Run, Runs};
use crate::shares::Shares;
use crate::source::{ARITHMETIC, PRACTICE};
use crate::working::{Origin, Term, Traced, Working};

/// What a house takes.
#[derive(Clone, Debug, PartialEq)]
pub struct TakeOff {
    /// The lines of the list, in its order; nothing that there is none of.
    pub lines: Vec<Line>,
    /// Which tube is cut from which coil.
    pub coils: Vec<Coil>,
    /// Length of a coil.
    pub coil: Length,
}

/// One line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Line {
    /// What.
    pub part: P,
    /// Of which size.
    pub size: Size,
    /// Pieces, metres or hours, to the hundredth.
    pub quantity: Traced<f64>,
}

/// What is needed to order the right one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Size {
    /// Its name says it.
    Plain,
    /// A tube.
    Tube(TubeSize),
    /// So many ports.
    Ports(u32),
    /// A diameter.
    Bore(Length),
    /// A length.
    Long(Length),
    /// Air at a pressure outside the unit.
    Duty(Flow, Pressure),
}

/// Everything the list is made from.
struct Parts<'a> {
    facts: &'a Facts,
    givens: &'a Givens,
    shares: &'a Shares,
    runs: &'a Runs,
    delivery: &'a Delivery,
}

struct Making<'a> {
    of: Parts<'a>,
    working: &'a mut Working,
    lines: Vec<Line>,
}

impl TakeOff {
    /// The list of a house; empty while it has no tubes.
    pub fn of(
        (facts, givens): (&Facts, &Givens),
        (shares, runs, delivery): (&Shares, &Runs, &Delivery),
        working: &mut Working,
        issues: &mut Vec<Issue>,
    ) -> Self {
        let coil = givens.length(G::CoilLength);
        if runs.runs.is_empty() {
            return Self { lines: Vec::new(), coils: Vec::new(), coil };
        }
        let pieces: Vec<Piece> = runs.runs.iter().flat_map(|run| pieces(run, givens)).collect();
        for piece in pieces.iter().filter(|piece| piece.twin == 0 && piece.length > coil) {
            let trouble = Trouble::LongerThanCoil { metres: piece.length.as_m(), coil: coil.as_m() };
            issues.push(Issue::new(Place::Room(piece.room), trouble));
        }
        let metres = pieces.iter().fold(0.0, |sum, piece| sum + piece.length.as_m());
        let mut making = Making { of: Parts { facts, givens, shares, runs, delivery }, working, lines: Vec::new() };
        making.unit();
        making.tubes(metres);
        making.rooms();
        making.mains();
        making.controls();
        making.work();
        Self { lines: making.lines, coils: coils(pieces, coil), coil }
    }
}

/// The tubes of a run, each with its ends and waste.
fn pieces(run: &Run, givens: &Givens) -> Vec<Piece> {
    let length = run.to_cut(givens);
    let piece = |twin| Piece { room: run.room, air: run.air, mark: run.mark, twin, length };
    (0..run.tubes.value).map(piece).collect()
}

impl Making<'_> {
    fn unit(&mut self) {
        let boost = self.of.shares.at(Level::Boost).total;
        let most = self.of.delivery.sides.iter().map(|side| side.boost.value);
        let pressure = most.fold(Pressure::ZERO, |most, own| if own > most { own } else { most });
        self.each((P::Unit, Size::Duty(boost, pressure)), 1.0, 1.0);
        self.each((P::Filters, Size::Plain), 1.0, 1.0);
        let silencer = self.of.givens.length(G::SilencerLength);
        self.each((P::Silencer, Size::Long(silencer)), SIDES, 1.0);
        self.each((P::Trap, Size::Plain), 1.0, 1.0);
        self.given((P::Drain, Size::Plain), 1.0, G::DrainLength);
    }

    fn tubes(&mut self, metres: f64) {
        let runs = self.of.runs;
        let tubes = f64::from(runs.all_tubes());
        let terms = [
            Term::new("n", tubes, Unit::Count, Origin::Counted),
            self.of.givens.term("L_usual", G::RunLength),
            self.of.givens.term("e", G::CutEnd),
            self.of.givens.term("w", G::CutWaste),
        ];
        let line = self.working.record(Formula::TubeMetres, (metres, Unit::Metre), &PRACTICE, &terms);
        self.put((P::Tube, Size::Tube(runs.tube)), Traced { value: metres, line });
        for (part, air) in [(P::SupplyManifold, Air::Supply), (P::ExtractManifold, Air::Extract)] {
            self.manifolds(part, air);
        }
        let ports = f64::from(runs.supply_ports.value.saturating_add(runs.extract_ports.value));
        self.each((P::PortCap, Size::Tube(runs.tube)), (ports - tubes).max(0.0), 1.0);
        self.each((P::SealRing, Size::Tube(runs.tube)), tubes, ENDS);
        let throttled = |run: &&Run| self.of.delivery.drop(run.air, run.room).is_some_and(|drop| drop.hole.is_some());
        let plates = runs.runs.iter().filter(throttled).fold(0, |sum: u32, run| sum.saturating_add(run.tubes.value));
        self.each((P::Restrictor, Size::Tube(runs.tube)), f64::from(plates), 1.0);
        let spacing = match Home::of(self.of.facts.choices.rules) {
            Home::UnitedStates => G::SupportSpacingFeet,
            _ => G::SupportSpacing,
        };
        self.holds((P::Strap, Size::Tube(runs.tube)), metres, spacing);
    }

    /// Manifolds of one air, all as large as the largest of them: one part to keep.
    fn manifolds(&mut self, part: P, air: Air) {
        let own = || self.of.runs.manifolds.iter().filter(|own| own.air == air);
        let ports = own().map(|own| own.ports).max().unwrap_or_default();
        self.each((part, Size::Ports(ports)), own().count() as f64, 1.0);
    }

    fn rooms(&mut self) {
        let runs = self.of.runs;
        let valves = |air| runs.side(air).count() as f64;
        let (supply, extract) = (valves(Air::Supply), valves(Air::Extract));
        self.each((P::ValveBox, Size::Tube(runs.tube)), supply + extract, 1.0);
        self.each((P::SupplyValve, Size::Plain), supply, 1.0);
        self.each((P::ExtractValve, Size::Plain), extract, 1.0);
        let kitchens = self.of.facts.drawn().filter(|room| room.kind.is_kitchen()).count();
        self.each((P::GreaseFilter, Size::Plain), kitchens as f64, 1.0);
    }

    fn mains(&mut self) {
        let givens = self.of.givens;
        let size = Size::Bore(givens.length(G::ColdDuct));
        let main = self.main(size);
        self.given((P::OutsideDuct, size), SIDES, G::OutdoorDuct);
        let ducted = self.mains_count() + SIDES;
        self.given((P::Bend, size), ducted, G::MainBends);
        self.given((P::Insulation, size), SIDES, G::OutdoorDuct);
        self.each((P::Intake, size), 1.0, 1.0);
        self.each((P::Exhaust, size), 1.0, 1.0);
        self.each((P::Sleeve, size), SIDES, 1.0);
        let ducts = main + SIDES * givens.value(G::OutdoorDuct);
        self.holds((P::Bracket, size), ducts, G::BracketSpacing);
        let bends = ducted * givens.value(G::MainBends);
        self.each((P::Joint, size), bends + ducted, ENDS);
    }

    /// The mains: one for each air or, where each storey has manifolds, one for each of these with its rise. Their metres.
    fn main(&mut self, size: Size) -> f64 {
        let rises = self.of.runs.manifolds.iter().filter(|own| own.storey.is_some());
        let rise = rises.fold(Length::ZERO, |sum, own| sum + own.rise);
        let length = self.of.givens.term("L_main", G::MainLength);
        let mains = self.mains_count();
        let metres = mains * length.value + rise.as_m();
        let terms = [
            Term::new("n", mains, Unit::Count, Origin::Counted),
            length,
            Term::new("rise", rise.as_m(), Unit::Metre, Origin::Counted),
        ];
        let line = self.working.record(Formula::MainMetres, (metres, Unit::Metre), &PRACTICE, &terms);
        self.put((P::Main, size), Traced { value: metres, line });
        metres
    }

    fn mains_count(&self) -> f64 {
        match self.of.runs.manifolds.iter().filter(|own| own.storey.is_some()).count() {
            0 => SIDES,
            own => own as f64,
        }
    }

    fn controls(&mut self) {
        let facts = self.of.facts;
        let wet = facts.drawn().filter(|room| !room.kind.is_kitchen()).count();
        self.each((P::BoostSwitch, Size::Plain), facts.drawn().count() as f64, 1.0);
        self.each((P::HumiditySensor, Size::Plain), wet as f64, 1.0);
        self.each((P::Panel, Size::Plain), 1.0, 1.0);
        self.each((P::Isolator, Size::Plain), 1.0, 1.0);
    }

    fn work(&mut self) {
        let runs = self.of.runs;
        let (valves, tubes) = (runs.runs.len() as f64, f64::from(runs.all_tubes()));
        self.given((P::SettingOut, Size::Plain), valves, G::HoursSetOut);
        self.given((P::Pulling, Size::Plain), tubes, G::HoursTube);
        self.given((P::Fixing, Size::Plain), valves, G::HoursValve);
        self.given((P::Hanging, Size::Plain), 1.0, G::HoursUnit);
        self.given((P::Outside, Size::Plain), SIDES, G::HoursOutside);
        self.given((P::Measuring, Size::Plain), valves, G::HoursMeasure);
    }

    /// So many things, so many pieces for each.
    #[inline(never)]
    fn each(&mut self, what: (P, Size), things: f64, pieces: f64) {
        let per = Term::new("k", pieces, Unit::Count, Origin::Counted);
        self.product(what, things, per);
    }

    /// So many things, a registered value for each.
    #[inline(never)]
    fn given(&mut self, what: (P, Size), things: f64, id: G) {
        let per = self.of.givens.term("k", id);
        self.product(what, things, per);
    }

    #[inline(never)]
    fn product(&mut self, what: (P, Size), things: f64, per: Term) {
        let value = things * per.value;
        let terms = [Term::new("n", things, Unit::Count, Origin::Counted), per];
        let line = self.working.record(Formula::Each, (value, what.0.unit()), &ARITHMETIC, &terms);
        self.put(what, Traced { value, line });
    }

    /// One hold in every so many metres.
    fn holds(&mut self, what: (P, Size), metres: f64, spacing: G) {
        let every = self.of.givens.length(spacing).as_m();
        let value = if every > 0.0 { f64::ceil(metres / every - CLOSE) } else { 0.0 };
        let terms = [Term::new("L", metres, Unit::Metre, Origin::Counted), self.of.givens.term("s", spacing)];
        let source = self.of.givens.get(spacing).source;
        let line = self.working.record(Formula::HoldCount, (value, Unit::Count), source, &terms);
        self.put(what, Traced { value, line });
    }

    #[inline(never)]
    fn put(&mut self, (part, size): (P, Size), quantity: Traced<f64>) {
        if quantity.value > 0.0 {
            self.lines.push(Line { part, size, quantity });
        }
    }
}

/// Supply and extract, or outdoor and exhaust.
const SIDES: f64 = 2.0;
/// Of a tube or a joint.
const ENDS: f64 = 2.0;
/// A length that falls short of one more hold by less needs none.
const CLOSE: f64 = 1e-9;
