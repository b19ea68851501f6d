//! Whether a level is balanced, by each wording of the American residential code.

use crate::formula::Formula;
use crate::quantity::{Flow, Unit};
use crate::rules::RuleSet;
use crate::rules::balance::Balance;
use crate::source::Source;
use crate::working::{LineId, Origin, Term, Working};

/// A wording of "balanced".
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wording {
    /// Extract within 10 % of supply.
    OfSupply,
    /// Supply and extract each within 10 % of their average.
    OfAverage,
}

/// What a wording comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Judged {
    /// The wording.
    pub wording: Wording,
    /// Whether it holds.
    pub holds: bool,
    /// How far apart supply and extract are by it, in percent.
    pub percent: f64,
    /// How that came about.
    pub line: LineId,
}

static OF_SUPPLY: Source = Source::published("IRC", "2021", "chapter 2, balanced ventilation");
static OF_AVERAGE: Source = Source::published("IRC", "2021 and 2024", "chapter 2, balanced ventilation system");

/// Both wordings on a supply and an extract total; `None` under rule sets without them, and where nothing flows.
///
/// * Equation: `|S − E| / S` and `|S − E| / (S + E)`, each at most 10 %
/// * Units: %
/// * Valid range: as [`Balance`]
/// * Source: IRC 2021 and 2024, chapter 2
pub(super) fn judge(
    rules: RuleSet,
    totals: [(Flow, LineId); 2],
    unit: Unit,
    working: &mut Working,
) -> Option<[Judged; 2]> {
    if !matches!(rules, RuleSet::Irc2021 | RuleSet::Irc2024) {
        return None;
    }
    let [supply, extract] = totals.map(|(flow, _)| flow);
    let balance = Balance::of(supply, extract)?;
    let term = |symbol, (flow, line): (Flow, LineId)| {
        Term::new(symbol, flow.as_unit(unit).unwrap_or_default(), unit, Origin::Line(line))
    };
    let terms = [term("S", totals[0]), term("E", totals[1])];
    let mut judged = |wording, formula, source, (share, holds): (f64, bool)| {
        let percent = share * 100.0;
        let line = working.record(formula, (percent, Unit::Percent), source, &terms);
        Judged { wording, holds, percent, line }
    };
    let of_supply = (balance.of_supply(), balance.within_tenth_of_supply());
    let of_average = (balance.from_average(), balance.within_tenth_of_average());
    Some([
        judged(Wording::OfSupply, Formula::OffSupply, &OF_SUPPLY, of_supply),
        judged(Wording::OfAverage, Formula::OffAverage, &OF_AVERAGE, of_average),
    ])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::source::ARITHMETIC;

    /// IRC 2021, chapter 2: 110 and 90 cfm pass by the average and fail by the supply; 112 and 88 fail both.
    #[test]
    fn the_two_wordings_disagree() {
        let judged = |supply, extract, rules| {
            let mut working = Working::default();
            let line = working.record(Formula::WholeTotal, (0.0, Unit::CubicFootPerMinute), &ARITHMETIC, &[]);
            let totals = [supply, extract].map(|cfm| (Flow::from_cfm(cfm), line));
            judge(rules, totals, Unit::CubicFootPerMinute, &mut working)
        };
        let both = |supply, extract| judged(supply, extract, RuleSet::Irc2021).unwrap();
        let [supply, average] = both(110.0, 90.0);
        assert_eq!((supply.holds, average.holds), (false, true));
        assert!((supply.percent - 18.2).abs() < 0.05 && (average.percent - 10.0).abs() < 1e-9);
        assert_eq!(both(112.0, 88.0).map(|one| one.holds), [false, false]);
        assert_eq!(both(100.0, 91.0).map(|one| one.holds), [true, true]);
        assert_eq!(judged(110.0, 90.0, RuleSet::Adf2021), None);
        assert_eq!(judged(0.0, 0.0, RuleSet::Irc2024), None);
        assert!((both(0.0, 40.0)[0].percent - 100.0).abs() < 1e-9);
    }
}
