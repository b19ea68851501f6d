//! The credit for air that leaks in.

use super::print::Printed;
use super::{Credited, Edition, Leakage};
use crate::formula::Formula;
use crate::given::GivenId;
use crate::house::{Credit, Field, HouseField};
use crate::issue::{Condition, Trouble};
use crate::power::power;
use crate::quantity::Unit::{self, CubicFootPerMinute as CFM};
use crate::rules::Brief;
use crate::rules::brief::flow;
use crate::source::Source;
use crate::working::{LineId, Origin, Term};

static BLOWER_DOOR: Source = Source::published("ASHRAE 62.2", "2013 and later", "flow at 50 Pa");
static LEAKAGE_AREA: Source =
    Source::memory("ASHRAE 62.2", "2013", "normalised leakage; one-point test with exponent 0.65");

/// Q_fan = Q_tot − φ·Q_inf·A_ext with φ = 1 for a balanced system.
pub fn fan_rate(
    brief: &mut Brief,
    edition: &'static Edition,
    print: &'static Printed,
    (total, line): (f64, LineId),
) -> (f64, LineId) {
    let claimed = brief.facts.choices.credit == Credit::Claimed;
    let credited = edition.credit.as_ref().ok_or(Condition::NotInEdition);
    let found = credited.and_then(|credited| {
        let found = infiltration(brief, credited, print)?;
        Ok((capped(brief, print, found, (total, line)), &credited.source))
    });
    let ((infiltration, source_line), source) = match found {
        Ok(found) => found,
        Err(missing) => {
            if claimed {
                brief.say(Trouble::CreditRefused(missing));
            }
            brief.demand.uncredited = (missing != Condition::NotInEdition).then_some(missing);
            return (total, line);
        }
    };
    let exterior = brief.givens.value(GivenId::AshraeExteriorShare);
    let balanced = 1.0;
    let rate = (total - balanced * infiltration * exterior).max(0.0);
    let terms = [
        Term::new("Q_tot", total, print.rate, Origin::Line(line)),
        Term::new("φ", balanced, Unit::Ratio, Origin::Printed(source)),
        Term::new("Q_inf", infiltration, print.rate, Origin::Line(source_line)),
        brief.givens.term("A_ext", GivenId::AshraeExteriorShare),
    ];
    let fan = brief.working.record(Formula::AshraeFan, (rate, print.rate), source, &terms);
    if claimed {
        return (rate, fan);
    }
    brief.alternative(Formula::AshraeFan, flow(rate, print.rate), fan);
    (total, line)
}

/// Height of reference, ft.
const REFERENCE: f64 = 8.2;

fn infiltration(
    brief: &mut Brief,
    credited: &'static Credited,
    print: &'static Printed,
) -> Result<(f64, LineId), Condition> {
    let ach50 = brief.facts.ach50.ok_or(Condition::Tightness)?;
    let factor = brief.facts.weather_factor.ok_or(Condition::WeatherFactor)?;
    let height = brief.facts.envelope_height.ok_or(Condition::EnvelopeHeight)?;
    let height = height.value_in(Unit::Foot).ok_or(Condition::EnvelopeHeight)?;
    let (q50, q50_line) = blower_door_flow(brief, print, ach50)?;
    let typed = |field| Origin::Typed(Field::House(field));
    let factor_term = Term::new("wsf", factor, Unit::Ratio, typed(HouseField::WeatherFactor));
    let height_terms = [
        Term::new("H", height, Unit::Foot, typed(HouseField::EnvelopeHeight)),
        Term::new("H_r", REFERENCE, Unit::Foot, Origin::Printed(&credited.source)),
    ];
    let stack = power(height / REFERENCE, 0.4);
    let leak = (q50, Term::new("Q_50", q50, print.rate, Origin::Line(q50_line)));
    match credited.leakage {
        Leakage::BlowerDoor => {
            let found = 0.052 * q50 * factor * stack;
            let terms = [leak.1, factor_term, height_terms[0], height_terms[1]];
            let value = (found, print.rate);
            Ok((found, brief.working.record(Formula::AshraeInfiltration, value, &credited.source, &terms)))
        }
        Leakage::Normalised => Ok(by_normalised_leakage(brief, credited, print, leak, stack, (factor, factor_term))),
    }
}

/// NL = 1000·(ELA/A)·(H/H_r)^0.4 with ELA = 3.81e-4·Q_50 (ft², cfm); Q_inf = NL·wsf·A/7.3 in cfm and ft².
fn by_normalised_leakage(
    brief: &mut Brief,
    credited: &'static Credited,
    print: &'static Printed,
    (q50, q50_term): (f64, Term),
    stack: f64,
    (factor, factor_term): (f64, Term),
) -> (f64, LineId) {
    let area = brief.facts.floor_area_in(Unit::SquareFoot);
    let q50_cfm = flow(q50, print.rate).as_cfm();
    let leakage_area = 3.81e-4 * q50_cfm;
    let normalised = if area > 0.0 { 1000.0 * leakage_area / area * stack } else { 0.0 };
    let terms = [q50_term, Term::new("A", area, Unit::SquareFoot, Origin::Counted)];
    let value = (normalised, Unit::Ratio);
    let line = brief.working.record(Formula::AshraeNormalisedLeakage, value, &LEAKAGE_AREA, &terms);
    let cfm = normalised * factor * area / 7.3;
    let found = flow(cfm, CFM).as_unit(print.rate).unwrap_or(0.0);
    let terms = [Term::new("NL", normalised, Unit::Ratio, Origin::Line(line)), factor_term, terms[1]];
    (found, brief.working.record(Formula::AshraeInfiltration2013, (found, print.rate), &credited.source, &terms))
}

/// At most the cap's share of Q_tot.
fn capped(
    brief: &mut Brief,
    print: &'static Printed,
    (found, line): (f64, LineId),
    (total, total_line): (f64, LineId),
) -> (f64, LineId) {
    let cap = brief.givens.get(GivenId::AshraeCap);
    if found <= cap.value * total {
        return (found, line);
    }
    let capped = cap.value * total;
    let terms = [
        Term::new("Q_inf", found, print.rate, Origin::Line(line)),
        brief.givens.term("cap", GivenId::AshraeCap),
        Term::new("Q_tot", total, print.rate, Origin::Line(total_line)),
    ];
    (capped, brief.working.record(Formula::AshraeCapped, (capped, print.rate), cap.source, &terms))
}

fn blower_door_flow(brief: &mut Brief, print: &'static Printed, ach50: f64) -> Result<(f64, LineId), Condition> {
    let volume = brief.facts.volume();
    let (value, unit, per_hour) = match print.rate {
        CFM => (volume.as_ft3(), Unit::CubicFoot, 60.0),
        _ => (volume.as_m3(), Unit::CubicMetre, 3.6),
    };
    if value <= 0.0 {
        return Err(Condition::Volume);
    }
    let q50 = value * ach50 / per_hour;
    let terms = [
        Term::new("V", value, unit, Origin::Counted),
        Term::new("ACH_50", ach50, Unit::PerHour, Origin::Typed(Field::House(HouseField::Ach50))),
    ];
    Ok((q50, brief.working.record(Formula::BlowerDoorFlow, (q50, print.rate), &BLOWER_DOOR, &terms)))
}
