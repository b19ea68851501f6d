//! Levels of operation and directions of air.

/// An operating level of the system.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Level {
    /// Nobody is at home.
    Away,
    /// Every day.
    Normal,
    /// Cooking, bathing, guests.
    Boost,
}

impl Level {
    /// All three, lowest first.
    pub const ALL: [Level; 3] = [Level::Away, Level::Normal, Level::Boost];
}

/// Which way the air goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Air {
    /// Brought into a room.
    Supply,
    /// Drawn out of a room.
    Extract,
}

impl Air {
    /// Both.
    pub const BOTH: [Air; 2] = [Air::Supply, Air::Extract];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Supply => "supply",
            Self::Extract => "extract",
        }
    }
}
