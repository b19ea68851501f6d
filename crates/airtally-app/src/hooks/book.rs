//! The book of the steps is loaded when the page has been painted, and again when a person asks.

use crate::context::Hands;
use crate::desk::{Book, Move};
use crate::platform::page;
use airtally_words::step::StepBook;
use std::rc::Rc;
use yew::platform::spawn_local;
use yew::prelude::*;

/// Loads the book while it is on its way.
#[hook]
pub fn use_book(book: &Book, hands: &Hands) {
    use_effect_with((*book == Book::OnItsWay, hands.clone()), |(wanted, hands)| {
        if *wanted {
            let hands = hands.clone();
            spawn_local(async move {
                let text = page::load(page::BOOK).await;
                hands.make(Move::Book(text.map_or(Book::Missing, |text| Book::Open(Rc::new(StepBook::open(text))))));
            });
        }
    });
}
