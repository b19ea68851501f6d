//! This house's numbers: the handbook's where it prints them, and each follows what it is made from.

use super::*;
use crate::given::GivenId;
use crate::house::TubeSize;
use crate::working::Origin;

fn value(house: &House, rule: StepRule, name: NumberName) -> f64 {
    number(house, rule, name).and_then(|number| number.value).unwrap()
}

fn set(house: &House, id: GivenId, text: &str) -> House {
    with(house, Field::Given(id), text, id.given().unit)
}

#[test]
fn numbers_printed_in_the_handbook() {
    use NumberName as N;
    let house = house();
    let near = |value: f64, printed: f64| assert!((value - printed).abs() < 1e-9, "{value} is not {printed}");
    // Site practice, section 2: 160 + 2 × 25 → 230; bends at least 2 × the outside diameter.
    near(value(&house, StepRule::DrillCores, N::Diameter), 230.0);
    near(value(&house, StepRule::BendWide, N::Radius), 150.0);
    // Rates, section 6.3: 400 Pa 66 + 33 mm, 250 Pa 51 + 25 mm, printed in whole millimetres.
    let trap = |house: &House, name| value(house, StepRule::FitTrap, name);
    assert_eq!((trap(&house, N::TrapDrop).ceil(), trap(&house, N::TrapSeal).round()), (66.0, 33.0));
    let weak = set(&house, GivenId::DrainSuction, "250");
    assert_eq!((trap(&weak, N::TrapDrop).ceil(), trap(&weak, N::TrapSeal).round()), (51.0, 25.0));
}

#[test]
fn distances_and_sizes_printed_in_site_practice() {
    use NumberName as N;
    let house = house();
    let printed = [
        // Section 2: the void at crossings is 2 × 75 mm.
        (StepRule::CheckStructure, N::Crossing, 150.0),
        // Section 3: 30 in before the unit, 2 m to outdoors, 400 mm at the throttles, a hatch of 300 mm, a silencer
        // 0.9 m long and 100 mm wider than its main of 160 mm, the drain 1 % and the exhaust duct 2 %.
        (StepRule::PlaceUnit, N::Distance, 30.0),
        (StepRule::PlaceUnit, N::Length, 2.0),
        (StepRule::PlaceManifolds, N::Distance, 400.0),
        (StepRule::PlaceManifolds, N::Length, 300.0),
        (StepRule::FixSilencers, N::Length, 900.0),
        (StepRule::FixSilencers, N::Diameter, 260.0),
        (StepRule::FallDrain, N::Fall, 0.01),
        (StepRule::SlopeExhaust, N::Fall, 0.02),
        // Section 4: 1 m from a bed head, 400 mm below the ceiling, 1.2 m from the hob.
        (StepRule::PlaceBedroomValves, N::Distance, 1.0),
        (StepRule::PlaceExtractValves, N::Distance, 400.0),
        (StepRule::PlaceKitchenValve, N::Distance, 1.2),
        // Section 5: 8 m from foul air. Section 7: wind of Beaufort 3.
        (StepRule::PlaceIntake, N::Distance, 8.0),
        (StepRule::CalmWeather, N::Wind, 3.0),
    ];
    for (rule, name, is) in printed {
        assert!((value(&house, rule, name) - is).abs() < 1e-9, "{}: {}", rule.id(), value(&house, rule, name));
    }
}

#[test]
fn a_british_hole_lies_in_its_zone() {
    // Rates, section 6.5: 0.25 to 0.4 of the span, here of 4 m.
    let house = with(&house(), Field::House(HouseField::JoistDepth), "400", Unit::Millimetre);
    let house = with(&house, Field::House(HouseField::JoistSpan), "4", Unit::Metre);
    let step = find(&house, StepKey::house(StepRule::CheckStructure)).unwrap();
    let numbers: Vec<f64> = step.checks[0].numbers.iter().filter_map(|number| number.value).collect();
    // A quarter of 400 mm bears 100 mm, and 75 mm with 10 mm to pull are 85 mm.
    let by_hand = [85.0, 100.0, 1.0, 1.6];
    assert!(numbers.iter().zip(by_hand).all(|(number, by_hand)| (number - by_hand).abs() < 1e-9), "{numbers:?}");
    assert_eq!(numbers.len(), by_hand.len());
}

