//! Sharing one level out.

use super::deal::{Wish, deal, steps_up};
use super::{Asked, Asks, LevelShares, Share};
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::quantity::{Flow, Unit};
use crate::rules::{Air, Demand, Follows, Level, Weight};
use crate::source::{ARITHMETIC, PRACTICE};
use crate::working::{LineId, Origin, Term, Traced, Working};

/// Everything a level is shared out with.
pub struct Sharing<'a> {
    /// What the rules ask.
    pub demand: &'a Demand,
    /// The registry.
    pub givens: &'a Givens,
    /// Where lines are recorded.
    pub working: &'a mut Working,
    /// The step an installer can set.
    pub step: Flow,
    /// Where the step comes from.
    pub step_id: GivenId,
    /// The unit flows are set and shown in.
    pub unit: Unit,
}

impl Sharing<'_> {
    /// What asks at normal, and how much is asked for at away, normal and boost, before anything is shared out.
    pub fn required(&mut self) -> (Vec<Asked>, [Flow; 3]) {
        let asked = self.asked_at(Level::Normal, None);
        let normal = self.total(&asked);
        let boost = self.asked_at(Level::Boost, Some(normal));
        let boost = self.total(&boost).value;
        let away = self.away_asked(normal).map(|asked| self.total(&asked).value);
        (asked, [away.unwrap_or(normal.value), normal.value, boost])
    }

    fn asked_at(&mut self, level: Level, lower: Option<Traced<Flow>>) -> Vec<Asked> {
        let (supply, extract) = self.both_wishes(level);
        self.asked(level, (&supply, &extract), lower)
    }

    /// Normal, or boost above it.
    pub fn level(&mut self, level: Level, lower: Option<&LevelShares>) -> LevelShares {
        let (supply, extract) = self.both_wishes(level);
        let asked = self.asked(level, (&supply, &extract), lower.map(|lower| lower.required));
        self.dealt(level, asked, supply, extract)
    }

    /// Valves are set at normal and stay; away only turns the fans down.
    pub fn away(&mut self, normal: &LevelShares) -> LevelShares {
        let Some(asked) = self.away_asked(normal.required) else {
            return LevelShares { level: Level::Away, ..normal.clone() };
        };
        let as_normal = |shares: &[Share]| -> Vec<Wish> {
            shares
                .iter()
                .map(|share| Wish { room: share.room, minimum: Flow::ZERO, line: None, weight: share.flow.as_m3h() })
                .collect()
        };
        let mut away = self.dealt(Level::Away, asked, as_normal(&normal.supply), as_normal(&normal.extract));
        if away.total > normal.total {
            away = LevelShares { level: Level::Away, asked: away.asked, required: away.required, ..normal.clone() };
        }
        away
    }

    /// What asks for air when nobody is at home; `None` where the rules leave it at normal.
    fn away_asked(&mut self, normal: Traced<Flow>) -> Option<Vec<Asked>> {
        let mut asked = match self.demand.away {
            Follows::Share(id) => vec![self.share_of(normal, id)],
            Follows::Stated => Vec::new(),
        };
        if let Some(whole) = self.demand.whole(Level::Away) {
            asked.push(Asked { by: Asks::WholeDwelling, flow: whole.flow, line: whole.line });
        }
        sort(&mut asked);
        (!asked.is_empty()).then_some(asked)
    }

    fn both_wishes(&self, level: Level) -> (Vec<Wish>, Vec<Wish>) {
        let counted: &[Level] = if level == Level::Boost { &[Level::Normal, Level::Boost] } else { &[Level::Normal] };
        (self.wishes(Air::Supply, counted), self.wishes(Air::Extract, counted))
    }

    fn wishes(&self, air: Air, levels: &[Level]) -> Vec<Wish> {
        let weights: &[Weight] = match air {
            Air::Supply => &self.demand.supply,
            Air::Extract => &self.demand.extract,
        };
        let minimums = self.demand.minimums(air, levels);
        let wish = |weight: &Weight| {
            let least = minimums.get(weight.room);
            let (minimum, line) = least.map_or((Flow::ZERO, None), |least| (least.flow, Some(least.line)));
            Wish { room: weight.room, minimum, line, weight: weight.weight }
        };
        weights.iter().map(wish).collect()
    }

    fn asked(
        &mut self,
        level: Level,
        (supply, extract): (&[Wish], &[Wish]),
        lower: Option<Traced<Flow>>,
    ) -> Vec<Asked> {
        let mut asked = Vec::new();
        if let Some(whole) = self.demand.whole(level) {
            asked.push(Asked { by: Asks::WholeDwelling, flow: whole.flow, line: whole.line });
        }
        for (by, wishes) in [(Asks::SupplyRooms, supply), (Asks::ExtractRooms, extract)] {
            let flow = wishes.iter().fold(Flow::ZERO, |sum, wish| sum + wish.minimum);
            if flow > Flow::ZERO {
                let value = self.shown(flow);
                let terms: Vec<Term> = wishes.iter().filter_map(|wish| self.least_term(wish)).collect();
                let line = self.working.record(Formula::SumOfRooms, value, &ARITHMETIC, &terms);
                asked.push(Asked { by, flow, line });
            }
        }
        if let (Level::Boost, Follows::Share(id), Some(normal)) = (level, self.demand.boost, lower) {
            asked.push(self.share_of(normal, id));
        }
        if let Some(lower) = lower {
            asked.push(Asked { by: Asks::LowerLevel, flow: lower.value, line: lower.line });
        }
        sort(&mut asked);
        asked
    }

    fn share_of(&mut self, normal: Traced<Flow>, id: GivenId) -> Asked {
        let share = self.givens.get(id);
        let flow = normal.value * share.value;
        let (value, unit) = self.shown(normal.value);
        let terms = [self.givens.term("f", id), Term::new("T", value, unit, Origin::Line(normal.line))];
        let line = self.working.record(Formula::LevelShare, self.shown(flow), share.source, &terms);
        Asked { by: Asks::ShareOfNormal, flow, line }
    }

    fn dealt(&mut self, level: Level, asked: Vec<Asked>, supply: Vec<Wish>, extract: Vec<Wish>) -> LevelShares {
        let required = self.total(&asked);
        let served = !supply.is_empty() && !extract.is_empty();
        let least = |wishes: &[Wish]| wishes.iter().map(|w| w.least(self.step)).fold(0_u32, u32::saturating_add);
        let total = match served {
            true => steps_up(required.value, self.step).max(least(&supply)).max(least(&extract)),
            false => 0,
        };
        let flow = self.step * f64::from(total);
        let total_line = self.set(required, flow);
        let mut side =
            |wishes: Vec<Wish>| if served { self.shares(&wishes, total, (flow, required.line)) } else { Vec::new() };
        let (supply, extract) = (side(supply), side(extract));
        LevelShares { level, required, asked, total: flow, total_line, balance: None, supply, extract }
    }

    /// T in whole steps.
    fn set(&mut self, required: Traced<Flow>, total: Flow) -> LineId {
        let (value, unit) = self.shown(required.value);
        let terms = [Term::new("T", value, unit, Origin::Line(required.line)), self.givens.term("step", self.step_id)];
        self.working.record(Formula::WholeTotal, self.shown(total), &ARITHMETIC, &terms)
    }

    /// T = max(W, ΣS, ΣE …), the first of what is asked.
    fn total(&mut self, asked: &[Asked]) -> Traced<Flow> {
        let value = asked.first().map_or(Flow::ZERO, |first| first.flow);
        let terms: Vec<Term> = asked.iter().map(|asked| self.asked_term(asked)).collect();
        let line = self.working.record(Formula::LevelTotal, self.shown(value), &ARITHMETIC, &terms);
        Traced { value, line }
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
                    Term::new("q_min", minimum.0, minimum.1, wish.line.map_or(Origin::Counted, Origin::Line)),
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

    /// The least of one room, in a sum.
    fn least_term(&self, wish: &Wish) -> Option<Term> {
        let (value, unit) = self.shown(wish.minimum);
        wish.line.map(|line| Term::new("q", value, unit, Origin::Line(line)))
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

/// Largest first; equal ones keep their order. There are five at most, so each sinks to its place.
fn sort(asked: &mut [Asked]) {
    for from in 1..asked.len() {
        let mut at = from;
        while at > 0 && asked[at - 1].flow < asked[at].flow {
            asked.swap(at - 1, at);
            at -= 1;
        }
    }
}
