use super::*;
use crate::{demo, prose};
use airtally::co2;
use airtally::delivery::Delivery;
use airtally::facts::Facts;
use airtally::formula::Formula as F;
use airtally::given::Givens;
use airtally::house::{Choices, Credit, Fuel, House, HouseField, KitchenDraw, Print, Stud, Table, WetRooms};
use airtally::pocket::{self, Ask, Scratch, Slot, Usual};
use airtally::quantity::{Length, Unit};
use airtally::rules::{Demand, RuleSet};
use airtally::runs::Runs;
use airtally::shares::Shares;
use airtally::steps::{self, Parts};
use airtally::transfer;
use airtally::working::Working;

/// In the order of the enum, from its first to its last.
pub(crate) const ALL: [F; 104] = [
    F::FloorArea,
    F::AshraeTotal,
    F::AshraeTable,
    F::AshraePeople,
    F::BlowerDoorFlow,
    F::AshraeInfiltration,
    F::AshraeNormalisedLeakage,
    F::AshraeInfiltration2013,
    F::AshraeCapped,
    F::AshraeFan,
    F::KitchenAirChanges,
    F::IrcEquation,
    F::IrcTable,
    F::IrcCredit,
    F::IrcRunTime,
    F::AdfTable,
    F::AdfArea,
    F::AdfWhole,
    F::DinNominal,
    F::CanadaRoomCount,
    F::ConstantAndPeople,
    F::AreaRate,
    F::Larger,
    F::SharedAreas,
    F::RoomsTable,
    F::BedroomsTable,
    F::FloorVolume,
    F::PassiveMaximum,
    F::WashingtonRate,
    F::WashingtonQuality,
    F::PersonRate,
    F::LevelShare,
    F::RoomMinimum,
    F::SumOfRooms,
    F::LevelTotal,
    F::IdealShare,
    F::WholeSteps,
    F::TubeLimit,
    F::TubeCount,
    F::TubeSpeed,
    F::Ports,
    F::CutLength,
    F::TransferArea,
    F::Undercut,
    F::AreaForFlow,
    F::DoorPressure,
    F::Co2Night,
    F::PerSleeper,
    F::AirChange,
    F::WallCore,
    F::TrapDrop,
    F::TrapSeal,
    F::TubeHole,
    F::JoistDepth,
    F::GrilleArea,
    F::UnitMaximum,
    F::SilencerSize,
    F::MainSpeed,
    F::WholeTotal,
    F::BendRadius,
    F::LeakLimit,
    F::Tolerance,
    F::NetDraw,
    F::HousePressure,
    F::FanLimit,
    F::HoleLimit,
    F::NotchLimit,
    F::HoleZone,
    F::TubesInBay,
    F::LeakAt,
    F::LeakInTest,
    F::CrossingDepth,
    F::DuctSpeed,
    F::TubePressure,
    F::TubesBeside,
    F::ValveFlow,
    F::MainBore,
    F::BoostPressure,
    F::OffSupply,
    F::OffAverage,
    F::FlowConversion,
    F::RunPressure,
    F::ValvePressure,
    F::DuctPressure,
    F::GrillePressure,
    F::Throttle,
    F::ThrottleHole,
    F::ExternalPressure,
    F::WayPressure,
    F::SetPressure,
    F::MeasuredPressure,
    F::ValveSetting,
    F::SpecificPower,
    F::BuiltFlow,
    F::TubeMetres,
    F::MainMetres,
    F::HoldCount,
    F::Each,
    F::Throw,
    F::LeastInsulation,
    F::LeastAround,
    F::WarmedAir,
    F::RoomSound,
    F::VoiceHeard,
];

#[test]
fn every_equation_has_a_title_and_a_notation() {
    for (at, formula) in ALL.into_iter().enumerate() {
        assert_eq!(formula as usize, at, "{formula:?} is missing or out of order");
        prose::is_label(title(formula));
        prose::is_label(notation(formula));
    }
}

