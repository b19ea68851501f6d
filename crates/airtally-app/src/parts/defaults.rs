//! What counts where nothing is typed: shown faintly in the empty box, and in words below its label.

use crate::context::Page;
use airtally::house::{Field, HouseField, RoomField, RoomId};
use airtally::parts::{Group, Part};
use airtally::quantity::Unit;
use airtally_words::format::{Shown, in_display, value};
use airtally_words::room;

/// The value that counts while a field is empty; `None` where nothing does.
pub fn default_of(page: &Page, field: Field) -> Option<Shown> {
    match field {
        Field::HouseName => None,
        Field::RoomName(room) => Some(Shown { number: room::name(&page.house, room), unit: "" }),
        Field::House(field) => of_house(page, field),
        Field::Room(room, field) => of_room(page, room, field),
        Field::Given(id) => Some(value(id.given().value, id.given().unit)),
        Field::Curve(_) => None,
        // Every hour costs what the first kind of hour costs.
        Field::Price(part) => {
            let usual = page.house.text(Field::Price(Part::SettingOut));
            (part.group() == Group::Work).then(|| Shown { number: usual.to_owned(), unit: "" })
        }
    }
}

fn of_house(page: &Page, field: HouseField) -> Option<Shown> {
    let (facts, display) = (page.report.facts(), page.display());
    match field {
        HouseField::FloorArea => {
            let area = facts.rooms_area_in(display.area());
            (area > 0.0).then(|| value(area, display.area()))
        }
        HouseField::Ceiling => {
            let ceiling = page.report.givens().measure(airtally::given::GivenId::Ceiling);
            Some(in_display(ceiling.value(), ceiling.unit(), display))
        }
        HouseField::People => Some(value(facts.persons(), Unit::Count)),
        HouseField::RunTime => Some(value(HouseField::RunTime.limit().range.1, Unit::Percent)),
        _ => None,
    }
}

fn of_room(page: &Page, room: RoomId, field: RoomField) -> Option<Shown> {
    let facts = page.report.facts().rooms.iter().find(|facts| facts.id == room)?;
    match field {
        RoomField::Area => facts.area.map(|area| in_display(area.value(), area.unit(), page.display())),
        RoomField::Height => Some(in_display(facts.height.value(), facts.height.unit(), page.display())),
        RoomField::SupplyRun | RoomField::ExtractRun => {
            let usual = page.report.givens().measure(airtally::given::GivenId::RunLength);
            Some(in_display(usual.value(), usual.unit(), page.display()))
        }
        RoomField::Sleepers => Some(value(facts.sleepers, Unit::Count)),
        _ => None,
    }
}
