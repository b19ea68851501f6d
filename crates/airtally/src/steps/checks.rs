//! What was found on site against what must be: each check belongs to the step that asks for it.

use super::making::Making;
use super::{Number, NumberName as N};
use crate::formula::Formula;
use crate::given::GivenId as G;
use crate::house::{Failing, Field, Fuel, HouseField as H, Print, RoomField};
use crate::id::{CheckRule as C, Home};
use crate::issue::{Issue, Place, Trouble};
use crate::on_site::{Least, Outside, Verdict, far_enough, house_pressure, leak_at, outside_rules};
use crate::quantity::{Flow, Length, Measure, Pressure, Unit};
use crate::rules::{Air, Level};
use crate::runs::{Built, Run};
use crate::source::{PRACTICE, Source, YOURS};
use crate::working::{Origin, Term};

/// One check of a step.
#[derive(Clone, Debug, PartialEq)]
pub struct Check {
    /// What is checked.
    pub rule: C,
    /// What it comes to.
    pub verdict: Verdict,
    /// The numbers of its sentence: what there is, then what is allowed.
    pub numbers: Vec<Number>,
    /// Who says so.
    pub source: &'static Source,
}

/// The worst pressure of the house beside an open flue.
///
/// A dead, iced or defrosting supply fan leaves the whole extract unbalanced, unless the unit is known to stop both.
pub(super) fn house_pressure_check(making: &mut Making) {
    let choices = making.parts.facts.choices;
    match choices.fuel {
        None => return making.check(C::HousePressure, Verdict::Unknown, &PRACTICE, []),
        Some(Fuel::Nothing | Fuel::Sealed) => return making.check(C::HousePressure, Verdict::Holds, &PRACTICE, []),
        Some(Fuel::Gas | Fuel::Solid) => {}
    }
    let limit = if making.home == Home::Canada { G::FlueCanada } else { G::FlueGermany };
    let (limit, source) = (making.given(N::Pressure, limit), making.parts.givens.get(limit).source);
    let Some(pressure) = worst_pressure(making, choices.failing) else {
        making.say(Issue::new(Place::House, Trouble::OpenFlue));
        return making.check(C::HousePressure, Verdict::Designer, source, []);
    };
    let (pa, most) = (pressure.value.unwrap_or_default(), limit.value.unwrap_or_default());
    let verdict = match making.parts.facts.found(H::OtherFans) {
        _ if pa > most => Verdict::Fails,
        Some(_) => Verdict::Holds,
        None => Verdict::Unknown,
    };
    if verdict == Verdict::Fails {
        making.say(Issue::new(Place::House, Trouble::DrawsDown { pa, most }));
    }
    making.check(C::HousePressure, verdict, source, [pressure, limit]);
}

/// Δp = 50·(Q/Q_50)^(1/0.65); `None` without a blower-door test or without a volume. Other fans that nobody has named
/// count as none here, which the verdict takes into account.
fn worst_pressure(making: &mut Making, failing: Failing) -> Option<Number> {
    let facts = making.parts.facts;
    let at_50 = Flow::from_m3h(facts.ach50? * facts.volume().as_m3());
    let boost = making.total_flow(Level::Boost);
    let others = facts.found(H::OtherFans).and_then(Flow::of).unwrap_or(Flow::ZERO);
    let share = match failing {
        Failing::NotKnown => Term::new("s", 1.0, Unit::Ratio, Origin::Printed(&PRACTICE)),
        Failing::BothStop => making.parts.givens.term("s", G::Imbalance),
    };
    let net = boost * share.value + others;
    let (others, unit) = making.in_steps(others);
    let terms = [
        share,
        making.term("q_boost", making.total(Level::Boost)),
        Term::new("fans", others, unit, Origin::Typed(Field::House(H::OtherFans))),
    ];
    let net_number = making.line((N::Flow, Formula::NetDraw), making.in_steps(net), &PRACTICE, &terms);
    let (q50, unit) = making.in_steps(at_50);
    let terms = [making.term("Q", net_number), Term::new("Q_50", q50, unit, Origin::Counted)];
    let value = (house_pressure(net, at_50)?.as_pa(), Unit::Pascal);
    Some(making.line((N::Pressure, Formula::HousePressure), value, &PRACTICE, &terms))
}

pub(super) static FLUE_ASHRAE: Source = Source::memory("ASHRAE 62.2", "2016–2022", "section 6.4");

/// What the two largest exhaust fans may draw where something takes its air from the house, in the United States:
/// 15 cfm for each 100 ft², or 75 L/s for each 100 m². All other fans together stand in while they are no more than that.
pub(super) fn fan_draw_check(making: &mut Making) {
    let (facts, source) = (making.parts.facts, &FLUE_ASHRAE);
    if making.home != Home::UnitedStates || !matches!(facts.choices.fuel, Some(Fuel::Gas | Fuel::Solid)) {
        return;
    }
    let (rate, rate_unit, area_unit) = match facts.choices.print {
        Print::InchPound => (15.0, Unit::CubicFootPerMinute, Unit::SquareFoot),
        Print::Si => (75.0, Unit::LitrePerSecond, Unit::SquareMetre),
    };
    let area = facts.floor_area_in(area_unit);
    if area <= 0.0 {
        return making.check(C::FanDraw, Verdict::Unknown, source, []);
    }
    let most = Flow::of(Measure::new(rate * area / 100.0, rate_unit)).unwrap_or(Flow::ZERO);
    let terms =
        [Term::new("f", rate, rate_unit, Origin::Printed(source)), Term::new("A", area, area_unit, Origin::Counted)];
    let limit = making.line((N::Flow, Formula::FanLimit), making.in_steps(most), source, &terms);
    let largest = making.typed(N::Flow, H::LargestFans).map(|fans| (H::LargestFans, fans));
    let Some((field, fans)) = largest.or(making.typed(N::Flow, H::OtherFans).map(|fans| (H::OtherFans, fans))) else {
        return making.check(C::FanDraw, Verdict::Unknown, source, [limit]);
    };
    let within = facts.found(field).and_then(Flow::of).is_some_and(|fans| fans <= most);
    match (within, field) {
        (false, H::OtherFans) => making.check(C::FanDraw, Verdict::Unknown, source, [limit]),
        _ => making.judge(Field::House(field), (C::FanDraw, holds(within)), source, [fans, limit]),
    }
}

