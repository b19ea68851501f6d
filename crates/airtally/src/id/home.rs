//! Where the rule set is at home, for steps whose source differs from place to place.

use super::RuleSet;

/// The part of the world that a rule set is written for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Home {
    /// England.
    England,
    /// The United States.
    UnitedStates,
    /// Germany.
    Germany,
    /// Canada.
    Canada,
    /// Any other place.
    Elsewhere,
}

impl Home {
    /// Where a rule set is at home.
    pub const fn of(rules: RuleSet) -> Self {
        match rules {
            RuleSet::Adf2021 => Self::England,
            RuleSet::Din2009 | RuleSet::Din2019 => Self::Germany,
            RuleSet::Canada | RuleSet::CanadaNbc => Self::Canada,
            rules if rules.is_american() => Self::UnitedStates,
            _ => Self::Elsewhere,
        }
    }

    /// A stable id for texts.
    pub const fn id(self) -> &'static str {
        match self {
            Self::England => "england",
            Self::UnitedStates => "us",
            Self::Germany => "germany",
            Self::Canada => "canada",
            Self::Elsewhere => "elsewhere",
        }
    }
}
