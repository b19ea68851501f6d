//! A field: label, hint, box, unit and error, tied together. What is typed is handed out as typed and never changed.

use super::chips::{Chip, chips};
use super::el::{El, button, el, els, maybe, nodes, nothing, tag, text};
use super::icon::{Icon, icon};
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

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
    /// How it is typed.
    pub writing: Writing,
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

/// What a box is typed into with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Writing {
    /// All letters: words, or several numbers with signs between.
    Letters,
    /// A number that may be below nought: the number pads of some phones have no minus.
    Signed,
    /// A number, on a number pad where there is one.
    Number,
}

/// Draws a field.
pub fn field(field: Field) -> Html {
    let class = if field.error.is_some() { "field has-error" } else { "field" };
    let label = tag("label", "field-label").attr("for", field.id.clone()).around([text(field.label.clone())]);
    let hint = match field.hint.as_str() {
        "" => nothing(),
        _ => tag("p", "field-hint").attr("id", part_id(&field, "-hint")).around([text(field.hint.clone())]),
    };
    let [error, doubt] = remarks(&field);
    let entry = el("div", "entry", [input(&field).html(), units(&field)]);
    el("div", class, [label, hint, error, entry, doubt, ask(&field)])
}

/// The box of a field in a table, and what is wrong or doubtful for a line of its own. `named_by` are the ids of the
/// words that name it.
pub fn cell(field: &Field, named_by: String) -> [Html; 2] {
    let unit =
        field.units.iter().find(|(_, taken)| *taken).map(|(unit, _)| el("span", "entry-unit", [text(unit.clone())]));
    let entry = el("div", "entry", [input(field).attr("aria-labelledby", named_by).html(), maybe(unit)]);
    let [error, doubt] = remarks(field);
    [entry, nodes([error, doubt, ask(field)])]
}

fn part_id(field: &Field, part: &str) -> String {
    [&field.id, part].concat()
}

fn remarks(field: &Field) -> [Html; 2] {
    [remark(field, "field-error", "-error", &field.error), remark(field, "field-doubt", "-doubt", &field.doubt)]
}

fn remark(field: &Field, class: &'static str, part: &str, words: &Option<AttrValue>) -> Html {
    let Some(words) = words.clone() else { return nothing() };
    let words = el("span", "", [text(words)]);
    tag("p", class).attr("id", part_id(field, part)).around([icon(Icon::Caution), words])
}

fn input(field: &Field) -> El {
    let on_text = field.on_text.clone();
    let told = Callback::from(move |event: Event| {
        if let Some(input) = event.target_dyn_into::<HtmlInputElement>() {
            on_text.emit(input.value());
        }
    });
    let class = if field.writing == Writing::Letters { "entry-text" } else { "entry-text entry-number" };
    let pad = (field.writing == Writing::Number).then_some("decimal");
    let input = tag("input", class).attr("id", field.id.clone()).attr("type", "text").attr("autocomplete", "off");
    let input = input.attr("enterkeyhint", "done").attr_if("inputmode", pad);
    let input = input.value(field.text.clone()).attr("placeholder", field.placeholder.clone());
    let input = input.attr_if("aria-describedby", described_by(field));
    let input = input.attr_if("aria-invalid", field.error.is_some().then_some("true"));
    let input = input.on(|| ListenerKind::oninput, told);
    match field.on_enter.clone() {
        Some(on_enter) => input.on(|| ListenerKind::onkeydown, on_key("Enter", on_enter)),
        None => input,
    }
}

/// Told when one key is pressed, unless something inside took it or it belongs to a word that is still being put together.
pub fn on_key(key: &'static str, told: Callback<()>) -> Callback<Event> {
    Callback::from(move |event: Event| {
        if let Some(event) = event.dyn_ref::<KeyboardEvent>()
            && event.key() == key
            && !event.is_composing()
            && !event.default_prevented()
        {
            event.prevent_default();
            told.emit(());
        }
    })
}

fn described_by(field: &Field) -> Option<String> {
    let parts =
        [(!field.hint.is_empty(), "-hint"), (field.error.is_some(), "-error"), (field.doubt.is_some(), "-doubt")];
    let ids: Vec<String> = parts.iter().filter(|(there, _)| *there).map(|(_, part)| part_id(field, part)).collect();
    (!ids.is_empty()).then(|| ids.join(" "))
}

fn units(field: &Field) -> Html {
    match field.units.as_slice() {
        [] => nothing(),
        [(unit, _)] => el("span", "entry-unit", [text(unit.clone())]),
        units => {
            let (name, label) = (part_id(field, "-unit"), field.units_label.clone());
            chips("chips", name, label, units.to_vec(), &field.on_unit)
        }
    }
}

fn ask(field: &Field) -> Html {
    if field.readings.is_empty() {
        return nothing();
    }
    let reading = |(words, reading): &(AttrValue, AttrValue)| {
        let reading = reading.to_string();
        let pressed = field.on_text.reform(move |_: Event| reading.clone());
        button("button", pressed).around([text(words.clone())])
    };
    el("div", "ask", [els("div", "buttons", field.readings.iter().map(reading))])
}
