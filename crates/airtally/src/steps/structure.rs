//! What the frame of the house bears: holes and notches in joists and studs, tubes between two joists.

use super::checks::holds;
use super::making::Making;
use super::{Number, NumberName as N};
use crate::formula::Formula;
use crate::given::GivenId as G;
use crate::house::{Field, HouseField as H, Joist};
use crate::id::{CheckRule as C, Home};
use crate::on_site::{AMERICAN_NOTCH, BRITISH_HOLES, BRITISH_NOTCH, BRITISH_ZONE, Member, NotchRule, Verdict};
use crate::on_site::{at_least, largest_hole, tubes_in_bay};
use crate::quantity::{Length, Unit};
use crate::source::{PRACTICE, Source};
use crate::working::{Origin, Term};

/// Whether the joists bear the hole of a tube, and how many tubes lie between two.
pub(super) fn joist_checks(making: &mut Making, hole: Number) {
    let facts = making.parts.facts;
    let share = if making.home == Home::UnitedStates { G::HoleThird } else { G::HoleQuarter };
    let source = making.parts.givens.get(share).source;
    match facts.choices.joist {
        Some(Joist::Engineered | Joist::Truss | Joist::Steel) => {
            making.check(C::JoistHole, Verdict::Designer, source, [hole]);
        }
        Some(Joist::Concrete) => {}
        None | Some(Joist::Solid) => match facts.found_length(H::JoistDepth) {
            Some(depth) => joist_hole(making, hole, depth, share),
            None => making.check(C::JoistHole, Verdict::Unknown, source, [hole]),
        },
    }
    if let Some(clear) = facts.found_length(H::JoistClear) {
        let (outside, term) = making.outside();
        let tubes = tubes_in_bay(clear, outside);
        let typed = Origin::Typed(Field::House(H::JoistClear));
        let terms = [Term::new("b", clear.as_mm(), Unit::Millimetre, typed), term];
        let value = (f64::from(tubes), Unit::Count);
        let number = making.line((N::Tubes, Formula::TubesInBay), value, &PRACTICE, &terms);
        making.judge(Field::House(H::JoistClear), (C::JoistBay, holds(tubes > 0)), &PRACTICE, [number]);
    }
}

fn joist_hole(making: &mut Making, hole: Number, depth: Length, share: G) {
    let source = making.parts.givens.get(share).source;
    let (edge, edge_source) = match making.home {
        Home::UnitedStates => (Member::Joist.edge(), Member::Joist.source()),
        _ => (Length::ZERO, source),
    };
    let share = making.parts.givens.term("s", share);
    let (most, largest) = hole_limit(making, (depth, H::JoistDepth), share, (edge, edge_source), source);
    let mut numbers = vec![hole, most];
    if let Some(span) = making.parts.facts.found(H::JoistSpan).filter(|_| making.home != Home::UnitedStates) {
        numbers.extend(BRITISH_HOLES.map(|share| Number {
            name: N::Distance,
            value: Some(span.value() * share),
            unit: span.unit(),
            origin: Origin::Printed(&BRITISH_ZONE),
        }));
    }
    let verdict = if_solid(making, fits(hole, largest));
    making.judge(Field::House(H::JoistDepth), (C::JoistHole, verdict), source, numbers);
}

/// What solid timber bears says nothing of joists that nobody has named; what it does not bear, none bears unasked.
fn if_solid(making: &Making, fits: bool) -> Verdict {
    match making.parts.facts.choices.joist {
        None if fits => Verdict::Unknown,
        _ => holds(fits),
    }
}

