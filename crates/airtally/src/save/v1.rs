//! Version 1 of the file. Frozen: what it says about a house never changes; a new need is a new version.
//!
//! Everything is text by stable id, so reordering our own enums can never change what an old file means.

use crate::entry::Entry;
use crate::given::GivenId;
use crate::house::{self, Choices, Credit, Display, HouseField, KitchenDraw, Print, RoomField, RoomId, RoomKind};
use crate::house::{Table, TubeSize, WetRooms};
use crate::id::{Air, RuleSet};
use crate::id::{StepKey, StepRule};
use crate::quantity::Unit;
use serde::{Deserialize, Serialize};
use std::fmt;

/// A house.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct House {
    name: String,
    choices: Chosen,
    entries: Vec<Typed>,
    rooms: Vec<Room>,
    next_room: u32,
    settings: Vec<Typed>,
    ticks: Vec<Tick>,
}

#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Chosen {
    rules: String,
    display: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    wet: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    kitchen: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    table: Option<String>,
    credit: String,
    print: String,
    tube: String,
}

#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Typed {
    field: String,
    text: String,
    unit: Unit,
}

#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Room {
    id: u32,
    kind: String,
    name: String,
    storey: i8,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    open: Option<bool>,
    entries: Vec<Typed>,
}

#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Tick {
    step: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    room: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    air: Option<String>,
}

/// Why a file of version 1 is refused, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// An id that this version does not have.
    Unknown {
        /// Where in the file.
        place: &'static str,
        /// The id.
        id: String,
    },
    /// A room id used twice, or not below `next_room`.
    RoomId(u32),
    /// A field that is given twice.
    Twice {
        /// Where in the file.
        place: &'static str,
        /// The field.
        id: String,
    },
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unknown { place, id } => write!(f, "{place}: version 1 has no \"{}\"", short(id)),
            Self::RoomId(id) => write!(f, "rooms: the id {id} is used twice or not below next_room"),
            Self::Twice { place, id } => write!(f, "{place}: \"{}\" is given twice", short(id)),
        }
    }
}

fn short(id: &str) -> String {
    id.chars().take(40).collect()
}

impl From<&house::House> for House {
    fn from(house: &house::House) -> Self {
        let typed =
            |id: &str, entry: &Entry| Typed { field: id.to_owned(), text: entry.text.clone(), unit: entry.unit };
        let room = |room: &house::Room| Room {
            id: room.id.0,
            kind: room.kind.id().to_owned(),
            name: room.name.clone(),
            storey: room.storey,
            open: room.open,
            entries: room.entries.iter().map(|(field, entry)| typed(field.id(), entry)).collect(),
        };
        Self {
            name: house.name.clone(),
            choices: Chosen::of(&house.choices),
            entries: house.entries.iter().map(|(field, entry)| typed(field.id(), entry)).collect(),
            rooms: house.rooms.iter().map(room).collect(),
            next_room: house.next_room,
            settings: house.settings.iter().map(|(id, entry)| typed(id.given().key, entry)).collect(),
            ticks: house.ticks.iter().map(Tick::of).collect(),
        }
    }
}

impl House {
    /// The document this file describes.
    ///
    /// # Errors
    /// [`Refusal`] with the place of the first thing that is not of this version.
    pub fn open(self) -> Result<house::House, Refusal> {
        let rooms = self.rooms.into_iter().map(Room::open).collect::<Result<Vec<_>, _>>()?;
        for (at, room) in rooms.iter().enumerate() {
            let again = rooms[..at].iter().any(|other| other.id == room.id);
            if again || room.id.0 >= self.next_room {
                return Err(Refusal::RoomId(room.id.0));
            }
        }
        Ok(house::House {
            name: self.name,
            choices: self.choices.open()?,
            entries: open_entries("entries", self.entries, |id| pick(HouseField::ALL, HouseField::id, id))?,
            rooms,
            next_room: self.next_room,
            settings: open_entries("settings", self.settings, GivenId::from_key)?,
            ticks: self.ticks.into_iter().map(Tick::open).collect::<Result<Vec<_>, _>>()?,
        })
    }
}

