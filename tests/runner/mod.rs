//! Runs case files: what a person types, what must come out, and who says so.

mod build;
mod call;
mod case;
mod fitting;
mod flows;
mod grid;
mod heat;
mod issues;
mod physics;
mod read;
mod sounds;

use case::{Case, Expect, File};
use read::Found;
use std::path::PathBuf;

/// Runs every case of `tests/cases/<topic>.toml`, says how many, and fails with all that went wrong.
pub fn check(topic: &str) {
    let cases = cases_of(topic);
    let wrong: Vec<String> =
        cases.iter().flat_map(|case| faults(case).into_iter().map(|fault| tell(case, &fault))).collect();
    let checks: usize = cases.iter().map(Case::checks).sum();
    println!("{topic}: {} cases, {checks} checks", cases.len());
    assert!(wrong.is_empty(), "{topic}: {} of {checks} checks fail\n{}", wrong.len(), wrong.join("\n"));
}

/// Names of the case files.
pub fn topics() -> Vec<String> {
    let files = std::fs::read_dir(folder()).expect("the folder of cases");
    let mut topics: Vec<String> = files
        .map(|file| file.expect("a file").path())
        .filter_map(|path| Some(path.file_stem()?.to_str()?.to_owned()))
        .collect();
    topics.sort();
    topics
}

fn cases_of(topic: &str) -> Vec<Case> {
    let path = folder().join(topic).with_extension("toml");
    let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{topic}.toml: {error}"));
    let File { case, grid } = toml::from_str(&text).unwrap_or_else(|error| panic!("{topic}.toml: {error}"));
    let mut cases: Vec<Case> = case.iter().flat_map(Case::for_each_rule_set).collect();
    cases.extend(grid.iter().flat_map(|grid| grid.cases()).flat_map(|case| case.for_each_rule_set()));
    assert!(!cases.is_empty(), "{topic}.toml holds no case");
    cases
}

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("cases")
}

fn tell(case: &Case, fault: &str) -> String {
    let rules = case.rules.first().map_or("", String::as_str);
    format!("  {} {rules}: {fault}  [{:?}: {}]", case.name, case.mark, case.source)
}

fn faults(case: &Case) -> Vec<String> {
    if case.checks() == 0 {
        return vec!["checks nothing".to_owned()];
    }
    if let Some(call) = &case.call {
        return case.expect.iter().filter_map(|expect| mismatch(expect, call.read(&expect.read))).collect();
    }
    let built = build::build(case);
    let mut faults = build::faults(&built);
    faults.extend(case.expect.iter().filter_map(|expect| mismatch(expect, read::read(&built, &expect.read))));
    faults.extend(issues::faults(case, &built));
    faults
}

/// What is wrong with one found value, if anything.
fn mismatch(expect: &Expect, found: Found) -> Option<String> {
    let right = match (&found, expect.is, &expect.says) {
        (Found::Nothing, None, None) => expect.none,
        (Found::Number(measure), Some(is), None) => {
            let unit = case::unit(&expect.unit);
            assert!(!expect.why.is_empty(), "{}: a tolerance needs its reason", expect.read);
            measure.value_in(unit).is_some_and(|value| (value - is).abs() <= expect.within)
        }
        (Found::Text(text), None, Some(says)) => text == says,
        _ => false,
    };
    let inside = || match &found {
        Found::Number(measure) if !expect.unit.is_empty() => {
            format!("{:?} {}", measure.value_in(case::unit(&expect.unit)), expect.unit)
        }
        other => format!("{other:?}"),
    };
    (!right).then(|| format!("{} is {} and should be {}", expect.read, inside(), expect.wanted()))
}

mod tests {
    use super::case::File;
    use super::faults;

    #[test]
    fn a_slip_of_the_pen_is_an_error() {
        let good = "[[case]]\nname = \"n\"\nsource = \"s\"\nmark = \"arithmetic\"\n";
        assert!(toml::from_str::<File>(good).is_ok());
        assert!(toml::from_str::<File>(&format!("{good}expects = []\n")).is_err());
        assert!(toml::from_str::<File>(&good.replace("arithmetic", "guessed")).is_err());
        assert!(toml::from_str::<File>(&good.replace("source = \"s\"\n", "")).is_err());
    }

    #[test]
    fn a_case_that_checks_nothing_fails() {
        let text = "[[case]]\nname = \"n\"\nsource = \"s\"\nmark = \"arithmetic\"\n";
        let file: File = toml::from_str(text).expect("a case");
        assert_eq!(faults(&file.case[0]), ["checks nothing"]);
    }

    #[test]
    fn a_wrong_value_a_missing_value_and_a_missing_issue_fail() {
        let text = r#"
            [[case]]
            name = "n"
            source = "s"
            mark = "arithmetic"
            rules = ["adf-2021"]
            rooms = [{ kind = "bedroom", typed = { area = "12" } }, { kind = "kitchen", typed = { area = "9" } }]
            expect = [
              { read = "required/normal", is = 12.9, unit = "L/s", within = 0.01, why = "w" },
              { read = "required/normal", none = true },
              { read = "line/IrcTable", is = 1.0, unit = "L/s", within = 9.0, why = "w" },
              { read = "governs/normal", says = "ExtractRooms" },
            ]
            issues = [{ code = "no-rooms", at = "house" }]
            no-issues = ["no-away-rate"]
        "#;
        let file: File = toml::from_str(text).expect("a case");
        assert_eq!(faults(&file.case[0]).len(), 6);
    }
}
