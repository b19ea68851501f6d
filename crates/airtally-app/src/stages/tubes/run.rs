//! One room's run: its tubes, the reason for their number, speeds against limits, and the length to cut.

use crate::context::View;
use crate::desk::Move;
use crate::parts::air::air_tag;
use crate::parts::entry::entry;
use crate::ui::el::{button, el, maybe, nodes, nothing, tag, text};
use crate::ui::figure::Size;
use crate::ui::gauge::gauge;
use crate::ui::part::soft;
use crate::ui::tally::tally;
use airtally::house::{Field, RoomField};
use airtally::quantity::{Length, Pressure, Unit, Velocity};
use airtally::rules::{Air, Level};
use airtally::runs::Run;
use airtally::working::Traced;
use airtally_words::format::{self, Shown};
use airtally_words::{label, page as say, room};
use yew::prelude::*;

/// The row; what its run takes, how loud it is and how long, when it is open.
pub fn row(view: &View, run: &Run) -> Html {
    let name = room::name(&view.page.house, run.room);
    let count = run.tubes.value;
    let shown = Shown { number: format::count(count), unit: "" };
    let spoken = say::tubes_to(&name, run.air == Air::Supply);
    let figure = view.figure(&spoken, &shown, Size::Row, run.tubes.line);
    let figure = el("span", "row-tally", [tally(count, count, say::tubes(count)), figure]);
    let key = (run.air, run.room);
    let open = view.desk.run == Some(key);
    let turn = view.hands.doing(move |hands| hands.make(Move::Run((!open).then_some(key))));
    let opener = button("row-open", turn).attr("aria-expanded", open.to_string()).around([text(name.clone())]);
    let main = [el("h3", "row-name", [opener]), el("p", "row-note", [text(note(view, run))])];
    let seen = open || view.desk.paper;
    tag("li", if open { "row row-run is-open" } else { "row row-run" }).around([
        el("span", "row-mark", [air_tag(run.air)]),
        el("div", "row-main", main),
        el("div", "row-figure row-turn", [figure]),
        if seen { el("div", "row-under", [under(view, run, &name)]) } else { nothing() },
    ])
}

/// The mark with what one must know of the run at a glance.
fn note(view: &View, run: &Run) -> String {
    let display = view.page.display();
    let mark = [label::air_letter(run.air), &run.mark.to_string()].concat();
    let drop = view.page.report.delivery().drop(run.air, run.room);
    let takes = drop.map(|drop| format::in_display(drop.normal.value.as_pa(), Unit::Pascal, display).to_string());
    let index = drop.is_some_and(|drop| drop.index);
    let length = format::length(run.length(view.page.report.givens()), display).to_string();
    say::run_glance(&mark, &length, takes.as_deref(), index)
}

