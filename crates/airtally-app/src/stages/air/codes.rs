//! The same house under every rule set, and other legal readings of the chosen one.

use crate::context::{Hands, Page, View};
use crate::ui::figure::{Size, figure};
use crate::ui::part::{part, row};
use airtally::edit::Edit;
use airtally::house::Choices;
use airtally::report::CodeTotals;
use airtally::rules::Level;
use airtally_words::{format, formula, label, page as say};
use yew::prelude::*;

/// Other legal readings of the chosen rule set; nothing when there are none.
pub fn readings(view: &View) -> Html {
    let page = &view.page;
    let readings = &page.report.demand().alternatives;
    if readings.is_empty() {
        return html! {};
    }
    let rows = readings.iter().map(|reading| {
        let name = formula::title(reading.formula);
        let shown = format::flow(reading.flow, page.display());
        let note = page.report.line(reading.line).map(|line| airtally_words::standing::cite(line.source));
        let figure = view.figure(name, &shown, Size::Row, reading.line);
        row(html! {}, html! { name }, html! { note.unwrap_or_default() }, figure, None)
    });
    part(
        say::READINGS,
        html! {},
        html! {
            <><p class="soft small">{ say::READINGS_NOTE }</p><ol class="ledger">{ for rows }</ol></>
        },
    )
}

/// The table of rule sets.
pub fn codes(view: &View) -> Html {
    let (page, hands) = (&view.page, &view.hands);
    let head = |level: Level| html! { <th scope="col" class="number">{ label::level(level) }</th> };
    let body = html! {
        <>
            <p class="soft small">{ say::CODES_NOTE }{ page.display().flow().symbol() }{ "." }</p>
            <table class="codes">
                <caption class="aloud">{ say::CODES }</caption>
                <thead><tr><th scope="col">{ say::RULES }</th>{ for Level::ALL.map(head) }</tr></thead>
                <tbody>{ for page.report.codes().iter().map(|code| code_row(page, hands, code)) }</tbody>
            </table>
        </>
    };
    part(say::CODES, html! {}, body)
}

fn code_row(page: &Page, hands: &Hands, code: &CodeTotals) -> Html {
    let chosen = code.rules == page.house.choices.rules;
    let choices = Choices { rules: code.rules, ..page.house.choices };
    let cell = |(level, flow): (Level, airtally::quantity::Flow)| {
        let shown = format::flow(flow, page.display());
        html! {
            <td class="number" data-label={label::level(level)}>{ figure(&shown.number, "", Size::Mid) }</td>
        }
    };
    html! {
        <tr class={chosen.then_some("is-chosen")}>
            <th scope="row">
                <button type="button" class="button-quiet" aria-pressed={chosen.to_string()}
                    onclick={hands.editing(Edit::Choose(choices))}>{ label::rules_short(code.rules) }</button>
                if chosen { <span class="small">{ " " }{ say::YOURS }</span> }
            </th>
            { for Level::ALL.into_iter().zip(code.required).map(cell) }
        </tr>
    }
}
