//! One room's run: its tubes, the reason for their number, speeds against limits, and the length to cut.

use crate::context::View;
use crate::parts::air::air_tag;
use crate::ui::el::{el, nodes, nothing, text};
use crate::ui::figure::Size;
use crate::ui::gauge::gauge;
use crate::ui::part::{row as ledger_row, soft};
use crate::ui::tally::tally;
use airtally::quantity::Velocity;
use airtally::rules::{Air, Level};
use airtally::runs::Run;
use airtally::working::Traced;
use airtally_words::format::{self, Shown};
use airtally_words::{label, page as say, room};
use yew::prelude::*;

/// The row.
pub fn row(view: &View, run: &Run) -> Html {
    let name = room::name(&view.page.house, run.room);
    let count = run.tubes.value;
    let shown = Shown { number: format::count(count), unit: "" };
    let spoken = say::tubes_to(&name, run.air == Air::Supply);
    let figure = view.figure(&spoken, &shown, Size::Row, run.tubes.line);
    let figure = el("span", "row-tally", [tally(count, count, say::tubes(count)), figure]);
    let mark = [label::air_letter(run.air), &run.mark.to_string()].concat();
    let note = text(say::run_note(&mark, label::why(run.why)));
    ledger_row(air_tag(run.air), text(name.clone()), note, figure, Some(under(view, run, &name)))
}

fn under(view: &View, run: &Run, name: &str) -> Html {
    let normal = speed(view, Level::Normal, run.speed_normal, run.limit_normal, run, name);
    let boost = match run.boost == run.normal {
        true => nothing(),
        false => speed(view, Level::Boost, run.speed_boost, run.limit_boost, run, name),
    };
    nodes([normal, boost, cut(view, run, name)])
}

fn speed(view: &View, level: Level, speed: Traced<Velocity>, limit: Velocity, run: &Run, name: &str) -> Html {
    let display = view.page.display();
    let shown = format::velocity(speed.value, display);
    let most = say::limit(&format::velocity(limit, display).to_string());
    let end = run.limit_boost.max(run.limit_normal).max(run.speed_boost.value).max(run.speed_normal.value);
    let spoken = say::speed_at(label::level(level), name);
    el(
        "div",
        "speed",
        [
            soft(label::level(level)),
            view.figure(&spoken, &shown, Size::Mid, speed.line),
            gauge(speed.value.as_ms(), limit.as_ms(), end.as_ms()),
            soft(most),
        ],
    )
}

fn cut(view: &View, run: &Run, name: &str) -> Html {
    match run.cut {
        Some(cut) => {
            let shown = format::length(cut.value, view.page.display());
            let figure = view.figure(&say::cut_for(name), &shown, Size::Mid, cut.line);
            el("p", "speed-cut", [figure, soft(say::CUT_EACH)])
        }
        None => el("p", "", [soft(say::NO_LENGTH)]),
    }
}
