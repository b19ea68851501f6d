//! Words of the house as one file.

/// Sends the house.
pub const SEND_FILE: &str = "Send this house as one file";
/// What the file is made of could not be loaded.
pub const NO_SHELL: &str = "No file was made: one part of it needs the network once.";
/// A house out of such a file.
pub const COPY_OPENED: &str = "A copy that was sent to you. This browser keeps it once you change it.";
/// The same, changed before.
pub const COPY_KEPT: &str = "Your copy of what was sent to you, as you left it.";
