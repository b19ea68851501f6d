//! The air of a bedroom by morning.

use crate::facts::{Facts, RoomFacts};
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::house::RoomId;
use crate::issue::{Issue, Place, Trouble};
use crate::quantity::{AirChange, Concentration, Duration, Flow, Unit, Volume};
use crate::rules::{Air, Level};
use crate::shares::Shares;
use crate::source::{ARITHMETIC, Source};
use crate::working::{Origin, Term, Traced, Working};

/// One bedroom's night.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Night {
    /// The room.
    pub room: RoomId,
    /// People asleep in it.
    pub sleepers: f64,
    /// CO2 at the end of the night, from outdoor air at its start.
    pub morning: Traced<Concentration>,
    /// Outdoor air per sleeper.
    pub per_sleeper: Traced<Flow>,
    /// Air changes of the room.
    pub air_change: Traced<AirChange>,
    /// What that means.
    pub verdict: Verdict,
}

/// How stale the air is by morning.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Below the level called noticeable.
    Fresh,
    /// Noticeably stale.
    Noticeable,
    /// Above the level called unacceptable.
    Unacceptable,
}

static ONE_ZONE: Source = Source::memory("one-zone mass balance", "", "well-mixed room, closed door");

/// CO2 in a well-mixed room after a time, starting from outdoor air.
///
/// * Equation: `C = C_o + 10⁶·G/q·(1 − e^(−q·t/V))`; without air change `C = C_o + 10⁶·G·t/V`
/// * Units: G and q m³/h, t h, V m³, C ppm
/// * Valid range: V > 0, G, q, t ≥ 0; `None` otherwise
/// * Source: one-zone mass balance; worked number from a handbook table: 35 m³, 30 m³/h, 27.2 L/h, 4 h is 877.3 ppm above outdoors
///
/// ```
/// use airtally::{co2::after, quantity::{Concentration, Duration, Flow, Volume}};
/// let rise = after(
///     Duration::from_hours(4.0), Flow::from_lh(27.2), Flow::from_m3h(30.0), Volume::from_m3(35.0),
///     Concentration::from_ppm(0.0),
/// );
/// assert!((rise.unwrap().as_ppm() - 877.3).abs() < 0.05);
/// ```
pub fn after(
    time: Duration,
    generation: Flow,
    fresh: Flow,
    volume: Volume,
    outdoor: Concentration,
) -> Option<Concentration> {
    let (t, g, q, v) = (time.as_hours(), generation.as_m3h(), fresh.as_m3h(), volume.as_m3());
    if !(v > 0.0 && g >= 0.0 && q >= 0.0 && t >= 0.0) {
        return None;
    }
    let million = 1e6;
    let changes = q * t / v;
    let rise = if changes > 0.0 { g / q * -libm::expm1(-changes) } else { g * t / v };
    let ppm = outdoor.as_ppm() + million * rise;
    ppm.is_finite().then(|| Concentration::from_ppm(ppm))
}

/// The nights of all bedrooms with sleepers and a known volume, at the normal level.
pub fn nights(
    facts: &Facts,
    shares: &Shares,
    givens: &Givens,
    working: &mut Working,
    issues: &mut Vec<Issue>,
) -> Vec<Night> {
    let supply = shares.at(Level::Normal).by_room(Air::Supply);
    let bedrooms = facts.rooms.iter().filter(|room| room.kind.is_bedroom() && room.sleepers > 0.0);
    let served = bedrooms.filter_map(|room| Some((room, supply.get(room.id)?.flow)));
    let nights: Vec<Night> = served.filter_map(|(room, flow)| night(room, flow, givens, working)).collect();
    for night in &nights {
        let id = match night.verdict {
            Verdict::Fresh => continue,
            Verdict::Noticeable => GivenId::Co2Noticeable,
            Verdict::Unacceptable => GivenId::Co2Unacceptable,
        };
        let trouble = Trouble::StuffyNight { ppm: night.morning.value.as_ppm(), limit: givens.value(id) };
        issues.push(Issue::new(Place::Room(night.room), trouble));
    }
    nights
}

fn night(room: &RoomFacts, flow: Flow, givens: &Givens, working: &mut Working) -> Option<Night> {
    let volume = room.volume()?;
    let each = Flow::of(givens.measure(GivenId::SleeperCo2))?;
    let hours = Duration::of(givens.measure(GivenId::NightHours))?;
    let outdoor = Concentration::of(givens.measure(GivenId::OutdoorCo2))?;
    let morning = after(hours, each * room.sleepers, flow, volume, outdoor)?;
    let about = Some(room.id);
    let flow_term = Term::new("q", flow.as_m3h(), Unit::CubicMetrePerHour, Origin::Counted);
    let volume_term = Term::new("V", volume.as_m3(), Unit::CubicMetre, Origin::Counted);
    let sleepers_term = Term::new("P", room.sleepers, Unit::Count, Origin::Counted);
    let terms = [
        givens.term("C_o", GivenId::OutdoorCo2),
        givens.term("G", GivenId::SleeperCo2),
        sleepers_term,
        flow_term,
        givens.term("t", GivenId::NightHours),
        volume_term,
    ];
    let value = (morning.as_ppm(), Unit::PartPerMillion);
    let morning_line = working.record_for(about, Formula::Co2Night, value, &ONE_ZONE, &terms);
    let per_sleeper = flow / room.sleepers;
    let value = (per_sleeper.as_ls(), Unit::LitrePerSecond);
    let terms = [flow_term, sleepers_term];
    let sleeper_line = working.record_for(about, Formula::PerSleeper, value, &ARITHMETIC, &terms);
    let air_change = flow / volume;
    let value = (air_change.as_per_hour(), Unit::PerHour);
    let change_line = working.record_for(about, Formula::AirChange, value, &ARITHMETIC, &[flow_term, volume_term]);
    Some(Night {
        room: room.id,
        sleepers: room.sleepers,
        morning: Traced { value: morning, line: morning_line },
        per_sleeper: Traced { value: per_sleeper, line: sleeper_line },
        air_change: Traced { value: air_change, line: change_line },
        verdict: verdict(morning, givens),
    })
}

fn verdict(morning: Concentration, givens: &Givens) -> Verdict {
    let above = |id| morning.as_ppm() > givens.value(id);
    match (above(GivenId::Co2Noticeable), above(GivenId::Co2Unacceptable)) {
        (_, true) => Verdict::Unacceptable,
        (true, false) => Verdict::Noticeable,
        (false, false) => Verdict::Fresh,
    }
}
