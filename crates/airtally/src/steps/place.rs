//! Where the rule set is at home, for steps whose source differs from place to place.

use crate::rules::RuleSet;

/// The part of the world that a rule set is written for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Home {
    England,
    UnitedStates,
    Germany,
    Canada,
}

impl Home {
    pub(super) const fn of(rules: RuleSet) -> Self {
        match rules {
            RuleSet::Adf2021 => Self::England,
            RuleSet::Din2009 | RuleSet::Din2019 => Self::Germany,
            RuleSet::Canada => Self::Canada,
            RuleSet::Ashrae2016 | RuleSet::Irc2015 | RuleSet::Irc2018 | RuleSet::Irc2021 | RuleSet::Irc2024 => {
                Self::UnitedStates
            }
        }
    }
}
