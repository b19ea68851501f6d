//! Words of the house as one file, and of the finished report in it.

/// Sends the house.
pub const SEND_FILE: &str = "Send this house as one file";
/// That was done, and what the other person will see.
pub const SENT: &str = "The file is made; send it by mail or message. Everyone can read it as a finished report. Previews on phones \
    run no scripts and show that report only; opened in a browser it becomes this page with a copy of the house. Your prices stay here.";
/// What the file is made of could not be loaded.
pub const NO_SHELL: &str = "The file could not be made: one part of this page needs the network once.";
/// A house out of such a file.
pub const COPY_OPENED: &str = "A copy of the house that was sent to you. It is kept in this browser once you change something; nothing goes back.";
/// The same, changed before.
pub const COPY_KEPT: &str = "Your copy of the house that was sent to you, as you left it in this browser.";
/// Over the report.
pub const LETTER_NOTE: &str = "A finished report: nothing in it changes. Where it is opened in a browser that runs scripts, the live page \
    with a copy of this house takes its place.";
/// Over the flows of the rooms.
pub const LETTER_ROOMS: &str = "Rooms";
/// A column.
pub const LETTER_ROOM: &str = "Room";
/// Below its heading.
pub const LETTER_FLOWS: &str = "Air at normal / at boost";
/// The last row.
pub const LETTER_SUM: &str = "Together";
/// A column.
pub const LETTER_CUT: &str = "Cut each";
/// A column.
pub const LETTER_TAKES: &str = "Takes";
/// A column.
pub const LETTER_THROTTLE: &str = "Throttle";
/// Over what wants a look.
pub const LETTER_ISSUES: &str = "To look at first";

/// When it was made, by the calendar: `Made on 2026-03-10.`
pub fn made_on(day: &str) -> String {
    ["Made on ", day, ". "].concat()
}
