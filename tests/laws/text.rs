//! Whatever is typed: no panic, no number that is not finite, no letter lost.

use super::{few, houses};
use airtally::alternatives::Ways;
use airtally::delivery::{Mishap, Trial};
use airtally::entry::Entry;
use airtally::given::GivenId;
use airtally::house::{Field, House, HouseField, RoomField};
use airtally::id::Curve;
use airtally::issue::Trouble;
use airtally::parts::Part;
use airtally::quantity::{ParseError, Unit};
use airtally::report::Report;
use airtally::save::{self, File};
use proptest::prelude::*;
use proptest::sample::select;

/// Texts that have broken programs.
const HOSTILE: [&str; 38] = [
    "9.4, 4294967296 bends",
    "3.2 + 1.4, 2 bends 1e999",
    "20: 4; 30: 1e308; 40: 9",
    "0: 300; 100: 0; 200: 0",
    "",
    " ",
    "\t\n",
    "0",
    "-0",
    "-1",
    "1e308",
    "-1e308",
    "1e309",
    "4.9e-324",
    "NaN",
    "inf",
    "-Infinity",
    "1,234",
    "1.234.567,8",
    "1/0",
    "0/0",
    "½",
    "🏠",
    "12 🏠",
    "👩‍👩‍👧‍👦",
    "\u{202e}12",
    "غرفة",
    "١٢",
    "１２",
    "\u{0}",
    "\u{feff}12",
    "null",
    "{\"a\":1}",
    "\"\\\"",
    "<script>",
    "999999999999999999999",
    "12 ft 6 in",
    "3 + 4 - 5",
];

fn text() -> impl Strategy<Value = String> {
    prop_oneof![
        4 => select(&HOSTILE[..]).prop_map(str::to_owned),
        3 => prop::collection::vec(any::<char>(), 0..30).prop_map(String::from_iter),
        3 => (any::<f64>(), select(Unit::all().collect::<Vec<_>>())).prop_map(|(n, unit)| format!("{n} {}", unit.symbol())),
        2 => prop::collection::vec(select(vec!["1", "2", ",", ".", " ", "+", "-", "/", "e", "m", "ft", "'", "\"", "in", "½", "²"]), 0..12)
            .prop_map(|parts| parts.concat()),
        1 => (select(vec!["9", "é", "🏠", " ", "1,"]), 1..1500_usize).prop_map(|(piece, times)| piece.repeat(times)),
    ]
}

/// A house with such a text in every field that there is.
fn hostile() -> impl Strategy<Value = House> {
    let texts = prop::collection::vec((text(), any::<prop::sample::Index>()), 150);
    (houses::house(), texts).prop_map(|(mut house, texts)| {
        let units: Vec<Unit> = Unit::all().collect();
        let mut next = texts.into_iter().cycle();
        let mut typed = || next.next().expect("a cycle has no end");
        house.name = typed().0;
        let mut entry = || {
            let (text, unit) = typed();
            Entry::new(text, *unit.get(&units))
        };
        house.entries = HouseField::ALL.map(|field| (field, entry())).to_vec();
        house.settings = GivenId::all().map(|id| (id, entry())).collect();
        for room in &mut house.rooms {
            room.entries = RoomField::ALL.map(|field| (field, entry())).to_vec();
            room.name = entry().text;
        }
        house
    })
}

proptest! {
    #![proptest_config(few(96))]

    #[test]
    fn every_number_of_a_report_is_finite(house in houses::house()) {
        check_finite(house)?;
    }

    #[test]
    fn hostile_text_never_panics_and_gives_finite_numbers(house in hostile()) {
        check_finite(house)?;
    }

    /// One field at a time, so that the rest of the house is a good one.
    #[test]
    fn hostile_text_in_one_field_is_kept_and_harmless(house in houses::house(), text in text(), which in any::<prop::sample::Index>()) {
        let fields = fields(&house);
        let field = *which.get(&fields);
        let house = houses::set(&house, field, &text, field.unit(house.choices.display));
        prop_assert_eq!(house.text(field), text.as_str());
        let report = Report::of(house);
        report.issues();
        prop_assert_eq!(report.house().text(field), text.as_str());
        check_finite(report.house().as_ref().clone())?;
    }

    #[test]
    fn a_saved_house_opens_as_the_same_house(house in prop_oneof![houses::house(), hostile()]) {
        let text = serde_json::to_string(&File::of(&house)).expect("a house can be saved");
        let opened = save::read(&mut serde_json::Deserializer::from_str(&text)).expect("a saved house can be opened");
        prop_assert_eq!(opened, house);
    }
}

fn fields(house: &House) -> Vec<Field> {
    let of_rooms = house.rooms.iter().flat_map(|room| {
        let entries = RoomField::ALL.map(|field| Field::Room(room.id, field));
        entries.into_iter().chain([Field::RoomName(room.id)])
    });
    let of_house = HouseField::ALL.map(Field::House).into_iter().chain([Field::HouseName]);
    let own = Part::all().map(Field::Price).chain(Curve::ALL.map(Field::Curve));
    of_house.chain(GivenId::all().map(Field::Given)).chain(own).chain(of_rooms).collect()
}

fn check_finite(house: House) -> Result<(), TestCaseError> {
    let report = Report::of(house);
    let issues = report.issues();
    report.codes();
    let mishaps = Mishap::ALL.map(Some).into_iter().chain([None]);
    let rooms = report.house().rooms.first().map(|room| room.id);
    for mishap in mishaps {
        let mishap = rooms.zip(mishap);
        let outcome = report.tried(&Trial { dirty: [true; 2], leaks: true, pulled: true, mishap });
        for side in outcome.sides {
            prop_assert!(side.pressure.is_finite() && side.runs.iter().all(|came| came.got.is_finite()), "{:?}", side);
        }
    }
    for own in Ways::ALL.into_iter().flat_map(|ways| report.alternatives(ways)) {
        prop_assert!(own.unit.is_finite() && own.loudest.is_none_or(f64::is_finite), "{:?}", own);
    }
    for id in report.lines() {
        let line = report.line(id).expect("a line that was recorded");
        prop_assert!(line.value.is_finite(), "{:?}", line);
        for term in report.terms(id) {
            prop_assert!(term.value.is_finite(), "{:?} of {:?}", term, line);
        }
    }
    for codes in report.codes() {
        prop_assert!(codes.required.iter().all(|flow| flow.is_finite()), "{:?}", codes);
    }
    for step in report.steps() {
        prop_assert!(step.numbers.iter().all(|number| number.value.is_none_or(f64::is_finite)), "{:?}", step);
    }
    for issue in issues {
        let words = format!("{:?}", issue.trouble);
        prop_assert!(!words.contains("NaN") && !words.contains("inf"), "{}", words);
        if let Trouble::Unreadable(ParseError::Ambiguous { decimal, thousands }) = issue.trouble {
            prop_assert!(decimal.is_finite() && thousands.is_finite());
        }
    }
    Ok(())
}
