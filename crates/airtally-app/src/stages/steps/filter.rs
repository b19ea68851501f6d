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
    let whens: Vec<When> =
        [When::Always].into_iter().chain(Visit::ALL.map(When::Visit)).chain(Phase::ALL.map(When::Phase)).collect();
    let options = whens.iter().map(|when| (when_name(*when), *when == shown.when)).collect();
    let when = select(
        "show-when".to_owned(),
        say::SHOW_WHEN,
        "",
        options,
        &choosing(view, move |shown, at| whens.get(at).map(|when| InSight { when: *when, ..shown })),
    );
    let rooms = rooms(view, steps);
    let options = rooms.iter().map(|room| (room_name(view, *room), *room == shown.room)).collect();
    let place = select(
        "show-where".to_owned(),
        say::SHOW_WHERE,
        "",
        options,
        &choosing(view, move |shown, at| rooms.get(at).map(|room| InSight { room: *room, ..shown })),
    );
    el("div", "filter", [when, place])
}

fn choosing(view: &View, chosen: impl Fn(InSight, usize) -> Option<InSight> + 'static) -> Callback<usize> {
    let (hands, shown) = (view.hands.clone(), view.desk.shown);
    Callback::from(move |at| {
        if let Some(shown) = chosen(shown, at) {
            hands.make(Move::Show(shown));
        }
    })
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
