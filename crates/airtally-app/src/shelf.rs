//! The houses of this device: what is asked of the store, and what is done with what it tells.

use crate::context::Hands;
use crate::desk::{MAIN, Move, Said, Told, Topic};
use crate::platform::{clock, store};
use crate::state::{Action, HouseId, Seen};
use airtally::edit::Edit;
use airtally::house::{Field, House};
use airtally::quantity::Unit;
use airtally_words::book::of_houses;
use airtally_words::letter::enclosed;
use airtally_words::page as words;
use std::rc::Rc;

/// Does what the store tells: a word, then what belongs to it.
pub fn take(hands: &Hands, told: &str) {
    let (word, rest) = told.split_once('\n').unwrap_or((told, ""));
    let (first, text) = rest.split_once('\n').unwrap_or((rest, ""));
    match word {
        "kept" => hands.make(Move::Shelf(Told::Kept, rest.to_owned().into())),
        "list" => hands.make(Move::Shelf(Told::List, rest.to_owned().into())),
        "versions" => hands.make(Move::Shelf(Told::Versions, rest.to_owned().into())),
        "more" => hands.make(Move::Deeper(Topic::Kept(HouseId::of(first)))),
        "say" => say(hands, first, false),
        "shelf" => hands.make(Move::Explain(Topic::Houses)),
        "name" => hands.edit(Edit::Set(Field::HouseName, rest.to_owned(), Unit::Ratio)),
        "dropped" => open_file(hands, rest),
        "arrive" => arrive(hands),
        "lost" => hands.see(Seen::Elsewhere),
        "gone" => {
            hands.act(Action::Leave(clock::new_id()));
            arrive(hands);
            say(hands, "HouseRemoved", false);
        }
        _ => take_house(hands, word, first, text),
    }
}

/// The same for a house: with its id where it is that house, with the time where it is an old version.
fn take_house(hands: &Hands, word: &str, first: &str, text: &str) {
    let seen = if word == "elsewhere" { Seen::Elsewhere } else { Seen::Now };
    let text = if word == "copy" { first } else { text };
    if text.is_empty() {
        return hands.see(seen);
    }
    match (airtally_door::read_kept(text), word) {
        (Err(_), _) => begin(hands, House::new(), of_houses("Unreadable")),
        (Ok(house), "copy") => begin(hands, house, of_houses("CopyMade")),
        (Ok(house), "past") => hands.act(Action::See(Seen::Past(Rc::new(house), first.to_owned().into()))),
        (Ok(house), _) => hands.act(Action::Open(HouseId::of(first), house, seen)),
    }
}

/// Opens the text of a file, or the house in a page that was sent, as a house of its own; one that is none changes nothing.
pub fn open_file(hands: &Hands, text: &str) {
    match airtally_door::read(enclosed(text).unwrap_or(text)) {
        Ok(house) => begin(hands, house, words::FILE_OPENED),
        Err(refusal) => {
            hands.make(Move::Menu(false));
            let said = words::file_refused(&refusal.path, &refusal.detail);
            hands.make(Move::Say(Said { words: said.into(), undo: false }));
        }
    }
}

/// Another house in place of this one, which stays on the shelf.
pub fn begin(hands: &Hands, house: House, words: &'static str) {
    hands.act(Action::Begin(clock::new_id(), house));
    arrive(hands);
    hands.make(Move::Say(Said { words: words.into(), undo: true }));
}

/// To the top of what has changed as a whole.
fn arrive(hands: &Hands) {
    hands.make(Move::Menu(false));
    hands.make(Move::CloseSheet);
    hands.make(Move::Open(None));
    hands.make(Move::Aim(MAIN.to_owned()));
}

/// Says something of the book; with `undo` it can be taken back.
pub fn say(hands: &Hands, words: &str, undo: bool) {
    hands.make(Move::Say(Said { words: of_houses(words).into(), undo }));
}

/// Narrows the list to names that hold some words.
pub fn find(hands: &Hands, wanted: String) {
    store::ask("find", HouseId(0), &wanted);
    hands.make(Move::Shelf(Told::Wanted, wanted.into()));
}