pub(super) const fn holds(holds: bool) -> Verdict {
    if holds { Verdict::Holds } else { Verdict::Fails }
}

/// The distances outside, as the rule set asks for them.
pub(super) fn outside_checks(making: &mut Making) {
    for outside in outside_rules(making.parts.facts.choices.rules) {
        outside_check(making, outside);
    }
}

/// The least distance of a check, and who says so; `None` where the rule set has no such check.
pub(super) fn outside_least(making: &Making, check: C) -> Option<(Number, &'static Source)> {
    let rules = outside_rules(making.parts.facts.choices.rules);
    rules.iter().find(|outside| outside.check == check).map(|outside| least(making, outside))
}

fn least(making: &Making, outside: &Outside) -> (Number, &'static Source) {
    match outside.least {
        Least::Given(id) if making.parts.givens.get(id).source == &YOURS => (making.given(N::Distance, id), &YOURS),
        Least::Given(id) => (making.given(N::Distance, id), outside.source),
        Least::Printed(value, unit) => {
            let origin = Origin::Printed(outside.source);
            (Number { name: N::Distance, value: Some(value), unit, origin }, outside.source)
        }
    }
}

fn outside_check(making: &mut Making, outside: &'static Outside) {
    let (least, source) = least(making, outside);
    let length = |field| making.parts.facts.found_length(field).unwrap_or(Length::ZERO);
    let Some(distance) = making.typed(N::Distance, outside.field) else {
        return making.check(outside.check, Verdict::Unknown, source, [least]);
    };
    let above = outside.above.map(|(field, feet)| (length(field), Length::from_ft(feet)));
    let needed = least.value.and_then(|value| Length::of(Measure::new(value, least.unit))).unwrap_or(Length::ZERO);
    let mut verdict = far_enough(length(outside.field), needed, above);
    if verdict == Verdict::Fails && outside.spared == Some(making.parts.facts.choices.outlets) {
        verdict = Verdict::Excepted;
    }
    making.judge(Field::House(outside.field), (outside.check, verdict), source, [distance, least]);
}

/// The record of the leak test, side by side. It passes when both sides do.
pub(super) fn leak_checks(making: &mut Making) {
    let share = making.parts.givens.get(G::LeakShare);
    let most = making.in_steps(making.total_flow(Level::Normal) * share.value);
    let terms = [making.parts.givens.term("s", G::LeakShare), making.term("Q", making.total(Level::Normal))];
    let most = making.line((N::Leak, Formula::LeakLimit), most, share.source, &terms);
    let pressure = making.parts.facts.found(H::LeakPressure).and_then(Pressure::of);
    for (rule, field) in [(C::LeakSupply, H::LeakSupply), (C::LeakExtract, H::LeakExtract)] {
        let read = making.parts.facts.found(field).and_then(Flow::of).zip(pressure);
        let Some((read, pressure)) = read else {
            making.check(rule, Verdict::Unknown, share.source, [most]);
            continue;
        };
        let (shown, unit) = making.in_steps(read);
        let terms = [
            Term::new("q", shown, unit, Origin::Typed(Field::House(field))),
            Term::new("p", pressure.as_pa(), Unit::Pascal, Origin::Typed(Field::House(H::LeakPressure))),
        ];
        let value = making.in_steps(leak_at(read, pressure));
        let leak = making.line((N::Leak, Formula::LeakAt), value, &PRACTICE, &terms);
        let verdict = holds(leak.value <= most.value);
        making.judge(Field::House(field), (rule, verdict), share.source, [leak, most]);
    }
}

/// A run as it was pulled: longer, shorter, or of fewer tubes than planned.
pub(super) fn built_check(making: &mut Making, run: &Run, built: &Built) {
    let speed = Number {
        name: N::Speed,
        value: Some(built.speed.value.as_ms()),
        unit: Unit::MetrePerSecond,
        origin: Origin::Line(built.speed.line),
    };
    let limit = Number { name: N::SpeedLimit, value: Some(built.limit.as_ms()), unit: Unit::MetrePerSecond, ..speed };
    let limit = Number { origin: Origin::Given(built.limit_id), ..limit };
    let source = making.parts.givens.get(built.limit_id).source;
    let field = if run.air == Air::Supply { RoomField::SupplyTubes } else { RoomField::ExtractTubes };
    let mut numbers = vec![speed, limit];
    if let Some(flow) = making.parts.delivery.drop(run.air, run.room).and_then(|drop| drop.built) {
        let line = Origin::Line(flow.line);
        let number = |flow: Flow, origin| Number {
            name: N::Flow,
            value: Some(flow.as_m3h()),
            unit: Unit::CubicMetrePerHour,
            origin,
        };
        numbers.extend([number(flow.value, line), number(run.normal, Origin::Counted)]);
    }
    making.judge(Field::Room(run.room, field), (C::Built, holds(built.within)), source, numbers);
}