#[test]
fn what_the_handbook_says_of_joists() {
    let depth = |rules, tube| {
        let mut house = under(rules, &house());
        house.choices.tube = tube;
        value(&house, StepRule::CheckStructure, NumberName::JoistDepth) / 25.4
    };
    // Rates, section 6.5, actual depths: a 75 mm tube goes through 2 × 12 but not through 2 × 10, a 90 mm tube is too
    // much for 2 × 12 with its clearance. Site practice, section 2: a quarter lets no round tube through a usual joist.
    let (two_by_ten, two_by_twelve) = (9.25, 11.25);
    assert!(depth(RuleSet::Irc2021, TubeSize::Od75) > two_by_ten);
    assert!(depth(RuleSet::Irc2021, TubeSize::Od75) < two_by_twelve);
    assert!(depth(RuleSet::Irc2021, TubeSize::Od90) > two_by_twelve);
    assert!(depth(RuleSet::Adf2021, TubeSize::Od75) > two_by_twelve);
}

#[test]
fn supports_and_distances_follow_the_rule_set() {
    let distance = |rules, rule| {
        let number = number(&under(rules, &house()), rule, NumberName::Distance).unwrap();
        (number.value.unwrap(), number.unit)
    };
    // Rates, section 6.1 and section 4; site practice, section 5.
    assert_eq!(distance(RuleSet::Adf2021, StepRule::SupportTubes), (750.0, Unit::Millimetre));
    assert_eq!(distance(RuleSet::Irc2021, StepRule::SupportTubes), (4.0, Unit::Foot));
    assert_eq!(distance(RuleSet::Adf2021, StepRule::PlaceIntake), (8.0, Unit::Metre));
    assert_eq!(distance(RuleSet::Irc2024, StepRule::PlaceIntake), (10.0, Unit::Foot));
    assert_eq!(distance(RuleSet::Canada, StepRule::PlaceIntake), (1.8, Unit::Metre));
    let says = |rules| find(&under(rules, &house()), StepKey::house(StepRule::PlaceIntake)).unwrap().source.document;
    assert_eq!([RuleSet::Imc, RuleSet::Irc2021, RuleSet::Ashrae2016].map(says), ["IMC", "IRC", "ASHRAE 62.2"]);
}

#[test]
fn the_length_to_cut_needs_typed_legs() {
    let house = house();
    let bedroom = room(&house, RoomKind::Bedroom);
    let key = StepKey::run(StepRule::PullTubes, bedroom, Air::Supply);
    let cut = find(&house, key).unwrap().numbers[1];
    let field = Field::Room(bedroom, RoomField::SupplyRun);
    assert_eq!((cut.value, cut.origin), (None, Origin::Typed(field)));
    // Site practice, section 2: legs + 0.4 m per end + 5 %.
    let typed = with(&house, field, "3.2 + 1.4 + 2.6", Unit::Metre);
    let cut = find(&typed, key).unwrap().numbers[1].value.unwrap();
    assert!((cut - (3.2 + 1.4 + 2.6 + 2.0 * 0.4) * 1.05).abs() < 1e-9);
}

#[test]
fn every_number_is_finite_and_at_least_twelve_rules_have_some() {
    for rules in RuleSet::ALL {
        let steps = steps(&under(rules, &house()));
        // Only temperatures may be below nought.
        let may = |number: &Number, value: f64| value >= 0.0 || number.unit == Unit::Celsius;
        let finite = |number: &Number| number.value.is_none_or(|value| value.is_finite() && may(number, value));
        assert!(steps.iter().flat_map(|step| &step.numbers).all(finite));
        let mut with_numbers: Vec<StepRule> =
            steps.iter().filter(|step| !step.numbers.is_empty()).map(|step| step.key.rule).collect();
        with_numbers.dedup();
        assert!(with_numbers.len() >= 12);
    }
}

#[test]
fn every_number_follows_the_givens_it_is_made_from() {
    let mut followed = 0;
    for rules in RuleSet::ALL {
        let house = under(rules, &house());
        let report = Report::of(house.clone());
        for step in report.steps() {
            for (at, number) in step.numbers.iter().enumerate() {
                // A count of tubes moves in whole tubes, a total in whole steps: they have laws of their own.
                let whole = matches!(number.name, NumberName::Tubes | NumberName::Flow);
                for id in givens(&report, number.origin).into_iter().filter(|_| !whole) {
                    let other = find(&nudged(&house, id), step.key).unwrap().numbers[at];
                    assert_ne!(number.value, other.value, "{} by {}", step.key.rule.id(), id.given().key);
                    followed += 1;
                }
            }
        }
    }
    assert!(followed > 9 * 25);
}

