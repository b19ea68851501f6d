//! Every room of a house: from the unit through silencer, splits, manifold, tube and valve to an ear.

use super::sources::{at_speed, bend, fan, fan_bands, straight, valve};
use super::spectrum::{Spectrum, lg};
use super::voice::{Speaking, Voice};
use super::ways;
use crate::by_room::ByRoom;
use crate::delivery::Delivery;
use crate::facts::{Facts, RoomFacts};
use crate::formula::Formula;
use crate::given::{GivenId as G, Givens};
use crate::issue::{Issue, Place, Trouble};
use crate::quantity::{Flow, Length, Pressure, Unit};
use crate::rules::{Air, Level};
use crate::runs::{Run, Runs};
use crate::shares::Shares;
use crate::source::Source;
use crate::working::{Origin, Term, Traced, Working};

static CHAIN: Source = Source::memory("VDI 2081-1 and others", "", "estimate, ±5 dB; without the valve's own noise");

/// What is heard of one run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Heard {
    /// Which side.
    pub air: Air,
    /// The room.
    pub room: crate::house::RoomId,
    /// dB(A) at normal.
    pub normal: Traced<f64>,
    /// dB(A) at boost.
    pub boost: Traced<f64>,
    /// Noise criterion at normal.
    pub nc: f64,
    /// The same at boost.
    pub nc_boost: f64,
    /// The most it should be.
    pub limit: G,
    /// The loudest voice of another room on the same manifold.
    pub voice: Option<Voice>,
}

/// Everything that is the same for all runs.
struct Chain<'a> {
    givens: &'a Givens,
    shares: &'a Shares,
    /// What a silencer and the lining take, by band.
    silencer: [f64; 8],
    main: Length,
    bore: Length,
    /// What the opening of a valve throws back, by band.
    opening: [f64; 8],
}

/// What goes into the tubes of one side at one level.
struct Into {
    level: Level,
    total: Flow,
    /// The unit, dB(A).
    unit: f64,
    /// Behind the silencer, with the noise of the main.
    main: Spectrum,
    /// The same, dB(A).
    behind: f64,
}

/// What every room hears of its runs. Rooms without a floor area are left out.
pub fn heard(
    (facts, givens): (&Facts, &Givens),
    (shares, runs, delivery): (&Shares, &Runs, &Delivery),
    working: &mut Working,
    issues: &mut Vec<Issue>,
) -> Vec<Heard> {
    let (main, valve) = (givens.length(G::ColdDuct), givens.length(G::ValveBore));
    let lining = ABSORPTION.map(|alpha| alpha * givens.value(G::LiningAbsorption));
    let silencer = measured_silencer(ways::silencer(main, givens.length(G::SilencerLength), lining), givens);
    let opening = ways::end_reflection(valve);
    let chain = Chain { givens, shares, silencer, main, bore: runs.bore, opening };
    let mut rooms = ByRoom::with_space_for(facts.rooms.len());
    facts.rooms.iter().for_each(|room| rooms.put(room.id, room));
    let speaking = Speaking::of(givens, runs, (valve, opening), |id| chain.room(rooms.get(id)?));
    let mut all = Vec::new();
    for side in &delivery.sides {
        let normal = chain.entering(Level::Normal, side.normal.value);
        let Some((normal, boost)) = normal.zip(chain.entering(Level::Boost, side.boost.value)) else { continue };
        for run in runs.side(side.air) {
            let Some(room) = rooms.get(run.room) else { continue };
            let Some(mut heard) = chain.levels(run, room, [&normal, &boost], working) else { continue };
            chain.warn(&heard, issues);
            heard.voice = chain.room(room).and_then(|hears| speaking.heard(run, hears, working));
            chain.warn_of(heard.voice, run, issues);
            all.push(heard);
        }
    }
    all
}

/// A sound on its way: out of the unit and into the tube, dB(A), and at an ear.
struct Sound {
    unit: f64,
    tube: f64,
    heard: Spectrum,
}

