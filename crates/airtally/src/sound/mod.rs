//! How loud the air is, octave by octave from the fan to an ear. Every formula here is an estimate of ±4 to 6 dB; measured
//! data of a unit, a silencer or a valve always count more.

mod rooms;
mod sources;
mod spectrum;
mod voice;
mod ways;

#[cfg(test)]
mod tests;

pub use rooms::{Heard, heard};
pub use sources::{at_speed, bend, fan, fan_bands, straight, straight_level, valve};
pub use spectrum::{BANDS, Spectrum};
pub use voice::{VOICE, Voice};
pub use ways::{end_reflection, furnished_room, room, silencer, split};
