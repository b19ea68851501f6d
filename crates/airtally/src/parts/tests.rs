use super::{Group, Part, Size};
use crate::edit::Edit;
use crate::given::GivenId;
use crate::house::{Choices, Field, House, Manifolds, RoomField, RoomKind};
use crate::money::Money;
use crate::quantity::Unit;
use crate::report::Report;

/// An invented house: a living room, a bedroom, a kitchen and a bathroom.
fn house() -> House {
    let rooms =
        [(RoomKind::Living, "24"), (RoomKind::MainBedroom, "14"), (RoomKind::Kitchen, "12"), (RoomKind::Bathroom, "6")];
    rooms.into_iter().fold(House::new(), |house, (kind, area)| {
        let house = Edit::AddRoom(kind).apply(&house);
        let id = house.rooms.last().unwrap().id;
        Edit::Set(Field::Room(id, RoomField::Area), area.into(), Unit::SquareMetre).apply(&house)
    })
}

fn price(house: &House, part: Part, text: &str) -> House {
    Edit::Set(Field::Price(part), text.into(), Unit::Money).apply(house)
}

fn quantity(report: &Report, part: Part) -> f64 {
    report.take_off().lines.iter().find(|line| line.part == part).map_or(0.0, |line| line.quantity.value)
}

#[test]
fn the_list_follows_the_tubes() {
    let report = Report::of(house());
    let tubes = f64::from(report.runs().all_tubes());
    // Site practice, section 2: 10 m, 0.4 m at each end and 5 % on top, where nothing is typed: 11.34 m.
    assert!((quantity(&report, Part::Tube) - tubes * 11.34).abs() < 1e-9);
    assert_eq!(quantity(&report, Part::SealRing), 2.0 * tubes);
    assert_eq!(quantity(&report, Part::PortCap), 4.0, "two spare ports on each manifold");
    assert_eq!((quantity(&report, Part::SupplyValve), quantity(&report, Part::ExtractValve)), (2.0, 2.0));
    assert_eq!((quantity(&report, Part::BoostSwitch), quantity(&report, Part::HumiditySensor)), (2.0, 1.0));
    // Every 750 mm.
    assert_eq!(quantity(&report, Part::Strap), f64::ceil(tubes * 11.34 / 0.75));
    let cut: usize = report.take_off().coils.iter().map(|coil| coil.pieces.len()).sum();
    assert_eq!(cut as f64, tubes);
    let fits = |coil: &super::Coil| coil.pieces.iter().map(|piece| piece.length.as_m()).sum::<f64>() <= 50.0 + 1e-9;
    assert!(report.take_off().coils.iter().all(fits));
}

/// Worked by hand: each of the two airs has a main and one more to its manifold on the other storey, one storey higher; outdoor
/// and exhaust duct hang as well.
#[test]
fn brackets_hold_what_rises_too() {
    let upstairs = [1, 3].into_iter().fold(house(), |house, at| {
        let id = house.rooms[at].id;
        Edit::SetStorey(id, 1).apply(&house)
    });
    let choices = Choices { manifolds: Manifolds::Storeys, ..upstairs.choices };
    let report = Report::of(Edit::Choose(choices).apply(&upstairs));
    let given = |id| report.givens().value(id);
    let rise = report.runs().manifolds.iter().fold(0.0, |sum, own| sum + own.rise.as_m());
    assert!(rise > 4.0, "{rise}");
    let metres = 4.0 * given(GivenId::MainLength) + rise + 2.0 * given(GivenId::OutdoorDuct);
    assert_eq!(quantity(&report, Part::Bracket), f64::ceil(metres / given(GivenId::BracketSpacing)));
}

#[test]
fn a_longer_run_is_more_tube_and_more_money_at_once() {
    let house = price(&house(), Part::Tube, "2.50");
    let bedroom = house.rooms[1].id;
    let longer = Edit::Set(Field::Room(bedroom, RoomField::SupplyRun), "20".into(), Unit::Metre).apply(&house);
    let (before, after) = (Report::of(house), Report::of(longer));
    let tubes = before.runs().runs.iter().find(|run| run.room == bedroom).unwrap().tubes.value;
    // (20 − 10) m · 1.05 for each tube.
    let more = quantity(&after, Part::Tube) - quantity(&before, Part::Tube);
    assert!((more - 10.5 * f64::from(tubes)).abs() < 1e-9);
    let dearer = after.quotation().parts.hundredths() - before.quotation().parts.hundredths();
    assert!((dearer - (more * 250.0).round() as i64).abs() <= 1, "{dearer}");
}

/// Worked by hand: 1 unit at 2 000, 4 valves of two kinds at 12.345 and 0.5, 10 % on parts, 19 % tax.
#[test]
fn a_quotation_is_the_sum_of_its_rounded_lines() {
    let house = [(Part::Unit, "2000"), (Part::SupplyValve, "12.345"), (Part::ExtractValve, "0.5")]
        .into_iter()
        .fold(house(), |house, (part, text)| price(&house, part, text));
    let house = [(crate::given::GivenId::PartsMargin, "10"), (crate::given::GivenId::Tax, "19")]
        .into_iter()
        .fold(house, |house, (id, text)| Edit::Set(Field::Given(id), text.into(), Unit::Percent).apply(&house));
    let report = Report::of(house);
    let quotation = report.quotation();
    let cents = Money::of_hundredths;
    // 2000.00 + 24.69 + 1.00
    assert_eq!(quotation.parts, cents(202_569));
    assert_eq!(quotation.margin, cents(20_257));
    assert_eq!(quotation.net, cents(222_826));
    assert_eq!(quotation.tax, cents(42_337));
    assert_eq!(quotation.total, cents(265_163));
    assert_eq!(quotation.unpriced, quotation.lines.len() - 3);
}

#[test]
fn one_price_of_an_hour_serves_all_work_unless_a_kind_has_its_own() {
    let report = Report::of(price(&house(), Part::SettingOut, "60"));
    let hours = |report: &Report| {
        let work = report.take_off().lines.iter().filter(|line| line.part.group() == Group::Work);
        work.map(|line| line.quantity.value).sum::<f64>()
    };
    assert_eq!(report.quotation().work.hundredths(), (hours(&report) * 6000.0).round() as i64);
    let own = Report::of(price(&price(&house(), Part::SettingOut, "60"), Part::Hanging, "0"));
    assert_eq!(own.quotation().work.hundredths(), ((hours(&own) - 8.0) * 6000.0).round() as i64);
}

#[test]
fn a_price_that_cannot_be_read_is_said_and_counts_as_none() {
    let report = Report::of(price(&house(), Part::Unit, "cheap"));
    assert!(report.quotation().lines[0].amount.is_none());
    let at = crate::issue::Place::Field(Field::Price(Part::Unit));
    assert!(report.issues().iter().any(|issue| issue.place == at));
}

#[test]
fn a_tube_longer_than_a_coil_is_said() {
    let house = house();
    let bedroom = house.rooms[1].id;
    let house = Edit::Set(Field::Room(bedroom, RoomField::SupplyRun), "60".into(), Unit::Metre).apply(&house);
    let report = Report::of(house);
    assert!(report.issues().iter().any(|issue| issue.code() == "longer-than-coil"));
    assert!(report.take_off().lines.iter().any(|line| matches!(line.size, Size::Duty(..))));
    assert!(Report::of(House::new()).take_off().lines.is_empty());
}
