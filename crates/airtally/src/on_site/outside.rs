//! Where the outside terminals may be.

use super::{Verdict, at_least};
use crate::house::Outlets;
use crate::id::{CheckRule as C, GivenId as G, HouseField as H, RuleSet};
use crate::quantity::{Length, Unit};
use crate::source::{PRACTICE, Source};

/// One distance that a rule set asks for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Outside {
    /// What is checked.
    pub check: C,
    /// The field it is typed into.
    pub field: H,
    /// At least so far.
    pub least: Least,
    /// Nearer is allowed when the first is so much above the second: the field it is typed into, and the height in feet.
    pub above: Option<(H, f64)>,
    /// Nearer is allowed for outside terminals that are made like this.
    pub spared: Option<Outlets>,
    /// Who says so.
    pub source: &'static Source,
}

/// A least distance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Least {
    /// A registered value.
    Given(G),
    /// As printed.
    Printed(f64, Unit),
}

/// The distances of a rule set. England names none: there and elsewhere the guidance of EN 13779 stands.
pub const fn outside_rules(rules: RuleSet) -> &'static [Outside] {
    match rules {
        RuleSet::Irc2015 => &IRC_2015,
        RuleSet::Irc2018 | RuleSet::Irc2021 => &IRC,
        RuleSet::Irc2024 => &IRC_2024,
        RuleSet::Washington2021 => &WASHINGTON,
        RuleSet::Imc => &IMC,
        RuleSet::Ashrae2010 | RuleSet::Ashrae2013 | RuleSet::Ashrae2016 => &ASHRAE,
        RuleSet::Canada => &CANADA_F326,
        RuleSet::CanadaNbc => &CANADA_NBC,
        RuleSet::Din2009 | RuleSet::Din2019 => &GERMANY,
        RuleSet::Adf2021
        | RuleSet::Ireland2019
        | RuleSet::Netherlands2012
        | RuleSet::France1982
        | RuleSet::En16798
        | RuleSet::PassiveHouse => &GUIDANCE,
    }
}

static IRC_INTAKE: Source = Source::published("IRC", "2015–2021", "R303.5.1");
static IRC_INTAKE_2024: Source = Source::published("IRC", "2024", "R325.4.1");
static IRC_EXHAUST: Source = Source::published("IRC", "2018–2024", "M1504.3");
static IRC_EXHAUST_2015: Source = Source::published("IRC", "2015", "M1506.3, also for openings that cannot be opened");
static IRC_DRYER: Source = Source::published("IRC", "2015–2024", "M1502.3");
static IMC_INTAKE: Source = Source::published("IMC", "", "401.4");
static IMC_EXHAUST: Source = Source::memory("IMC", "", "501.3.1");
static ASHRAE_INLETS: Source = Source::memory("ASHRAE 62.2", "2010–2019", "section 6.8");
static NBC_DISTANCES: Source = Source::memory("NBC", "", "9.32.3.13").doubted();
static F326_DISTANCES: Source = Source::memory("CSA F326", "M91", "").doubted();
static EN_13779: Source = Source::published("EN 13779", "2007, withdrawn; seen at second hand", "A.2.2");

/// Feet by which an opening may lie above or below instead of away.
const THREE_FEET: f64 = 3.0;
/// Feet by which an exhaust may lie above a window instead of away from it, from 2024.
const ONE_FOOT: f64 = 1.0;
/// Feet by which an intake may lie above a street instead of away from it.
const ABOVE_STREETS: f64 = 25.0;

const fn row(check: C, field: H, least: Least, source: &'static Source) -> Outside {
    Outside { check, field, least, above: None, spared: None, source }
}

impl Outside {
    const fn or_above(self, field: H, feet: f64) -> Self {
        Self { above: Some((field, feet)), ..self }
    }

    const fn or_made(self, outlets: Outlets) -> Self {
        Self { spared: Some(outlets), ..self }
    }
}

const fn feet(feet: f64) -> Least {
    Least::Printed(feet, Unit::Foot)
}

const fn intake(source: &'static Source) -> Outside {
    row(C::IntakeSource, H::IntakeSource, Least::Given(G::IntakeClearFeet), source).or_above(H::IntakeBelow, THREE_FEET)
}

const fn own_exhaust(source: &'static Source) -> Outside {
    let least = Least::Given(G::OwnExhaustFeet);
    row(C::IntakeExhaust, H::IntakeExhaust, least, source).or_above(H::ExhaustAbove, THREE_FEET)
}

const fn opening(source: &'static Source) -> Outside {
    row(C::ExhaustOpening, H::ExhaustOpening, feet(THREE_FEET), source)
}

const fn boundary(source: &'static Source) -> Outside {
    row(C::ExhaustBoundary, H::ExhaustBoundary, feet(THREE_FEET), source)
}

const fn dryer(source: &'static Source) -> Outside {
    row(C::DryerOpening, H::DryerOpening, feet(THREE_FEET), source)
}

/// Above the snow: 12 to 18 in by habit, where the rule set has no height of its own.
const SNOW_FEET: Outside = row(C::IntakeGround, H::IntakeGround, Least::Printed(12.0, Unit::Inch), &PRACTICE);
const SNOW: Outside = row(C::IntakeGround, H::IntakeGround, Least::Printed(300.0, Unit::Millimetre), &PRACTICE);

