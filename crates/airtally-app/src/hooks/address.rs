//! The stage and the address after the `#` say the same.

use crate::context::Hands;
use crate::desk::{Move, Stage};
use crate::platform::page;
use airtally_words::page as say;
use gloo::events::EventListener;
use yew::prelude::*;

/// The tab says which stage of which house it shows.
#[hook]
pub fn use_title(stage: Stage, name: &str) {
    use_effect_with((stage, name.to_owned()), |(stage, name)| {
        page::set_title(&say::tab(say::stage(*stage as usize), name));
    });
}

/// Follows the address, and moves it when the stage moves.
#[hook]
pub fn use_address(stage: Stage, hands: &Hands) {
    use_effect_with(hands.clone(), |hands| {
        let hands = hands.clone();
        let listener = EventListener::new(&gloo::utils::window(), "hashchange", move |_| {
            if let Some(stage) = Stage::from_hash(&page::hash()) {
                hands.make(Move::Go(stage));
            }
        });
        || drop(listener)
    });
    use_effect_with(stage, |stage| {
        let shown = Stage::from_hash(&page::hash()).unwrap_or_default();
        if shown != *stage {
            page::set_hash(stage.id());
        }
    });
}
