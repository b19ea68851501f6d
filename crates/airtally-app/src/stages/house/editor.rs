//! Everything about one room.

use crate::context::{Hands, Page, View};
use crate::desk::{Move, ROOMS, Said, row_id};
use crate::parts::choice::options;
use crate::parts::entry::entry;
use crate::ui::el::{button, el, nodes, nothing, tag, text};
use crate::ui::icon::{Icon, icon};
use crate::ui::select::select;
use airtally::edit::Edit;
use airtally::house::{Field, Room, RoomField, RoomId, RoomKind};
use airtally_words::{label, page as say, room as words};
use web_sys::HtmlInputElement;
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// The editor of a room.
pub fn editor(view: &View, id: RoomId) -> Html {
    let (page, hands) = (&view.page, &view.hands);
    let Some(room) = page.house.room(id) else { return nothing() };
    let done = hands.doing::<()>(|hands| {
        hands.make(Move::Open(None));
        hands.make(Move::Aim(ROOMS.to_owned()));
    });
    let field = |field: Field| entry(view, field, Some(&done));
    let about = |about: RoomField| field(Field::Room(id, about));
    let role = room.kind.role();
    let when = |there: bool, about_it: RoomField| if there { about(about_it) } else { nothing() };
    let fields = el(
        "div",
        "fields fields-two",
        [
            about(RoomField::Area),
            when(role.takes_supply(), RoomField::Sleepers),
            field(Field::RoomName(id)),
            el("div", "fields fields-pair", [kind(room, hands), storey(page, room, hands)]),
            about(RoomField::Length),
            about(RoomField::Width),
            about(RoomField::Height),
            when(role.takes_supply(), RoomField::SupplyRun),
            when(role.takes_extract(), RoomField::ExtractRun),
        ],
    );
    let open = if room.kind.is_kitchen() { open_kitchen(room, hands) } else { nothing() };
    let moves = moves(page, room).map(|(sign, words, to)| shift(room, sign, words, to, hands));
    let ready = button("button-main", done.reform(|_: Event| ())).around([text(say::DONE)]);
    let copy =
        button("button", hands.editing(Edit::DuplicateRoom(id))).around([icon(Icon::Copy), text(say::DUPLICATE)]);
    let remove = button("button", remove(page, room, hands)).around([icon(Icon::Bin), text(say::REMOVE)]);
    nodes([
        fields,
        open,
        el("div", "buttons buttons-apart", [ready, el("div", "buttons", moves)]),
        el("div", "buttons buttons-apart", [copy, remove]),
    ])
}

fn kind(room: &Room, hands: &Hands) -> Html {
    let (id, hands) = (room.id, hands.clone());
    let chosen = Callback::from(move |at: usize| {
        if let Some(kind) = RoomKind::ALL.get(at) {
            hands.edit(Edit::SetKind(id, *kind));
        }
    });
    let options = options(&RoomKind::ALL, room.kind, label::kind);
    select([&row_id(id), "-kind"].concat(), say::KIND, "", options, &chosen)
}

/// Storeys that can be chosen: two below the ground to five above, and those there are.
fn storey(page: &Page, room: &Room, hands: &Hands) -> Html {
    let there = |storey: &i8| (-2..=5).contains(storey) || page.house.rooms.iter().any(|room| room.storey == *storey);
    let storeys: Vec<i8> = (i8::MIN..=i8::MAX).filter(there).collect();
    let options = storeys.iter().map(|storey| (label::storey(*storey).into(), *storey == room.storey)).collect();
    let (id, hands) = (room.id, hands.clone());
    let chosen = Callback::from(move |at: usize| {
        if let Some(storey) = storeys.get(at) {
            hands.edit(Edit::SetStorey(id, *storey));
        }
    });
    select([&row_id(id), "-storey"].concat(), say::STOREY, "", options, &chosen)
}

fn open_kitchen(room: &Room, hands: &Hands) -> Html {
    let (id, hands) = (room.id, hands.clone());
    let told = Callback::from(move |event: Event| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            hands.edit(Edit::SetOpen(id, Some(input.checked())));
        }
    });
    let box_id = [&row_id(id), "-open"].concat();
    let checked = room.open.unwrap_or(room.kind == RoomKind::LivingKitchen);
    let input = tag("input", "tick").attr("type", "checkbox").attr("id", box_id.clone()).checked(checked);
    let label = tag("label", "").attr("for", box_id).around([text(say::OPEN_KITCHEN)]);
    el("div", "check", [input.on(ListenerKind::onchange, told).html(), label])
}

/// Where the room can move within its storey: the places of its neighbours there.
fn moves(page: &Page, room: &Room) -> [(Icon, &'static str, Option<usize>); 2] {
    let rooms = &page.house.rooms;
    let at = rooms.iter().position(|other| other.id == room.id).unwrap_or_default();
    let alike = |other: &Room| other.storey == room.storey;
    let up = rooms[..at].iter().rposition(alike);
    let down = rooms.iter().enumerate().skip(at + 1).find(|(_, other)| alike(other)).map(|(place, _)| place);
    [(Icon::Up, say::MOVE_UP, up), (Icon::Down, say::MOVE_DOWN, down)]
}

fn shift(room: &Room, sign: Icon, words: &'static str, to: Option<usize>, hands: &Hands) -> Html {
    let pressed = hands.editing(Edit::MoveRoom(room.id, to.unwrap_or_default()));
    let shift = button("button", pressed).attr("aria-label", words).attr("title", words);
    shift.attr_if("disabled", to.is_none().then_some("")).around([icon(sign)])
}

fn remove(page: &Page, room: &Room, hands: &Hands) -> Callback<Event> {
    let id = room.id;
    let words = AttrValue::from(say::room_removed(&words::name(&page.house, id)));
    hands.doing(move |hands| {
        hands.edit(Edit::RemoveRoom(id));
        hands.make(Move::Open(None));
        hands.make(Move::Say(Said { words: words.clone(), undo: true }));
        hands.make(Move::Aim(ROOMS.to_owned()));
    })
}
