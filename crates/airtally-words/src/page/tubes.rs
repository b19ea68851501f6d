//! Words of the page of the tubes.

use super::counted;

/// The question.
pub const ASK_TUBES: &str = "How many tubes, and where to?";
/// Ports of a manifold.
pub const SUPPLY_PORTS: &str = "Supply ports";
/// Ports of a manifold.
pub const EXTRACT_PORTS: &str = "Extract ports";
/// Below both.
pub const PORTS_NOTE: &str = "Spare ports are counted in; cap them.";
/// Over the choice of tube.
pub const TUBE: &str = "Tube";
/// The choice of tube.
pub const TUBE_USED: &str = "Tube used";
/// Beside a length.
pub const CUT_EACH: &str = " to cut for each tube";
/// A run that was not measured.
pub const NO_LENGTH: &str = "Length not measured yet: type its legs under the room.";
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

/// Below a room: the mark on its tubes and why there are so many.
pub fn run_note(mark: &str, why: &str) -> String {
    ["Mark ", mark, " · ", why].concat()
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
