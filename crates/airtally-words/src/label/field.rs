//! Fields: what they are called and what to type.

use crate::book::book;
use crate::given;
use airtally::house::{Field, HouseField, RoomField};
use airtally::id::Curve;
use airtally::quantity::Unit;

/// The name of a field and a hint below it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Label {
    /// What the field is called.
    pub name: &'static str,
    /// What to type, or what counts when nothing is typed.
    pub hint: &'static str,
}

const fn label(name: &'static str, hint: &'static str) -> Label {
    Label { name, hint }
}

/// Any field.
pub fn field(field: Field) -> Label {
    match field {
        Field::HouseName => label("Name of the house", "Any text; it heads the papers"),
        Field::RoomName(_) => label("Name of the room", "Empty: it is called after its kind"),
        Field::House(field) => house_field(field),
        Field::Room(_, field) => room_field(field),
        Field::Price(part) => match part.unit() {
            Unit::Metre => label("Price of a metre", ""),
            Unit::Hour => label("Price of an hour", ""),
            _ => label("Price of one", ""),
        },
        Field::Curve(curve) => curve_field(curve),
        Field::Given(id) => label(given::name(id), "Empty: the registered value is used"),
    }
}

/// Points of a curve.
pub const fn curve_field(curve: Curve) -> Label {
    match curve {
        Curve::Fan => {
            label("Fan curve", "At full speed, outside the unit, flow: pressure, like 0: 300; 150: 240; 300: 90")
        }
        Curve::Tube => label("Tube, measured", "Flow: pressure of one metre, like 20: 1.1; 40: 3.9"),
        Curve::Valve => label("Valve, open", "Flow of the room: pressure, like 20: 4; 40: 16"),
        Curve::Setting => label("Valve, settings", "mm or turns: pressure at 30 m³/h, like 4: 60; 8: 22; 12: 9"),
    }
}

/// A field about the whole house. Those of what is found on site are in the book: nameless until it is open.
pub fn house_field(field: HouseField) -> Label {
    match field {
        HouseField::FloorArea => label("Floor area of the house", "Inside the air barrier; empty: the rooms together"),
        HouseField::Ceiling => label("Ceiling height", "The usual one; rooms may differ"),
        HouseField::Ach50 => label("Air changes at 50 Pa", "From the blower-door test, per hour; empty: not measured"),
        HouseField::EnvelopeHeight => {
            label("Height of the envelope", "From the lowest to the highest point of the air barrier above ground")
        }
        HouseField::WeatherFactor => {
            label("Weather and shielding factor", "From the standard's list, for the nearest weather station")
        }
        HouseField::RunTime => label("Running time", "Share of every 4 hours in which the system runs; empty: all day"),
        HouseField::People => label("People", "Empty: the sleepers together"),
        _ => book().map_or(label("", ""), |book| book.found(field)),
    }
}

/// A field about one room.
pub const fn room_field(field: RoomField) -> Label {
    match field {
        RoomField::Area => label("Floor area", "Or type length and width"),
        RoomField::Length => label("Length", "Inside, wall to wall"),
        RoomField::Width => label("Width", "Inside, wall to wall"),
        RoomField::Height => label("Ceiling height", "Empty: as the house"),
        RoomField::Sleepers => label("Sleepers", "Empty: two in a main bedroom, one in another"),
        RoomField::SupplyRun => label(
            "Supply tube",
            "From the manifold to the room, leg by leg: 3.2 + 1.4, 3 bends; empty: not measured yet",
        ),
        RoomField::SupplyBuilt | RoomField::ExtractBuilt => {
            label("It ran", "Length of one tube as pulled; legs may be added")
        }
        RoomField::SupplyTubes | RoomField::ExtractTubes => label("Tubes pulled", "Empty: as planned"),
        RoomField::ExtractRun => label(
            "Extract tube",
            "From the manifold to the room, leg by leg: 3.2 + 1.4, 3 bends; empty: not measured yet",
        ),
    }
}
