//! Sends the house as one file: a finished report, and the page that opens it.

use super::top::item;
use crate::context::{Page, View};
use crate::desk::{Move, Said};
use crate::platform::{clock, file, page};
use airtally::house::House;
use airtally_words::book::{Word, book};
use airtally_words::letter::{Letter, enclose, letter};
use airtally_words::page as say;
use std::rc::Rc;
use yew::platform::spawn_local;
use yew::prelude::*;

/// The button in the menu.
pub fn send(view: &View) -> Html {
    let page = Rc::clone(&view.page);
    let pressed = view.hands.doing(move |hands| {
        let (page, hands) = (Rc::clone(&page), hands.clone());
        hands.make(Move::Menu(false));
        spawn_local(async move {
            let words = match page::load(page::SHELL).await {
                Some(shell) => sent(&page, &shell),
                None => say::NO_SHELL,
            };
            hands.make(Move::Say(Said { words: words.into(), undo: false }));
        });
    });
    item(None, say::SEND_FILE.to_owned(), true, pressed)
}

/// Gives the file, and says what happened.
fn sent(page: &Page, shell: &str) -> &'static str {
    let Some(book) = book() else { return say::BOOK_MISSING };
    let name = &page.house.name;
    // What a person pays for parts is nobody else's business.
    let house = House { prices: Vec::new(), ..(*page.house).clone() };
    let report = letter(&page.report, book, &clock::today());
    let made = airtally_door::write(&house).ok().and_then(|house| {
        enclose(shell, &Letter { name, report: &report, house: &house, id: &clock::new_id().0.to_string() })
    });
    let Some(made) = made else { return say::NO_SHELL };
    let file = say::file_name(name);
    file::save(&[file.trim_end_matches("json"), "html"].concat(), "text/html", &made);
    book.letter(Word::Sent)
}
