//! Words of the page of the air.

/// The question.
pub const ASK_AIR: &str = "How much air does this house need?";
/// In a house without rooms.
pub const NO_ROOMS_YET: &str = "There is nothing to work out from yet: add rooms first, some that take supply air and some that \
    are drawn from.";
/// Back to the rooms.
pub const TO_ROOMS: &str = "To the rooms";
/// The choice of level.
pub const LEVEL: &str = "Level";
/// Read out before the answer.
pub const REQUIRED: &str = "Required";
/// Supply as set.
pub const SET_SUPPLY: &str = "Supply, set";
/// Extract as set.
pub const SET_EXTRACT: &str = "Extract, set";
/// What can be set.
pub const STEP: &str = "In steps of";
/// Over the bedrooms.
pub const NIGHTS: &str = "Air by morning";
/// No bedroom that can be worked out.
pub const NO_NIGHTS: &str = "Shown for bedrooms with sleepers, a floor area and supply air.";
/// Beside a flow.
pub const PER_SLEEPER: &str = " a sleeper";
/// Beside an air change.
pub const AIR_CHANGES: &str = " air changes";
/// Over the doors.
pub const DOORS: &str = "Under the doors";
/// Over other readings.
pub const READINGS: &str = "Also legal under this rule set";
/// Below it.
pub const READINGS_NOTE: &str = "The rule set can be read in more than one way. These give the whole dwelling:";
/// Over the rule sets.
pub const CODES: &str = "The same house under every rule set";
/// Below it.
pub const CODES_NOTE: &str =
    "What each asks for in all, before rounding to whole steps. Press one to choose it. All in ";
/// Beside the chosen one.
pub const YOURS: &str = "yours";
/// On to the next stage.
pub const NEXT_TUBES: &str = "Next: how many tubes";

/// To what is missing.
pub const MEND_FIRST: &str = "Go to the first";

/// Beside an answer that rests on something missing.
pub fn rests_on(missing: usize) -> String {
    let what = if missing == 1 { " thing is" } else { " things are" };
    ["Not yet right: ", &missing.to_string(), what, " missing or cannot be read."].concat()
}

/// What governs.
pub fn governs(asks: &str) -> String {
    [asks, " decides."].concat()
}

/// What comes second.
pub fn margin(asks: &str, by: &str) -> String {
    ["Next below it: ", &lower(asks), ", ", by, " less."].concat()
}

/// A side without rooms.
pub const fn no_side(supply: bool) -> &'static str {
    if supply {
        "Nothing yet: it takes a room that is supplied and a room that is drawn from."
    } else {
        "Nothing yet: it takes a room that is drawn from and a room that is supplied."
    }
}

/// The sum of a side.
pub const fn in_all(supply: bool) -> &'static str {
    if supply { "Supply in all" } else { "Extract in all" }
}

/// Read out before a room's flow.
pub fn air_of(supply: bool, room: &str) -> String {
    [if supply { "Supply of " } else { "Extract of " }, room].concat()
}

/// A room's minimum.
pub fn at_least(flow: &str) -> String {
    ["at least ", flow].concat()
}

/// Over the bedrooms' ledger.
pub fn nights_note(hours: &str, limit: &str) -> String {
    ["CO₂ after ", hours, " with the door shut, at the normal level. Dashed: ", limit, "."].concat()
}

/// Read out before a number.
pub fn co2_in(room: &str) -> String {
    ["CO₂ by morning in ", room].concat()
}

/// Read out before a number.
pub fn per_sleeper_in(room: &str) -> String {
    ["Air for each sleeper in ", room].concat()
}

/// Read out before a number.
pub fn changes_in(room: &str) -> String {
    ["Air changes an hour in ", room].concat()
}

/// Over the doors' ledger.
pub fn doors_note(width: &str, pressure: &str) -> String {
    ["Gap under each shut door of ", width, ", so that the air of boost can cross at ", pressure, "."].concat()
}

/// Which way air passes a door, and the free area it takes.
pub fn through_door(out: bool, flow: &str, area: &str) -> String {
    [flow, if out { " out" } else { " in" }, " · ", area, " free"].concat()
}

/// Read out before a number.
pub fn gap_under(room: &str) -> String {
    ["Gap under the door of ", room].concat()
}

/// A sentence's start inside another sentence.
fn lower(words: &str) -> String {
    let mut words = words.to_owned();
    if let Some(first) = words.get_mut(..1) {
        first.make_ascii_lowercase();
    }
    words
}
