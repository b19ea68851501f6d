//! A voice in one room, heard in another through their tubes and the manifold between.

use super::spectrum::{Spectrum, lg};
use crate::formula::Formula;
use crate::given::{GivenId as G, Givens};
use crate::house::RoomId;
use crate::quantity::{Length, Unit};
use crate::runs::{Run, Runs};
use crate::source::Source;
use crate::working::{Origin, Term, Traced, Working};

/// Speech of ordinary effort in octave bands, 1 m before the mouth; 57.4 dB(A) together. None is printed for 63 Hz.
pub const VOICE: Spectrum = Spectrum([0.0, 49.9, 54.3, 58.0, 52.0, 44.8, 38.8, 33.5]);

static SPEECH: Source = Source::memory("ISO 3382-3", "2012", "spectrum of speech; a diffuse field on both valves");

/// What is heard of a voice.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Voice {
    /// Where it speaks.
    pub from: RoomId,
    /// dB(A).
    pub level: Traced<f64>,
}

/// What is the same for all rooms of a house.
pub(super) struct Speaking<'a> {
    givens: &'a Givens,
    runs: &'a Runs,
    /// dB(A) that go into a tube and would come out of it again at once.
    through: f64,
    /// Area of the main in tubes.
    main: f64,
}

impl<'a> Speaking<'a> {
    /// Sound power of a voice behind a valve, and out of one.
    ///
    /// * Equation: `L_W = L_p + 10·lg S − 6`, less what each opening throws back
    /// * Source: intensity of a diffuse field on an opening
    pub fn of(givens: &'a Givens, runs: &'a Runs, valve: Length, opening: [f64; 8]) -> Self {
        let caught = 10.0 * lg(valve.section().as_m2()) - DIFFUSE;
        let through = VOICE.less(opening).less(opening).a_weighted() + caught;
        let main = givens.length(G::ColdDuct).section().as_m2() / runs.section.area().as_m2();
        Self { givens, runs, through, main }
    }

    /// The loudest voice in a room from any other on the same manifold, `room` being what the room does to sound.
    ///
    /// * Equation: `L = L_through − a·(L₁ + L₂) − box − 10·lg((Σn + m)/n) + room`
    /// * Errors: ±5 dB; what goes through walls and doors is not in it
    pub fn heard(&self, run: &Run, room: f64, working: &mut Working) -> Option<Voice> {
        let beside = || self.runs.runs.iter().filter(|other| other.air == run.air && other.manifold == run.manifold);
        let others = beside().filter(|other| other.room != run.room && other.tubes.value > 0);
        let length = |run: &Run| run.length(self.givens);
        let nearest = others.reduce(|near, other| if length(other) < length(near) { other } else { near })?;
        let tubes = beside().fold(0.0, |sum, other| sum + f64::from(other.tubes.value));
        let own = f64::from(run.tubes.value);
        let split = 10.0 * lg((tubes - own + self.main).max(own) / own);
        let way = length(run) + length(nearest);
        let damping = self.givens.value(G::TubeDamping) * way.as_m() + self.givens.value(G::BoxDamping);
        let value = self.through - damping - split + room;
        let terms = [
            Term::new("L_valves", self.through, Unit::DecibelA, Origin::Printed(&SPEECH)),
            self.givens.term("a", G::TubeDamping),
            Term::new("L_way", way.as_m(), Unit::Metre, Origin::Counted),
            self.givens.term("box", G::BoxDamping),
            Term::new("split", split, Unit::Decibel, Origin::Counted),
            Term::new("room", room, Unit::Decibel, Origin::Counted),
        ];
        let line = working.record_for(Some(run.room), Formula::VoiceHeard, (value, Unit::DecibelA), &SPEECH, &terms);
        Some(Voice { from: nearest.room, level: Traced { value, line } })
    }
}

/// dB: a diffuse field gives an opening a quarter of what a plane wave would.
const DIFFUSE: f64 = 6.0;

#[cfg(test)]
mod tests {
    use super::super::ways;
    use super::*;

    /// The standard prints the sum beside its bands.
    #[test]
    fn the_bands_of_speech_are_what_they_are_together() {
        assert!((VOICE.a_weighted() - 57.4).abs() < 0.05, "{}", VOICE.a_weighted());
    }

    #[test]
    fn ways_back_weigh_the_same_whatever_the_valve() {
        let through = |mm: f64| {
            let valve = Length::from_mm(mm);
            VOICE.less(ways::end_reflection(valve)).less(ways::end_reflection(valve)).a_weighted()
                + 10.0 * lg(valve.section().as_m2())
        };
        assert!(through(160.0) > through(125.0) && through(125.0) > through(80.0));
    }
}
