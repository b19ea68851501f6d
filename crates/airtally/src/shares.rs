//! Sharing the air out: every room gets whole steps, and supply equals extract at every level by construction.
//!
//! For a level with the whole-dwelling flow `W` and room minimums `S` and `E` the total is `T = max(W, ΣS, ΣE)`, rounded
//! up to whole steps. A room gets its minimum and its weight's part of the rest; the steps are dealt by largest remainder
//! and never below a minimum. Both sides are dealt the same number of steps, so they are equal without being adjusted.

mod balance;
mod deal;
mod sharing;

use crate::by_room::ByRoom;
use crate::facts::Facts;
use crate::given::{GivenId, Givens};
use crate::house::{Display, RoomId};
use crate::issue::{Issue, Place, Trouble};
use crate::quantity::{Flow, Unit};
use crate::rules::{Air, Demand, Level};
use crate::working::{LineId, Traced, Working};
use sharing::Sharing;

pub use balance::{Judged, Wording};

/// The flows of every terminal at every level.
#[derive(Clone, Debug)]
pub struct Shares {
    /// The step the installer can set.
    pub step: Flow,
    /// Unit the step is set in.
    pub unit: Unit,
    /// Where the step comes from.
    pub step_id: GivenId,
    levels: [LevelShares; 3],
}

/// The flows at one level.
#[derive(Clone, Debug)]
pub struct LevelShares {
    /// Which level.
    pub level: Level,
    /// What the rules ask for, before rounding.
    pub required: Traced<Flow>,
    /// Everything that asks for a total, largest first: the first governs, the second gives the margin.
    pub asked: Vec<Asked>,
    /// What is set: whole steps, the same for supply and extract. Zero when one side has no room.
    pub total: Flow,
    /// How the total came about.
    pub total_line: LineId,
    /// Whether it is balanced, by each wording that the rule set has.
    pub balance: Option<[Judged; 2]>,
    /// Rooms that take supply air.
    pub supply: Vec<Share>,
    /// Rooms that are drawn from.
    pub extract: Vec<Share>,
}

/// One terminal's flow at one level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Share {
    /// The room.
    pub room: RoomId,
    /// Whole steps.
    pub steps: u32,
    /// The flow they make.
    pub flow: Flow,
    /// The least it may be.
    pub minimum: Flow,
    /// How it came about.
    pub line: LineId,
}

/// What asks for a total.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asks {
    /// The whole-dwelling rate.
    WholeDwelling,
    /// The supply minimums together.
    SupplyRooms,
    /// The extract minimums together.
    ExtractRooms,
    /// The share of the normal level.
    ShareOfNormal,
    /// The next lower level, which this one may not undercut.
    LowerLevel,
}

/// Something that asks for a total, and how much.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Asked {
    /// What asks.
    pub by: Asks,
    /// For how much.
    pub flow: Flow,
    /// Its line.
    pub line: LineId,
}

impl Shares {
    /// Shares the demand out.
    pub fn of(facts: &Facts, demand: &Demand, givens: &Givens, working: &mut Working, issues: &mut Vec<Issue>) -> Self {
        let (step, unit, step_id) = step_of(facts.choices.display, givens);
        let mut sharing = Sharing { demand, givens, working, step, step_id, unit };
        let normal = sharing.level(Level::Normal, None);
        let boost = sharing.level(Level::Boost, Some(&normal));
        let away = sharing.away(&normal);
        check(facts, &normal, &boost, step, issues);
        if let Some(most) = demand.most.filter(|most| normal.total > *most) {
            let (total, most) = (normal.total.as_m3h(), most.as_m3h());
            issues.push(Issue::new(Place::House, Trouble::AboveMost { total, most }));
        }
        let mut levels = [away, normal, boost];
        for level in &mut levels {
            let totals = Air::BOTH.map(|air| (level.flow(air), level.total_line));
            level.balance = balance::judge(facts.choices.rules, totals, unit, working);
        }
        Self { step, unit, step_id, levels }
    }

