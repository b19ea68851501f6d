//! How many tubes each room needs, and why; ports on the manifolds.

mod counting;
mod standing;

use crate::duct::section::Section;
use crate::facts::Facts;
use crate::given::{GivenId, Givens};
use crate::house::{RoomId, TubeSize};
use crate::issue::{Issue, Place, Trouble};
use crate::legs::Bends;
use crate::quantity::{Area, Flow, Length, Velocity};
use crate::rules::{Air, Level};
use crate::shares::Shares;
use crate::working::{Traced, Working};
use counting::{Counting, Wanted};
use standing::Standing;

/// The tubes of a house.
#[derive(Clone, Debug)]
pub struct Runs {
    /// The tube.
    pub tube: TubeSize,
    /// Its clear inside.
    pub section: Section,
    /// Bore of a round tube of the same area: a round tube's own.
    pub bore: Length,
    /// One entry per room and direction, supply first, in the order of the rooms.
    pub runs: Vec<Run>,
    /// The manifolds, supply first, from the lowest storey up.
    pub manifolds: Vec<Manifold>,
    /// Ports of all supply manifolds, spares included.
    pub supply_ports: Traced<u32>,
    /// Ports of all extract manifolds, spares included.
    pub extract_ports: Traced<u32>,
}

/// Where the tubes of one air begin, of the whole house or of a storey.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Manifold {
    /// Which air.
    pub air: Air,
    /// The storey it serves; none where it serves them all.
    pub storey: Option<i8>,
    /// Tubes on it.
    pub tubes: u32,
    /// Its ports, spares included.
    pub ports: u32,
    /// Air at normal.
    pub normal: Flow,
    /// Air at boost.
    pub boost: Flow,
    /// How far it stands above the lowest manifold of its air.
    pub rise: Length,
}

/// The tubes between a manifold and one room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Run {
    /// The room.
    pub room: RoomId,
    /// Which manifold.
    pub air: Air,
    /// Its number among the runs of this air, from 1: the mark on the tubes.
    pub mark: u32,
    /// The manifold it begins at: its place in [`Runs::manifolds`].
    pub manifold: usize,
    /// Bends of each tube, typed or usual.
    pub bends: Bends,
    /// Tubes, side by side.
    pub tubes: Traced<u32>,
    /// What decides their number.
    pub why: Why,
    /// Flow of all of them at normal.
    pub normal: Flow,
    /// Flow of all of them at boost.
    pub boost: Flow,
    /// Speed in each at normal.
    pub speed_normal: Traced<Velocity>,
    /// Speed in each at boost.
    pub speed_boost: Traced<Velocity>,
    /// Largest speed at normal.
    pub limit_normal: Velocity,
    /// Largest speed at boost.
    pub limit_boost: Velocity,
    /// Length of each tube from end to end, when its legs were typed.
    pub legs: Option<Length>,
    /// Length to cut for each tube, when its legs were typed.
    pub cut: Option<Traced<Length>>,
    /// The run as it was pulled, where that was written down.
    pub built: Option<Built>,
}

/// A run as it was pulled.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Built {
    /// Length of each tube, where it was written down.
    pub length: Option<Length>,
    /// Length that was planned.
    pub planned: Option<Length>,
    /// Tubes.
    pub tubes: u32,
    /// Speed in each, at normal or at boost: whichever is nearer to its limit.
    pub speed: Traced<Velocity>,
    /// The limit of that speed.
    pub limit: Velocity,
    /// Where that limit is registered.
    pub limit_id: GivenId,
    /// Whether the speed is within its limit.
    pub within: bool,
}

/// What decides the number of tubes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// One tube stays below both speed limits.
    OneIsEnough,
    /// The speed at normal.
    SpeedAtNormal,
    /// The speed at boost.
    SpeedAtBoost,
    /// A kitchen gets two at least.
    Kitchen,
    /// Every room gets so many at least.
    Least,
}

impl Run {
    /// Length of each tube from end to end, typed or usual.
    pub fn length(&self, givens: &Givens) -> Length {
        self.legs.unwrap_or_else(|| givens.length(GivenId::RunLength))
    }

    /// Length to cut for each tube, from its typed or usual length.
    pub fn to_cut(&self, givens: &Givens) -> Length {
        counting::to_cut(self.length(givens), givens)
    }
}

