//! Cautions, where somebody can be hurt. The local code and licensed trades have the last word.

use airtally::steps::StepRule as R;

/// The caution of a step; `None` where there is no particular danger.
pub const fn caution(rule: R) -> Option<&'static str> {
    match before_building(rule) {
        Some(text) => Some(text),
        None => while_running(rule),
    }
}

const fn before_building(rule: R) -> Option<&'static str> {
    Some(match rule {
        R::AskOpenFlues => {
            "Stop if one takes its air from the house: more extract than supply can draw poisonous gas indoors. A \
             certified gas or heating engineer or the chimney sweep decides."
        }
        R::LookForSuspectBoard => {
            "Stop if in doubt: it may hold asbestos. Do not drill, break or sweep it. A survey comes first, licensed \
             people remove it. Old paint may hold lead."
        }
        R::CheckStructure => {
            "Trusses, I-joists, LVL, glued timber and steel are cut only as their maker or designer allows. In doubt, \
             ask a structural engineer; the local code decides."
        }
        R::ListCrossings => {
            "A duct through a fire line, a neighbour's wall or a protected stair needs a tested system. Building \
             control decides."
        }
        R::KeepGarageClosed => {
            "Exhaust gas kills. No opening into a garage or a room with an open flue; what crosses its walls follows \
             the local code."
        }
        R::PlaceUnit => "Not in a room with an open flue. In a roof: a floor to stand on, light, and heat in summer.",
        R::PlaceIntake => {
            "The flue's own clearances win over these. Work at height: scaffold or secured ladder. A wall on the \
             street may need permission."
        }
        R::DrillCores => {
            "Look for cables, pipes and gas first, from both sides. Outside: work at height, and nobody below the core."
        }
        R::DrillTubeHoles => {
            "Only what the structure check allows. Look for cables, pipes and gas first; goggles, and a mask for board \
             dust."
        }
        R::PullTubes => "In a roof step on joists only; mind nails, heat and tight places, and do not work alone.",
        R::HangUnit => "Heavy: two people or a lift. Plasterboard alone does not hold it.",
        R::ConnectMains => {
            "No cooker hood and no dryer into this system, ever. Keep a duct off every flue and its clearances."
        }
        R::LayCables => "Cables of the mains are work for a licensed electrician.",
        R::LeakTest => "Raise the pressure slowly. Caps can fly off: stand aside.",
        R::InsulateColdDucts => {
            "A gap sweats: water rots timber and grows mould inside the wall. Where the duct crosses a fire line, only \
             what the tested system allows."
        }
        R::FitTrap => "Never solidly into a sewer: an air gap keeps its gas out. Standing water grows germs.",
        R::FallDrain => "A pipe that freezes floods the unit: keep it in the warm, or insulate and heat it as allowed.",
        R::CloseUp => "Fire lines first: they must be closed, and seen by whoever inspects them, before the board.",
        _ => return None,
    })
}

const fn while_running(rule: R) -> Option<&'static str> {
    Some(match rule {
        R::DustGone => "Sweep with a vacuum cleaner and a mask: fine dust of stone and fibre harms the lungs.",
        R::FitFilters => "Isolate and lock off before you open the unit; fans run on for a while.",
        R::OpenValves => "A step ladder on level floor, not a chair.",
        R::CutUndercut => {
            "Never cut a fire door or smoke door, or one to a garage: ask building control for another way."
        }
        R::ShutHouse => "Do not read while a fire burns in the house.",
        R::CalmWeather => {
            "Frost protection that stops the supply fan draws the house into underpressure: never beside an open flue."
        }
        R::FitCoAlarms => "An alarm warns and mends nothing. Where it must hang, the local code says.",
        R::WireUnit => {
            "Deadly. Licensed electrician only; isolate, lock off, prove dead. Residual-current device as the code says."
        }
        R::StartUnit => "Covers closed before power. Hands off fans: they start by themselves.",
        R::CompareTotals => {
            "With any open flue, and where radon comes from the ground, extract must never exceed supply at any level."
        }
        R::TestSpillage => {
            "A certified gas or heating engineer or the chimney sweep tests. Until passed, do not use appliance and \
             unit together."
        }
        R::HandOverPapers => {
            "Say it aloud: in a fire, a gas alarm or a chemical accident outside switch the unit off, here. Codes differ \
             by place; the authority decides."
        }
        _ => return None,
    })
}
