//! From what is typed to figures with their working.

use super::figures::{
    BOOST_EXPONENTS, MAIN_SPEEDS, METRE_EXPONENT, METRE_FLOW, boost_pressure, main_bore, metre_of, per_metre, speed,
    undercut, valve_flow,
};
use super::{Ask, Scratch, Slot};
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::quantity::{Area, Flow, Length, Measure, Pressure, Unit, Velocity, convert};
use crate::source::{ARITHMETIC, PRACTICE, Source};
use crate::transfer::{ORIFICE_LAW, free_area};
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

/// Answers a question; `None` while something is missing or cannot be read. `tube` is the bore where none is typed.
pub fn answer(ask: Ask, scratch: &Scratch, givens: &Givens, tube: Length) -> Option<Answer> {
    let mut sum = Sum { scratch, givens, answer: Answer { working: Working::default(), lines: Vec::new() } };
    match ask {
        Ask::Tube => sum.tube(tube),
        Ask::Door => sum.door(),
        Ask::Valve => sum.valve(),
        Ask::Main => sum.main(),
        Ask::Boost => sum.boost(),
        Ask::Convert => sum.convert(),
    }?;
    Some(sum.answer)
}

struct Sum<'a> {
    scratch: &'a Scratch,
    givens: &'a Givens,
    answer: Answer,
}

