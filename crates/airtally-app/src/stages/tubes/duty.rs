//! What the unit must give on each side: the card a unit is bought against.

use crate::context::View;
use crate::ui::drawing::drawing;
use crate::ui::el::{el, els, nodes, nothing, text};
use crate::ui::figure::Size;
use crate::ui::part::{part, soft};
use airtally::delivery::Side;
use airtally::drawing;
use airtally::quantity::{Pressure, Unit};
use airtally::rules::{Air, Level};
use airtally::working::Traced;
use airtally_words::{drawing as words, format, page as say};
use yew::prelude::*;

/// The card; nothing while no air flows.
pub fn duty(view: &View) -> Html {
    let sides = &view.page.report.delivery().sides;
    if sides.is_empty() {
        return nothing();
    }
    let rows = sides.iter().flat_map(|side| {
        let row = |level, pressure| total(view, side.air, level, pressure);
        [row(Level::Normal, side.normal), row(Level::Boost, side.boost)]
    });
    let note = el("p", "", [soft(say::DUTY_NOTE)]);
    let ladders = sides.iter().map(|side| ladder(view, side));
    let body = [els("dl", "totals totals-pairs", rows), note, power(view), ladders.collect()];
    part(say::DUTY, nothing(), nodes(body))
}

/// What it costs to move the air.
fn power(view: &View) -> Html {
    let Some(power) = view.page.report.delivery().power else { return nothing() };
    let shown = format::value(power.specific.value, Unit::Ratio);
    let figure = view.figure(say::FAN_POWER, &shown, Size::Mid, power.specific.line);
    let watt_hours = format::text(power.whole.as_wh_per_m3(), Unit::Ratio);
    let limit = power.limit.map(|id| format::text(view.page.report.givens().value(id), Unit::Ratio));
    let words = say::fan_power(&watt_hours, power.class, limit.as_deref());
    el("div", "marks", [soft(say::FAN_POWER), figure, soft(words)])
}

/// Where the pressure of one side goes.
fn ladder(view: &View, side: &Side) -> Html {
    let page = &view.page;
    let said = |said| words::said(said, &page.house, page.display());
    let drawn = drawing(&drawing::ladder(side), say::LADDER_DESCRIBED, said);
    nodes([el("h3", "row-name", [text(say::ladder_of(side.air))]), drawn])
}

fn total(view: &View, air: Air, level: Level, pressure: Traced<Pressure>) -> Html {
    let flow = view.page.report.shares().at(level).total;
    let flow = format::flow(flow, view.page.display()).to_string();
    let name = say::duty_at(air, level, &flow);
    let shown = format::in_display(pressure.value.as_pa(), Unit::Pascal, view.page.display());
    let figure = view.figure(&name, &shown, Size::Row, pressure.line);
    el("div", "total", [el("dt", "", [text(name)]), el("dd", "", [figure])])
}
