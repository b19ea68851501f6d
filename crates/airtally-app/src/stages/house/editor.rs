//! Everything about one room.

use crate::context::{Hands, Page, use_hands, use_page};
use crate::desk::{Move, ROOMS, Said, row_id};
use crate::parts::choice::options;
use crate::parts::entry::Entry;
use crate::ui::icon::{Icon, icon};
use crate::ui::select::select;
use airtally::edit::Edit;
use airtally::house::{Field, Room, RoomField, RoomId, RoomKind};
use airtally_words::{label, page as say, room as words};
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Which room.
#[derive(Clone, PartialEq, Properties)]
pub struct Props {
    /// The room.
    pub id: RoomId,
}

/// The editor.
#[component]
pub fn Editor(props: &Props) -> Html {
    let (page, hands) = (use_page(), use_hands());
    let Some(room) = page.house.room(props.id) else { return html! {} };
    let done = hands.doing::<()>(|hands| {
        hands.make(Move::Open(None));
        hands.make(Move::Aim(ROOMS.to_owned()));
    });
    let entry = |field: RoomField| html! { <Entry field={Field::Room(room.id, field)} on_enter={done.clone()} /> };
    let role = room.kind.role();
    html! {
        <>
            <div class="fields fields-two">
                { entry(RoomField::Area) }
                if role.takes_supply() { { entry(RoomField::Sleepers) } }
                <Entry field={Field::RoomName(room.id)} on_enter={done.clone()} />
                <div class="fields fields-pair">{ kind(room, &hands) }{ storey(&page, room, &hands) }</div>
                { entry(RoomField::Length) }
                { entry(RoomField::Width) }
                { entry(RoomField::Height) }
                if role.takes_supply() { { entry(RoomField::SupplyRun) } }
                if role.takes_extract() { { entry(RoomField::ExtractRun) } }
            </div>
            if room.kind.is_kitchen() { { open_kitchen(room, &hands) } }
            <div class="buttons buttons-apart">
                <button type="button" class="button-main" onclick={done.reform(|_: MouseEvent| ())}>{ say::DONE }</button>
                <div class="buttons">{ for moves(&page, room).into_iter().map(|(sign, words, to)| shift(room, sign, words, to, &hands)) }</div>
            </div>
            <div class="buttons buttons-apart">
                <button type="button" class="button" onclick={hands.editing(Edit::DuplicateRoom(room.id))}>
                    { icon(Icon::Copy) }{ say::DUPLICATE }
                </button>
                <button type="button" class="button" onclick={remove(&page, room, &hands)}>{ icon(Icon::Bin) }{ say::REMOVE }</button>
            </div>
        </>
    }
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

/// Storeys that can be chosen: two below the ground to five above, and the one the room is on.
fn storey(page: &Page, room: &Room, hands: &Hands) -> Html {
    let mut storeys: Vec<i8> = (-2..=5).chain(page.house.rooms.iter().map(|room| room.storey)).collect();
    storeys.sort_unstable();
    storeys.dedup();
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
    let onchange = Callback::from(move |event: Event| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            hands.edit(Edit::SetOpen(id, Some(input.checked())));
        }
    });
    let box_id = [&row_id(id), "-open"].concat();
    let checked = room.open.unwrap_or(room.kind == RoomKind::LivingKitchen);
    html! {
        <div class="check">
            <input class="tick" type="checkbox" id={box_id.clone()} {checked} {onchange} />
            <label for={box_id}>{ say::OPEN_KITCHEN }</label>
        </div>
    }
}

/// Where the room can move within its storey: the places of its neighbours there.
fn moves(page: &Page, room: &Room) -> Vec<(Icon, &'static str, Option<usize>)> {
    let rooms = &page.house.rooms;
    let at = rooms.iter().position(|other| other.id == room.id).unwrap_or_default();
    let alike = |other: &Room| other.storey == room.storey;
    let up = rooms[..at].iter().rposition(alike);
    let down = rooms.iter().enumerate().skip(at + 1).find(|(_, other)| alike(other)).map(|(place, _)| place);
    vec![(Icon::Up, say::MOVE_UP, up), (Icon::Down, say::MOVE_DOWN, down)]
}

fn shift(room: &Room, sign: Icon, words: &'static str, to: Option<usize>, hands: &Hands) -> Html {
    let onclick = hands.editing(Edit::MoveRoom(room.id, to.unwrap_or_default()));
    html! {
        <button type="button" class="button" aria-label={words} title={words} disabled={to.is_none()} {onclick}>{ icon(sign) }</button>
    }
}

fn remove(page: &Page, room: &Room, hands: &Hands) -> Callback<MouseEvent> {
    let id = room.id;
    let words = AttrValue::from(say::room_removed(&words::name(&page.house, id)));
    hands.doing(move |hands| {
        hands.edit(Edit::RemoveRoom(id));
        hands.make(Move::Open(None));
        hands.make(Move::Say(Said { words: words.clone(), undo: true }));
        hands.make(Move::Aim(ROOMS.to_owned()));
    })
}
