//! Words about the houses kept on a device. Most of them stand in the book; what must be said without it stands here.

/// The list of houses.
pub const HOUSES: &str = "Houses";
/// Puts the list away.
pub const CLOSE_HOUSES: &str = "Close the list of houses";
/// Another tab has this house.
pub const ELSEWHERE: &str = "This house is open in another tab. Here it is only shown.";
/// Takes it from there.
pub const TAKE_OVER: &str = "Take over here";
/// Makes another one like it.
pub const COPY_HOUSE: &str = "Make a copy";
/// What stands after the house that is seen.
pub const ON_SCREEN: &str = " · on screen";
/// What stands after the name of a copy.
pub const COPY: &str = " (copy)";
/// Waits for it.
pub const OPENING: &str = "Opening the house that was kept…";
/// Nothing may be kept.
pub const NOT_KEPT: &str = "This browser does not keep what you type: its storage is switched off for this page, as in some private windows. Save the house as a file before you close it.";

/// Whether the house is kept, and a copy of it elsewhere.
///
/// ```
/// use airtally_words::page::kept_line;
/// assert_eq!(kept_line("14:32", ""), "Saved on this device 14:32 · copy sent never");
/// assert_eq!(kept_line("", "May 2, 09:10"), "Not saved yet · copy sent May 2, 09:10");
/// ```
pub fn kept_line(saved: &str, sent: &str) -> String {
    let before = if saved.is_empty() { "Not saved yet" } else { "Saved on this device " };
    [before, saved, " · copy sent ", if sent.is_empty() { "never" } else { sent }].concat()
}

/// A house of the list: how many rooms, and when it was changed.
pub fn house_line(count: &str, changed: &str) -> String {
    let mark = if changed.is_empty() { "" } else { " · " };
    [count, if count == "1" { " room" } else { " rooms" }, mark, changed].concat()
}

/// An old version on screen.
pub fn as_it_was(when: &str) -> String {
    ["As it was: ", when, ". Only to look at."].concat()
}
