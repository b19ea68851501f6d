//! Fields: what they are called and what to type.

use crate::given;
use airtally::house::{Field, HouseField, RoomField};

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
        Field::Given(id) => label(given::name(id), "Empty: the registered value is used"),
    }
}

/// A field about the whole house.
pub const fn house_field(field: HouseField) -> Label {
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
        _ => found(field),
    }
}

/// A field of what is found on site.
const fn found(field: HouseField) -> Label {
    match field {
        HouseField::JoistDepth => label("Depth of the joists", "As it is, not as it is sold: a 2×10 is 9.25 in"),
        HouseField::JoistSpan => label("Free span of the joists", "From bearing to bearing"),
        HouseField::JoistClear => label("Clear between two joists", "From side to side"),
        HouseField::JoistNotch => label("Depth of a notch in a joist", "Empty: none"),
        HouseField::JoistNotchAt => label("Notch from the nearest bearing", "0 at the end of the joist"),
        HouseField::JoistNotchLength => label("Length of the notch", "Along the joist"),
        HouseField::StudDepth => label("Depth of the studs", "As it is: a 2×6 is 5.5 in; empty: no tube crosses one"),
        HouseField::StudNotch => label("Depth of a notch in a stud", "Empty: none"),
        HouseField::OtherFans => label("Other fans together", "Cooker hood, dryer, old fans, all running at once"),
        HouseField::LargestFans => label("The two largest of them", "Together, as the American standard counts"),
        HouseField::IntakeGround => label("Intake above ground", "To its lower edge; above the usual snow"),
        HouseField::IntakeSource => {
            label("Intake to the nearest foul air", "Vent, chimney, bin, street, parking: straight through the air")
        }
        HouseField::IntakeBelow => label("Intake below that", "How far the intake lies below it; minus: above"),
        HouseField::IntakeExhaust => label("Intake to own exhaust", "Straight through the air"),
        HouseField::ExhaustAbove => label("Exhaust above intake", "How far it lies above; minus: below"),
        HouseField::ExhaustOpening => {
            label("Exhaust to a window or door", "The nearest that opens; under IRC 2015 also those that do not")
        }
        HouseField::ExhaustOver => label("Exhaust above its top", "How far it lies above; minus: below"),
        HouseField::ExhaustBoundary => label("Exhaust to the boundary", "The nearest edge of the plot"),
        HouseField::ExhaustGround => label("Exhaust above ground", "To its lower edge; above the usual snow"),
        HouseField::IntakeBoundary => label("Intake to the boundary", "Or to another building on the plot"),
        HouseField::IntakeStreet => label("Intake to a street or parking", "Level, not along the slope"),
        HouseField::DryerOpening => label("Dryer outlet to an opening", "The nearest window, door or intake"),
        HouseField::LeakPressure => label("Pressure of the test", "As the gauge read"),
        HouseField::LeakSupply => label("Leak, supply side", "What the blower had to bring"),
        HouseField::LeakExtract => label("Leak, extract side", "What the blower had to bring"),
        HouseField::FloorArea
        | HouseField::Ceiling
        | HouseField::Ach50
        | HouseField::EnvelopeHeight
        | HouseField::WeatherFactor
        | HouseField::RunTime
        | HouseField::People => house_field(field),
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
        RoomField::SupplyRun => {
            label("Supply tube", "From the manifold to the room, leg by leg: 3.2 + 1.4; empty: not measured yet")
        }
        RoomField::SupplyBuilt | RoomField::ExtractBuilt => {
            label("It ran", "Length of one tube as pulled; legs may be added")
        }
        RoomField::SupplyTubes | RoomField::ExtractTubes => label("Tubes pulled", "Empty: as planned"),
        RoomField::ExtractRun => {
            label("Extract tube", "From the manifold to the room, leg by leg: 3.2 + 1.4; empty: not measured yet")
        }
    }
}
