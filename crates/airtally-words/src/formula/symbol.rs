//! What a symbol means, in one equation and in general.

use airtally::formula::Formula as F;

/// What a symbol means in one equation: the same letter is an area here and a number of tubes there.
///
/// ```
/// use airtally::formula::Formula;
/// use airtally_words::formula::meaning;
/// assert_eq!(meaning(Formula::Undercut, "b"), Some("width of the door"));
/// assert_eq!(meaning(Formula::AshraeTotal, "b"), Some("rate for each person"));
/// ```
#[allow(clippy::too_many_lines, reason = "one line for each symbol")]
pub fn meaning(formula: F, symbol: &str) -> Option<&'static str> {
    let own = match (formula, symbol) {
        (F::KitchenAirChanges, "n") => "air changes an hour",
        (F::KitchenAirChanges | F::Co2Night | F::AirChange, "V") => "volume of the room",
        (F::TubeSpeed, "n") => "tubes",
        (F::ConstantAndPeople, "c") => "rate whatever the number of people",
        (F::Larger, "q_1") => "the first of the two",
        (F::Larger, "q_2") => "the second of the two",
        (F::AreaRate, "category") => "category of the standard",
        (F::SharedAreas, "q_max") => "rate of the largest living area",
        (F::SharedAreas, "s") => "share of the sum that is enough",
        (F::SharedAreas, "Σq") => "rates of all living areas together",
        (F::RoomsTable, "n") => "main rooms: those that people live in",
        (F::BedroomsTable, "q_min") => "least capacity",
        (F::BedroomsTable, "q_max") => "most capacity",
        (F::FloorVolume, "h") => "height that counts, m",
        (F::PassiveMaximum, "n") => "least air change",
        (F::PassiveMaximum, "V") => "volume that counts",
        (F::PassiveMaximum, "q") => "the larger of people and wet rooms",
        (F::PassiveMaximum, "f") => "standard level as a share of the maximum",
        (F::LevelShare, "q_max") => "the maximum level",
        (F::WashingtonRate, "least") => "the least rate of any house",
        (F::WashingtonQuality, "C") => "factor of the kind of system",
        (F::WashingtonQuality, "Q_r") => "rate by the equation",
        (F::AshraeInfiltration2013, "NL") => "normalised leakage",
        (F::WholeSteps, "n") => "whole steps of this room",
        (F::WholeSteps, "q") => "share before rounding",
        (F::TubeLimit, "v") => "largest speed in the tube",
        (F::AreaForFlow, "a") => "free area for each m³/h, cm²",
        (F::SumOfRooms, "q") => "least air of one room",
        (F::RoomMinimum, "q") => "least air of this room",
        (F::Undercut | F::TransferArea | F::DoorPressure, "A") => "free area of the opening",
        (F::Undercut, "b") => "width of the door",
        (F::TransferArea | F::AreaForFlow | F::DoorPressure, "q") => "air through the opening",
        (F::TubeSpeed, "q") => "air to the room, all tubes together",
        (F::Co2Night | F::PerSleeper | F::AirChange, "q") => "outdoor air to the room",
        (F::Co2Night | F::PerSleeper, "P") => "sleepers",
        (F::Co2Night, "t") => "length of the night",
        (F::IrcRunTime, "t") => "share of the time the system runs",
        (F::IrcRunTime, "f") => "factor for that running time",
        (F::IrcRunTime | F::IrcCredit, "Q") => "rate before this step",
        (F::LevelShare, "T") => "total of the other level",
        (F::LeakLimit | F::Tolerance, "Q") => "design flow of the whole system",
        (F::NetDraw, "s") => "share of the boost that is not replaced",
        (F::NetDraw, "q_boost") => "total at boost",
        (F::NetDraw, "fans") => "other fans together",
        (F::HousePressure, "Q") => "air drawn out and not replaced",
        (F::HoleLimit, "d") => "depth of the joist",
        (F::HoleLimit, "e") => "wood that must stay at each edge",
        (F::LeakAt, "q") => "what leaked in the test",
        (F::LeakAt | F::LeakInTest, "p") => "pressure of the test",
        (F::LeakInTest, "Q") => "design flow of the whole system",
        (F::WallCore, "d") => "bore of the outside duct",
        (F::WallCore, "t") => "thickness of its insulation",
        (F::WallCore, "c") => "added for sealing",
        (F::GrilleArea, "q") => "total at boost",
        (F::GrilleArea, "v") => "largest speed in the face",
        (F::UnitMaximum, "q_boost") => "total at boost",
        (F::UnitMaximum, "s") => "boost as the largest share of the maximum",
        (F::MainSpeed, "q") => "total at normal",
        (F::MainSpeed | F::SilencerSize, "d") => "bore of the main",
        (F::TubeHole, "c") => "added so that the tube can be pulled",
        (F::JoistDepth, "s") => "largest hole as a share of the depth",
        (F::TrapSeal, "H") => "drop of the trap",
        (F::WholeTotal, "T") => "total that is asked",
        (F::LevelTotal, "W") => "rate of the whole dwelling",
        _ => return pocket(formula, symbol).or_else(|| symbol_meaning(symbol)),
    };
    Some(own)
}

