//! Where the rule set is at home, for steps whose source differs from place to place.

use crate::rules::RuleSet;

/// The part of the world that a rule set is written for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Home {
    England,
    UnitedStates,
    Germany,
    Canada,
    Elsewhere,
}

impl Home {
    pub(super) const fn of(rules: RuleSet) -> Self {
        match rules {
            RuleSet::Adf2021 => Self::England,
            RuleSet::Din2009 | RuleSet::Din2019 => Self::Germany,
            RuleSet::Canada | RuleSet::CanadaNbc => Self::Canada,
            rules if rules.is_american() => Self::UnitedStates,
            _ => Self::Elsewhere,
        }
    }
}
