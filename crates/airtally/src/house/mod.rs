//! The document: what was typed and chosen, and nothing that can be derived from it.

mod choice;
mod field;
mod laid;
mod on_site;
mod room;

pub use crate::id::{Field, HouseField, RoomField, RoomId};
pub use choice::{Choice, Choices, Credit, Display, KitchenDraw, Print, Table, WetRooms};
pub use field::NAME_FITS;
pub use laid::{Fans, Manifolds, TubeSize};
pub use on_site::{Building, Failing, Fuel, Joist, Outlets, Stud};
pub use room::{Role, Room, RoomKind};

use crate::entry::Entry;
use crate::id::{Curve, GivenId, Part, StepKey};

/// A house as its person typed it.
///
/// Absent entries mean "use the default"; defaults are never stored. Ids are small counters that are never used
/// twice, so ticks and settings keep pointing at the right thing whatever is added, moved or deleted.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct House {
    /// Name of the house; may be empty.
    pub name: String,
    /// Chosen, not typed: rules, units, options.
    pub choices: Choices,
    /// Entries about the whole house.
    pub entries: Vec<(HouseField, Entry)>,
    /// The rooms in the person's order.
    pub rooms: Vec<Room>,
    /// The next room id.
    pub next_room: u32,
    /// The person's own values in place of registered ones.
    pub settings: Vec<(GivenId, Entry)>,
    /// Steps that are ticked.
    pub ticks: Vec<StepKey>,
    /// The person's own prices.
    pub prices: Vec<(Part, Entry)>,
    /// The person's own curves.
    pub curves: Vec<(Curve, Entry)>,
}

impl House {
    /// A house without rooms.
    pub fn new() -> Self {
        Self::default()
    }

    /// The room with this id.
    pub fn room(&self, id: RoomId) -> Option<&Room> {
        self.rooms.iter().find(|room| room.id == id)
    }

    /// What was typed into a field; `None` when it is empty or does not exist.
    pub fn entry(&self, field: Field) -> Option<&Entry> {
        match field {
            Field::House(field) => find(&self.entries, field),
            Field::Given(id) => find(&self.settings, id),
            Field::Price(part) => find(&self.prices, part),
            Field::Curve(curve) => find(&self.curves, curve),
            Field::Room(id, field) => self.room(id).and_then(|room| find(&room.entries, field)),
            Field::HouseName | Field::RoomName(_) => None,
        }
    }

    /// The text of a field as typed; empty when nothing was typed.
    pub fn text(&self, field: Field) -> &str {
        match field {
            Field::HouseName => &self.name,
            Field::RoomName(id) => self.room(id).map_or("", |room| &room.name),
            _ => self.entry(field).map_or("", |entry| &entry.text),
        }
    }
}

fn find<K: Copy + PartialEq>(entries: &[(K, Entry)], key: K) -> Option<&Entry> {
    entries.iter().find(|(k, _)| *k == key).map(|(_, entry)| entry)
}
