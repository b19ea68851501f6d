//! Sharing the air out: every room gets whole steps, and supply equals extract at every level by construction.
//!
//! For a level with the whole-dwelling flow `W` and room minimums `S` and `E` the total is `T = max(W, ΣS, ΣE)`, rounded
//! up to whole steps. A room gets its minimum and its weight's part of the rest; the steps are dealt by largest remainder
//! and never below a minimum. Both sides are dealt the same number of steps, so they are equal without being adjusted.

mod deal;

use crate::facts::Facts;
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::house::{Display, RoomId};
use crate::issue::{Issue, Place, Trouble};
use crate::quantity::{Flow, Unit};
use crate::rules::{Air, Demand, Follows, Level, Weight};
use crate::source::{ARITHMETIC, PRACTICE};
use crate::working::{LineId, Origin, Term, Traced, Working};
use deal::{Wish, deal, steps_up};

/// The flows of every terminal at every level.
#[derive(Clone, Debug)]
pub struct Shares {
    /// The step the installer can set.
    pub step: Flow,
    /// Unit the step is set in.
    pub unit: Unit,
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
        Self { step, unit, levels: [away, normal, boost] }
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

    /// The sum of one side, in whole steps.
    pub fn steps(&self, air: Air) -> u32 {
        self.side(air).iter().fold(0, |sum, share| sum.saturating_add(share.steps))
    }

    /// What governs, and how far the next is below it.
    pub fn margin(&self) -> Option<(Asked, Option<Flow>)> {
        let first = *self.asked.first()?;
        Some((first, self.asked.get(1).map(|next| first.flow - next.flow)))
    }
}

struct Sharing<'a> {
    demand: &'a Demand,
    givens: &'a Givens,
    working: &'a mut Working,
    step: Flow,
    step_id: GivenId,
    unit: Unit,
}

