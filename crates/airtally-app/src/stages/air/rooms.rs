//! Which room gets what.

use crate::context::{Page, View};
use crate::parts::air::air_tag;
use crate::ui::el::{el, els, text};
use crate::ui::figure::Size;
use crate::ui::part::{row, row_sum};
use airtally::quantity::Flow;
use airtally::rules::{Air, Level};
use airtally::shares::Share;
use airtally_words::{format, page as say, room};
use yew::prelude::*;

/// The rooms of one side and what they come to.
pub fn ledger(view: &View, level: Level, air: Air) -> Html {
    let page = &view.page;
    let shares = page.report.shares().at(level);
    let side = shares.side(air);
    if side.is_empty() {
        return el("p", "soft", [text(say::no_side(air == Air::Supply))]);
    }
    let sum = format::flow(shares.total, page.display());
    let name = say::in_all(air == Air::Supply);
    let sum = row_sum(name, view.figure(name, &sum, Size::Row, shares.total_line));
    let rows = side.iter().map(|share| share_row(view, share, air)).chain([sum]);
    els("ol", "ledger", rows)
}

fn share_row(view: &View, share: &Share, air: Air) -> Html {
    let page = &view.page;
    let name = room::name(&page.house, share.room);
    let shown = format::flow(share.flow, page.display());
    let figure = view.figure(&say::air_of(air == Air::Supply, &name), &shown, Size::Row, share.line);
    row(air_tag(air), text(name), text(note(page, share)), figure, None)
}

/// Floor area, and the least the rule asks for in this room.
fn note(page: &Page, share: &Share) -> String {
    let facts = page.report.facts().rooms.iter().find(|facts| facts.id == share.room);
    let area = facts.and_then(|facts| facts.area);
    let area = area.map(|area| format::in_display(area.value(), area.unit(), page.display()).to_string());
    let least =
        (share.minimum > Flow::ZERO).then(|| say::at_least(&format::flow(share.minimum, page.display()).to_string()));
    let notes: Vec<String> = area.into_iter().chain(least).collect();
    notes.join(" · ")
}
