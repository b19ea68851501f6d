//! The book is loaded when the page has been painted, and again when a person asks.

use crate::context::Hands;
use crate::desk::{Book, Move};
use crate::platform::page;
use airtally_words::book;
use yew::platform::spawn_local;
use yew::prelude::*;

/// Loads the book while it is on its way.
#[hook]
pub fn use_book(state: Book, hands: &Hands) {
    use_effect_with((state == Book::OnItsWay, hands.clone()), |(wanted, hands)| {
        if *wanted {
            let hands = hands.clone();
            spawn_local(async move {
                let text = page::load(page::BOOK).await.map(book::open);
                hands.make(Move::Book(text.map_or(Book::Missing, |()| Book::Open)));
            });
        }
    });
}
