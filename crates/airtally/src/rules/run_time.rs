//! Systems that do not run all the time: more air while they do.

use super::Brief;
use super::table::between;
use crate::formula::Formula;
use crate::house::{Field, HouseField};
use crate::issue::Trouble;
use crate::quantity::Unit::{CubicFootPerMinute as CFM, Percent, Ratio};
use crate::source::Source;
use crate::working::{LineId, Origin, Term};

/// How much more, for the share of every four hours in which the system runs.
#[derive(Clone, Copy)]
pub enum Factors {
    /// Share in % and factor, as printed: straight lines between, nothing outside.
    Printed(&'static [(f64, f64)]),
    /// The same average, from this share on, %.
    SameAverage(f64),
}

/// The rate while the system runs, where it does not run all the time and the rule set allows that.
pub fn while_running(
    brief: &mut Brief,
    (factors, source): (Factors, &'static Source),
    (cfm, line): (f64, LineId),
) -> Option<(f64, LineId)> {
    let share = brief.facts.run_time.filter(|share| *share < 100.0)?;
    let (factor, least) = match factors {
        Factors::Printed(table) => (between(share, table), table.first().map_or(0.0, |row| row.0)),
        Factors::SameAverage(least) => ((share >= least).then(|| 100.0 / share), least),
    };
    let Some(factor) = factor else {
        brief.say_at(HouseField::RunTime, Trouble::RunTimeNotAllowed { min: least });
        return None;
    };
    let terms = [
        Term::new("Q", cfm, CFM, Origin::Line(line)),
        Term::new("t", share, Percent, Origin::Typed(Field::House(HouseField::RunTime))),
        Term::new("f", factor, Ratio, Origin::Printed(source)),
    ];
    let more = cfm * factor;
    let line = brief.working.record(Formula::IrcRunTime, (more, CFM), source, &terms);
    Some((more, line))
}
