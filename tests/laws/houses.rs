//! Random houses: any rooms, areas, people, rule sets, units and choices, typed as people type.

use airtally::edit::Edit;
use airtally::house::{Building, Failing, Fans, Fuel, Joist, Manifolds, Outlets, Stud};
use airtally::house::{Choices, Credit, Display, Field, House, HouseField, KitchenDraw, Print, RoomField, RoomKind};
use airtally::house::{Table, TubeSize, WetRooms};
use airtally::quantity::Unit;
use airtally::rules::RuleSet;
use proptest::prelude::*;
use proptest::sample::select;

/// A house of up to 24 rooms.
pub fn house() -> impl Strategy<Value = House> {
    let rooms = prop::collection::vec(room(), 0..24);
    (choices(), rooms, fields()).prop_map(|(choices, rooms, fields)| {
        let mut house = Edit::Choose(choices).apply(&House::new());
        for (field, text) in fields {
            let field = Field::House(field);
            house = Edit::Set(field, text, field.unit(choices.display)).apply(&house);
        }
        rooms.into_iter().fold(house, |house, room| room.add(&house))
    })
}

/// A room as typed.
#[derive(Clone, Debug)]
pub struct Typed {
    pub kind: RoomKind,
    pub open: Option<bool>,
    pub storey: i8,
    pub texts: Vec<(RoomField, String)>,
}

impl Typed {
    pub fn add(self, house: &House) -> House {
        let mut house = Edit::AddRoom(self.kind).apply(house);
        let id = house.rooms.last().expect("the room just added").id;
        house = Edit::SetOpen(id, self.open).apply(&house);
        house = Edit::SetStorey(id, self.storey).apply(&house);
        self.texts.into_iter().fold(house, |house, (field, text)| {
            let field = Field::Room(id, field);
            Edit::Set(field, text, field.unit(house.choices.display)).apply(&house)
        })
    }
}

pub fn room() -> impl Strategy<Value = Typed> {
    (select(&RoomKind::ALL[..]), any::<Option<bool>>(), -1..3_i8, room_texts())
        .prop_map(|(kind, open, storey, texts)| Typed { kind, open, storey, texts })
}

fn room_texts() -> impl Strategy<Value = Vec<(RoomField, String)>> {
    let area = prop_oneof![
        8 => (80..6000_u32).prop_map(|n| format!("{}.{:02}", n / 100, n % 100)),
        2 => (10..400_u32).prop_map(|n| format!("{n} sq ft")),
        1 => Just(String::new()),
    ];
    let height = prop::option::of((210..400_u32).prop_map(|cm| format!("{cm} cm")));
    let sleepers = prop::option::of((0..5_u32).prop_map(|n| n.to_string()));
    let run = prop::option::of((10..200_u32).prop_map(|n| format!("{}.{} + 2 m", n / 10, n % 10)));
    (area, height, sleepers, run).prop_map(|(area, height, sleepers, run)| {
        let optional = [(RoomField::Height, height), (RoomField::Sleepers, sleepers), (RoomField::SupplyRun, run)];
        let typed = optional.into_iter().filter_map(|(field, text)| Some((field, text?)));
        [(RoomField::Area, area)].into_iter().chain(typed).collect()
    })
}

fn fields() -> impl Strategy<Value = Vec<(HouseField, String)>> {
    let hundredths = |n: u32| format!("{}.{:02}", n / 100, n % 100);
    let texts = (
        prop::option::weighted(0.3, (20..600_u32).prop_map(|n| format!("{n} m2"))),
        prop::option::of((10..1500_u32).prop_map(hundredths)),
        prop::option::of((20..150_u32).prop_map(|n| format!("{}.{} m", n / 10, n % 10))),
        prop::option::of((30..110_u32).prop_map(hundredths)),
        prop::option::weighted(0.3, (20..101_u32).prop_map(|n| n.to_string())),
        prop::option::weighted(0.3, (1..12_u32).prop_map(|n| n.to_string())),
    );
    texts.prop_map(|(area, ach50, height, factor, time, people)| {
        let all = [
            (HouseField::FloorArea, area),
            (HouseField::Ach50, ach50),
            (HouseField::EnvelopeHeight, height),
            (HouseField::WeatherFactor, factor),
            (HouseField::RunTime, time),
            (HouseField::People, people),
        ];
        all.into_iter().filter_map(|(field, text)| Some((field, text?))).collect()
    })
}

pub fn choices() -> impl Strategy<Value = Choices> {
    let of_rule = (
        select(&RuleSet::ALL[..]),
        prop::option::of(select(&WetRooms::ALL[..])),
        prop::option::of(select(&KitchenDraw::ALL[..])),
        prop::option::of(select(&Table::ALL[..])),
        select(&Credit::ALL[..]),
        select(&Print::ALL[..]),
    );
    let on_site = (
        select(&Building::ALL[..]),
        prop::option::of(select(&Joist::ALL[..])),
        prop::option::of(select(&Stud::ALL[..])),
        prop::option::of(select(&Fuel::ALL[..])),
        select(&Outlets::ALL[..]),
        select(&Failing::ALL[..]),
        select(&Fans::ALL[..]),
        select(&Manifolds::ALL[..]),
    );
    (of_rule, on_site, select(&Display::ALL[..]), select(&TubeSize::ALL[..])).prop_map(
        |(
            (rules, wet, kitchen, table, credit, print),
            (building, joist, stud, fuel, outlets, failing, fans, manifolds),
            display,
            tube,
        )| {
            Choices {
                rules,
                display,
                wet,
                kitchen,
                credit,
                table,
                print,
                tube,
                building,
                joist,
                stud,
                fuel,
                outlets,
                failing,
                fans,
                manifolds,
            }
        },
    )
}

/// A field of the house with a text typed into it, in its unit.
pub fn set(house: &House, field: Field, text: &str, unit: Unit) -> House {
    Edit::Set(field, text.to_owned(), unit).apply(house)
}
