//! Adding a room: one press a room, and its floor area is asked for at once.

use crate::context::View;
use crate::desk::{Move, ROOMS};
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
    let add = |kind: RoomKind| {
        let onclick = hands.doing(move |hands| {
            hands.edit(Edit::AddRoom(kind));
            hands.make(Move::Visit(Place::Field(Field::Room(next, RoomField::Area))));
        });
        html! { <button type="button" class="button add" {onclick}>{ icon(Icon::Plus) }{ label::kind(kind) }</button> }
    };
    html! {
        <section class="part">
            <h2 id={ROOMS} tabindex="-1">{ say::ADD_ROOM }</h2>
            <div class="adders" role="group" aria-labelledby={ROOMS}>{ for RoomKind::ALL.map(add) }</div>
        </section>
    }
}
