//! Canada: the room count of CAN/CSA-F326 and Ontario 9.32.3.3. Calculated in L/s.
//!
//! Every room counts 5 L/s; the main bedroom and an unfinished basement count 10. Halls, stores and garages do not
//! count. The sum is the capacity the system must have; the programme rule built on it runs all day at 40–60 % of it.

use super::brief::flow;
use super::{Air, Brief, Follows, Level};
use crate::facts::RoomFacts;
use crate::formula::Formula;
use crate::given::GivenId;
use crate::house::{KitchenDraw, RoomId, RoomKind, WetRooms};
use crate::quantity::Unit::{Count, LitrePerSecond as LS};
use crate::source::{PRACTICE, Source};
use crate::working::{Origin, Term};

static ROOM_COUNT: Source =
    Source::published("CAN/CSA-F326 and Ontario Building Code", "M91; 2012", "9.32.3.3, room count");

/// Base flow of a room and of a main bedroom or basement, L/s.
const ROOM: f64 = 5.0;
const LARGE: f64 = 10.0;

/// What the room count asks of the house.
pub fn ask(brief: &mut Brief) {
    let main = main_bedroom(brief);
    let (mut large, mut others) = (0.0, 0.0);
    for room in &brief.facts.rooms {
        let Some(base) = base_flow(room, main) else { continue };
        match (base == LARGE, room.kind) {
            (true, _) => large += 1.0,
            // One space, two rooms: a living room and a kitchen.
            (false, RoomKind::LivingKitchen) => others += 2.0,
            (false, _) => others += 1.0,
        }
        if room.role.takes_supply() {
            brief.room((room.id, Air::Supply), Level::Normal, (base, LS), &ROOM_COUNT);
        }
    }
    let sum = LARGE * large + ROOM * others;
    let terms = [Term::new("n_10", large, Count, Origin::Counted), Term::new("n_5", others, Count, Origin::Counted)];
    let line = brief.working.record(Formula::CanadaRoomCount, (sum, LS), &ROOM_COUNT, &terms);
    brief.whole(Level::Normal, flow(sum, LS), line);
    brief.demand.away = Follows::Share(GivenId::CanadaLow);
    brief.split_supply(&ROOM_COUNT, |room| base_flow(room, main).unwrap_or(ROOM));
    local_exhaust(brief);
}

/// One bedroom is the main one: the first so named, else the one with most sleepers, else the first.
fn main_bedroom(brief: &Brief) -> Option<RoomId> {
    let bedrooms = || brief.facts.rooms.iter().filter(|room| room.kind.is_bedroom());
    let named = bedrooms().find(|room| room.kind == RoomKind::MainBedroom);
    let most = || bedrooms().reduce(|best, next| if next.sleepers > best.sleepers { next } else { best });
    named.or_else(most).map(|room| room.id)
}

fn base_flow(room: &RoomFacts, main: Option<RoomId>) -> Option<f64> {
    match room.kind {
        RoomKind::Basement | RoomKind::MainBedroom => Some(LARGE),
        _ if Some(room.id) == main => Some(LARGE),
        RoomKind::Hall | RoomKind::Store | RoomKind::Garage => None,
        _ => Some(ROOM),
    }
}

/// Kitchens and bathrooms, all day or on demand.
pub fn local_exhaust(brief: &mut Brief) {
    let wet = brief.facts.choices.wet.unwrap_or(WetRooms::Continuous);
    let draw = brief.facts.choices.kitchen.unwrap_or(KitchenDraw::System);
    let (level, kitchen, bath) = match wet {
        WetRooms::Continuous => (Level::Normal, GivenId::CanadaKitchenSteady, GivenId::CanadaBathroomSteady),
        WetRooms::OnDemand => (Level::Boost, GivenId::CanadaKitchen, GivenId::CanadaBathroom),
    };
    for room in brief.facts.drawn() {
        let id = match room.kind {
            RoomKind::Bathroom | RoomKind::Wc => bath,
            kind if kind.is_kitchen() && draw == KitchenDraw::System => kitchen,
            _ => continue,
        };
        brief.room_given((room.id, Air::Extract), level, id);
    }
    let givens = brief.givens;
    brief.split_extract(&PRACTICE, |room| match room.kind {
        RoomKind::Bathroom | RoomKind::Wc => givens.value(bath),
        kind if kind.is_kitchen() && draw == KitchenDraw::System => givens.value(kitchen),
        _ => ROOM,
    });
    if wet == WetRooms::Continuous {
        brief.demand.boost = Follows::Share(GivenId::BoostShare);
    }
}
