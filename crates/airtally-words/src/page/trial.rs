//! Words of the unit and of what comes when something is not as planned.

use crate::format;
use airtally::delivery::Mishap;
use airtally::quantity::{Flow, Unit};
use airtally::rules::Air;

/// Over the unit.
pub const UNIT: &str = "Your unit";
/// Below it while it is closed.
pub const UNIT_NOTE: &str = "Its fan curve, and whether it holds flow or speed.";
/// The choice.
pub const FANS: &str = "The unit holds";
/// Read out in place of the curves.
pub const CURVES_DESCRIBED: &str = "Drawing: pressure over flow. The line of the ducts rises, the lines of the fan fall, and they meet at normal and at boost.";
/// While no curve is typed.
pub const CURVE_ASSUMED: &str =
    "No curve is typed: the fan shown is a usual one with the reserve that is asked for. Read yours off its sheet.";
/// Over the trial.
pub const TRIAL: &str = "What if …";
/// Below it while it is closed.
pub const TRIAL_NOTE: &str = "Dirty filters, leaks, a shut door, a kinked tube: the air that really comes.";
/// A tick.
pub const DIRTY_SUPPLY: &str = "Filter of the supply is dirty";
/// A tick.
pub const DIRTY_EXTRACT: &str = "Filter of the extract is dirty";
/// A tick.
pub const LEAKING: &str = "Ducts leak, as tested or as their class allows";
/// A tick.
pub const PULLED_SO: &str = "Tubes lie as they were pulled";
/// The choice of what has happened.
pub const MISHAP: &str = "In one room";
/// Nothing.
pub const NO_MISHAP: &str = "Nothing has happened";
/// The choice of the room.
pub const MISHAP_AT: &str = "Which room";
/// A column.
pub const ROOM: &str = "room";
/// A column.
pub const PLANNED: &str = "planned";
/// A column.
pub const COMES: &str = "comes";
/// A column.
pub const CHANGE: &str = "change";
/// Below it.
pub const TRIAL_HOW: &str =
    "At normal, every valve left as it was set. All runs are solved together: fan, mains, tubes, valves, throttles.";

/// What can happen.
pub const fn mishap(mishap: Mishap) -> &'static str {
    match mishap {
        Mishap::Door => "Door shut, no gap below",
        Mishap::Kinked => "A tube kinked to half bore",
        Mishap::Crushed => "A tube crushed shut",
    }
}

/// Over a side.
pub const fn tried_side(air: Air) -> &'static str {
    match air {
        Air::Supply => "Then supply brings",
        Air::Extract => "Then extract takes",
    }
}

/// Over a drawing of curves.
pub const fn curves_of(air: Air) -> &'static str {
    match air {
        Air::Supply => "Fan and ducts of supply",
        Air::Extract => "Fan and ducts of extract",
    }
}

/// How fast a fan turns: `Turns at 62 % for normal, at 84 % for boost.`
pub fn turns(normal: Option<f64>, boost: Option<f64>, tight: bool) -> String {
    let tight = if tight { " That leaves little reserve at boost." } else { "" };
    let at = |speed: Option<f64>| match speed {
        Some(speed) => ["at ", &format::text(speed * 100.0, Unit::Percent)].concat(),
        None => "is too weak".to_owned(),
    };
    if normal == boost && normal.is_some() {
        return ["Turns ", &at(normal), ".", tight].concat();
    }
    ["Turns ", &at(normal), " for normal, ", &at(boost), " for boost.", tight].concat().replace("Turns is", "Is")
}

/// What the unit does: `118 m³/h through the unit at 92 Pa.`
pub fn unit_runs(flow: &str, pressure: &str, leaks: Option<&str>, weak: bool) -> String {
    let leaks = leaks.map_or(String::new(), |leaks| [", ", leaks, " of it through leaks"].concat());
    let weak = if weak { ". Full speed is not enough" } else { "" };
    [flow, " through the unit at ", pressure, &leaks, weak, "."].concat()
}

/// Which way the rooms are out of balance, and what that does to the house.
pub fn surplus(surplus: Flow, size: &str, pressure: Option<&str>) -> String {
    let words = match surplus.as_m3h() {
        own if own.abs() < EVEN => return "As much comes in as is drawn out.".to_owned(),
        own if own > 0.0 => " more comes in than is drawn out",
        _ => " more is drawn out than comes in",
    };
    let pressure = pressure.map_or(String::new(), |pressure| [": the house at ", pressure].concat());
    [size, words, &pressure, "."].concat()
}

/// `−18 %`.
pub fn change(percent: f64) -> String {
    format::text(percent, Unit::Percent)
}

/// A room that is too far from its plan.
pub const fn too_far(air: Air, less: bool) -> &'static str {
    match (air, less) {
        (Air::Supply, true) => "Too little comes in.",
        (Air::Supply, false) => "More comes in than a terminal may bring.",
        (Air::Extract, true) => "Too little is drawn out.",
        (Air::Extract, false) => "More is drawn out than a terminal may take.",
    }
}

/// m³/h: less is no difference.
const EVEN: f64 = 0.05;
