//! From a case to a house, typed field by field through edits as the page does it, and its report.

use super::case::{Case, Choose, RoomTyped, Text};
use airtally::edit::Edit;
use airtally::given::GivenId;
use airtally::house::{Choices, Credit, Display, Field, House, HouseField, KitchenDraw, Print, RoomField, RoomId};
use airtally::house::{RoomKind, Table, TubeSize, WetRooms};
use airtally::report::Report;
use airtally::rules::RuleSet;
use airtally::save::{self, File};

/// A case's house with its report.
pub struct Built {
    pub report: Report,
    /// What the case calls each room.
    pub rooms: Vec<(String, RoomId)>,
    typed: Vec<(Field, String)>,
}

impl Built {
    pub fn room(&self, label: &str) -> RoomId {
        let found = self.rooms.iter().find(|(name, _)| name == label);
        found.unwrap_or_else(|| panic!("no room is called \"{label}\"")).1
    }
}

pub fn build(case: &Case) -> Built {
    let mut typing = Typing::default();
    typing.house = Edit::Choose(choices(case)).apply(&typing.house);
    for (id, text) in &case.house {
        let field = if id == "name" { Field::HouseName } else { Field::House(house_field(id)) };
        typing.set(field, text);
    }
    for room in &case.rooms {
        (0..room.count).for_each(|_| typing.add(room));
    }
    for (key, text) in &case.settings {
        let id = GivenId::from_key(key).unwrap_or_else(|| panic!("no given is called \"{key}\""));
        typing.set(Field::Given(id), text);
    }
    Built { report: Report::of(typing.house), rooms: typing.rooms, typed: typing.typed }
}

/// Every text must stand in the house as it was typed, also after saving and opening again.
pub fn faults(built: &Built) -> Vec<String> {
    let house = built.report.house();
    let text = serde_json::to_string(&File::of(house)).expect("a house can be saved");
    let opened = save::read(&mut serde_json::Deserializer::from_str(&text)).expect("a saved house can be opened");
    let mut faults = Vec::new();
    if opened != **house {
        faults.push("saved and opened, it is another house".to_owned());
    }
    let changed = built.typed.iter().filter(|(field, text)| house.text(*field) != text);
    faults.extend(changed.map(|(field, text)| format!("{field:?} does not hold {text:?} any more")));
    faults
}

#[derive(Default)]
struct Typing {
    house: House,
    rooms: Vec<(String, RoomId)>,
    typed: Vec<(Field, String)>,
}

impl Typing {
    fn set(&mut self, field: Field, text: &Text) {
        let text = text.typed();
        let unit = field.unit(self.house.choices.display);
        self.house = Edit::Set(field, text.clone(), unit).apply(&self.house);
        self.typed.push((field, text));
    }

    fn add(&mut self, room: &RoomTyped) {
        let kind = by_id(RoomKind::ALL, RoomKind::id, &room.kind);
        self.house = Edit::AddRoom(kind).apply(&self.house);
        let id = self.house.rooms.last().expect("the room just added").id;
        self.house = Edit::SetOpen(id, room.open).apply(&self.house);
        if let Some(name) = &room.name {
            self.set(Field::RoomName(id), name);
        }
        for (field, text) in &room.typed {
            self.set(Field::Room(id, by_id(RoomField::ALL, RoomField::id, field)), text);
        }
        let label = room.name.as_ref().map_or_else(|| room.kind.clone(), Text::typed);
        self.rooms.push((self.next_label(label), id));
    }

    fn next_label(&self, label: String) -> String {
        let numbered = |number| if number == 1 { label.clone() } else { format!("{label} {number}") };
        let is_free = |label: &String| self.rooms.iter().all(|(other, _)| other != label);
        (1..).map(numbered).find(is_free).expect("there is always a next number")
    }
}

fn choices(case: &Case) -> Choices {
    let Choose { display, wet, kitchen, credit, table, print, tube } = &case.choose;
    Choices {
        rules: case.rules.first().map_or_else(RuleSet::default, |id| by_id(RuleSet::ALL, RuleSet::id, id)),
        display: display.as_ref().map_or_else(Display::default, |id| by_id(Display::ALL, Display::id, id)),
        wet: wet.as_ref().map(|id| by_id(WetRooms::ALL, WetRooms::id, id)),
        kitchen: kitchen.as_ref().map(|id| by_id(KitchenDraw::ALL, KitchenDraw::id, id)),
        credit: credit.as_ref().map_or_else(Credit::default, |id| by_id(Credit::ALL, Credit::id, id)),
        table: table.as_ref().map(|id| by_id(Table::ALL, Table::id, id)),
        print: print.as_ref().map_or_else(Print::default, |id| by_id(Print::ALL, Print::id, id)),
        tube: tube.as_ref().map_or_else(TubeSize::default, |id| by_id(TubeSize::ALL, TubeSize::id, id)),
        ..Choices::default()
    }
}

/// A field of the house by its id in files.
pub fn house_field(id: &str) -> HouseField {
    by_id(HouseField::ALL, HouseField::id, id)
}

/// One of a list by its id in files.
pub fn by_id<T: Copy>(all: impl IntoIterator<Item = T>, id_of: impl Fn(T) -> &'static str, id: &str) -> T {
    all.into_iter().find(|item| id_of(*item) == id).unwrap_or_else(|| panic!("nothing is called \"{id}\" here"))
}
