//! What follows from a house, as plain values.

use crate::shape::{count, map, quantity, text};
use crate::{id, issues, lines, rooms};
use airtally::quantity::Unit;
use airtally::report::Report;
use airtally::rules::Level;
use airtally::save::Tree;
use airtally::shares::LevelShares;
use airtally_words::label;

/// The version of this shape. A field may be added without a new one; none changes or goes.
const SHAPE: u32 = 1;

/// Airflow asked for and set, shares and tubes by room, gaps, issues; lines of the working when asked.
pub fn tree(report: &Report, working: bool) -> Tree {
    let house = report.house();
    let rules = house.choices.rules;
    let rooms = rooms::tree(report);
    map([
        ("shape", count(SHAPE)),
        ("name", text(house.name.clone())),
        ("rules", map([("id", rules.id().into()), ("name", label::rules(rules).into())])),
        ("display", house.choices.display.id().into()),
        ("step", flow(report, report.shares().step.as_m3h(), None)),
        ("levels", map(Level::ALL.map(|level| (id::level(level), total(report, report.shares().at(level)))))),
        ("rooms", rooms),
        ("tubes", tubes(report)),
        ("issues", issues::tree(report)),
        ("working", if working { lines::tree(report) } else { Tree::List(Vec::new()) }),
    ])
}

fn total(report: &Report, level: &LevelShares) -> Tree {
    let required = level.required;
    map([
        ("required", flow(report, required.value.as_m3h(), Some(required.line))),
        ("total", flow(report, level.total.as_m3h(), Some(level.total_line))),
        ("governs", level.asked.first().map_or(Tree::Nothing, |asked| id::asks(asked.by).into())),
    ])
}

fn tubes(report: &Report) -> Tree {
    let runs = report.runs();
    map([
        ("size", runs.tube.id().into()),
        ("name", label::tube(runs.tube).into()),
        ("count", count(runs.all_tubes())),
        ("supplyPorts", count(runs.supply_ports.value)),
        ("extractPorts", count(runs.extract_ports.value)),
    ])
}

fn flow(report: &Report, m3h: f64, line: Option<airtally::working::LineId>) -> Tree {
    quantity(m3h, Unit::CubicMetrePerHour, report.house().choices.display, line)
}
