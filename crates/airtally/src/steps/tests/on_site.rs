//! What was found on site, with its verdict.

use super::*;
use crate::house::{Building, Failing, Fuel, HouseField as H, Joist, Outlets, Stud, TubeSize};
use crate::id::CheckRule as C;
use crate::issue::Trouble;
use crate::on_site::Verdict as V;
use crate::steps::{Check, Status};
use StepRule as R;

fn check(house: &House, rule: C) -> Option<Check> {
    steps(house).into_iter().flat_map(|step| step.checks).find(|check| check.rule == rule)
}

fn verdict(house: &House, rule: C) -> V {
    check(house, rule).unwrap().verdict
}

fn found(house: &House, field: H, text: &str, unit: Unit) -> House {
    with(house, Field::House(field), text, unit)
}

fn choose(house: &House, change: impl Fn(&mut crate::house::Choices)) -> House {
    let mut choices = house.choices;
    change(&mut choices);
    Edit::Choose(choices).apply(house)
}

fn solid(house: &House) -> House {
    choose(house, |choices| choices.joist = Some(Joist::Solid))
}

/// A house of 370 m³ (148 m² at 2.5 m) and 0.8 air changes at 50 Pa, as in site practice, section 9.
fn tight(fuel: Fuel) -> House {
    let house = choose(&house(), |choices| choices.fuel = Some(fuel));
    let house = found(&house, H::FloorArea, "148", Unit::SquareMetre);
    let house = found(&house, H::Ceiling, "2.5", Unit::Metre);
    found(&house, H::Ach50, "0.8", Unit::PerHour)
}

#[test]
fn a_tight_house_is_drawn_down_as_the_handbook_prints() {
    // Site practice, section 9: a hood of 250 m³/h alone 39 Pa, a dead supply fan at 160 m³/h 19 Pa.
    let at_50 = crate::quantity::Flow::from_m3h(0.8 * 370.0);
    let drawn = |m3h| crate::on_site::house_pressure(crate::quantity::Flow::from_m3h(m3h), at_50).unwrap().as_pa();
    assert!((drawn(250.0) - 39.0).abs() < 0.5 && (drawn(160.0) - 19.4).abs() < 0.5);
    let house = tight(Fuel::Solid);
    let check = check(&house, C::HousePressure).unwrap();
    let boost = Report::of(house.clone()).shares().at(crate::rules::Level::Boost).total.as_m3h();
    assert_eq!(check.verdict, V::Fails);
    assert!((check.numbers[0].value.unwrap() - 50.0 * libm::pow(boost / 296.0, 1.0 / 0.65)).abs() < 1e-6);
}

#[test]
fn the_house_is_warned_of_before_anybody_buys() {
    let troubles = |house: &House| Report::of(house.clone()).issues().into_iter().map(|issue| issue.trouble);
    assert!(troubles(&tight(Fuel::Solid)).any(|trouble| matches!(trouble, Trouble::DrawsDown { .. })));
    let unknown = choose(&house(), |choices| choices.fuel = Some(Fuel::Gas));
    assert!(troubles(&unknown).any(|trouble| trouble == Trouble::OpenFlue));
    for harmless in [Fuel::Nothing, Fuel::Sealed] {
        let house = tight(harmless);
        assert_eq!(verdict(&house, C::HousePressure), V::Holds);
        assert!(!troubles(&house).any(|trouble| matches!(trouble, Trouble::DrawsDown { .. } | Trouble::OpenFlue)));
    }
    assert_eq!(verdict(&house(), C::HousePressure), V::Unknown);
}

#[test]
fn a_unit_that_stops_both_fans_and_a_leaky_house_are_gentler() {
    let pressure = |house: &House| check(house, C::HousePressure).unwrap().numbers[0].value.unwrap();
    let house = tight(Fuel::Gas);
    let both = choose(&house, |choices| choices.failing = Failing::BothStop);
    let leaky = found(&house, H::Ach50, "5", Unit::PerHour);
    let hood = found(&house, H::OtherFans, "250", Unit::CubicMetrePerHour);
    assert!(pressure(&both) < pressure(&house) && pressure(&leaky) < pressure(&house));
    assert!(pressure(&hood) > pressure(&house));
    // A tenth of the boost at 0.8 air changes is about 1 Pa. Not judged before the other fans are named.
    assert_eq!(verdict(&both, C::HousePressure), V::Unknown);
    let fans = |text| verdict(&found(&both, H::OtherFans, text, Unit::CubicMetrePerHour), C::HousePressure);
    assert_eq!([fans("0"), fans("250"), fans("25o")], [V::Holds, V::Fails, V::Unknown]);
}

