//! Prices on the take-off.

use super::take_off::TakeOff;
use crate::given::{GivenId, Givens};
use crate::house::{Field, House};
use crate::id::{Group, Part};
use crate::issue::{Issue, Place};
use crate::money::{Money, Price};

/// What the parts and the work come to.
#[derive(Clone, Debug, PartialEq)]
pub struct Quotation {
    /// A line for each of the take-off, in its order.
    pub lines: Vec<Quoted>,
    /// Everything that is not work.
    pub parts: Money,
    /// Work.
    pub work: Money,
    /// What the person adds on parts.
    pub margin: Money,
    /// Parts, margin and work.
    pub net: Money,
    /// Tax on that.
    pub tax: Money,
    /// What is to pay.
    pub total: Money,
    /// Lines without a price: the total is without them.
    pub unpriced: usize,
}

/// A line with its price.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Quoted {
    /// What it is.
    pub part: Part,
    /// Whose price counts: its own, for work also that of setting out.
    pub priced_as: Part,
    /// Its quantity times its price, where that is known.
    pub amount: Option<Money>,
}

impl Quotation {
    /// Each line is rounded to the hundredth, and the sum is the sum of the lines. Margin and tax are rounded once.
    pub fn of(take_off: &TakeOff, house: &House, givens: &Givens, issues: &mut Vec<Issue>) -> Self {
        let mut quoted = |line: &super::Line| {
            let price = price(house, line.part, issues);
            let amount = price.map(|(_, price)| price.times(line.quantity.value));
            Quoted { part: line.part, priced_as: price.map_or(line.part, |(from, _)| from), amount }
        };
        let lines: Vec<Quoted> = take_off.lines.iter().map(&mut quoted).collect();
        let sum = |work: bool| {
            let own = lines.iter().filter(|line| (line.part.group() == Group::Work) == work);
            own.filter_map(|line| line.amount).fold(Money::ZERO, Money::plus)
        };
        let (parts, work) = (sum(false), sum(true));
        let margin = parts.percent(givens.value(GivenId::PartsMargin));
        let net = parts.plus(margin).plus(work);
        let tax = net.percent(givens.value(GivenId::Tax));
        let unpriced = lines.iter().filter(|line| line.amount.is_none()).count();
        Self { lines, parts, work, margin, net, tax, total: net.plus(tax), unpriced }
    }
}

/// The person's price of a part. Work of every kind costs what the first kind costs, unless it has a price of its own.
fn price(house: &House, part: Part, issues: &mut Vec<Issue>) -> Option<(Part, Price)> {
    let own = read(house, part, issues).map(|price| (part, price));
    let hour = || read(house, Part::SettingOut, &mut Vec::new()).map(|price| (Part::SettingOut, price));
    if part.group() == Group::Work { own.or_else(hour) } else { own }
}

fn read(house: &House, part: Part, issues: &mut Vec<Issue>) -> Option<Price> {
    let field = Field::Price(part);
    let entry = house.entry(field)?;
    match entry.read(field.limit()?) {
        Ok(measure) => Some(Price::of(measure.value())),
        Err(trouble) => {
            issues.push(Issue::new(Place::Field(field), trouble));
            None
        }
    }
}
