//! A list of which one is chosen.

use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// A labelled select. The place of the chosen option comes out.
pub fn select(
    id: String,
    label: &'static str,
    hint: &'static str,
    options: Vec<(AttrValue, bool)>,
    chosen: &Callback<usize>,
) -> Html {
    let described = (!hint.is_empty()).then(|| [&id, "-hint"].concat());
    html! {
        <div class="field">
            <label class="field-label" for={id.clone()}>{ label }</label>
            if let Some(hint_id) = described.clone() { <p class="field-hint" id={hint_id}>{ hint }</p> }
            <select class="select" {id} aria-describedby={described} onchange={onchange(chosen)}>{ for_options(options) }</select>
        </div>
    }
}

/// A select without a visible label, for the top line.
pub fn pick(
    label: &'static str,
    class: &'static str,
    options: Vec<(AttrValue, bool)>,
    chosen: &Callback<usize>,
) -> Html {
    html! {
        <label class={classes!("pick", class)}>
            <span class="aloud">{ label }</span>
            <select onchange={onchange(chosen)}>{ for_options(options) }</select>
        </label>
    }
}

fn onchange(chosen: &Callback<usize>) -> Callback<Event> {
    let chosen = chosen.clone();
    Callback::from(move |event: Event| {
        let at = event.target_dyn_into::<HtmlSelectElement>().map(|select| select.selected_index());
        if let Some(at) = at.and_then(|at| usize::try_from(at).ok()) {
            chosen.emit(at);
        }
    })
}

fn for_options(options: Vec<(AttrValue, bool)>) -> Html {
    options.into_iter().map(|(words, selected)| html! { <option {selected}>{ words }</option> }).collect()
}
