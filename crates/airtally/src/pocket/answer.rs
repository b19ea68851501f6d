//! From what is typed to figures with their working.

use super::figures::{
    BOOST_EXPONENTS, MAIN_SPEEDS, METRE_EXPONENT, METRE_FLOW, boost_pressure, main_bore, metre_of, per_metre,
    valve_flow,
};
use super::{Ask, Scratch, Slot};
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::on_site::{BRITISH_HOLES, BRITISH_ZONE, Member, largest_hole, tubes_in_bay};
use crate::quantity::{Flow, Length, Measure, Pressure, Unit, Velocity, convert};
use crate::runs::round_speed;
use crate::source::{ARITHMETIC, PRACTICE, Source};
use crate::transfer::{ORIFICE_LAW, free_area, gap_height};
use crate::working::{LineId, Origin, Term, Working};

static CHURCHILL: Source = Source {
    document: "Churchill's friction equation",
    edition: "1977",
    clause: "roughness 0.1 mm, air of 20 °C; a power law within 4 % of it",
    ..ARITHMETIC
};
static VALVE: Source = Source { document: "the data sheet of the valve", clause: "k", ..PRACTICE };
static EXACT: Source = Source { document: "SI and the foot of 1959", clause: "exact", ..ARITHMETIC };

/// The answer to one question.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// How it was worked out.
    pub working: Working,
    /// The figures to show, the one that was asked for first. Empty when no main is wide enough.
    pub lines: Vec<LineId>,
}

/// The tube that counts where nothing else is typed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Usual {
    /// Inside width.
    pub bore: Length,
    /// Outside width.
    pub outside: Length,
}

/// Answers a question; `None` while something is missing or cannot be read.
pub fn answer(ask: Ask, scratch: &Scratch, givens: &Givens, usual: Usual) -> Option<Answer> {
    let answer = Answer { working: Working::default(), lines: Vec::new() };
    let mut sum = Sum { scratch, givens, terms: Vec::new(), answer };
    match ask {
        Ask::Tube => sum.tube(usual.bore),
        Ask::Door => sum.door(),
        Ask::Valve => sum.valve(),
        Ask::Main => sum.main(),
        Ask::Boost => sum.boost(),
        Ask::Joist => sum.joist(usual.outside),
        Ask::Convert => sum.convert(),
    }?;
    Some(sum.answer)
}

/// An answer in the making.
struct Sum<'a> {
    scratch: &'a Scratch,
    givens: &'a Givens,
    /// What goes into the next line.
    terms: Vec<Term>,
    answer: Answer,
}

