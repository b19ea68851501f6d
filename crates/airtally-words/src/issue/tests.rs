use super::*;
use crate::{demo, prose};
use airtally::entry::Entry;
use airtally::house::{HouseField, RoomField, RoomId};
use airtally::quantity::{LONGEST_TEXT, ParseError};
use airtally::report::Report;

const HALL: RoomId = RoomId(4);
const AREA: Field = Field::Room(HALL, RoomField::Area);

/// Larkfield with a text in the floor area of its hall.
fn with_area(text: &str, unit: Unit) -> House {
    put(AREA, text, unit)
}

fn put(field: Field, text: &str, unit: Unit) -> House {
    airtally::edit::Edit::Set(field, text.to_owned(), unit).apply(&demo::larkfield())
}

/// What the calculation has to say about this field of this house.
fn about(house: &House, field: Field) -> String {
    let issues = Report::of(house.clone()).issues();
    let found = issues.iter().find(|issue| issue.place == Place::Field(field));
    let text = found.map(|issue| sentence(issue, house)).unwrap_or_default();
    prose::is_sentence(&text);
    text.replace([format::NO_BREAK, format::NARROW], " ")
}

#[test]
fn a_field_says_what_it_accepts_and_quotes_what_was_typed() {
    let text = about(&with_area("-5", Unit::SquareMetre), AREA);
    assert_eq!(text, "Floor area of Hall must be between 0.3 and 2000 m². You typed “-5”. Nothing was changed.");
    let text = about(&with_area("500", Unit::SquareMetre), AREA);
    assert_eq!(text, "Floor area of Hall is usually between 0.8 and 120 m². You typed “500”; it is used as typed.");
    let text = about(&with_area("a lot", Unit::SquareMetre), AREA);
    assert_eq!(text, "Floor area of Hall: “a lot” cannot be read as an area. Nothing was changed.");
    let text = about(&with_area("1,234", Unit::SquareMetre), AREA);
    assert_eq!(text, "Floor area of Hall: “1,234” can mean 1.234 or 1 234. Which one?");
    let text = about(&with_area("20 cfm", Unit::SquareMetre), AREA);
    assert_eq!(text, "Floor area of Hall: “20 cfm” is an air flow, and an area is asked for. Nothing was changed.");
    let text = about(&with_area("12 furlongs", Unit::SquareMetre), AREA);
    assert_eq!(text, "Floor area of Hall: “furlongs” is no unit that is known here. Nothing was changed.");
    let sleepers = Field::Room(RoomId(5), RoomField::Sleepers);
    let text = about(&put(sleepers, "1.5", Unit::Count), sleepers);
    assert_eq!(text, "Sleepers of Main bedroom must be a whole number. You typed “1.5”. Nothing was changed.");
}

#[test]
fn beside_its_field_an_issue_does_not_name_the_room() {
    let house = with_area("-5", Unit::SquareMetre);
    let issues = Report::of(house.clone()).issues();
    let issue = issues.iter().find(|issue| issue.place == Place::Field(AREA)).expect("an issue");
    let text = beside(issue, &house).replace([format::NO_BREAK, format::NARROW], " ");
    assert_eq!(text, "Floor area must be between 0.3 and 2000 m². You typed “-5”. Nothing was changed.");
}

#[test]
fn limits_are_said_in_the_unit_of_the_field_and_what_is_said_is_accepted() {
    for unit in [Unit::SquareMetre, Unit::SquareFoot, Unit::SquareInch] {
        let text = about(&with_area("-5", unit), AREA);
        let said = text.split("between ").nth(1).and_then(|rest| rest.split(". You").next()).unwrap_or_default();
        let (min, max) = said.split_once(" and ").expect("two limits");
        for limit in [min, max] {
            let entry = Entry::new(limit, unit);
            assert!(entry.read(RoomField::Area.limit()).is_ok(), "{limit} of “{text}”");
        }
    }
}

#[test]
fn long_texts_are_cut_and_stay_on_one_line() {
    let house = with_area(&format!("Seventeen\n\tand {}", "a half ".repeat(12)), Unit::SquareMetre);
    let text = about(&house, AREA);
    let quoted = text.split(['“', '”']).nth(1).unwrap_or_default();
    assert!(quoted.starts_with("Seventeen and a half a half") && quoted.ends_with('…'), "{text}");
    assert!(quoted.chars().count() <= typed::QUOTED, "{text}");
    let house = with_area(&"9".repeat(LONGEST_TEXT + 1), Unit::SquareMetre);
    assert!(about(&house, AREA).contains("200 characters"));
}

