//! How far a plain nozzle on the wall blows in each supplied room, and whether that is felt. A ceiling valve spreads all
//! round and is felt less; its data say how much.

use crate::draught::{Between, Felt, JET, Jet, QUIET, THROWN};
use crate::facts::Facts;
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::house::RoomId;
use crate::quantity::{Area, Flow, Length, Unit};
use crate::rules::Air;
use crate::runs::Runs;
use crate::working::{Origin, Term, Traced, Working};

/// One room's valve at normal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Blown {
    /// The room.
    pub room: RoomId,
    /// To the end of the throw, for a jet that spreads and for one that holds together.
    pub throw: Between<Traced<Length>>,
    /// What is felt where it comes down: against [`QUIET`].
    pub felt: Option<Felt>,
}

/// Every supply valve that blows at all. The room counts as square and the ceiling as smooth.
pub fn blown(facts: &Facts, runs: &Runs, givens: &Givens, working: &mut Working) -> Vec<Blown> {
    let Some(opening) = Area::of(givens.measure(GivenId::ValveArea)).filter(|area| *area > Area::ZERO) else {
        return Vec::new();
    };
    let blowing = runs.side(Air::Supply).filter(|run| run.normal > Flow::ZERO);
    blowing
        .filter_map(|run| {
            let room = facts.rooms.iter().find(|room| room.id == run.room)?;
            let jet = Jet { speed: run.normal / opening, opening, attached: true };
            let throw = jet.throw(THROWN)?;
            let mut record = |length: Length, spread: f64| {
                let terms = [
                    Term::new("K", spread, Unit::Ratio, Origin::Printed(&JET)),
                    Term::new("v₀", jet.speed.as_ms(), Unit::MetrePerSecond, Origin::Counted),
                    givens.term("A₀", GivenId::ValveArea),
                ];
                let value = (length.as_m(), Unit::Metre);
                let line = working.record_for(Some(run.room), Formula::Throw, value, &JET, &terms);
                Traced { value: length, line }
            };
            let throw = Between { low: record(throw.low, 5.0), high: record(throw.high, 7.0) };
            let depth = room.area.and_then(Area::of).map(|area| Length::from_m(f64::sqrt(area.as_m2())));
            let felt = depth.zip(Length::of(room.height)).and_then(|(depth, height)| jet.felt(depth, height, QUIET));
            Some(Blown { room: run.room, throw, felt })
        })
        .collect()
}
