//! Counting the tubes of one run, with the working behind it.

use super::{Built, Manifold, Run, Why};
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::house::{RoomId, RoomKind};
use crate::legs::Bends;
use crate::quantity::{Area, Flow, Length, Unit, Velocity};
use crate::rules::Air;
use crate::source::{ARITHMETIC, PRACTICE};
use crate::working::{LineId, Origin, Term, Traced, Working};

/// One run to be counted.
pub(super) struct Wanted {
    pub(super) room: RoomId,
    pub(super) kind: RoomKind,
    pub(super) air: Air,
    pub(super) normal: Flow,
    pub(super) boost: Flow,
    pub(super) legs: Option<Length>,
    pub(super) bends: Bends,
    pub(super) built: (Option<Length>, Option<f64>),
}

/// What runs are counted with.
pub(super) struct Counting<'a> {
    pub(super) givens: &'a Givens,
    pub(super) working: &'a mut Working,
    pub(super) bore: Length,
    /// The registered bore; none for a tube that is not round.
    pub(super) bore_id: Option<GivenId>,
}

impl Counting<'_> {
    pub(super) fn run(&mut self, wanted: Wanted, mark: u32) -> Run {
        let normal_id = if wanted.kind.is_bedroom() { GivenId::SpeedBedroom } else { GivenId::SpeedNormal };
        let (limit_normal, normal_line) = self.tube_limit(&wanted, normal_id);
        let (limit_boost, boost_line) = self.tube_limit(&wanted, GivenId::SpeedBoost);
        let (tubes, why) = self.count(&wanted, (limit_normal, normal_line), (limit_boost, boost_line));
        let (limit_normal, limit_boost) = (self.speed_limit(normal_id), self.speed_limit(GivenId::SpeedBoost));
        Run {
            room: wanted.room,
            air: wanted.air,
            mark,
            manifold: 0,
            bends: wanted.bends,
            tubes,
            why,
            normal: wanted.normal,
            boost: wanted.boost,
            speed_normal: self.speed(&wanted, wanted.normal, tubes),
            speed_boost: self.speed(&wanted, wanted.boost, tubes),
            limit_normal,
            limit_boost,
            legs: wanted.legs,
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

    fn bore(&self) -> Term {
        let counted = || Term::new("d", self.bore.as_mm(), Unit::Millimetre, Origin::Counted);
        self.bore_id.map_or_else(counted, |id| self.givens.term("d", id))
    }

    /// q = v·π·d²/4.
    fn tube_limit(&mut self, wanted: &Wanted, id: GivenId) -> (Flow, LineId) {
        let speed = Velocity::of(self.givens.measure(id)).unwrap_or(Velocity::ZERO);
        let limit = speed * self.bore.section();
        let terms = [self.givens.term("v", id), self.bore()];
        let value = (limit.as_m3h(), Unit::CubicMetrePerHour);
        let room = Some(wanted.room);
        (limit, self.working.record_for(room, Formula::TubeLimit, value, self.givens.get(id).source, &terms))
    }

    /// n = ceil(max(q_normal/limit_normal, q_boost/limit_boost) − slack), one at least, kitchens two at least.
    fn count(&mut self, wanted: &Wanted, normal: (Flow, LineId), boost: (Flow, LineId)) -> (Traced<u32>, Why) {
        let slack = self.givens.value(GivenId::CountSlack);
        let loads = [(wanted.normal, normal.0), (wanted.boost, boost.0)].map(|(flow, limit)| load(flow, limit));
        let by_speed = f64::ceil(loads[0].max(loads[1]) - slack).max(1.0) as u32;
        let every = self.givens.value(GivenId::TubesLeast) as u32;
        let least = match wanted.kind.is_kitchen() && wanted.air == Air::Extract {
            true => every.max(self.givens.value(GivenId::KitchenTubes) as u32),
            false => every.max(1),
        };
        let tubes = by_speed.max(least);
        let why = match tubes {
            _ if tubes > by_speed && least > every => Why::Kitchen,
            _ if tubes > by_speed => Why::Least,
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
            self.bore(),
        ];
        let value = (speed.as_ms(), Unit::MetrePerSecond);
        let line = self.working.record_for(Some(wanted.room), Formula::TubeSpeed, value, &ARITHMETIC, &terms);
        Traced { value: speed, line }
    }

    fn cut(&mut self, room: RoomId, legs: Length) -> Traced<Length> {
        let cut = to_cut(legs, self.givens);
        let terms = [
            Term::new("L", legs.as_m(), Unit::Metre, Origin::Counted),
            self.givens.term("end", GivenId::CutEnd),
            self.givens.term("waste", GivenId::CutWaste),
        ];
        let value = (cut.as_m(), Unit::Metre);
        let line = self.working.record_for(Some(room), Formula::CutLength, value, &PRACTICE, &terms);
        Traced { value: cut, line }
    }

    pub(super) fn ports(&mut self, manifolds: &[Manifold], air: Air) -> Traced<u32> {
        let own = || manifolds.iter().filter(|own| own.air == air);
        let sum = |count: fn(&Manifold) -> u32| own().fold(0, |sum: u32, own| sum.saturating_add(count(own)));
        let (tubes, ports) = (sum(|own| own.tubes), sum(|own| own.ports));
        let terms = [
            Term::new("tubes", f64::from(tubes), Unit::Count, Origin::Counted),
            Term::new("m", own().count() as f64, Unit::Count, Origin::Counted),
            self.givens.term("spare", GivenId::SparePorts),
        ];
        let line = self.working.record(Formula::Ports, (f64::from(ports), Unit::Count), &PRACTICE, &terms);
        Traced { value: ports, line }
    }
}

/// (legs + an allowance for each end) × (1 + waste).
pub(super) fn to_cut(legs: Length, givens: &Givens) -> Length {
    let ends = 2.0;
    (legs + givens.length(GivenId::CutEnd) * ends) * (1.0 + givens.value(GivenId::CutWaste))
}

fn load(flow: Flow, limit: Flow) -> f64 {
    if limit > Flow::ZERO { flow.as_m3h() / limit.as_m3h() } else { 0.0 }
}