#[test]
fn houses_get_sentences_for_all_their_issues() {
    for demo in &demo::DEMOS {
        for rules in airtally::rules::RuleSet::ALL {
            let mut house = (demo.house)();
            house.choices.rules = rules;
            house.choices.credit = airtally::house::Credit::Claimed;
            for issue in Report::of(house.clone()).issues() {
                check(&issue, &house);
            }
        }
    }
}

#[test]
fn every_trouble_has_a_sentence_at_every_place() {
    let mut house = with_area(&"12 or 13 ".repeat(30), Unit::SquareMetre);
    house.name = "A name that is far too long for any label on any tube ".repeat(9);
    let fields = [AREA, Field::HouseName, Field::RoomName(HALL), Field::House(HouseField::Ach50)];
    let givens = airtally::given::GivenId::all().map(Field::Given);
    let fields = fields.into_iter().chain(givens).map(Place::Field);
    for place in fields.chain([Place::House, Place::Room(HALL), Place::Room(RoomId(999))]) {
        for trouble in troubles() {
            check(&Issue::new(place, trouble), &house);
        }
    }
}

fn check(issue: &Issue, house: &House) {
    prose::is_sentence(&sentence(issue, house));
    if let Some(hint) = hint(issue) {
        prose::is_sentence(&hint);
    }
}

fn troubles() -> Vec<Trouble> {
    let (min, max, unit) = (0.3, 2000.0, Unit::SquareMetre);
    let mut all = vec![
        Trouble::OutOfRange { min, max, unit },
        Trouble::SeldomRight { min, max, unit },
        Trouble::LongName { length: 400, fits: 40 },
        Trouble::NoRooms,
        Trouble::NoBedrooms,
        Trouble::NoSupplyRoom,
        Trouble::NoExtractRoom,
        Trouble::ManyRooms { count: 61 },
        Trouble::AreaMissing,
        Trouble::AreaTwice,
        Trouble::RoomsExceedFloor { rooms: 160.2 },
        Trouble::NeverServed,
        Trouble::BetweenRows { area: 1500.5 },
        Trouble::OutsideEquation { min: 30.0, max: 210.0 },
        Trouble::BeyondTable { most: 5 },
        Trouble::RunTimeNotAllowed { min: 25.0 },
        Trouble::OpenKitchenContinuous,
        Trouble::NoAwayRate,
        Trouble::AboveMost { total: 180.0, most: 115.2 },
        Trouble::BoostFallsShort { gets: 20.0, needs: 28.8 },
        Trouble::ManyTubes { count: 6 },
        Trouble::RunTakesMuch { pascal: 57.0, limit: 40.0 },
        Trouble::LongerThanCoil { metres: 61.0, coil: 50.0 },
        Trouble::Loud { level: Level::Normal, decibel: 34.0, limit: 30.0 },
        Trouble::StuffyNight { ppm: 1340.2, limit: 1000.0 },
        Trouble::UndercutTall { mm: 31.6 },
    ];
    all.extend(Level::ALL.map(|level| Trouble::StepsRaiseTotal { level, by: 12.4 }));
    all.extend(errors().map(Trouble::Unreadable));
    all.extend(conditions().map(Trouble::CreditRefused));
    all
}

fn errors() -> [ParseError; 9] {
    [
        ParseError::Empty,
        ParseError::NotANumber,
        ParseError::Ambiguous { decimal: 1.234, thousands: 1234.0 },
        // Inside a letter or past the end: the whole text is quoted.
        ParseError::UnknownUnit { at: 9999 },
        ParseError::WrongKind { unit: Unit::Pascal },
        ParseError::UnclearUnit,
        ParseError::TooLong,
        ParseError::NotFinite,
        ParseError::NotWhole,
    ]
}

fn conditions() -> [Condition; 6] {
    [
        Condition::NotInEdition,
        Condition::LivingDiningKitchen,
        Condition::Tightness,
        Condition::WeatherFactor,
        Condition::EnvelopeHeight,
        Condition::Volume,
    ]
}
