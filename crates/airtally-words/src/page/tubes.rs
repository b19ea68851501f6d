//! Words of the page of the tubes.

use super::counted;
use crate::label;
use airtally::draught::Felt;
use airtally::rules::{Air, Level};

/// The question.
pub const ASK_TUBES: &str = "How many tubes, and where to?";
/// Ports of a manifold.
pub const SUPPLY_PORTS: &str = "Supply ports";
/// Ports of a manifold.
pub const EXTRACT_PORTS: &str = "Extract ports";
/// Below both.
pub const PORTS_NOTE: &str = "Spare ports are counted in; cap them.";
/// Before what decides the number of tubes.
pub const WHY: &str = "Number of tubes";
/// Before a length.
pub const CUT: &str = "Cut";
/// Beside it.
pub const CUT_EACH: &str = "for each tube";
/// The run with the most resistance.
pub const INDEX_RUN: &str = "most of its side: leave it open";
/// Over the drawing of everything.
pub const RISER: &str = "The riser";
/// What it shows, while it is folded.
pub const RISER_NOTE: &str = "Unit, mains, manifolds and every tube in one drawing.";
/// Read out in its place.
pub const RISER_DESCRIBED: &str = "Drawing: the unit at the foot, a manifold for each air above it, and every tube to its room, storey by storey. The lists say the same.";
/// Read out in place of a ladder.
pub const LADDER_DESCRIBED: &str =
    "Drawing: how the pressure of this side is used up, from the grille outdoors to the run that takes most.";
/// Before how far the valve blows.
pub const BLOWS: &str = "A nozzle blows";
/// Between the nearest and the farthest.
pub const TO: &str = "to";
/// Below the runs of a side.
pub const HEARD_NOTE: &str = "What is heard is an estimate of ±5 dB without the valve’s own noise; how far it blows is for a plain nozzle on the wall. The valve’s data tell both.";
/// Before what a run takes.
pub const RUN_TAKES: &str = "Takes";
/// Before what must be added.
pub const THROTTLE: &str = "Throttle";
/// Before the hole that adds it.
pub const HOLE: &str = "or a hole of";
/// Before the setting of its valve.
pub const SETTING: &str = "valve at";
/// Before the air of a run as it was pulled.
pub const AS_PULLED: &str = "As pulled";
/// Over the pressures of the unit.
pub const DUTY: &str = "The unit must give";
/// Below them.
pub const DUTY_NOTE: &str = "Outside itself, with clean filters: index run, main, silencer, outside duct and grille.";
/// What it costs to move the air.
pub const FAN_POWER: &str = "Specific fan power";
/// Between the ends of a band.
pub const LIKELY: &str = "likely";
/// On to the next stage.
pub const NEXT_STEPS: &str = "Next: the steps";

/// `3 tubes`.
pub fn tubes(count: u32) -> String {
    counted(count as usize, "tube", "tubes")
}

/// The word alone.
pub const fn tubes_word(count: u32) -> &'static str {
    if count == 1 { "tube" } else { "tubes" }
}

/// Below the answer.
pub fn tube_note(bore: &str) -> String {
    [bore, " inside. Each tube is one run from the manifold to its room, without a joint."].concat()
}

/// Below a room: the mark on its tubes, their length, and what the run takes.
pub fn run_glance(mark: &str, length: &str, takes: Option<&str>, index: bool) -> String {
    let takes = takes.map_or(String::new(), |takes| [" · ", takes].concat());
    let index = if index { ", most of its side" } else { "" };
    ["Mark ", mark, " · ", length, &takes, index].concat()
}

/// To the list of parts.
pub const TO_PARTS: &str = "To the parts";

/// What parts and work come to so far.
pub fn price_so_far(amount: &str) -> String {
    ["Parts and work so far: ", amount, ". "].concat()
}

/// Why a room has so many tubes.
pub fn why_tubes(why: &str) -> String {
    let mut words = why.to_owned();
    if let Some(first) = words.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    words.push('.');
    words
}

/// Read out before a number.
pub fn tubes_to(room: &str, supply: bool) -> String {
    [if supply { "Supply tubes of " } else { "Extract tubes of " }, room].concat()
}

