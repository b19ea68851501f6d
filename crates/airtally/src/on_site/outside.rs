//! Where the outside terminals may be.

use super::Verdict;
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
    /// Nearer is allowed for one factory-built combined terminal.
    pub combined: bool,
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
        RuleSet::Irc2015 | RuleSet::Irc2018 | RuleSet::Irc2021 => &IRC,
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
static IRC_EXHAUST: Source = Source::published("IRC", "2018–2024; 2015: M1506.3", "M1504.3");
static IMC_INTAKE: Source = Source::published("IMC", "", "401.4");
static IMC_EXHAUST: Source = Source::memory("IMC", "", "501.3.1");
static ASHRAE_INLETS: Source = Source::memory("ASHRAE 62.2", "2010–2019", "section 6.8");
static NBC_DISTANCES: Source = Source::memory("NBC", "", "9.32.3.13").doubted();
static F326_DISTANCES: Source = Source::memory("CSA F326", "M91", "").doubted();
static EN_13779: Source = Source::published("EN 13779", "2007, withdrawn; seen at second hand", "A.2.2");

/// Feet by which an opening may lie above or below instead of away.
const THREE_FEET: f64 = 3.0;

const fn row(check: C, field: H, least: Least, source: &'static Source) -> Outside {
    Outside { check, field, least, above: None, combined: false, source }
}

impl Outside {
    const fn or_above(self, field: H) -> Self {
        Self { above: Some((field, THREE_FEET)), ..self }
    }

    const fn or_combined(self) -> Self {
        Self { combined: true, ..self }
    }
}

const fn feet(feet: f64) -> Least {
    Least::Printed(feet, Unit::Foot)
}

const fn intake(source: &'static Source) -> Outside {
    row(C::IntakeSource, H::IntakeSource, Least::Given(G::IntakeClearFeet), source).or_above(H::IntakeBelow)
}

const fn own_exhaust(source: &'static Source) -> Outside {
    row(C::IntakeExhaust, H::IntakeExhaust, Least::Given(G::OwnExhaustFeet), source).or_above(H::ExhaustAbove)
}

const fn opening(source: &'static Source) -> Outside {
    row(C::ExhaustOpening, H::ExhaustOpening, feet(THREE_FEET), source)
}

const fn boundary(source: &'static Source) -> Outside {
    row(C::ExhaustBoundary, H::ExhaustBoundary, feet(THREE_FEET), source)
}

static IRC: [Outside; 4] =
    [intake(&IRC_INTAKE), own_exhaust(&IRC_EXHAUST), opening(&IRC_EXHAUST), boundary(&IRC_EXHAUST)];
static IRC_2024: [Outside; 4] =
    [intake(&IRC_INTAKE_2024), own_exhaust(&IRC_EXHAUST).or_combined(), opening(&IRC_EXHAUST), boundary(&IRC_EXHAUST)];
static WASHINGTON: [Outside; 4] =
    [intake(&IRC_INTAKE), own_exhaust(&IRC_EXHAUST).or_combined(), opening(&IRC_EXHAUST), boundary(&IRC_EXHAUST)];
static IMC: [Outside; 4] =
    [intake(&IMC_INTAKE), own_exhaust(&IMC_EXHAUST), opening(&IMC_EXHAUST), boundary(&IMC_EXHAUST)];
static ASHRAE: [Outside; 2] = [
    row(C::IntakeSource, H::IntakeSource, Least::Given(G::IntakeClearFeet), &ASHRAE_INLETS),
    row(C::IntakeExhaust, H::IntakeExhaust, Least::Given(G::OwnExhaustFeet), &ASHRAE_INLETS).or_combined(),
];
static CANADA_NBC: [Outside; 3] = [
    row(C::IntakeGround, H::IntakeGround, Least::Given(G::IntakeGroundCanada), &NBC_DISTANCES),
    row(C::IntakeSource, H::IntakeSource, Least::Given(G::IntakeSourceCanada), &NBC_DISTANCES),
    row(C::IntakeExhaust, H::IntakeExhaust, Least::Given(G::OwnExhaustCanada), &NBC_DISTANCES),
];
static CANADA_F326: [Outside; 3] = [
    row(C::IntakeGround, H::IntakeGround, Least::Given(G::IntakeGroundCanada), &F326_DISTANCES),
    row(C::IntakeSource, H::IntakeSource, Least::Given(G::IntakeSourceCanada), &F326_DISTANCES),
    row(C::IntakeExhaust, H::IntakeExhaust, Least::Given(G::OwnExhaustF326), &F326_DISTANCES),
];
static GERMANY: [Outside; 3] = [
    row(C::IntakeGround, H::IntakeGround, Least::Printed(0.7, Unit::Metre), &PRACTICE),
    row(C::IntakeSource, H::IntakeSource, Least::Given(G::IntakeClear), &EN_13779),
    row(C::IntakeExhaust, H::IntakeExhaust, Least::Given(G::OwnExhaustGermany), &PRACTICE),
];
static GUIDANCE: [Outside; 1] = [row(C::IntakeSource, H::IntakeSource, Least::Given(G::IntakeClear), &EN_13779)];

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

/// Within a hundredth of a millimetre: a typed 10 ft is 10 ft, in whatever unit it was typed.
fn at_least(length: Length, least: Length) -> bool {
    length.as_mm() >= least.as_mm() - AGREES_MM
}

const AGREES_MM: f64 = 0.01;
