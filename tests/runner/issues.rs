//! Issues that a case expects, or expects not to find.

use super::build::{Built, by_id, house_field};
use super::case::{Case, ExpectIssue};
use airtally::given::GivenId;
use airtally::house::{Field, RoomField};
use airtally::issue::{Issue, Place};

pub fn faults(case: &Case, built: &Built) -> Vec<String> {
    if case.issues.is_empty() && case.no_issues.is_empty() {
        return Vec::new();
    }
    let found = built.report.issues();
    let missing = case.issues.iter().filter(|expect| !found.iter().any(|issue| fits(issue, expect, built)));
    let unwanted = case.no_issues.iter().filter(|code| found.iter().any(|issue| issue.code() == code.as_str()));
    let missing = missing.map(|expect| {
        format!("no issue {} at {} {}; there are {}", expect.code, expect.at, expect.holds, list(&found))
    });
    missing.chain(unwanted.map(|code| format!("issue {code} is there; there are {}", list(&found)))).collect()
}

fn fits(issue: &Issue, expect: &ExpectIssue, built: &Built) -> bool {
    issue.code() == expect.code
        && issue.place == place(&expect.at, built)
        && format!("{:?}", issue.trouble).contains(&expect.holds)
}

fn place(at: &str, built: &Built) -> Place {
    match at.split_once('/') {
        Some(("given", key)) => {
            Place::Field(Field::Given(GivenId::from_key(key).unwrap_or_else(|| panic!("no given \"{key}\""))))
        }
        Some((room, "name")) => Place::Field(Field::RoomName(built.room(room))),
        Some((room, field)) => Place::Field(Field::Room(built.room(room), by_id(RoomField::ALL, RoomField::id, field))),
        None if at == "house" => Place::House,
        None if at == "name" => Place::Field(Field::HouseName),
        None if built.rooms.iter().any(|(label, _)| label == at) => Place::Room(built.room(at)),
        None => Place::Field(Field::House(house_field(at))),
    }
}

fn list(issues: &[Issue]) -> String {
    let few: Vec<String> =
        issues.iter().take(8).map(|issue| format!("{} at {:?}", issue.code(), issue.place)).collect();
    format!("{} issues: {}", issues.len(), few.join(", "))
}
