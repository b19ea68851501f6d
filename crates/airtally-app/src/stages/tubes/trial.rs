//! What comes in every room when something is not as it was planned.

use crate::context::View;
use crate::desk::{Fold, Move};
use crate::parts::air::air_tag;
use crate::parts::fold::fold;
use crate::ui::el::{el, els, nodes, nothing, tag, text};
use crate::ui::part::{part, soft};
use crate::ui::select::select;
use airtally::delivery::{Came, Mishap, Outcome, Trial, Tried};
use airtally::house::RoomId;
use airtally::quantity::Unit;
use airtally_words::{format, page as say, room};
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// The part.
pub fn trial(view: &View) -> Html {
    if view.page.report.delivery().sides.is_empty() {
        return nothing();
    }
    fold(view, Fold::Trial, say::TRIAL, say::TRIAL_NOTE, || {
        let trial = view.desk.trial;
        let outcome = view.page.report.tried(&trial);
        nodes([ticks(view, trial), mishap(view, trial), comes(view, &outcome)])
    })
}

fn ticks(view: &View, trial: Trial) -> Html {
    let [supply, extract] = trial.dirty;
    let pulled = view.page.report.runs().runs.iter().any(|run| run.built.is_some());
    let ticks = [
        tick(view, say::DIRTY_SUPPLY, supply, Trial { dirty: [!supply, extract], ..trial }),
        tick(view, say::DIRTY_EXTRACT, extract, Trial { dirty: [supply, !extract], ..trial }),
        tick(view, say::LEAKING, trial.leaks, Trial { leaks: !trial.leaks, ..trial }),
        match pulled {
            true => tick(view, say::PULLED_SO, trial.pulled, Trial { pulled: !trial.pulled, ..trial }),
            false => nothing(),
        },
    ];
    el("div", "", ticks)
}

fn tick(view: &View, words: &'static str, checked: bool, then: Trial) -> Html {
    let turned = view.hands.doing(move |hands| hands.make(Move::Try(then)));
    let tick = tag("input", "tick").attr("type", "checkbox").checked(checked).on(|| ListenerKind::onchange, turned);
    el("label", "check", [tick.html(), el("span", "", [text(words)])])
}

/// What has happened, and in which room.
fn mishap(view: &View, trial: Trial) -> Html {
    let rooms: Vec<RoomId> = rooms(view);
    let at = trial.mishap.map(|(room, _)| room).filter(|room| rooms.contains(room)).or(rooms.first().copied());
    let Some(at) = at else { return nothing() };
    let taken = trial.mishap.map(|(_, mishap)| mishap);
    let all = [None].into_iter().chain(Mishap::ALL.map(Some));
    let (names, trials): (Vec<_>, Vec<_>) = all
        .map(|mishap| {
            let words: AttrValue = mishap.map_or(say::NO_MISHAP, say::mishap).into();
            ((words, mishap == taken), Trial { mishap: mishap.map(|mishap| (at, mishap)), ..trial })
        })
        .unzip();
    let what = select("trial-what".to_owned(), say::MISHAP, "", names, &choosing(view, trials));
    let Some(mishap) = taken else { return el("div", "fields", [what]) };
    let (names, trials): (Vec<_>, Vec<_>) = rooms
        .into_iter()
        .map(|room| {
            let name: AttrValue = room::name(&view.page.house, room).into();
            ((name, room == at), Trial { mishap: Some((room, mishap)), ..trial })
        })
        .unzip();
    el("div", "fields", [what, select("trial-where".to_owned(), say::MISHAP_AT, "", names, &choosing(view, trials))])
}

fn choosing(view: &View, trials: Vec<Trial>) -> Callback<usize> {
    let hands = view.hands.clone();
    Callback::from(move |at: usize| trials.get(at).into_iter().for_each(|trial| hands.make(Move::Try(*trial))))
}

/// Rooms with a run, each once.
fn rooms(view: &View) -> Vec<RoomId> {
    let runs = view.page.report.runs();
    let has_run = |id: &RoomId| runs.runs.iter().any(|run| run.room == *id);
    view.page.house.rooms.iter().map(|room| room.id).filter(has_run).collect()
}

fn comes(view: &View, outcome: &Outcome) -> Html {
    let display = view.page.display();
    let verdict = match outcome.surplus {
        Some(surplus) => {
            let pressure = outcome.pressure.map(|pressure| format::text(pressure.as_pa(), Unit::Pascal));
            say::surplus(surplus, &format::flow(surplus.abs(), display).to_string(), pressure.as_deref())
        }
        None => String::new(),
    };
    let sides = outcome.sides.iter().map(|side| side_of(view, side)).collect();
    nodes([el("p", "margin-over", [text(verdict)]), sides, el("p", "", [soft(say::TRIAL_HOW)])])
}

fn side_of(view: &View, side: &Tried) -> Html {
    let display = view.page.display();
    let flow = |flow| format::flow(flow, display).to_string();
    let pressure = format::text(side.pressure.as_pa(), Unit::Pascal);
    let leaks = (side.leaks > airtally::quantity::Flow::ZERO).then(|| flow(side.leaks));
    let unit = say::unit_runs(&flow(side.unit), &pressure, leaks.as_deref(), side.weak);
    let rows = side.runs.iter().map(|came| row(view, side, *came));
    let caption = el("caption", "aloud", [text(say::TRIAL)]);
    let head = |class: &'static str, words: &'static str| tag("th", class).attr("scope", "col").around([text(words)]);
    let heads =
        [head("", say::ROOM), head("number", say::PLANNED), head("number", say::COMES), head("number", say::CHANGE)];
    let table = el("table", "codes", [caption, el("thead", "", [el("tr", "", heads)]), els("tbody", "", rows)]);
    part(say::tried_side(side.air), air_tag(side.air), nodes([el("p", "", [soft(unit)]), table]))
}

fn row(view: &View, side: &Tried, came: Came) -> Html {
    let display = view.page.display();
    let number =
        |label: &'static str, words: String| tag("td", "number").attr("data-label", label).around([text(words)]);
    let name = room::name(&view.page.house, came.room);
    let cells = [
        tag("th", "").attr("scope", "row").around([text(name)]),
        number(say::PLANNED, format::flow(came.planned, display).to_string()),
        number(say::COMES, format::flow(came.got, display).to_string()),
        number(say::CHANGE, say::change(came.change())),
        if came.off { el("td", "codes-why", [text(say::too_far(side.air, came.change() < 0.0))]) } else { nothing() },
    ];
    el("tr", if came.off { "is-off" } else { "" }, cells)
}
