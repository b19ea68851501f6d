//! What a room is called.

use crate::label;
use airtally::house::{House, Room, RoomId};

/// The typed name of a room, else its kind; numbered when several rooms of one kind have no name.
///
/// ```
/// use airtally::{edit::Edit, house::{House, RoomId, RoomKind}};
/// use airtally_words::room;
/// let one = Edit::AddRoom(RoomKind::Bedroom).apply(&House::new());
/// assert_eq!(room::name(&one, RoomId(0)), "Bedroom");
/// let two = Edit::AddRoom(RoomKind::Bedroom).apply(&one);
/// assert_eq!(room::name(&two, RoomId(1)), "Bedroom 2");
/// ```
pub fn name(house: &House, id: RoomId) -> String {
    let Some(room) = house.room(id) else { return "A room that was taken away".to_owned() };
    if has_name(room) {
        return room.name.trim().to_owned();
    }
    let kind = label::kind(room.kind);
    let alike = || house.rooms.iter().filter(|other| other.kind == room.kind && !has_name(other));
    match (alike().count(), alike().position(|other| other.id == id)) {
        (count, Some(at)) if count > 1 => format!("{kind} {}", at + 1),
        _ => kind.to_owned(),
    }
}

fn has_name(room: &Room) -> bool {
    !room.name.trim().is_empty()
}
