//! A field: label, hint, box, unit and error, tied together. What is typed is handed out as typed and never changed.

use super::chips::{Chip, chips};
use super::icon::{Icon, icon};
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// All of a field.
pub struct Field {
    /// Id of the box; the others follow from it.
    pub id: String,
    /// What the field is called.
    pub label: AttrValue,
    /// What to type, or what counts when nothing is typed.
    pub hint: AttrValue,
    /// The text as typed.
    pub text: AttrValue,
    /// Shown faintly in an empty box.
    pub placeholder: AttrValue,
    /// A number, typed on a number pad where there is one.
    pub number: bool,
    /// Units to choose from.
    pub units: Vec<Chip>,
    /// What the choice of units is called.
    pub units_label: String,
    /// What is wrong, in one sentence.
    pub error: Option<AttrValue>,
    /// What is doubtful, in one sentence.
    pub doubt: Option<AttrValue>,
    /// Readings of the text to choose from: what the button says, and the text it writes.
    pub readings: Vec<(AttrValue, AttrValue)>,
    /// Told the text on every key.
    pub on_text: Callback<String>,
    /// Told the place of a chosen unit.
    pub on_unit: Callback<usize>,
    /// Told when Enter is pressed.
    pub on_enter: Option<Callback<()>>,
}

/// Draws a field.
pub fn field(field: Field) -> Html {
    let wrong = field.error.is_some();
    html! {
        <div class={classes!("field", wrong.then_some("has-error"))}>
            <label class="field-label" for={field.id.clone()}>{ field.label.clone() }</label>
            if !field.hint.is_empty() { <p class="field-hint" id={part_id(&field, "-hint")}>{ field.hint.clone() }</p> }
            if let Some(error) = field.error.clone() {
                <p class="field-error" id={part_id(&field, "-error")}>{ icon(Icon::Caution) }<span>{ error }</span></p>
            }
            <div class="entry">{ entry(&field) }{ units(&field) }</div>
            if let Some(doubt) = field.doubt.clone() {
                <p class="field-doubt" id={part_id(&field, "-doubt")}>{ icon(Icon::Caution) }<span>{ doubt }</span></p>
            }
            if !field.readings.is_empty() { { ask(&field) } }
        </div>
    }
}

fn part_id(field: &Field, part: &str) -> String {
    [&field.id, part].concat()
}

fn entry(field: &Field) -> Html {
    let on_text = field.on_text.clone();
    let oninput = Callback::from(move |event: InputEvent| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            on_text.emit(input.value());
        }
    });
    let onkeydown = field.on_enter.clone().map(|on_enter| {
        Callback::from(move |event: KeyboardEvent| {
            if event.key() == "Enter" && !event.is_composing() {
                on_enter.emit(());
            }
        })
    });
    html! {
        <input class={classes!("entry-text", field.number.then_some("entry-number"))} id={field.id.clone()} type="text"
            inputmode={field.number.then_some("decimal")} autocomplete="off" enterkeyhint="done"
            value={field.text.clone()} placeholder={field.placeholder.clone()}
            aria-describedby={described_by(field)} aria-invalid={field.error.is_some().then_some("true")}
            {oninput} {onkeydown} />
    }
}

fn described_by(field: &Field) -> Option<String> {
    let parts =
        [(!field.hint.is_empty(), "-hint"), (field.error.is_some(), "-error"), (field.doubt.is_some(), "-doubt")];
    let ids: Vec<String> = parts.iter().filter(|(there, _)| *there).map(|(_, part)| part_id(field, part)).collect();
    (!ids.is_empty()).then(|| ids.join(" "))
}

fn units(field: &Field) -> Html {
    match field.units.as_slice() {
        [] => html! {},
        [(unit, _)] => html! { <span class="entry-unit">{ unit.clone() }</span> },
        units => chips(part_id(field, "-unit"), &field.units_label, units.to_vec(), &field.on_unit, ""),
    }
}

fn ask(field: &Field) -> Html {
    let reading = |(words, text): &(AttrValue, AttrValue)| {
        let text = text.to_string();
        let onclick = field.on_text.reform(move |_: MouseEvent| text.clone());
        html! { <button type="button" class="button" {onclick}>{ words.clone() }</button> }
    };
    html! { <div class="ask"><div class="buttons">{ for field.readings.iter().map(reading) }</div></div> }
}
