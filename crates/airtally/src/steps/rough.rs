//! Drill, pull, fix, connect.

use super::making::Making;
use super::survey::tube_hole;
use super::{Number, NumberName as N, StepKey, StepRule as R, bend_radius, checks, wall_core};
use crate::formula::Formula;
use crate::given::GivenId as G;
use crate::house::{Field, RoomField};
use crate::id::Home;
use crate::quantity::Unit;
use crate::rules::{Air, Level};
use crate::runs::{Run, round_speed};
use crate::source::{ARITHMETIC, PRACTICE};
use crate::working::{Origin, Traced};

/// Two cores for the outside ducts, and holes for the tubes.
pub(super) fn drill(making: &mut Making) {
    let (duct, insulation) = (making.length(G::ColdDuct), making.length(G::CoreInsulation));
    let core = wall_core(duct, insulation, making.length(G::CoreClearance));
    let givens = making.parts.givens;
    let terms =
        [givens.term("d", G::ColdDuct), givens.term("t", G::CoreInsulation), givens.term("c", G::CoreClearance)];
    let core = making.line((N::Diameter, Formula::WallCore), (core.as_mm(), Unit::Millimetre), &PRACTICE, &terms);
    let cores = 2;
    let numbers = [making.count(N::Count, cores), core, making.given(N::Fall, G::CoreFall)];
    making.step(R::DrillCores, &PRACTICE, numbers);
    let hole = tube_hole(making);
    making.step(R::DrillTubeHoles, &PRACTICE, [making.count(N::Tubes, tubes(making)), hole]);
}

/// The tubes, run by run.
pub(super) fn pull(making: &mut Making) {
    let (outside, term) = making.outside();
    let radius = bend_radius(outside, making.parts.givens.value(G::BendRadius));
    let terms = [making.parts.givens.term("k", G::BendRadius), term];
    let radius = (radius.as_mm(), Unit::Millimetre);
    let source = making.parts.givens.get(G::BendRadius).source;
    let radius = making.line((N::Radius, Formula::BendRadius), radius, source, &terms);
    making.step(R::BendWide, source, [radius, making.given(N::Bends, G::BendsMost)]);
    for run in &making.parts.runs.runs {
        pull_run(making, run);
    }
    let spacing = if making.home == Home::UnitedStates { G::SupportSpacingFeet } else { G::SupportSpacing };
    making.step_by(R::SupportTubes, spacing, [making.given(N::Distance, spacing)]);
    let runs = making.count(N::Count, making.parts.runs.runs.len());
    making.step(R::RecordRoutes, &PRACTICE, [runs]);
}

fn pull_run(making: &mut Making, run: &Run) {
    let tubes = traced(N::Tubes, run.tubes);
    let field = if run.air == Air::Supply { RoomField::SupplyRun } else { RoomField::ExtractRun };
    let cut = Number {
        name: N::CutLength,
        value: run.cut.map(|cut| cut.value.as_m()),
        unit: Unit::Metre,
        origin: run.cut.map_or(Origin::Typed(Field::Room(run.room, field)), |cut| Origin::Line(cut.line)),
    };
    making.keyed(StepKey::run(R::PullTubes, run.room, run.air), &PRACTICE, [tubes, cut]);
    if let Some(step) = making.steps.last_mut() {
        step.mark = Some((run.air, run.mark));
    }
    if let Some(built) = &run.built {
        checks::built_check(making, run, built);
    }
}

/// Unit, manifolds, silencers.
pub(super) fn fix(making: &mut Making) {
    making.step(R::HangUnit, &PRACTICE, []);
    let runs = making.parts.runs;
    let numbers = [
        traced(N::Ports, runs.supply_ports),
        traced(N::Ports, runs.extract_ports),
        making.given(N::Spare, G::SparePorts),
    ];
    making.step_by(R::FixManifolds, G::SparePorts, numbers);
    let outside = making.length(G::ColdDuct) + making.length(G::SilencerLining);
    let terms = [making.parts.givens.term("d", G::ColdDuct), making.parts.givens.term("lining", G::SilencerLining)];
    let outside = (outside.as_mm(), Unit::Millimetre);
    let outside = making.line((N::Diameter, Formula::SilencerSize), outside, &PRACTICE, &terms);
    making.step_by(R::FixSilencers, G::SilencerLength, [making.given(N::Length, G::SilencerLength), outside]);
}

/// Tubes to manifolds, mains to the unit.
pub(super) fn connect(making: &mut Making) {
    let side = |air| making.count(N::Tubes, making.parts.runs.tubes(air) as usize);
    making.step(R::ConnectTubes, &PRACTICE, [side(Air::Supply), side(Air::Extract)]);
    let bore = making.length(G::ColdDuct);
    let speed = round_speed(making.total_flow(Level::Normal), bore);
    let terms = [making.term("q", making.total(Level::Normal)), making.parts.givens.term("d", G::ColdDuct)];
    let speed = (speed.as_ms(), Unit::MetrePerSecond);
    let speed = making.line((N::Speed, Formula::MainSpeed), speed, &ARITHMETIC, &terms);
    let limit = making.given(N::SpeedLimit, G::MainSpeed);
    let flexible = making.given(N::Length, G::FlexibleLength);
    making.step_by(
        R::ConnectMains,
        G::FlexibleLength,
        [speed, limit, flexible, making.given(N::Diameter, G::ColdDuct)],
    );
}

/// Tubes of both sides.
pub(super) fn tubes(making: &Making) -> usize {
    let side = |air| making.parts.runs.tubes(air) as usize;
    side(Air::Supply).saturating_add(side(Air::Extract))
}

fn traced(name: N, count: Traced<u32>) -> Number {
    let value = Some(f64::from(count.value));
    Number { name, value, unit: Unit::Count, origin: Origin::Line(count.line) }
}
