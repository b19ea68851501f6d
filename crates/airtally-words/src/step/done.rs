//! What is so when a step is done: the second half of "Locked until …".

use crate::room;
use airtally::house::House;
use airtally::rules::Air;
use airtally::steps::{StepKey, StepRule as R};

/// What is so when the step is done.
pub fn done(key: StepKey, house: &House) -> String {
    match (key.rule, key.room, key.air) {
        (R::PullTubes, Some(id), Some(Air::Extract)) => {
            format!("the tubes from {} are pulled", room::name(house, id))
        }
        (R::PullTubes, Some(id), _) => format!("the tubes to {} are pulled", room::name(house, id)),
        (R::CutUndercut, Some(id), _) => format!("the gap under the door of {} is there", room::name(house, id)),
        (R::ReadTerminals, _, Some(Air::Extract)) => "the extract terminals are read".to_owned(),
        (R::ReadTerminals, _, Some(Air::Supply)) => "the supply terminals are read".to_owned(),
        (rule, ..) => plain(rule).to_owned(),
    }
}

const fn plain(rule: R) -> &'static str {
    match rule {
        R::AskOpenFlues => "you know what burns fuel in the house",
        R::LookForSuspectBoard => "nothing suspect is left in the way",
        R::CheckStructure => "you know what the joists are and what they bear",
        R::ListCrossings => "every crossing is on the list",
        R::KeepGarageClosed => "the garage is kept apart",
        R::CheckUnitDuty => "the unit is known to be big enough",
        R::PlaceUnit => "the unit has its place",
        R::PlaceIntake => "the outside terminals have their places",
        R::PlaceBedroomValves => "the bedroom valves are marked",
        R::PlaceExtractValves => "the extract valves are marked",
        R::PlaceKitchenValve => "the kitchen valve is marked",
        R::PlaceManifolds => "the manifolds have their places",
        R::DrillCores => "the cores are drilled",
        R::DrillTubeHoles => "the holes for the tubes are drilled",
        R::BendWide => "the bends are agreed",
        R::PullTubes => "the tubes are pulled",
        R::SupportTubes => "the tubes are supported",
        R::RecordRoutes => "the routes are photographed",
        R::HangUnit => "the unit hangs",
        R::FixManifolds => "the manifolds are fixed",
        R::FixSilencers => "the silencers are fixed",
        R::ConnectTubes => "the tubes are connected",
        R::ConnectMains => "the mains are connected",
        R::SealJoints => "the joints are sealed",
        R::LayCables => "the cables are laid",
        R::LeakTest => "the leak test is passed",
        R::InsulateColdDucts => "the cold ducts are insulated",
        R::FitTrap => "the trap is fitted",
        R::FallDrain => "the drain has its fall",
        R::CloseUp => "walls and ceilings are closed",
        R::CapEnds => "the open ends are capped",
        R::DustGone => "the dust is gone",
        R::FitFilters => "clean filters are fitted",
        R::FillTrap => "the trap is full of water",
        R::OpenValves => "the caps are off and the valves open",
        R::CutUndercut => "the gaps under the doors are there",
        R::ShutHouse => "the house is shut and other fans are off",
        R::CalmWeather => "the weather is calm enough",
        R::FitCoAlarms => "the carbon monoxide alarms are tested",
        R::WireUnit => "the unit is wired",
        R::StartUnit => "the unit runs",
        R::LetSettle => "the flows have settled",
        R::ReadTerminals => "the terminals are read",
        R::CompareTotals => "the totals are compared",
        R::ReadBoost => "boost is read",
        R::TestSpillage => "the flues are tested",
        R::LockValves => "the valves are locked",
        R::NoteFilterDates => "the filter dates are noted",
        R::HandOverPapers => "the papers are handed over",
    }
}
