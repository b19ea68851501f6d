//! The gap under each door, and what the rule set's own opening would do there.

use crate::context::View;
use crate::parts::air::air_tag;
use crate::parts::source::source_line;
use crate::ui::el::{el, els, maybe, nodes, nothing, text};
use crate::ui::figure::Size;
use crate::ui::part::{part, row, soft};
use airtally::given::GivenId;
use airtally::quantity::Unit;
use airtally::rules::Air;
use airtally::transfer::{ByCode, DoorRule, Opening};
use airtally_words::{format, given, page as say, room};
use yew::prelude::*;

/// The part.
pub fn doors(view: &View) -> Html {
    let page = &view.page;
    let openings = page.report.openings();
    let Some(first) = openings.first() else { return nothing() };
    let givens = page.report.givens();
    let width = givens.measure(GivenId::DoorWidth);
    let width = format::in_display(width.value(), width.unit(), page.display()).to_string();
    let pressure = format::text(givens.value(GivenId::TransferPressure), Unit::Pascal);
    let source = page.report.line(first.area.line).map(|line| line.source);
    let note = el("p", "soft small", [text(say::doors_note(&width, &pressure))]);
    let list = els("ol", "ledger", openings.iter().map(|opening| door_row(view, opening)));
    part(say::DOORS, nothing(), nodes([note, by_rule(view), list, maybe(source.map(source_line))]))
}

/// What the chosen rule set has at inner doors.
fn by_rule(view: &View) -> Html {
    let Some(rule) = DoorRule::of(view.page.house.choices.rules) else {
        return el("p", "soft small", [text(say::NO_DOOR_RULE)]);
    };
    let value = |id: GivenId, words: &'static str| {
        let value = view.page.report.givens().value(id);
        let shown = format::in_display(value, id.given().unit, view.page.display());
        el("span", "", [view.given_figure(given::name(id), &shown, Size::Mid, id), soft(words)])
    };
    let [first, second] = say::door_rule(rule);
    let second = |id| value(id, second);
    let (first, second) = match rule {
        DoorRule::Area(area, bare) => (value(area, first), second(bare)),
        DoorRule::ForFlow(area, limit) => (value(area, first), second(limit)),
        DoorRule::Pressure(limit) => (value(limit, first), nothing()),
    };
    el("div", "marks", [first, second])
}

fn door_row(view: &View, opening: &Opening) -> Html {
    let page = &view.page;
    let name = room::name(&page.house, opening.room);
    let gap = format::small_length(opening.undercut.value, page.display());
    let area = format::opening(opening.area.value, page.display()).to_string();
    let flow = format::flow(opening.flow, page.display()).to_string();
    let figure = view.figure(&say::gap_under(&name), &gap, Size::Row, opening.undercut.line);
    let note = say::through_door(opening.air == Air::Supply, &flow, &area);
    let under = opening.code.map(|code| verdicts(view, &name, &code, &gap.to_string()));
    row(air_tag(opening.air), text(name), text(note), figure, under)
}

/// The rule set's own opening: what pressure it leaves, and whether that will do.
fn verdicts(view: &View, name: &str, code: &ByCode, needed: &str) -> Html {
    let gap = format::small_length(code.gap.value, view.page.display());
    let pressure = format::value(code.pressure.value.as_pa(), Unit::Pascal);
    let gap = view.figure(&say::rule_gap_under(name), &gap, Size::Mid, code.gap.line);
    let pressure = view.figure(&say::pressure_at(name), &pressure, Size::Mid, code.pressure.line);
    let gap = el("span", "nowrap", [gap, soft(say::GAP_BY_RULE)]);
    let pressure = el("span", "nowrap", [pressure, soft(say::PRESSURE_THEN)]);
    let limit = format::text(view.page.report.givens().value(GivenId::TransferPressure), Unit::Pascal);
    let verdict = el("p", "small", [text(say::verdicts(code.enough, &limit, code.gentle, needed))]);
    el("div", "verdict", [verdict, gap, pressure])
}
