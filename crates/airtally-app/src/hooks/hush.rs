//! A remark with a way back goes away by itself.

use crate::context::Hands;
use crate::desk::{Move, Said};
use crate::platform::events::after;
use yew::prelude::*;

/// How long such a remark stays, in milliseconds.
const STAYS: u32 = 12_000;

/// Puts the remark away after a while; one without a way back stays until it is put away.
#[hook]
pub fn use_hush(said: Option<Said>, hands: &Hands) {
    use_effect_with((said, hands.clone()), |(said, hands)| {
        let hands = hands.clone();
        let passing = said.as_ref().is_some_and(|said| said.undo);
        let timer = passing.then(|| after(STAYS, move || hands.make(Move::Hush)));
        || drop(timer)
    });
}
