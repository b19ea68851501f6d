//! The givens themselves. Adding one: a variant of [`GivenId`], a row at the same place, a name in `airtally-words`.

use super::Given;
use super::sources::*;
use crate::id::GivenId;
use crate::quantity::Unit;
use crate::source::{PRACTICE, Source};

impl GivenId {
    /// The registered value.
    pub fn given(self) -> &'static Given {
        &TABLE[self as usize]
    }

    /// The given of a key in a file.
    pub fn from_key(key: &str) -> Option<Self> {
        TABLE.iter().find(|given| given.key == key).map(|given| given.id)
    }

    /// Every given, in the order of the registry.
    pub fn all() -> impl Iterator<Item = Self> {
        TABLE.iter().map(|given| given.id)
    }
}

const fn given(
    id: GivenId,
    key: &'static str,
    value: f64,
    unit: Unit,
    range: (f64, f64),
    source: &'static Source,
) -> Given {
    Given { id, key, value, unit, range, source }
}

use GivenId as G;
use Unit as U;

static TABLE: [Given; 174] = [
    // Steps an installer can set
    given(G::StepCubicMetres, "step.m3h", 5.0, U::CubicMetrePerHour, (0.5, 25.0), &PRACTICE),
    given(G::StepLitres, "step.ls", 1.0, U::LitrePerSecond, (0.1, 10.0), &PRACTICE),
    given(G::StepCubicFeet, "step.cfm", 2.0, U::CubicFootPerMinute, (0.5, 20.0), &PRACTICE),
    // House defaults
    given(G::Ceiling, "house.ceiling", 2.5, U::Metre, (1.5, 6.0), &PRACTICE),
    given(G::SleepersMain, "sleepers.main", 2.0, U::Count, (0.0, 10.0), &PRACTICE),
    given(G::SleepersOther, "sleepers.other", 1.0, U::Count, (0.0, 10.0), &PRACTICE),
    // Levels where a rule names none
    given(G::BoostShare, "level.boost", 1.3, U::Ratio, (1.0, 3.0), &PRACTICE),
    // ASHRAE 62.2
    given(G::AshraeCap, "ashrae.cap", 2.0 / 3.0, U::Ratio, (0.0, 10.0), &ASHRAE_CAP),
    given(G::AshraeExteriorShare, "ashrae.aext", 1.0, U::Ratio, (0.0, 1.0), &ASHRAE_AEXT),
    // DIN 1946-6
    given(G::DinSquare, "din.2019.a2", -0.002, U::Ratio, (-0.01, 0.0), &DIN_2019_RATE),
    given(G::DinLinear, "din.2019.a1", 1.15, U::Ratio, (0.0, 5.0), &DIN_2019_RATE),
    given(G::DinConstant, "din.2019.a0", 11.0, U::Ratio, (0.0, 100.0), &DIN_2019_RATE),
    given(G::DinMoisture2009, "din.2009.fl", 0.3, U::Ratio, (0.1, 1.0), &DIN_2009_LEVELS),
    given(G::DinMoisture2019, "din.2019.fl", 0.3, U::Ratio, (0.1, 1.0), &DIN_2019_LEVELS),
    given(G::DinReduced, "din.rl", 0.7, U::Ratio, (0.1, 1.0), &DIN_LEVELS),
    given(G::DinIntensive, "din.il", 1.3, U::Ratio, (1.0, 3.0), &DIN_LEVELS),
    given(G::DinPerson, "din.person", 30.0, U::CubicMetrePerHour, (10.0, 60.0), &DIN_PERSON),
    given(G::DinKitchen, "din.kitchen", 45.0, U::CubicMetrePerHour, (0.0, 200.0), &DIN_WET_CHECKED),
    given(G::DinBathroom, "din.bathroom", 45.0, U::CubicMetrePerHour, (0.0, 200.0), &DIN_WET_CHECKED),
    given(G::DinWc, "din.wc", 25.0, U::CubicMetrePerHour, (0.0, 200.0), &DIN_WET_MEMORY),
    given(G::DinUtility, "din.utility", 25.0, U::CubicMetrePerHour, (0.0, 200.0), &DIN_WET_MEMORY),
    given(G::WeightLiving, "weight.living", 3.0, U::Ratio, (0.0, 10.0), &DIN_WEIGHTS),
    given(G::WeightBedroom, "weight.bedroom", 2.0, U::Ratio, (0.0, 10.0), &DIN_WEIGHTS),
    given(G::WeightOther, "weight.other", 1.5, U::Ratio, (0.0, 10.0), &DIN_WEIGHTS),
    // Canada
    given(G::CanadaLow, "canada.low", 0.5, U::Ratio, (0.4, 0.6), &CANADA_LOW),
    given(G::CanadaKitchen, "canada.kitchen", 50.0, U::LitrePerSecond, (0.0, 200.0), &CANADA_WET),
    given(G::CanadaBathroom, "canada.bathroom", 25.0, U::LitrePerSecond, (0.0, 200.0), &CANADA_WET),
    given(G::CanadaKitchenSteady, "canada.kitchen.steady", 30.0, U::LitrePerSecond, (0.0, 200.0), &CANADA_WET),
    given(G::CanadaBathroomSteady, "canada.bathroom.steady", 15.0, U::LitrePerSecond, (0.0, 200.0), &CANADA_WET),
    // Tubes
    given(G::Bore63, "tube.bore.63", 52.0, U::Millimetre, (40.0, 63.0), &PRACTICE),
    given(G::Bore75, "tube.bore.75", 63.0, U::Millimetre, (50.0, 75.0), &PRACTICE),
    given(G::Bore90, "tube.bore.90", 76.0, U::Millimetre, (60.0, 90.0), &PRACTICE),
    given(G::SpeedNormal, "tube.speed.normal", 2.5, U::MetrePerSecond, (0.5, 6.0), &PRACTICE),
    given(G::SpeedBedroom, "tube.speed.bedroom", 2.0, U::MetrePerSecond, (0.5, 6.0), &PRACTICE),
    given(G::SpeedBoost, "tube.speed.boost", 3.0, U::MetrePerSecond, (0.5, 8.0), &PRACTICE),
    given(G::CountSlack, "tube.slack", 0.05, U::Ratio, (0.0, 0.5), &PRACTICE),
    given(G::KitchenTubes, "tube.kitchen", 2.0, U::Count, (1.0, 6.0), &PRACTICE),
    given(G::TubesMany, "tube.many", 4.0, U::Count, (1.0, 20.0), &PRACTICE),
    given(G::SparePorts, "manifold.spare", 2.0, U::Count, (0.0, 10.0), &PRACTICE),
    given(G::CutEnd, "cut.end", 0.4, U::Metre, (0.0, 3.0), &PRACTICE),
    given(G::CutWaste, "cut.waste", 0.05, U::Ratio, (0.0, 0.5), &PRACTICE),
    // Transfer openings
    given(G::TransferPressure, "transfer.pressure", 1.0, U::Pascal, (0.2, 10.0), &PRACTICE),
    given(G::TransferDischarge, "transfer.discharge", 0.6, U::Ratio, (0.4, 1.0), &ORIFICE),
    given(G::TransferDensity, "transfer.density", 1.2, U::Ratio, (0.8, 1.5), &STANDARD_AIR),
    given(G::DoorWidth, "door.width", 800.0, U::Millimetre, (400.0, 2000.0), &PRACTICE),
    given(G::UndercutTall, "door.undercut.tall", 25.0, U::Millimetre, (5.0, 100.0), &PRACTICE),
    // Overnight CO2
    given(G::SleeperCo2, "co2.sleeper", 13.6, U::LitrePerHour, (5.0, 40.0), &CO2_SLEEPER),
    given(G::OutdoorCo2, "co2.outdoor", 420.0, U::PartPerMillion, (300.0, 800.0), &PRACTICE),
    given(G::NightHours, "co2.night", 8.0, U::Hour, (1.0, 24.0), &PRACTICE),
    given(G::Co2Noticeable, "co2.noticeable", 1000.0, U::PartPerMillion, (500.0, 5000.0), &CO2_LIMITS),
    given(G::Co2Unacceptable, "co2.unacceptable", 2000.0, U::PartPerMillion, (500.0, 10000.0), &CO2_LIMITS),
    // Work on site
    given(G::BendRadius, "site.bend.radius", 2.0, U::Ratio, (1.0, 10.0), &PRACTICE),
    given(G::BendsMost, "site.bends", 4.0, U::Count, (1.0, 10.0), &PRACTICE),
    given(G::SupportSpacing, "site.support", 750.0, U::Millimetre, (200.0, 2000.0), &SUPPORTS),
    given(G::SupportSpacingFeet, "site.support.us", 4.0, U::Foot, (0.5, 8.0), &SUPPORTS_US),
    given(G::FlexibleLength, "site.flexible", 300.0, U::Millimetre, (0.0, 2000.0), &FLEXIBLE),
    given(G::ManifoldClear, "site.manifold.clear", 400.0, U::Millimetre, (100.0, 1500.0), &PRACTICE),
    given(G::Hatch, "site.hatch", 300.0, U::Millimetre, (100.0, 1500.0), &PRACTICE),
    given(G::SilencerLength, "site.silencer", 900.0, U::Millimetre, (300.0, 3000.0), &PRACTICE),
    given(G::SilencerLining, "site.silencer.lining", 100.0, U::Millimetre, (20.0, 300.0), &PRACTICE),
    given(G::ServiceSpace, "site.service", 30.0, U::Inch, (10.0, 80.0), &SERVICE),
    given(G::OutdoorDuct, "site.outdoor.duct", 2.0, U::Metre, (0.2, 20.0), &PRACTICE),
    given(G::UnitReserve, "site.unit.reserve", 0.8, U::Ratio, (0.3, 1.0), &PRACTICE),
    given(G::MainSpeed, "site.main.speed", 2.5, U::MetrePerSecond, (0.5, 6.0), &PRACTICE),
    given(G::FlueGermany, "site.flue.de", 4.0, U::Pascal, (0.5, 20.0), &FLUE_GERMANY),
    given(G::FlueCanada, "site.flue.ca", 5.0, U::Pascal, (0.5, 20.0), &FLUE_CANADA),
    given(G::FlueKitchen, "site.flue.kitchen", 20.0, U::LitrePerSecond, (0.0, 100.0), &FLUE_KITCHEN),
    given(G::HoleClearance, "site.hole.clearance", 10.0, U::Millimetre, (0.0, 50.0), &PRACTICE),
    given(G::HoleThird, "site.hole.us", 1.0 / 3.0, U::Ratio, (0.1, 0.5), &HOLE_THIRD),
    given(G::HoleQuarter, "site.hole", 0.25, U::Ratio, (0.1, 0.5), &HOLE_QUARTER),
    given(G::CoreInsulation, "site.core.insulation", 25.0, U::Millimetre, (0.0, 200.0), &PRACTICE),
    given(G::CoreClearance, "site.core.clearance", 20.0, U::Millimetre, (0.0, 100.0), &PRACTICE),
    given(G::ColdDuct, "site.main", 160.0, U::Millimetre, (80.0, 400.0), &PRACTICE),
    given(G::CoreFall, "site.core.fall", 0.02, U::Ratio, (0.0, 0.2), &PRACTICE),
    given(G::DrainFall, "site.drain.fall", 0.01, U::Ratio, (0.0, 0.2), &PRACTICE),
    given(G::DrainSuction, "site.drain.suction", 400.0, U::Pascal, (50.0, 2000.0), &TRAP),
    given(G::TrapExtra, "site.trap.extra", 25.0, U::Millimetre, (0.0, 200.0), &TRAP),
    given(G::LeakPressure, "site.leak.pressure", 100.0, U::Pascal, (50.0, 500.0), &PRACTICE),
    given(G::LeakShare, "site.leak.share", 0.05, U::Ratio, (0.005, 0.3), &PRACTICE),
    given(G::SettleTime, "site.settle", 5.0, U::Minute, (1.0, 60.0), &PRACTICE),
    given(G::WindMost, "site.wind", 3.0, U::Count, (0.0, 12.0), &WIND),
    given(G::FilterCheck, "site.filter.months", 3.0, U::Count, (1.0, 24.0), &PRACTICE),
    given(G::IntakeClear, "site.intake.clear", 8.0, U::Metre, (1.0, 30.0), &INTAKE),
    given(G::IntakeClearFeet, "site.intake.clear.us", 10.0, U::Foot, (3.0, 100.0), &INTAKE_US),
    given(G::OwnExhaustFeet, "site.intake.exhaust.us", 10.0, U::Foot, (1.0, 100.0), &OWN_EXHAUST_US),
    given(G::OwnExhaustGermany, "site.intake.exhaust.de", 2.0, U::Metre, (0.3, 30.0), &OWN_EXHAUST_GERMANY),
    given(G::OwnExhaustCanada, "site.intake.exhaust.ca", 0.9, U::Metre, (0.3, 30.0), &OWN_EXHAUST_CANADA),
    given(G::OwnExhaustF326, "site.intake.exhaust.f326", 1.8, U::Metre, (0.3, 30.0), &OWN_EXHAUST_F326),
    given(G::IntakeGroundCanada, "site.intake.ground.ca", 450.0, U::Millimetre, (100.0, 3000.0), &OWN_EXHAUST_CANADA),
    given(G::IntakeSourceCanada, "site.intake.clear.ca", 1.8, U::Metre, (0.3, 30.0), &OWN_EXHAUST_CANADA),
    given(G::Imbalance, "site.imbalance", 0.1, U::Ratio, (0.0, 1.0), &PRACTICE),
    given(G::FaceSpeed, "site.face.speed", 2.0, U::MetrePerSecond, (0.5, 5.0), &PRACTICE),
    given(G::HobDistance, "site.hob", 1.2, U::Metre, (0.3, 5.0), &PRACTICE),
    given(G::ExtractBelowCeiling, "site.extract.ceiling", 400.0, U::Millimetre, (50.0, 1000.0), &ADF_HEIGHT),
    given(G::BedHead, "site.bed.head", 1.0, U::Metre, (0.3, 4.0), &PRACTICE),
    given(G::TerminalTolerance, "site.tolerance.terminal", 0.1, U::Ratio, (0.02, 0.3), &PRACTICE),
    given(G::TotalTolerance, "site.tolerance.total", 0.05, U::Ratio, (0.01, 0.2), &PRACTICE),
    given(G::NoticeDays, "site.notice.days", 5.0, U::Day, (1.0, 60.0), &NOTICE),
    // Further rule sets
    given(G::WashingtonQuality, "washington.quality", 1.0, U::Ratio, (1.0, 1.5), &WASHINGTON_QUALITY),
    given(G::EnCategory, "en16798.category", 2.0, U::Count, (1.0, 4.0), &EN_CATEGORY),
    given(G::PassivePerson, "passive.person", 30.0, U::CubicMetrePerHour, (20.0, 60.0), &PASSIVE_PERSON),
    given(G::PassiveKitchen, "passive.kitchen", 60.0, U::CubicMetrePerHour, (0.0, 200.0), &PASSIVE_WET),
    given(G::PassiveBathroom, "passive.bathroom", 40.0, U::CubicMetrePerHour, (0.0, 200.0), &PASSIVE_WET),
    given(G::PassiveOther, "passive.other", 20.0, U::CubicMetrePerHour, (0.0, 200.0), &PASSIVE_WET),
    given(G::PassiveStandard, "passive.standard", 0.77, U::Ratio, (0.3, 1.0), &PASSIVE_LEVELS),
    given(G::PassiveBasic, "passive.basic", 0.54, U::Ratio, (0.3, 1.0), &PASSIVE_LEVELS),
    given(G::PassiveChanges, "passive.changes", 0.3, U::PerHour, (0.1, 1.0), &PASSIVE_CHANGES),
    given(G::NbcLeast1, "nbc.1.least", 16.0, U::LitrePerSecond, (1.0, 200.0), &NBC_TABLE),
    given(G::NbcMost1, "nbc.1.most", 24.0, U::LitrePerSecond, (1.0, 200.0), &NBC_TABLE),
    given(G::NbcLeast2, "nbc.2.least", 18.0, U::LitrePerSecond, (1.0, 200.0), &NBC_TABLE),
    given(G::NbcMost2, "nbc.2.most", 28.0, U::LitrePerSecond, (1.0, 200.0), &NBC_TABLE),
    given(G::NbcLeast3, "nbc.3.least", 22.0, U::LitrePerSecond, (1.0, 200.0), &NBC_TABLE),
    given(G::NbcMost3, "nbc.3.most", 32.0, U::LitrePerSecond, (1.0, 200.0), &NBC_TABLE),
    given(G::NbcLeast4, "nbc.4.least", 26.0, U::LitrePerSecond, (1.0, 200.0), &NBC_TABLE),
    given(G::NbcMost4, "nbc.4.most", 38.0, U::LitrePerSecond, (1.0, 200.0), &NBC_TABLE),
    given(G::NbcLeast5, "nbc.5.least", 30.0, U::LitrePerSecond, (1.0, 200.0), &NBC_TABLE),
    given(G::NbcMost5, "nbc.5.most", 45.0, U::LitrePerSecond, (1.0, 200.0), &NBC_TABLE),
    // What rule sets have at inner doors
    given(G::DoorEngland, "door.england", 76.0, U::SquareCentimetre, (10.0, 1000.0), &DOOR_ENGLAND),
    given(G::DoorEnglandBare, "door.england.bare", 20.0, U::Millimetre, (5.0, 60.0), &DOOR_ENGLAND_GAP),
    given(G::DoorGermany, "door.germany", 2.5, U::Ratio, (0.5, 10.0), &DOOR_GERMANY),
    given(G::DoorPressureGermany, "door.germany.pressure", 1.0, U::Pascal, (0.2, 10.0), &DOOR_PRESSURE_GERMANY),
    given(G::DoorPressureAmerica, "door.america.pressure", 3.0, U::Pascal, (0.2, 10.0), &DOOR_PRESSURE_AMERICA),
    // What the air has to go through
    given(G::RunLength, "run.length", 10.0, U::Metre, (0.5, 100.0), &PRACTICE),
    given(G::RunBends, "run.bends", 3.0, U::Count, (0.0, 20.0), &PRACTICE),
    given(G::TubeRoughness, "tube.roughness", 0.1, U::Millimetre, (0.0, 3.0), &PRACTICE),
    given(G::ValvePressure, "valve.pressure", 9.0, U::Pascal, (0.5, 100.0), &PRACTICE),
    given(G::MainLength, "main.length", 3.0, U::Metre, (0.1, 50.0), &PRACTICE),
    given(G::MainBends, "main.bends", 2.0, U::Count, (0.0, 20.0), &PRACTICE),
    given(G::MainRoughness, "main.roughness", 0.09, U::Millimetre, (0.0, 3.0), &ROUGH_STEEL),
    given(G::GrilleLoss, "outside.loss", 7.0, U::Ratio, (0.5, 50.0), &GRILLE),
    given(G::Altitude, "site.altitude", 0.0, U::Metre, (-400.0, 4000.0), &PRACTICE),
    given(G::IndoorTemperature, "indoor.temperature", 20.0, U::Celsius, (10.0, 35.0), &PRACTICE),
    given(G::IndoorHumidity, "indoor.humidity", 0.5, U::Ratio, (0.05, 0.95), &PRACTICE),
    given(G::OutdoorTemperature, "outdoor.temperature", -5.0, U::Celsius, (-50.0, 45.0), &PRACTICE),
    given(G::RunPressureMost, "run.pressure", 40.0, U::Pascal, (5.0, 200.0), &PRACTICE),
    // What is ordered and what is done
    given(G::CoilLength, "parts.coil", 50.0, U::Metre, (5.0, 500.0), &PRACTICE),
    given(G::BracketSpacing, "parts.bracket", 1.5, U::Metre, (0.3, 5.0), &PRACTICE),
    given(G::DrainLength, "parts.drain", 3.0, U::Metre, (0.2, 50.0), &PRACTICE),
    given(G::HoursSetOut, "hours.set.out", 0.5, U::Hour, (0.0, 100.0), &PRACTICE),
    given(G::HoursTube, "hours.tube", 0.4, U::Hour, (0.0, 100.0), &PRACTICE),
    given(G::HoursValve, "hours.valve", 0.25, U::Hour, (0.0, 100.0), &PRACTICE),
    given(G::HoursUnit, "hours.unit", 8.0, U::Hour, (0.0, 500.0), &PRACTICE),
    given(G::HoursOutside, "hours.outside", 2.5, U::Hour, (0.0, 100.0), &PRACTICE),
    given(G::HoursMeasure, "hours.measure", 0.4, U::Hour, (0.0, 100.0), &PRACTICE),
    given(G::PartsMargin, "parts.margin", 0.0, U::Percent, (0.0, 300.0), &PRACTICE),
    given(G::Tax, "parts.tax", 0.0, U::Percent, (0.0, 100.0), &PRACTICE),
    // Supply valves
    given(G::ValveArea, "valve.area", 60.0, U::SquareCentimetre, (5.0, 1000.0), &PRACTICE),
    // Cold ducts
    given(G::Conductivity, "insulation.conductivity", 0.035, U::Ratio, (0.01, 0.2), &PRACTICE),
    // How loud it is
    given(G::UnitSound, "sound.unit", 0.0, U::DecibelA, (0.0, 110.0), &PRACTICE),
    given(G::UnitInside, "sound.inside", 100.0, U::Pascal, (0.0, 500.0), &PRACTICE),
    given(G::LiningAbsorption, "sound.lining", 0.7, U::Ratio, (0.0, 1.0), &PRACTICE),
    given(G::BoxDamping, "sound.box", 4.0, U::Decibel, (0.0, 30.0), &BOX_DAMPING),
    given(G::TubeDamping, "sound.tube", 0.2, U::Decibel, (0.0, 3.0), &PRACTICE),
    given(G::ValveBore, "valve.bore", 125.0, U::Millimetre, (40.0, 300.0), &PRACTICE),
    given(G::Reverberation, "sound.room", 0.5, U::Second, (0.1, 3.0), &PRACTICE),
    given(G::EarDistance, "sound.ear", 1.5, U::Metre, (0.3, 10.0), &PRACTICE),
    given(G::QuietBedroom, "sound.bedroom", 30.0, U::DecibelA, (15.0, 60.0), &QUIET),
    given(G::QuietLiving, "sound.living", 35.0, U::DecibelA, (15.0, 60.0), &QUIET),
    // Flat oval tubes, more tubes, more manifolds
    given(G::OvalWide, "tube.oval.wide", 130.0, U::Millimetre, (60.0, 250.0), &PRACTICE),
    given(G::OvalHigh, "tube.oval.high", 45.0, U::Millimetre, (20.0, 60.0), &PRACTICE),
    given(G::TubesLeast, "tube.least", 1.0, U::Count, (1.0, 6.0), &PRACTICE),
    given(G::StoreyRise, "main.storey", 2.8, U::Metre, (1.8, 8.0), &PRACTICE),
    // What the unit meets in service
    given(G::FilterClean, "filter.clean", 20.0, U::Pascal, (1.0, 200.0), &PRACTICE),
    given(G::FilterDirty, "filter.dirty", 2.0, U::Ratio, (1.0, 6.0), &PRACTICE),
    given(G::LeakFactor, "leak.factor", 0.003, U::Ratio, (0.0, 0.2), &TIGHTNESS),
    given(G::DoorCrack, "door.crack", 40.0, U::SquareCentimetre, (1.0, 1000.0), &PRACTICE),
    given(G::FanShut, "fan.shut", 1.5, U::Ratio, (1.05, 5.0), &PRACTICE),
    given(G::FanEfficiency, "fan.efficiency", 0.45, U::Ratio, (0.05, 1.0), &PRACTICE),
    given(G::SfpEngland, "sfp.england", 1.5, U::Ratio, (0.1, 10.0), &SFP_ENGLAND),
    given(G::SfpIreland, "sfp.ireland", 1.2, U::Ratio, (0.1, 10.0), &SFP_IRELAND),
    given(G::SfpPassive, "sfp.passive", 1.62, U::Ratio, (0.1, 10.0), &SFP_PASSIVE),
    // How loud it is, measured
    given(G::SilencerLoss, "sound.silencer", 0.0, U::Decibel, (0.0, 60.0), &PRACTICE),
    given(G::ValveSound, "sound.valve", 0.0, U::DecibelA, (0.0, 80.0), &PRACTICE),
    given(G::VoiceMost, "sound.voice", 25.0, U::DecibelA, (5.0, 60.0), &PRACTICE),
];
