//! Cases about noise, in dB, which nobody types: all reads as a `ratio`. A band is read by its frequency, `250`.

use super::call::{as_flow, as_length, as_pressure, as_volume};
use super::physics::bare;
use super::read::Found;
use airtally::quantity::Velocity;
use airtally::sound::{self, BANDS, Spectrum};
use serde::Deserialize;

/// An equation with what is put into it.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub enum Sound {
    /// Flow noise of a straight duct: reads as `level`, `weighted`, and by band.
    Straight { speed: f64, bore: String },
    /// Flow noise of a bend: reads as `weighted`, and by band.
    Bend { speed: f64, bore: String },
    /// Reads as `level`.
    Fan { flow: String, pressure: String },
    /// A fan at this part of its speed: reads as `louder`.
    Speed { part: f64 },
    /// A silencer of an even lining: reads by band.
    Silencer { bore: String, length: String, absorption: f64 },
    /// Reads as `less`.
    Split { whole: String, part: String },
    /// Reads by band.
    EndReflection { bore: String },
    /// Reads as `diffuse`, and in a furnished room by band.
    Room { volume: String, reverberation: f64, distance: String },
    /// Two sounds of these levels: reads as `level`.
    Both { one: f64, other: f64 },
    /// Levels by band: reads as `weighted`, `criterion`.
    Heard { bands: [f64; 8] },
    /// From a fan to an ear at 250 Hz: reads as `level`.
    Chain(Chain),
}

/// What is on the way, in dB where it has no size.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct Chain {
    flow: String,
    pressure: String,
    tube: String,
    valve: String,
    volume: String,
    distance: String,
    silencer: f64,
    manifold: f64,
    along: f64,
}

impl Sound {
    pub fn read(&self, what: &str) -> Found {
        let speed = |ms: &f64| Velocity::from_ms(*ms);
        bare(Some(match (self, what) {
            (Self::Straight { speed: ms, bore }, "level") => sound::straight_level(speed(ms), as_length(bore)),
            (Self::Straight { speed: ms, bore }, what) => of(sound::straight(speed(ms), as_length(bore)), what),
            (Self::Bend { speed: ms, bore }, what) => of(sound::bend(speed(ms), as_length(bore)), what),
            (Self::Fan { flow, pressure }, "level") => sound::fan(as_flow(flow), as_pressure(pressure)),
            (Self::Speed { part }, "louder") => sound::at_speed(*part),
            (Self::Silencer { bore, length, absorption }, what) => {
                of(Spectrum(sound::silencer(as_length(bore), as_length(length), [*absorption; 8])), what)
            }
            (Self::Split { whole, part }, "less") => sound::split(as_flow(whole), as_flow(part)),
            (Self::EndReflection { bore }, what) => of(Spectrum(sound::end_reflection(as_length(bore))), what),
            (Self::Room { volume, reverberation, distance }, "diffuse") => {
                sound::room(as_volume(volume), *reverberation, as_length(distance))
            }
            (Self::Room { volume, distance, .. }, what) => {
                of(Spectrum(sound::furnished_room(as_volume(volume), as_length(distance))), what)
            }
            (Self::Both { one, other }, "level") => Spectrum::flat(*one).and(Spectrum::flat(*other)).0[0],
            (Self::Heard { bands }, what) => of(Spectrum(*bands), what),
            (Self::Chain(chain), "level") => chain.level(),
            _ => panic!("nothing reads as \"{what}\" of this sound"),
        }))
    }
}

impl Chain {
    fn level(&self) -> f64 {
        let whole = as_flow(&self.flow);
        let fan = sound::fan_bands(sound::fan(whole, as_pressure(&self.pressure)));
        let split = sound::split(whole, as_flow(&self.tube));
        let room = sound::room(as_volume(&self.volume), 0.5, as_length(&self.distance));
        let left = fan.less(sound::end_reflection(as_length(&self.valve)));
        of(left, "250") - self.silencer - split - self.manifold - self.along + room
    }
}

fn of(spectrum: Spectrum, what: &str) -> f64 {
    match what {
        "weighted" => spectrum.a_weighted(),
        "criterion" => spectrum.nc(),
        band => {
            let at = BANDS.iter().position(|middle| middle.to_string() == band).expect("the middle of an octave");
            spectrum.0[at]
        }
    }
}
