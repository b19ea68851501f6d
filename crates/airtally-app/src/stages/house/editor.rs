//! Everything about one room; beside a table only what has no cell there.

use super::changes::{copy, places, remove, shift};
use super::lists::{kind_id, kinds, storey_id, storeys};
use crate::context::{Hands, View};
use crate::desk::{Move, ROOMS, row_id};
use crate::parts::entry::entry;
use crate::ui::el::{button, el, nodes, nothing, tag, text};
use crate::ui::icon::{Icon, icon};
use crate::ui::select::{Options, select};
use airtally::edit::Edit;
use airtally::house::{Field, Room, RoomField, RoomId, RoomKind};
use airtally_words::page as say;
use web_sys::HtmlInputElement;
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// The editor of a room.
pub fn editor(view: &View, id: RoomId) -> Html {
    let (page, hands) = (&view.page, &view.hands);
    let Some(room) = page.house.room(id) else { return nothing() };
    let next = if view.wide { row_id(id) } else { ROOMS.to_owned() };
    let done = hands.doing::<()>(move |hands| {
        hands.make(Move::Open(None));
        hands.make(Move::Aim(next.clone()));
    });
    let field = |field: Field| entry(view, field, Some(&done));
    let about = |about: RoomField| field(Field::Room(id, about));
    let role = room.kind.role();
    let when = |there: bool, about_it: RoomField| if there { about(about_it) } else { nothing() };
    let main = || {
        nodes([
            about(RoomField::Area),
            when(role.takes_supply(), RoomField::Sleepers),
            field(Field::RoomName(id)),
            el(
                "div",
                "fields fields-pair",
                [
                    list(kind_id(id), say::KIND, kinds(room, hands)),
                    list(storey_id(id), say::STOREY, storeys(page, room, hands)),
                ],
            ),
        ])
    };
    let fields = el(
        "div",
        "fields fields-two",
        [
            if view.wide { nothing() } else { main() },
            about(RoomField::Length),
            about(RoomField::Width),
            about(RoomField::Height),
            when(role.takes_supply(), RoomField::SupplyRun),
            when(role.takes_extract(), RoomField::ExtractRun),
        ],
    );
    let open = if room.kind.is_kitchen() { open_kitchen(room, hands) } else { nothing() };
    let [up, down] = places(page, room);
    let movers = [mover(room, Icon::Up, say::MOVE_UP, up, hands), mover(room, Icon::Down, say::MOVE_DOWN, down, hands)];
    let ready = button("button-main", done.reform(|_: Event| ())).around([text(say::DONE)]);
    let copy = button("button", copy(view, id)).around([icon(Icon::Copy), text(say::DUPLICATE)]);
    let remove = button("button", remove(view, id)).around([icon(Icon::Bin), text(say::REMOVE)]);
    let whole = || el("div", "buttons buttons-apart", [copy, remove]);
    nodes([
        fields,
        open,
        el("div", "buttons buttons-apart", [ready, el("div", "buttons", movers)]),
        if view.wide { nothing() } else { whole() },
    ])
}

fn list(id: String, label: &'static str, (options, chosen): (Options, Callback<usize>)) -> Html {
    select(id, label, "", options, &chosen)
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
    el("div", "check", [input.on(|| ListenerKind::onchange, told).html(), label])
}

fn mover(room: &Room, sign: Icon, words: &'static str, to: Option<usize>, hands: &Hands) -> Html {
    let id = room.id;
    let mover = button("button", hands.doing(move |hands| shift(hands, id, to)));
    let mover = mover.attr("aria-label", words).attr("title", words);
    mover.attr_if("disabled", to.is_none().then_some("")).around([icon(sign)])
}