impl Room {
    fn open(self) -> Result<house::Room, Refusal> {
        Ok(house::Room {
            id: RoomId(self.id),
            kind: known("rooms.kind", RoomKind::ALL, RoomKind::id, self.kind)?,
            name: self.name,
            storey: self.storey,
            open: self.open,
            entries: open_entries("rooms.entries", self.entries, |id| pick(RoomField::ALL, RoomField::id, id))?,
        })
    }
}

impl Chosen {
    fn of(choices: &Choices) -> Self {
        Self {
            rules: choices.rules.id().to_owned(),
            display: choices.display.id().to_owned(),
            wet: choices.wet.map(|wet| wet.id().to_owned()),
            kitchen: choices.kitchen.map(|kitchen| kitchen.id().to_owned()),
            table: choices.table.map(|table| table.id().to_owned()),
            credit: choices.credit.id().to_owned(),
            print: choices.print.id().to_owned(),
            tube: choices.tube.id().to_owned(),
        }
    }

    fn open(self) -> Result<Choices, Refusal> {
        Ok(Choices {
            rules: known("choices.rules", RuleSet::ALL, RuleSet::id, self.rules)?,
            display: known("choices.display", Display::ALL, Display::id, self.display)?,
            wet: self.wet.map(|id| known("choices.wet", WetRooms::ALL, WetRooms::id, id)).transpose()?,
            kitchen: self
                .kitchen
                .map(|id| known("choices.kitchen", KitchenDraw::ALL, KitchenDraw::id, id))
                .transpose()?,
            table: self.table.map(|id| known("choices.table", Table::ALL, Table::id, id)).transpose()?,
            credit: known("choices.credit", Credit::ALL, Credit::id, self.credit)?,
            print: known("choices.print", Print::ALL, Print::id, self.print)?,
            tube: known("choices.tube", TubeSize::ALL, TubeSize::id, self.tube)?,
        })
    }
}

impl Tick {
    fn of(key: &StepKey) -> Self {
        Self {
            step: key.rule.id().to_owned(),
            room: key.room.map(|room| room.0),
            air: key.air.map(|air| air.id().to_owned()),
        }
    }

    fn open(self) -> Result<StepKey, Refusal> {
        Ok(StepKey {
            rule: known("ticks.step", StepRule::ALL, StepRule::id, self.step)?,
            room: self.room.map(RoomId),
            air: self.air.map(|id| known("ticks.air", Air::BOTH, Air::id, id)).transpose()?,
        })
    }
}

fn open_entries<K: Copy + PartialEq>(
    place: &'static str,
    typed: Vec<Typed>,
    find: impl Fn(&str) -> Option<K>,
) -> Result<Vec<(K, Entry)>, Refusal> {
    let mut entries: Vec<(K, Entry)> = Vec::with_capacity(typed.len());
    for Typed { field, text, unit } in typed {
        let Some(key) = find(&field) else { return Err(Refusal::Unknown { place, id: field }) };
        if entries.iter().any(|(other, _)| *other == key) {
            return Err(Refusal::Twice { place, id: field });
        }
        entries.push((key, Entry { text, unit }));
    }
    Ok(entries)
}

fn known<T: Copy>(
    place: &'static str,
    all: impl IntoIterator<Item = T>,
    id_of: impl Fn(T) -> &'static str,
    id: String,
) -> Result<T, Refusal> {
    pick(all, id_of, &id).ok_or(Refusal::Unknown { place, id })
}

fn pick<T: Copy>(all: impl IntoIterator<Item = T>, id_of: impl Fn(T) -> &'static str, id: &str) -> Option<T> {
    all.into_iter().find(|item| id_of(*item) == id)
}
