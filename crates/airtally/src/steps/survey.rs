//! Before you start, and setting out.

use super::making::Making;
use super::{Number, NumberName as N, StepKey, StepRule as R, checks, joist_depth, structure};
use super::{grille_area, unit_maximum};
use crate::formula::Formula;
use crate::given::GivenId as G;
use crate::house::{Building, RoomKind};
use crate::id::{CheckRule, Home};
use crate::quantity::{Length, Unit, Velocity};
use crate::rules::{Air, Level};
use crate::runs::Run;
use crate::source::{ARITHMETIC, PRACTICE, Source};
use crate::working::{Origin, Term};

static FIRE_IRC: Source = Source::published("IRC", "2015–2024", "R302.4, R302.11");
static FIRE_ENGLAND: Source = Source::memory("Approved Document B", "", "ducts through compartments");
static GARAGE_IRC: Source = Source::published("IRC", "2015–2024", "R302.5.2");

/// Questions that stop the work: nothing is drilled before they are answered.
pub(super) fn before(making: &mut Making) {
    ask_open_flues(making);
    checks::house_pressure_check(making);
    checks::fan_draw_check(making);
    if making.parts.facts.choices.building == Building::Old {
        making.step(R::SurveyOldFans, &PRACTICE, []);
        let windows = making.parts.facts.supplied().count();
        making.step(R::SurveyVents, &PRACTICE, [making.count(N::Count, windows)]);
    }
    making.step(R::LookForSuspectBoard, &PRACTICE, []);
    check_structure(making);
    list_crossings(making);
    let garages = making.parts.facts.rooms.iter().filter(|room| room.kind == RoomKind::Garage).count();
    if garages > 0 {
        let source = if making.home == Home::UnitedStates { &GARAGE_IRC } else { &PRACTICE };
        making.step(R::KeepGarageClosed, source, [making.count(N::Count, garages)]);
    }
}

/// Where everything goes.
pub(super) fn set_out(making: &mut Making) {
    check_unit_duty(making);
    let place = [making.given(N::Distance, G::ServiceSpace), making.given(N::Length, G::OutdoorDuct)];
    making.step_by(R::PlaceUnit, G::ServiceSpace, place);
    place_intake(making);
    let facts = making.parts.facts;
    let bedrooms = facts.supplied().filter(|room| room.kind.is_bedroom()).count();
    if bedrooms > 0 {
        let numbers = [making.count(N::Count, bedrooms), making.given(N::Distance, G::BedHead)];
        making.step_by(R::PlaceBedroomValves, G::BedHead, numbers);
    }
    let drawn = making.parts.runs.side(Air::Extract).count();
    if drawn > 0 {
        let numbers = [making.count(N::Count, drawn), making.given(N::Distance, G::ExtractBelowCeiling)];
        making.step_by(R::PlaceExtractValves, G::ExtractBelowCeiling, numbers);
    }
    if facts.drawn().any(|room| room.kind.is_kitchen()) {
        making.step_by(R::PlaceKitchenValve, G::HobDistance, [making.given(N::Distance, G::HobDistance)]);
    }
    let numbers = [making.given(N::Distance, G::ManifoldClear), making.given(N::Length, G::Hatch)];
    making.step_by(R::PlaceManifolds, G::ManifoldClear, numbers);
    for run in &making.parts.runs.runs {
        set_out_terminal(making, run);
    }
}

/// The card of one terminal: its tubes, the hole behind it, its marks.
fn set_out_terminal(making: &mut Making, run: &Run) {
    let hole = tube_hole(making);
    let tubes = Number {
        name: N::Tubes,
        value: Some(f64::from(run.tubes.value)),
        unit: Unit::Count,
        origin: Origin::Line(run.tubes.line),
    };
    let flow = making.share(run.room, run.air);
    making.keyed(StepKey::run(R::SetOutTerminal, run.room, run.air), &PRACTICE, [tubes, hole, flow]);
    if let Some(step) = making.steps.last_mut() {
        step.mark = Some((run.air, run.mark));
    }
}