fn givens(report: &Report, origin: Origin) -> Vec<GivenId> {
    match origin {
        Origin::Given(id) => vec![id],
        Origin::Line(line) => {
            let own = |term: &crate::working::Term| match term.origin {
                Origin::Given(id) => Some(id),
                _ => None,
            };
            report.terms(line).iter().filter_map(own).collect()
        }
        _ => Vec::new(),
    }
}

/// With a registered value set a little otherwise.
pub(super) fn nudged(house: &House, id: GivenId) -> House {
    let given = id.given();
    let up = if given.unit == Unit::Count { given.value + 1.0 } else { given.value * 1.125 };
    let other = if up <= given.range.1 { up } else { given.value * 0.875 };
    set(house, id, &other.to_string())
}

#[test]
fn flows_follow_the_house_and_sizes_follow_the_tube() {
    use NumberName as N;
    let house = house();
    let big = with(&house, Field::Room(room(&house, RoomKind::Living), RoomField::Area), "228", Unit::SquareMetre);
    let flows = [
        (StepRule::CheckUnitDuty, N::Flow),
        (StepRule::PlaceIntake, N::Area),
        (StepRule::ConnectMains, N::Speed),
        (StepRule::LeakTest, N::Leak),
        (StepRule::StartUnit, N::Flow),
        (StepRule::ReadTerminals, N::Flow),
        (StepRule::CompareTotals, N::Tolerance),
        (StepRule::ReadBoost, N::Flow),
    ];
    for (rule, name) in flows {
        assert!(value(&big, rule, name) > value(&house, rule, name), "{}", rule.id());
    }
    let mut wide = house.clone();
    wide.choices.tube = TubeSize::Od90;
    for (rule, name) in [(StepRule::BendWide, N::Radius), (StepRule::DrillTubeHoles, N::Diameter)] {
        assert!(value(&wide, rule, name) > value(&house, rule, name), "{}", rule.id());
    }
}

#[test]
fn counts_follow_the_rooms() {
    use NumberName as N;
    let house = house();
    let more = Edit::DuplicateRoom(room(&house, RoomKind::Bedroom)).apply(&house);
    let more = Edit::DuplicateRoom(room(&house, RoomKind::Wc)).apply(&more);
    let counts = [
        StepRule::PlaceBedroomValves,
        StepRule::PlaceExtractValves,
        StepRule::RecordRoutes,
        StepRule::SealJoints,
        StepRule::CapEnds,
        StepRule::OpenValves,
        StepRule::LockValves,
    ];
    for rule in counts {
        assert!(value(&more, rule, N::Count) > value(&house, rule, N::Count), "{}", rule.id());
    }
    let basement = Edit::SetStorey(room(&house, RoomKind::Utility), -1).apply(&house);
    let crossings = |house: &House| {
        let steps = steps(house);
        steps.iter().find(|step| step.key.rule == StepRule::ListCrossings).unwrap().numbers.clone()
    };
    let floors = |house: &House| crossings(house)[1].value;
    assert_eq!((floors(&house), floors(&basement)), (Some(1.0), Some(2.0)));
}

#[test]
fn outdoor_grilles_and_the_unit_are_for_boost_leaks_and_mains_for_normal() {
    use NumberName as N;
    // IRC 2021 names no boost: 1.3 × normal.
    let house = under(RuleSet::Irc2021, &house());
    let report = Report::of(house.clone());
    let total = |level| report.shares().at(level).total.as_m3h();
    let (normal, boost) = (total(crate::rules::Level::Normal), total(crate::rules::Level::Boost));
    assert!(boost > normal);
    let near = |value: f64, by_hand: f64| assert!((value - by_hand).abs() < 1e-6, "{value} is not {by_hand}");
    near(value(&house, StepRule::PlaceIntake, N::Area), boost / 3600.0 / 2.0 * 1e4);
    near(value(&house, StepRule::ReadBoost, N::Flow), boost);
    let duty = steps(&house).into_iter().find(|step| step.key.rule == StepRule::CheckUnitDuty).unwrap();
    near(duty.numbers[2].value.unwrap(), boost / 0.8);
    near(value(&house, StepRule::LeakTest, N::Leak), normal * 0.05 * libm::pow(100.0 / 30.0, 0.65));
    near(value(&house, StepRule::CompareTotals, N::Tolerance), normal * 0.05);
    near(value(&house, StepRule::ConnectMains, N::Speed), normal / 3600.0 / (std::f64::consts::PI * 0.0064));
}
