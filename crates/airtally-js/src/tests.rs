use super::{choices, tally};
use airtally::edit::Edit;
use airtally::house::{Field, House, HouseField, RoomField, RoomId, RoomKind};
use airtally::quantity::Unit;
use js_sys::{JSON, Reflect};
use wasm_bindgen::JsValue;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

/// A value inside a value: `levels.normal.required.value`.
fn at(value: &JsValue, path: &str) -> JsValue {
    path.split('.').fold(value.clone(), |value, step| Reflect::get(&value, &step.into()).unwrap())
}

fn house() -> House {
    let floor = Field::House(HouseField::FloorArea);
    let house = Edit::Set(floor, "150".into(), Unit::SquareMetre).apply(&House::new());
    let house =
        [RoomKind::Bedroom, RoomKind::Kitchen].iter().fold(house, |house, kind| Edit::AddRoom(*kind).apply(&house));
    Edit::Set(Field::Room(RoomId(1), RoomField::Area), "12 furlongs".into(), Unit::SquareMetre).apply(&house)
}

/// Source: Approved Document F volume 1, 2021, table 1.3 and its note: 0.3 L/s for each m² of 150 m² is 45 L/s, 162 m³/h.
#[wasm_bindgen_test]
fn the_rate_is_that_of_the_printed_rule() {
    let said = tally(&airtally_door::write(&house()).unwrap(), false).unwrap();
    assert!((at(&said, "levels.normal.required.value").as_f64().unwrap() - 162.0).abs() < 1e-9);
    assert_eq!(at(&said, "levels.normal.required.unit").as_string().unwrap(), "m3/h");
}

#[wasm_bindgen_test]
fn an_issue_says_where_in_the_file_it_is() {
    let said = tally(&airtally_door::write(&house()).unwrap(), false).unwrap();
    let issues = js_sys::Array::from(&at(&said, "issues"));
    let unreadable = issues.iter().find(|issue| at(issue, "code") == "unreadable").unwrap();
    assert_eq!(at(&unreadable, "path").as_string().unwrap(), "house.rooms[1].entries[0]");
    assert_eq!(at(&unreadable, "field").as_string().unwrap(), "area");
}

/// The number of a line is its place: a total's line gives that total.
#[wasm_bindgen_test]
fn a_number_leads_to_its_line() {
    let said = tally(&airtally_door::write(&house()).unwrap(), true).unwrap();
    let line = at(&said, "levels.normal.required.line").as_f64().unwrap();
    let line = at(&said, &format!("working.{line}"));
    let in_m3h = |value: f64, unit: &str| if unit == "L/s" { value * 3.6 } else { value };
    let (value, unit) = (at(&line, "result.value").as_f64().unwrap(), at(&line, "result.unit").as_string().unwrap());
    assert!((in_m3h(value, &unit) - 162.0).abs() < 1e-9, "{value} {unit}");
    assert!(!at(&line, "title").as_string().unwrap().is_empty());
}

#[wasm_bindgen_test]
fn a_refusal_has_code_path_and_hint() {
    let text = airtally_door::write(&house()).unwrap().replace("\"storey\":0", "\"storey\":0.5");
    let refusal = tally(&text, false).unwrap_err();
    assert_eq!(at(&refusal, "code").as_string().unwrap(), "not-a-house");
    assert_eq!(at(&refusal, "path").as_string().unwrap(), "house.rooms[0].storey");
    assert!(at(&refusal, "message").as_string().unwrap().contains("whole number"));
    assert!(!at(&refusal, "hint").as_string().unwrap().is_empty());
}

/// What goes through JSON unchanged holds no `Map`, no `BigInt` and no `undefined`.
#[wasm_bindgen_test]
fn everything_that_comes_out_is_plain() {
    let said = tally(&airtally_door::write(&house()).unwrap(), true).unwrap();
    for value in [said, choices()] {
        let text = JSON::stringify(&value).unwrap();
        let again = JSON::parse(&String::from(text.clone())).unwrap();
        assert_eq!(JSON::stringify(&again).unwrap(), text);
        assert!(!String::from(text).is_empty());
    }
}

/// The texts between quotes of a piece of source.
fn quoted(text: &str) -> Vec<&str> {
    text.split('"').skip(1).step_by(2).collect()
}

fn between<'a>(text: &'a str, head: &str, end: &str) -> &'a str {
    text.split_once(head).unwrap_or_else(|| panic!("{head}")).1.split_once(end).unwrap().0
}

#[wasm_bindgen_test]
fn the_types_know_every_id_that_the_file_has_no_name_for() {
    let (types, ids) = (include_str!("../js/index.d.ts"), include_str!("id.rs"));
    let unions = [
        ("Level", "level"),
        ("Role", "role"),
        ("Why", "why"),
        ("Asks", "asks"),
        ("Severity", "severity"),
        ("Mark", "mark"),
    ];
    for (union, function) in unions {
        let mut typed = quoted(between(types, &format!("export type {union} ="), ";"));
        let mut given = quoted(between(ids, &format!("pub const fn {function}("), "\n}"));
        typed.sort_unstable();
        given.sort_unstable();
        assert_eq!(typed, given, "{union}");
    }
    let codes = quoted(between(types, "export type ErrorCode =", ";"));
    use airtally_door::Code::{NotAHouse, NotJson, NotWritten, TooLong, TooManyRooms};
    for code in [NotAHouse, NotJson, NotWritten, TooLong, TooManyRooms] {
        assert!(codes.contains(&code.id()), "{}", code.id());
    }
}

#[wasm_bindgen_test]
fn the_package_has_the_version_of_the_workspace() {
    let version = format!("\"version\": \"{}\"", env!("CARGO_PKG_VERSION"));
    assert!(include_str!("../js/package.json").contains(&version));
}