#[test]
fn a_house_of_unknown_size_is_never_called_safe() {
    let rooms = tight(Fuel::Solid).rooms.iter().map(|room| room.id).collect::<Vec<_>>();
    let house = found(&tight(Fuel::Solid), H::FloorArea, "", Unit::SquareMetre);
    let clear = |house: House, room| with(&house, Field::Room(room, RoomField::Area), "", Unit::SquareMetre);
    let house = rooms.into_iter().fold(house, clear);
    assert_eq!(verdict(&house, C::HousePressure), V::Designer);
    assert!(Report::of(house).issues().iter().any(|issue| issue.trouble == Trouble::OpenFlue));
}

#[test]
fn work_stops_where_the_house_would_be_drawn_down() {
    let house = Edit::Tick(StepKey::house(R::AskOpenFlues), true).apply(&tight(Fuel::Solid));
    let status = |house: &House, rule| find(house, StepKey::house(rule)).unwrap().status;
    assert_eq!(status(&house, R::AskOpenFlues), Status::Open);
    assert_eq!(status(&house, R::DrillCores), Status::LockedBy(StepKey::house(R::AskOpenFlues)));
    let sealed = choose(&house, |choices| choices.fuel = Some(Fuel::Sealed));
    assert_eq!(status(&sealed, R::AskOpenFlues), Status::Done);
    // A tick alone does not say what burns fuel, nor how far the house is drawn down.
    let untold = choose(&house, |choices| choices.fuel = None);
    assert_eq!(status(&untold, R::DrillCores), Status::LockedBy(StepKey::house(R::AskOpenFlues)));
}

/// Rates, section 6.5: actual depths of lumber, a third of it in the United States.
#[test]
fn what_fits_through_a_joist() {
    let fits = |rules, tube, inches: &str| {
        let house = choose(&solid(&under(rules, &house())), |choices| choices.tube = tube);
        verdict(&found(&house, H::JoistDepth, inches, Unit::Inch), C::JoistHole)
    };
    let us = RuleSet::Irc2021;
    for (inches, verdict) in [("5.5", V::Fails), ("7.25", V::Fails), ("9.25", V::Fails), ("11.25", V::Holds)] {
        assert_eq!(fits(us, TubeSize::Od75, inches), verdict, "75 mm through {inches} in");
    }
    assert_eq!(fits(us, TubeSize::Od90, "11.25"), V::Fails, "90 mm is tight in 2×12 and wants its clearance");
    // Site practice, section 2: by the British quarter no round tube crosses an ordinary joist.
    assert_eq!(fits(RuleSet::Adf2021, TubeSize::Od63, "225 mm"), V::Fails);
}

#[test]
fn joists_that_nobody_has_named_bear_nothing_yet() {
    let depth = |inches| found(&under(RuleSet::Irc2021, &house()), H::JoistDepth, inches, Unit::Inch);
    assert_eq!(["9.25", "11.25"].map(|inches| verdict(&depth(inches), C::JoistHole)), [V::Fails, V::Unknown]);
    assert_eq!(verdict(&solid(&depth("11.25")), C::JoistHole), V::Holds);
}

#[test]
fn what_a_designer_must_allow_is_not_judged() {
    for joist in [Joist::Engineered, Joist::Truss, Joist::Steel] {
        let house = choose(&house(), |choices| choices.joist = Some(joist));
        assert_eq!(verdict(&found(&house, H::JoistDepth, "400", Unit::Millimetre), C::JoistHole), V::Designer);
    }
    let concrete = choose(&house(), |choices| choices.joist = Some(Joist::Concrete));
    assert_eq!(check(&concrete, C::JoistHole), None);
    assert_eq!(verdict(&house(), C::JoistHole), V::Unknown);
}

