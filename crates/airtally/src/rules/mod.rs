//! The rule sets: one file each, plain functions from facts to [`Requirement`]s.
//!
//! Adding one: a variant of [`RuleSet`], a file with its tables and conditions, its worked examples in `tests/cases`, a label in
//! `airtally-words`.

mod adf;
mod ashrae;
pub mod balance;
mod brief;
mod canada;
mod din;
mod en16798;
mod france;
mod inputs;
mod irc;
mod ireland;
mod local;
mod nbc;
mod netherlands;
mod passive;
mod run_time;
mod table;
mod washington;

pub use crate::id::{Air, Level, RuleSet};
pub use brief::Brief;
pub use inputs::Inputs;

use crate::by_room::ByRoom;
use crate::facts::Facts;
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::house::RoomId;
use crate::issue::{Condition, Issue};
use crate::quantity::Flow;
use crate::source::Source;
use crate::working::{LineId, Working};

/// What a requirement is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Scope {
    /// The whole dwelling.
    Whole,
    /// One room and one direction.
    Room(RoomId, Air),
}

/// A flow that a rule set asks for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Requirement {
    /// The dwelling or a room.
    pub scope: Scope,
    /// At which level.
    pub level: Level,
    /// At least this much, not rounded.
    pub flow: Flow,
    /// How it is calculated and who says so.
    pub line: LineId,
}

/// Another reading of the same rule set that is also legal, for comparison.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Alternative {
    /// How it is calculated.
    pub formula: Formula,
    /// The whole-dwelling rate it gives.
    pub flow: Flow,
    /// Its line in the working.
    pub line: LineId,
}

/// A level that follows from normal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Follows {
    /// The rule states this level's flows itself; never less than a lower level.
    Stated,
    /// A share of the normal total.
    Share(GivenId),
}

/// How much a room counts when air is shared out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Weight {
    /// The room.
    pub room: RoomId,
    /// Its weight against the other rooms'.
    pub weight: f64,
}

/// All that a rule set asks of a house.
#[derive(Clone, Debug)]
pub struct Demand {
    /// Everything it states.
    pub requirements: Vec<Requirement>,
    /// Other legal readings.
    pub alternatives: Vec<Alternative>,
    /// What a credit for leaks would need to know and this house does not say, where the rule set has one.
    pub uncredited: Option<Condition>,
    /// How supply is split among rooms beyond their minimums.
    pub supply: Vec<Weight>,
    /// Who says how supply is split.
    pub supply_source: &'static Source,
    /// How extract is split among rooms beyond their minimums.
    pub extract: Vec<Weight>,
    /// Who says how extract is split.
    pub extract_source: &'static Source,
    /// The most the rule allows at normal, where it names a limit.
    pub most: Option<Flow>,
    /// How boost follows.
    pub boost: Follows,
    /// How away follows.
    pub away: Follows,
}

impl Demand {
    /// What a rule set asks of a house. Works with whatever is known; issues say what is missing.
    pub fn of(rules: RuleSet, facts: &Facts, givens: &Givens, working: &mut Working, issues: &mut Vec<Issue>) -> Self {
        let mut brief = Brief::new(facts, givens, working, issues);
        match rules {
            RuleSet::Ashrae2010 => ashrae::ask(&mut brief, &ashrae::ASHRAE_2010),
            RuleSet::Ashrae2013 => ashrae::ask(&mut brief, &ashrae::ASHRAE_2013),
            RuleSet::Ashrae2016 => ashrae::ask(&mut brief, &ashrae::ASHRAE_2016),
            RuleSet::Irc2015 => irc::ask(&mut brief, &irc::IRC_2015),
            RuleSet::Irc2018 => irc::ask(&mut brief, &irc::IRC_2018),
            RuleSet::Irc2021 => irc::ask(&mut brief, &irc::IRC_2021),
            RuleSet::Irc2024 => irc::ask(&mut brief, &irc::IRC_2024),
            RuleSet::Adf2021 => adf::ask(&mut brief),
            RuleSet::Din2009 => din::ask(&mut brief, &din::DIN_2009),
            RuleSet::Din2019 => din::ask(&mut brief, &din::DIN_2019),
            RuleSet::Canada => canada::ask(&mut brief),
            RuleSet::CanadaNbc => nbc::ask(&mut brief),
            RuleSet::Ireland2019 => ireland::ask(&mut brief),
            RuleSet::Netherlands2012 => netherlands::ask(&mut brief),
            RuleSet::France1982 => france::ask(&mut brief),
            RuleSet::En16798 => en16798::ask(&mut brief),
            RuleSet::PassiveHouse => passive::ask(&mut brief),
            RuleSet::Washington2021 => washington::ask(&mut brief),
            RuleSet::Imc => irc::ask(&mut brief, &irc::IMC),
        }
        brief.demand
    }

    /// The largest whole-dwelling flow stated for a level, with its line.
    pub fn whole(&self, level: Level) -> Option<Requirement> {
        let stated = self.requirements.iter().filter(|r| r.scope == Scope::Whole && r.level == level);
        stated.copied().reduce(|best, next| if next.flow > best.flow { next } else { best })
    }

    /// The largest flow stated for each room and direction at any of the levels.
    pub fn minimums(&self, air: Air, levels: &[Level]) -> ByRoom<Requirement> {
        let mut minimums: ByRoom<Requirement> = ByRoom::with_space_for(self.requirements.len());
        for asked in self.requirements.iter().filter(|asked| levels.contains(&asked.level)) {
            if let Scope::Room(room, side) = asked.scope
                && side == air
                && minimums.get(room).is_none_or(|least| asked.flow > least.flow)
            {
                minimums.put(room, *asked);
            }
        }
        minimums
    }
}
