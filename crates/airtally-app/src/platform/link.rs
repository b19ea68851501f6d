//! What makes and reads links, `www/link`: loaded when somebody does, asked by one word.

use super::page::element;
use js_sys::Promise;
use js_sys::futures::JsFuture;
use wasm_bindgen::prelude::*;

#[wasm_bindgen]
extern "C" {
    /// The element that the loader hangs it on.
    type Place;
    #[wasm_bindgen(method, catch)]
    fn link(this: &Place, word: &str, text: &str) -> Result<Promise, JsValue>;
}

/// Asks it; `None` when it does not come, or the device forbids what is asked.
pub async fn ask(word: &str, text: &str) -> Option<String> {
    let place: Place = element("page")?.unchecked_into();
    JsFuture::from(place.link(word, text).ok()?).await.ok()?.as_string()
}
