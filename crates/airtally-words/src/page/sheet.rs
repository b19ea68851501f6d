//! Words of the sheet.

use crate::label::Label;

/// One explanation back.
pub const BACK: &str = "Back";
/// Puts the sheet away.
pub const CLOSE_SHEET: &str = "Close the working";
/// A line that an edit took away.
pub const LINE_GONE: &str = "This number is no longer part of the house.";
/// Over the terms.
pub const PUT_IN: &str = "What was put in";
/// Over the source.
pub const SOURCE: &str = "Who says so";
/// A number that was counted.
pub const COUNTED: &str = "counted or added up from your rooms";
/// Over the field for an own value.
pub const YOUR_OWN: &str = "Your own value";
/// Takes the registered value back.
pub const TAKE_REGISTERED: &str = "Take the registered value back";
/// No issue at all.
pub const ALL_CLEAR: &str = "Nothing is missing, doubtful or outside the rule.";

/// A title about one room.
pub fn of_room(title: &str, room: &str) -> String {
    [title, " · ", room].concat()
}

/// The value in the units of the page.
pub fn in_your_units(value: &str) -> String {
    ["That is ", value, " in the units you chose."].concat()
}

/// Where something was typed.
pub fn typed_in(field: &Label) -> String {
    ["typed in “", field.name, "”"].concat()
}

/// The registered value.
pub fn registered_as(value: &str) -> String {
    ["Registered: ", value].concat()
}