    /// Everything that asks for a total at normal, largest first, and what the rules ask for at away, normal and boost,
    /// without sharing it out.
    pub fn required(facts: &Facts, demand: &Demand, givens: &Givens, working: &mut Working) -> (Vec<Asked>, [Flow; 3]) {
        let (step, unit, step_id) = step_of(facts.choices.display, givens);
        Sharing { demand, givens, working, step, step_id, unit }.required()
    }

    /// The flows at a level.
    pub fn at(&self, level: Level) -> &LevelShares {
        let [away, normal, boost] = &self.levels;
        match level {
            Level::Away => away,
            Level::Normal => normal,
            Level::Boost => boost,
        }
    }

    /// All levels, lowest first.
    pub fn levels(&self) -> impl Iterator<Item = &LevelShares> {
        self.levels.iter()
    }
}

impl LevelShares {
    /// The shares of one side.
    pub fn side(&self, air: Air) -> &[Share] {
        match air {
            Air::Supply => &self.supply,
            Air::Extract => &self.extract,
        }
    }

    /// A room's share on one side.
    pub fn share(&self, room: RoomId, air: Air) -> Option<Share> {
        self.side(air).iter().find(|share| share.room == room).copied()
    }

    /// The shares of one side by room, for looking many up.
    pub fn by_room(&self, air: Air) -> ByRoom<Share> {
        let side = self.side(air);
        let mut by_room = ByRoom::with_space_for(side.len());
        side.iter().for_each(|share| by_room.put(share.room, *share));
        by_room
    }

    /// The sum of one side, in whole steps.
    pub fn steps(&self, air: Air) -> u32 {
        self.side(air).iter().fold(0, |sum, share| sum.saturating_add(share.steps))
    }

    /// The sum of one side.
    pub fn flow(&self, air: Air) -> Flow {
        self.side(air).iter().fold(Flow::ZERO, |sum, share| sum + share.flow)
    }

    /// What governs, and how far the next is below it.
    pub fn margin(&self) -> Option<(Asked, Option<Flow>)> {
        let first = *self.asked.first()?;
        Some((first, self.asked.get(1).map(|next| first.flow - next.flow)))
    }
}

fn step_of(display: Display, givens: &Givens) -> (Flow, Unit, GivenId) {
    let id = match display {
        Display::CubicMetres => GivenId::StepCubicMetres,
        Display::Litres => GivenId::StepLitres,
        Display::CubicFeet => GivenId::StepCubicFeet,
    };
    (Flow::of(givens.measure(id)).unwrap_or(Flow::from_m3h(1.0)), display.flow(), id)
}

fn check(facts: &Facts, normal: &LevelShares, boost: &LevelShares, step: Flow, issues: &mut Vec<Issue>) {
    if facts.rooms.is_empty() {
        return;
    }
    if facts.supplied().next().is_none() {
        issues.push(Issue::new(Place::House, Trouble::NoSupplyRoom));
    }
    if facts.drawn().next().is_none() {
        issues.push(Issue::new(Place::House, Trouble::NoExtractRoom));
    }
    let by = (normal.total - normal.required.value).as_m3h();
    if by > step.as_m3h() * (1.0 + 1e-9) {
        issues.push(Issue::new(Place::House, Trouble::StepsRaiseTotal { level: Level::Normal, by }));
    }
    if normal.total <= Flow::ZERO {
        return;
    }
    let factor = boost.total.as_m3h() / normal.total.as_m3h();
    for (everyday, boosted) in normal.extract.iter().zip(&boost.extract) {
        let (gets, needs) = (everyday.flow.as_m3h() * factor, boosted.minimum.as_m3h());
        if needs - gets > step.as_m3h() {
            issues.push(Issue::new(Place::Room(boosted.room), Trouble::BoostFallsShort { gets, needs }));
        }
    }
}
