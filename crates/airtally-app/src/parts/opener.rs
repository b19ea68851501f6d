//! Opens a file that the person chooses.

use crate::platform::file;
use crate::ui::el::{el, tag, text};
use std::rc::Rc;
use web_sys::HtmlInputElement;
use yew::platform::spawn_local;
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// A button that asks for a file of these kinds and hands out its text.
pub fn opener(words: &'static str, kinds: &'static str, take: impl Fn(String) + 'static) -> Html {
    let take: Rc<dyn Fn(String)> = Rc::new(take);
    let chosen = Callback::from(move |event: Event| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            let take = Rc::clone(&take);
            spawn_local(async move {
                if let Some(text) = file::opened(&input).await {
                    take(text);
                }
            });
        }
    });
    let input = tag("input", "aloud").attr("type", "file").attr("accept", kinds);
    el("label", "button", [input.on(|| ListenerKind::onchange, chosen).html(), text(words)])
}
