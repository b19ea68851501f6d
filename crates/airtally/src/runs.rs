//! How many tubes each room needs, and why; ports on the manifolds.

use crate::facts::Facts;
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::house::{RoomId, RoomKind, TubeSize};
use crate::issue::{Issue, Place, Trouble};
use crate::quantity::{Area, Flow, Length, Unit, Velocity};
use crate::rules::{Air, Level};
use crate::shares::Shares;
use crate::source::{ARITHMETIC, PRACTICE};
use crate::working::{LineId, Origin, Term, Traced, Working};

/// The tubes of a house.
#[derive(Clone, Debug)]
pub struct Runs {
    /// The tube.
    pub tube: TubeSize,
    /// Its bore.
    pub bore: Length,
    /// One entry per room and direction, supply first, in the order of the rooms.
    pub runs: Vec<Run>,
    /// Ports of the supply manifold, spares included.
    pub supply_ports: Traced<u32>,
    /// Ports of the extract manifold, spares included.
    pub extract_ports: Traced<u32>,
}

/// The tubes between a manifold and one room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Run {
    /// The room.
    pub room: RoomId,
    /// Which manifold.
    pub air: Air,
    /// Its number on that manifold, from 1: the mark on the tubes.
    pub mark: u32,
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
}

impl Runs {
    /// The tubes for these shares.
    pub fn of(facts: &Facts, shares: &Shares, givens: &Givens, working: &mut Working, issues: &mut Vec<Issue>) -> Self {
        let tube = facts.choices.tube;
        let bore_id = bore_of(tube);
        let bore = Length::of(givens.measure(bore_id)).unwrap_or(Length::ZERO);
        let mut counting = Counting { givens, working, bore, bore_id };
        let mut runs = Vec::new();
        for air in Air::BOTH {
            let normal = shares.at(Level::Normal).side(air);
            let boost = shares.at(Level::Boost).side(air);
            let rooms = facts.rooms.iter().filter(|room| room.role.takes(air));
            for (at, ((room, normal), boost)) in rooms.zip(normal).zip(boost).enumerate() {
                let legs = if air == Air::Supply { room.supply_run } else { room.extract_run };
                let (normal, boost) = (normal.flow, boost.flow);
                let built = room.built[usize::from(air == Air::Extract)];
                let wanted = Wanted { room: room.id, kind: room.kind, air, normal, boost, legs, built };
                runs.push(counting.run(wanted, at as u32 + 1));
            }
        }
        for run in &runs {
            if f64::from(run.tubes.value) > givens.value(GivenId::TubesMany) {
                issues.push(Issue::new(Place::Room(run.room), Trouble::ManyTubes { count: run.tubes.value }));
            }
        }
        let supply_ports = counting.ports(&runs, Air::Supply);
        let extract_ports = counting.ports(&runs, Air::Extract);
        Self { tube, bore, runs, supply_ports, extract_ports }
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

struct Wanted {
    room: RoomId,
    kind: RoomKind,
    air: Air,
    normal: Flow,
    boost: Flow,
    legs: Option<Length>,
    built: (Option<Length>, Option<f64>),
}

struct Counting<'a> {
    givens: &'a Givens,
    working: &'a mut Working,
    bore: Length,
    bore_id: GivenId,
}

impl Counting<'_> {
    fn run(&mut self, wanted: Wanted, mark: u32) -> Run {
        let normal_id = if wanted.kind.is_bedroom() { GivenId::SpeedBedroom } else { GivenId::SpeedNormal };
        let (limit_normal, normal_line) = self.tube_limit(&wanted, normal_id);
        let (limit_boost, boost_line) = self.tube_limit(&wanted, GivenId::SpeedBoost);
        let (tubes, why) = self.count(&wanted, (limit_normal, normal_line), (limit_boost, boost_line));
        let (limit_normal, limit_boost) = (self.speed_limit(normal_id), self.speed_limit(GivenId::SpeedBoost));
        Run {
            room: wanted.room,
            air: wanted.air,
            mark,
            tubes,
            why,
            normal: wanted.normal,
            boost: wanted.boost,
            speed_normal: self.speed(&wanted, wanted.normal, tubes),
            speed_boost: self.speed(&wanted, wanted.boost, tubes),
            limit_normal,
            limit_boost,
            cut: wanted.legs.map(|legs| self.cut(wanted.room, legs)),
            built: self.built(&wanted, tubes, normal_id),
        }
    }

    /// As it was pulled: the speed that is nearer to its limit, with the tubes that are there.
    fn built(&mut self, wanted: &Wanted, planned: Traced<u32>, normal_id: GivenId) -> Option<Built> {
        let (length, tubes) = wanted.built;
        if length.is_none() && tubes.is_none() {
            return None;
        }
        let tubes = tubes.map_or(planned, |tubes| Traced { value: tubes as u32, line: planned.line });
        let levels = [(wanted.normal, normal_id), (wanted.boost, GivenId::SpeedBoost)];
        let [normal, boost] = levels.map(|(flow, id)| (flow, id, self.speed_limit(id)));
        let load = |(flow, _, limit): (Flow, GivenId, Velocity)| load(flow, limit * self.bore.section());
        let (flow, limit_id, limit) = if load(boost) > load(normal) { boost } else { normal };
        let slack = 1.0 + self.givens.value(GivenId::CountSlack) / f64::from(tubes.value.max(1));
        let speed = self.speed(wanted, flow, tubes);
        let within = speed.value <= limit * slack;
        Some(Built { length, planned: wanted.legs, tubes: tubes.value, speed, limit, limit_id, within })
    }