/// Rates, section 4, test vectors (a) to (d).
#[test]
fn places_outside_are_judged_by_the_code() {
    let ft = |house: &House, field, text: &str| found(house, field, text, Unit::Foot);
    let us = under(RuleSet::Irc2021, &house());
    assert_eq!(verdict(&us, C::IntakeSource), V::Unknown);
    let vent = ft(&ft(&us, H::IntakeSource, "8"), H::IntakeBelow, "4");
    assert_eq!(verdict(&vent, C::IntakeSource), V::Excepted);
    let level = ft(&ft(&us, H::IntakeExhaust, "8"), H::ExhaustAbove, "0");
    assert_eq!(verdict(&level, C::IntakeExhaust), V::Fails);
    let combined = |rules| choose(&under(rules, &level), |choices| choices.outlets = Outlets::Combined);
    assert_eq!(verdict(&combined(RuleSet::Irc2021), C::IntakeExhaust), V::Fails);
    assert_eq!(verdict(&combined(RuleSet::Irc2024), C::IntakeExhaust), V::Excepted);
    assert_eq!(verdict(&combined(RuleSet::Washington2021), C::IntakeExhaust), V::Excepted);
    assert_eq!(verdict(&ft(&us, H::ExhaustOpening, "5.4"), C::ExhaustOpening), V::Holds);
    assert_eq!(verdict(&ft(&us, H::ExhaustBoundary, "2 ft 6 in"), C::ExhaustBoundary), V::Fails);
    // Typed in metres, 10 ft are 3.048 m.
    assert_eq!(verdict(&found(&us, H::IntakeSource, "3.048", Unit::Metre), C::IntakeSource), V::Holds);
}

#[test]
fn what_fails_outside_stands_beside_its_field() {
    let house = found(&under(RuleSet::Irc2021, &house()), H::ExhaustBoundary, "2", Unit::Foot);
    let place = crate::issue::Place::Field(Field::House(H::ExhaustBoundary));
    let issues = Report::of(house).issues();
    assert!(issues.iter().any(|issue| issue.place == place && issue.code() == "exhaust-boundary"));
}

#[test]
fn a_longer_run_or_a_missing_twin_is_seen_at_once() {
    let house = house();
    let bath = room(&house, RoomKind::Bathroom);
    let key = StepKey::run(R::PullTubes, bath, Air::Extract);
    assert!(find(&house, key).unwrap().checks.is_empty());
    let longer = with(&house, Field::Room(bath, RoomField::ExtractBuilt), "12.1", Unit::Metre);
    assert_eq!(find(&longer, key).unwrap().checks[0].verdict, V::Holds);
    let kitchen = room(&house, RoomKind::Kitchen);
    let one = with(&house, Field::Room(kitchen, RoomField::ExtractTubes), "1", Unit::Count);
    let run = StepKey::run(R::PullTubes, kitchen, Air::Extract);
    let speed = find(&one, run).unwrap().checks[0].numbers[0].value.unwrap();
    let report = Report::of(one);
    let run = report.runs().side(Air::Extract).find(|run| run.room == kitchen).copied().unwrap();
    assert!(run.tubes.value > 1);
    let planned = [run.speed_normal, run.speed_boost].map(|speed| speed.value.as_ms() * f64::from(run.tubes.value));
    assert!(planned.iter().any(|all| (speed - all).abs() < 1e-9), "one tube carries all of it");
}

#[test]
fn a_house_that_people_live_in_has_a_survey_of_its_own() {
    let old = choose(&house(), |choices| choices.building = Building::Old);
    let has = |house: &House, rule| steps(house).iter().any(|step| step.key.rule == rule);
    for rule in [R::SurveyOldFans, R::SurveyVents] {
        assert!(has(&old, rule) && !has(&house(), rule), "{}", rule.id());
    }
}

