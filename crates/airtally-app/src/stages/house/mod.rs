//! House: which rooms there are and what is known of the house.

mod adders;
mod choices;
mod editor;
mod room;
mod site;
mod start;

use crate::context::{Page, use_desk, use_page};
use airtally::facts::RoomFacts;
use airtally::quantity::Unit;
use airtally_words::{format, label, page as say};
use yew::prelude::*;

/// The screen.
#[component]
pub fn House() -> Html {
    let (page, desk) = (use_page(), use_desk());
    let empty = page.house.rooms.is_empty();
    if empty && !desk.begun {
        return html! { <start::Start /> };
    }
    html! {
        <div class="spread">
            <div class="leaf">
                <header>
                    <h1>{ say::ASK_HOUSE }</h1>
                    <p class="soft">{ if empty { say::ADD_FIRST_ROOM.to_owned() } else { summary(&page) } }</p>
                </header>
                { for storeys(&page).into_iter().map(|storey| ledger(&page, storey)) }
                <adders::Adders />
            </div>
            <div class="leaf">
                <site::Site />
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
fn storeys(page: &Page) -> Vec<i8> {
    let mut storeys: Vec<i8> = page.house.rooms.iter().map(|room| room.storey).collect();
    storeys.sort_unstable();
    storeys.dedup();
    storeys
}

fn ledger(page: &Page, storey: i8) -> Html {
    let rooms: Vec<&RoomFacts> = page.report.facts().rooms.iter().filter(|room| room.storey == storey).collect();
    html! {
        <section class="part" key={i32::from(storey)}>
            <div class="part-head"><h2>{ label::storey(storey) }</h2><span class="soft">{ say::rooms(rooms.len()) }</span></div>
            <ol class="ledger">{ for rooms.iter().map(|facts| room::row(page, facts)) }</ol>
        </section>
    }
}
