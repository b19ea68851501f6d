//! One room's row.

use super::editor::editor;
use crate::context::View;
use crate::desk::{Move, row_id};
use crate::parts::air::role_tag;
use crate::ui::figure::{Size, figure};
use crate::ui::icon::{Icon, icon};
use airtally::facts::RoomFacts;
use airtally::house::Role;
use airtally_words::{format, label, page as say, room};
use yew::prelude::*;

/// The row of a room; its editor when it is open.
pub fn row(view: &View, facts: &RoomFacts) -> Html {
    let id = facts.id;
    let name = room::name(&view.page.house, id);
    let open = view.desk.open == Some(id);
    let panel = [&row_id(id), "-panel"].concat();
    let turn = view.hands.doing(move |hands| hands.make(Move::Open((!open).then_some(id))));
    html! {
        <li key={id.0} class={classes!("row", open.then_some("is-open"))}>
            <span class="row-mark">{ role_tag(facts.role) }</span>
            <div class="row-main">
                <h3 class="row-name">
                    <button type="button" class="row-open" id={row_id(id)} aria-expanded={open.to_string()}
                        aria-controls={open.then_some(panel.clone())} onclick={turn}>{ name.clone() }</button>
                </h3>
                <p class="row-note">{ note(facts, &name) }</p>
            </div>
            <div class="row-figure row-turn">{ area(view, facts) }{ icon(Icon::Down) }</div>
            if open { <div class="row-edit" id={panel} role="group" aria-label={name}>{ editor(view, id) }</div> }
        </li>
    }
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
        (None, Role::Never) => html! {},
        (None, _) => html! { <span class="small soft">{ say::NO_AREA }</span> },
    }
}
