//! One room's row. It draws again only when what it shows has changed.

use super::editor::Editor;
use crate::context::{Page, use_desk, use_hands};
use crate::desk::{Move, row_id};
use crate::parts::air::role_tag;
use crate::ui::figure::{Size, figure};
use crate::ui::icon::{Icon, icon};
use airtally::facts::RoomFacts;
use airtally::house::{Role, RoomId};
use airtally_words::{format, label, page as say, room};
use yew::prelude::*;

/// The row of a room.
pub fn row(page: &Page, facts: &RoomFacts) -> Html {
    let name = room::name(&page.house, facts.id);
    let area = facts.area.map(|area| format::in_display(area.value(), area.unit(), page.display()));
    let (number, unit) = area.map_or((String::new(), ""), |shown| (shown.number, shown.unit));
    let note = note(facts, &name);
    html! { <Row key={facts.id.0} id={facts.id} role={facts.role} {name} {note} {number} {unit} /> }
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

/// What a row shows.
#[derive(Clone, PartialEq, Properties)]
pub struct Props {
    id: RoomId,
    role: Role,
    name: AttrValue,
    note: AttrValue,
    /// Empty: no area is known.
    number: AttrValue,
    unit: &'static str,
}

/// The row.
#[component]
fn Row(props: &Props) -> Html {
    let (desk, hands) = (use_desk(), use_hands());
    let id = props.id;
    let open = desk.open == Some(id);
    let panel = [&row_id(id), "-panel"].concat();
    let turn = hands.doing(move |hands| hands.make(Move::Open((!open).then_some(id))));
    html! {
        <li class={classes!("row", open.then_some("is-open"))}>
            <span class="row-mark">{ role_tag(props.role) }</span>
            <div class="row-main">
                <h3 class="row-name">
                    <button type="button" class="row-open" id={row_id(id)} aria-expanded={open.to_string()}
                        aria-controls={open.then_some(panel.clone())} onclick={turn}>{ props.name.clone() }</button>
                </h3>
                <p class="row-note">{ props.note.clone() }</p>
            </div>
            <div class="row-figure row-turn">{ area(props) }{ icon(Icon::Down) }</div>
            if open { <div class="row-edit" id={panel} role="group" aria-label={props.name.clone()}><Editor {id} /></div> }
        </li>
    }
}

fn area(props: &Props) -> Html {
    match (props.number.is_empty(), props.role) {
        (false, _) => figure(&props.number, props.unit, Size::Mid),
        (true, Role::Never) => html! {},
        (true, _) => html! { <span class="small soft">{ say::NO_AREA }</span> },
    }
}
