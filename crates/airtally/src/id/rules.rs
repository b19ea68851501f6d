//! Rule sets by edition.

/// A rule set in one edition.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum RuleSet {
    /// ASHRAE 62.2, the equation of 2016 to 2022.
    Ashrae2016,
    /// International Residential Code 2015.
    Irc2015,
    /// International Residential Code 2018.
    Irc2018,
    /// International Residential Code 2021.
    Irc2021,
    /// International Residential Code 2024.
    Irc2024,
    /// Approved Document F volume 1, 2021, England.
    #[default]
    Adf2021,
    /// DIN 1946-6, 2009.
    Din2009,
    /// DIN 1946-6, 2019.
    Din2019,
    /// Room count of CAN/CSA-F326 and Ontario 9.32.3.3.
    Canada,
}

impl RuleSet {
    /// All rule sets.
    pub const ALL: [RuleSet; 9] = [
        Self::Adf2021,
        Self::Din2019,
        Self::Din2009,
        Self::Ashrae2016,
        Self::Irc2024,
        Self::Irc2021,
        Self::Irc2018,
        Self::Irc2015,
        Self::Canada,
    ];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Ashrae2016 => "ashrae-62.2-2016",
            Self::Irc2015 => "irc-2015",
            Self::Irc2018 => "irc-2018",
            Self::Irc2021 => "irc-2021",
            Self::Irc2024 => "irc-2024",
            Self::Adf2021 => "adf-2021",
            Self::Din2009 => "din-1946-6-2009",
            Self::Din2019 => "din-1946-6-2019",
            Self::Canada => "canada-room-count",
        }
    }
}
