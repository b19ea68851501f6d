//! What each part of a side takes, with the line of working behind it.

use super::Likely;
use super::built;
use super::ducts::{Path, Taken};
use super::side::{DARCY, Making};
use crate::curve::setting;
use crate::duct::band;
use crate::duct::restrictor;
use crate::duct::roughness::Surface;
use crate::duct::section::Section;
use crate::duct::terminal::PowerLaw;
use crate::formula::Formula;
use crate::given::GivenId;
use crate::house::{Field, RoomField};
use crate::id::Curve;
use crate::quantity::{Flow, Length, Pressure, Unit, Velocity};
use crate::runs::Run;
use crate::source::{PRACTICE, Source, YOURS};
use crate::working::{Origin, Term, Traced};

static PLATE: Source = Source::memory("Idelchik", "3rd edition", "diagram 4-11, thin sharp plate");

impl Making<'_> {
    /// Between what a run may take at normal: the wall of a tube is nowhere published, and slow air may creep or not.
    pub(super) fn likely(&self, run: &Run, usual: Pressure) -> Option<Likely> {
        if self.ducts.tube.is_some() {
            return None;
        }
        let each = run.normal / f64::from(run.tubes.value);
        let path = self.ducts.tube_of(run, run.legs.unwrap_or(self.ducts.length));
        let taken = path.at(each);
        let bore = path.section.hydraulic_bore();
        let band = band::per_metre_at(taken.speed, bore, Surface::TwoWalls.roughness(), path.air)?;
        let metres = path.length.as_m();
        let head = path.air.density() * taken.speed.as_ms() * taken.speed.as_ms() / 2.0;
        let wall = Pressure::from_pa(taken.factor * metres / bore.as_m() * head);
        let rest = usual - wall;
        let (low, high) = (rest + band.low * metres, rest + band.high * metres);
        Some(Likely { low: low.min(usual), high: high.max(usual), jumps: band.jumps })
    }

    /// What a run takes with its valve open.
    pub(super) fn pressure(&mut self, run: &Run, flow: Flow) -> Traced<Pressure> {
        let each = flow / f64::from(run.tubes.value);
        let path = self.ducts.tube_of(run, run.legs.unwrap_or(self.ducts.length));
        let valve = self.valve(run, flow);
        let taken = path.at(each);
        let value = taken.pressure + valve.value;
        let length = match run.legs {
            Some(_) => Origin::Typed(Field::Room(run.room, RoomField::legs(self.air))),
            None => Origin::Given(GivenId::RunLength),
        };
        let [f, l, d, k, v, rho] = duct_terms(&path, &taken, length, Origin::Counted);
        let terms = [f, l, d, k, v, rho, pascal("p_valve", valve)];
        let line = (value.as_pa(), Unit::Pascal);
        let line = self.working.record_for(Some(run.room), Formula::RunPressure, line, &DARCY, &terms);
        Traced { value, line }
    }

    pub(super) fn valve(&mut self, run: &Run, flow: Flow) -> Traced<Pressure> {
        let value = self.ducts.valve_at(flow, run.tubes.value);
        let line = (value.as_pa(), Unit::Pascal);
        let air = |flow: Flow| Term::new("q", flow.as_m3h(), Unit::CubicMetrePerHour, Origin::Counted);
        let line = match self.ducts.measured_valve() {
            Some(PowerLaw { scale, exponent }) => {
                let typed =
                    |symbol, value| Term::new(symbol, value, Unit::Ratio, Origin::Typed(Field::Curve(Curve::Valve)));
                let terms = [typed("c", scale), air(flow), typed("n", exponent)];
                self.working.record_for(Some(run.room), Formula::MeasuredPressure, line, &YOURS, &terms)
            }
            None => {
                let each = flow / f64::from(run.tubes.value);
                let terms = [self.givens.term("p_30", GivenId::ValvePressure), air(each)];
                self.working.record_for(Some(run.room), Formula::ValvePressure, line, &PRACTICE, &terms)
            }
        };
        Traced { value, line }
    }

    /// The hole of a plate in each tube.
    pub(super) fn hole(&mut self, run: &Run, throttle: Traced<Pressure>) -> Option<Traced<Length>> {
        let each = run.normal / f64::from(run.tubes.value);
        // A plate fits a round tube.
        let Section::Round(bore) = self.section else { return None };
        let air = self.ducts.indoor;
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

    /// The setting at which the valve takes the throttle too.
    pub(super) fn setting(&mut self, run: &Run, throttle: Traced<Pressure>) -> Option<Traced<f64>> {
        let points = self.settings?;
        let open = self.ducts.valve_at(run.normal, run.tubes.value);
        let slower = SETTING_FLOW / run.normal.as_m3h();
        let wanted = (open + throttle.value).as_pa() * slower * slower;
        let value = setting(points, wanted)?;
        let terms = [
            pascal("throttle", throttle),
            Term::new("p_valve", open.as_pa(), Unit::Pascal, Origin::Counted),
            Term::new("q", run.normal.as_m3h(), Unit::CubicMetrePerHour, Origin::Counted),
            Term::new("p_30", wanted, Unit::Pascal, Origin::Typed(Field::Curve(Curve::Setting))),
        ];
        let line = self.working.record_for(Some(run.room), Formula::ValveSetting, (value, Unit::Ratio), &YOURS, &terms);
        Some(Traced { value, line })
    }

    pub(super) fn built(&mut self, run: &Run, flow: Flow) -> Traced<Flow> {
        let (length, tubes) = built::pulled(self.ducts.length, run);
        let terms = [
            Term::new("q_plan", run.normal.as_m3h(), Unit::CubicMetrePerHour, Origin::Counted),
            Term::new("L", length.as_m(), Unit::Metre, Origin::Counted),
            Term::new("n", f64::from(tubes), Unit::Count, Origin::Counted),
        ];
        let line = (flow.as_m3h(), Unit::CubicMetrePerHour);
        let line = self.working.record_for(Some(run.room), Formula::BuiltFlow, line, &DARCY, &terms);
        Traced { value: flow, line }
    }

    pub(super) fn duct(&mut self, path: &Path, flow: Flow, length: Origin) -> Traced<Pressure> {
        let taken = path.at(flow);
        let value = taken.pressure;
        let terms = duct_terms(path, &taken, length, Origin::Given(GivenId::ColdDuct));
        let line = self.working.record(Formula::DuctPressure, (value.as_pa(), Unit::Pascal), &DARCY, &terms);
        Traced { value, line }
    }

    pub(super) fn grille(&mut self, flow: Flow) -> Traced<Pressure> {
        let speed = self.mains.face_speed(flow, self.totals[1]);
        let value = self.mains.grille_at(speed);
        let density = self.ducts.outdoor.density();
        let loss = self.givens.term("K", GivenId::GrilleLoss);
        let terms = [loss, metres_a_second(speed), Term::new("ρ", density, Unit::Ratio, Origin::Counted)];
        let line = self.working.record(Formula::GrillePressure, (value.as_pa(), Unit::Pascal), &PRACTICE, &terms);
        Traced { value, line }
    }
}

/// What goes into a duct's pressure.
fn duct_terms(path: &Path, taken: &Taken, length: Origin, bore: Origin) -> [Term; 6] {
    [
        Term::new("f", taken.factor, Unit::Ratio, Origin::Counted),
        Term::new("L", path.length.as_m(), Unit::Metre, length),
        Term::new("d", path.section.hydraulic_bore().as_mm(), Unit::Millimetre, bore),
        Term::new("K", taken.losses, Unit::Ratio, Origin::Counted),
        metres_a_second(taken.speed),
        Term::new("ρ", path.air.density(), Unit::Ratio, Origin::Counted),
    ]
}

fn metres_a_second(speed: Velocity) -> Term {
    Term::new("v", speed.as_ms(), Unit::MetrePerSecond, Origin::Counted)
}

pub(super) fn pascal(symbol: &'static str, pressure: Traced<Pressure>) -> Term {
    Term::new(symbol, pressure.value.as_pa(), Unit::Pascal, Origin::Line(pressure.line))
}

/// m³/h at which the settings of a valve are compared.
pub(super) const SETTING_FLOW: f64 = 30.0;