/// In the equations of the pocket.
fn pocket(formula: F, symbol: &str) -> Option<&'static str> {
    Some(match (formula, symbol) {
        (F::DuctSpeed, "q") => "air in the tube or duct",
        (F::DuctSpeed, "d") => "inside width",
        (F::TubePressure, "c") => "what a metre takes at the reference flow",
        (F::TubePressure | F::BoostPressure, "n") => "how the pressure grows with the flow",
        (F::TubesBeside, "v") => "speed in one tube",
        (F::ValveFlow, "k") => "k of the valve: its flow at 1 Pa",
        (F::ValveFlow, "p") => "pressure at the tap",
        (F::MainBore, "v") => "largest speed",
        (F::BoostPressure, "p") => "pressure at normal",
        (F::BoostPressure, "q_normal") => "air at normal",
        (F::BoostPressure, "q_boost") => "air at boost",
        (F::FlowConversion, "f") => "one unit in the other",
        _ => return None,
    })
}

/// What a symbol means where it has one meaning, or its most common one.
pub fn symbol_meaning(symbol: &str) -> Option<&'static str> {
    rate(symbol).or_else(|| share(symbol)).or_else(|| site(symbol))
}

/// Symbols of the rule sets.
fn rate(symbol: &str) -> Option<&'static str> {
    Some(match symbol {
        "A" => "floor area",
        "ΣA" => "floor areas of the rooms together",
        "V" => "volume inside the air barrier",
        "N" => "bedrooms, one at least",
        "P" => "people",
        "P_extra" => "people beyond bedrooms + 1",
        "a" => "rate for each unit of floor area",
        "b" => "rate for each person",
        "c" => "share left by the credit",
        "h" => "ceiling height",
        "n" => "number",
        "a_2" => "factor of the area squared",
        "a_1" => "factor of the area",
        "a_0" => "constant",
        "n_10" => "rooms that count 10 L/s",
        "n_5" => "rooms that count 5 L/s",
        "Q" => "rate of the whole house",
        "Q_tot" => "total rate",
        "Q_50" => "air flow at 50 Pa",
        "Q_inf" => "air through leaks that may count",
        "Q_fan" => "rate of the fans",
        "Q_table" => "rate by bedrooms",
        "Q_area" => "rate by floor area",
        "q_NL" => "nominal air flow",
        "q_P" => "rate for each person",
        "φ" => "1 for a balanced system",
        "A_ext" => "share of the envelope that faces outdoors",
        "ACH_50" => "air changes an hour at 50 Pa",
        "wsf" => "weather and shielding factor",
        "H" => "height of the envelope",
        "H_r" => "reference height",
        "cap" => "largest credit as a share of the total rate",
        _ => return None,
    })
}

/// Symbols of sharing out and of tubes.
fn share(symbol: &str) -> Option<&'static str> {
    Some(match symbol {
        "q" => "air flow",
        "Σq" => "least air of the rooms together",
        "f" => "share of the other level",
        "T" => "total",
        "W" => "rate of the whole dwelling",
        "ΣS" => "supply minimums together",
        "ΣE" => "extract minimums together",
        "f·T" => "share of the normal total",
        "T_lower" => "total of the level below",
        "q_min" => "least air of this room",
        "rest" => "air left after all minimums",
        "w" => "weight of this room",
        "Σw" => "weights of all rooms on this side",
        "step" => "smallest step that can be set",
        "v" => "speed in the tube",
        "d" => "bore of the tube",
        "q_normal" => "air to the room at normal",
        "q_boost" => "air to the room at boost",
        "limit_normal" => "most air for one tube at normal",
        "limit_boost" => "most air for one tube at boost",
        "q_r" => "reference flow",
        "v_max" => "largest speed in the tube",
        "slack" => "how far past its limit a tube may be",
        "least" => "fewest tubes",
        "tubes" => "tubes on this manifold",
        "spare" => "spare ports",
        "L" => "legs of the run together",
        "end" => "length added at each end",
        "waste" => "waste as a share",
        _ => return None,
    })
}

/// Symbols of doors, nights and the work on site.
fn site(symbol: &str) -> Option<&'static str> {
    Some(match symbol {
        "C_d" => "discharge coefficient",
        "Δp" => "pressure across the closed door",
        "ρ" => "density of air, kg/m³",
        "C_o" => "CO2 outdoors",
        "G" => "CO2 given off by one sleeper",
        "t" => "time",
        "p" => "suction at the drain pan",
        "e" => "added to the drop",
        "k" => "smallest radius in outside diameters",
        "OD" => "outside diameter of the tube",
        "s" => "share that is allowed",
        "D" => "diameter of the hole",
        "lining" => "lining on both sides",
        _ => return None,
    })
}
