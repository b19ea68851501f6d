//! What the typed house means: every entry read once, defaults filled in and marked, issues collected.

mod doubts;

use crate::curve::{Points, points};
use crate::entry::Entry;
use crate::given::{GivenId, Givens};
use crate::house::{Choices, Field, House, HouseField, Role, Room, RoomField, RoomId, RoomKind};
use crate::id::Curve;
use crate::issue::{Issue, Place, Trouble};
use crate::legs::Legs;
use crate::quantity::{Area, Length, Measure, Unit, Volume};

/// A house as numbers.
#[derive(Clone, Debug)]
pub struct Facts {
    /// Choices, copied from the house.
    pub choices: Choices,
    /// The rooms in the person's order.
    pub rooms: Vec<RoomFacts>,
    /// Usual ceiling height, typed or default.
    pub ceiling: Measure,
    /// Floor area typed for the house as a whole.
    pub floor_area: Option<Measure>,
    /// Air changes per hour at 50 Pa, if typed.
    pub ach50: Option<f64>,
    /// Height of the envelope, if typed.
    pub envelope_height: Option<Measure>,
    /// Weather and shielding factor, if typed.
    pub weather_factor: Option<f64>,
    /// Share of running time, %, if typed.
    pub run_time: Option<f64>,
    /// People, if typed.
    pub people: Option<f64>,
    /// What was found on site, as far as it was typed.
    pub found: Vec<(HouseField, Measure)>,
    /// Curves of the person's own, as far as they can be read.
    pub curves: Vec<(Curve, Points)>,
}

/// A room as numbers.
#[derive(Clone, Copy, Debug)]
pub struct RoomFacts {
    /// Its number.
    pub id: RoomId,
    /// What it is used for.
    pub kind: RoomKind,
    /// What the air does in it.
    pub role: Role,
    /// Storey.
    pub storey: i8,
    /// A kitchen that is open to a living space.
    pub open: bool,
    /// Floor area, in the unit it was typed in.
    pub area: Option<Measure>,
    /// Ceiling height, typed or default.
    pub height: Measure,
    /// People who sleep in it.
    pub sleepers: f64,
    /// The way of a supply tube and of an extract tube, as far as they were typed.
    pub legs: [Legs; 2],
    /// Supply and extract tubes as they were pulled: length of one, and how many.
    pub built: [(Option<Length>, Option<f64>); 2],
}

impl RoomFacts {
    /// Volume, when the area is known.
    pub fn volume(&self) -> Option<Volume> {
        Some(Area::of(self.area?)? * Length::of(self.height)?)
    }
}

impl Facts {
    /// Reads a house.
    pub fn of(house: &House, givens: &Givens, issues: &mut Vec<Issue>) -> Self {
        let reader = Reader { house, issues };
        reader.read(givens)
    }

    /// Floor area in square metres or square feet: as typed for the house, else the rooms together.
    ///
    /// When everything was typed in `unit`, nothing is converted, so 1 500 ft² stays 1 500 ft².
    pub fn floor_area_in(&self, unit: Unit) -> f64 {
        match self.floor_area.and_then(|area| area.value_in(unit)) {
            Some(area) => area,
            None => self.rooms_area_in(unit),
        }
    }

    /// The rooms' floor areas added up. Rooms that are never served do not count.
    pub fn rooms_area_in(&self, unit: Unit) -> f64 {
        let areas = self.rooms.iter().filter(|room| room.role != Role::Never).filter_map(|room| room.area);
        areas.filter_map(|area| area.value_in(unit)).fold(0.0, |sum, area| sum + area)
    }

    /// Volume in cubic metres: area × height of the rooms, the rest of a typed floor area at the usual height.
    pub fn volume(&self) -> Volume {
        let rooms = self.rooms.iter().filter(|room| room.role != Role::Never);
        let volume = rooms.filter_map(RoomFacts::volume).fold(Volume::ZERO, |sum, volume| sum + volume);
        let rest = self.floor_area_in(Unit::SquareMetre) - self.rooms_area_in(Unit::SquareMetre);
        let ceiling = Length::of(self.ceiling).unwrap_or(Length::ZERO);
        volume + Area::from_m2(rest.max(0.0)) * ceiling
    }

    /// Bedrooms entered.
    pub fn bedrooms(&self) -> u32 {
        self.rooms.iter().filter(|room| room.kind.is_bedroom()).count() as u32
    }

    /// People: as typed, else the sleepers together.
    pub fn persons(&self) -> f64 {
        self.people.unwrap_or_else(|| self.rooms.iter().fold(0.0, |sum, room| sum + room.sleepers))
    }

    /// What was found on site, in the unit it was typed in.
    pub fn found(&self, field: HouseField) -> Option<Measure> {
        self.found.iter().find(|(own, _)| *own == field).map(|(_, measure)| *measure)
    }

    /// A length that was found on site.
    pub fn found_length(&self, field: HouseField) -> Option<Length> {
        self.found(field).and_then(Length::of)
    }

    /// Points of a curve that was typed.
    pub fn curve(&self, curve: Curve) -> Option<&Points> {
        self.curves.iter().find(|(own, _)| *own == curve).map(|(_, points)| points)
    }

    /// Rooms that take supply air.
    pub fn supplied(&self) -> impl Iterator<Item = &RoomFacts> {
        self.rooms.iter().filter(|room| room.role.takes_supply())
    }

    /// Rooms that are drawn from.
    pub fn drawn(&self) -> impl Iterator<Item = &RoomFacts> {
        self.rooms.iter().filter(|room| room.role.takes_extract())
    }
}

struct Reader<'a> {
    house: &'a House,
    issues: &'a mut Vec<Issue>,
}

