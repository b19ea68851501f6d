//! What keys do in the table of rooms, beside what they do in every field.

use super::changes::{copy, places, remove, shift};
use super::lists::kind_id;
use crate::context::View;
use crate::desk::{Move, row_id};
use crate::platform::page;
use airtally::edit::Edit;
use airtally::house::{Room, RoomId, RoomKind};
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;
use yew::prelude::*;

/// Told of every key in a row: Enter goes down, and with Alt the arrows move the row, Enter copies it, Delete takes it away.
pub fn keys(view: &View, id: RoomId) -> Callback<Event> {
    let view = view.clone();
    Callback::from(move |event: Event| {
        let Some(cell) = event.target_dyn_into::<HtmlElement>().map(|cell| cell.id()) else { return };
        let Some(column) = cell.strip_prefix(&[&row_id(id), "-"].concat()) else { return };
        if let (Some(pressed), Some(room)) = (event.dyn_ref::<KeyboardEvent>(), view.page.house.room(id))
            && !pressed.is_composing()
            && press(&view, room, (&cell, column), pressed)
        {
            event.prevent_default();
        }
    })
}

/// `false` for a key that means nothing here.
fn press(view: &View, room: &Room, (cell, column): (&str, &str), pressed: &KeyboardEvent) -> bool {
    let along = |way: usize| {
        shift(&view.hands, room.id, places(&view.page, room)[way]);
        view.hands.make(Move::Aim(cell.to_owned()));
    };
    match (pressed.key().as_str(), pressed.alt_key()) {
        ("Enter", false) => go_down(view, room, cell, column),
        ("Enter", true) => copy(view, room.id).emit(pressed.clone().into()),
        ("Delete", true) => remove(view, room.id).emit(pressed.clone().into()),
        ("ArrowUp", true) => along(0),
        ("ArrowDown", true) => along(1),
        _ => return false,
    }
    true
}

/// To the next row that has this column; from the last row to a new one.
fn go_down(view: &View, room: &Room, cell: &str, column: &str) {
    let below = |what: &[&str]| page::find(&[&["tbody:has(#", cell, ")~tbody "], what].concat().concat());
    match below(&["[id$=-", column, "]"]).or_else(|| below(&["select"])) {
        Some(next) => view.hands.make(Move::Aim(next)),
        None => add_below(view, room),
    }
}

/// A new room on the same storey: its kind is asked for first, and the kind of the row above is a good guess.
fn add_below(view: &View, room: &Room) {
    let house = &view.page.house;
    let next = RoomId(house.next_room);
    let kind = if room.kind == RoomKind::MainBedroom { RoomKind::Bedroom } else { room.kind };
    view.hands.edit(Edit::AddRoom(kind));
    if house.rooms.last().is_some_and(|last| last.storey != room.storey) {
        view.hands.edit(Edit::SetStorey(next, room.storey));
    }
    view.hands.make(Move::Aim(kind_id(next)));
}
