//! What is wrong or doubtful, with the place in the file.

use crate::id;
use crate::shape::{count, map, or_null, text};
use airtally::house::{Field, House, RoomId};
use airtally::issue::{Issue, Place};
use airtally::report::Report;
use airtally::save::Tree;
use airtally_words::issue;

/// The issues of everything that the package calculates, worst first.
pub fn tree(report: &Report) -> Tree {
    let house = report.house();
    Tree::List(report.issues_so_far().iter().map(|issue| one(issue, house)).collect())
}

fn one(issue: &Issue, house: &House) -> Tree {
    map([
        ("code", issue.code().into()),
        ("severity", id::severity(issue.severity()).into()),
        ("room", or_null(room_of(issue.place), |room| count(room.0))),
        ("field", or_null(field_of(issue.place), Tree::from)),
        ("path", text(path(issue.place, house))),
        ("text", text(issue::sentence(issue, house))),
        ("hint", or_null(issue::hint(issue), text)),
    ])
}

/// The room that a place is about.
pub fn room_of(place: Place) -> Option<RoomId> {
    match place {
        Place::Room(room) | Place::Field(Field::Room(room, _) | Field::RoomName(room)) => Some(room),
        Place::House | Place::Field(_) => None,
    }
}

/// What the file calls the field that a place is about.
pub fn field_of(place: Place) -> Option<&'static str> {
    let Place::Field(field) = place else { return None };
    Some(match field {
        Field::HouseName | Field::RoomName(_) => "name",
        Field::House(field) => field.id(),
        Field::Room(_, field) => field.id(),
        Field::Given(id) => id.given().key,
        Field::Price(part) => part.id(),
        Field::Curve(curve) => curve.id(),
    })
}

/// Where in the file: `house.rooms[3].entries[0]`.
fn path(place: Place, house: &House) -> String {
    let room = room_of(place).and_then(|id| house.rooms.iter().position(|room| room.id == id));
    let inside = room.map_or_else(String::new, |at| format!(".rooms[{at}]"));
    let last = match place {
        Place::Field(field) => within(field, house),
        Place::House | Place::Room(_) => String::new(),
    };
    ["house", &inside, &last].concat()
}

fn within(field: Field, house: &House) -> String {
    let (list, at) = match field {
        Field::HouseName | Field::RoomName(_) => return ".name".to_owned(),
        Field::House(own) => ("entries", house.entries.iter().position(|(field, _)| *field == own)),
        Field::Room(id, own) => {
            let room = house.room(id);
            ("entries", room.and_then(|room| room.entries.iter().position(|(field, _)| *field == own)))
        }
        Field::Given(own) => ("settings", house.settings.iter().position(|(id, _)| *id == own)),
        Field::Price(own) => ("prices", house.prices.iter().position(|(part, _)| *part == own)),
        Field::Curve(own) => ("curves", house.curves.iter().position(|(curve, _)| *curve == own)),
    };
    at.map_or_else(|| format!(".{list}"), |at| format!(".{list}[{at}]"))
}