/// D = min(s·d, d − 2·e).
fn hole_limit(
    making: &mut Making,
    (depth, field): (Length, H),
    share: Term,
    (edge, edge_source): (Length, &'static Source),
    source: &'static Source,
) -> (Number, Length) {
    let largest = largest_hole(depth, share.value, edge);
    let terms = [
        share,
        Term::new("d", depth.as_mm(), Unit::Millimetre, Origin::Typed(Field::House(field))),
        Term::new("e", edge.as_mm(), Unit::Millimetre, Origin::Printed(edge_source)),
    ];
    let value = (largest.as_mm(), Unit::Millimetre);
    (making.line((N::Diameter, Formula::HoleLimit), value, source, &terms), largest)
}

/// A part of a timber's depth: how deep or how long a notch may be.
fn part_of(making: &mut Making, (share, depth, field): (f64, Length, H), source: &'static Source) -> (Number, Length) {
    let most = depth * share;
    let terms = [
        Term::new("s", share, Unit::Ratio, Origin::Printed(source)),
        Term::new("d", depth.as_mm(), Unit::Millimetre, Origin::Typed(Field::House(field))),
    ];
    let value = (most.as_mm(), Unit::Millimetre);
    (making.line((N::Length, Formula::NotchLimit), value, source, &terms), most)
}

/// Whether a hole, a number in millimetres, is no larger than this.
fn fits(hole: Number, largest: Length) -> bool {
    hole.value.is_some_and(|mm| at_least(largest, Length::from_mm(mm)))
}

/// Whether a notch is no deeper and no longer than the joist bears where it is. Without one there is nothing to check.
pub(super) fn notch_checks(making: &mut Making) {
    let Some(notch) = making.typed(N::Length, H::JoistNotch) else { return };
    let rule = if making.home == Home::UnitedStates { &AMERICAN_NOTCH } else { &BRITISH_NOTCH };
    match making.parts.facts.choices.joist {
        Some(Joist::Engineered | Joist::Truss | Joist::Steel) => {
            making.check(C::JoistNotch, Verdict::Designer, rule.source, [notch]);
        }
        Some(Joist::Concrete) => {}
        None | Some(Joist::Solid) => joist_notch(making, notch, rule),
    }
}

fn joist_notch(making: &mut Making, notch: Number, rule: &'static NotchRule) {
    let length = |field| making.parts.facts.found_length(field);
    let place = length(H::JoistNotchAt).zip(length(H::JoistSpan));
    let Some((depth, (at, span))) = length(H::JoistDepth).zip(place) else {
        return making.check(C::JoistNotch, Verdict::Unknown, rule.source, [notch]);
    };
    let (most, deepest) = part_of(making, (rule.share_at(at, span), depth, H::JoistDepth), rule.source);
    let longest = rule.long.map(|share| part_of(making, (share, depth, H::JoistDepth), rule.source));
    let mut numbers = vec![notch, most];
    numbers.extend(longest.map(|(most, _)| most));
    let verdict = if_solid(making, length(H::JoistNotch).is_some_and(|deep| at_least(deepest, deep)));
    making.judge(Field::House(H::JoistNotch), (C::JoistNotch, verdict), rule.source, numbers);
    let Some((most, longest)) = longest else { return };
    let Some(typed) = making.typed(N::Length, H::JoistNotchLength) else {
        return making.check(C::JoistNotchLength, Verdict::Unknown, rule.source, [most]);
    };
    let verdict = if_solid(making, length(H::JoistNotchLength).is_some_and(|long| at_least(longest, long)));
    making.judge(Field::House(H::JoistNotchLength), (C::JoistNotchLength, verdict), rule.source, [typed, most]);
}

/// Whether the studs bear the hole of a tube, and a notch. Only the American code has figures for them here.
pub(super) fn stud_checks(making: &mut Making, hole: Number) {
    let facts = making.parts.facts;
    let Some(depth) = facts.found_length(H::StudDepth).filter(|_| making.home == Home::UnitedStates) else { return };
    let notch = making.typed(N::Length, H::StudNotch);
    let Some(member) = facts.choices.stud.map(Member::of) else {
        let source = Member::BearingStud.source();
        making.check(C::StudHole, Verdict::Unknown, source, [hole]);
        return notch.into_iter().for_each(|notch| making.check(C::StudNotch, Verdict::Unknown, source, [notch]));
    };
    let source = member.source();
    let share = Term::new("s", member.hole_share(), Unit::Ratio, Origin::Printed(source));
    let (most, largest) = hole_limit(making, (depth, H::StudDepth), share, (member.edge(), source), source);
    let verdict = holds(fits(hole, largest));
    let (value, unit) = (Some(member.edge().as_mm()), Unit::Millimetre);
    let edge = Number { name: N::Distance, value, unit, origin: Origin::Printed(source) };
    making.judge(Field::House(H::StudDepth), (C::StudHole, verdict), source, [hole, most, edge]);
    if let Some(notch) = notch {
        let (most, deepest) = part_of(making, (member.notch_share(), depth, H::StudDepth), source);
        let verdict = holds(facts.found_length(H::StudNotch).is_some_and(|deep| at_least(deepest, deep)));
        making.judge(Field::House(H::StudNotch), (C::StudNotch, verdict), source, [notch, most]);
    }
}
