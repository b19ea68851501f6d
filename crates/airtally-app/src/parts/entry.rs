//! A field that is read as a value: what is typed goes out as typed, and what is wrong with it stands beside it.

use super::choice::options;
use super::defaults::default_of;
use crate::context::View;
use crate::desk::{Move, field_id};
use crate::ui::field::{self, Writing, field};
use airtally::edit::Edit;
use airtally::entry::Limit;
use airtally::house::Field;
use airtally::issue::{Place, Severity, Trouble};
use airtally::quantity::{ParseError, Unit};
use airtally_words::issue::{beside, hint_for};
use airtally_words::label::{self, Label};
use airtally_words::{page as say, reading};
use yew::prelude::*;

/// A field of the document. `on_enter` is told when Enter is pressed.
pub fn entry(view: &View, at: Field, on_enter: Option<&Callback<()>>) -> Html {
    typing(of_document(view, at, on_enter))
}

/// The same without its hint, among others like it.
pub fn plain(view: &View, at: Field) -> Html {
    let mut of = of_document(view, at, None);
    of.label.hint = if matches!(at, Field::Given(_)) { "" } else { of.label.hint };
    typing(of)
}

/// A field of the document in a table: its box and what is wrong or doubtful. `named_by` are the ids of the words that
/// name it.
pub fn cell(view: &View, at: Field, named_by: String) -> [Html; 2] {
    let mut of = of_document(view, at, None);
    of.label.hint = "";
    field::cell(&made(of), named_by)
}

fn of_document(view: &View, at: Field, on_enter: Option<&Callback<()>>) -> Typing {
    let (page, hands) = (&view.page, view.hands.clone());
    let house = &page.house;
    let unit =
        house.entry(at).map(|entry| entry.unit).or(view.desk.unit_of(at)).unwrap_or_else(|| at.unit(page.display()));
    let trouble = page.issues.iter().find(|issue| issue.place == Place::Field(at));
    Typing {
        id: field_id(at),
        label: label::field(at),
        text: house.text(at).to_owned(),
        usual: default_of(page, at).map(|shown| shown.number).unwrap_or_default(),
        unit,
        units: at.units(),
        limit: at.limit(),
        legs: at.has_legs(),
        trouble: trouble.map(|issue| (issue.trouble, beside(issue, house))),
        typed: Callback::from(move |(text, taken): (String, Unit)| {
            if taken != unit {
                hands.make(Move::Unit(at, taken));
            }
            hands.edit(Edit::Set(at, text, taken));
        }),
        on_enter: on_enter.cloned(),
    }
}

/// Any field that is read as a value or, without a limit, as a text.
pub struct Typing {
    /// Id of the box.
    pub id: String,
    /// Its name and hint.
    pub label: Label,
    /// The text as typed.
    pub text: String,
    /// What counts while it is empty.
    pub usual: String,
    /// The unit its chip shows.
    pub unit: Unit,
    /// The units its chips offer.
    pub units: &'static [Unit],
    /// What is accepted.
    pub limit: Option<Limit>,
    /// Whether it may be a sum of legs.
    pub legs: bool,
    /// What is wrong or doubtful, and the sentence for it.
    pub trouble: Option<(Trouble, String)>,
    /// Told the text and its unit when either changes.
    pub typed: Callback<(String, Unit)>,
    /// Told when Enter is pressed.
    pub on_enter: Option<Callback<()>>,
}

/// Draws it.
#[inline(never)]
pub fn typing(of: Typing) -> Html {
    field(made(of))
}

#[inline(never)]
fn made(of: Typing) -> field::Field {
    let Typing { unit, units, text, typed, .. } = of;
    let readings = of.trouble.as_ref().map(|(trouble, _)| readings(*trouble, &text)).unwrap_or_default();
    let stops = of.trouble.as_ref().is_some_and(|(trouble, _)| trouble.severity() >= Severity::OutsideRule);
    let said = of.trouble.map(|trouble| AttrValue::from(said(trouble, of.limit, readings.is_empty())));
    let (error, doubt) = if stops { (said, None) } else { (None, said) };
    let usual = if error.is_some() { String::new() } else { of.usual };
    let on_unit = {
        let (typed, text) = (typed.clone(), text.clone());
        Callback::from(move |at: usize| units.get(at).into_iter().for_each(|unit| typed.emit((text.clone(), *unit))))
    };
    field::Field {
        id: of.id,
        label: of.label.name.into(),
        hint: of.label.hint.into(),
        text: text.into(),
        placeholder: usual.into(),
        writing: of.limit.map_or(Writing::Letters, |limit| writing(limit, of.legs)),
        units: chips(of.limit, units, unit),
        units_label: say::unit_of(of.label.name),
        error,
        doubt,
        readings,
        on_text: typed.reform(move |text: String| (text, unit)),
        on_unit,
        on_enter: of.on_enter,
    }
}

fn writing(limit: Limit, legs: bool) -> Writing {
    match limit.range {
        _ if legs => Writing::Letters,
        (least, _) if least < 0.0 => Writing::Signed,
        _ => Writing::Number,
    }
}

/// What is wrong and, unless it is asked what was meant, what would be accepted.
fn said((trouble, mut words): (Trouble, String), limit: Option<Limit>, hints: bool) -> String {
    if let Some(hint) = hint_for(trouble, limit.map(|limit| limit.unit.kind())).filter(|_| hints) {
        words.push(' ');
        words.push_str(&hint);
    }
    words
}

fn chips(limit: Option<Limit>, units: &[Unit], taken: Unit) -> Vec<(AttrValue, bool)> {
    let own = limit.map_or("", |limit| limit.unit.symbol());
    match units {
        [] if own.is_empty() => Vec::new(),
        [] => vec![(own.into(), true)],
        units => options(units, taken, Unit::symbol),
    }
}

/// The two readings of a text like `1,234`: what the button says, and the text it writes.
fn readings(trouble: Trouble, typed: &str) -> Vec<(AttrValue, AttrValue)> {
    let asks = matches!(trouble, Trouble::Unreadable(ParseError::Ambiguous { .. }));
    let texts = if asks { reading::both(typed) } else { None };
    texts.into_iter().flatten().map(|text| (say::reading(&text).into(), text.into())).collect()
}
