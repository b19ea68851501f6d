//! Local exhaust as the North American rules print it: bathrooms and kitchens, all day or on demand.

use super::brief::flow;
use super::{Air, Brief, Follows, Level};
use crate::facts::RoomFacts;
use crate::formula::Formula;
use crate::given::GivenId;
use crate::house::{KitchenDraw, RoomKind, WetRooms};
use crate::issue::Trouble;
use crate::quantity::Unit::{self, CubicMetre, CubicMetrePerHour, PerHour};
use crate::source::Source;
use crate::working::{Origin, Term};

/// What a rule prints for wet rooms.
pub struct LocalExhaust {
    /// Unit of the rates.
    pub unit: Unit,
    /// Bathroom, all day and on demand.
    pub bath: (f64, f64),
    /// Whether a room with a WC only counts as a bathroom.
    pub counts_wc: bool,
    /// Kitchen.
    pub kitchen: Kitchen,
    /// Who exhausts the kitchen unless the person says otherwise.
    pub draw: KitchenDraw,
    /// Who prints the bathrooms.
    pub baths: &'static Source,
    /// Who prints the kitchens.
    pub kitchens: &'static Source,
}

/// What a rule prints for kitchens.
pub enum Kitchen {
    /// A rate all day and on demand.
    Rates(f64, f64),
    /// Air changes per hour all day, in enclosed kitchens only; a rate on demand for exhaust that is not a hood.
    AirChanges(f64, f64),
}

/// Asks for each wet room and splits extract in the same proportions.
pub fn ask(brief: &mut Brief, local: &LocalExhaust) {
    let wet = brief.facts.choices.wet.unwrap_or(WetRooms::Continuous);
    let draw = brief.facts.choices.kitchen.unwrap_or(local.draw);
    for room in brief.facts.drawn() {
        match room.kind {
            RoomKind::Bathroom => bathroom(brief, local, room, wet),
            RoomKind::Wc if local.counts_wc => bathroom(brief, local, room, wet),
            kind if kind.is_kitchen() && draw == KitchenDraw::System => kitchen(brief, local, room, wet),
            _ => {}
        }
    }
    let other = flow(local.bath.0, local.unit);
    let asked = brief.demand.minimums(Air::Extract, &Level::ALL);
    brief.split_extract(local.baths, |room| asked.get(room.id).map_or(other, |least| least.flow).as_m3h());
    if wet == WetRooms::Continuous {
        brief.demand.boost = Follows::Share(GivenId::BoostShare);
    }
}

fn bathroom(brief: &mut Brief, local: &LocalExhaust, room: &RoomFacts, wet: WetRooms) {
    let (level, rate) = pick(wet, local.bath);
    brief.room((room.id, Air::Extract), level, (rate, local.unit), local.baths);
}

fn kitchen(brief: &mut Brief, local: &LocalExhaust, room: &RoomFacts, wet: WetRooms) {
    let place = (room.id, Air::Extract);
    let (changes, on_demand) = match local.kitchen {
        Kitchen::Rates(steady, on_demand) => {
            let (level, rate) = pick(wet, (steady, on_demand));
            return brief.room(place, level, (rate, local.unit), local.kitchens);
        }
        Kitchen::AirChanges(changes, on_demand) => (changes, on_demand),
    };
    if wet == WetRooms::OnDemand || room.open {
        if wet == WetRooms::Continuous {
            brief.say(Trouble::OpenKitchenContinuous);
        }
        return brief.room(place, Level::Boost, (on_demand, local.unit), local.kitchens);
    }
    let Some(volume) = room.volume() else { return };
    let value = (changes * volume.as_m3(), CubicMetrePerHour);
    let terms = [
        Term::new("n", changes, PerHour, Origin::Printed(local.kitchens)),
        Term::new("V", volume.as_m3(), CubicMetre, Origin::Counted),
    ];
    let line = brief.working.record_for(Some(room.id), Formula::KitchenAirChanges, value, local.kitchens, &terms);
    brief.room_line(place, Level::Normal, value, line);
}

fn pick(wet: WetRooms, (steady, on_demand): (f64, f64)) -> (Level, f64) {
    match wet {
        WetRooms::Continuous => (Level::Normal, steady),
        WetRooms::OnDemand => (Level::Boost, on_demand),
    }
}