impl Runs {
    /// The tubes for these shares.
    pub fn of(facts: &Facts, shares: &Shares, givens: &Givens, working: &mut Working, issues: &mut Vec<Issue>) -> Self {
        let tube = facts.choices.tube;
        let section = section_of(tube, givens);
        let bore = equal_area(section);
        let mut counting = Counting { givens, working, bore, bore_id: bore_of(tube) };
        let mut runs = Vec::new();
        let usual = Bends::right(givens.value(GivenId::RunBends) as u32);
        let mut manifolds = Standing { storeys: facts.choices.manifolds, manifolds: Vec::new() };
        for air in Air::BOTH {
            let normal = shares.at(Level::Normal).side(air);
            let boost = shares.at(Level::Boost).side(air);
            let rooms = facts.rooms.iter().filter(|room| room.role.takes(air));
            for (at, ((room, normal), boost)) in rooms.zip(normal).zip(boost).enumerate() {
                let side = usize::from(air == Air::Extract);
                let (legs, built) = (room.legs[side], room.built[side]);
                let (normal, boost) = (normal.flow, boost.flow);
                let bends = legs.bends.unwrap_or(usual);
                let wanted =
                    Wanted { room: room.id, kind: room.kind, air, normal, boost, legs: legs.length, bends, built };
                let mut run = counting.run(wanted, at as u32 + 1);
                run.manifold = manifolds.take(&run, room.storey);
                runs.push(run);
            }
        }
        for run in &runs {
            if f64::from(run.tubes.value) > givens.value(GivenId::TubesMany) {
                issues.push(Issue::new(Place::Room(run.room), Trouble::ManyTubes { count: run.tubes.value }));
            }
        }
        let manifolds = manifolds.finish(givens);
        let supply_ports = counting.ports(&manifolds, Air::Supply);
        let extract_ports = counting.ports(&manifolds, Air::Extract);
        Self { tube, section, bore, runs, manifolds, supply_ports, extract_ports }
    }

    /// Runs of one manifold.
    pub fn side(&self, air: Air) -> impl Iterator<Item = &Run> {
        self.runs.iter().filter(move |run| run.air == air)
    }

    /// All tubes.
    pub fn all_tubes(&self) -> u32 {
        self.tubes(Air::Supply).saturating_add(self.tubes(Air::Extract))
    }

    /// Tubes of one manifold.
    pub fn tubes(&self, air: Air) -> u32 {
        self.side(air).fold(0, |sum, run| sum.saturating_add(run.tubes.value))
    }
}

/// Speed of air in a round tube or duct.
///
/// * Equation: `v = q / (π·d²/4)`
/// * Units: q m³/h, d m, v m/s
/// * Valid range: d > 0; zero otherwise
/// * Source: continuity; site handbook, section 1: 50 cfm in a tube of 63 mm are 7.6 m/s, 181 m³/h in a main of 160 mm
///   2.5 m/s, 217 m³/h 3 m/s
///
/// ```
/// use airtally::{quantity::{Flow, Length}, runs::round_speed};
/// let speed = |flow, mm| round_speed(flow, Length::from_mm(mm)).as_ms();
/// assert!((speed(Flow::from_cfm(50.0), 63.0) - 7.6).abs() < 0.05);
/// assert!((speed(Flow::from_m3h(181.0), 160.0) - 2.5).abs() < 0.01);
/// assert!((speed(Flow::from_m3h(217.0), 160.0) - 3.0).abs() < 0.01);
/// ```
pub fn round_speed(flow: Flow, bore: Length) -> Velocity {
    let section = bore.section();
    if section > Area::ZERO { flow / section } else { Velocity::ZERO }
}

fn section_of(tube: TubeSize, givens: &Givens) -> Section {
    match bore_of(tube) {
        Some(id) => Section::Round(givens.length(id)),
        None => Section::Oval { wide: givens.length(GivenId::OvalWide), high: givens.length(GivenId::OvalHigh) },
    }
}

/// The registered bore of a round tube.
const fn bore_of(tube: TubeSize) -> Option<GivenId> {
    match tube {
        TubeSize::Od63 => Some(GivenId::Bore63),
        TubeSize::Od75 => Some(GivenId::Bore75),
        TubeSize::Od90 => Some(GivenId::Bore90),
        TubeSize::Oval => None,
    }
}

/// d = √(4·A/π).
fn equal_area(section: Section) -> Length {
    match section {
        Section::Round(bore) => bore,
        _ => Length::from_m(f64::sqrt(4.0 * section.area().as_m2() / std::f64::consts::PI)),
    }
}
