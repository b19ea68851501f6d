//! The person's price list as a file: out for a spreadsheet, and in again.

use crate::context::{Hands, View};
use crate::desk::{Move, Said};
use crate::parts::opener::opener;
use crate::platform::file;
use crate::state::Action;
use crate::ui::el::{button, el, nodes, nothing, text};
use crate::ui::part::{part, soft};
use airtally::entry::Entry;
use airtally::house::{Field, House};
use airtally::parts::Part;
use airtally::quantity::Unit;
use airtally_door::{Prices, Refused, read_prices, write_prices};
use airtally_words::book::Book;
use airtally_words::page as say;
use std::rc::Rc;
use yew::prelude::*;

/// Saves and opens.
pub fn list(view: &View, book: &'static Book) -> Html {
    let house = Rc::clone(&view.page.house);
    let save = view.hands.doing(move |_| file::save(say::PRICES_FILE, "text/csv", &written(&house, book)));
    let (hands, house) = (view.hands.clone(), Rc::clone(&view.page.house));
    let open = opener(say::OPEN_PRICES, ".csv,text/csv", move |text| take(&hands, &house, &text));
    let buttons = [button("button", save).around([text(say::SAVE_PRICES)]), open];
    let note = el("p", "", [soft(say::PRICES_NOTE)]);
    part(say::PRICES, nothing(), nodes([el("p", "buttons", buttons), note]))
}

fn written(house: &House, book: &'static Book) -> String {
    write_prices(Part::all().map(|part| {
        let price = house.text(Field::Price(part)).to_owned();
        (part, book.part(part).name.to_owned(), part.unit().symbol(), price)
    }))
}

/// All prices of the list, as one change that can be taken back.
fn take(hands: &Hands, house: &House, text: &str) {
    let words = match read_prices(text) {
        Ok(Prices { prices, unknown }) => {
            let mut next = house.clone();
            for (part, price) in prices {
                next.prices.retain(|(known, _)| *known != part);
                if !price.is_empty() {
                    next.prices.push((part, Entry::new(price, Unit::Money)));
                }
            }
            hands.act(Action::Load(next));
            return hands.make(Move::Say(Said { words: say::prices_taken(unknown).into(), undo: true }));
        }
        Err(Refused::TooLong) => say::PRICES_LONG,
        Err(Refused::NoColumns) => say::PRICES_HEADS,
        Err(Refused::NoPart) => say::PRICES_STRANGE,
    };
    hands.make(Move::Say(Said { words: words.into(), undo: false }));
}
