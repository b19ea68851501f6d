//! What can be done with a whole room: copied, moved, taken away.

use crate::context::{Hands, Page, View};
use crate::desk::{Move, ROOMS, Said, field_id, row_id};
use crate::platform::page as window;
use airtally::edit::Edit;
use airtally::house::{Field, Room, RoomField, RoomId};
use airtally_words::{page as say, room as words};
use yew::prelude::*;

/// Copies a room; in a table the copy is typed into next.
pub fn copy(view: &View, id: RoomId) -> Callback<Event> {
    let copy = RoomId(view.page.house.next_room);
    let wide = view.wide;
    view.hands.doing(move |hands| {
        hands.edit(Edit::DuplicateRoom(id));
        if wide {
            hands.make(Move::Aim(field_id(Field::Room(copy, RoomField::Area))));
        }
    })
}

/// Takes a room away, with a way back. In a table the room below is typed into next.
pub fn remove(view: &View, id: RoomId) -> Callback<Event> {
    let words = AttrValue::from(say::room_removed(&words::name(&view.page.house, id)));
    view.hands.doing(move |hands| {
        let below = window::find(&["tbody:has(#", &row_id(id), ")~tbody input"].concat());
        hands.edit(Edit::RemoveRoom(id));
        hands.make(Move::Open(None));
        hands.make(Move::Say(Said { words: words.clone(), undo: true }));
        hands.make(Move::Aim(below.unwrap_or_else(|| ROOMS.to_owned())));
    })
}

/// Moves a room to a place in the list; without a place nothing moves.
pub fn shift(hands: &Hands, id: RoomId, to: Option<usize>) {
    if let Some(to) = to {
        hands.edit(Edit::MoveRoom(id, to));
    }
}

/// Where a room can move within its storey, up and down: the places of its neighbours there.
pub fn places(page: &Page, room: &Room) -> [Option<usize>; 2] {
    let rooms = &page.house.rooms;
    let at = rooms.iter().position(|other| other.id == room.id).unwrap_or_default();
    let alike = |other: &Room| other.storey == room.storey;
    let down = rooms.iter().enumerate().skip(at + 1).find(|(_, other)| alike(other)).map(|(place, _)| place);
    [rooms[..at].iter().rposition(alike), down]
}
