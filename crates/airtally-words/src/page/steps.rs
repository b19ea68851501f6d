//! Words of the page of the steps.

/// The question.
pub const ASK_STEPS: &str = "What is the next step?";
/// Before the next step.
pub const NEXT_STEP: &str = "Next:";
/// To the next step, from one that a record makes done.
pub const NEXT_ONE: &str = "To the next step";
/// All ticked.
pub const STEPS_FINISHED: &str = "Every step is ticked.";
/// Below the question.
pub const STEPS_DEFER: &str = "An aid, not an approval: the local code, the authority and licensed trades come first.";
/// A number that nobody has yet.
pub const TO_MEASURE: &str = "to measure";

/// `7 of 23 done`.
pub fn steps_done(done: u32, all: u32) -> String {
    [&of(done, all), " done"].concat()
}

/// `7 of 23`.
pub fn of(done: u32, all: u32) -> String {
    [&done.to_string(), " of ", &all.to_string()].concat()
}

/// While the book is being loaded.
pub const BOOK_COMES: &str = "The words are on their way…";
/// When it could not be loaded.
pub const BOOK_MISSING: &str = "Some words could not be loaded. They need the network once.";
/// To load it again.
pub const TRY_AGAIN: &str = "Try again";

/// Which visit or phase is shown.
pub const SHOW_WHEN: &str = "When";
/// Which room is shown.
pub const SHOW_WHERE: &str = "Where";
/// All of them.
pub const ALL_VISITS: &str = "All visits";
/// All of them.
pub const ALL_ROOMS: &str = "Whole house";
/// When nothing is left in sight.
pub const NO_STEPS_HERE: &str = "No step of this visit belongs to this room.";
/// Over the fields of a step.
pub const FOUND: &str = "What you found";
/// Read out before a check.
pub const CHECK_HOLDS: &str = "As it must be: ";
/// Read out before a check.
pub const CHECK_FAILS: &str = "Not as it must be: ";
/// Read out before a check.
pub const CHECK_UNKNOWN: &str = "To find out: ";
/// Read out before a check.
pub const CHECK_DESIGNER: &str = "To ask: ";
/// In place of a tick that cannot be set.
pub const HELD: &str = "Done when what you found is as it must be.";
/// Over what was changed on site.
pub const CHANGES: &str = "Changed on site";

/// A phase in the list of what is shown.
pub fn phase_of(name: &str) -> String {
    ["· ", name].concat()
}

/// `Stop 2 of 3`: a phase of many steps, so many at a time.
pub fn stop(at: usize, all: usize) -> String {
    ["Stop ", &at.to_string(), " of ", &all.to_string()].concat()
}
