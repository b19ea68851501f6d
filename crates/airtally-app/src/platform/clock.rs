//! The time of day, for names of things that are put aside and ids of new houses, and the day, for paper.

use crate::state::HouseId;

/// Now, as `2026-03-10T12:00:00.000Z`.
pub fn now() -> String {
    js_sys::Date::new_0().to_iso_string().into()
}

/// An id that no house of this device has.
pub fn new_id() -> HouseId {
    HouseId(js_sys::Date::now() as u64)
}

/// The day where the person is, as `2026-03-10`.
pub fn today() -> String {
    let now = js_sys::Date::new_0();
    let here = now.get_time() - now.get_timezone_offset() * MINUTE;
    let text: String = js_sys::Date::new(&here.into()).to_iso_string().into();
    text.chars().take(DAY).collect()
}

/// Milliseconds.
const MINUTE: f64 = 60_000.0;
/// Letters before the time of day.
const DAY: usize = 10;
