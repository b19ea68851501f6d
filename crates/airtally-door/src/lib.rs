//! JSON text to document and back; the text is taken apart by the browser's own JSON.
//!
//! Everything that comes in is somebody else's text: its size is capped before it is read, its shape is checked while
//! it is read, and a refusal says what is wrong and where. Nothing is changed silently and nothing is half read.

mod prices;
mod values;

pub use prices::{Prices, Refused, read_prices, write_prices};
pub use values::value;

use airtally::house::House;
use airtally::save::{self, File};
use js_sys::JSON;
use wasm_bindgen::{JsCast, JsValue};

/// Longest text that is read, in bytes: a house of 1 000 rooms with long names needs about half of it.
pub const MOST_TEXT: usize = 1 << 20;

/// Most rooms of a house that comes in.
pub const MOST_ROOMS: usize = 1000;

/// Why a text was not taken in, or a house could not be written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// What is wrong.
    pub code: Code,
    /// Where in the text: `house.rooms[3].name`; empty for the whole of it.
    pub path: String,
    /// Why, in the words of whoever noticed; may be empty.
    pub detail: String,
}

/// What is wrong with a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Code {
    /// Longer than [`MOST_TEXT`].
    TooLong,
    /// Not JSON.
    NotJson,
    /// JSON, but no house of a version that this program reads.
    NotAHouse,
    /// More than [`MOST_ROOMS`] rooms.
    TooManyRooms,
    /// The house could not be written.
    NotWritten,
}

impl Code {
    /// A stable code for other programs.
    pub const fn id(self) -> &'static str {
        match self {
            Self::TooLong => "too-long",
            Self::NotJson => "not-json",
            Self::NotAHouse => "not-a-house",
            Self::TooManyRooms => "too-many-rooms",
            Self::NotWritten => "not-written",
        }
    }
}

impl Refusal {
    fn new(code: Code, detail: String) -> Self {
        Self { code, path: String::new(), detail }
    }
}

/// The text of a house.
///
/// # Errors
/// [`Code::NotWritten`] when the house holds something that the file has no form for.
pub fn write(house: &House) -> Result<String, Refusal> {
    let text = JSON::stringify(&values::value(File::of(house).tree()))
        .map_err(|error| Refusal::new(Code::NotWritten, words_of(&error)))?;
    Ok(text.into())
}

/// The house of somebody's text.
///
/// # Errors
/// A [`Refusal`] with its code, and where the text is wrong and why.
pub fn read(text: &str) -> Result<House, Refusal> {
    if text.len() > MOST_TEXT {
        return Err(Refusal::new(Code::TooLong, "it is longer than any house".to_owned()));
    }
    let house = read_kept(text)?;
    if house.rooms.len() > MOST_ROOMS {
        return Err(Refusal::new(Code::TooManyRooms, "it has more than 1 000 rooms".to_owned()));
    }
    Ok(house)
}

/// The house of a text that this page has kept itself. The browser caps its size: a house that could be typed and kept
/// must never be refused for being large.
///
/// # Errors
/// A [`Refusal`] with its code, and where the text is wrong and why.
pub fn read_kept(text: &str) -> Result<House, Refusal> {
    let value = JSON::parse(text).map_err(|error| Refusal::new(Code::NotJson, cut_off(&error)))?;
    values::tree(&value).and_then(save::open).map_err(|refusal| Refusal {
        code: Code::NotAHouse,
        path: refusal.path,
        detail: refusal.why,
    })
}

/// Where the browser could not read on.
fn cut_off(error: &JsValue) -> String {
    ["it was cut off on its way, or airtally did not write it (", &words_of(error), ")"].concat()
}

/// The message of a JavaScript error.
fn words_of(error: &JsValue) -> String {
    error.dyn_ref::<js_sys::Error>().map_or_else(String::new, |error| error.message().into())
}

#[cfg(test)]
mod tests;