impl Chain<'_> {
    /// What is heard of a run's own air at both levels; its voice is asked afterwards.
    fn levels(&self, run: &Run, room: &RoomFacts, into: [&Into; 2], working: &mut Working) -> Option<Heard> {
        let [normal, boost] = into;
        let sound = self.at(run, room, normal)?;
        let nc = sound.heard.nc();
        let at_normal = sound.record(run, self.givens, working);
        let as_loud = run.normal == run.boost && normal.total == boost.total;
        let louder = if as_loud { None } else { self.at(run, room, boost) };
        let nc_boost = louder.as_ref().map_or(nc, |sound| sound.heard.nc());
        let at_boost = louder.map_or(at_normal, |sound| sound.record(run, self.givens, working));
        let limit = if room.kind.is_bedroom() { G::QuietBedroom } else { G::QuietLiving };
        let (air, room) = (run.air, run.room);
        Some(Heard { air, room, normal: at_normal, boost: at_boost, nc, nc_boost, limit, voice: None })
    }

    fn warn(&self, heard: &Heard, issues: &mut Vec<Issue>) {
        let limit = self.givens.value(heard.limit);
        let levels = [(Level::Normal, heard.normal), (Level::Boost, heard.boost)];
        if let Some((level, sound)) = levels.into_iter().find(|(_, sound)| sound.value > limit) {
            let trouble = Trouble::Loud { level, decibel: sound.value, limit };
            issues.push(Issue::new(Place::Room(heard.room), trouble));
        }
    }

    fn entering(&self, level: Level, outside: Pressure) -> Option<Into> {
        let total = self.shares.at(level).total;
        if total <= Flow::ZERO {
            return None;
        }
        let unit = self.unit(total, outside);
        let flowing = total / self.main.section();
        let mains = straight(flowing, self.main).and(bend(flowing, self.main));
        let main = unit.less(self.silencer).and(mains);
        Some(Into { level, total, unit: unit.a_weighted(), main, behind: main.a_weighted() })
    }

    fn at(&self, run: &Run, room: &RoomFacts, into: &Into) -> Option<Sound> {
        let flow = if into.level == Level::Boost { run.boost } else { run.normal };
        let tubes = f64::from(run.tubes.value);
        if flow <= Flow::ZERO || tubes < 1.0 {
            return None;
        }
        let length = run.length(self.givens);
        let damping = self.givens.value(G::BoxDamping) + self.givens.value(G::TubeDamping) * length.as_m();
        let weaker = ways::split(into.total, flow) + damping;
        let tube = into.main.map(|level, _| level - weaker);
        // All tubes of a run end in one valve.
        let speed = flow / tubes / self.bore.section();
        let bends = 10.0 * lg((f64::from(run.bends.count()) * tubes).max(1.0));
        let own = straight(speed, self.bore).and(bend(speed, self.bore).map(|level, _| level + bends));
        let room = self.room(room)?;
        let out = tube.and(own).less(self.opening);
        let measured = self.givens.value(G::ValveSound);
        let out = if measured > 0.0 { out.and(valve(measured, flow)) } else { out };
        Some(Sound { unit: into.unit, tube: into.behind - weaker, heard: out.map(|level, _| level + room) })
    }

    /// What a room does to the sound of its valve.
    fn room(&self, room: &RoomFacts) -> Option<f64> {
        let ear = Length::of(self.givens.measure(G::EarDistance))?;
        Some(ways::room(room.volume()?, self.givens.value(G::Reverberation), ear))
    }

    fn warn_of(&self, voice: Option<Voice>, run: &Run, issues: &mut Vec<Issue>) {
        let limit = self.givens.value(G::VoiceMost);
        if let Some(voice) = voice.filter(|voice| voice.level.value > limit) {
            let trouble = Trouble::VoiceHeard { decibel: voice.level.value, limit };
            issues.push(Issue::new(Place::Room(run.room), trouble));
        }
    }

    /// As measured where that is known, otherwise as a fan of this duty is estimated.
    fn unit(&self, total: Flow, outside: Pressure) -> Spectrum {
        let measured = self.givens.value(G::UnitSound);
        if measured <= 0.0 {
            let inside = Pressure::of(self.givens.measure(G::UnitInside)).unwrap_or(Pressure::ZERO);
            return fan_bands(fan(total, outside + inside));
        }
        let slower = at_speed(total.as_m3h() / self.shares.at(Level::Boost).total.as_m3h());
        let shape = fan_bands(0.0);
        fan_bands(measured + slower - shape.a_weighted())
    }
}

/// The estimate, raised or lowered to what was measured at 250 Hz, where that is known. Sound goes round a silencer all the same.
fn measured_silencer(estimate: [f64; 8], givens: &Givens) -> [f64; 8] {
    let (measured, own) = (givens.value(G::SilencerLoss), estimate[QUARTER]);
    let scaled = |loss: f64| (loss * measured / own).min(measured.max(ways::FLANKING));
    if measured > 0.0 && own > 0.0 { estimate.map(scaled) } else { estimate }
}

/// The place of 250 Hz.
const QUARTER: usize = 2;

impl Sound {
    fn record(self, run: &Run, givens: &Givens, working: &mut Working) -> Traced<f64> {
        let value = self.heard.a_weighted();
        let level = |symbol, level: f64| Term::new(symbol, level, Unit::DecibelA, Origin::Counted);
        let terms = [
            givens.term("L_typed", G::UnitSound),
            level("L_unit", self.unit),
            level("L_tube", self.tube),
            givens.term("T", G::Reverberation),
            givens.term("r", G::EarDistance),
        ];
        let line = working.record_for(Some(run.room), Formula::RoomSound, (value, Unit::DecibelA), &CHAIN, &terms);
        Traced { value, line }
    }
}

/// How much of the best a lining of 50 to 100 mm takes in each octave. Common practice.
const ABSORPTION: [f64; 8] = [0.15, 0.35, 0.7, 1.0, 1.0, 0.8, 0.5, 0.3];

#[cfg(test)]
mod tests {
    use super::*;

    /// Handbook of physics, section 12: sound goes round a silencer, so that no octave loses more than about 40 dB; what was
    /// measured stays as it was measured.
    #[test]
    fn sound_goes_round_a_silencer_that_was_measured() {
        let estimate = [3.0, 7.0, 14.0, 20.0, 20.0, 16.0, 10.0, 6.0];
        let measured = |decibel: f64| {
            let mut givens = Givens::registered();
            givens.put(G::SilencerLoss, decibel);
            measured_silencer(estimate, &givens)
        };
        assert_eq!(measured(0.0), estimate);
        let good = measured(35.0);
        assert!((good[QUARTER] - 35.0).abs() < 1e-9 && good[3] == 40.0 && (good[0] - 7.5).abs() < 1e-9, "{good:?}");
        assert!((measured(45.0)[QUARTER] - 45.0).abs() < 1e-9);
    }
}
