//! The air of each bedroom by morning.

use crate::context::View;
use crate::parts::source::source_line;
use crate::ui::el::{el, els, maybe, nodes, nothing, text};
use crate::ui::figure::Size;
use crate::ui::gauge::gauge;
use crate::ui::icon::{Icon, icon};
use crate::ui::part::{part, row, soft};
use airtally::co2::{Night, Verdict};
use airtally::given::GivenId;
use airtally::house::Display;
use airtally::quantity::Unit;
use airtally_words::{format, label, page as say, room};
use yew::prelude::*;

/// The part.
pub fn nights(view: &View) -> Html {
    let page = &view.page;
    let nights = page.report.nights();
    if nights.is_empty() {
        return part(say::NIGHTS, nothing(), el("p", "soft small", [text(say::NO_NIGHTS)]));
    }
    let givens = page.report.givens();
    let limit = format::text(givens.value(GivenId::Co2Noticeable), Unit::PartPerMillion);
    let hours = format::text(givens.value(GivenId::NightHours), Unit::Hour);
    let source = page.report.line(nights[0].morning.line).map(|line| line.source);
    let note = el("p", "soft small", [text(say::nights_note(&hours, &limit))]);
    let list = els("ol", "ledger", nights.iter().map(|night| night_row(view, night)));
    part(say::NIGHTS, nothing(), nodes([note, list, maybe(source.map(source_line))]))
}

fn night_row(view: &View, night: &Night) -> Html {
    let page = &view.page;
    let name = room::name(&page.house, night.room);
    let sign = icon(if night.verdict == Verdict::Fresh { Icon::Fine } else { Icon::Caution });
    let ppm = format::value(night.morning.value.as_ppm(), Unit::PartPerMillion);
    let figure = view.figure(&say::co2_in(&name), &ppm, Size::Row, night.morning.line);
    let people = say::sleepers(&format::number(night.sleepers, 1));
    let note = [&people, " · ", label::verdict(night.verdict)].concat();
    row(sign, text(name.clone()), text(note), figure, Some(under(view, night, &name)))
}

/// Air for a person is told in litres a second wherever metres are used.
const fn by_the_second(display: Display) -> Display {
    match display {
        Display::CubicFeet => Display::CubicFeet,
        Display::CubicMetres | Display::Litres => Display::Litres,
    }
}

fn under(view: &View, night: &Night, name: &str) -> Html {
    let givens = view.page.report.givens();
    let (limit, end) = (givens.value(GivenId::Co2Noticeable), givens.value(GivenId::Co2Unacceptable));
    let each = format::flow(night.per_sleeper.value, by_the_second(view.page.display()));
    let changes = format::value(night.air_change.value.as_per_hour(), Unit::PerHour);
    let each = view.figure(&say::per_sleeper_in(name), &each, Size::Mid, night.per_sleeper.line);
    let changes = view.figure(&say::changes_in(name), &changes, Size::Mid, night.air_change.line);
    let each = el("span", "nowrap", [each, soft(say::PER_SLEEPER)]);
    let changes = el("span", "nowrap", [changes, soft(say::AIR_CHANGES)]);
    nodes([gauge(night.morning.value.as_ppm(), limit, end), el("div", "row-figures", [each, changes])])
}