    fn speed_limit(&self, id: GivenId) -> Velocity {
        Velocity::of(self.givens.measure(id)).unwrap_or(Velocity::ZERO)
    }

    /// q = v·π·d²/4.
    fn tube_limit(&mut self, wanted: &Wanted, id: GivenId) -> (Flow, LineId) {
        let speed = Velocity::of(self.givens.measure(id)).unwrap_or(Velocity::ZERO);
        let limit = speed * self.bore.section();
        let terms = [self.givens.term("v", id), self.givens.term("d", self.bore_id)];
        let value = (limit.as_m3h(), Unit::CubicMetrePerHour);
        let room = Some(wanted.room);
        (limit, self.working.record_for(room, Formula::TubeLimit, value, self.givens.get(id).source, &terms))
    }

    /// n = ceil(max(q_normal/limit_normal, q_boost/limit_boost) − slack), one at least, kitchens two at least.
    fn count(&mut self, wanted: &Wanted, normal: (Flow, LineId), boost: (Flow, LineId)) -> (Traced<u32>, Why) {
        let slack = self.givens.value(GivenId::CountSlack);
        let loads = [(wanted.normal, normal.0), (wanted.boost, boost.0)].map(|(flow, limit)| load(flow, limit));
        let by_speed = libm::ceil(loads[0].max(loads[1]) - slack).max(1.0) as u32;
        let least = match wanted.kind.is_kitchen() && wanted.air == Air::Extract {
            true => self.givens.value(GivenId::KitchenTubes) as u32,
            false => 1,
        };
        let tubes = by_speed.max(least);
        let why = match tubes {
            _ if tubes > by_speed => Why::Kitchen,
            1 => Why::OneIsEnough,
            _ if loads[1] > loads[0] => Why::SpeedAtBoost,
            _ => Why::SpeedAtNormal,
        };
        let unit = Unit::CubicMetrePerHour;
        let terms = [
            Term::new("q_normal", wanted.normal.as_m3h(), unit, Origin::Counted),
            Term::new("limit_normal", normal.0.as_m3h(), unit, Origin::Line(normal.1)),
            Term::new("q_boost", wanted.boost.as_m3h(), unit, Origin::Counted),
            Term::new("limit_boost", boost.0.as_m3h(), unit, Origin::Line(boost.1)),
            self.givens.term("slack", GivenId::CountSlack),
            Term::new("least", f64::from(least), Unit::Count, Origin::Printed(&PRACTICE)),
        ];
        let value = (f64::from(tubes), Unit::Count);
        let line = self.working.record_for(Some(wanted.room), Formula::TubeCount, value, &PRACTICE, &terms);
        (Traced { value: tubes, line }, why)
    }

    /// v = q/(n·π·d²/4).
    fn speed(&mut self, wanted: &Wanted, flow: Flow, tubes: Traced<u32>) -> Traced<Velocity> {
        let area = self.bore.section() * f64::from(tubes.value);
        let speed = if area > Area::ZERO { flow / area } else { Velocity::ZERO };
        let terms = [
            Term::new("q", flow.as_m3h(), Unit::CubicMetrePerHour, Origin::Counted),
            Term::new("n", f64::from(tubes.value), Unit::Count, Origin::Line(tubes.line)),
            self.givens.term("d", self.bore_id),
        ];
        let value = (speed.as_ms(), Unit::MetrePerSecond);
        let line = self.working.record_for(Some(wanted.room), Formula::TubeSpeed, value, &ARITHMETIC, &terms);
        Traced { value: speed, line }
    }

    /// Cut = (legs + an allowance for each end) × (1 + waste).
    fn cut(&mut self, room: RoomId, legs: Length) -> Traced<Length> {
        let ends = 2.0;
        let end = Length::of(self.givens.measure(GivenId::CutEnd)).unwrap_or(Length::ZERO);
        let cut = (legs + end * ends) * (1.0 + self.givens.value(GivenId::CutWaste));
        let terms = [
            Term::new("L", legs.as_m(), Unit::Metre, Origin::Counted),
            self.givens.term("end", GivenId::CutEnd),
            self.givens.term("waste", GivenId::CutWaste),
        ];
        let value = (cut.as_m(), Unit::Metre);
        let line = self.working.record_for(Some(room), Formula::CutLength, value, &PRACTICE, &terms);
        Traced { value: cut, line }
    }

    fn ports(&mut self, runs: &[Run], air: Air) -> Traced<u32> {
        let tubes =
            runs.iter().filter(|run| run.air == air).fold(0, |sum: u32, run| sum.saturating_add(run.tubes.value));
        let spare = self.givens.value(GivenId::SparePorts);
        let ports = if tubes == 0 { 0 } else { tubes.saturating_add(spare as u32) };
        let terms = [
            Term::new("tubes", f64::from(tubes), Unit::Count, Origin::Counted),
            self.givens.term("spare", GivenId::SparePorts),
        ];
        let line = self.working.record(Formula::Ports, (f64::from(ports), Unit::Count), &PRACTICE, &terms);
        Traced { value: ports, line }
    }
}

fn bore_of(tube: TubeSize) -> GivenId {
    match tube {
        TubeSize::Od63 => GivenId::Bore63,
        TubeSize::Od75 => GivenId::Bore75,
        TubeSize::Od90 => GivenId::Bore90,
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

fn load(flow: Flow, limit: Flow) -> f64 {
    if limit > Flow::ZERO { flow.as_m3h() / limit.as_m3h() } else { 0.0 }
}
