//! Words of the house made in other ways, and of what is laid.

use super::tubes;
use airtally::alternatives::{Against, Ways};

/// Over the ways.
pub const WAYS: &str = "Side by side";
/// Below them while they are closed.
pub const WAYS_NOTE: &str = "Other tubes, two to a room, other manifolds and mains: pressure, noise, metres, price.";
/// Below them.
pub const WAYS_HOW: &str =
    "Press one to take it. Advised is the smallest that nothing speaks against: it fits the structure and costs least.";
/// A column: the way.
pub const WAY: &str = "way";
/// A column: the run that takes most.
pub const WAY_MOST: &str = "most of a run";
/// A column: what the unit must give.
pub const WAY_UNIT: &str = "unit at boost";
/// A column: the loudest room.
pub const WAY_LOUDEST: &str = "loudest, dB(A)";
/// The choice of manifolds.
pub const MANIFOLDS: &str = "Manifolds";
/// Over what is laid.
pub const LAYOUT: &str = "What is laid";
/// Below it while it is closed.
pub const LAYOUT_NOTE: &str =
    "Lengths, bends, bores, valves, mains: what counts where nothing is typed, and your own data.";
/// A group.
pub const LAYOUT_TUBES: &str = "Tubes";
/// A group.
pub const LAYOUT_VALVES: &str = "Valves";
/// A group.
pub const LAYOUT_MANIFOLDS: &str = "Manifolds";
/// A group.
pub const LAYOUT_MAINS: &str = "Mains and the way outdoors";
/// A group.
pub const LAYOUT_UNIT: &str = "The unit";
/// A group.
pub const LAYOUT_SITE: &str = "The place";

/// Over the ways of a kind.
pub const fn ways(ways: Ways) -> &'static str {
    match ways {
        Ways::Tube => "Tubes",
        Ways::Tubes => "Tubes to a room",
        Ways::Manifolds => "Manifolds",
        Ways::Main => "Bore of the mains",
    }
}

/// The fewest tubes to every room.
pub const fn fewest(count: u32) -> &'static str {
    match count {
        1 => "As many as its air needs",
        _ => "Two at least",
    }
}

/// What speaks for or against a way, and what it takes.
pub fn way_why(against: Against, advised: bool, count: u32, metres: &str, price: Option<&str>) -> String {
    let verdict = match against {
        Against::Nothing if advised => "Advised: the smallest that nothing speaks against",
        Against::Nothing => "Works too",
        Against::Pressure => "A run takes more pressure than is sensible",
        Against::Tubes => "A room needs more tubes than is sensible",
        Against::Fast => "The air in the mains is too fast",
        Against::Noise => "A room hears more than it should",
        Against::Uneven => "The longest run is more than three times the shortest",
    };
    let best = if advised && against != Against::Nothing { ", but asks least of the unit" } else { "" };
    let price = price.map_or(String::new(), |price| [", ", price, " in all"].concat());
    [verdict, best, ". ", &tubes(count), ", ", metres, &price, "."].concat()
}
