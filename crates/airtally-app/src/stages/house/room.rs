//! One room's row.

use super::editor::editor;
use crate::context::View;
use crate::desk::{Move, row_id};
use crate::parts::air::role_tag;
use crate::ui::el::{El, button, el, nothing, tag, text};
use crate::ui::figure::{Size, figure};
use airtally::facts::RoomFacts;
use airtally::house::{Role, RoomId};
use airtally_words::{format, label, page as say, room};
use yew::prelude::*;

/// The row of a room; its editor when it is open.
pub fn row(view: &View, facts: &RoomFacts) -> Html {
    let id = facts.id;
    let name = room::name(&view.page.house, id);
    let open = view.desk.open == Some(id);
    let note = el("p", "row-note", [text(note(facts, &name))]);
    let button = opener(view, id, "row-open").around([text(name)]);
    tag("li", if open { "row is-open" } else { "row" }).key(id.0).around([
        el("span", "row-mark", [role_tag(facts.role)]),
        el("div", "row-main", [el("h3", "row-name", [button]), note]),
        el("div", "row-figure row-turn", [area(view, facts)]),
        if open { panel(view, id, "row-edit") } else { nothing() },
    ])
}

/// Begins the button that opens the editor of a room and closes it.
pub fn opener(view: &View, id: RoomId, class: &'static str) -> El {
    let open = view.desk.open == Some(id);
    let turn = view.hands.doing(move |hands| hands.make(Move::Open((!open).then_some(id))));
    let button = button(class, turn).attr("id", row_id(id)).attr("aria-expanded", open.to_string());
    button.attr_if("aria-controls", open.then(|| panel_id(id)))
}

/// The editor of a room where it is open.
pub fn panel(view: &View, id: RoomId, class: &'static str) -> Html {
    let name = room::name(&view.page.house, id);
    let panel = tag("div", class).attr("id", panel_id(id)).attr("role", "group").attr("aria-label", name);
    panel.around([editor(view, id)])
}

fn panel_id(id: RoomId) -> String {
    [&row_id(id), "-panel"].concat()
}

fn note(facts: &RoomFacts, name: &str) -> String {
    let kind = label::kind(facts.kind);
    let mut notes: Vec<String> = Vec::new();
    if !name.starts_with(kind) {
        notes.push(kind.to_owned());
    }
    if facts.sleepers > 0.0 {
        notes.push(say::sleepers(&format::number(facts.sleepers, 1)));
    }
    if notes.is_empty() {
        return label::role(facts.role).to_owned();
    }
    notes.join(" · ")
}

fn area(view: &View, facts: &RoomFacts) -> Html {
    match (facts.area, facts.role) {
        (Some(area), _) => {
            let shown = format::in_display(area.value(), area.unit(), view.page.display());
            figure(&shown.number, shown.unit, Size::Mid)
        }
        (None, Role::Never) => nothing(),
        (None, _) => el("span", "small soft", [text(say::NO_AREA)]),
    }
}
