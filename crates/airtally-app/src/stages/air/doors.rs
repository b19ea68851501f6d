//! The gap under each door.

use crate::context::View;
use crate::parts::air::air_tag;
use crate::parts::source::source_line;
use crate::ui::el::{el, els, maybe, nodes, nothing, text};
use crate::ui::figure::Size;
use crate::ui::part::{part, row};
use airtally::given::GivenId;
use airtally::quantity::Unit;
use airtally::rules::Air;
use airtally::transfer::Opening;
use airtally_words::{format, page as say, room};
use yew::prelude::*;

/// The part.
pub fn doors(view: &View) -> Html {
    let page = &view.page;
    let openings = page.report.openings();
    let Some(first) = openings.first() else { return nothing() };
    let givens = page.report.givens();
    let width = givens.measure(GivenId::DoorWidth);
    let width = format::in_display(width.value(), width.unit(), page.display()).to_string();
    let pressure = format::text(givens.value(GivenId::TransferPressure), Unit::Pascal);
    let source = page.report.line(first.area.line).map(|line| line.source);
    let note = el("p", "soft small", [text(say::doors_note(&width, &pressure))]);
    let list = els("ol", "ledger", openings.iter().map(|opening| door_row(view, opening)));
    part(say::DOORS, nothing(), nodes([note, list, maybe(source.map(source_line))]))
}

fn door_row(view: &View, opening: &Opening) -> Html {
    let page = &view.page;
    let name = room::name(&page.house, opening.room);
    let gap = format::small_length(opening.undercut.value, page.display());
    let area = format::opening(opening.area.value, page.display()).to_string();
    let flow = format::flow(opening.flow, page.display()).to_string();
    let figure = view.figure(&say::gap_under(&name), &gap, Size::Row, opening.undercut.line);
    let note = say::through_door(opening.air == Air::Supply, &flow, &area);
    row(air_tag(opening.air), text(name), text(note), figure, None)
}