impl Sharing<'_> {
    fn level(&mut self, level: Level, lower: Option<&LevelShares>) -> LevelShares {
        let counted: &[Level] = if level == Level::Boost { &[Level::Normal, Level::Boost] } else { &[Level::Normal] };
        let supply = self.wishes(Air::Supply, counted);
        let extract = self.wishes(Air::Extract, counted);
        let asked = self.asked(level, (&supply, &extract), lower);
        self.dealt(level, asked, supply, extract)
    }

    /// Valves are set at normal and stay; away only turns the fans down.
    fn away(&mut self, normal: &LevelShares) -> LevelShares {
        let Follows::Share(id) = self.demand.away else {
            return LevelShares { level: Level::Away, ..normal.clone() };
        };
        let mut asked = vec![self.share_of(normal, id)];
        if let Some(whole) = self.demand.whole(Level::Away) {
            asked.push(Asked { by: Asks::WholeDwelling, flow: whole.flow, line: whole.line });
        }
        sort(&mut asked);
        let as_normal = |shares: &[Share]| -> Vec<Wish> {
            shares
                .iter()
                .map(|share| Wish { room: share.room, minimum: Flow::ZERO, weight: share.flow.as_m3h() })
                .collect()
        };
        let mut away = self.dealt(Level::Away, asked, as_normal(&normal.supply), as_normal(&normal.extract));
        if away.total > normal.total {
            away = LevelShares { level: Level::Away, asked: away.asked, required: away.required, ..normal.clone() };
        }
        away
    }

    fn wishes(&self, air: Air, levels: &[Level]) -> Vec<Wish> {
        let weights: &[Weight] = match air {
            Air::Supply => &self.demand.supply,
            Air::Extract => &self.demand.extract,
        };
        let minimum = |room| self.demand.room(room, air, levels).map_or(Flow::ZERO, |asked| asked.flow);
        weights.iter().map(|w| Wish { room: w.room, minimum: minimum(w.room), weight: w.weight }).collect()
    }

    fn asked(
        &mut self,
        level: Level,
        (supply, extract): (&[Wish], &[Wish]),
        lower: Option<&LevelShares>,
    ) -> Vec<Asked> {
        let mut asked = Vec::new();
        if let Some(whole) = self.demand.whole(level) {
            asked.push(Asked { by: Asks::WholeDwelling, flow: whole.flow, line: whole.line });
        }
        for (by, wishes) in [(Asks::SupplyRooms, supply), (Asks::ExtractRooms, extract)] {
            let flow = wishes.iter().fold(Flow::ZERO, |sum, wish| sum + wish.minimum);
            if flow > Flow::ZERO {
                let value = self.shown(flow);
                let terms = [Term::new("Σq", value.0, value.1, Origin::Counted)];
                let line = self.working.record(Formula::SumOfRooms, value, &ARITHMETIC, &terms);
                asked.push(Asked { by, flow, line });
            }
        }
        if let (Level::Boost, Follows::Share(id), Some(normal)) = (level, self.demand.boost, lower) {
            asked.push(self.share_of(normal, id));
        }
        if let Some(lower) = lower {
            asked.push(Asked { by: Asks::LowerLevel, flow: lower.required.value, line: lower.required.line });
        }
        sort(&mut asked);
        asked
    }

    fn share_of(&mut self, normal: &LevelShares, id: GivenId) -> Asked {
        let share = self.givens.get(id);
        let flow = normal.required.value * share.value;
        let (value, unit) = self.shown(normal.required.value);
        let terms = [self.givens.term("f", id), Term::new("T", value, unit, Origin::Line(normal.required.line))];
        let line = self.working.record(Formula::LevelShare, self.shown(flow), share.source, &terms);
        Asked { by: Asks::ShareOfNormal, flow, line }
    }

    fn dealt(&mut self, level: Level, asked: Vec<Asked>, supply: Vec<Wish>, extract: Vec<Wish>) -> LevelShares {
        let required = asked.first().map_or(Flow::ZERO, |first| first.flow);
        let terms: Vec<Term> = asked.iter().map(|asked| self.asked_term(asked)).collect();
        let line = self.working.record(Formula::LevelTotal, self.shown(required), &ARITHMETIC, &terms);
        let served = !supply.is_empty() && !extract.is_empty();
        let least = |wishes: &[Wish]| wishes.iter().map(|w| w.least(self.step)).fold(0_u32, u32::saturating_add);
        let total = match served {
            true => steps_up(required, self.step).max(least(&supply)).max(least(&extract)),
            false => 0,
        };
        let flow = self.step * f64::from(total);
        let mut side = |wishes: Vec<Wish>| if served { self.shares(&wishes, total, (flow, line)) } else { Vec::new() };
        let (supply, extract) = (side(supply), side(extract));
        LevelShares { level, required: Traced { value: required, line }, asked, total: flow, supply, extract }
    }

    fn shares(&mut self, wishes: &[Wish], total: u32, (flow, total_line): (Flow, LineId)) -> Vec<Share> {
        let dealt = deal(wishes, total, self.step);
        let weights = wishes.iter().fold(0.0, |sum, wish| sum + wish.weight);
        let minimums = wishes.iter().fold(Flow::ZERO, |sum, wish| sum + wish.minimum);
        let rest = self.shown(flow - minimums);
        let cards = wishes.iter().zip(dealt);
        cards
            .map(|(wish, card)| {
                let minimum = self.shown(wish.minimum);
                let ideal = self.shown(card.ideal);
                let terms = [
                    Term::new("q_min", minimum.0, minimum.1, Origin::Counted),
                    Term::new("rest", rest.0, rest.1, Origin::Line(total_line)),
                    Term::new("w", wish.weight, Unit::Ratio, Origin::Counted),
                    Term::new("Σw", weights, Unit::Ratio, Origin::Counted),
                ];
                let room = Some(wish.room);
                let wished = self.working.record_for(room, Formula::IdealShare, ideal, &PRACTICE, &terms);
                let flow = self.step * f64::from(card.steps);
                let terms = [
                    Term::new("q", ideal.0, ideal.1, Origin::Line(wished)),
                    self.givens.term("step", self.step_id),
                    Term::new("n", f64::from(card.steps), Unit::Count, Origin::Counted),
                ];
                let value = self.shown(flow);
                let line = self.working.record_for(room, Formula::WholeSteps, value, &ARITHMETIC, &terms);
                Share { room: wish.room, steps: card.steps, flow, minimum: wish.minimum, line }
            })
            .collect()
    }

    fn asked_term(&self, asked: &Asked) -> Term {
        let symbol = match asked.by {
            Asks::WholeDwelling => "W",
            Asks::SupplyRooms => "ΣS",
            Asks::ExtractRooms => "ΣE",
            Asks::ShareOfNormal => "f·T",
            Asks::LowerLevel => "T_lower",
        };
        let (value, unit) = self.shown(asked.flow);
        Term::new(symbol, value, unit, Origin::Line(asked.line))
    }

    fn shown(&self, flow: Flow) -> (f64, Unit) {
        (flow.as_unit(self.unit).unwrap_or(0.0), self.unit)
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

/// Largest first; equal ones keep their order.
fn sort(asked: &mut [Asked]) {
    asked.sort_by(|a, b| b.flow.as_m3h().total_cmp(&a.flow.as_m3h()));
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
