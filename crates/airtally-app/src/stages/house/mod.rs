//! House: which rooms there are and what is known of the house.

mod adders;
mod editor;
mod room;
mod site;
mod start;

use crate::context::{Page, View};
use crate::ui::el::{el, els, nothing, tag, text};
use crate::ui::part::next;
use airtally::facts::RoomFacts;
use airtally::quantity::Unit;
use airtally_words::{format, label, page as say};
use yew::prelude::*;

/// The screen.
pub fn house(view: &View) -> Html {
    let page = &view.page;
    let empty = page.house.rooms.is_empty();
    if empty && !view.desk.begun {
        return start::start(&view.hands);
    }
    let about = if empty { say::ADD_FIRST_ROOM.to_owned() } else { summary(page) };
    let head = el("header", "", [el("h1", "", [text(say::ASK_HOUSE)]), el("p", "soft", [text(about)])]);
    let ledgers = storeys(page).map(|storey| ledger(view, storey)).collect();
    let next = if empty { nothing() } else { next("#air", say::NEXT_AIR) };
    let left = el("div", "leaf", [head, ledgers, adders::adders(view)]);
    el("div", "spread", [left, el("div", "leaf", [site::site(view), next])])
}

fn summary(page: &Page) -> String {
    let facts = page.report.facts();
    let area = page.display().area();
    let people = format::value(facts.persons(), Unit::Count);
    say::house_summary(facts.rooms.len(), &format::text(facts.rooms_area_in(area), area), &people.number)
}

/// The storeys there are, lowest first.
fn storeys(page: &Page) -> impl Iterator<Item = i8> {
    (i8::MIN..=i8::MAX).filter(|storey| page.house.rooms.iter().any(|room| room.storey == *storey))
}

fn ledger(view: &View, storey: i8) -> Html {
    let page = &view.page;
    let rooms: Vec<&RoomFacts> = page.report.facts().rooms.iter().filter(|room| room.storey == storey).collect();
    let count = el("span", "soft", [text(say::rooms(rooms.len()))]);
    let head = el("div", "part-head", [el("h2", "", [text(label::storey(storey))]), count]);
    let list = els("ol", "ledger", rooms.iter().map(|facts| room::row(view, facts)));
    tag("section", "part").key(i32::from(storey)).around([head, list])
}
