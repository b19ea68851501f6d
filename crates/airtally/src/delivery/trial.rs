//! What comes in every room when something is not as it was planned, while every valve stays as it was set.

use super::plan::{Flows, Met, Plan, Upset};
use super::side::{flowing, plan_of};
use super::{Delivery, Side};
use crate::duct::leak;
use crate::duct::terminal::PowerLaw;
use crate::facts::{Facts, RoomFacts};
use crate::given::{GivenId, Givens};
use crate::house::{Fans, HouseField, Role, RoomId};
use crate::network::Fan;
use crate::on_site::house_pressure;
use crate::power::power;
use crate::quantity::{Area, Flow, Length, Pressure, Unit};
use crate::rules::{Air, Level};
use crate::runs::{Run, Runs};
use crate::shares::Shares;
use crate::transfer::pressure_across;

/// What is not as it was planned.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Trial {
    /// Dirty filters, in supply and in extract.
    pub dirty: [bool; 2],
    /// Ducts leak: as the leak test says where there was one, otherwise as their class allows.
    pub leaks: bool,
    /// Tubes lie as they were pulled, where that was written down.
    pub pulled: bool,
    /// What has happened in one room.
    pub mishap: Option<(RoomId, Mishap)>,
}

/// What can happen to the air of a room.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mishap {
    /// Its door is shut, and there is no gap below it.
    Door,
    /// One of its tubes is kinked to half its bore.
    Kinked,
    /// One of its tubes is crushed until nothing comes through.
    Crushed,
}

impl Mishap {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Door, Self::Kinked, Self::Crushed];
}

/// One side as it then runs.
#[derive(Clone, Debug, PartialEq)]
pub struct Tried {
    /// Which.
    pub air: Air,
    /// Through the unit.
    pub unit: Flow,
    /// Lost through leaks before it comes to a room, or drawn in through them.
    pub leaks: Flow,
    /// What the fan gives outside the unit.
    pub pressure: Pressure,
    /// Whether the fan runs at full speed and still cannot hold the flow.
    pub weak: bool,
    /// Every run.
    pub runs: Vec<Came>,
}

/// What comes through one run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Came {
    /// The room.
    pub room: RoomId,
    /// What was planned.
    pub planned: Flow,
    /// What comes.
    pub got: Flow,
    /// Whether that is further from the plan than a terminal may be.
    pub off: bool,
}

/// The house as it then runs at normal.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcome {
    /// Supply, then extract; a side that cannot be calculated is left out.
    pub sides: Vec<Tried>,
    /// Supply less extract, in the rooms; none unless both sides are there.
    pub surplus: Option<Flow>,
    /// The house against outdoors, where its tightness is known: above nought more comes in than is drawn out.
    pub pressure: Option<Pressure>,
}

impl Came {
    /// How much more or less than planned, %.
    pub fn change(self) -> f64 {
        (self.got / self.planned - 1.0) * 100.0
    }
}

impl Tried {
    /// What comes to all rooms, or from all.
    pub fn rooms(&self) -> Flow {
        self.runs.iter().fold(Flow::ZERO, |sum, came| sum + came.got)
    }
}

/// The house as it then runs.
pub(crate) fn tried(
    (facts, givens): (&Facts, &Givens),
    (shares, runs, delivery): (&Shares, &Runs, &Delivery),
    trial: &Trial,
) -> Outcome {
    let of = |side: &Side| Trying { facts, givens, shares, runs, side }.run(trial);
    let sides: Vec<Tried> = delivery.sides.iter().filter_map(of).collect();
    let surplus = if let [supply, extract] = sides.as_slice() { Some(supply.rooms() - extract.rooms()) } else { None };
    let at_50 = facts.ach50.map(|changes| Flow::from_m3h(changes * facts.volume().as_m3()));
    let pressure = surplus.zip(at_50).and_then(|(surplus, at_50)| pressure_of(surplus, at_50));
    Outcome { sides, surplus, pressure }
}

fn pressure_of(surplus: Flow, at_50: Flow) -> Option<Pressure> {
    let size = house_pressure(surplus.abs(), at_50)?;
    Some(if surplus < Flow::ZERO { Pressure::ZERO - size } else { size })
}

fn came(run: &Run, got: Flow, may: f64) -> Came {
    let off = (got - run.normal).abs() > run.normal * (may + ROUNDING);
    Came { room: run.room, planned: run.normal, got, off }
}

/// A share that no instrument shows.
const ROUNDING: f64 = 1e-6;

struct Trying<'a> {
    facts: &'a Facts,
    givens: &'a Givens,
    shares: &'a Shares,
    runs: &'a Runs,
    side: &'a Side,
}

