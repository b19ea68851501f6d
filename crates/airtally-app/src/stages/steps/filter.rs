//! Which steps are in sight: of one visit or phase, of one room.

use crate::context::View;
use crate::desk::{InSight, Move, When};
use crate::ui::el::el;
use crate::ui::select::select;
use airtally::house::RoomId;
use airtally::steps::{Phase, Step, Visit};
use airtally_words::step::{phase, visit};
use airtally_words::{page as say, room};
use yew::prelude::*;

/// Whether a step is in sight.
pub fn is_shown(step: &Step, shown: InSight) -> bool {
    let when = match shown.when {
        When::Always => true,
        When::Visit(visit) => step.key.rule.phase().visit() == visit,
        When::Phase(phase) => step.key.rule.phase() == phase,
    };
    when && shown.room.is_none_or(|room| step.key.room == Some(room))
}

/// The two lists to choose from.
pub fn filter(view: &View, steps: &[Step]) -> Html {
    let shown = view.desk.shown;
    let visits = Visit::ALL.map(When::Visit).into_iter();
    let whens = [When::Always].into_iter().chain(visits).chain(Phase::ALL.map(When::Phase));
    let whens = whens.map(|when| (when_name(when), InSight { when, ..shown }));
    let rooms = rooms(view, steps).into_iter().map(|room| (room_name(view, room), InSight { room, ..shown }));
    let when = list(view, "show-when", say::SHOW_WHEN, whens);
    el("div", "filter", [when, list(view, "show-where", say::SHOW_WHERE, rooms)])
}

/// A list of what can be in sight.
fn list(view: &View, id: &str, label: &'static str, all: impl Iterator<Item = (AttrValue, InSight)>) -> Html {
    let (names, sights): (Vec<AttrValue>, Vec<InSight>) = all.unzip();
    let options = names.into_iter().zip(&sights).map(|(name, sight)| (name, *sight == view.desk.shown)).collect();
    let hands = view.hands.clone();
    let chosen = Callback::from(move |at: usize| {
        if let Some(sight) = sights.get(at) {
            hands.make(Move::Show(*sight));
        }
    });
    select(id.to_owned(), label, "", options, &chosen)
}

fn when_name(when: When) -> AttrValue {
    match when {
        When::Always => say::ALL_VISITS.into(),
        When::Visit(one) => visit(one).into(),
        When::Phase(one) => say::phase_of(phase(one)).into(),
    }
}

/// The rooms that have a step of their own, in the person's order.
fn rooms(view: &View, steps: &[Step]) -> Vec<Option<RoomId>> {
    let has_step = |id: &RoomId| steps.iter().any(|step| step.key.room == Some(*id));
    let rooms = view.page.house.rooms.iter().map(|room| room.id).filter(has_step);
    [None].into_iter().chain(rooms.map(Some)).collect()
}

fn room_name(view: &View, id: Option<RoomId>) -> AttrValue {
    id.map_or(say::ALL_ROOMS.into(), |id| room::name(&view.page.house, id).into())
}
