//! What is doubtful in a house as it was typed.

use super::{Facts, Reader};
use crate::house::{Field, HouseField, NAME_FITS};
use crate::issue::{Issue, Place, Trouble};
use crate::quantity::{Measure, Unit};

impl Reader<'_> {
    pub(super) fn check_house(&mut self, facts: &Facts) {
        let count = facts.rooms.len();
        if count == 0 {
            self.issues.push(Issue::new(Place::House, Trouble::NoRooms));
        } else if facts.bedrooms() == 0 {
            self.issues.push(Issue::new(Place::House, Trouble::NoBedrooms));
        }
        if count > MANY_ROOMS {
            self.issues.push(Issue::new(Place::House, Trouble::ManyRooms { count: count as u32 }));
        }
        let rooms = facts.rooms_area_in(Unit::SquareMetre);
        if rooms > facts.floor_area_in(Unit::SquareMetre) * (1.0 + AREA_AGREES) {
            let place = Place::Field(Field::House(HouseField::FloorArea));
            self.issues.push(Issue::new(place, Trouble::RoomsExceedFloor { rooms }));
        }
    }

    pub(super) fn check_name(&mut self, field: Field, name: &str) {
        let length = name.chars().count();
        if length > NAME_FITS {
            let trouble = Trouble::LongName { length: length as u32, fits: NAME_FITS as u32 };
            self.issues.push(Issue::new(Place::Field(field), trouble));
        }
    }
}

/// More rooms than this are seldom one dwelling. Ours; no rule behind it.
const MANY_ROOMS: usize = 60;

/// Two areas agree within this share: about a decimetre on a usual room. Ours.
const AREA_AGREES: f64 = 0.01;

pub(super) fn differ(a: Measure, b: Measure) -> bool {
    match (a.value_in(Unit::SquareMetre), b.value_in(Unit::SquareMetre)) {
        (Some(a), Some(b)) => (a - b).abs() > AREA_AGREES * a,
        _ => false,
    }
}
