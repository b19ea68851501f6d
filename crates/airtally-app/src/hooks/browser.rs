//! What is asked of the browser itself: another address, and paper.

use crate::context::Hands;
use crate::desk::{Move, Stage};
use crate::platform::{events::listen, page};
use gloo::utils::window;
use yew::prelude::*;

/// Follows the browser. What its own menu prints is drawn between its word and its paper. What the page asks for must be
/// drawn before it asks, see [`page::print`].
#[hook]
pub fn use_browser(hands: &Hands) {
    use_effect_with(hands.clone(), |hands| {
        let moved = hands.clone();
        let address = listen(&window(), "hashchange", move || {
            if let Some(stage) = Stage::from_hash(&page::hash()) {
                moved.make(Move::Go(stage));
            }
        });
        let paper = [("beforeprint", true), ("afterprint", false)].map(|(event, paper)| {
            let hands = hands.clone();
            listen(&window(), event, move || hands.make(Move::Paper(paper)))
        });
        || drop((address, paper))
    });
}
