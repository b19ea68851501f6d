//! Changing a house: one field at a time, a choice, or the list of rooms. Undo keeps whole documents.

use crate::entry::Entry;
use crate::house::{Choices, Field, House, Room, RoomId, RoomKind};
use crate::id::StepKey;
use crate::quantity::Unit;
use std::rc::Rc;

/// One change a person makes.
#[derive(Clone, Debug, PartialEq)]
pub enum Edit {
    /// Text typed into a field, with the unit its chip shows. Empty text means "use the default".
    Set(Field, String, Unit),
    /// Choices made.
    Choose(Choices),
    /// A new room at the end.
    AddRoom(RoomKind),
    /// A copy of a room right after it.
    DuplicateRoom(RoomId),
    /// A room taken away.
    RemoveRoom(RoomId),
    /// A room moved to a place in the list.
    MoveRoom(RoomId, usize),
    /// What a room is used for.
    SetKind(RoomId, RoomKind),
    /// A room's storey.
    SetStorey(RoomId, i8),
    /// Whether a kitchen is open to a living space; `None` takes the default back.
    SetOpen(RoomId, Option<bool>),
    /// A step ticked or unticked.
    Tick(StepKey, bool),
}

impl Edit {
    /// The house after the change. A change of something that does not exist leaves the house as it is.
    ///
    /// ```
    /// use airtally::{edit::Edit, house::{House, RoomKind}};
    /// let house = Edit::AddRoom(RoomKind::Kitchen).apply(&House::new());
    /// assert_eq!(house.rooms.len(), 1);
    /// ```
    pub fn apply(&self, house: &House) -> House {
        let mut house = house.clone();
        match self {
            Self::Set(field, text, unit) => set(&mut house, *field, text, *unit),
            Self::Choose(choices) => house.choices = *choices,
            Self::AddRoom(kind) => add(&mut house, *kind),
            Self::DuplicateRoom(id) => duplicate(&mut house, *id),
            Self::RemoveRoom(id) => house.rooms.retain(|room| room.id != *id),
            Self::MoveRoom(id, to) => move_room(&mut house, *id, *to),
            Self::SetKind(id, kind) => with_room(&mut house, *id, |room| room.kind = *kind),
            Self::SetStorey(id, storey) => with_room(&mut house, *id, |room| room.storey = *storey),
            Self::SetOpen(id, open) => with_room(&mut house, *id, |room| room.open = *open),
            Self::Tick(key, done) => tick(&mut house, *key, *done),
        }
        house
    }
}

fn set(house: &mut House, field: Field, text: &str, unit: Unit) {
    match field {
        Field::HouseName => house.name = text.to_owned(),
        Field::RoomName(id) => with_room(house, id, |room| room.name = text.to_owned()),
        Field::House(field) => put(&mut house.entries, field, text, unit),
        Field::Given(id) => put(&mut house.settings, id, text, unit),
        Field::Price(part) => put(&mut house.prices, part, text, unit),
        Field::Curve(curve) => put(&mut house.curves, curve, text, unit),
        Field::Room(id, field) => with_room(house, id, |room| put(&mut room.entries, field, text, unit)),
    }
}

fn put<K: Copy + PartialEq>(entries: &mut Vec<(K, Entry)>, key: K, text: &str, unit: Unit) {
    if text.is_empty() {
        entries.retain(|(k, _)| *k != key);
        return;
    }
    match entries.iter_mut().find(|(k, _)| *k == key) {
        Some((_, entry)) => *entry = Entry::new(text, unit),
        None => entries.push((key, Entry::new(text, unit))),
    }
}

fn add(house: &mut House, kind: RoomKind) {
    let storey = house.rooms.last().map_or(0, |room| room.storey);
    let Some(id) = next_id(house) else { return };
    house.rooms.push(Room { id, kind, name: String::new(), storey, open: None, entries: Vec::new() });
}

fn duplicate(house: &mut House, id: RoomId) {
    let Some(at) = house.rooms.iter().position(|room| room.id == id) else { return };
    let Some(id) = next_id(house) else { return };
    let copy = Room { id, name: String::new(), ..house.rooms[at].clone() };
    house.rooms.insert(at + 1, copy);
}

fn move_room(house: &mut House, id: RoomId, to: usize) {
    let Some(at) = house.rooms.iter().position(|room| room.id == id) else { return };
    let room = house.rooms.remove(at);
    let to = to.min(house.rooms.len());
    house.rooms.insert(to, room);
}

fn tick(house: &mut House, key: StepKey, done: bool) {
    house.ticks.retain(|tick| *tick != key);
    if done {
        house.ticks.push(key);
    }
}

fn with_room(house: &mut House, id: RoomId, change: impl FnOnce(&mut Room)) {
    if let Some(room) = house.rooms.iter_mut().find(|room| room.id == id) {
        change(room);
    }
}

/// The next number; `None` when all are used up, for none is ever used twice.
fn next_id(house: &mut House) -> Option<RoomId> {
    let next = house.next_room.checked_add(1)?;
    Some(RoomId(std::mem::replace(&mut house.next_room, next)))
}

/// A house with what it was before. Houses are shared, not copied, so a long history is cheap.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct History {
    past: Vec<(Rc<House>, Option<Field>)>,
    now: Rc<House>,
    future: Vec<Rc<House>>,
}

/// Most changes that can be undone.
pub const UNDO_DEPTH: usize = 200;

impl History {
    /// A history that begins with this house.
    pub fn starting_with(house: House) -> Self {
        Self { past: Vec::new(), now: Rc::new(house), future: Vec::new() }
    }

    /// The house as it is now.
    pub fn now(&self) -> &Rc<House> {
        &self.now
    }

    /// Makes a change. Typing on in the same field is one change. A change that changes nothing is not remembered.
    pub fn edit(&mut self, edit: &Edit) {
        let next = edit.apply(&self.now);
        if next == *self.now {
            return;
        }
        let field = if let Edit::Set(field, ..) = edit { Some(*field) } else { None };
        let same_field = field.is_some() && self.past.last().is_some_and(|(_, last)| *last == field);
        if !(same_field && self.future.is_empty()) {
            self.past.push((Rc::clone(&self.now), field));
        }
        if self.past.len() > UNDO_DEPTH {
            self.past.remove(0);
        }
        self.now = Rc::new(next);
        self.future.clear();
    }

    /// Puts a whole house in place of this one; can be undone. The same house again is no change.
    pub fn replace(&mut self, house: House) {
        if house == *self.now {
            return;
        }
        self.past.push((Rc::clone(&self.now), None));
        self.now = Rc::new(house);
        self.future.clear();
    }

    /// Takes the last change back. `false` when there is none.
    pub fn undo(&mut self) -> bool {
        let Some((before, _)) = self.past.pop() else { return false };
        self.future.push(std::mem::replace(&mut self.now, before));
        true
    }

    /// Makes the change again that was taken back last. `false` when there is none.
    pub fn redo(&mut self) -> bool {
        let Some(after) = self.future.pop() else { return false };
        self.past.push((std::mem::replace(&mut self.now, after), None));
        true
    }

    /// Whether something can be undone.
    pub fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// Whether something can be redone.
    pub fn can_redo(&self) -> bool {
        !self.future.is_empty()
    }
}
