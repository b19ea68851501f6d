//! The same house made in other ways, side by side: other tubes, more of them, other manifolds, other mains.

use crate::delivery::Delivery;
use crate::edit::Edit;
use crate::facts::Facts;
use crate::given::{GivenId, Givens};
use crate::house::{Choices, Field, House, Manifolds, TubeSize};
use crate::money::Money;
use crate::parts::{Quotation, TakeOff};
use crate::quantity::{Length, Pressure, Velocity};
use crate::rules::Level;
use crate::runs::{Runs, round_speed};
use crate::shares::Shares;
use crate::sound;
use crate::working::Working;

/// What differs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// The tube.
    Tube(TubeSize),
    /// The fewest tubes to any room.
    Tubes(u32),
    /// Where the manifolds stand.
    Manifolds(Manifolds),
    /// Bore of the mains and outside ducts, mm.
    Main(u32),
}

/// Ways that stand against each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ways {
    /// Tubes of every size.
    Tube,
    /// One tube to a room, or two.
    Tubes,
    /// One manifold, or one a storey.
    Manifolds,
    /// Bores of mains.
    Main,
}

/// What a way comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Alternative {
    /// What differs.
    pub way: Way,
    /// Whether the house is made so.
    pub taken: bool,
    /// Whether it is the one to take.
    pub advised: bool,
    /// Tubes of the house.
    pub tubes: u32,
    /// All tubes together, each as long as its run.
    pub metres: Length,
    /// The run that takes most, at normal.
    pub most: Pressure,
    /// The side that asks more of the unit, at boost.
    pub unit: Pressure,
    /// The loudest room, at normal, dB(A).
    pub loudest: Option<f64>,
    /// What parts and work come to, as far as they have prices.
    pub price: Money,
    /// What speaks against it.
    pub against: Against,
}

/// What speaks against a way.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Against {
    /// Nothing.
    Nothing,
    /// A run takes more pressure than is sensible.
    Pressure,
    /// A room gets more tubes than is sensible.
    Tubes,
    /// The air in the mains is too fast.
    Fast,
    /// A room hears more than it should.
    Noise,
    /// The longest run is more than three times the shortest, and one manifold serves both.
    Uneven,
}

impl Ways {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Tube, Self::Tubes, Self::Manifolds, Self::Main];

    fn ways(self) -> Vec<Way> {
        match self {
            Self::Tube => TubeSize::ALL.map(Way::Tube).to_vec(),
            Self::Tubes => FEWEST.map(Way::Tubes).to_vec(),
            Self::Manifolds => Manifolds::ALL.map(Way::Manifolds).to_vec(),
            Self::Main => MAINS.map(Way::Main).to_vec(),
        }
    }
}

impl Way {
    /// The change that makes the house so.
    pub fn edit(self, house: &House) -> Edit {
        let choices = house.choices;
        let set = |id: GivenId, value: u32| {
            let usual = id.given().value == f64::from(value);
            let text = if usual { String::new() } else { value.to_string() };
            Edit::Set(Field::Given(id), text, id.given().unit)
        };
        match self {
            Self::Tube(tube) => Edit::Choose(Choices { tube, ..choices }),
            Self::Manifolds(manifolds) => Edit::Choose(Choices { manifolds, ..choices }),
            Self::Tubes(fewest) => set(GivenId::TubesLeast, fewest),
            Self::Main(mm) => set(GivenId::ColdDuct, mm),
        }
    }

    fn is_taken(self, facts: &Facts, givens: &Givens) -> bool {
        let is = |id, value: u32| givens.value(id) == f64::from(value);
        match self {
            Self::Tube(tube) => facts.choices.tube == tube,
            Self::Manifolds(manifolds) => facts.choices.manifolds == manifolds,
            Self::Tubes(fewest) => is(GivenId::TubesLeast, fewest),
            Self::Main(mm) => is(GivenId::ColdDuct, mm),
        }
    }
}

/// The ways of one kind, smallest first. Of manifolds none where all rooms lie on one storey.
pub(crate) fn alternatives(
    ways: Ways,
    house: &House,
    facts: &Facts,
    shares: &Shares,
    givens: &Givens,
) -> Vec<Alternative> {
    let flat = facts.rooms.windows(2).all(|pair| pair[0].storey == pair[1].storey);
    if ways == Ways::Manifolds && flat {
        return Vec::new();
    }
    let made = ways.ways().into_iter().map(|way| Trying { way, house, shares }.with(facts, givens));
    let mut made: Vec<Alternative> = made.collect();
    if let Some(advised) = advised(&made) {
        made[advised].advised = true;
    }
    made
}

