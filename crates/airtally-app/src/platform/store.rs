//! The store of houses, `www/store`: loaded after the first paint, asked by one word. What comes of it is told by an event.

use super::page::element;
use crate::state::HouseId;
use wasm_bindgen::prelude::*;

#[wasm_bindgen]
extern "C" {
    /// The element that the store hangs itself on, and what it tells.
    type Place;
    #[wasm_bindgen(method, getter)]
    fn store(this: &Place) -> Option<Store>;
    #[wasm_bindgen(method, getter)]
    fn told(this: &Place) -> Option<String>;

    /// The store.
    type Store;
    #[wasm_bindgen(method)]
    fn ask(this: &Store, word: &str, id: f64, text: &str);
}

/// It has told something.
pub const TELLS: &str = "airtally.told";
/// What waits must be written at once.
pub const FLUSH: &str = "airtally.flush";

/// Asks the store; whether there is one.
pub fn ask(word: &str, id: HouseId, text: &str) -> bool {
    let store = place().and_then(|place| place.store());
    if let Some(store) = &store {
        store.ask(word, id.0 as f64, text);
    }
    store.is_some()
}

/// Whether it has come.
pub fn is_there() -> bool {
    place().and_then(|place| place.store()).is_some()
}

/// What it told last.
pub fn told() -> String {
    place().and_then(|place| place.told()).unwrap_or_default()
}

fn place() -> Option<Place> {
    Some(element("page")?.unchecked_into())
}
