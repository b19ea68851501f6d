//! The focus goes where it is aimed.

use crate::desk::{Aim, MAIN};
use crate::platform::page;
use gloo::timers::callback::Timeout;
use yew::prelude::*;

/// Moves the focus after everything has been drawn and a closing sheet has given its own focus back.
#[hook]
pub fn use_aim(aim: Aim) {
    use_effect_with(aim, |aim| {
        let at = aim.at.clone();
        let timer = (!at.is_empty()).then(|| {
            Timeout::new(0, move || {
                page::focus(&at);
                if at == MAIN {
                    page::scroll_to_top();
                }
            })
        });
        || drop(timer)
    });
}
