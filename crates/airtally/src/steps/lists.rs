//! Lists that a step works through thing by thing: crossings and cables. And what was changed on site.

use super::StepKey;
use crate::facts::{Facts, RoomFacts};
use crate::id::{Item, RoomId, StepRule as R};
use crate::rules::Air;
use crate::runs::Runs;

/// A thing on the list of a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Listed {
    /// What its tick belongs to.
    pub key: StepKey,
    /// Tubes that go through it.
    pub tubes: u32,
    /// Whether it is ticked.
    pub done: bool,
}

/// Where ducts go through something that must be closed around them, from outside in and from the bottom up.
pub(super) fn crossings(facts: &Facts, runs: &Runs) -> Vec<Listed> {
    let storeys = || facts.rooms.iter().map(|room| room.storey);
    let (lowest, highest) = (storeys().min().unwrap_or(0), storeys().max().unwrap_or(0));
    let storey_of = |id| facts.rooms.iter().find(|room| room.id == id).map(|room| room.storey);
    let tubes = |storey| {
        let above = runs.runs.iter().filter(|run| storey_of(run.room).is_some_and(|own| own >= storey));
        above.fold(0_u32, |sum, run| sum.saturating_add(run.tubes.value))
    };
    let crossing = |item, tubes| listed(StepKey::house(R::CloseCrossings).with(item), tubes);
    let floors = (lowest..highest).map(|below| crossing(Item::Floor(below + 1), tubes(below + 1)));
    let ducts = [Item::OutdoorDuct, Item::ExhaustDuct].map(|duct| crossing(duct, 0));
    ducts.into_iter().chain(floors).collect()
}

/// The cables that are laid before the board goes up: a boost switch in every room that is drawn from, a humidity sensor
/// in the wet ones, the control panel, the isolator in sight of the unit.
pub(super) fn cables(facts: &Facts) -> Vec<Listed> {
    let of = |room: &RoomFacts, item| StepKey::room(R::LayCables, room.id).with(item);
    let boost = facts.drawn().map(|room| of(room, Item::BoostSwitch));
    let humidity = facts.drawn().filter(|room| !room.kind.is_kitchen()).map(|room| of(room, Item::HumiditySensor));
    let house = [Item::Panel, Item::Isolator].map(|item| StepKey::house(R::LayCables).with(item));
    boost.chain(humidity).chain(house).map(|key| listed(key, 0)).collect()
}

fn listed(key: StepKey, tubes: u32) -> Listed {
    Listed { key, tubes, done: false }
}

/// Tubes and length of a run as planned and as pulled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Change {
    /// The room.
    pub room: RoomId,
    /// Which manifold.
    pub air: Air,
    /// The number on that manifold.
    pub mark: u32,
    /// Length in metres, planned and pulled, as far as each is known.
    pub length: [Option<f64>; 2],
    /// Tubes, planned and pulled.
    pub tubes: [u32; 2],
}

/// What was pulled otherwise than planned, in the order of the runs.
pub fn changes(runs: &Runs) -> Vec<Change> {
    let built = runs.runs.iter().filter_map(|run| run.built.map(|built| (run, built)));
    let change = built.map(|(run, built)| Change {
        room: run.room,
        air: run.air,
        mark: run.mark,
        length: [built.planned, built.length].map(|length| length.map(|length| length.as_m())),
        tubes: [run.tubes.value, built.tubes],
    });
    change
        .filter(|change| {
            change.tubes[0] != change.tubes[1] || change.length[1].is_some() && change.length[0] != change.length[1]
        })
        .collect()
}
