//! What the unit must deliver: the pressure of every run, which one takes most, what the others must be throttled by, and
//! what is really delivered where a run was pulled in another way.

mod built;
mod ducts;
mod lines;
mod mains;
mod plan;
mod power;
mod side;
mod trial;
mod unit;

#[cfg(test)]
mod tests;

pub use power::Power;
pub(crate) use trial::tried;
pub use trial::{Came, Mishap, Outcome, Trial, Tried};
pub use unit::Blower;

use crate::facts::Facts;
use crate::given::Givens;
use crate::house::RoomId;
use crate::issue::Issue;
use crate::quantity::{Flow, Length, Pressure};
use crate::rules::Air;
use crate::runs::Runs;
use crate::shares::Shares;
use crate::working::{Traced, Working};

/// Supply and extract.
#[derive(Clone, Debug)]
pub struct Delivery {
    /// Supply, then extract; a side without runs is left out.
    pub sides: Vec<Side>,
    /// What it costs to move the air; none unless both sides are there.
    pub power: Option<Power>,
}

/// One side of the unit.
#[derive(Clone, Debug)]
pub struct Side {
    /// Which.
    pub air: Air,
    /// What the unit must give outside itself at normal.
    pub normal: Traced<Pressure>,
    /// The same at boost.
    pub boost: Traced<Pressure>,
    /// What that is made of at normal, from outdoors inwards, and the whole.
    pub ladder: [(Rung, Pressure); 5],
    /// The runs, in the order of [`Runs`].
    pub runs: Vec<Drop>,
    /// Its fan.
    pub blower: Blower,
}

/// What takes pressure, from outdoors to the room or back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rung {
    /// The grille outdoors.
    Grille,
    /// The duct between grille and unit.
    Outside,
    /// The main with its silencer.
    Main,
    /// The run that takes most, with its valve.
    IndexRun,
    /// All of it.
    Whole,
}

/// What one run takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drop {
    /// The room.
    pub room: RoomId,
    /// Pressure with the valve open, at normal.
    pub normal: Traced<Pressure>,
    /// Between what that may really be; none where the tube was measured.
    pub likely: Option<Likely>,
    /// The same at boost.
    pub boost: Traced<Pressure>,
    /// Whether it takes most of its side at normal: it stays open, the others are throttled.
    pub index: bool,
    /// What must be added at normal, so that every run takes the same.
    pub throttle: Traced<Pressure>,
    /// The hole of a restrictor in each tube that does it, where there is something to add.
    pub hole: Option<Traced<Length>>,
    /// The setting of the valve that does it, where its settings were typed and one of them does.
    pub setting: Option<Traced<f64>>,
    /// The air that comes where the run was pulled in another way and nothing is set anew.
    pub built: Option<Traced<Flow>>,
}

/// Between which pressures a run lies, where no single number is honest.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Likely {
    /// As smooth as is published, and creeping where it may.
    pub low: Pressure,
    /// As rough as is published, and turbulent where it may.
    pub high: Pressure,
    /// Whether its air is so slow that tubes jump between creeping and turbulent.
    pub jumps: bool,
}

impl Delivery {
    /// The pressures of a house.
    pub fn of(
        house: (&Facts, &Givens),
        chain: (&Shares, &Runs),
        working: &mut Working,
        issues: &mut Vec<Issue>,
    ) -> Self {
        let found = Air::BOTH.map(|air| side::Making::new(air, house, chain, working, issues)?.side());
        let sides: Vec<Side> = found.into_iter().flatten().collect();
        let power = power::power(&sides, house.0, house.1, working);
        Self { sides, power }
    }

    /// One side, where it has runs.
    pub fn side(&self, air: Air) -> Option<&Side> {
        self.sides.iter().find(|side| side.air == air)
    }

    /// What a room's run takes.
    pub fn drop(&self, air: Air, room: RoomId) -> Option<&Drop> {
        self.side(air)?.runs.iter().find(|drop| drop.room == room)
    }
}
