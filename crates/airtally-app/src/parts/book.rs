//! While the book is not there: what is missing, and a way to get it.

use crate::context::View;
use crate::desk::{Book, Move};
use crate::ui::el::{button, el, nodes, nothing, text};
use airtally_words::page as say;
use yew::prelude::*;

/// Where the book is, unless it is open.
pub fn no_book(view: &View) -> Html {
    let (where_it_is, way_on) = match view.desk.book {
        Book::Open => return nothing(),
        Book::OnItsWay => (say::BOOK_COMES, nothing()),
        Book::Missing => {
            let pressed = view.hands.doing(|hands| hands.make(Move::Book(Book::OnItsWay)));
            (say::BOOK_MISSING, button("button-main", pressed).around([text(say::TRY_AGAIN)]))
        }
    };
    nodes([el("p", "", [text(where_it_is)]), way_on])
}
