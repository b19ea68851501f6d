//! The focus goes where it is aimed, and what was pressed stays under the thumb.

use crate::desk::{Aim, MAIN, OPEN_STEP};
use crate::platform::events::after;
use crate::platform::page;
use yew::prelude::*;

/// Moves the focus after everything has been drawn and a closing sheet has given its own focus back.
#[hook]
pub fn use_aim(aim: Aim) {
    use_effect_with(aim, |aim| {
        let Aim { at, stood, .. } = aim.clone();
        let timer = (!at.is_empty()).then(|| {
            after(0, move || {
                if let Some(stood) = stood {
                    return keep(&at, stood);
                }
                page::focus(&at);
                if at == MAIN {
                    page::scroll_to_top();
                }
            })
        });
        || drop(timer)
    });
}

/// The step that opens below the pressed one comes to where that one stood; otherwise the pressed one stays.
fn keep(pressed: &str, stood: f64) {
    let stood = stood.max(CLEAR);
    let now = page::top(pressed).unwrap_or(stood);
    let next = page::top(OPEN_STEP).unwrap_or(now);
    page::scroll_by(if next > now { next } else { now } - stood);
}

/// So far below the upper edge nothing covers a row, in pixels. A long step that was pressed may begin above it.
const CLEAR: f64 = 72.0;
