//! What it costs to move the air.

use super::Side;
use crate::facts::Facts;
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::network::SpecificPower;
use crate::quantity::{Pressure, Unit};
use crate::rules::RuleSet;
use crate::source::Source;
use crate::working::{Origin, Term, Traced, Working};

static SFP: Source = Source::published("EN 13779", "2007", "definition 3.5");

/// The electricity of both fans at normal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Power {
    /// W for each L/s.
    pub specific: Traced<f64>,
    /// The same, of which classes and other units follow.
    pub whole: SpecificPower,
    /// Class of the fan that takes more, 1 is the thriftiest.
    pub class: Option<u8>,
    /// The largest that the chosen rules accept, where they say so.
    pub limit: Option<GivenId>,
}

/// The power of both sides; `None` unless both are there.
pub(super) fn power(sides: &[Side], facts: &Facts, givens: &Givens, working: &mut Working) -> Option<Power> {
    let [supply, extract] = sides else { return None };
    let efficiency = givens.value(GivenId::FanEfficiency);
    let inside = Pressure::of(givens.measure(GivenId::UnitInside))?;
    let of = |side: &Side| SpecificPower::lifting(side.normal.value + inside, efficiency);
    let (first, second) = (of(supply)?, of(extract)?);
    let whole = first.and(second);
    let external = |symbol, side: &Side| {
        Term::new(symbol, side.normal.value.as_pa(), Unit::Pascal, Origin::Line(side.normal.line))
    };
    let terms = [
        external("p_supply", supply),
        external("p_extract", extract),
        givens.term("p_inside", GivenId::UnitInside),
        givens.term("η", GivenId::FanEfficiency),
    ];
    let value = whole.as_w_per_m3s() / LITRES;
    let line = working.record(Formula::SpecificPower, (value, Unit::Ratio), &SFP, &terms);
    let worse = if second > first { second } else { first };
    let limit = match facts.choices.rules {
        RuleSet::Adf2021 => Some(GivenId::SfpEngland),
        RuleSet::Ireland2019 => Some(GivenId::SfpIreland),
        RuleSet::PassiveHouse => Some(GivenId::SfpPassive),
        _ => None,
    };
    Some(Power { specific: Traced { value, line }, whole, class: worse.class(), limit })
}

/// In a cubic metre.
const LITRES: f64 = 1000.0;