/// Rates, section 4: the exhaust over a window from 2024, the intake under the mechanical code.
#[test]
fn what_only_one_code_asks_for_is_asked_there_alone() {
    let ft = |house: &House, field, text: &str| found(house, field, text, Unit::Foot);
    let over = |rules, feet| ft(&ft(&under(rules, &house()), H::ExhaustOpening, "2"), H::ExhaustOver, feet);
    let opening = |house: &House| verdict(house, C::ExhaustOpening);
    assert_eq!(opening(&over(RuleSet::Irc2024, "1")), V::Excepted);
    assert_eq!(opening(&over(RuleSet::Irc2024, "-1")), V::Fails);
    assert_eq!(opening(&over(RuleSet::Irc2021, "1")), V::Fails);
    let imc = ft(&under(RuleSet::Imc, &house()), H::IntakeBoundary, "9.9");
    assert_eq!(verdict(&imc, C::IntakeBoundary), V::Fails);
    assert_eq!(check(&under(RuleSet::Irc2024, &imc), C::IntakeBoundary), None);
    let street = ft(&imc, H::IntakeStreet, "6");
    assert_eq!(verdict(&street, C::IntakeStreet), V::Fails);
    assert_eq!(verdict(&ft(&street, H::IntakeGround, "25"), C::IntakeStreet), V::Excepted);
    let source = |rules| check(&under(rules, &street), C::IntakeSource).unwrap().source.document;
    assert_eq!([RuleSet::Imc, RuleSet::Irc2018, RuleSet::Ashrae2016].map(source), ["IMC", "IRC", "ASHRAE 62.2"]);
}

#[test]
fn two_sides_of_the_house_are_apart_where_the_rule_says_so() {
    let near = |rules| found(&under(rules, &house()), H::IntakeExhaust, "1", Unit::Metre);
    let sides = |rules| choose(&near(rules), |choices| choices.outlets = Outlets::Sides);
    assert_eq!(verdict(&sides(RuleSet::Din2019), C::IntakeExhaust), V::Excepted);
    assert_eq!(verdict(&near(RuleSet::Din2019), C::IntakeExhaust), V::Fails);
    assert_eq!(verdict(&sides(RuleSet::Irc2024), C::IntakeExhaust), V::Fails);
}

/// IRC R502.8.1: a sixth of the depth outside the middle third, a quarter at the ends, a third long.
#[test]
fn a_notch_is_judged_by_its_depth_its_place_and_its_length() {
    let inch = |house: &House, field, text: &str| found(house, field, text, Unit::Inch);
    let joist =
        |rules| found(&inch(&solid(&under(rules, &house())), H::JoistDepth, "12"), H::JoistSpan, "12", Unit::Foot);
    let notch = |rules, deep: &str, at: &str| {
        let house = found(&inch(&joist(rules), H::JoistNotch, deep), H::JoistNotchAt, at, Unit::Foot);
        verdict(&house, C::JoistNotch)
    };
    let us = RuleSet::Irc2024;
    let seen = [("2", "3"), ("2.1", "3"), ("0.5", "6"), ("3", "0"), ("3.1", "0"), ("2", "4"), ("2", "4.1"), ("2", "9")];
    let verdicts = [V::Holds, V::Fails, V::Fails, V::Holds, V::Fails, V::Holds, V::Fails, V::Holds];
    assert_eq!(seen.map(|(deep, at)| notch(us, deep, at)), verdicts);
    // British practice: an eighth of the depth between 0.07 and 0.25 of the span.
    let seen = [("1.5", "1"), ("1.6", "1"), ("1.5", "0.5"), ("1.5", "3.1"), ("0.5", "0")];
    let verdicts = [V::Holds, V::Fails, V::Fails, V::Fails, V::Fails];
    assert_eq!(seen.map(|(deep, at)| notch(RuleSet::Adf2021, deep, at)), verdicts);
    let nowhere = inch(&joist(us), H::JoistNotch, "2");
    assert_eq!(verdict(&nowhere, C::JoistNotch), V::Unknown);
    assert_eq!(check(&joist(us), C::JoistNotch), None);
    let long = |text| {
        let house = found(&inch(&nowhere, H::JoistNotchLength, text), H::JoistNotchAt, "3", Unit::Foot);
        verdict(&house, C::JoistNotchLength)
    };
    assert_eq!([long("4"), long("4.1"), long("")], [V::Holds, V::Fails, V::Unknown]);
    let truss = choose(&nowhere, |choices| choices.joist = Some(Joist::Truss));
    assert_eq!(verdict(&truss, C::JoistNotch), V::Designer);
}

