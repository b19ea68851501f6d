//! Whether a sheet stands beside the page.

use crate::platform::media;
use yew::prelude::*;

/// `true` on a screen that is wide enough for a sheet beside the page.
#[hook]
pub fn use_wide() -> bool {
    let wide = use_state_eq(media::is_wide);
    use_effect_with((), {
        let wide = wide.setter();
        move |()| {
            let listener = media::on_wide(move |now| wide.set(now));
            || drop(listener)
        }
    });
    *wide
}
