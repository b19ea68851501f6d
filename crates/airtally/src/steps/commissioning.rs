//! Power, measure, hand over.

use super::making::Making;
use super::{Number, NumberName as N, StepKey, StepRule as R, part_of_flow};
use crate::formula::Formula;
use crate::given::GivenId as G;
use crate::id::Home;
use crate::rules::{Air, Level};
use crate::source::{PRACTICE, Source};

static READ_ENGLAND: Source =
    Source::published("Approved Document F vol 1", "2021", "section 4; regulations 42 and 44");
static READ_IRC: Source = Source::published("IRC", "2021–2024", "N1103.6.3");
static READ_ASHRAE: Source = Source::memory("ASHRAE 62.2", "2016–2022", "measured flow at least as required");
static LABELS_IRC: Source = Source::published("IRC", "2018–2024", "M1505.4.2");

/// Wire, start, wait.
pub(super) fn power(making: &mut Making) {
    making.step(R::WireUnit, &PRACTICE, []);
    making.step(R::StartUnit, &PRACTICE, [making.total(Level::Normal)]);
    making.step_by(R::LetSettle, G::SettleTime, [making.given(N::Wait, G::SettleTime)]);
}

/// Terminals, totals, boost, flues.
pub(super) fn measure(making: &mut Making) {
    let source = reading_source(making);
    for air in [Air::Extract, Air::Supply] {
        let terminals = making.parts.runs.side(air).count();
        if terminals > 0 {
            let numbers = [
                making.count(N::Count, terminals),
                making.total(Level::Normal),
                making.given(N::Tolerance, G::TerminalTolerance),
            ];
            making.keyed(StepKey::side(R::ReadTerminals, air), source, numbers);
        }
    }
    let gap = allowed_gap(making);
    making.step_by(R::CompareTotals, G::TotalTolerance, [making.total(Level::Normal), gap]);
    making.step(R::ReadBoost, source, [making.total(Level::Boost)]);
    making.step(R::TestSpillage, &PRACTICE, []);
}

/// England and the United States ask for the flows; elsewhere the trade's tolerance stands alone.
fn reading_source(making: &Making) -> &'static Source {
    match making.home {
        Home::England => &READ_ENGLAND,
        Home::UnitedStates if making.parts.facts.choices.rules.is_ashrae() => &READ_ASHRAE,
        Home::UnitedStates => &READ_IRC,
        Home::Germany | Home::Canada | Home::Elsewhere => making.parts.givens.get(G::TerminalTolerance).source,
    }
}

/// What supply and extract may differ by.
fn allowed_gap(making: &mut Making) -> Number {
    let share = making.parts.givens.get(G::TotalTolerance);
    let gap = making.in_steps(part_of_flow(making.total_flow(Level::Normal), share.value));
    let terms = [making.parts.givens.term("s", G::TotalTolerance), making.term("Q", making.total(Level::Normal))];
    making.line((N::Tolerance, Formula::Tolerance), gap, share.source, &terms)
}

/// Lock, note, explain.
pub(super) fn hand_over(making: &mut Making) {
    let valves = making.count(N::Count, making.parts.runs.runs.len());
    making.step(R::LockValves, &PRACTICE, [valves]);
    making.step_by(R::NoteFilterDates, G::FilterCheck, [making.given(N::Months, G::FilterCheck)]);
    match making.home {
        Home::England => making.step_by(R::HandOverPapers, G::NoticeDays, [making.given(N::Wait, G::NoticeDays)]),
        Home::UnitedStates => making.step(R::HandOverPapers, &LABELS_IRC, []),
        Home::Germany | Home::Canada | Home::Elsewhere => making.step(R::HandOverPapers, &PRACTICE, []),
    }
}
