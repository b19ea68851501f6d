use super::{Code, MOST_TEXT, Refused, read, read_kept, read_prices, write, write_prices};
use airtally::edit::Edit;
use airtally::house::{Field, House, RoomField, RoomId, RoomKind};
use airtally::parts::Part;
use airtally::quantity::Unit;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn a_house_comes_back_as_it_was_typed() {
    let typed = "3,2 m + 40 cm \u{1f600} \" \\ \u{2028}";
    let field = Field::Room(RoomId(0), RoomField::Length);
    let house = Edit::AddRoom(RoomKind::Bedroom).apply(&House::new());
    let house = Edit::Set(field, typed.to_owned(), Unit::Foot).apply(&house);
    let text = write(&house).unwrap();
    assert_eq!(read(&text), Ok(house));
}

#[wasm_bindgen_test]
fn texts_that_are_no_house_are_refused_with_a_reason() {
    let cases = [
        ("", Code::NotJson),
        ("{", Code::NotJson),
        ("null", Code::NotAHouse),
        ("[]", Code::NotAHouse),
        ("{\"airtally\":1}", Code::NotAHouse),
        ("{\"airtally\":2,\"house\":null}", Code::NotAHouse),
        ("{\"airtally\":1e999}", Code::NotAHouse),
    ];
    for (text, code) in cases {
        let refusal = read(text).unwrap_err();
        assert_eq!(refusal.code, code, "{text}: {}", refusal.detail);
        assert!(!refusal.detail.is_empty(), "{text}: says why");
    }
}

#[wasm_bindgen_test]
fn a_refusal_says_where() {
    let house = Edit::AddRoom(RoomKind::Bedroom).apply(&Edit::AddRoom(RoomKind::Hall).apply(&House::new()));
    let text = write(&house).unwrap();
    let refusal = read(&text.replace("\"name\":\"\",\"storey\":0", "\"name\":7,\"storey\":0")).unwrap_err();
    assert_eq!(refusal.path, "house.rooms[0].name");
    let refusal = read(&text.replace("\"storey\":0", "\"storey\":0.5")).unwrap_err();
    assert_eq!(refusal.path, "house.rooms[0].storey");
}

#[wasm_bindgen_test]
fn the_text_is_what_the_browser_writes() {
    let house =
        Edit::Set(Field::HouseName, "\u{0}\u{1f}\"\\/ é\u{7f}\u{1f600}".to_owned(), Unit::Ratio).apply(&House::new());
    let text = write(&house).unwrap();
    let again = js_sys::JSON::stringify(&js_sys::JSON::parse(&text).unwrap()).unwrap();
    // The browser has short forms (\\b, \\n …) for a few control characters; none of them is in this text.
    assert_eq!(String::from(again), text);
}

#[wasm_bindgen_test]
fn a_very_long_text_is_not_even_parsed() {
    let refusal = read(&" ".repeat(MOST_TEXT + 1)).unwrap_err();
    assert_eq!(refusal.code, Code::TooLong);
    assert!(!refusal.detail.is_empty(), "says why");
}

#[wasm_bindgen_test]
fn what_was_kept_is_never_too_large_to_come_back() {
    let house = Edit::Set(Field::HouseName, "x".repeat(MOST_TEXT), Unit::Ratio).apply(&House::new());
    let text = write(&house).unwrap();
    assert_eq!(read(&text).unwrap_err().code, Code::TooLong);
    assert_eq!(read_kept(&text), Ok(house));
}

#[wasm_bindgen_test]
fn a_newer_file_says_that_it_is_newer() {
    let refusal = read("{\"airtally\":7}").unwrap_err();
    assert!(refusal.detail.contains("version 7"), "{}", refusal.detail);
}

#[wasm_bindgen_test]
fn a_price_list_comes_back_and_does_no_harm() {
    let rows = [(Part::Tube, "Tube, 75 \"mm\"", "m", "2.45"), (Part::Strap, "=HYPERLINK(1)", "", "-1")];
    let text =
        write_prices(rows.into_iter().map(|(part, name, unit, price)| (part, name.to_owned(), unit, price.to_owned())));
    assert_eq!(
        text,
        "part,description,unit,price\r\ntube,\"Tube, 75 \"\"mm\"\"\",m,2.45\r\nstrap,'=HYPERLINK(1),,'-1\r\n"
    );
    let read = read_prices(&text).unwrap();
    assert_eq!(read.prices, [(Part::Tube, "2.45".to_owned()), (Part::Strap, "-1".to_owned())]);
}

#[wasm_bindgen_test]
fn lists_of_other_spreadsheets_are_read() {
    let price = |text: &str| read_prices(text).map(|read| read.prices);
    let tube = |price: &str| Ok(vec![(Part::Tube, price.to_owned())]);
    assert_eq!(price("\u{feff}price;part\n4,90;tube\n"), tube("4,90"));
    assert_eq!(price("Part\tPrice\r\ntube\t 4.90 \r\n\r\n"), tube("4.90"));
    assert_eq!(price("part,price\ntube,1\ntube,2"), tube("2"));
    assert_eq!(price("part,price\ntube"), tube(""));
    assert_eq!(read_prices("part,price\nnail,1\ntube,2").unwrap().unknown, 1);
}

#[wasm_bindgen_test]
fn what_is_no_list_is_refused() {
    assert_eq!(read_prices(""), Err(Refused::NoColumns));
    assert_eq!(read_prices("\"part"), Err(Refused::NoColumns));
    assert_eq!(read_prices("part,price\nnail,1"), Err(Refused::NoPart));
    assert_eq!(read_prices(&"x".repeat(MOST_TEXT + 1)), Err(Refused::TooLong));
    let odd: String = (0..200_u8).map(char::from).collect();
    assert!(read_prices(&["part,price\n", &odd].concat()).is_err());
}
