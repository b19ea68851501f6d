//! Words of the page of the house.

use super::rooms;

/// Over the empty start.
pub const START_TITLE: &str = "What comes in must go out";
/// What the drawing shows.
pub const START_SKETCH: &str = "A house cut open. Outdoor air enters the unit and goes on as supply air to a bedroom. \
    Extract air leaves the bathroom and goes through the unit out as exhaust air.";
/// In the drawing.
pub const SKETCH_BEDROOM: &str = "Bedroom";
/// In the drawing.
pub const SKETCH_BATH: &str = "Bath";
/// An air.
pub const OUTDOOR: &str = "Outdoor";
/// An air.
pub const SUPPLY: &str = "Supply";
/// An air.
pub const EXTRACT: &str = "Extract";
/// After "Outdoor".
pub const START_OUTDOOR: &str = "air takes up the warmth of the air that leaves.";
/// After "Supply".
pub const START_SUPPLY: &str = "goes by its own tubes to rooms where people sleep or sit.";
/// After "Extract".
pub const START_EXTRACT: &str = "is drawn from kitchen, bath and WC. In equals out.";
/// Begins a house.
pub const START_MINE: &str = "Start my house";
/// Opens the example.
pub const START_EXAMPLE: &str = "Open the example house";
/// What happens to what is typed.
pub const START_PRIVATE: &str = "Nothing you type leaves this device. The page is an aid: your local code, the authority \
    and licensed trades decide.";
/// The question.
pub const ASK_HOUSE: &str = "Which rooms does the house have?";
/// Over the buttons that add rooms.
pub const ADD_ROOM: &str = "Add a room";
/// Below it in an empty house.
pub const ADD_FIRST_ROOM: &str = "Press what the plan shows, one press a room. Each asks for its floor area at once.";
/// In place of the buttons where no room can be added any more.
pub const NO_NUMBERS_LEFT: &str =
    "This house has used up its numbers for rooms: none can be added or copied. Begin a new house.";
/// A room without an area.
pub const NO_AREA: &str = "no area yet";
/// Closes a room.
pub const DONE: &str = "Done";
/// What a room is used for.
pub const KIND: &str = "Kind of room";
/// Where it is.
pub const STOREY: &str = "Storey";
/// Over the column of names in the table of rooms.
pub const NAME: &str = "Name";
/// Below the table of rooms.
pub const TABLE_KEYS: &str = "Enter goes down and, in the last row, adds a room. Alt with ↑ or ↓ moves a row, with Enter \
    copies it, with Delete takes it away.";
/// A kitchen without a door.
pub const OPEN_KITCHEN: &str = "Open to a living space, no door between";
/// Moves a room.
pub const MOVE_UP: &str = "Move up";
/// Moves a room.
pub const MOVE_DOWN: &str = "Move down";
/// Copies a room.
pub const DUPLICATE: &str = "Copy this room";
/// Takes a room away.
pub const REMOVE: &str = "Remove room";
/// Over what is known of the house.
pub const HOUSE_ITSELF: &str = "The house itself";
/// The list of rule sets.
pub const RULES: &str = "Rule set";
/// Below it.
pub const RULES_HINT: &str = "Which code asks for the air. The Air page shows the others beside it.";
/// A choice.
pub const CREDIT: &str = "Credit the rule offers";
/// Below it.
pub const CREDIT_HINT: &str =
    "Given only when its conditions are met; the list of things to look at says which are not.";
/// A choice.
pub const PRINTED: &str = "Printed coefficients";
/// Below it.
pub const PRINTED_HINT: &str = "The two prints of the standard are not exact conversions of each other.";
/// A choice.
pub const TABLE: &str = "Table or equation";
/// A choice.
pub const WET: &str = "Exhaust of wet rooms";
/// A choice.
pub const KITCHEN: &str = "Exhaust of the kitchen";
/// A choice.
pub const BUILDING: &str = "The building";
/// A choice.
pub const FUEL: &str = "What burns fuel in the house";
/// A choice.
pub const JOIST: &str = "The joists";
/// A choice.
pub const STUD: &str = "The studs that tubes cross";
/// A choice.
pub const OUTLETS: &str = "Outside terminals";
/// A choice.
pub const FAILING: &str = "When one fan of the unit stops";
/// On to the next stage.
pub const NEXT_AIR: &str = "Next: how much air";

/// `11 rooms · 134 m² · 4 people`.
pub fn house_summary(count: usize, area: &str, people: &str) -> String {
    [rooms(count).as_str(), " · ", area, " · ", people, if people == "1" { " person" } else { " people" }].concat()
}

/// `2 sleepers`.
pub fn sleepers(count: &str) -> String {
    [count, if count == "1" { " sleeper" } else { " sleepers" }].concat()
}

/// After the name of a column: `Floor area` `of Bedroom 1`.
pub fn of_this(room: &str) -> String {
    ["of ", room].concat()
}

/// Opens the rarer fields of a room.
pub fn more_about(room: &str) -> String {
    ["More about ", room].concat()
}

/// Beside a field.
pub fn unit_of(field: &str) -> String {
    ["Unit of ", field].concat()
}

/// One reading of a text like `1,234`.
pub fn reading(text: &str) -> String {
    ["I mean ", text].concat()
}
