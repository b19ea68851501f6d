//! The same house with each size of tube, side by side.

use super::Delivery;
use crate::facts::Facts;
use crate::given::{GivenId, Givens};
use crate::house::TubeSize;
use crate::quantity::{Length, Pressure};
use crate::runs::Runs;
use crate::shares::Shares;
use crate::working::Working;

/// What a size of tube comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Size {
    /// The tube.
    pub tube: TubeSize,
    /// Tubes of the house.
    pub tubes: u32,
    /// All tubes together, each as long as its run.
    pub metres: Length,
    /// The run that takes most, at normal.
    pub most: Pressure,
    /// The side that asks more of the unit, at boost.
    pub unit: Pressure,
    /// What speaks against it.
    pub against: Against,
}

/// What speaks against a size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Against {
    /// Nothing.
    Nothing,
    /// A run takes more pressure than is sensible.
    Pressure,
    /// A room gets more tubes than is sensible.
    Tubes,
}

/// Every size, smallest first.
pub(crate) fn sizes(facts: &Facts, shares: &Shares, givens: &Givens) -> Vec<Size> {
    let mut facts = facts.clone();
    let of = |tube| {
        facts.choices.tube = tube;
        let (mut working, mut issues) = (Working::default(), Vec::new());
        let runs = Runs::of(&facts, shares, givens, &mut working, &mut issues);
        let delivery = Delivery::of((&facts, givens), (shares, &runs), &mut working, &mut issues);
        size(&runs, &delivery, givens)
    };
    TubeSize::ALL.into_iter().map(of).collect()
}

/// The smallest tube that nothing speaks against: it fits the structure best. Where something speaks against each, the one
/// that asks least of the unit. Common practice, no source.
pub fn wisest(sizes: &[Size]) -> Option<TubeSize> {
    let fine = sizes.iter().find(|size| size.against == Against::Nothing);
    let least = || sizes.iter().reduce(|least, size| if size.unit < least.unit { size } else { least });
    fine.or_else(least).map(|size| size.tube)
}

fn size(runs: &Runs, delivery: &Delivery, givens: &Givens) -> Size {
    let usual = givens.length(GivenId::RunLength);
    let metres =
        runs.runs.iter().fold(Length::ZERO, |sum, run| sum + run.legs.unwrap_or(usual) * f64::from(run.tubes.value));
    let drops = delivery.sides.iter().flat_map(|side| &side.runs);
    let most = drops.fold(Pressure::ZERO, |most, drop| most.max(drop.normal.value));
    let unit = delivery.sides.iter().fold(Pressure::ZERO, |most, side| most.max(side.boost.value));
    let many = runs.runs.iter().any(|run| f64::from(run.tubes.value) > givens.value(GivenId::TubesMany));
    let against = match (most.as_pa() > givens.value(GivenId::RunPressureMost), many) {
        (true, _) => Against::Pressure,
        (false, true) => Against::Tubes,
        (false, false) => Against::Nothing,
    };
    Size { tube: runs.tube, tubes: runs.all_tubes(), metres, most, unit, against }
}