static IRC_2015: [Outside; 6] = [
    SNOW_FEET,
    intake(&IRC_INTAKE),
    own_exhaust(&IRC_EXHAUST_2015),
    opening(&IRC_EXHAUST_2015),
    boundary(&IRC_EXHAUST_2015),
    dryer(&IRC_DRYER),
];
static IRC: [Outside; 6] = [
    SNOW_FEET,
    intake(&IRC_INTAKE),
    own_exhaust(&IRC_EXHAUST),
    opening(&IRC_EXHAUST),
    boundary(&IRC_EXHAUST),
    dryer(&IRC_DRYER),
];
static IRC_2024: [Outside; 6] = [
    SNOW_FEET,
    intake(&IRC_INTAKE_2024),
    own_exhaust(&IRC_EXHAUST).or_made(Outlets::Combined),
    opening(&IRC_EXHAUST).or_above(H::ExhaustOver, ONE_FOOT),
    boundary(&IRC_EXHAUST),
    dryer(&IRC_DRYER),
];
static WASHINGTON: [Outside; 6] = [
    SNOW_FEET,
    intake(&IRC_INTAKE),
    own_exhaust(&IRC_EXHAUST).or_made(Outlets::Combined),
    opening(&IRC_EXHAUST),
    boundary(&IRC_EXHAUST),
    dryer(&IRC_DRYER),
];
static IMC: [Outside; 7] = [
    SNOW_FEET,
    intake(&IMC_INTAKE),
    row(C::IntakeBoundary, H::IntakeBoundary, feet(10.0), &IMC_INTAKE),
    row(C::IntakeStreet, H::IntakeStreet, feet(10.0), &IMC_INTAKE).or_above(H::IntakeGround, ABOVE_STREETS),
    own_exhaust(&IMC_EXHAUST),
    opening(&IMC_EXHAUST),
    boundary(&IMC_EXHAUST),
];
static ASHRAE: [Outside; 4] = [
    SNOW_FEET,
    row(C::IntakeSource, H::IntakeSource, Least::Given(G::IntakeClearFeet), &ASHRAE_INLETS),
    row(C::IntakeExhaust, H::IntakeExhaust, Least::Given(G::OwnExhaustFeet), &ASHRAE_INLETS).or_made(Outlets::Combined),
    dryer(&ASHRAE_INLETS),
];
static CANADA_NBC: [Outside; 4] = canada(G::OwnExhaustCanada, &NBC_DISTANCES);
static CANADA_F326: [Outside; 4] = canada(G::OwnExhaustF326, &F326_DISTANCES);
static GERMANY: [Outside; 3] = [
    row(C::IntakeGround, H::IntakeGround, Least::Printed(0.7, Unit::Metre), &PRACTICE),
    row(C::IntakeSource, H::IntakeSource, Least::Given(G::IntakeClear), &EN_13779),
    row(C::IntakeExhaust, H::IntakeExhaust, Least::Given(G::OwnExhaustGermany), &PRACTICE).or_made(Outlets::Sides),
];
static GUIDANCE: [Outside; 2] = [SNOW, row(C::IntakeSource, H::IntakeSource, Least::Given(G::IntakeClear), &EN_13779)];

const fn canada(own_exhaust: G, source: &'static Source) -> [Outside; 4] {
    [
        row(C::IntakeGround, H::IntakeGround, Least::Given(G::IntakeGroundCanada), source),
        row(C::IntakeSource, H::IntakeSource, Least::Given(G::IntakeSourceCanada), source),
        row(C::IntakeExhaust, H::IntakeExhaust, Least::Given(own_exhaust), source),
        row(C::ExhaustGround, H::ExhaustGround, Least::Printed(100.0, Unit::Millimetre), source),
    ]
}

/// Whether something is far enough away, or high enough above where that counts as well.
///
/// * Valid range: every length; a height that is not known is taken as none
/// * Source: the rule set's own; the examples are those of the rate handbook, section 4
///
/// ```
/// use airtally::{on_site::{Verdict, far_enough}, quantity::Length};
/// let ft = Length::from_ft;
/// // An intake 8 ft from a vent whose outlet is 4 ft above it: by the exception of 3 ft.
/// assert_eq!(far_enough(ft(8.0), ft(10.0), Some((ft(4.0), ft(3.0)))), Verdict::Excepted);
/// // An intake 8 ft from the own exhaust at the same height.
/// assert_eq!(far_enough(ft(8.0), ft(10.0), Some((ft(0.0), ft(3.0)))), Verdict::Fails);
/// // An exhaust 2 ft below and 5 ft beside a window, 5.4 ft away.
/// assert_eq!(far_enough(ft(5.4), ft(3.0), None), Verdict::Holds);
/// ```
pub fn far_enough(distance: Length, least: Length, above: Option<(Length, Length)>) -> Verdict {
    match above {
        _ if at_least(distance, least) => Verdict::Holds,
        Some((height, needed)) if at_least(height, needed) => Verdict::Excepted,
        _ => Verdict::Fails,
    }
}
