//! Seal, drain, protect, and what must be so before power.

use super::making::Making;
use super::rough::tubes;
use super::{Number, NumberName as N, StepKey, StepRule as R, checks, lists, part_of_flow, trap_drop, trap_seal};
use crate::formula::Formula;
use crate::given::GivenId as G;
use crate::id::Home;
use crate::on_site::leak_in_test;
use crate::quantity::{Length, Pressure, Unit};
use crate::rules::Level;
use crate::source::{ARITHMETIC, PRACTICE, Source, YOURS};
use crate::transfer::Opening;
use crate::working::Origin;

static FASTENERS: Source =
    Source::published("US home-upgrade work specification", "", "three fasteners, equally spaced");
static DRAIN_IRC: Source = Source::published("IRC", "2024; M1411.3 before", "M1411.9, for coils: taken as a guide");

/// Joints, forgotten cables, and the test that allows closing up.
pub(super) fn seal(making: &mut Making) {
    let ends = 2;
    let joints = making.count(N::Count, tubes(making).saturating_mul(ends));
    making.step(R::SealJoints, &FASTENERS, [joints]);
    let wet = making.parts.facts.drawn().filter(|room| !room.kind.is_kitchen()).count();
    let kitchens = making.parts.facts.drawn().filter(|room| room.kind.is_kitchen()).count();
    making.step(R::LayCables, &PRACTICE, [making.count(N::Count, wet + kitchens), making.count(N::Count, wet)]);
    making.works_through(lists::cables(making.parts.facts));
    let leak = leak_limit(making);
    making.step_by(R::LeakTest, G::LeakShare, [making.given(N::Pressure, G::LeakPressure), leak]);
    checks::leak_checks(making);
}

/// What may leak at the pressure of the test: a share of the design flow, as it would be at that pressure.
fn leak_limit(making: &mut Making) -> Number {
    let givens = making.parts.givens;
    let share = givens.get(G::LeakShare);
    let pressure = Pressure::of(givens.measure(G::LeakPressure)).unwrap_or(Pressure::ZERO);
    let leak = leak_in_test(part_of_flow(making.total_flow(Level::Normal), share.value), pressure);
    let terms = [
        givens.term("s", G::LeakShare),
        making.term("Q", making.total(Level::Normal)),
        givens.term("p", G::LeakPressure),
    ];
    let leak = making.in_steps(leak);
    making.line((N::Leak, Formula::LeakInTest), leak, share.source, &terms)
}

/// Trap and drain pipe.
pub(super) fn drain(making: &mut Making) {
    let [drop, seal] = trap(making);
    making.step_by(R::FitTrap, G::TrapExtra, [drop, seal, making.given(N::Pressure, G::DrainSuction)]);
    let own = making.parts.givens.get(G::DrainFall).source;
    let source = if making.home == Home::UnitedStates && *own != YOURS { &DRAIN_IRC } else { own };
    making.step(R::FallDrain, source, [making.given(N::Fall, G::DrainFall)]);
}

/// H = p/9.80665 + e, and half of it as seal.
fn trap(making: &mut Making) -> [Number; 2] {
    let givens = making.parts.givens;
    let suction = Pressure::of(givens.measure(G::DrainSuction)).unwrap_or(Pressure::ZERO);
    let drop = trap_drop(suction, making.length(G::TrapExtra));
    let terms = [givens.term("p", G::DrainSuction), givens.term("e", G::TrapExtra)];
    let source = givens.get(G::TrapExtra).source;
    let mm = |length: Length| (length.as_mm(), Unit::Millimetre);
    let drop_number = making.line((N::TrapDrop, Formula::TrapDrop), mm(drop), source, &terms);
    let terms = [making.term("H", drop_number)];
    let seal = making.line((N::TrapSeal, Formula::TrapSeal), mm(trap_seal(drop)), source, &terms);
    [drop_number, seal]
}

/// Close up, and keep dirt out.
pub(super) fn protect(making: &mut Making) {
    making.step(R::CloseCrossings, &PRACTICE, []);
    making.works_through(lists::crossings(making.parts.facts, making.parts.runs));
    making.step(R::CloseUp, &PRACTICE, []);
    let ends = 2;
    let open = making.count(N::Count, tubes(making).saturating_mul(ends));
    making.step(R::CapEnds, &PRACTICE, [open]);
}

/// What must be so before power and before a reading.
pub(super) fn pre_check(making: &mut Making) {
    making.step(R::DustGone, &PRACTICE, []);
    making.step(R::FitFilters, &PRACTICE, []);
    let [_, seal] = trap(making);
    making.step_by(R::FillTrap, G::TrapExtra, [seal]);
    let terminals = making.count(N::Count, making.parts.runs.runs.len());
    making.step(R::OpenValves, &PRACTICE, [terminals]);
    for opening in making.parts.openings {
        cut_undercut(making, opening);
    }
    making.step(R::ShutHouse, &PRACTICE, []);
    making.step_by(R::CalmWeather, G::WindMost, [making.given(N::Wind, G::WindMost)]);
    making.step(R::FitCoAlarms, &PRACTICE, []);
}

fn cut_undercut(making: &mut Making, opening: &Opening) {
    let gap = (N::Undercut, opening.undercut.value.as_mm(), Unit::Millimetre, opening.undercut.line);
    let area = (N::Area, opening.area.value.as_cm2(), Unit::SquareCentimetre, opening.area.line);
    let numbers = [gap, area].map(|(name, value, unit, line)| Number {
        name,
        value: Some(value),
        unit,
        origin: Origin::Line(line),
    });
    making.keyed(StepKey::room(R::CutUndercut, opening.room), &ARITHMETIC, numbers);
}