impl Trying<'_> {
    fn run(&self, trial: &Trial) -> Option<Tried> {
        let own: Vec<&Run> = flowing(self.runs, self.side.air).collect();
        let throttles = self.side.runs.iter().map(|drop| drop.throttle.value);
        let runs = own.iter().copied().zip(throttles).collect();
        let plan = plan_of((self.facts, self.givens), (self.shares, self.runs), runs)?;
        let dirty = trial.dirty[usize::from(self.side.air == Air::Extract)];
        let more = self.givens.value(GivenId::FilterClean) * (self.givens.value(GivenId::FilterDirty) - 1.0);
        let met = |fan: Fan| Met {
            fan,
            filter: Pressure::from_pa(if dirty { more } else { 0.0 }),
            leak: if trial.leaks { self.leak(&plan) } else { None },
            pulled: trial.pulled,
            upset: self.upset(trial.mishap),
        };
        let (flows, weak) = self.held(&plan, met)?;
        let may = self.givens.value(GivenId::TerminalTolerance);
        let runs = own.iter().zip(&flows.runs).map(|(run, got)| came(run, *got, may)).collect();
        Some(Tried { air: self.side.air, unit: flows.unit, leaks: flows.leaks, pressure: flows.pressure, weak, runs })
    }

    /// The fan holds what the unit holds: its speed, or its flow as far as full speed is enough for it.
    fn held(&self, plan: &Plan, met: impl Fn(Fan) -> Met) -> Option<(Flows, bool)> {
        let blower = &self.side.blower;
        let full = || blower.turning(1.0);
        if self.facts.choices.fans == Fans::Speed {
            let fan = blower.normal.map_or_else(full, |speed| blower.turning(speed));
            return Some((plan.flows(&met(fan))?, blower.normal.is_none()));
        }
        let steady = plan.flows(&met(Fan::Steady(plan.normal)))?;
        if !blower.typed || steady.pressure <= blower.most(steady.unit) {
            return Some((steady, false));
        }
        Some((plan.flows(&met(full()))?, true))
    }

    /// All leaks of a side as one opening. Equation: `q = K·A·p^0.65` solved for p.
    fn leak(&self, plan: &Plan) -> Option<PowerLaw> {
        let at_one_pascal = self.tested().unwrap_or_else(|| {
            let around = plan.ducts.section.perimeter();
            let tube =
                |(run, _): &(&Run, Pressure)| around * (run.length(self.givens) * f64::from(run.tubes.value)).as_m();
            let tubes = plan.runs.iter().map(tube).fold(0.0, |sum, wall| sum + wall.as_m());
            let main = plan.mains.trunk.section.perimeter().as_m() * self.main_length(plan).as_m();
            Flow::from_ls(self.givens.value(GivenId::LeakFactor) * (tubes + main))
        });
        let leaks = at_one_pascal.as_m3h();
        let exponent = 1.0 / leak::EXPONENT;
        (leaks > 0.0).then(|| PowerLaw { scale: power(1.0 / leaks, exponent), exponent })
    }

    /// All mains of this side between unit and manifolds.
    fn main_length(&self, plan: &Plan) -> Length {
        let own = plan.manifolds.iter().filter(|manifold| manifold.air == self.side.air);
        let branches = own.filter_map(|manifold| plan.mains.branch(manifold));
        let length = branches.fold(Length::ZERO, |sum, path| sum + path.length);
        if length > Length::ZERO { length } else { self.givens.length(GivenId::MainLength) }
    }

    /// What the leak test says of this side, at 1 Pa.
    fn tested(&self) -> Option<Flow> {
        let field = if self.side.air == Air::Supply { HouseField::LeakSupply } else { HouseField::LeakExtract };
        let flow = Flow::of(self.facts.found(field)?)?;
        let pressure = self.facts.found(HouseField::LeakPressure)?.value_in(Unit::Pascal)?;
        Some(flow * power(1.0 / pressure, leak::EXPONENT))
    }

    fn upset(&self, mishap: Option<(RoomId, Mishap)>) -> Option<(RoomId, Upset)> {
        let (room, mishap) = mishap?;
        let upset = match mishap {
            Mishap::Kinked => Upset::Kinked,
            Mishap::Crushed => Upset::Shut,
            Mishap::Door => self.door(self.facts.rooms.iter().find(|own| own.id == room)?)?,
        };
        Some((room, upset))
    }

    /// The crack around the door, at the flow of the room. A room that has both airs needs no door.
    fn door(&self, room: &RoomFacts) -> Option<Upset> {
        let crack = Area::of(self.givens.measure(GivenId::DoorCrack)).filter(|_| room.role != Role::Both)?;
        let share = self.shares.at(Level::Normal).share(room.id, self.side.air)?.flow;
        let [discharge, density] =
            [GivenId::TransferDischarge, GivenId::TransferDensity].map(|id| self.givens.value(id));
        Some(Upset::Door(pressure_across(share, crack, discharge, density)?, share)).filter(|_| share > Flow::ZERO)
    }
}
