//! The working order: id and phase of every step, and what it waits for.

use super::rule::{Phase, StepRule, Waits};
use Phase as P;
use StepRule as R;

/// What is fixed about a step.
pub(super) struct Row {
    pub(super) rule: StepRule,
    pub(super) id: &'static str,
    pub(super) phase: Phase,
    pub(super) waits: &'static [Waits],
}

const fn row(rule: StepRule, id: &'static str, phase: Phase, waits: &'static [Waits]) -> Row {
    Row { rule, id, phase, waits }
}

/// Nothing.
const FREE: &[Waits] = &[];
/// No hole before every question that stops the work is answered.
const DRILL: &[Waits] = &[Waits::Phase(P::Before)];
/// A leak is looked for when all is joined.
const LEAK: &[Waits] = &[
    Waits::Step(R::PullTubes),
    Waits::Step(R::ConnectTubes),
    Waits::Step(R::ConnectMains),
    Waits::Step(R::SealJoints),
];
/// Nothing is covered that still has to be reached.
const CLOSE: &[Waits] = &[
    Waits::Step(R::RecordRoutes),
    Waits::Step(R::LayCables),
    Waits::Step(R::LeakTest),
    Waits::Step(R::SlopeExhaust),
    Waits::Step(R::InsulateColdDucts),
    Waits::Step(R::CloseCrossings),
];
const FILL: &[Waits] = &[Waits::Step(R::FitTrap)];
/// Caps stay on while there is dust.
const UNCAP: &[Waits] = &[Waits::Step(R::DustGone)];
/// No start into dust, through no filter, over a dry trap, against caps, into leaking or dangerous work.
const START: &[Waits] = &[
    Waits::Phase(P::Before),
    Waits::Step(R::LeakTest),
    Waits::Step(R::DustGone),
    Waits::Step(R::FitFilters),
    Waits::Step(R::FillTrap),
    Waits::Step(R::OpenValves),
    Waits::Step(R::FitCoAlarms),
    Waits::Step(R::WireUnit),
];
const SETTLE: &[Waits] = &[Waits::Step(R::StartUnit)];
/// No reading before every pre-check is ticked and the unit runs steadily.
const READ: &[Waits] = &[Waits::Phase(P::PreCheck), Waits::Phase(P::Power)];
const COMPARE: &[Waits] = &[Waits::Step(R::ReadTerminals)];
const LEAVE: &[Waits] = &[Waits::Phase(P::Measure)];

/// Number of rules.
pub(super) const COUNT: usize = 54;

