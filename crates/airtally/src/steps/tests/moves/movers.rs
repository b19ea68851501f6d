//! What moves the numbers of each step and check: whoever adds one says it here.

use super::Input;
use crate::given::GivenId as G;
use crate::house::{HouseField as H, RoomKind};
use crate::id::CheckRule as C;
use crate::quantity::Unit;
use crate::steps::StepRule as R;
use Input as I;

/// What moves the numbers of a step; nothing for a step without one.
pub fn moved_by(rule: R) -> &'static [Input] {
    match rule {
        R::AskOpenFlues => &[I::Set(G::FlueGermany), I::Set(G::FlueCanada), I::Set(G::FlueKitchen)],
        R::SurveyVents => &[I::OneMore(RoomKind::Bedroom)],
        R::CheckStructure => &[I::Tube, I::Set(G::HoleClearance), I::Set(G::HoleThird), I::Set(G::HoleQuarter)],
        R::ListCrossings => &[I::Cellar],
        R::KeepGarageClosed => &[I::OneMore(RoomKind::Garage)],
        R::CheckUnitDuty => &[I::Larger, I::Set(G::UnitReserve)],
        R::PlaceUnit => &[I::Set(G::ServiceSpace), I::Set(G::OutdoorDuct)],
        R::PlaceIntake => &PLACES,
        R::PlaceBedroomValves => &[I::OneMore(RoomKind::Bedroom), I::Set(G::BedHead)],
        R::PlaceExtractValves => &[I::OneMore(RoomKind::Wc), I::Set(G::ExtractBelowCeiling)],
        R::PlaceKitchenValve => &[I::Set(G::HobDistance)],
        R::PlaceManifolds => &[I::Set(G::ManifoldClear), I::Set(G::Hatch)],
        R::SetOutTerminal => &[I::Larger, I::Tube, I::Set(G::HoleClearance), I::Set(G::KitchenTubes)],
        R::DrillCores => {
            &[I::Set(G::ColdDuct), I::Set(G::CoreInsulation), I::Set(G::CoreClearance), I::Set(G::CoreFall)]
        }
        R::DrillTubeHoles => &[I::Larger, I::Tube, I::Set(G::HoleClearance)],
        R::BendWide => &[I::Tube, I::Set(G::BendRadius), I::Set(G::BendsMost)],
        R::PullTubes => &[I::Larger, I::Tube, I::Set(G::KitchenTubes), I::Legs, I::Set(G::CutEnd), I::Set(G::CutWaste)],
        R::SupportTubes => &[I::Set(G::SupportSpacing), I::Set(G::SupportSpacingFeet)],
        R::RecordRoutes | R::OpenValves | R::LockValves => &[I::OneMore(RoomKind::Bedroom), I::OneMore(RoomKind::Wc)],
        R::FixManifolds => &[I::Larger, I::Set(G::SparePorts)],
        R::FixSilencers => &[I::Set(G::SilencerLength), I::Set(G::SilencerLining), I::Set(G::ColdDuct)],
        R::ConnectTubes | R::SealJoints | R::CapEnds => &[I::Larger],
        R::ConnectMains => &[I::Larger, I::Set(G::ColdDuct), I::Set(G::MainSpeed), I::Set(G::FlexibleLength)],
        R::LayCables => &[I::OneMore(RoomKind::Wc)],
        R::LeakTest => &[I::Larger, I::Set(G::LeakPressure), I::Set(G::LeakShare)],
        R::SlopeExhaust => &[I::Set(G::CoreFall)],
        R::InsulateColdDucts => COLD,
        R::FitTrap => &[I::Set(G::DrainSuction), I::Set(G::TrapExtra)],
        R::FallDrain => &[I::Set(G::DrainFall)],
        R::FillTrap => &[I::Set(G::DrainSuction), I::Set(G::TrapExtra)],
        R::CutUndercut => &[I::Larger, I::Set(G::TransferPressure), I::Set(G::DoorWidth)],
        R::CalmWeather => &[I::Set(G::WindMost)],
        R::StartUnit | R::ReadBoost => &[I::Larger],
        R::LetSettle => &[I::Set(G::SettleTime)],
        R::ReadTerminals => &[I::Larger, I::Set(G::TerminalTolerance)],
        R::CompareTotals => &[I::Larger, I::Set(G::TotalTolerance)],
        R::NoteFilterDates => &[I::Set(G::FilterCheck)],
        R::HandOverPapers => &[I::Set(G::NoticeDays)],
        R::SurveyOldFans
        | R::LookForSuspectBoard
        | R::HangUnit
        | R::CloseCrossings
        | R::CloseUp
        | R::DustGone
        | R::FitFilters
        | R::ShutHouse
        | R::FitCoAlarms
        | R::WireUnit
        | R::TestSpillage => &[],
    }
}

