//! The window and its document: elements by id, focus, address, look, print.

use super::events::after;
use gloo::utils::{document, document_element, window};
use js_sys::futures::JsFuture;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement, Response, ScrollToOptions};

/// The element with this id.
pub fn element(id: &str) -> Option<Element> {
    document().get_element_by_id(id)
}

/// The id of the first element that this selector fits.
pub fn find(selector: &str) -> Option<String> {
    document().query_selector(selector).ok().flatten().map(|element| element.id())
}

/// Moves the focus to an element and brings it into sight. `false` when there is none.
pub fn focus(id: &str) -> bool {
    match element(id).and_then(|element| element.dyn_into::<HtmlElement>().ok()) {
        Some(element) => element.focus().is_ok(),
        None => false,
    }
}

/// The element that has the focus now, to give it back later.
pub fn focused() -> Option<HtmlElement> {
    document().active_element().and_then(|element| element.dyn_into().ok())
}

/// Whether an element is still part of the page.
pub fn is_there(element: &HtmlElement) -> bool {
    element.is_connected()
}

/// Shows the top of the page at once.
pub fn scroll_to_top() {
    let top = ScrollToOptions::new();
    top.set_top(0.0);
    window().scroll_to_with_scroll_to_options(&top);
}

/// Where an element begins, in pixels below the upper edge of the screen.
pub fn top(id: &str) -> Option<f64> {
    element(id).map(|element| element.get_bounding_client_rect().top())
}

/// Scrolls down by so many pixels.
pub fn scroll_by(pixels: f64) {
    window().scroll_by_with_x_and_y(0.0, pixels);
}

/// The address after and with the `#`.
pub fn hash() -> String {
    window().location().hash().unwrap_or_default()
}

/// Changes the address after the `#`.
pub fn set_hash(hash: &str) {
    // A page inside another document may be forbidden to change its address; everything else still works.
    window().location().set_hash(hash).ok();
}

/// Changes the address after the `#` and leaves no way back to what was there.
pub fn replace_hash(hash: &str) {
    window().location().replace(&["#", hash].concat()).ok();
}

/// The title in the tab.
pub fn set_title(title: &str) {
    document().set_title(title);
}

/// Sets or takes away the look of the whole page.
pub fn set_look(look: Option<&str>) {
    let root = document_element();
    let done = match look {
        Some(look) => root.set_attribute("data-look", look),
        None => root.remove_attribute("data-look"),
    };
    done.ok();
}

/// The attribute of the page that names the book.
pub const BOOK: &str = "data-book";

/// The attribute of the page that names the page in one file.
pub const SHELL: &str = "data-shell";

/// What was sent in this file: the digits that tell it from others, and the text of its house.
pub fn sent() -> Option<(String, String)> {
    let place = element("sent")?;
    let id = place.get_attribute("data-id").filter(|id| !id.is_empty())?;
    Some((id, place.text_content()?))
}

/// The text of a file that an attribute of the page names; `None` when it does not come.
pub async fn load(attribute: &str) -> Option<String> {
    let name = element("page")?.get_attribute(attribute)?;
    let answer: Response = JsFuture::from(window().fetch_with_str(&name)).await.ok()?.dyn_into().ok()?;
    let text = if answer.ok() { answer.text().ok()? } else { return None };
    JsFuture::from(text).await.ok()?.as_string()
}

/// Asks the browser to print, once what was asked of the page before has been drawn.
pub fn print() {
    after(0, || drop(window().print())).forget();
}
