//! A voice in one room, heard in another through their tubes and the manifold between.

use super::spectrum::{Spectrum, lg};
use crate::formula::Formula;
use crate::given::{GivenId as G, Givens};
use crate::house::RoomId;
use crate::quantity::{Length, Unit};
use crate::runs::{Run, Runs};
use crate::source::Source;
use crate::working::{Origin, Term, Traced, Working};

/// Speech of ordinary effort in octave bands, 1 m from the mouth in the open, the same all round; 57.4 dB(A) together. None is
/// printed for 63 Hz.
pub const VOICE: Spectrum = Spectrum([0.0, 49.9, 54.3, 58.0, 52.0, 44.8, 38.8, 33.5]);

static SPEECH: Source = Source::memory("ISO 3382-3", "2012", "spectrum of speech; a diffuse field on the valve");

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
    /// dB(A) that go into a tube and would come out of it again at once.
    through: f64,
    /// Area of the main in tubes.
    main: f64,
    /// By the place of the manifold.
    manifolds: Vec<Manifold>,
}

/// What comes into one manifold.
#[derive(Clone, Copy, Default)]
struct Manifold {
    tubes: f64,
    /// The loudest, and the loudest but that one.
    loudest: [Option<Mouth>; 2],
}

/// A room that speaks.
#[derive(Clone, Copy)]
struct Mouth {
    room: RoomId,
    /// What the room does to a voice in it, dB.
    speaking: f64,
    /// Length of its tubes, m.
    way: f64,
    /// Both together, dB.
    comes: f64,
}

impl<'a> Speaking<'a> {
    /// Sound power of a voice behind a valve and out of another, in rooms that take nothing.
    ///
    /// * Equation: `L_W = L_p,1m + 11 + 10·lg S − 6`, less what each opening throws back; 11 from 1 m to power, `10·lg(4π)`
    /// * Source: intensity of a diffuse field on an opening
    ///
    /// `room` is what a room does to sound: once where it speaks, once where it is heard.
    pub fn of(
        givens: &'a Givens,
        runs: &Runs,
        (valve, opening): (Length, [f64; 8]),
        room: impl Fn(RoomId) -> Option<f64>,
    ) -> Self {
        let caught = POWER + 10.0 * lg(valve.section().as_m2()) - DIFFUSE;
        let through = VOICE.less(opening).less(opening).a_weighted() + caught;
        let main = givens.length(G::ColdDuct).section().as_m2() / runs.section.area().as_m2();
        let mut manifolds = vec![Manifold::default(); runs.manifolds.len()];
        for run in runs.runs.iter().filter(|run| run.tubes.value > 0) {
            let Some(manifold) = manifolds.get_mut(run.manifold) else { continue };
            manifold.tubes += f64::from(run.tubes.value);
            let way = run.length(givens).as_m();
            manifold.loudest = room(run.room).map_or(manifold.loudest, |speaking| {
                let comes = speaking - givens.value(G::TubeDamping) * way;
                manifold.with(Mouth { room: run.room, speaking, way, comes })
            });
        }
        Self { givens, through, main, manifolds }
    }

    /// The loudest voice in a room from any other on the same manifold. `hears` is what the room does to sound.
    ///
    /// * Equation: `L = L_valves + room₁ − a·(L₁ + L₂) − box − 10·lg((Σn + m)/n) + room₂`
    /// * Errors: ±5 dB; what goes through walls and doors is not in it
    pub fn heard(&self, run: &Run, hears: f64, working: &mut Working) -> Option<Voice> {
        let manifold = self.manifolds.get(run.manifold).filter(|_| run.tubes.value > 0)?;
        let Mouth { room: from, speaking, way, .. } =
            manifold.loudest.into_iter().flatten().find(|mouth| mouth.room != run.room)?;
        let way = way + run.length(self.givens).as_m();
        let split = 10.0 * lg((manifold.tubes + self.main) / f64::from(run.tubes.value));
        let weaker = self.givens.value(G::TubeDamping) * way + self.givens.value(G::BoxDamping) + split;
        let value = self.through + speaking - weaker + hears;
        let terms = [
            Term::new("L_valves", self.through, Unit::DecibelA, Origin::Printed(&SPEECH)),
            Term::new("room₁", speaking, Unit::Decibel, Origin::Counted),
            self.givens.term("a", G::TubeDamping),
            Term::new("L_way", way, Unit::Metre, Origin::Counted),
            self.givens.term("box", G::BoxDamping),
            Term::new("split", split, Unit::Decibel, Origin::Counted),
            Term::new("room₂", hears, Unit::Decibel, Origin::Counted),
        ];
        let line = working.record_for(Some(run.room), Formula::VoiceHeard, (value, Unit::DecibelA), &SPEECH, &terms);
        Some(Voice { from, level: Traced { value, line } })
    }
}

impl Manifold {
    /// The two loudest with one more. A room has one run on a manifold; of equal ones the earlier stays.
    fn with(&self, mouth: Mouth) -> [Option<Mouth>; 2] {
        let louder = |known: Option<Mouth>| known.is_none_or(|known| mouth.comes > known.comes);
        match self.loudest {
            [first, _] if louder(first) => [Some(mouth), first],
            [first, second] if louder(second) => [first, Some(mouth)],
            loudest => loudest,
        }
    }
}

/// dB: from the level 1 m away in the open to sound power, `10·lg(4π)`.
const POWER: f64 = 10.992;
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
    /// The standard prints the sound power of the same speech: 68.4 dB(A).
    #[test]
    fn a_voice_has_the_power_that_is_printed() {
        assert!((VOICE.a_weighted() + POWER - 68.4).abs() < 0.05);
    }
}
