use super::*;
use airtally::issue::Severity;
use airtally::report::Report;
use airtally::rules::{Air, Level};

#[test]
fn every_demo_house_can_be_calculated() {
    for demo in &DEMOS {
        let report = Report::of((demo.house)());
        let stops = report.issues().into_iter().find(|issue| issue.severity() == Severity::Stops);
        assert_eq!(stops, None, "{}", demo.title);
        let normal = report.shares().at(Level::Normal);
        assert!(normal.total.as_m3h() > 0.0, "{}", demo.title);
        assert_eq!(normal.steps(Air::Supply), normal.steps(Air::Extract), "{}", demo.title);
        crate::prose::is_label(demo.title);
        crate::prose::is_label(demo.hint);
    }
}

/// The scenario: 148 m² inside the air barrier, four sleepers, five rooms below and six above.
#[test]
fn larkfield_is_as_described() {
    let house = larkfield();
    let report = Report::of(house.clone());
    let facts = report.facts();
    assert_eq!(facts.floor_area_in(airtally::quantity::Unit::SquareMetre), 148.0);
    assert_eq!(facts.persons(), 4.0);
    assert_eq!(facts.ach50, Some(0.8));
    let on = |storey| house.rooms.iter().filter(|room| room.storey == storey).count();
    assert_eq!((on(0), on(1)), (5, 6));
    assert!(report.runs().runs.iter().all(|run| run.cut.is_some()), "every run was measured");
}

#[test]
fn names_are_kept_and_kinds_are_numbered() {
    let names: Vec<String> =
        five_bedrooms().rooms.iter().map(|room| crate::room::name(&five_bedrooms(), room.id)).collect();
    assert_eq!(names[6..10], ["Main bedroom", "Bedroom 1", "Bedroom 2", "Family bathroom"]);
    assert_eq!(names[11..13], ["Bedroom 3", "Bedroom 4"]);
}
