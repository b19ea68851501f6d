//! Lists that a step works through item by item: crossings and cables.

use crate::facts::Facts;
use crate::id::RoomId;
use crate::rules::Air;
use crate::runs::Runs;

/// A place where a duct goes through something that must be closed around it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Crossing {
    /// The outdoor duct through the outside wall or roof.
    OutdoorDuct,
    /// The exhaust duct through the outside wall or roof.
    ExhaustDuct,
    /// The floor of a storey: so many tubes go to the rooms on it and above.
    Floor {
        /// The storey above the floor.
        storey: i8,
        /// Tubes of the rooms on it and above.
        tubes: u32,
    },
}

/// The crossings of a house, from outside in and from the bottom up.
pub fn crossings(facts: &Facts, runs: &Runs) -> Vec<Crossing> {
    let storeys = || facts.rooms.iter().map(|room| room.storey);
    let (lowest, highest) = (storeys().min().unwrap_or(0), storeys().max().unwrap_or(0));
    let storey_of = |id| facts.rooms.iter().find(|room| room.id == id).map(|room| room.storey);
    let tubes = |storey| {
        let above = runs.runs.iter().filter(|run| storey_of(run.room).is_some_and(|own| own >= storey));
        above.fold(0_u32, |sum, run| sum.saturating_add(run.tubes.value))
    };
    let floors = (lowest..highest).map(|below| Crossing::Floor { storey: below + 1, tubes: tubes(below + 1) });
    [Crossing::OutdoorDuct, Crossing::ExhaustDuct].into_iter().chain(floors).collect()
}

/// A cable that is laid before the board goes up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Cable {
    /// From a boost switch in a room that is drawn from.
    Boost(RoomId),
    /// From a humidity sensor in a bathroom or another wet room.
    Humidity(RoomId),
    /// From the control panel.
    Panel,
    /// From the isolator in sight of the unit, with the supply.
    Isolator,
}

/// The cables of a house.
pub fn cables(facts: &Facts) -> Vec<Cable> {
    let boost = facts.drawn().map(|room| Cable::Boost(room.id));
    let humidity = facts.drawn().filter(|room| !room.kind.is_kitchen()).map(|room| Cable::Humidity(room.id));
    boost.chain(humidity).chain([Cable::Panel, Cable::Isolator]).collect()
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
