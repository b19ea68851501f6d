//! Dealing whole steps to rooms by largest remainder, never below a minimum.

use crate::house::RoomId;
use crate::quantity::Flow;
use crate::working::LineId;
use std::cmp::Ordering;
use std::collections::BinaryHeap;

/// What one room asks for.
#[derive(Clone, Copy, Debug)]
pub struct Wish {
    /// The room.
    pub room: RoomId,
    /// The least it may get.
    pub minimum: Flow,
    /// Who asks for that least, where it is asked for.
    pub line: Option<LineId>,
    /// Its part of what is left over.
    pub weight: f64,
}

/// What one room is dealt.
#[derive(Clone, Copy, Debug)]
pub struct Card {
    /// Its part before rounding.
    pub ideal: Flow,
    /// Whole steps.
    pub steps: u32,
}

impl Wish {
    /// Fewest steps: the minimum rounded up, and one at least, since a terminal without air is no terminal.
    pub fn least(&self, step: Flow) -> u32 {
        steps_up(self.minimum, step).max(1)
    }
}

/// Arithmetic may be this far off a whole step and still count as on it: 20 cfm is ten steps of 2 cfm.
const ON_STEP: f64 = 1e-9;

/// Whole steps that make at least this flow.
pub fn steps_up(flow: Flow, step: Flow) -> u32 {
    let steps = flow.as_m3h() / step.as_m3h();
    f64::ceil(steps * (1.0 - ON_STEP)).max(0.0) as u32
}

/// Deals `total` steps. The caller makes sure that `total` is at least the rooms' least steps together.
pub fn deal(wishes: &[Wish], total: u32, step: Flow) -> Vec<Card> {
    let mut cards = ideals(wishes, total, step);
    for (card, wish) in cards.iter_mut().zip(wishes) {
        let floor = f64::floor(card.ideal.as_m3h() / step.as_m3h() + ON_STEP).max(0.0) as u32;
        card.steps = floor.max(wish.least(step));
    }
    let dealt = |cards: &[Card]| cards.iter().fold(0_u32, |sum, card| sum.saturating_add(card.steps));
    let mut missing = i64::from(total) - i64::from(dealt(&cards));
    while missing != 0 && !cards.is_empty() {
        let moved = one_round(&mut cards, wishes, missing, step);
        if moved == 0 {
            break;
        }
        missing -= moved;
    }
    cards
}

/// A room's part: its minimum and its weight's part of the rest. Without any weight all rooms weigh the same.
fn ideals(wishes: &[Wish], total: u32, step: Flow) -> Vec<Card> {
    let weights = wishes.iter().fold(0.0, |sum, wish| sum + wish.weight);
    let minimums = wishes.iter().fold(Flow::ZERO, |sum, wish| sum + wish.minimum);
    let rest = (step * f64::from(total) - minimums).max(Flow::ZERO);
    let part = |wish: &Wish| if weights > 0.0 { wish.weight / weights } else { 1.0 / wishes.len() as f64 };
    wishes.iter().map(|wish| Card { ideal: wish.minimum + rest * part(wish), steps: 0 }).collect()
}

/// Gives or takes at most one step a room, the neediest first; returns how many were given (taken: negative).
fn one_round(cards: &mut [Card], wishes: &[Wish], missing: i64, step: Flow) -> i64 {
    let giving = missing > 0;
    let may_move = |at: usize| giving || cards[at].steps > wishes[at].least(step);
    let mut queue: BinaryHeap<Turn> =
        (0..cards.len()).filter(|at| may_move(*at)).map(|at| Turn::of(&cards[at], at, step, giving)).collect();
    let mut moved = 0;
    while let Some(turn) = queue.pop().filter(|_| moved < missing.abs()) {
        let steps = &mut cards[turn.at].steps;
        *steps = if giving { steps.saturating_add(1) } else { *steps - 1 };
        moved += 1;
    }
    if giving { moved } else { -moved }
}

/// A room's turn: the neediest is first to get a step and last to give one. Of equals the larger is needier, then the
/// earlier.
struct Turn {
    need: f64,
    ideal: f64,
    at: usize,
    giving: bool,
}

impl Turn {
    fn of(card: &Card, at: usize, step: Flow, giving: bool) -> Self {
        let ideal = card.ideal.as_m3h();
        Self { need: ideal / step.as_m3h() - f64::from(card.steps), ideal, at, giving }
    }
}

impl Ord for Turn {
    fn cmp(&self, other: &Self) -> Ordering {
        let needier = self.need.total_cmp(&other.need);
        let needier = needier.then(self.ideal.total_cmp(&other.ideal)).then(other.at.cmp(&self.at));
        if self.giving { needier } else { needier.reverse() }
    }
}

impl PartialOrd for Turn {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl PartialEq for Turn {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl Eq for Turn {}
