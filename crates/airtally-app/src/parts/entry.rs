//! A field of the document: what is typed goes into the house as typed, and what is wrong with it stands beside it.

use super::defaults::default_of;
use crate::context::{Page, View};
use crate::desk::{Move, field_id};
use crate::ui::field::{self, field};
use airtally::edit::Edit;
use airtally::house::Field;
use airtally::issue::{Issue, Place, Severity, Trouble};
use airtally::quantity::{ParseError, Unit};
use airtally_words::{issue, label, page as say, reading};
use yew::prelude::*;

/// The field. `on_enter` is told when Enter is pressed.
pub fn entry(view: &View, at: Field, on_enter: Option<&Callback<()>>) -> Html {
    let (page, hands) = (&view.page, &view.hands);
    let house = &page.house;
    let unit =
        house.entry(at).map(|entry| entry.unit).or(view.desk.unit_of(at)).unwrap_or_else(|| at.unit(page.display()));
    let text = house.text(at).to_owned();
    let on_unit = {
        let (hands, text) = (hands.clone(), text.clone());
        Callback::from(move |place: usize| {
            if let Some(unit) = at.units().get(place) {
                hands.make(Move::Unit(at, *unit));
                hands.edit(Edit::Set(at, text.clone(), *unit));
            }
        })
    };
    let on_text = {
        let hands = hands.clone();
        Callback::from(move |text: String| hands.edit(Edit::Set(at, text, unit)))
    };
    let words = label::field(at);
    let trouble = page.issues.iter().find(|issue| issue.place == Place::Field(at));
    let (error, doubt) = remarks(trouble, page);
    let default = default_of(page, at);
    let placeholder = if error.is_some() { None } else { default.as_ref().map(|shown| shown.number.clone()) };
    field(field::Field {
        id: field_id(at),
        label: words.name.into(),
        hint: words.hint.into(),
        text: text.into(),
        placeholder: placeholder.unwrap_or_default().into(),
        number: at.limit().is_some(),
        units: units(at, unit),
        units_label: say::unit_of(words.name),
        error,
        doubt,
        readings: readings(trouble.map(|issue| issue.trouble), house.text(at)),
        on_text,
        on_unit,
        on_enter: on_enter.cloned(),
    })
}

fn remarks(trouble: Option<&Issue>, page: &Page) -> (Option<AttrValue>, Option<AttrValue>) {
    let Some(trouble) = trouble else { return (None, None) };
    let words = Some(AttrValue::from(said(trouble, page)));
    if trouble.severity() >= Severity::OutsideRule { (words, None) } else { (None, words) }
}

/// What is wrong and what would be accepted.
fn said(trouble: &Issue, page: &Page) -> String {
    let mut words = issue::beside(trouble, &page.house);
    let asks = matches!(trouble.trouble, Trouble::Unreadable(ParseError::Ambiguous { .. }));
    if let Some(hint) = issue::hint(trouble).filter(|_| !asks) {
        words.push(' ');
        words.push_str(&hint);
    }
    words
}

fn units(at: Field, taken: Unit) -> Vec<(AttrValue, bool)> {
    let own = at.limit().map_or("", |limit| limit.unit.symbol());
    match at.units() {
        [] if own.is_empty() => Vec::new(),
        [] => vec![(own.into(), true)],
        units => units.iter().map(|unit| (unit.symbol().into(), *unit == taken)).collect(),
    }
}

/// The two readings of a text like `1,234`: what the button says, and the text it writes.
pub fn readings(trouble: Option<Trouble>, typed: &str) -> Vec<(AttrValue, AttrValue)> {
    let asks = matches!(trouble, Some(Trouble::Unreadable(ParseError::Ambiguous { .. })));
    let texts = if asks { reading::both(typed) } else { None };
    texts.into_iter().flatten().map(|text| (say::reading(&text).into(), text.into())).collect()
}