/// The first that nothing speaks against: the smallest fits the structure best and costs least. Where something speaks
/// against each, the one that asks least of the unit. Common practice, no source.
fn advised(made: &[Alternative]) -> Option<usize> {
    let fine = made.iter().position(|own| own.against == Against::Nothing);
    let least = || (0..made.len()).reduce(|least, at| if made[at].unit < made[least].unit { at } else { least });
    fine.or_else(least)
}

struct Trying<'a> {
    way: Way,
    house: &'a House,
    shares: &'a Shares,
}

impl Trying<'_> {
    fn with(&self, facts: &Facts, givens: &Givens) -> Alternative {
        let taken = self.way.is_taken(facts, givens);
        let (mut facts, mut givens) = (facts.clone(), givens.clone());
        match self.way {
            Way::Tube(tube) => facts.choices.tube = tube,
            Way::Manifolds(manifolds) => facts.choices.manifolds = manifolds,
            Way::Tubes(fewest) => givens.put(GivenId::TubesLeast, f64::from(fewest)),
            Way::Main(mm) => givens.put(GivenId::ColdDuct, f64::from(mm)),
        }
        self.comes_to(taken, &facts, &givens)
    }

    fn comes_to(&self, taken: bool, facts: &Facts, givens: &Givens) -> Alternative {
        let (mut working, mut issues) = (Working::default(), Vec::new());
        let shares = self.shares;
        let runs = Runs::of(facts, shares, givens, &mut working, &mut issues);
        let delivery = Delivery::of((facts, givens), (shares, &runs), &mut working, &mut issues);
        let chain = (shares, &runs, &delivery);
        let heard = sound::heard((facts, givens), chain, &mut working, &mut issues);
        let take_off = TakeOff::of((facts, givens), chain, &mut working, &mut issues);
        let quotation = Quotation::of(&take_off, self.house, givens, &mut issues);
        let length = |run: &crate::runs::Run| run.length(givens) * f64::from(run.tubes.value);
        let drops = delivery.sides.iter().flat_map(|side| &side.runs);
        let most = drops.fold(Pressure::ZERO, |most, drop| most.max(drop.normal.value));
        let loudest = heard.iter().map(|heard| heard.normal.value).reduce(f64::max);
        let is_loud = heard.iter().any(|heard| heard.normal.value > givens.value(heard.limit));
        Alternative {
            way: self.way,
            taken,
            advised: false,
            tubes: runs.all_tubes(),
            metres: runs.runs.iter().fold(Length::ZERO, |sum, run| sum + length(run)),
            most,
            unit: delivery.sides.iter().fold(Pressure::ZERO, |most, side| most.max(side.boost.value)),
            loudest,
            price: quotation.total,
            against: self.against(&runs, most, is_loud, givens),
        }
    }

    fn against(&self, runs: &Runs, most: Pressure, is_loud: bool, givens: &Givens) -> Against {
        let many = runs.runs.iter().any(|run| f64::from(run.tubes.value) > givens.value(GivenId::TubesMany));
        let total = self.shares.at(Level::Normal).total;
        let limit = Velocity::of(givens.measure(GivenId::MainSpeed)).unwrap_or(Velocity::ZERO);
        let fast = || round_speed(total, givens.length(GivenId::ColdDuct)) > limit;
        let about_main = matches!(self.way, Way::Main(_));
        match self.way {
            Way::Manifolds(Manifolds::One) if uneven(runs) => Against::Uneven,
            _ if about_main && fast() => Against::Fast,
            _ if !about_main && most.as_pa() > givens.value(GivenId::RunPressureMost) => Against::Pressure,
            _ if !about_main && many => Against::Tubes,
            _ if is_loud => Against::Noise,
            _ => Against::Nothing,
        }
    }
}

/// Whether the longest typed run is more than three times the shortest. Common practice, no source.
fn uneven(runs: &Runs) -> bool {
    let lengths = || runs.runs.iter().filter_map(|run| run.legs);
    let ends = lengths().reduce(Length::min).zip(lengths().reduce(Length::max));
    ends.is_some_and(|(shortest, longest)| longest > shortest * UNEVEN)
}

const UNEVEN: f64 = 3.0;
/// Tubes to every room at least.
const FEWEST: [u32; 2] = [1, 2];
/// Bores that are sold, mm.
const MAINS: [u32; 5] = [125, 150, 160, 180, 200];

#[cfg(test)]
mod tests;