fn under(view: &View, run: &Run, name: &str) -> Html {
    let normal = speed(view, Level::Normal, run.speed_normal, run.limit_normal, run, name);
    let boost = match run.boost == run.normal {
        true => nothing(),
        false => speed(view, Level::Boost, run.speed_boost, run.limit_boost, run, name),
    };
    nodes([
        el("p", "", [soft(say::why_tubes(label::why(run.why)))]),
        normal,
        boost,
        pressure(view, run, name),
        sound(view, run, name),
        blown(view, run, name),
        length(view, run, name),
    ])
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

/// What the run takes, and what it must be throttled by.
fn pressure(view: &View, run: &Run, name: &str) -> Html {
    let Some(drop) = view.page.report.delivery().drop(run.air, run.room) else { return nothing() };
    let display = view.page.display();
    let pascal = |pressure: Pressure| format::in_display(pressure.as_pa(), Unit::Pascal, display);
    let own = pascal(drop.normal.value);
    let own = view.figure(&say::pressure_of(name), &own, Size::Mid, drop.normal.line);
    let throttle = match drop.index {
        true => soft(say::INDEX_RUN),
        false => {
            let figure =
                view.figure(&say::throttle_of(name), &pascal(drop.throttle.value), Size::Mid, drop.throttle.line);
            nodes([soft(say::THROTTLE), figure])
        }
    };
    let hole = maybe(drop.hole.map(|hole| {
        let shown = format::small_length(hole.value, display);
        nodes([soft(say::HOLE), view.figure(&say::hole_of(name), &shown, Size::Mid, hole.line)])
    }));
    let setting = maybe(drop.setting.map(|setting| {
        let shown = format::value(setting.value, Unit::Ratio);
        nodes([soft(say::SETTING), view.figure(&say::setting_of(name), &shown, Size::Mid, setting.line)])
    }));
    let built = maybe(drop.built.map(|flow| {
        let shown = format::flow(flow.value, display);
        nodes([soft(say::AS_PULLED), view.figure(&say::built_of(name), &shown, Size::Mid, flow.line)])
    }));
    let likely = maybe(drop.likely.map(|likely| {
        let (low, high) = (pascal(likely.low).number, pascal(likely.high).to_string());
        el("p", "", [soft([say::LIKELY, " ", &say::likely(&low, &high, likely.jumps)].concat())])
    }));
    nodes([el("div", "marks", [soft(say::RUN_TAKES), own, throttle, setting, hole, built]), likely])
}

/// What the room hears of it.
fn sound(view: &View, run: &Run, name: &str) -> Html {
    let heard = view.page.report.heard().iter().find(|heard| heard.air == run.air && heard.room == run.room);
    let Some(heard) = heard else { return nothing() };
    let at = |level: Level, sound: Traced<f64>| {
        let shown = format::value(sound.value, Unit::DecibelA);
        view.figure(&say::sound_at(label::level(level), name), &shown, Size::Mid, sound.line)
    };
    let boost = match heard.boost.value > heard.normal.value {
        true => nodes([soft(label::level(Level::Boost)), at(Level::Boost, heard.boost), soft(say::nc(heard.nc_boost))]),
        false => nothing(),
    };
    let limit = view.page.report.givens().value(heard.limit);
    let limit = soft(say::limit(&format::text(limit, Unit::DecibelA)));
    let normal = at(Level::Normal, heard.normal);
    let voice = maybe(heard.voice.filter(|voice| voice.level.value > AUDIBLE).map(|voice| {
        let from = room::name(&view.page.house, voice.from);
        let shown = format::value(voice.level.value, Unit::DecibelA);
        let figure = view.figure(&say::voice_in(name), &shown, Size::Mid, voice.level.line);
        el("div", "marks", [soft(say::voice(&from)), figure])
    }));
    nodes([el("div", "marks", [soft(say::HEARD), normal, soft(say::nc(heard.nc)), boost, limit]), voice])
}

/// dB(A): nobody hears less.
const AUDIBLE: f64 = 0.0;

/// How far its valve blows, and whether that is felt.
fn blown(view: &View, run: &Run, name: &str) -> Html {
    let blown = view.page.report.blown().iter().find(|blown| run.air == Air::Supply && blown.room == run.room);
    let Some(blown) = blown else { return nothing() };
    let figure = |throw: Traced<Length>| {
        let shown = format::length(throw.value, view.page.display());
        view.figure(&say::throw_of(name), &shown, Size::Mid, throw.line)
    };
    let (low, high) = (figure(blown.throw.low), figure(blown.throw.high));
    let felt = maybe(blown.felt.map(|felt| el("p", "", [soft(say::felt(felt))])));
    nodes([el("div", "marks", [soft(say::BLOWS), low, soft(say::TO), high]), felt])
}

/// The length, to see and to change: everything above follows.
fn length(view: &View, run: &Run, name: &str) -> Html {
    let at = Field::Room(run.room, if run.air == Air::Supply { RoomField::SupplyRun } else { RoomField::ExtractRun });
    nodes([cut(view, run, name), el("div", "run-length", [entry(view, at, None)])])
}

fn cut(view: &View, run: &Run, name: &str) -> Html {
    match run.cut {
        Some(cut) => {
            let shown = format::length(cut.value, view.page.display());
            let figure = view.figure(&say::cut_for(name), &shown, Size::Mid, cut.line);
            el("p", "speed-cut", [figure, soft(say::CUT_EACH)])
        }
        None => nothing(),
    }
}
