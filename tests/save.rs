//! Files: those of version 1 open for ever and are written again as they were; others are refused with a reason.
#![cfg(not(target_family = "wasm"))]
#![allow(clippy::panic, reason = "a fixture that cannot be read must stop the run")]

use airtally::given::GivenId;
use airtally::house::{Choices, Credit, Display, Field, House, HouseField, KitchenDraw, RoomField, RoomId, RoomKind};
use airtally::house::{Table, TubeSize, WetRooms};
use airtally::id::Curve;
use airtally::parts::Part;
use airtally::quantity::Unit;
use airtally::report::Report;
use airtally::rules::{Air, RuleSet};
use airtally::save::{self, File};
use airtally::steps::{Item, StepKey, StepRule};
use serde::Deserialize;
use std::path::PathBuf;

/// The smallest good file.
const SMALLEST: &str = concat!(
    r#"{"airtally":1,"house":{"name":"","choices":{"rules":"adf-2021","display":"m3h","credit":"without","#,
    r#""print":"inch-pound","tube":"od75"},"entries":[],"rooms":[],"next_room":0,"settings":[],"ticks":[]}}"#
);

/// Ids of choices in version 1.
const CHOICES: [(&str, &[&str]); 16] = [
    (
        r#""rules":"adf-2021""#,
        &[
            "adf-2021",
            "ireland-tgd-f-2019",
            "netherlands-2012",
            "france-1982",
            "din-1946-6-2019",
            "din-1946-6-2009",
            "en-16798-1-2019",
            "passive-house",
            "ashrae-62.2-2016",
            "ashrae-62.2-2013",
            "ashrae-62.2-2010",
            "irc-2024",
            "irc-2021",
            "irc-2018",
            "irc-2015",
            "washington-irc-2021",
            "imc-403",
            "canada-room-count",
            "canada-nbc",
        ],
    ),
    (r#""display":"m3h""#, &["m3h", "ls", "cfm"]),
    (r#""credit":"without""#, &["without", "claimed"]),
    (r#""print":"inch-pound""#, &["inch-pound", "si"]),
    (r#""tube":"od75""#, &["od63", "od75", "od90", "oval"]),
    (r#""wet":"""#, &["continuous", "on-demand"]),
    (r#""kitchen":"""#, &["system", "hood"]),
    (r#""table":"""#, &["table", "equation"]),
    (r#""joist":"""#, &["solid", "engineered", "truss", "steel", "concrete"]),
    (r#""stud":"""#, &["bearing", "doubled", "partition"]),
    (r#""fuel":"""#, &["nothing", "sealed", "gas", "solid"]),
    // Those below have a default, which is not written.
    (r#""building":"""#, &["old"]),
    (r#""outlets":"""#, &["combined", "sides"]),
    (r#""failing":"""#, &["both-stop"]),
    (r#""fans":"""#, &["speed"]),
    (r#""manifolds":"""#, &["storeys"]),
];

#[test]
fn every_file_of_version_1_opens_and_is_written_again_as_it_was() {
    let folder = fixtures().join("v1");
    let mut files = 0;
    for file in std::fs::read_dir(folder).expect("the folder of old files") {
        let path = file.expect("a file").path();
        let text = std::fs::read_to_string(&path).expect("a text");
        let house = open(&text).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
        let again = serde_json::to_value(File::of(&house)).expect("a house can be saved");
        let before: serde_json::Value = serde_json::from_str(&text).expect("JSON");
        assert_eq!(again, before, "{}", path.display());
        Report::of(house).issues();
        files += 1;
    }
    assert_eq!(files, 5, "a file of version 1 is never taken away");
}

#[test]
fn every_choice_of_version_1_opens() {
    for (place, ids) in CHOICES {
        let (field, _) = place.split_once(':').expect("a field and its id");
        for id in ids {
            let chosen = format!("{field}:\"{id}\"");
            let text = match SMALLEST.contains(place) {
                true => SMALLEST.replace(place, &chosen),
                false => SMALLEST.replace(r#""credit""#, &format!("{chosen},\"credit\"")),
            };
            let house = open(&text).unwrap_or_else(|error| panic!("{chosen}: {error}"));
            let again = serde_json::to_string(&File::of(&house)).expect("a house can be saved");
            assert!(again.contains(&chosen), "{chosen} became {again}");
        }
    }
}

/// A new id goes into the frozen files in the change that brings it.
#[test]
fn every_id_that_can_be_written_is_frozen() {
    let house = fixture("every_id");
    let frozen = CHOICES[0].1;
    assert!(RuleSet::ALL.iter().all(|rules| frozen.contains(&rules.id())), "{:?}", RuleSet::ALL.map(RuleSet::id));
    for id in GivenId::all() {
        assert!(house.entry(Field::Given(id)).is_some(), "{}", id.given().key);
    }
    for part in Part::all() {
        assert!(house.entry(Field::Price(part)).is_some(), "{}", part.id());
    }
    for curve in Curve::ALL {
        assert!(house.entry(Field::Curve(curve)).is_some(), "{}", curve.id());
    }
    for rule in StepRule::ALL {
        assert!(house.ticks.contains(&StepKey::house(rule)), "{}", rule.id());
    }
    for item in Item::ALL {
        let written = |tick: &StepKey| tick.item.is_some_and(|own| own.id() == item.id());
        assert!(house.ticks.iter().any(written), "{}", item.id());
    }
    assert!(house.ticks.contains(&StepKey::house(StepRule::CloseCrossings).with(Item::Floor(-1))));
    for kind in RoomKind::ALL {
        assert!(house.rooms.iter().any(|room| room.kind == kind), "{}", kind.id());
    }
    for field in HouseField::ALL {
        assert!(house.entry(Field::House(field)).is_some(), "{}", field.id());
    }
    for field in RoomField::ALL {
        assert!(house.rooms.iter().any(|room| room.entries.iter().any(|(typed, _)| *typed == field)), "{}", field.id());
    }
    for unit in Unit::all() {
        let texts = house.settings.iter().map(|(_, entry)| entry.unit);
        let texts = texts.chain(house.prices.iter().map(|(_, entry)| entry.unit));
        assert!(texts.chain(house.entries.iter().map(|(_, entry)| entry.unit)).any(|typed| typed == unit), "{unit:?}");
    }
}

#[test]
fn the_terrace_means_what_it_meant() {
    let house = fixture("terrace");
    let choices = Choices {
        display: Display::Litres,
        wet: Some(WetRooms::Continuous),
        kitchen: Some(KitchenDraw::System),
        ..Choices::default()
    };
    assert_eq!((house.name.as_str(), house.choices), ("Mill Row, end terrace", choices));
    assert_eq!(house.text(Field::House(HouseField::FloorArea)), "78,5");
    let order: Vec<u32> = house.rooms.iter().map(|room| room.id.0).collect();
    assert_eq!((order, house.next_room), (vec![0, 1, 4, 3, 5], 6));
    assert_eq!(house.rooms[1].open, Some(false));
    assert_eq!((house.rooms[2].kind, house.rooms[2].storey), (RoomKind::MainBedroom, 1));
    let width = house.entry(Field::Room(RoomId(0), RoomField::Width)).expect("a width");
    assert_eq!((width.text.as_str(), width.unit), ("12 ft 6 in", Unit::Metre));
    assert_eq!(house.text(Field::Given(GivenId::DoorWidth)), "760");
    let ticks = [
        StepKey::run(StepRule::PullTubes, RoomId(0), Air::Supply),
        StepKey::house(StepRule::AskOpenFlues),
        StepKey::run(StepRule::PullTubes, RoomId(2), Air::Extract),
    ];
    assert_eq!(house.ticks, ticks);
}

#[test]
fn odd_texts_stand_as_they_stood() {
    let house = fixture("typed_oddly");
    assert_eq!(house.name, "\u{202e}א 🏡 \u{0} \"quoted\" \\ back");
    assert_eq!((house.choices.rules, house.choices.credit), (RuleSet::Irc2024, Credit::Claimed));
    assert_eq!((house.choices.table, house.choices.tube), (Some(Table::Equation), TubeSize::Od90));
    assert_eq!(house.text(Field::House(HouseField::FloorArea)), "1,234");
    assert_eq!(house.text(Field::House(HouseField::EnvelopeHeight)), "1e308");
    assert_eq!(house.rooms[1].name, "é".repeat(200));
    assert_eq!((house.rooms[1].storey, house.rooms[2].storey), (127, -128));
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Refused {
    change: Vec<Change>,
    file: Vec<Whole>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Change {
    name: String,
    from: String,
    to: String,
    says: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Whole {
    name: String,
    text: String,
    says: String,
}

#[test]
fn everything_else_is_refused_with_a_reason() {
    assert!(open(SMALLEST).is_ok());
    let text = std::fs::read_to_string(fixtures().join("refused.toml")).expect("the list of refusals");
    let Refused { change, file } = toml::from_str(&text).unwrap_or_else(|error| panic!("{error}"));
    let mut wrong = Vec::new();
    for Change { name, from, to, says } in &change {
        assert_eq!(SMALLEST.matches(from).count(), 1, "{name}: must change one place");
        wrong.extend(mistake(name, &SMALLEST.replace(from, to), says));
    }
    wrong.extend(file.iter().filter_map(|Whole { name, text, says }| mistake(name, text, says)));
    println!("{} files are refused", change.len() + file.len());
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

fn mistake(name: &str, text: &str, says: &str) -> Option<String> {
    match open(text) {
        Ok(_) => Some(format!("{name}: opens")),
        Err(error) if error.contains(says) => None,
        Err(error) => Some(format!("{name}: \"{error}\" does not say \"{says}\"")),
    }
}

fn fixture(name: &str) -> House {
    let path = fixtures().join("v1").join(name).with_extension("json");
    open(&std::fs::read_to_string(path).expect("a fixture")).unwrap_or_else(|error| panic!("{name}: {error}"))
}

fn fixtures() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("fixtures")
}

fn open(text: &str) -> Result<House, String> {
    let mut reader = serde_json::Deserializer::from_str(text);
    let house = save::read(&mut reader).map_err(|error| error.to_string())?;
    reader.end().map_err(|error| error.to_string())?;
    Ok(house)
}

/// The page takes them from there, where they are texts of files.
#[test]
fn the_invented_houses_of_the_book_are_those_of_the_words() {
    let others = || airtally_words::demo::DEMOS.iter().skip(1);
    let kept: Vec<&str> = others().map(|demo| airtally_words::book::of_houses(demo.title)).collect();
    let file = |house: House| serde_json::to_string(&File::of(&house)).expect("a house can be saved");
    let wanted: Vec<String> = others().map(|demo| file((demo.house)())).collect();
    assert_eq!(kept, wanted, "the houses in the book");
}