impl Sum<'_> {
    fn tube(&mut self, usual: Length) -> Option<()> {
        let flow = self.flow("q", Slot::TubeFlow)?;
        let bore = self.length("d", Slot::TubeBore, Measure::new(usual.as_mm(), Unit::Millimetre))?;
        let fast = round_speed(flow, bore);
        let line = self.record(Formula::DuctSpeed, fast.as_ms(), Unit::MetrePerSecond, &ARITHMETIC);
        if let (Some(metre), Some(known)) = (per_metre(flow, bore), metre_of(bore)) {
            self.put("c", known.pressure, Unit::Pascal);
            self.put("q", flow.as_m3h(), Unit::CubicMetrePerHour);
            self.put("q_r", METRE_FLOW.as_m3h(), Unit::CubicMetrePerHour);
            self.put("n", METRE_EXPONENT, Unit::Ratio);
            self.record(Formula::TubePressure, metre.as_pa(), Unit::Pascal, &CHURCHILL);
        }
        self.beside(fast, line);
        Some(())
    }

    /// How many tubes side by side, when one is too fast.
    fn beside(&mut self, fast: Velocity, line: LineId) {
        self.terms.push(Term::new("v", fast.as_ms(), Unit::MetrePerSecond, Origin::Line(line)));
        let most = self.given("v_max", GivenId::SpeedBoost);
        let slack = self.given("slack", GivenId::CountSlack);
        let tubes = f64::ceil(fast.as_ms() / most - slack);
        if tubes > 1.0 {
            self.record(Formula::TubesBeside, tubes, Unit::Count, &PRACTICE);
        }
    }

    fn door(&mut self) -> Option<()> {
        let flow = self.flow("q", Slot::DoorFlow)?;
        let discharge = self.given("C_d", GivenId::TransferDischarge);
        let pressure = Pressure::from_pa(self.given("Δp", GivenId::TransferPressure));
        let density = self.given("ρ", GivenId::TransferDensity);
        let area = free_area(flow, pressure, discharge, density);
        let line = self.record(Formula::TransferArea, area.as_cm2(), Unit::SquareCentimetre, &ORIFICE_LAW);
        self.terms.push(Term::new("A", area.as_cm2(), Unit::SquareCentimetre, Origin::Line(line)));
        let width = self.length("b", Slot::DoorWidth, self.givens.measure(GivenId::DoorWidth))?;
        self.record(Formula::Undercut, gap_height(area, width).as_mm(), Unit::Millimetre, &ARITHMETIC);
        self.answer.lines.reverse();
        Some(())
    }

    fn valve(&mut self) -> Option<()> {
        let unit = self.read(Slot::ValveFactor)?.unit();
        let factor = self.flow("k", Slot::ValveFactor)?;
        let pressure = self.pressure("p", Slot::ValvePressure)?;
        self.record(Formula::ValveFlow, valve_flow(factor, pressure).as_unit(unit)?, unit, &VALVE);
        Some(())
    }

    fn main(&mut self) -> Option<()> {
        for most in MAIN_SPEEDS {
            let flow = self.flow("q", Slot::MainFlow)?;
            self.put("v", most.as_ms(), Unit::MetrePerSecond);
            if let Some(bore) = main_bore(flow, most) {
                self.record(Formula::MainBore, bore.as_mm(), Unit::Millimetre, &PRACTICE);
            } else {
                self.terms.clear();
            }
        }
        Some(())
    }

    fn boost(&mut self) -> Option<()> {
        for exponent in BOOST_EXPONENTS {
            let pressure = self.pressure("p", Slot::NormalPressure)?;
            let normal = self.flow("q_normal", Slot::NormalFlow)?;
            let boost = self.flow("q_boost", Slot::BoostFlow)?;
            self.put("n", exponent, Unit::Ratio);
            let pressure = boost_pressure(pressure, normal, boost, exponent);
            self.record(Formula::BoostPressure, pressure.as_pa(), Unit::Pascal, &PRACTICE);
        }
        Some(())
    }

    fn joist(&mut self, outside: Length) -> Option<()> {
        let depth = Length::of(self.read(Slot::JoistDepth)?)?;
        let [span, clear] = [Slot::JoistSpan, Slot::JoistClear].map(|slot| self.scratch.read(slot).ok());
        let (span, clear) = (span?, clear?.and_then(Length::of));
        for (share, edge) in [(GivenId::HoleThird, Member::Joist.edge()), (GivenId::HoleQuarter, Length::ZERO)] {
            let most = self.given("s", share);
            self.put("d", depth.as_mm(), Unit::Millimetre);
            self.put("e", edge.as_mm(), Unit::Millimetre);
            let source = self.givens.get(share).source;
            self.record(Formula::HoleLimit, largest_hole(depth, most, edge).as_mm(), Unit::Millimetre, source);
        }
        if let Some(span) = span {
            for share in BRITISH_HOLES {
                self.put("s", share, Unit::Ratio);
                self.put("L", span.value(), span.unit());
                self.record(Formula::HoleZone, span.value() * share, span.unit(), &BRITISH_ZONE);
            }
        }
        self.put("OD", outside.as_mm(), Unit::Millimetre);
        let hole = outside.as_mm() + self.given("c", GivenId::HoleClearance);
        self.record(Formula::TubeHole, hole, Unit::Millimetre, &PRACTICE);
        if let Some(clear) = clear {
            self.put("b", clear.as_mm(), Unit::Millimetre);
            self.put("OD", outside.as_mm(), Unit::Millimetre);
            self.record(Formula::TubesInBay, f64::from(tubes_in_bay(clear, outside)), Unit::Count, &PRACTICE);
        }
        Some(())
    }

    fn convert(&mut self) -> Option<()> {
        let flow = self.read(Slot::AnyFlow)?;
        for unit in Slot::AnyFlow.units().iter().filter(|unit| **unit != flow.unit()) {
            self.put("f", convert(1.0, flow.unit(), *unit)?, Unit::Ratio);
            self.put("q", flow.value(), flow.unit());
            self.record(Formula::FlowConversion, flow.value_in(*unit)?, *unit, &EXACT);
        }
        Some(())
    }

    fn read(&self, slot: Slot) -> Option<Measure> {
        self.scratch.read(slot).ok()?
    }

    /// Puts a flow into the next line, in the unit it was typed in.
    fn flow(&mut self, symbol: &'static str, slot: Slot) -> Option<Flow> {
        let flow = self.read(slot)?;
        self.put(symbol, flow.value(), flow.unit());
        Flow::of(flow)
    }

    /// The same for a length, which has a usual value.
    fn length(&mut self, symbol: &'static str, slot: Slot, usual: Measure) -> Option<Length> {
        let length = self.scratch.read(slot).ok()?.unwrap_or(usual);
        self.put(symbol, length.value(), length.unit());
        Length::of(length)
    }

    /// The same for a pressure, always in Pa: equations that take its root or its power need that.
    fn pressure(&mut self, symbol: &'static str, slot: Slot) -> Option<Pressure> {
        let pressure = Pressure::of(self.read(slot)?)?;
        self.put(symbol, pressure.as_pa(), Unit::Pascal);
        Some(pressure)
    }

    fn given(&mut self, symbol: &'static str, id: GivenId) -> f64 {
        self.terms.push(self.givens.term(symbol, id));
        self.givens.value(id)
    }

    #[inline(never)]
    fn put(&mut self, symbol: &'static str, value: f64, unit: Unit) {
        self.terms.push(Term::new(symbol, value, unit, Origin::Counted));
    }

    #[inline(never)]
    fn record(&mut self, formula: Formula, value: f64, unit: Unit, source: &'static Source) -> LineId {
        let line = self.answer.working.record(formula, (value, unit), source, &self.terms);
        self.terms.clear();
        self.answer.lines.push(line);
        line
    }
}
