//! The stage and the address after the `#` say the same.

use crate::desk::Stage;
use crate::platform::page;
use airtally_words::page as say;
use yew::prelude::*;

/// The tab says which stage of which house it shows.
#[hook]
pub fn use_title(stage: Stage, name: &str) {
    use_effect_with((stage, name.to_owned()), |(stage, name)| {
        page::set_title(&say::tab(say::stage(*stage as usize), name));
    });
}

/// Moves the address when the stage moves.
#[hook]
pub fn use_address(stage: Stage) {
    use_effect_with(stage, |stage| {
        let shown = Stage::from_hash(&page::hash()).unwrap_or_default();
        if shown != *stage {
            page::set_hash(stage.id());
        }
    });
}
