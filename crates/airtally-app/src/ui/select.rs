//! A list of which one is chosen.

use super::el::{El, el, nothing, tag, text};
use web_sys::HtmlSelectElement;
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// What can be chosen: what it says, and whether it is.
pub type Options = Vec<(AttrValue, bool)>;

/// A labelled select. The place of the chosen option comes out.
pub fn select(id: String, label: &'static str, hint: &'static str, options: Options, chosen: &Callback<usize>) -> Html {
    let hint_id = [&id, "-hint"].concat();
    let described = (!hint.is_empty()).then(|| hint_id.clone());
    let hint =
        if hint.is_empty() { nothing() } else { tag("p", "field-hint").attr("id", hint_id).around([text(hint)]) };
    let label = tag("label", "field-label").attr("for", id.clone()).around([text(label)]);
    let list = list("select", options, chosen).attr("id", id).attr_if("aria-describedby", described);
    el("div", "field", [label, hint, list.html()])
}

/// A select in a table. `named_by` are the ids of the words that name it.
pub fn cell(id: String, named_by: String, (options, chosen): (Options, Callback<usize>)) -> Html {
    list("select", options, &chosen).attr("id", id).attr("aria-labelledby", named_by).html()
}

/// A select without a visible label, for the top line.
pub fn pick(class: &'static str, label: &'static str, options: Options, chosen: &Callback<usize>) -> Html {
    el("label", class, [el("span", "aloud", [text(label)]), list("", options, chosen).html()])
}

fn list(class: &'static str, options: Options, chosen: &Callback<usize>) -> El {
    let chosen = chosen.clone();
    let told = Callback::from(move |event: Event| {
        let at = event.target_dyn_into::<HtmlSelectElement>().map(|select| select.selected_index());
        if let Some(at) = at.and_then(|at| usize::try_from(at).ok()) {
            chosen.emit(at);
        }
    });
    let option = |(words, selected): (AttrValue, bool)| tag("option", "").selected(selected).around([text(words)]);
    tag("select", class).on(|| ListenerKind::onchange, told).put(options.into_iter().map(option).collect())
}
