//! What is chosen rather than typed.

use super::{Building, Failing, Fans, Fuel, Joist, Manifolds, Outlets, Stud, TubeSize};
use crate::id::RuleSet;
use crate::quantity::Unit;

/// The choices of a house. `None` means the default of the chosen rule set.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Choices {
    /// The rule set that decides.
    pub rules: RuleSet,
    /// The units numbers are shown and set in.
    pub display: Display,
    /// How wet rooms get their exhaust.
    pub wet: Option<WetRooms>,
    /// Who exhausts the kitchen.
    pub kitchen: Option<KitchenDraw>,
    /// Whether a credit that the rule offers is claimed.
    pub credit: Credit,
    /// Printed table or equation, where a rule has both; `None` means the default of the rule.
    pub table: Option<Table>,
    /// Which printed coefficients of ASHRAE 62.2 are used.
    pub print: Print,
    /// Tube the runs are made of.
    pub tube: TubeSize,
    /// New, or lived in.
    pub building: Building,
    /// What the joists are, once somebody has looked.
    pub joist: Option<Joist>,
    /// What the studs are, where tubes cross any.
    pub stud: Option<Stud>,
    /// What burns fuel, once somebody has asked.
    pub fuel: Option<Fuel>,
    /// One outside terminal or two.
    pub outlets: Outlets,
    /// What happens when one fan fails.
    pub failing: Failing,
    /// What the unit holds.
    pub fans: Fans,
    /// Where the manifolds stand.
    pub manifolds: Manifolds,
}

/// A choice by name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Choice {
    /// How wet rooms get their exhaust.
    Wet,
    /// Who exhausts the kitchen.
    Kitchen,
    /// Printed table or equation.
    Table,
    /// Which print of a standard.
    Print,
    /// Whether a credit is claimed.
    Credit,
    /// New or lived in.
    Building,
    /// What the joists are.
    Joist,
    /// What the studs are.
    Stud,
    /// What burns fuel.
    Fuel,
    /// One outside terminal or two.
    Outlets,
    /// What happens when one fan fails.
    Failing,
    /// What the unit holds.
    Fans,
    /// Where the manifolds stand.
    Manifolds,
}

/// Units of display and of the steps an installer can set.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Display {
    /// m³/h, metres.
    #[default]
    CubicMetres,
    /// L/s, metres.
    Litres,
    /// cfm, feet.
    CubicFeet,
}

impl Display {
    /// All three.
    pub const ALL: [Display; 3] = [Display::CubicMetres, Display::Litres, Display::CubicFeet];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::CubicMetres => "m3h",
            Self::Litres => "ls",
            Self::CubicFeet => "cfm",
        }
    }

    /// Unit of air flows.
    pub const fn flow(self) -> Unit {
        match self {
            Self::CubicMetres => Unit::CubicMetrePerHour,
            Self::Litres => Unit::LitrePerSecond,
            Self::CubicFeet => Unit::CubicFootPerMinute,
        }
    }

    /// Unit of floor areas.
    pub const fn area(self) -> Unit {
        match self {
            Self::CubicFeet => Unit::SquareFoot,
            _ => Unit::SquareMetre,
        }
    }

    /// Unit of lengths and heights.
    pub const fn length(self) -> Unit {
        match self {
            Self::CubicFeet => Unit::Foot,
            _ => Unit::Metre,
        }
    }

    /// Unit of small lengths.
    pub const fn small_length(self) -> Unit {
        match self {
            Self::CubicFeet => Unit::Inch,
            _ => Unit::Millimetre,
        }
    }

    /// Unit of air speeds.
    pub const fn velocity(self) -> Unit {
        match self {
            Self::CubicFeet => Unit::FootPerMinute,
            _ => Unit::MetrePerSecond,
        }
    }
}

/// How wet rooms get their exhaust.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WetRooms {
    /// A steady rate all day.
    Continuous,
    /// A higher rate on demand.
    OnDemand,
}

impl WetRooms {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::Continuous, Self::OnDemand];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Continuous => "continuous",
            Self::OnDemand => "on-demand",
        }
    }
}

/// Who exhausts the kitchen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum KitchenDraw {
    /// This system meets the kitchen's rate.
    System,
    /// A separate hood to outdoors meets it; the system draws there too, without a stated minimum.
    Hood,
}

impl KitchenDraw {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::System, Self::Hood];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::System => "system",
            Self::Hood => "hood",
        }
    }
}

/// Whether a credit that the rule offers is claimed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Credit {
    /// Not claimed.
    #[default]
    Without,
    /// Claimed; given only when its conditions are met.
    Claimed,
}

impl Credit {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::Without, Self::Claimed];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Without => "without",
            Self::Claimed => "claimed",
        }
    }
}

/// Printed table or equation.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Table {
    /// The printed table.
    Table,
    /// The equation.
    Equation,
}

impl Table {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::Table, Self::Equation];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Table => "table",
            Self::Equation => "equation",
        }
    }
}

/// Printed coefficients: a standard's inch-pound and SI prints are not exact conversions of each other.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Print {
    /// ft² and cfm.
    #[default]
    InchPound,
    /// m² and L/s.
    Si,
}

impl Print {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::InchPound, Self::Si];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::InchPound => "inch-pound",
            Self::Si => "si",
        }
    }
}
