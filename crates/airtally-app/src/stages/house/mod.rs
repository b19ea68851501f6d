//! House: which rooms there are and what is known of the house.

mod adders;
mod changes;
mod editor;
mod keys;
mod lists;
mod room;
mod site;
mod start;
mod table;

use crate::context::{Page, View};
use crate::ui::el::{el, els, nothing, tag, text};
use crate::ui::part::next;
use airtally::facts::RoomFacts;
use airtally::house::House;
use airtally::quantity::Unit;
use airtally_words::{format, label, page as say};
use yew::prelude::*;

/// The screen.
pub fn house(view: &View) -> Html {
    let page = &view.page;
    let empty = page.house.rooms.is_empty();
    if empty && !view.desk.begun && is_blank(&page.house) {
        return start::start(&view.hands);
    }
    let about = if empty { say::ADD_FIRST_ROOM.to_owned() } else { summary(page) };
    let head = el("header", "", [el("h1", "", [text(say::ASK_HOUSE)]), el("p", "soft", [text(about)])]);
    let rooms = match view.wide {
        _ if empty => nothing(),
        true => table::table(view),
        false => storeys_of(page).into_iter().map(|storey| ledger(view, storey)).collect(),
    };
    let next = if empty { nothing() } else { next("#air", say::NEXT_AIR) };
    let left = el("div", "leaf", [head, rooms, adders::adders(view)]);
    el("div", "spread spread-rooms", [left, el("div", "leaf", [site::site(view), next])])
}

/// Nothing has been typed yet.
fn is_blank(house: &House) -> bool {
    house.name.is_empty() && house.entries.is_empty()
}

fn summary(page: &Page) -> String {
    let facts = page.report.facts();
    let area = page.display().area();
    let people = format::value(facts.persons(), Unit::Count);
    say::house_summary(facts.rooms.len(), &format::text(facts.rooms_area_in(area), area), &people.number)
}

/// The storeys there are, lowest first.
fn storeys_of(page: &Page) -> Vec<i8> {
    let there = |storey: &i8| page.house.rooms.iter().any(|room| room.storey == *storey);
    (i8::MIN..=i8::MAX).filter(there).collect()
}

fn rooms_of(page: &Page, storey: i8) -> Vec<&RoomFacts> {
    page.report.facts().rooms.iter().filter(|room| room.storey == storey).collect()
}

fn ledger(view: &View, storey: i8) -> Html {
    let rooms = rooms_of(&view.page, storey);
    let head = storey_head(storey, rooms.len());
    let list = els("ol", "ledger", rooms.iter().map(|facts| room::row(view, facts)));
    tag("section", "part").key(i32::from(storey)).around([head, list])
}

fn storey_head(storey: i8, rooms: usize) -> Html {
    let count = el("span", "soft", [text(say::rooms(rooms))]);
    el("div", "part-head", [el("h2", "", [text(label::storey(storey))]), count])
}