/// Rates, section 6.5: 75 mm only through a 2×6 that is doubled or bears nothing; IRC R602.6.
#[test]
fn what_fits_through_a_stud() {
    let stud = |kind, inches: &str| {
        let house = found(&under(RuleSet::Irc2021, &house()), H::StudDepth, inches, Unit::Inch);
        choose(&found(&house, H::StudNotch, "1.3", Unit::Inch), |choices| {
            choices.stud = kind;
            choices.tube = TubeSize::Od63;
        })
    };
    let both = |kind, inches| [C::StudHole, C::StudNotch].map(|rule| verdict(&stud(kind, inches), rule));
    // A tube of 63 mm wants 73 mm: 60 % of 5.5 in is 84 mm, 40 % is 56 mm; 25 % is 1.375 in, 40 % of 3.5 in is 1.4 in.
    assert_eq!(both(Some(Stud::Bearing), "5.5"), [V::Fails, V::Holds]);
    assert_eq!(both(Some(Stud::Doubled), "5.5"), [V::Holds, V::Holds]);
    assert_eq!(both(Some(Stud::Partition), "3.5"), [V::Fails, V::Holds]);
    assert_eq!(both(Some(Stud::Bearing), "3.5"), [V::Fails, V::Fails]);
    assert_eq!(both(None, "5.5"), [V::Unknown, V::Unknown]);
    assert_eq!(check(&under(RuleSet::Adf2021, &stud(None, "5.5")), C::StudHole), None);
    assert_eq!(check(&under(RuleSet::Irc2021, &house()), C::StudHole), None);
}

/// ASHRAE 62.2 section 6.4: 15 cfm for each 100 ft² of floor, so 225 cfm on 1500 ft²; 75 L/s for each 100 m² in its SI print.
#[test]
fn two_large_fans_are_held_against_the_floor_beside_an_open_flue() {
    let cfm = |house: &House, field, text: &str| found(house, field, text, Unit::CubicFootPerMinute);
    let flue = |rules, fuel| {
        let house = choose(&under(rules, &house()), |choices| choices.fuel = Some(fuel));
        found(&house, H::FloorArea, "1500", Unit::SquareFoot)
    };
    let us = flue(RuleSet::Irc2021, Fuel::Gas);
    let of = |house: &House| verdict(house, C::FanDraw);
    assert_eq!(of(&us), V::Unknown);
    let limit = check(&cfm(&us, H::LargestFans, "0"), C::FanDraw).unwrap().numbers[1];
    let limit = crate::quantity::convert(limit.value.unwrap(), limit.unit, Unit::CubicFootPerMinute).unwrap();
    assert!((limit - 225.0).abs() < 1e-9);
    assert_eq!(["225", "226"].map(|text| of(&cfm(&us, H::LargestFans, text))), [V::Holds, V::Fails]);
    // All of them together: enough when they are within it, else the two largest are asked for.
    assert_eq!(["225", "226"].map(|text| of(&cfm(&us, H::OtherFans, text))), [V::Holds, V::Unknown]);
    assert_eq!(of(&cfm(&cfm(&us, H::OtherFans, "400"), H::LargestFans, "200")), V::Holds);
    let si =
        choose(&found(&us, H::FloorArea, "100", Unit::SquareMetre), |choices| choices.print = crate::house::Print::Si);
    let litres = |text| of(&found(&si, H::LargestFans, text, Unit::LitrePerSecond));
    assert_eq!([litres("75"), litres("75.1")], [V::Holds, V::Fails]);
    for other in [flue(RuleSet::Adf2021, Fuel::Gas), flue(RuleSet::Irc2021, Fuel::Sealed)] {
        assert_eq!(check(&other, C::FanDraw), None);
    }
}