/// Read out before a number.
pub fn speed_at(level: &str, room: &str) -> String {
    ["Speed at ", level, " in the tubes of ", room].concat()
}

/// A limit beside a speed.
pub fn limit(most: &str) -> String {
    ["limit ", most].concat()
}

/// Read out before a number.
pub fn cut_for(room: &str) -> String {
    ["Length to cut for each tube of ", room].concat()
}

/// A side at a level: `Supply at normal, 120 m³/h`.
pub fn duty_at(air: Air, level: Level, flow: &str) -> String {
    [label::air(air), " at ", &super::lower(label::level(level)), ", ", flow].concat()
}

/// Read out before a number.
pub fn pressure_of(room: &str) -> String {
    ["Pressure of the run of ", room].concat()
}

/// Read out before a number.
pub fn throttle_of(room: &str) -> String {
    ["Pressure to throttle at ", room].concat()
}

/// Read out before a number.
pub fn hole_of(room: &str) -> String {
    ["Hole of a restrictor in each tube of ", room].concat()
}

/// Read out before a number.
pub fn setting_of(room: &str) -> String {
    ["Setting of the valve of ", room].concat()
}

/// Read out before a number.
pub fn built_of(room: &str) -> String {
    ["Air as it was pulled, ", room].concat()
}

/// Read out before a level of sound.
pub fn sound_at(level: &str, room: &str) -> String {
    ["Heard at ", &super::lower(level), " in ", room].concat()
}

/// A noise criterion: `NC 19`.
pub fn nc(number: f64) -> String {
    ["NC ", &crate::format::number(number, 0)].concat()
}

/// Over a ladder.
pub const fn ladder_of(air: Air) -> &'static str {
    match air {
        Air::Supply => "Where the pressure of supply goes",
        Air::Extract => "Where the pressure of extract goes",
    }
}

/// Read out before how far a valve blows.
pub fn throw_of(room: &str) -> String {
    ["The valve blows in ", room].concat()
}

/// Whether the air of a valve is felt where it comes down.
pub const fn felt(felt: Felt) -> &'static str {
    match felt {
        Felt::No => "not felt where it comes down",
        Felt::Perhaps => "may be felt where it comes down",
        Felt::Yes => "would be felt where it comes down: a ceiling valve or a wider one",
    }
}

/// A pressure's band, and why it is wide: `13 to 21 Pa`.
pub fn likely(low: &str, high: &str, jumps: bool) -> String {
    let jumps = if jumps { ": its air is so slow that it may creep or not" } else { "" };
    [low, " to ", high, jumps].concat()
}

/// Before what is heard of a voice.
pub fn voice(room: &str) -> String {
    ["A voice in ", room].concat()
}

/// Before a speed.
pub const fn speed_name(level: Level) -> &'static str {
    match level {
        Level::Boost => "Speed at boost",
        Level::Normal | Level::Away => "Speed",
    }
}

/// Before what the room hears.
pub const fn heard_name(level: Level) -> &'static str {
    match level {
        Level::Boost => "At boost",
        Level::Normal | Level::Away => "Heard",
    }
}

/// What a length does to its side and to the price.
pub fn side_follows(room: &str, takes: &str, price: Option<&str>) -> String {
    let price = price.map_or(String::new(), price_so_far);
    [room, " takes most of this side: ", takes, ". ", &price].concat()
}

/// Read out before a level of sound.
pub fn voice_in(room: &str) -> String {
    ["A voice in another room, heard in ", room].concat()
}

/// Both fans together, with its class and limit.
pub fn fan_power(watt_hours: &str, class: Option<u8>, limit: Option<&str>) -> String {
    let class = class.map_or("in no class".to_owned(), |class| ["class ", &class.to_string()].concat());
    let limit = limit.map_or(String::new(), |limit| ["; the rules accept ", limit, " W/(L/s)"].concat());
    ["W/(L/s) for both fans, ", watt_hours, " Wh/m³, the hungrier fan ", &class, &limit, "."].concat()
}