fn ask_open_flues(making: &mut Making) {
    let kitchen = making.parts.facts.rooms.iter().any(|room| room.kind.is_kitchen());
    match making.home {
        Home::Germany => {
            making.step_by(R::AskOpenFlues, G::FlueGermany, [making.given(N::Pressure, G::FlueGermany)]);
        }
        Home::Canada => making.step_by(R::AskOpenFlues, G::FlueCanada, [making.given(N::Pressure, G::FlueCanada)]),
        Home::England if kitchen => {
            making.step_by(R::AskOpenFlues, G::FlueKitchen, [making.given(N::Flow, G::FlueKitchen)]);
        }
        Home::England | Home::Elsewhere => making.step(R::AskOpenFlues, &PRACTICE, []),
        Home::UnitedStates => making.step(R::AskOpenFlues, &checks::FLUE_ASHRAE, []),
    }
}

/// A pulled tube wants a hole a little wider than itself, and a hole wants a joist deep enough to bear it.
fn check_structure(making: &mut Making) {
    let share = if making.home == Home::UnitedStates { G::HoleThird } else { G::HoleQuarter };
    let hole = tube_hole(making);
    let depth = joist_depth(hole.value.map_or(Length::ZERO, Length::from_mm), making.parts.givens.value(share));
    let terms = [making.term("D", hole), making.parts.givens.term("s", share)];
    let source = making.parts.givens.get(share).source;
    let depth = making.line((N::JoistDepth, Formula::JoistDepth), (depth.as_mm(), Unit::Millimetre), source, &terms);
    let crossing = making.flat() * 2.0;
    let terms = [Term::new("OD", making.flat(), Unit::Millimetre, Origin::Counted)];
    let crossing =
        making.line((N::Crossing, Formula::CrossingDepth), (crossing, Unit::Millimetre), &ARITHMETIC, &terms);
    making.step_by(R::CheckStructure, share, [hole, depth, crossing]);
    structure::joist_checks(making, hole);
    structure::notch_checks(making);
    structure::stud_checks(making, hole);
}

/// D = OD + c.
pub(super) fn tube_hole(making: &mut Making) -> Number {
    let (outside, term) = making.outside();
    let hole = outside + making.length(G::HoleClearance);
    let terms = [term, making.parts.givens.term("c", G::HoleClearance)];
    making.line((N::Diameter, Formula::TubeHole), (hole.as_mm(), Unit::Millimetre), &PRACTICE, &terms)
}

fn list_crossings(making: &mut Making) {
    let storeys = || making.parts.facts.rooms.iter().map(|room| i32::from(room.storey));
    let floors = storeys().max().unwrap_or(0) - storeys().min().unwrap_or(0);
    let walls = 2;
    let source = match making.home {
        Home::UnitedStates => &FIRE_IRC,
        Home::England => &FIRE_ENGLAND,
        Home::Germany | Home::Canada | Home::Elsewhere => &PRACTICE,
    };
    let mut numbers = vec![making.count(N::Count, walls)];
    if floors > 0 {
        numbers.push(making.count(N::Count, floors.unsigned_abs() as usize));
    }
    making.step(R::ListCrossings, source, numbers);
}

fn check_unit_duty(making: &mut Making) {
    let boost = making.total(Level::Boost);
    let share = making.parts.givens.value(G::UnitReserve);
    let most = making.in_steps(unit_maximum(making.total_flow(Level::Boost), share));
    let terms = [making.term("q_boost", boost), making.parts.givens.term("s", G::UnitReserve)];
    let most = making.line((N::Flow, Formula::UnitMaximum), most, &PRACTICE, &terms);
    making.step_by(R::CheckUnitDuty, G::UnitReserve, [making.total(Level::Normal), boost, most]);
}

fn place_intake(making: &mut Making) {
    let (clear, source) = checks::outside_least(making, CheckRule::IntakeSource).unzip();
    let own = checks::outside_least(making, CheckRule::IntakeExhaust);
    let speed = Velocity::of(making.parts.givens.measure(G::FaceSpeed)).unwrap_or(Velocity::ZERO);
    let area = grille_area(making.total_flow(Level::Boost), speed);
    let terms = [making.term("q", making.total(Level::Boost)), making.parts.givens.term("v", G::FaceSpeed)];
    let area = (area.as_cm2(), Unit::SquareCentimetre);
    let area = making.line((N::Area, Formula::GrilleArea), area, &ARITHMETIC, &terms);
    let numbers = clear.into_iter().chain([area]).chain(own.map(|(own, _)| own));
    making.step(R::PlaceIntake, source.unwrap_or(&PRACTICE), numbers.collect::<Vec<_>>());
    checks::outside_checks(making);
}
