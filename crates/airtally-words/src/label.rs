//! Short names: rooms, levels, rule sets, fields, choices.

mod choice;
mod field;

#[cfg(test)]
mod tests;

pub use choice::{building, credit, display, failing, fans, fuel, joist, kitchen_draw, manifolds, outlets, print};
pub use choice::{not_known, rule_default, rules, stud, table, tube, wet_rooms};
pub use field::{Label, curve_field, field, house_field, room_field};

use airtally::co2::Verdict;
use airtally::house::{Role, RoomKind};
use airtally::issue::Severity;
use airtally::rules::{Air, Level};
use airtally::runs::Why;
use airtally::shares::Asks;

/// A kind of room.
pub const fn kind(kind: RoomKind) -> &'static str {
    match kind {
        RoomKind::Living => "Living room",
        RoomKind::Dining => "Dining room",
        RoomKind::Kitchen => "Kitchen",
        RoomKind::LivingKitchen => "Kitchen and living room",
        RoomKind::MainBedroom => "Main bedroom",
        RoomKind::Bedroom => "Bedroom",
        RoomKind::Study => "Study",
        RoomKind::Bathroom => "Bathroom",
        RoomKind::Wc => "WC",
        RoomKind::Utility => "Utility room",
        RoomKind::Store => "Store",
        RoomKind::Hall => "Hall",
        RoomKind::Basement => "Basement",
        RoomKind::Garage => "Garage",
    }
}

/// What else a kind of room covers.
pub const fn kind_hint(kind: RoomKind) -> &'static str {
    match kind {
        RoomKind::Living => "Also a sitting or family room",
        RoomKind::Dining => "A dining room of its own",
        RoomKind::Kitchen => "Also with a dining table",
        RoomKind::LivingKitchen => "One space: air comes in at one end and leaves at the other",
        RoomKind::MainBedroom => "Two people, unless you say otherwise",
        RoomKind::Bedroom => "One person, unless you say otherwise",
        RoomKind::Study => "Also a guest, play or hobby room",
        RoomKind::Bathroom => "Also a shower room, with or without WC",
        RoomKind::Wc => "A WC and no bath or shower",
        RoomKind::Utility => "Also a laundry",
        RoomKind::Store => "A store or pantry that is drawn from",
        RoomKind::Hall => "Also a landing, stair or corridor: air passes through",
        RoomKind::Basement => "An unfinished basement",
        RoomKind::Garage => "Also a room with an open-flued appliance: never connected",
    }
}

/// What the air does in a room.
pub const fn role(role: Role) -> &'static str {
    match role {
        Role::Supply => "outdoor air comes in",
        Role::Extract => "air is drawn out",
        Role::Both => "air comes in and is drawn out",
        Role::Transfer => "air passes through",
        Role::Never => "never connected",
    }
}

/// A level of operation.
pub const fn level(level: Level) -> &'static str {
    match level {
        Level::Away => "Away",
        Level::Normal => "Normal",
        Level::Boost => "Boost",
    }
}

/// When a level is used.
pub const fn level_hint(level: Level) -> &'static str {
    match level {
        Level::Away => "Nobody is at home",
        Level::Normal => "Every day",
        Level::Boost => "Cooking, bathing, guests",
    }
}

/// Which way the air goes.
pub const fn air(air: Air) -> &'static str {
    match air {
        Air::Supply => "Supply",
        Air::Extract => "Extract",
    }
}

/// The letter that goes with the colour of the air, also on tubes.
pub const fn air_letter(air: Air) -> &'static str {
    match air {
        Air::Supply => "S",
        Air::Extract => "E",
    }
}

/// A storey, counted from the ground floor.
pub fn storey(storey: i8) -> String {
    match storey {
        0 => "Ground floor".to_owned(),
        1 => "One floor up".to_owned(),
        -1 => "Basement".to_owned(),
        2.. => format!("{storey} floors up"),
        ..=-2 => format!("{} floors down", -i16::from(storey)),
    }
}

/// What decides the number of tubes.
pub const fn why(why: Why) -> &'static str {
    match why {
        Why::OneIsEnough => "one tube stays below both speed limits",
        Why::SpeedAtNormal => "the speed at normal decides",
        Why::SpeedAtBoost => "the speed at boost decides",
        Why::Kitchen => "the fewest tubes of a kitchen decide",
        Why::Least => "the fewest tubes of every room decide",
    }
}

/// What asks for a total.
pub const fn asks(asks: Asks) -> &'static str {
    match asks {
        Asks::WholeDwelling => "The whole dwelling",
        Asks::SupplyRooms => "The sum of the supply rooms",
        Asks::ExtractRooms => "The sum of the extract rooms",
        Asks::ShareOfNormal => "A share of normal",
        Asks::LowerLevel => "The level below",
    }
}

/// How stale a bedroom is by morning.
pub const fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Fresh => "fresh by morning",
        Verdict::Noticeable => "noticeably stale by morning",
        Verdict::Unacceptable => "too stale by morning",
    }
}

/// How much an issue matters.
pub const fn severity(severity: Severity) -> &'static str {
    match severity {
        Severity::Stops => "Mend this first",
        Severity::OutsideRule => "Outside the rule",
        Severity::Unusual => "Unusual",
        Severity::Note => "Worth knowing",
    }
}
