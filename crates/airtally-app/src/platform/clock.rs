//! The time of day, for names of things that are put aside and ids of new houses.

use crate::state::HouseId;

/// Now, as `2026-03-10T12:00:00.000Z`.
pub fn now() -> String {
    js_sys::Date::new_0().to_iso_string().into()
}

/// An id that no house of this device has.
pub fn new_id() -> HouseId {
    HouseId(js_sys::Date::now() as u64)
}
