//! Lists to choose from for one room: its kind and its storey.

use crate::context::{Hands, Page};
use crate::desk::{Move, row_id};
use crate::parts::choice::options;
use crate::ui::select::Options;
use airtally::edit::Edit;
use airtally::house::{Room, RoomId, RoomKind};
use airtally_words::label;
use yew::prelude::*;

/// The kinds of room, and the way to take one by its place.
pub fn kinds(room: &Room, hands: &Hands) -> (Options, Callback<usize>) {
    let (id, hands) = (room.id, hands.clone());
    let chosen = Callback::from(move |at: usize| {
        if let Some(kind) = RoomKind::ALL.get(at) {
            hands.edit(Edit::SetKind(id, *kind));
        }
    });
    (options(&RoomKind::ALL, room.kind, label::kind), chosen)
}

/// Storeys that can be chosen, two below the ground to five above and those there are, and the way to take one.
pub fn storeys(page: &Page, room: &Room, hands: &Hands) -> (Options, Callback<usize>) {
    let there = |storey: &i8| (-2..=5).contains(storey) || page.house.rooms.iter().any(|room| room.storey == *storey);
    let storeys: Vec<i8> = (i8::MIN..=i8::MAX).filter(there).collect();
    let options = storeys.iter().map(|storey| (label::storey(*storey).into(), *storey == room.storey)).collect();
    let (id, hands) = (room.id, hands.clone());
    let chosen = Callback::from(move |at: usize| {
        if let Some(storey) = storeys.get(at) {
            hands.edit(Edit::SetStorey(id, *storey));
            // The room moves to its storey, and a browser takes the focus from what moves.
            hands.make(Move::Aim(storey_id(id)));
        }
    });
    (options, chosen)
}

/// Id of the list of kinds.
pub fn kind_id(room: RoomId) -> String {
    [&row_id(room), "-kind"].concat()
}

/// Id of the list of storeys.
pub fn storey_id(room: RoomId) -> String {
    [&row_id(room), "-storey"].concat()
}
