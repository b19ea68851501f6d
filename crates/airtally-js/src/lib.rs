//! The calculation for other pages and for Node: a house file in, plain values out.
//!
//! This crate knows no screens and no DOM. What goes out is the plain tree of the file format, turned into the values of
//! JavaScript by `airtally-door`: texts, numbers, yes and no, `null`, lists and plain objects, so that nothing arrives as
//! a `Map`, a `BigInt` or `undefined`. The hand-written scripts and types around it are in `js`.

mod choices;
mod id;
mod issues;
mod lines;
mod refusal;
mod rooms;
mod shape;
mod tally;

use airtally::report::Report;
use wasm_bindgen::prelude::{JsValue, wasm_bindgen};

#[cfg(target_family = "wasm")]
#[global_allocator]
static ALLOCATOR: rlsf::SmallGlobalTlsf = rlsf::SmallGlobalTlsf::new();

/// The words that the working needs.
const SUMS: &str = include_str!(concat!(env!("OUT_DIR"), "/sums.txt"));

/// Everything the package says about the house of a file; with its working when asked.
///
/// # Errors
/// A plain object with `code`, `path`, `message` and `hint`; the script around it makes an `Error` of it.
#[wasm_bindgen]
pub fn tally(text: &str, working: bool) -> Result<JsValue, JsValue> {
    airtally_words::book::open(SUMS.to_owned());
    let house = airtally_door::read(text).map_err(|refusal| airtally_door::value(&refusal::tree(&refusal)))?;
    Ok(airtally_door::value(&tally::tree(&Report::of(house), working)))
}

/// What can be chosen in a house file, with its English names.
#[wasm_bindgen]
pub fn choices() -> JsValue {
    airtally_door::value(&choices::tree())
}

#[cfg(test)]
mod tests;
