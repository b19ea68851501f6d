//! Words of the page of the air.

use crate::issue::missing;
use crate::{format, formula, label};
use airtally::formula::Formula;
use airtally::report::{Governs, Unknown};
use airtally::shares::{Asks, Judged, Wording};
use airtally::transfer::DoorRule;

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
pub const CODES_NOTE: &str = "What each asks for in all, before rounding to whole steps, and what decides at normal. Press a number for its working. All in ";
/// Over the last column.
pub const CODES_WHY: &str = "Why";
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

/// A wording of balanced and whether it holds.
pub fn balanced(judged: &Judged) -> String {
    let wording = match judged.wording {
        Wording::OfSupply => "2021: extract within 10 % of supply",
        Wording::OfAverage => "2021 and 2024: both within 10 % of their average",
    };
    [if judged.holds { "Balanced, " } else { "Not balanced, " }, wording].concat()
}

/// Of two figures for the whole dwelling the one that is taken, and by how much the other is less.
pub fn larger(taken: Formula, left: Formula, by: &str) -> String {
    let [taken, left] = [taken, left].map(formula::title);
    match taken.is_empty() {
        true => String::new(),
        false => [taken, " is the larger; ", &super::lower(left), ": ", by, " less."].concat(),
    }
}

/// What comes second.
pub fn margin(asks: &str, by: &str) -> String {
    ["Next below it: ", &super::lower(asks), ", ", by, " less."].concat()
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

/// What the rule set has at a door, after the number.
pub const fn door_rule(rule: DoorRule) -> [&'static str; 2] {
    match rule {
        DoorRule::Area(..) => [" free at every door by rule", " above a bare floor while its finish is missing"],
        DoorRule::ForFlow(..) => [" cm² for each m³/h by rule", " across the door at most"],
        DoorRule::Pressure(_) => [" across the door at most by rule", ""],
    }
}

/// Where it has nothing.
pub const NO_DOOR_RULE: &str = "The rule set names no opening of its own.";

/// Both verdicts on the rule set's own opening: `Rule: enough · 1 Pa: needs 14 mm`.
pub fn verdicts(enough: bool, pressure: &str, gentle: bool, gap: &str) -> String {
    let rule = if enough { "enough" } else { "too little" };
    let (needs, gap) = if gentle { ("enough", "") } else { ("needs ", gap) };
    ["Rule: ", rule, " · ", pressure, ": ", needs, gap].concat()
}

/// After the gap by rule.
pub const GAP_BY_RULE: &str = " by rule";
/// After the pressure that it leaves.
pub const PRESSURE_THEN: &str = " then";

/// Read out before a number.
pub fn rule_gap_under(room: &str) -> String {
    ["Gap by rule under the door of ", room].concat()
}

/// Read out before a number.
pub fn pressure_at(room: &str) -> String {
    ["Pressure across the door of ", room, " with that gap"].concat()
}

/// Read out before a number.
pub fn gap_under(room: &str) -> String {
    ["Gap under the door of ", room].concat()
}

/// Opens the other rule sets.
pub fn other_codes(count: usize) -> String {
    ["The other ", &count.to_string(), " side by side"].concat()
}

/// Read out before a total.
pub fn level_under(level: &str, rules: &str) -> String {
    [level, " under ", rules].concat()
}

/// A total against that of the chosen rule set.
pub fn difference(more: bool, by: &str) -> String {
    [if more { "+" } else { "−" }, by].concat()
}

/// No difference.
pub const NO_DIFFERENCE: &str = "the same";

/// What decides a total, by the equation that made it.
pub fn decides(governs: &Governs) -> String {
    let title = formula::title(governs.line.formula);
    match (governs.by, governs.share_of) {
        (Asks::WholeDwelling, Some(whole)) => ["A share of: ", &super::lower(formula::title(whole))].concat(),
        (Asks::WholeDwelling, None) => title.to_owned(),
        (by, _) => label::asks(by).to_owned(),
    }
}

/// What a total rests on and the house does not say.
pub fn not_known(unknown: Unknown) -> String {
    match unknown {
        Unknown::Areas => "A floor area is missing, so it can be too low.".to_owned(),
        Unknown::People(sleepers) => {
            ["People are not typed: ", &super::sleepers(&format::number(sleepers, 1)), " count."].concat()
        }
        Unknown::Credit(condition) => ["No credit for leaks: ", missing(condition), "."].concat(),
    }
}

/// Chooses the rule set that is looked at.
pub const CHOOSE_RULES: &str = "Choose this rule set";

/// While another rule set is looked at.
pub fn still_under(rules: &str) -> String {
    ["Only looked at. Your house is under ", rules, "."].concat()
}

/// After it was chosen.
pub fn now_under(rules: &str) -> String {
    ["Now under ", rules, "."].concat()
}
