//! Files: given to the person, and taken from them.

use super::events::after;
use gloo::utils::document;
use js_sys::futures::JsFuture;
use js_sys::{Array, JsString};
use wasm_bindgen::JsCast;
use web_sys::{Blob, BlobPropertyBag, HtmlAnchorElement, HtmlInputElement, Url};

/// More bytes of a file are never read; what reads the text refuses a shorter one already.
const MOST: f64 = 2e6;

/// Offers a text as a file to keep.
pub fn save(name: &str, kind: &str, text: &str) {
    let parts = Array::of1(&JsString::from(text));
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    let Ok(blob) = Blob::new_with_str_sequence_and_options(&parts, &options) else { return };
    let Ok(address) = Url::create_object_url_with_blob(&blob) else { return };
    if let Some(link) = document().create_element("a").ok().and_then(|link| link.dyn_into::<HtmlAnchorElement>().ok()) {
        link.set_href(&address);
        link.set_download(name);
        link.click();
    }
    // Some browsers read it only after this turn.
    after(10_000, move || drop(Url::revoke_object_url(&address))).forget();
}

/// The text of the file that was chosen, once for each choice; `None` when there is none.
pub async fn opened(input: &HtmlInputElement) -> Option<String> {
    let file = input.files()?.get(0)?;
    input.set_value("");
    let begin = file.slice_with_f64_and_f64(0.0, MOST).ok()?;
    JsFuture::from(begin.text()).await.ok()?.as_string()
}
