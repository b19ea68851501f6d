//! JSON text to document and back, through the browser's own JSON.
//!
//! Everything that comes in is somebody else's text: its size is capped before it is read, its shape is checked while
//! it is read, and a refusal says what is wrong and where. Nothing is changed silently and nothing is half read.

use airtally::house::House;
use airtally::save::{self, File};
use js_sys::JSON;
use serde::Serialize;
use serde_wasm_bindgen::{Deserializer, Serializer};
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
    /// Where and why, in the words of whoever noticed; may be empty.
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
    /// The browser could not write the text.
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

/// The text of a house.
///
/// # Errors
/// [`Code::NotWritten`] when the browser gives no text, for want of memory for instance.
pub fn write(house: &House) -> Result<String, Refusal> {
    let refused = |detail: String| Refusal { code: Code::NotWritten, detail };
    let value =
        File::of(house).serialize(&Serializer::json_compatible()).map_err(|error| refused(error.to_string()))?;
    let text = JSON::stringify(&value).map_err(|error| refused(words_of(&error)))?;
    text.as_string().ok_or_else(|| refused(String::new()))
}

/// The house of a text.
///
/// # Errors
/// A [`Refusal`] with its code, and in `detail` where the text is wrong and why.
pub fn read(text: &str) -> Result<House, Refusal> {
    if text.len() > MOST_TEXT {
        return Err(Refusal { code: Code::TooLong, detail: String::new() });
    }
    let value = JSON::parse(text).map_err(|error| Refusal { code: Code::NotJson, detail: words_of(&error) })?;
    let house = save::read(Deserializer::from(value))
        .map_err(|error| Refusal { code: Code::NotAHouse, detail: error.to_string() })?;
    if house.rooms.len() > MOST_ROOMS {
        return Err(Refusal { code: Code::TooManyRooms, detail: String::new() });
    }
    Ok(house)
}

/// The message of a JavaScript error.
fn words_of(error: &JsValue) -> String {
    error.dyn_ref::<js_sys::Error>().map_or_else(String::new, |error| error.message().into())
}

#[cfg(test)]
mod tests;