/// What a cold duct and a warm one in the cold are insulated by.
const COLD: &[Input] = &[
    I::Set(G::CoreInsulation),
    I::Set(G::OutdoorTemperature),
    I::Set(G::IndoorTemperature),
    I::Set(G::IndoorHumidity),
    I::Set(G::ColdDuct),
    I::Set(G::Conductivity),
    I::Tube,
];

const PLACES: [Input; 9] = [
    I::Larger,
    I::Set(G::FaceSpeed),
    I::Set(G::IntakeClear),
    I::Set(G::IntakeClearFeet),
    I::Set(G::IntakeSourceCanada),
    I::Set(G::OwnExhaustFeet),
    I::Set(G::OwnExhaustGermany),
    I::Set(G::OwnExhaustCanada),
    I::Set(G::OwnExhaustF326),
];

/// What moves the numbers of a check.
pub fn checked_by(rule: C) -> &'static [Input] {
    const M: Unit = Unit::Metre;
    const MM: Unit = Unit::Millimetre;
    const M3H: Unit = Unit::CubicMetrePerHour;
    match rule {
        C::HousePressure => &[
            I::Larger,
            I::BothStop,
            I::Found(H::Ach50, "2", Unit::PerHour),
            I::Found(H::OtherFans, "90", M3H),
            I::Set(G::FlueGermany),
            I::Set(G::FlueCanada),
        ],
        C::JoistHole => &[I::Tube, I::Found(H::JoistDepth, "300", MM), I::Found(H::JoistSpan, "5", M)],
        C::JoistBay => &[I::Tube, I::Found(H::JoistClear, "560", MM)],
        C::FanDraw => &[I::Larger, I::Found(H::LargestFans, "90", M3H)],
        C::JoistNotch => &[I::Found(H::JoistNotch, "30", MM), I::Found(H::JoistDepth, "300", MM)],
        C::JoistNotchLength => &[I::Found(H::JoistNotchLength, "80", MM), I::Found(H::JoistDepth, "300", MM)],
        C::StudHole => &[I::Tube, I::Found(H::StudDepth, "200", MM)],
        C::StudNotch => &[I::Found(H::StudNotch, "15", MM), I::Found(H::StudDepth, "200", MM)],
        C::IntakeGround => &[I::Found(H::IntakeGround, "4", M), I::Set(G::IntakeGroundCanada)],
        C::IntakeSource => &[
            I::Found(H::IntakeSource, "11", M),
            I::Set(G::IntakeClear),
            I::Set(G::IntakeClearFeet),
            I::Set(G::IntakeSourceCanada),
        ],
        C::IntakeExhaust => &[
            I::Found(H::IntakeExhaust, "5", M),
            I::Set(G::OwnExhaustFeet),
            I::Set(G::OwnExhaustGermany),
            I::Set(G::OwnExhaustCanada),
            I::Set(G::OwnExhaustF326),
        ],
        C::ExhaustOpening => &[I::Found(H::ExhaustOpening, "2", M)],
        C::ExhaustBoundary => &[I::Found(H::ExhaustBoundary, "3", M)],
        C::ExhaustGround => &[I::Found(H::ExhaustGround, "4", M)],
        C::IntakeBoundary => &[I::Found(H::IntakeBoundary, "4", M)],
        C::IntakeStreet => &[I::Found(H::IntakeStreet, "4", M)],
        C::DryerOpening => &[I::Found(H::DryerOpening, "4", M)],
        C::Built => &[I::OneTube, I::Larger, I::Set(G::SpeedNormal), I::Set(G::SpeedBedroom), I::Set(G::SpeedBoost)],
        C::LeakSupply => {
            &[I::Larger, I::Found(H::LeakSupply, "4", M3H), I::Found(H::LeakPressure, "200", Unit::Pascal)]
        }
        C::LeakExtract => {
            &[I::Larger, I::Found(H::LeakExtract, "4", M3H), I::Found(H::LeakPressure, "200", Unit::Pascal)]
        }
    }
}

/// Whether nothing moves a number: an outdoor and an exhaust duct cross the outside wall, whatever the house.
pub fn is_fixed(rule: R, at: usize) -> bool {
    matches!((rule, at), (R::DrillCores | R::ListCrossings, 0))
}
