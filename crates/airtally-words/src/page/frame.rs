//! Words of the frame: top line, menu, dock, remarks.

use super::counted;

/// Skips the frame.
pub const SKIP: &str = "Skip to the page";
/// A house without a name.
pub const NO_NAME: &str = "A house without a name";
/// The list of units in the top line.
pub const UNITS: &str = "Units of flow";
/// The list of units on the page of the house.
pub const UNITS_SHOWN: &str = "Units shown and set";
/// The list of looks.
pub const LOOK: &str = "Look";
/// A look.
pub const LOOK_DEVICE: &str = "As device";
/// A look.
pub const LOOK_LIGHT: &str = "Light";
/// A look.
pub const LOOK_DARK: &str = "Dark";
/// A look.
pub const LOOK_SUN: &str = "Sunlight";
/// Takes the last change back.
pub const UNDO: &str = "Undo";
/// Makes it again.
pub const REDO: &str = "Redo";
/// Opens the menu.
pub const MENU: &str = "Menu";
/// Begins anew.
pub const NEW_HOUSE: &str = "Start a new house";
/// Said after it.
pub const NEW_HOUSE_BEGUN: &str = "A new house. The one before is under Houses.";
/// Said after an example was opened.
pub const EXAMPLE_OPENED: &str = "An invented example is open.";
/// Prints.
pub const PRINT: &str = "Print this page";
/// Puts a remark away.
pub const UNDERSTOOD: &str = "Understood";
/// The stages together.
pub const STAGES: &str = "Stages";
/// The strip over the stages.
pub const BALANCE: &str = "Balance of air";
/// Between two totals that agree.
pub const EQUALS: &str = "equals";
/// Between two totals that do not.
pub const IS_NOT: &str = "is not";
/// No air is shared out yet.
pub const NOTHING_TO_BALANCE: &str = "No air shared out yet";

/// Opens an example.
pub fn example(title: &str) -> String {
    ["Open the example ", title].concat()
}

/// The name of a stage, by its place.
pub const fn stage(at: usize) -> &'static str {
    match at {
        0 => "House",
        1 => "Air",
        2 => "Tubes",
        3 => "Parts",
        _ => "Steps",
    }
}

/// The title of the tab.
pub fn tab(stage: &str, house: &str) -> String {
    let house = if house.trim().is_empty() { "airtally" } else { house.trim() };
    [stage, " · ", house].concat()
}

/// How much wants a look.
pub fn to_look_at(count: usize) -> String {
    match count {
        0 => "Nothing to look at".to_owned(),
        count => [&count.to_string(), " to look at"].concat(),
    }
}

/// Gives the house as a file.
pub const SAVE_FILE: &str = "Save as a file";
/// Takes a house from a file.
pub const OPEN_FILE: &str = "Open a file";
/// That was done.
pub const FILE_OPENED: &str = "The house of the file is open. The one before is under Houses.";

/// What a house's file is called: its name in plain letters.
///
/// ```
/// use airtally_words::page::file_name;
/// assert_eq!(file_name(" Nr. 12/b – Süd "), "nr-12-b-s-d.json");
/// assert_eq!(file_name("屋"), "house.json");
/// ```
pub fn file_name(name: &str) -> String {
    let mut plain = String::new();
    for letter in name.chars().take(60) {
        if letter.is_ascii_alphanumeric() {
            plain.push(letter.to_ascii_lowercase());
        } else if !plain.ends_with('-') && !plain.is_empty() {
            plain.push('-');
        }
    }
    let plain = plain.trim_end_matches('-');
    [if plain.is_empty() { "house" } else { plain }, ".json"].concat()
}

/// A file is no house of this page, and why.
pub fn file_refused(place: &str, detail: &str) -> String {
    let place = if place.is_empty() { String::new() } else { [place, ": "].concat() };
    ["This file was not opened. Nothing was changed. Why: ", &place, detail].concat()
}

/// A kept text could not be read; `aside` is where it was put, if there was room.
pub fn put_aside(aside: Option<&str>, place: &str, detail: &str) -> String {
    let place = if place.is_empty() { String::new() } else { [place, ": "].concat() };
    let went = match aside {
        Some(aside) => [", so it was put aside as “", aside, "”, unchanged. "].concat(),
        None => ", and there is no room to put it aside. It stays as it is; what you type now is not kept. ".to_owned(),
    };
    ["What was kept on this device could not be read", &went, &place, detail].concat()
}

/// A room was taken away.
pub fn room_removed(name: &str) -> String {
    [name, " removed"].concat()
}

/// So many rooms.
pub fn rooms(count: usize) -> String {
    counted(count, "room", "rooms")
}
