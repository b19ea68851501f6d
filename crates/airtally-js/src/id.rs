//! Ids of what the house file itself has no name for. They are part of the package's types.

use airtally::house::Role;
use airtally::issue::Severity;
use airtally::rules::Level;
use airtally::runs::Why;
use airtally::shares::Asks;
use airtally::source::Standing;

pub const fn level(level: Level) -> &'static str {
    match level {
        Level::Away => "away",
        Level::Normal => "normal",
        Level::Boost => "boost",
    }
}

pub const fn role(role: Role) -> &'static str {
    match role {
        Role::Supply => "supply",
        Role::Extract => "extract",
        Role::Both => "both",
        Role::Transfer => "transfer",
        Role::Never => "never",
    }
}

pub const fn why(why: Why) -> &'static str {
    match why {
        Why::OneIsEnough => "one-is-enough",
        Why::SpeedAtNormal => "speed-at-normal",
        Why::SpeedAtBoost => "speed-at-boost",
        Why::Kitchen => "kitchen",
        Why::Least => "fewest",
    }
}

pub const fn asks(asks: Asks) -> &'static str {
    match asks {
        Asks::WholeDwelling => "whole-dwelling",
        Asks::SupplyRooms => "supply-rooms",
        Asks::ExtractRooms => "extract-rooms",
        Asks::ShareOfNormal => "share-of-normal",
        Asks::LowerLevel => "lower-level",
    }
}

pub const fn severity(severity: Severity) -> &'static str {
    match severity {
        Severity::Stops => "stops",
        Severity::OutsideRule => "outside-rule",
        Severity::Unusual => "unusual",
        Severity::Note => "note",
    }
}

pub const fn mark(standing: Standing) -> &'static str {
    match standing {
        Standing::Published => "published",
        Standing::CommonPractice => "practice",
        Standing::FromMemory => "memory",
        Standing::YourSetting => "yours",
        Standing::Arithmetic => "arithmetic",
    }
}
