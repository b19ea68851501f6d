//! One room.

use crate::entry::Entry;
use crate::id::{Air, RoomField, RoomId};

/// A room as typed.
#[derive(Clone, Debug, PartialEq)]
pub struct Room {
    /// Its number.
    pub id: RoomId,
    /// What it is used for.
    pub kind: RoomKind,
    /// Its name as typed; empty means "name it after its kind".
    pub name: String,
    /// Storey: 0 is the ground floor, -1 the basement.
    pub storey: i8,
    /// A kitchen that is open to a living space. `None` means the default: closed.
    pub open: Option<bool>,
    /// What was typed about it.
    pub entries: Vec<(RoomField, Entry)>,
}

/// What a room is used for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum RoomKind {
    /// Living room.
    Living,
    /// Dining room.
    Dining,
    /// Kitchen, also with a dining table.
    Kitchen,
    /// Kitchen and living room in one space: air comes in at one end and leaves at the other.
    LivingKitchen,
    /// Main bedroom.
    MainBedroom,
    /// Any other bedroom.
    Bedroom,
    /// Study, guest, play or hobby room that people stay in.
    Study,
    /// Bathroom or shower room, with or without WC.
    Bathroom,
    /// Room with a WC only.
    Wc,
    /// Utility or laundry.
    Utility,
    /// Store or pantry that is drawn from.
    Store,
    /// Hall, landing, stair, corridor: air passes through.
    Hall,
    /// Unfinished basement.
    Basement,
    /// Garage or a room with an open-flued appliance: never served.
    Garage,
}

/// What the air does in a room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Role {
    /// Outdoor air is brought in.
    Supply,
    /// Air is drawn out.
    Extract,
    /// Both, at opposite ends.
    Both,
    /// Air passes through.
    Transfer,
    /// Never connected.
    Never,
}

impl RoomKind {
    /// Every kind, in the order in which people add rooms.
    pub const ALL: [RoomKind; 14] = [
        RoomKind::MainBedroom,
        RoomKind::Bedroom,
        RoomKind::Living,
        RoomKind::Kitchen,
        RoomKind::LivingKitchen,
        RoomKind::Dining,
        RoomKind::Study,
        RoomKind::Bathroom,
        RoomKind::Wc,
        RoomKind::Utility,
        RoomKind::Store,
        RoomKind::Hall,
        RoomKind::Basement,
        RoomKind::Garage,
    ];

    /// What the air does in a room of this kind. Common practice, no source.
    pub const fn role(self) -> Role {
        match self {
            Self::Living | Self::Dining | Self::MainBedroom | Self::Bedroom | Self::Study | Self::Basement => {
                Role::Supply
            }
            Self::Kitchen | Self::Bathroom | Self::Wc | Self::Utility | Self::Store => Role::Extract,
            Self::LivingKitchen => Role::Both,
            Self::Hall => Role::Transfer,
            Self::Garage => Role::Never,
        }
    }

    /// A room that people sleep in.
    pub const fn is_bedroom(self) -> bool {
        matches!(self, Self::MainBedroom | Self::Bedroom)
    }

    /// A room with a cooker.
    pub const fn is_kitchen(self) -> bool {
        matches!(self, Self::Kitchen | Self::LivingKitchen)
    }

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Living => "living",
            Self::Dining => "dining",
            Self::Kitchen => "kitchen",
            Self::LivingKitchen => "living-kitchen",
            Self::MainBedroom => "main-bedroom",
            Self::Bedroom => "bedroom",
            Self::Study => "study",
            Self::Bathroom => "bathroom",
            Self::Wc => "wc",
            Self::Utility => "utility",
            Self::Store => "store",
            Self::Hall => "hall",
            Self::Basement => "basement",
            Self::Garage => "garage",
        }
    }
}

impl Role {
    /// Outdoor air is brought into such a room.
    pub const fn takes_supply(self) -> bool {
        matches!(self, Self::Supply | Self::Both)
    }

    /// Air goes this way in such a room.
    pub const fn takes(self, air: Air) -> bool {
        match air {
            Air::Supply => self.takes_supply(),
            Air::Extract => self.takes_extract(),
        }
    }

    /// Air is drawn out of such a room.
    pub const fn takes_extract(self) -> bool {
        matches!(self, Self::Extract | Self::Both)
    }
}
