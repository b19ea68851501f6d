//! House: which rooms there are and what is known of the house.

mod adders;
mod choices;
mod editor;
mod room;
mod site;
mod start;

use crate::context::{Page, View};
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
    html! {
        <div class="spread">
            <div class="leaf">
                <header>
                    <h1>{ say::ASK_HOUSE }</h1>
                    <p class="soft">{ if empty { say::ADD_FIRST_ROOM.to_owned() } else { summary(page) } }</p>
                </header>
                { for storeys(page).map(|storey| ledger(view, storey)) }
                { adders::adders(view) }
            </div>
            <div class="leaf">
                { site::site(view) }
                if !empty { <p><a class="button-main" href="#air">{ say::NEXT_AIR }</a></p> }
            </div>
        </div>
    }
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
    html! {
        <section class="part" key={i32::from(storey)}>
            <div class="part-head"><h2>{ label::storey(storey) }</h2><span class="soft">{ say::rooms(rooms.len()) }</span></div>
            <ol class="ledger">{ for rooms.iter().map(|facts| room::row(view, facts)) }</ol>
        </section>
    }
}
