//! Words of the page of the steps.

/// The question.
pub const ASK_STEPS: &str = "What is the next step?";
/// Before the next step.
pub const NEXT_STEP: &str = "Next:";
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

/// While the sentences are being loaded.
pub const BOOK_COMES: &str = "The steps are on their way…";
/// When they could not be loaded.
pub const BOOK_MISSING: &str = "The sentences of the steps could not be loaded. They need the network once.";
/// To load them again.
pub const TRY_AGAIN: &str = "Try again";