impl Reader<'_> {
    fn read(mut self, givens: &Givens) -> Facts {
        let ceiling = self.house_value(HouseField::Ceiling).unwrap_or_else(|| givens.measure(GivenId::Ceiling));
        let house = self.house;
        let rooms = house.rooms.iter().map(|room| self.room(room, ceiling, givens)).collect();
        let facts = Facts {
            choices: house.choices,
            rooms,
            ceiling,
            floor_area: self.house_value(HouseField::FloorArea),
            ach50: self.house_number(HouseField::Ach50),
            envelope_height: self.house_value(HouseField::EnvelopeHeight),
            weather_factor: self.house_number(HouseField::WeatherFactor),
            run_time: self.house_number(HouseField::RunTime),
            people: self.house_number(HouseField::People),
            found: HouseField::ON_SITE.iter().filter_map(|field| Some((*field, self.house_value(*field)?))).collect(),
            curves: self.curves(),
        };
        self.check_name(Field::HouseName, &house.name);
        self.check_house(&facts);
        facts
    }

    fn curves(&mut self) -> Vec<(Curve, Points)> {
        let house = self.house;
        let typed = house.curves.iter().filter(|(_, entry)| !entry.text.trim().is_empty());
        let read =
            |(curve, entry): &(Curve, Entry)| Some((*curve, self.taken(Field::Curve(*curve), points(*curve, entry))?));
        typed.filter_map(read).collect()
    }

    fn legs(&mut self, room: &Room, field: RoomField) -> Legs {
        let entry = room.entries.iter().find(|(key, _)| *key == field).map(|(_, entry)| entry);
        let Some(entry) = entry.filter(|entry| !entry.text.trim().is_empty()) else { return Legs::default() };
        let (at, limit) = (Field::Room(room.id, field), field.limit());
        let read = Legs::read(entry, limit);
        let remark = read.as_ref().ok().and_then(|legs| limit.remark(legs.measure(entry)?));
        self.remark(at, remark);
        self.taken(at, read).unwrap_or_default()
    }

    fn room(&mut self, room: &Room, ceiling: Measure, givens: &Givens) -> RoomFacts {
        self.check_name(Field::RoomName(room.id), &room.name);
        let default_sleepers = match room.kind {
            RoomKind::MainBedroom => givens.value(GivenId::SleepersMain),
            RoomKind::Bedroom => givens.value(GivenId::SleepersOther),
            _ => 0.0,
        };
        let sleepers = self.room_value(room, RoomField::Sleepers).and_then(|measure| measure.value_in(Unit::Count));
        if room.kind.role() == Role::Never {
            self.issues.push(Issue::new(Place::Room(room.id), Trouble::NeverServed));
        }
        RoomFacts {
            id: room.id,
            kind: room.kind,
            role: room.kind.role(),
            storey: room.storey,
            open: room.open.unwrap_or(room.kind == RoomKind::LivingKitchen),
            area: self.area(room),
            height: self.room_value(room, RoomField::Height).unwrap_or(ceiling),
            sleepers: sleepers.unwrap_or(default_sleepers),
            legs: [RoomField::SupplyRun, RoomField::ExtractRun].map(|field| self.legs(room, field)),
            built: [
                (RoomField::SupplyBuilt, RoomField::SupplyTubes),
                (RoomField::ExtractBuilt, RoomField::ExtractTubes),
            ]
            .map(|(length, tubes)| {
                let tubes = self.room_value(room, tubes).and_then(|tubes| tubes.value_in(Unit::Count));
                (self.room_value(room, length).and_then(Length::of), tubes)
            }),
        }
    }

    fn area(&mut self, room: &Room) -> Option<Measure> {
        let typed = self.room_value(room, RoomField::Area);
        let length = self.room_value(room, RoomField::Length);
        let width = self.room_value(room, RoomField::Width);
        let product = length.zip(width).and_then(|(length, width)| length.times(width));
        if let (Some(typed), Some(product)) = (typed, product)
            && doubts::differ(typed, product)
        {
            self.issues.push(Issue::new(Place::Room(room.id), Trouble::AreaTwice));
        }
        let area = typed.or(product);
        if area.is_none() && room.kind.role() != Role::Never {
            self.issues.push(Issue::new(Place::Room(room.id), Trouble::AreaMissing));
        }
        area
    }

    fn house_number(&mut self, field: HouseField) -> Option<f64> {
        self.house_value(field).and_then(|measure| measure.value_in(field.limit().unit))
    }

    fn house_value(&mut self, field: HouseField) -> Option<Measure> {
        let house = self.house;
        self.value(Field::House(field), house.entry(Field::House(field)))
    }

    fn room_value(&mut self, room: &Room, field: RoomField) -> Option<Measure> {
        let entry = room.entries.iter().find(|(key, _)| *key == field).map(|(_, entry)| entry);
        self.value(Field::Room(room.id, field), entry)
    }

    fn value(&mut self, field: Field, entry: Option<&Entry>) -> Option<Measure> {
        let entry = entry.filter(|entry| !entry.text.trim().is_empty())?;
        let limit = field.limit()?;
        let measure = self.taken(field, entry.read(limit))?;
        self.remark(field, limit.remark(measure));
        Some(measure)
    }

    /// What was read, or an issue at its field.
    fn taken<T>(&mut self, field: Field, read: Result<T, Trouble>) -> Option<T> {
        read.map_err(|trouble| self.issues.push(Issue::new(Place::Field(field), trouble))).ok()
    }

    fn remark(&mut self, field: Field, remark: Option<Trouble>) {
        self.issues.extend(remark.map(|trouble| Issue::new(Place::Field(field), trouble)));
    }
}
