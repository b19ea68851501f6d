//! Ids of elements that the focus goes to.

use airtally::house::{Field, RoomId};

/// Id of the part of the page that changes with the stage.
pub const MAIN: &str = "main";
/// Id of the heading over the buttons that add rooms.
pub const ROOMS: &str = "add-a-room";

/// Id of a field's box.
pub fn field_id(field: Field) -> String {
    match field {
        Field::HouseName => "house-name".to_owned(),
        Field::House(field) => ["house-", field.id()].concat(),
        Field::RoomName(room) => ["room-", &room.0.to_string(), "-name"].concat(),
        Field::Room(room, field) => ["room-", &room.0.to_string(), "-", field.id()].concat(),
        Field::Price(part) => ["price-", part.id()].concat(),
        Field::Curve(curve) => ["curve-", curve.id()].concat(),
        Field::Given(id) => ["given-", &id.given().key.replace('.', "-")].concat(),
    }
}

/// Id of the row of the step that is open.
pub const OPEN_STEP: &str = "open-step";

/// Id of the button that opens a room's row.
pub fn row_id(room: RoomId) -> String {
    ["room-", &room.0.to_string()].concat()
}
