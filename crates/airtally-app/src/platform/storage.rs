//! Text kept on this device. The one place that knows that storage may be full, forbidden or broken.

use gloo::utils::window;
use web_sys::Storage;

/// The kept text; `None` when nothing is kept or nothing may be read.
pub fn read(key: &str) -> Option<String> {
    storage()?.get_item(key).ok().flatten()
}

/// Keeps a text. `true` when it was read back as it was written.
pub fn write(key: &str, text: &str) -> bool {
    let Some(storage) = storage() else { return false };
    storage.set_item(key, text).is_ok() && storage.get_item(key).ok().flatten().as_deref() == Some(text)
}

/// What this tab holds, or else the tab that wrote last.
pub fn read_here(key: &str) -> Option<String> {
    here().and_then(|here| here.get_item(key).ok().flatten()).or_else(|| read(key))
}

fn here() -> Option<Storage> {
    window().session_storage().ok().flatten()
}

/// Forgets a text.
pub fn forget(key: &str) {
    if let Some(storage) = storage() {
        storage.remove_item(key).ok();
    }
}

/// The getter itself throws where storage is forbidden.
fn storage() -> Option<Storage> {
    window().local_storage().ok().flatten()
}
