//! What every room gets: its share of the air, its tubes, the gap under its door, its air by morning.

use crate::id;
use crate::shape::{count, map, or_null, quantity, text};
use airtally::co2::Night;
use airtally::house::{Display, Room};
use airtally::quantity::Unit;
use airtally::report::Report;
use airtally::rules::{Air, Level};
use airtally::runs::Run;
use airtally::save::Tree;
use airtally::transfer::Opening;
use airtally_words::{label, room};

/// All rooms, in the order of the file.
pub fn tree(report: &Report) -> Tree {
    Tree::List(report.house().rooms.iter().map(|room| one(report, room)).collect())
}

fn one(report: &Report, room: &Room) -> Tree {
    let display = report.house().choices.display;
    let opening = report.openings().iter().find(|opening| opening.room == room.id);
    let night = report.nights().iter().find(|night| night.room == room.id);
    map([
        ("id", count(room.id.0)),
        ("name", text(room::name(report.house(), room.id))),
        ("kind", room.kind.id().into()),
        ("storey", Tree::from(f64::from(room.storey))),
        ("role", id::role(room.kind.role()).into()),
        ("supply", side(report, room, Air::Supply)),
        ("extract", side(report, room, Air::Extract)),
        ("gap", or_null(opening, |opening| gap(opening, display))),
        ("morning", or_null(night, |night| morning(night, display))),
    ])
}

/// The air of one direction at each level, and its tubes; nothing where none goes that way.
fn side(report: &Report, room: &Room, air: Air) -> Tree {
    let display = report.house().choices.display;
    let flow = |m3h, line| quantity(m3h, Unit::CubicMetrePerHour, display, Some(line));
    let [away, normal, boost] = Level::ALL.map(|level| report.shares().at(level).share(room.id, air));
    let run = report.runs().side(air).find(|run| run.room == room.id);
    let (Some(away), Some(normal), Some(boost), Some(run)) = (away, normal, boost, run) else { return Tree::Nothing };
    map([
        ("away", flow(away.flow.as_m3h(), away.line)),
        ("normal", flow(normal.flow.as_m3h(), normal.line)),
        ("boost", flow(boost.flow.as_m3h(), boost.line)),
        ("least", quantity(normal.minimum.as_m3h(), Unit::CubicMetrePerHour, display, None)),
        ("run", tubes(run, display)),
    ])
}

fn tubes(run: &Run, display: Display) -> Tree {
    let speed = run.speed_normal;
    map([
        ("mark", text([label::air_letter(run.air), &run.mark.to_string()].concat())),
        ("tubes", count(run.tubes.value)),
        ("line", count(run.tubes.line.number())),
        ("why", id::why(run.why).into()),
        ("reason", label::why(run.why).into()),
        ("speed", quantity(speed.value.as_ms(), Unit::MetrePerSecond, display, Some(speed.line))),
    ])
}

fn gap(opening: &Opening, display: Display) -> Tree {
    let (area, undercut) = (opening.area, opening.undercut);
    map([
        ("height", quantity(undercut.value.as_mm(), Unit::Millimetre, display, Some(undercut.line))),
        ("area", quantity(area.value.as_cm2(), Unit::SquareCentimetre, display, Some(area.line))),
    ])
}

fn morning(night: &Night, display: Display) -> Tree {
    quantity(night.morning.value.as_ppm(), Unit::PartPerMillion, display, Some(night.morning.line))
}
