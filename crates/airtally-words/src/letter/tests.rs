use super::{Letter, enclose, letter};
use crate::book::book;
use crate::step::mark;
use crate::{demo, label, room};
use airtally::entry::Entry;
use airtally::house::House;
use airtally::parts::Part;
use airtally::quantity::Unit;
use airtally::report::Report;

/// What a name may not be able to do. Source: WHATWG HTML, "Data state" and "Script data state"; Unicode UAX #9, controls.
const HOSTILE: [&str; 6] = [
    "<script>alert(1)</script>",
    "\"><img src=x onerror=alert(1)>",
    "'&lt;b&gt;--></style></title></main>",
    "</div><p id=\"trouble\"",
    "\u{202e}002\u{2066}",
    "a\u{0}\u{7}\tb",
];

fn of(house: House) -> String {
    letter(&Report::of(house), book().unwrap(), "2026-03-10")
}

fn hostile(name: &str) -> House {
    let mut house = demo::larkfield();
    house.name = name.to_owned();
    house.rooms.iter_mut().for_each(|room| room.name = name.to_owned());
    house
}

/// The elements of a text, in order, without what stands between them.
fn elements(markup: &str) -> Vec<&str> {
    markup.split('<').skip(1).map(|piece| piece.split('>').next().unwrap()).collect()
}

#[test]
fn a_name_is_never_markup() {
    let plain = of(hostile("Ash"));
    for name in HOSTILE {
        let words = of(hostile(name));
        assert_eq!(elements(&words), elements(&plain), "{name:?}");
        assert!(!words.contains(|letter: char| letter.is_control() || "\u{202e}\u{2066}".contains(letter)), "{name:?}");
    }
    // WHATWG HTML, named character references.
    assert!(of(hostile(HOSTILE[0])).contains("<h1>&lt;script&gt;alert(1)&lt;/script&gt;</h1>"));
}

#[test]
fn every_element_that_is_opened_is_closed() {
    for demo in &demo::DEMOS {
        let mut open = Vec::new();
        let words = of((demo.house)());
        for element in elements(&words) {
            match element.strip_prefix('/') {
                Some(name) => assert_eq!(open.pop(), Some(name), "{}", demo.title),
                // WHATWG HTML, optional tags: a row ends where the next one begins or the table ends.
                None if element == "tr" => {}
                None => open.push(element.split(' ').next().unwrap()),
            }
        }
        assert!(open.is_empty(), "{}: {open:?}", demo.title);
    }
}

/// England, three bedrooms and 148 m²: 0.3 L/s for each m² are 44.4 L/s, 159.8 m³/h (Approved Document F 2021, 1.24); set in steps
/// of 5 m³/h on both sides, and the rooms of a side come to the same.
#[test]
fn it_says_what_the_house_needs() {
    let words = of(demo::larkfield());
    let row = "<th scope=\"row\">Normal</th><td>159.8\u{a0}m³/h</td><td>160\u{a0}m³/h</td><td>160\u{a0}m³/h</td>";
    assert!(words.contains(row), "{words}");
    let sums = "<th scope=\"row\">Together</th><td></td><td>160 / ";
    assert!(words.contains(sums), "{words}");
}

#[test]
fn a_house_without_rooms_has_a_letter_too() {
    assert!(of(House::new()).contains("<h1>A house without a name</h1>"));
}

#[test]
fn a_letter_takes_the_place_of_the_one_before() {
    let shell = "<title>a</title><div id=\"page\" data-alone=\"\">b</div><p id=\"trouble\" role=\"alert\"></p>\
        <script type=\"application/json\" id=\"sent\" data-id=\"\"></script><script>x</script>";
    let with = |shell: &str, name: &str| {
        let (report, house) = (of(hostile(name)), format!("{{\"name\":\"{}\"}}", name.escape_default()));
        enclose(shell, &Letter { name, report: &report, house: &house, id: "7" }).unwrap()
    };
    for name in HOSTILE {
        let first = with(shell, name);
        assert_eq!(first.matches("<script").count(), 2, "{name:?}");
        assert_eq!(with(&first, "Ash"), with(shell, "Ash"), "{name:?}");
    }
}

/// Whoever cuts finds every tube once, on the coil it comes from, and in the drawing; what a person pays stands nowhere.
#[test]
fn every_tube_is_drawn_and_cut_and_no_price_is_told() {
    let mut house = demo::larkfield();
    house.prices = Part::all().map(|part| (part, Entry::new("73.19".to_owned(), Unit::Money))).collect();
    let report = Report::of(house.clone());
    let words = of(house);
    let cut = words.split_once("Cut from coils").unwrap().1;
    let cut = cut.split_once("<h2>").unwrap().0;
    for run in &report.runs().runs {
        let room = room::name(report.house(), run.room);
        let run_mark = [label::air_letter(run.air), &run.mark.to_string()].concat();
        for twin in 0..run.tubes.value {
            let piece = [&mark(run.air, run.mark, (twin, run.tubes.value)), " ", &room, ": "].concat();
            assert_eq!(cut.matches(&piece).count(), 1, "{piece}");
        }
        assert!(words.contains(&[">", &run_mark, " ", &room, "</text>"].concat()), "{run_mark} {room} is drawn");
    }
    // 18 tubes of 75 mm: 3 + 2 + 2 + 1 + 1 to rooms and 3 + 2 + 2 + 2 from them, as the table of the same letter says.
    assert_eq!(cut.matches(": ").count(), 18);
    assert!(!words.contains("73.19"));
}
