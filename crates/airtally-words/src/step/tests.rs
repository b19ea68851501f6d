use super::*;
use crate::{demo, prose};
use airtally::edit::Edit;
use airtally::house::{Display, House, RoomKind};
use airtally::report::Report;
use airtally::rules::{Air, RuleSet};
use airtally::steps::{StepKey, StepRule};

fn sentence(house: &House, key: StepKey) -> String {
    let report = Report::of(house.clone());
    let step = report.steps().iter().find(|step| step.key == key).unwrap().clone();
    StepBook::english().title(&step, house, house.choices.display).replace('\u{a0}', " ")
}

fn room(house: &House, kind: RoomKind) -> airtally::house::RoomId {
    house.rooms.iter().find(|room| room.kind == kind).unwrap().id
}

#[test]
fn every_step_has_a_title_a_rule_and_perhaps_a_caution() {
    let book = StepBook::english();
    for demo in &demo::DEMOS {
        for rules in RuleSet::ALL {
            for display in Display::ALL {
                let mut house = Edit::AddRoom(RoomKind::Garage).apply(&(demo.house)());
                house.choices.rules = rules;
                house.choices.display = display;
                for step in Report::of(house.clone()).steps() {
                    let text = book.title(step, &house, display);
                    prose::is_label(&text);
                    assert!(!text.contains(crate::format::DASH), "{text}");
                    if let Some(lock) = book.lock(step, &house) {
                        prose::is_sentence(&lock);
                    }
                }
            }
        }
    }
    for rule in StepRule::ALL {
        prose::is_sentence(book.rule(rule));
        if let Some(text) = book.caution(rule) {
            prose::is_sentence(text);
        }
    }
}

#[test]
fn every_rule_appears_with_a_title_of_its_own() {
    let house = Edit::AddRoom(RoomKind::Garage).apply(&demo::larkfield());
    let (book, report) = (StepBook::english(), Report::of(house.clone()));
    let mut titles: Vec<String> =
        report.steps().iter().map(|step| book.title(step, &house, Display::CubicMetres)).collect();
    assert!(StepRule::ALL.iter().all(|rule| report.steps().iter().any(|step| step.key.rule == *rule)));
    let all = titles.len();
    titles.sort_unstable();
    titles.dedup();
    assert_eq!(titles.len(), all);
}

#[test]
fn a_run_says_how_many_how_long_whither_and_its_marks() {
    let house = demo::larkfield();
    let main = StepKey::run(StepRule::PullTubes, room(&house, RoomKind::MainBedroom), Air::Supply);
    // Legs 2.7 + 4.1 + 1.9, two ends of 0.4 m and 5 %: 9.975 m.
    assert_eq!(sentence(&house, main), "Pull 2 tubes, 9.98 m each, to Main bedroom, mark S2a S2b");
    let flat = demo::flat();
    let bath = StepKey::run(StepRule::PullTubes, room(&flat, RoomKind::Bathroom), Air::Extract);
    assert!(sentence(&flat, bath).starts_with("Measure the route, then pull"), "{}", sentence(&flat, bath));
}

#[test]
fn the_trap_is_as_the_handbook_prints_it() {
    let house = demo::larkfield();
    let trap = sentence(&house, StepKey::house(StepRule::FitTrap));
    assert_eq!(trap, "Fit a trap with a drop of 66 mm and a seal of 33 mm, for 400 Pa of suction");
}

#[test]
fn a_lock_says_what_must_be_done_first() {
    let report = Report::of(demo::larkfield());
    let lock_of = |rule| {
        let step = report.steps().iter().find(|step| step.key.rule == rule).unwrap();
        StepBook::english().lock(step, report.house())
    };
    assert_eq!(lock_of(StepRule::AskOpenFlues), None);
    let said = lock_of(StepRule::DrillCores);
    assert_eq!(said.as_deref(), Some("Locked until you know what burns fuel in the house."));
}

/// The dangers of this work, one word for each.
#[test]
fn cautions_stand_where_the_danger_is() {
    let dangers = [
        (StepRule::AskOpenFlues, "poisonous"),
        (StepRule::LookForSuspectBoard, "asbestos"),
        (StepRule::CheckStructure, "I-joists"),
        (StepRule::ListCrossings, "fire line"),
        (StepRule::KeepGarageClosed, "garage"),
        (StepRule::PlaceIntake, "height"),
        (StepRule::InsulateColdDucts, "mould"),
        (StepRule::FallDrain, "freezes"),
        (StepRule::CalmWeather, "open flue"),
        (StepRule::FitCoAlarms, "local code"),
        (StepRule::WireUnit, "electrician"),
        (StepRule::CompareTotals, "radon"),
        (StepRule::TestSpillage, "certified"),
    ];
    for (rule, word) in dangers {
        assert!(StepBook::english().caution(rule).is_some_and(|text| text.contains(word)), "{}: {word}", rule.id());
    }
}

#[test]
fn the_book_has_a_chapter_for_every_step_and_no_other() {
    let text = include_str!("../../text/steps.txt");
    let heads: Vec<&str> = text.lines().filter_map(|line| line.strip_prefix("= ")).collect();
    assert_eq!(heads, StepRule::ALL.map(StepRule::id));
    for line in text.lines().filter(|line| !line.is_empty()) {
        assert!(["# ", "#", "= ", "- ", ": ", "! ", "> "].iter().any(|mark| line.starts_with(mark)), "{line}");
    }
}
