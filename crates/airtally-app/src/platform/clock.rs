//! The time of day, for names of things that are put aside.

/// Now, as `2026-03-10T12:00:00.000Z`.
pub fn now() -> String {
    js_sys::Date::new_0().to_iso_string().into()
}

/// Now, as a count of milliseconds.
pub fn count() -> String {
    (js_sys::Date::now() as u64).to_string()
}
