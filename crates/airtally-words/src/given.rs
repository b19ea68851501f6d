//! What the registered values are called.

use airtally::given::GivenId as G;

/// The name of a registered value: read as "Smallest step of a terminal is 5 m³/h".
#[allow(clippy::too_many_lines, reason = "one line for each value")]
pub const fn name(id: G) -> &'static str {
    match id {
        G::StepCubicMetres => "Smallest step of a terminal, in m³/h",
        G::StepLitres => "Smallest step of a terminal, in L/s",
        G::StepCubicFeet => "Smallest step of a terminal, in cfm",
        G::Ceiling => "Ceiling height where none is typed",
        G::SleepersMain => "Sleepers in a main bedroom where none are typed",
        G::SleepersOther => "Sleepers in another bedroom where none are typed",
        G::BoostShare => "Boost as a share of normal, where the rule names no boost",
        G::AshraeCap => "Largest infiltration credit as a share of the total rate",
        G::AshraeExteriorShare => "Share of the envelope that faces outdoors",
        G::DinSquare => "Factor of the area squared, 2019 equation",
        G::DinLinear => "Factor of the area, 2019 equation",
        G::DinConstant => "Constant of the 2019 equation",
        G::DinMoisture2009 => "Moisture protection as a share of nominal, 2009",
        G::DinMoisture2019 => "Moisture protection as a share of nominal, 2019",
        G::DinReduced => "Reduced level as a share of nominal",
        G::DinIntensive => "Intensive level as a share of nominal",
        G::DinPerson => "Outdoor air for each person",
        G::DinKitchen => "Extract of a kitchen",
        G::DinBathroom => "Extract of a bathroom",
        G::DinWc => "Extract of a WC",
        G::DinUtility => "Extract of a utility room or store",
        G::WeightLiving => "Supply weight of a living room",
        G::WeightBedroom => "Supply weight of a bedroom",
        G::WeightOther => "Supply weight of other rooms that people stay in",
        G::CanadaLow => "Continuous low speed as a share of the capacity",
        G::CanadaKitchen => "Kitchen exhaust on demand",
        G::CanadaBathroom => "Bathroom exhaust on demand",
        G::CanadaKitchenSteady => "Kitchen exhaust all day",
        G::CanadaBathroomSteady => "Bathroom exhaust all day",
        G::Bore63 => "Bore of a tube of 63 mm outside",
        G::Bore75 => "Bore of a tube of 75 mm outside",
        G::Bore90 => "Bore of a tube of 90 mm outside",
        G::SpeedNormal => "Largest tube speed at normal",
        G::SpeedBedroom => "Largest tube speed to a bedroom at normal",
        G::SpeedBoost => "Largest tube speed at boost",
        G::CountSlack => "How far past its limit a tube may be before another is added",
        G::KitchenTubes => "Fewest tubes from a kitchen",
        G::TubesMany => "Most tubes to one room before another tube size is wiser",
        G::SparePorts => "Spare ports on each manifold",
        G::CutEnd => "Length added at each end of a cut tube",
        G::CutWaste => "Waste as a share of the cut length",
        G::TransferPressure => "Pressure across a closed door",
        G::TransferDischarge => "Discharge coefficient of a gap under a door",
        G::TransferDensity => "Density of air, in kg/m³",
        G::DoorWidth => "Width of an inner door",
        G::UndercutTall => "Tallest gap under a door that is usually accepted",
        G::SleeperCo2 => "CO2 given off by a sleeper",
        G::OutdoorCo2 => "CO2 outdoors",
        G::NightHours => "Length of a night",
        G::Co2Noticeable => "CO2 above which air is noticeably stale",
        G::Co2Unacceptable => "CO2 above which air is called unacceptable",
        G::BendRadius => "Smallest bend radius by hand, in outside diameters",
        G::BendsMost => "Most right-angle bends of a run",
        G::SupportSpacing => "Largest distance between supports",
        G::FlexibleLength => "Longest piece of flexible duct, at the unit or a valve only",
        G::ManifoldClear => "Clear space on the throttle side of a manifold",
        G::Hatch => "Side of a permanent hatch",
        G::SilencerLength => "Length of a silencer",
        G::CoreInsulation => "Insulation around an outside duct in the wall",
        G::CoreClearance => "Added to a wall core for sealing",
        G::ColdDuct => "Bore of the outside ducts",
        G::CoreFall => "Fall of the exhaust duct outward, as a share of its length",
        G::DrainFall => "Smallest fall of the condensate pipe, as a share of its length",
        G::DrainSuction => "Suction at the drain pan with dirty filters",
        G::TrapExtra => "Added to the drop of the trap",
        G::LeakPressure => "Pressure of the leak test",
        G::LeakShare => "Largest leak as a share of the design flow",
        G::SettleTime => "Time to wait before a reading",
        G::WindMost => "Strongest wind for readings, on the Beaufort scale",
        G::FilterCheck => "Months between filter checks",
        G::IntakeClear => "Distance of the intake from bins, parking, sewer vents and chimneys",
        G::FaceSpeed => "Largest air speed in the face of an outside grille",
        G::HobDistance => "Smallest distance of a kitchen terminal from the hob",
        G::ExtractBelowCeiling => "Furthest an extract terminal may hang below the ceiling",
        G::BedHead => "Smallest distance of a supply valve from a bed head",
        G::TerminalTolerance => "Largest difference of a terminal from its design, as a share",
        G::TotalTolerance => "Largest difference of supply and extract totals, as a share",
        G::SilencerLining => "Outside diameter of a silencer beyond its main",
        G::ServiceSpace => "Clear space in front of the unit for service",
        G::OutdoorDuct => "Longest duct from the unit to outdoors",
        G::UnitReserve => "Boost as the largest share of the unit's maximum",
        G::MainSpeed => "Largest speed in the mains at normal",
        G::FlueGermany => "Largest depressurisation beside an open flue, Germany",
        G::FlueCanada => "Largest depressurisation beside an open flue, Canada",
        G::FlueKitchen => "Largest kitchen extract beside an open gas flue, England",
        G::HoleClearance => "Added to the tube's outside diameter for its hole",
        G::HoleThird => "Largest hole as a share of a joist's depth, United States",
        G::HoleQuarter => "Largest hole as a share of a joist's depth, elsewhere",
        G::SupportSpacingFeet => "Largest distance between supports, United States",
        G::IntakeClearFeet => "Distance of the intake from vents, chimneys, streets and parking, United States",
        G::OwnExhaustFeet => "Distance of the intake from the house's own exhaust, United States",
        G::OwnExhaustGermany => "Distance of the intake from the house's own exhaust, Germany",
        G::OwnExhaustCanada => "Distance of the intake from the house's own exhaust, Canada",
        G::OwnExhaustF326 => "Distance of the intake from the house's own exhaust, F326 practice",
        G::IntakeGroundCanada => "Height of the intake above ground or snow, Canada",
        G::IntakeSourceCanada => "Distance of the intake from flue, dryer, meter and drive, Canada",
        G::Imbalance => "Imbalance that a sound unit may have, as a share of boost",
        G::NoticeDays => "Days until building control is told the measured flows, England",
        G::WashingtonQuality => {
            "Factor of the kind of system: 1 balanced and distributed, 1.25 one of both, 1.5 neither"
        }
        G::EnCategory => "Category, 1 to 4",
        G::PassivePerson => "Outdoor air for each person, passive house",
        G::PassiveKitchen => "Extract of a kitchen at the maximum level",
        G::PassiveBathroom => "Extract of a bathroom at the maximum level",
        G::PassiveOther => "Extract of a WC, utility room or store at the maximum level",
        G::PassiveStandard => "Standard level as a share of the maximum",
        G::PassiveBasic => "Basic level as a share of the maximum",
        G::PassiveChanges => "Least air change at the standard level",
        G::NbcLeast1 => "Least capacity with 1 bedroom",
        G::NbcMost1 => "Most capacity with 1 bedroom",
        G::NbcLeast2 => "Least capacity with 2 bedrooms",
        G::NbcMost2 => "Most capacity with 2 bedrooms",
        G::NbcLeast3 => "Least capacity with 3 bedrooms",
        G::NbcMost3 => "Most capacity with 3 bedrooms",
        G::NbcLeast4 => "Least capacity with 4 bedrooms",
        G::NbcMost4 => "Most capacity with 4 bedrooms",
        G::NbcLeast5 => "Least capacity with 5 bedrooms",
        G::NbcMost5 => "Most capacity with 5 bedrooms",
        G::DoorEngland => "Free area at an inner door, England",
        G::DoorEnglandBare => "Gap above a bare floor while its finish is missing, England",
        G::DoorGermany => "Free area at an inner door for each m³/h, in cm², Germany",
        G::DoorPressureGermany => "Largest pressure across a closed inner door, Germany",
        G::DoorPressureAmerica => "Largest pressure across a closed inner door, United States",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{prose, standing};
    use std::collections::BTreeSet;

    #[test]
    fn every_value_has_a_name_of_its_own() {
        let names: BTreeSet<_> = G::all().map(name).collect();
        assert_eq!(names.len(), G::all().count());
        names.iter().for_each(|name| prose::is_label(name));
    }

    #[test]
    fn every_source_can_be_cited() {
        for id in G::all() {
            let source = id.given().source;
            let cited = standing::cite(source);
            prose::is_clean(&cited);
            assert_eq!(cited.contains(standing::LEAST_SURE), source.doubtful, "{cited}");
        }
    }
}
