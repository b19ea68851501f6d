//! How wide the screen is.

use super::events::listen;
use gloo::events::EventListener;
use web_sys::MediaQueryList;

/// From here on two leaves and a sheet stand side by side; `layout.css` and `sheet.css` say the same.
const WIDE: &str = "(min-width: 64rem)";

/// Whether there is room for a sheet beside the page.
pub fn is_wide() -> bool {
    query().is_some_and(|query| query.matches())
}

/// Tells when that changes, for as long as the listener lives.
pub fn on_wide(told: impl Fn(bool) + 'static) -> Option<EventListener> {
    let query = query()?;
    let asked = query.clone();
    Some(listen(&query, "change", move || told(asked.matches())))
}

fn query() -> Option<MediaQueryList> {
    gloo::utils::window().match_media(WIDE).ok().flatten()
}
