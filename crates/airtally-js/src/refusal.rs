//! Why a file was not taken in, for the person who wrote the program that made it.

use crate::shape::{map, text};
use airtally::save::Tree;
use airtally_door::{Code, MOST_ROOMS, MOST_TEXT, Refusal};

/// Code, path, sentence and hint.
pub fn tree(refusal: &Refusal) -> Tree {
    map([
        ("code", refusal.code.id().into()),
        ("path", text(refusal.path.clone())),
        ("message", text(message(refusal))),
        ("hint", text(hint(refusal.code))),
    ])
}

fn message(refusal: &Refusal) -> String {
    let what = match refusal.code {
        Code::TooLong => "The text is too long for a house.",
        Code::NotJson => "The text is not JSON.",
        Code::NotAHouse => "This is no house file.",
        Code::TooManyRooms => "The house has too many rooms.",
        Code::NotWritten => "The house could not be written.",
    };
    let parts = [&refusal.path, &refusal.detail].into_iter().filter(|part| !part.is_empty());
    let why: Vec<&str> = parts.map(String::as_str).collect();
    if why.is_empty() { what.to_owned() } else { [what, " ", &why.join(": ")].concat() }
}

fn hint(code: Code) -> String {
    match code {
        Code::TooLong => format!("Give at most {MOST_TEXT} bytes."),
        Code::NotJson => "Give the text of a file, or the object that JSON.parse makes of it.".to_owned(),
        Code::NotAHouse => "schema.json of this package says what a house file holds.".to_owned(),
        Code::TooManyRooms => format!("Give at most {MOST_ROOMS} rooms: one file is one dwelling."),
        Code::NotWritten => "Leave out what the file has no form for.".to_owned(),
    }
}
