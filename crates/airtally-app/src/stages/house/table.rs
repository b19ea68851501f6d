//! The rooms as a table, on a wide screen: a row a room, and its cells are the very fields.

use super::changes::{copy, remove};
use super::keys::keys;
use super::lists::{kind_id, kinds, storey_id, storeys};
use super::room::{opener, panel};
use super::{rooms_of, storey_head, storeys_of};
use crate::context::View;
use crate::desk::row_id;
use crate::parts::air::role_tag;
use crate::parts::entry::cell;
use crate::ui::el::{button, el, nodes, nothing, tag, text};
use crate::ui::icon::{Icon, icon};
use crate::ui::select;
use airtally::facts::RoomFacts;
use airtally::house::{Field, RoomField, RoomId};
use airtally_words::label::room_field;
use airtally_words::{page as say, room as words};
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// The table.
pub fn table(view: &View) -> Html {
    let columns = [
        (NAME, say::NAME),
        (KIND, say::KIND),
        (AREA, room_field(RoomField::Area).name),
        (SLEEPERS, room_field(RoomField::Sleepers).name),
        (STOREY, say::STOREY),
    ];
    let column = |(id, name): (&'static str, &'static str)| {
        tag("th", "").attr("id", id).attr("scope", "col").around([text(name)])
    };
    let head = el("tr", "", [td(nothing()), columns.into_iter().map(column).collect(), td(nothing())]);
    let rooms = storeys_of(&view.page).into_iter().map(|storey| of_storey(view, storey)).collect();
    let table = el("table", "ledger cells", [el("thead", "", [head]), rooms]);
    nodes([table, el("p", "soft small", [text(say::TABLE_KEYS)])])
}

/// Ids of the heads of the columns.
const NAME: &str = "cell-name";
const KIND: &str = "cell-kind";
const AREA: &str = "cell-area";
const SLEEPERS: &str = "cell-sleepers";
const STOREY: &str = "cell-storey";

fn of_storey(view: &View, storey: i8) -> Html {
    let rooms = rooms_of(&view.page, storey);
    let head = el("tbody", "", [under("cells-storey", storey_head(storey, rooms.len()))]);
    nodes([head, rooms.into_iter().map(|facts| room(view, facts)).collect()])
}

fn room(view: &View, facts: &RoomFacts) -> Html {
    let (page, hands, id) = (&view.page, &view.hands, facts.id);
    let Some(room) = page.house.room(id) else { return nothing() };
    let of = [&row_id(id), "-of"].concat();
    let named = |column: &str| [column, " ", &of].concat();
    let typed = |there: bool, field: Field, column: &str| match there {
        true => cell(view, field, named(column)),
        false => [nothing(), nothing()],
    };
    let [name, name_said] = typed(true, Field::RoomName(id), NAME);
    let [area, area_said] = typed(true, Field::Room(id, RoomField::Area), AREA);
    let sleeps = facts.role.takes_supply();
    let [sleepers, sleepers_said] = typed(sleeps, Field::Room(id, RoomField::Sleepers), SLEEPERS);
    let kind = select::cell(kind_id(id), named(KIND), kinds(room, hands));
    let storey = select::cell(storey_id(id), named(STOREY), storeys(page, room, hands));
    let name_of = words::name(&page.house, id);
    let mark = nodes([role_tag(facts.role), of_this(&name_of, &of)]);
    let cells = [mark, name, kind, area, sleepers, storey, tools(view, id, &name_of)].into_iter();
    let cells = tag("tr", "").on(|| ListenerKind::onkeydown, keys(view, id)).around([cells.map(td).collect()]);
    let open = view.desk.open == Some(id);
    let more = if open { panel(view, id, "row-more") } else { nothing() };
    let under = under("cells-under", nodes([name_said, area_said, sleepers_said, more]));
    tag("tbody", if open { "is-open" } else { "" }).key(id.0).around([cells, under])
}

fn td(inside: Html) -> Html {
    el("td", "", [inside])
}

/// Words that end the name of every field of a room.
fn of_this(name: &str, of: &str) -> Html {
    tag("span", "").attr("id", of.to_owned()).attr("hidden", "").around([text(say::of_this(name))])
}

/// Copies, removes and opens a room. Keys do the first two as well, so that Tab goes from cell to cell.
fn tools(view: &View, id: RoomId, name: &str) -> Html {
    let tool = |sign: Icon, words: &'static str, keys: &'static str, pressed: Callback<Event>| {
        let tool = button("button-icon", pressed).attr("aria-label", say::of_room(words, name)).attr("title", words);
        tool.attr("tabindex", "-1").attr("aria-keyshortcuts", keys).around([icon(sign)])
    };
    let more = opener(view, id, "button-icon").attr("aria-label", say::more_about(name));
    nodes([
        tool(Icon::Copy, say::DUPLICATE, "Alt+Enter", copy(view, id)),
        tool(Icon::Bin, say::REMOVE, "Alt+Delete", remove(view, id)),
        more.around([icon(Icon::Down)]),
    ])
}

/// A line as wide as the table. Without anything in it, it is not seen.
fn under(class: &'static str, body: Html) -> Html {
    el("tr", class, [td(nothing()), tag("td", "").attr("colspan", UNDER).around([body])])
}

/// All columns behind the marks.
const UNDER: &str = "6";