/// Every number of every line of every demo house, whatever is chosen, can be found in the equation and explained.
#[test]
fn every_symbol_in_a_line_stands_in_its_equation_and_has_a_meaning() {
    let mut seen = Vec::new();
    for working in houses().iter().map(worked).chain(pockets()) {
        for id in working.ids() {
            let Some(line) = working.line(id) else { continue };
            seen.push(line.formula as usize);
            for term in working.terms(id) {
                let (formula, symbol) = (line.formula, term.symbol);
                assert!(notation(formula).contains(symbol), "{symbol} is not in {}", notation(formula));
                prose::is_label(meaning(formula, symbol).unwrap_or_else(|| panic!("{symbol} of {formula:?}")));
            }
        }
    }
    seen.sort_unstable();
    seen.dedup();
    assert!(seen.len() >= 30, "{} equations were used", seen.len());
}

/// Every figure of the pocket, with a text that all of its fields read.
fn pockets() -> Vec<Working> {
    let answered = |ask: Ask| {
        let mut scratch = Scratch::default();
        for slot in ask.slots() {
            let text = if *slot == Slot::JoistSpan { "4" } else { "60" };
            scratch.set(*slot, text.to_owned(), slot.limit().unit);
        }
        scratch.set(Slot::DoorWidth, String::new(), Unit::Millimetre);
        scratch.set(Slot::TubeBore, String::new(), Unit::Millimetre);
        let usual = Usual { bore: Length::from_mm(63.0), outside: Length::from_mm(75.0) };
        let found = pocket::answer(ask, &scratch, &Givens::registered(), usual);
        found.expect("an answer").working
    };
    Ask::ALL.map(answered).to_vec()
}

fn houses() -> Vec<House> {
    let mut houses = Vec::new();
    for demo in &demo::DEMOS {
        for rules in RuleSet::ALL {
            let house = (demo.house)();
            let steady = Choices { rules, wet: Some(WetRooms::Continuous), ..house.choices };
            let claimed = Choices { credit: Credit::Claimed, kitchen: Some(KitchenDraw::System), ..steady };
            let table = Choices { table: Some(Table::Table), print: Print::Si, ..claimed };
            let demand = Choices { table: Some(Table::Equation), wet: Some(WetRooms::OnDemand), ..claimed };
            houses.extend([steady, claimed, table, demand].map(|choices| with(&house, choices)));
        }
    }
    houses
}

fn with(house: &House, choices: Choices) -> House {
    let choices = Choices { fuel: Some(Fuel::Solid), stud: Some(Stud::Bearing), ..choices };
    let mut house = House { choices, ..house.clone() };
    let found = [("250", HouseField::JoistDepth), ("50", HouseField::LeakPressure), ("9", HouseField::LeakSupply)];
    let texts = [("5", HouseField::EnvelopeHeight), ("0.6", HouseField::WeatherFactor), ("9", HouseField::People)];
    let cut = [("20", HouseField::JoistNotch), ("1", HouseField::JoistNotchAt), ("4", HouseField::JoistSpan)];
    let timber = [("140", HouseField::StudDepth), ("20", HouseField::StudNotch), ("50", HouseField::RunTime)];
    for (text, field) in cut.into_iter().chain(timber).chain(texts).chain(found) {
        house.entries.push((field, airtally::entry::Entry::new(text, field.limit().unit)));
    }
    house
}

fn worked(house: &House) -> Working {
    let (mut working, mut issues) = (Working::default(), Vec::new());
    let givens = Givens::of(&house.settings, &mut issues);
    let facts = Facts::of(house, &givens, &mut issues);
    let demand = Demand::of(house.choices.rules, &facts, &givens, &mut working, &mut issues);
    let shares = Shares::of(&facts, &demand, &givens, &mut working, &mut issues);
    let runs = Runs::of(&facts, &shares, &givens, &mut working, &mut issues);
    let delivery = Delivery::of((&facts, &givens), (&shares, &runs), &mut working, &mut issues);
    let openings = transfer::openings(&facts, &shares, &givens, &mut working, &mut issues);
    co2::nights(&facts, &shares, &givens, &mut working, &mut issues);
    let (facts, givens, shares, runs) = (&facts, &givens, &shares, &runs);
    let parts = Parts { house, facts, givens, shares, runs, delivery: &delivery, openings: &openings };
    steps::list(&parts, &mut working, &mut Vec::new());
    working
}