pub(super) const TABLE: [Row; COUNT] = [
    row(R::AskOpenFlues, "ask-open-flues", P::Before, FREE),
    row(R::SurveyOldFans, "survey-old-fans", P::Before, FREE),
    row(R::SurveyVents, "survey-vents", P::Before, FREE),
    row(R::LookForSuspectBoard, "look-for-suspect-board", P::Before, FREE),
    row(R::CheckStructure, "check-structure", P::Before, FREE),
    row(R::ListCrossings, "list-crossings", P::Before, FREE),
    row(R::KeepGarageClosed, "keep-garage-closed", P::Before, FREE),
    row(R::CheckUnitDuty, "check-unit-duty", P::SetOut, FREE),
    row(R::PlaceUnit, "place-unit", P::SetOut, FREE),
    row(R::PlaceIntake, "place-intake", P::SetOut, FREE),
    row(R::PlaceBedroomValves, "place-bedroom-valves", P::SetOut, FREE),
    row(R::PlaceExtractValves, "place-extract-valves", P::SetOut, FREE),
    row(R::PlaceKitchenValve, "place-kitchen-valve", P::SetOut, FREE),
    row(R::PlaceManifolds, "place-manifolds", P::SetOut, FREE),
    row(R::SetOutTerminal, "set-out-terminal", P::SetOut, FREE),
    row(R::DrillCores, "drill-cores", P::Drill, DRILL),
    row(R::DrillTubeHoles, "drill-tube-holes", P::Drill, DRILL),
    row(R::BendWide, "bend-wide", P::Pull, FREE),
    row(R::PullTubes, "pull-tubes", P::Pull, FREE),
    row(R::SupportTubes, "support-tubes", P::Pull, FREE),
    row(R::RecordRoutes, "record-routes", P::Pull, FREE),
    row(R::HangUnit, "hang-unit", P::Fix, FREE),
    row(R::FixManifolds, "fix-manifolds", P::Fix, FREE),
    row(R::FixSilencers, "fix-silencers", P::Fix, FREE),
    row(R::ConnectTubes, "connect-tubes", P::Connect, FREE),
    row(R::ConnectMains, "connect-mains", P::Connect, FREE),
    row(R::SealJoints, "seal-joints", P::Seal, FREE),
    row(R::LayCables, "lay-cables", P::Seal, FREE),
    row(R::LeakTest, "leak-test", P::Seal, LEAK),
    row(R::SlopeExhaust, "slope-exhaust", P::Insulate, FREE),
    row(R::InsulateColdDucts, "insulate-cold-ducts", P::Insulate, FREE),
    row(R::FitTrap, "fit-trap", P::Drain, FREE),
    row(R::FallDrain, "fall-drain", P::Drain, FREE),
    row(R::CloseCrossings, "close-crossings", P::Protect, FREE),
    row(R::CloseUp, "close-up", P::Protect, CLOSE),
    row(R::CapEnds, "cap-ends", P::Protect, FREE),
    row(R::DustGone, "dust-gone", P::PreCheck, FREE),
    row(R::FitFilters, "fit-filters", P::PreCheck, FREE),
    row(R::FillTrap, "fill-trap", P::PreCheck, FILL),
    row(R::OpenValves, "open-valves", P::PreCheck, UNCAP),
    row(R::CutUndercut, "cut-undercut", P::PreCheck, FREE),
    row(R::ShutHouse, "shut-house", P::PreCheck, FREE),
    row(R::CalmWeather, "calm-weather", P::PreCheck, FREE),
    row(R::FitCoAlarms, "fit-co-alarms", P::PreCheck, FREE),
    row(R::WireUnit, "wire-unit", P::Power, FREE),
    row(R::StartUnit, "start-unit", P::Power, START),
    row(R::LetSettle, "let-settle", P::Power, SETTLE),
    row(R::ReadTerminals, "read-terminals", P::Measure, READ),
    row(R::CompareTotals, "compare-totals", P::Measure, COMPARE),
    row(R::ReadBoost, "read-boost", P::Measure, READ),
    row(R::TestSpillage, "test-spillage", P::Measure, READ),
    row(R::LockValves, "lock-valves", P::HandOver, LEAVE),
    row(R::NoteFilterDates, "note-filter-dates", P::HandOver, FREE),
    row(R::HandOverPapers, "hand-over-papers", P::HandOver, LEAVE),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_rule_stands_at_its_own_place_in_working_order_with_a_unique_id() {
        let mut ids: Vec<&str> = StepRule::ALL.iter().map(|rule| rule.id()).collect();
        assert!(StepRule::ALL.iter().enumerate().all(|(at, rule)| *rule as usize == at));
        assert!(StepRule::ALL.is_sorted_by_key(|rule| rule.phase()));
        assert!(ids.iter().all(|id| id.bytes().all(|b| b.is_ascii_lowercase() || b == b'-')));
        ids.sort_unstable();
        ids.dedup();
        assert_eq!(ids.len(), COUNT);
    }

    #[test]
    fn a_step_waits_for_earlier_steps_only() {
        for rule in StepRule::ALL {
            for waits in rule.waits() {
                match *waits {
                    Waits::Step(other) => assert!(other < rule, "{} waits for {}", rule.id(), other.id()),
                    Waits::Phase(phase) => assert!(phase < rule.phase(), "{} waits for {phase:?}", rule.id()),
                }
            }
        }
    }

    #[test]
    fn every_phase_has_a_step() {
        for phase in Phase::ALL {
            assert!(StepRule::ALL.iter().any(|rule| rule.phase() == phase), "{phase:?}");
        }
    }
}