impl Sum<'_> {
    fn tube(&mut self, usual: Length) -> Option<()> {
        let (flow, flow_term) = self.flow("q", Slot::TubeFlow)?;
        let usual = Measure::new(usual.as_mm(), Unit::Millimetre);
        let bore = self.scratch.read(Slot::TubeBore).ok()?.unwrap_or(usual);
        let bore_term = typed("d", bore);
        let bore = Length::of(bore)?;
        let fast = speed(flow, bore);
        let line = self.record(Formula::DuctSpeed, speed_of(fast), &ARITHMETIC, &[flow_term, bore_term]);
        if let (Some(metre), Some(known)) = (per_metre(flow, bore), metre_of(bore)) {
            let terms = [
                counted("c", known.pressure, Unit::Pascal),
                counted("q", flow.as_m3h(), Unit::CubicMetrePerHour),
                counted("q_r", METRE_FLOW.as_m3h(), Unit::CubicMetrePerHour),
                counted("n", METRE_EXPONENT, Unit::Ratio),
            ];
            self.record(Formula::TubePressure, (metre.as_pa(), Unit::Pascal), &CHURCHILL, &terms);
        }
        self.beside(fast, line);
        Some(())
    }

    /// How many tubes side by side, when one is too fast.
    fn beside(&mut self, fast: Velocity, line: LineId) {
        let (most, slack) = (self.givens.value(GivenId::SpeedBoost), self.givens.value(GivenId::CountSlack));
        let tubes = libm::ceil(fast.as_ms() / most - slack);
        if tubes > 1.0 {
            let terms = [
                Term::new("v", fast.as_ms(), Unit::MetrePerSecond, Origin::Line(line)),
                self.givens.term("v_max", GivenId::SpeedBoost),
                self.givens.term("slack", GivenId::CountSlack),
            ];
            self.record(Formula::TubesBeside, (tubes, Unit::Count), &PRACTICE, &terms);
        }
    }

    fn door(&mut self) -> Option<()> {
        let (flow, flow_term) = self.flow("q", Slot::DoorFlow)?;
        let typed_width = self.scratch.read(Slot::DoorWidth).ok()?;
        let width_term =
            typed_width.map_or_else(|| self.givens.term("b", GivenId::DoorWidth), |width| typed("b", width));
        let width = Length::of(typed_width.unwrap_or_else(|| self.givens.measure(GivenId::DoorWidth)))?;
        let pressure = Pressure::from_pa(self.givens.value(GivenId::TransferPressure));
        let [discharge, density] =
            [GivenId::TransferDischarge, GivenId::TransferDensity].map(|id| self.givens.value(id));
        let area = free_area(flow, pressure, discharge, density);
        let terms = [
            flow_term,
            self.givens.term("C_d", GivenId::TransferDischarge),
            self.givens.term("Δp", GivenId::TransferPressure),
            self.givens.term("ρ", GivenId::TransferDensity),
        ];
        let line = self.record(Formula::TransferArea, area_of(area), &ORIFICE_LAW, &terms);
        let terms = [Term::new("A", area.as_cm2(), Unit::SquareCentimetre, Origin::Line(line)), width_term];
        let gap = undercut(area, width);
        self.record(Formula::Undercut, (gap.as_mm(), Unit::Millimetre), &ARITHMETIC, &terms);
        self.answer.lines.reverse();
        Some(())
    }

    fn valve(&mut self) -> Option<()> {
        let (factor, factor_term) = self.flow("k", Slot::ValveFactor)?;
        let (pressure, pressure_term) = self.pressure("p", Slot::ValvePressure)?;
        let flow = valve_flow(factor, pressure).as_unit(factor_term.unit)?;
        self.record(Formula::ValveFlow, (flow, factor_term.unit), &VALVE, &[factor_term, pressure_term]);
        Some(())
    }

    fn main(&mut self) -> Option<()> {
        let (flow, flow_term) = self.flow("q", Slot::MainFlow)?;
        for most in MAIN_SPEEDS {
            if let Some(bore) = main_bore(flow, most) {
                let terms = [flow_term, counted("v", most.as_ms(), Unit::MetrePerSecond)];
                self.record(Formula::MainBore, (bore.as_mm(), Unit::Millimetre), &PRACTICE, &terms);
            }
        }
        Some(())
    }

    fn boost(&mut self) -> Option<()> {
        let (pressure, pressure_term) = self.pressure("p", Slot::NormalPressure)?;
        let (normal, normal_term) = self.flow("q_normal", Slot::NormalFlow)?;
        let (boost, boost_term) = self.flow("q_boost", Slot::BoostFlow)?;
        for exponent in BOOST_EXPONENTS {
            let terms = [pressure_term, boost_term, normal_term, counted("n", exponent, Unit::Ratio)];
            let pressure = boost_pressure(pressure, normal, boost, exponent);
            self.record(Formula::BoostPressure, (pressure.as_pa(), Unit::Pascal), &PRACTICE, &terms);
        }
        Some(())
    }

    fn convert(&mut self) -> Option<()> {
        let flow = self.scratch.read(Slot::AnyFlow).ok()??;
        let others = Slot::AnyFlow.units().iter().filter(|unit| **unit != flow.unit());
        for unit in others {
            let factor = convert(1.0, flow.unit(), *unit)?;
            let terms = [counted("f", factor, Unit::Ratio), typed("q", flow)];
            self.record(Formula::FlowConversion, (flow.value_in(*unit)?, *unit), &EXACT, &terms);
        }
        Some(())
    }

    fn flow(&self, symbol: &'static str, slot: Slot) -> Option<(Flow, Term)> {
        let measure = self.scratch.read(slot).ok()??;
        Some((Flow::of(measure)?, typed(symbol, measure)))
    }

    fn pressure(&self, symbol: &'static str, slot: Slot) -> Option<(Pressure, Term)> {
        let pressure = Pressure::of(self.scratch.read(slot).ok()??)?;
        Some((pressure, counted(symbol, pressure.as_pa(), Unit::Pascal)))
    }

    fn record(&mut self, formula: Formula, value: (f64, Unit), source: &'static Source, terms: &[Term]) -> LineId {
        let line = self.answer.working.record(formula, value, source, terms);
        self.answer.lines.push(line);
        line
    }
}

/// A number in the unit it was typed in.
fn typed(symbol: &'static str, measure: Measure) -> Term {
    counted(symbol, measure.value(), measure.unit())
}

fn counted(symbol: &'static str, value: f64, unit: Unit) -> Term {
    Term::new(symbol, value, unit, Origin::Counted)
}

fn speed_of(speed: Velocity) -> (f64, Unit) {
    (speed.as_ms(), Unit::MetrePerSecond)
}

fn area_of(area: Area) -> (f64, Unit) {
    (area.as_cm2(), Unit::SquareCentimetre)
}
