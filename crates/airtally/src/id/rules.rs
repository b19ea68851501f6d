//! Rule sets by edition.

/// A rule set in one edition.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum RuleSet {
    /// Approved Document F volume 1, 2021, England.
    #[default]
    Adf2021,
    /// Ireland, Technical Guidance Document F, 2019.
    Ireland2019,
    /// Netherlands, building decree 2012, kept by its 2024 successor.
    Netherlands2012,
    /// France, order of 24 March 1982, amended 1983.
    France1982,
    /// DIN 1946-6, 2019.
    Din2019,
    /// DIN 1946-6, 2009.
    Din2009,
    /// EN 16798-1:2019 residential, by category.
    En16798,
    /// Passive house criteria.
    PassiveHouse,
    /// ASHRAE 62.2, the equation of 2016 to 2022.
    Ashrae2016,
    /// ASHRAE 62.2, 2013.
    Ashrae2013,
    /// ASHRAE 62.2, 2010 and before.
    Ashrae2010,
    /// International Residential Code 2024.
    Irc2024,
    /// International Residential Code 2021.
    Irc2021,
    /// International Residential Code 2018.
    Irc2018,
    /// International Residential Code 2015.
    Irc2015,
    /// Washington State's amendment of the IRC 2021.
    Washington2021,
    /// International Mechanical Code, section 403.
    Imc,
    /// Room count of CAN/CSA-F326 and Ontario 9.32.3.3.
    Canada,
    /// National Building Code of Canada 9.32.3.3, bedroom table.
    CanadaNbc,
}

impl RuleSet {
    /// All rule sets.
    pub const ALL: [RuleSet; 19] = [
        Self::Adf2021,
        Self::Ireland2019,
        Self::Netherlands2012,
        Self::France1982,
        Self::Din2019,
        Self::Din2009,
        Self::En16798,
        Self::PassiveHouse,
        Self::Ashrae2016,
        Self::Ashrae2013,
        Self::Ashrae2010,
        Self::Irc2024,
        Self::Irc2021,
        Self::Irc2018,
        Self::Irc2015,
        Self::Washington2021,
        Self::Imc,
        Self::Canada,
        Self::CanadaNbc,
    ];

    /// An edition of ASHRAE 62.2.
    pub const fn is_ashrae(self) -> bool {
        matches!(self, Self::Ashrae2010 | Self::Ashrae2013 | Self::Ashrae2016)
    }

    /// Written for the United States.
    pub const fn is_american(self) -> bool {
        self.is_ashrae()
            || matches!(
                self,
                Self::Irc2015 | Self::Irc2018 | Self::Irc2021 | Self::Irc2024 | Self::Washington2021 | Self::Imc
            )
    }

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Adf2021 => "adf-2021",
            Self::Ireland2019 => "ireland-tgd-f-2019",
            Self::Netherlands2012 => "netherlands-2012",
            Self::France1982 => "france-1982",
            Self::Din2019 => "din-1946-6-2019",
            Self::Din2009 => "din-1946-6-2009",
            Self::En16798 => "en-16798-1-2019",
            Self::PassiveHouse => "passive-house",
            Self::Ashrae2016 => "ashrae-62.2-2016",
            Self::Ashrae2013 => "ashrae-62.2-2013",
            Self::Ashrae2010 => "ashrae-62.2-2010",
            Self::Irc2024 => "irc-2024",
            Self::Irc2021 => "irc-2021",
            Self::Irc2018 => "irc-2018",
            Self::Irc2015 => "irc-2015",
            Self::Washington2021 => "washington-irc-2021",
            Self::Imc => "imc-403",
            Self::Canada => "canada-room-count",
            Self::CanadaNbc => "canada-nbc",
        }
    }
}
