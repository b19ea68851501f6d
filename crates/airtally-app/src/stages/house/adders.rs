//! Adding a room: one press a room, and its floor area is asked for at once.

use crate::context::View;
use crate::desk::{Move, ROOMS, field_id};
use crate::ui::el::{button, el, tag, text};
use crate::ui::icon::{Icon, icon};
use airtally::edit::Edit;
use airtally::house::{Field, RoomField, RoomId, RoomKind};
use airtally::issue::Place;
use airtally_words::{label, page as say};
use yew::prelude::*;

/// The buttons.
pub fn adders(view: &View) -> Html {
    let hands = &view.hands;
    let next = RoomId(view.page.house.next_room);
    let (area, wide) = (Field::Room(next, RoomField::Area), view.wide);
    let add = |kind: RoomKind| {
        let pressed = hands.doing(move |hands| {
            hands.edit(Edit::AddRoom(kind));
            hands.make(if wide { Move::Aim(field_id(area)) } else { Move::Visit(Place::Field(area)) });
        });
        button("button add", pressed).around([icon(Icon::Plus), text(label::kind(kind))])
    };
    let heading = tag("h2", "").attr("id", ROOMS).attr("tabindex", "-1").around([text(say::ADD_ROOM)]);
    let group = tag("div", "adders").attr("role", "group").attr("aria-labelledby", ROOMS);
    let body = match view.page.house.next_room {
        u32::MAX => el("p", "", [text(say::NO_NUMBERS_LEFT)]),
        _ => group.around(RoomKind::ALL.map(add)),
    };
    el("section", "part", [heading, body])
}
