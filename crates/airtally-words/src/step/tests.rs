use crate::book::book;
use crate::{demo, prose};
use airtally::edit::Edit;
use airtally::house::{Building, Choices, Display, Failing, Field, Fuel, House, HouseField, Joist, RoomKind, Stud};
use airtally::id::CheckRule;
use airtally::quantity::Unit;
use airtally::report::Report;
use airtally::rules::{Air, RuleSet};
use airtally::steps::{StepKey, StepRule};

fn sentence(house: &House, key: StepKey) -> String {
    let report = Report::of(house.clone());
    let step = report.steps().iter().find(|step| step.key == key).unwrap().clone();
    book().unwrap().title(&step, house, house.choices.display).replace('\u{a0}', " ")
}

fn room(house: &House, kind: RoomKind) -> airtally::house::RoomId {
    house.rooms.iter().find(|room| room.kind == kind).unwrap().id
}

#[test]
fn every_step_has_a_title_a_rule_and_perhaps_a_caution() {
    let book = book().unwrap();
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
    let mut house = Edit::AddRoom(RoomKind::Garage).apply(&demo::larkfield());
    house.choices.building = Building::Old;
    let (book, report) = (book().unwrap(), Report::of(house.clone()));
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
        book().unwrap().lock(step, report.house())
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
        assert!(book().unwrap().caution(rule).is_some_and(|text| text.contains(word)), "{}: {word}", rule.id());
    }
}

#[test]
fn the_book_has_a_chapter_for_every_step_and_no_other() {
    let text = include_str!("../../text/book.txt");
    let names = |head: &&str| {
        ["field ", "ask ", "slot ", "group ", "part ", "sum ", "value ", "symbols", "advice", "houses", "letter"]
            .iter()
            .any(|kind| head.starts_with(kind))
    };
    let heads = text.lines().filter_map(|line| line.strip_prefix("= ")).filter(|head| !names(head));
    let heads: Vec<&str> = heads.collect();
    let checks = CheckRule::ALL.map(|rule| ["check ", rule.id()].concat());
    let own = StepRule::ALL.map(|rule| rule.id().to_owned());
    assert_eq!(heads, [&own[..], &checks[..]].concat());
    for line in text.lines().filter(|line| !line.is_empty()) {
        assert!(
            ["# ", "#", "= ", "- ", ": ", "! ", "> ", "+ ", "~ ", "x ", "? ", "* ", ". "]
                .iter()
                .any(|mark| line.starts_with(mark)),
            "{line}"
        );
    }
}

/// Whatever is found on site, under every rule set: what a check says is a sentence with all its numbers.
#[test]
fn every_check_says_what_it_comes_to() {
    let book = book().unwrap();
    let mut said: Vec<(CheckRule, char)> = Vec::new();
    for rules in RuleSet::ALL {
        for (depth, distance, leak) in [("", "", ""), ("90", "0.4", "60"), ("400", "20", "0.5")] {
            for (fuel, joist) in [(None, None), (Some(Fuel::Solid), Some(Joist::Truss)), (Some(Fuel::Sealed), None)] {
                let house = on_site(rules, (fuel, joist), (depth, distance, leak));
                for check in Report::of(house).steps().iter().flat_map(|step| &step.checks) {
                    let text = book.check(check, Display::CubicMetres);
                    prose::is_sentence(&text);
                    said.push((check.rule, text.chars().next().unwrap()));
                }
            }
        }
    }
    assert!(CheckRule::ALL.iter().all(|rule| said.iter().any(|(other, _)| other == rule)));
}

fn on_site(
    rules: RuleSet,
    (fuel, joist): (Option<Fuel>, Option<Joist>),
    (depth, distance, leak): (&str, &str, &str),
) -> House {
    let house = demo::larkfield();
    let stud = fuel.map(|_| Stud::Bearing);
    let choices = Choices { rules, fuel, joist, stud, failing: Failing::NotKnown, ..house.choices };
    let mut house = Edit::Choose(choices).apply(&house);
    for field in HouseField::ALL {
        if depth.is_empty() || !house.text(Field::House(field)).is_empty() {
            continue;
        }
        let text = match field {
            HouseField::JoistDepth | HouseField::JoistClear | HouseField::StudDepth => depth,
            HouseField::JoistNotch | HouseField::JoistNotchLength | HouseField::StudNotch => "20",
            HouseField::LeakPressure => "50",
            HouseField::LeakSupply | HouseField::LeakExtract => leak,
            HouseField::OtherFans | HouseField::LargestFans => "200",
            field if field.limit().unit == Unit::Metre && field != HouseField::EnvelopeHeight => distance,
            _ => continue,
        };
        house = Edit::Set(Field::House(field), text.to_owned(), field.limit().unit).apply(&house);
    }
    let bath = room(&house, RoomKind::Bathroom);
    let field = Field::Room(bath, airtally::house::RoomField::ExtractBuilt);
    Edit::Set(field, "9".to_owned(), Unit::Metre).apply(&house)
}
