//! Which crate may know which, read from the manifests.

use super::{Findings, Source};

/// A crate of ours, and the crates of ours that it may know.
struct May {
    name: &'static str,
    know: &'static [&'static str],
}

const DIRECTIONS: [May; 8] = [
    May { name: "airtally", know: &[] },
    May { name: "airtally-words", know: &["airtally"] },
    May { name: "airtally-practice", know: &["airtally", "airtally-words"] },
    May { name: "airtally-door", know: &["airtally"] },
    May { name: "airtally-js", know: &["airtally", "airtally-words", "airtally-door"] },
    May { name: "airtally-app", know: &["airtally", "airtally-words", "airtally-practice", "airtally-door"] },
    May { name: "airtally-tests", know: &["airtally", "airtally-words", "airtally-practice", "airtally-door"] },
    May { name: "xtask", know: &[] },
];
/// All that the calculation is built from.
const CORE_NEEDS: [&str; 2] = ["libm", "serde"];

pub fn check(sources: &[Source], findings: &mut Findings) {
    let manifests = sources.iter().filter(|source| is_manifest(&source.path));
    for manifest in manifests {
        for fault in faults(&manifest.text) {
            findings.fault(format!("{}: {fault}", manifest.path));
        }
    }
}

fn is_manifest(path: &str) -> bool {
    path.ends_with("/Cargo.toml") && (path.starts_with("crates/") || path == "tests/Cargo.toml")
}

fn faults(manifest: &str) -> Vec<String> {
    let name = package_name(manifest);
    let Some(may) = DIRECTIONS.iter().find(|may| may.name == name) else {
        return vec![format!(
            "the crate {name} has no place in the order of crates (crates/xtask/src/tidy/direction.rs)"
        )];
    };
    let ours = |needed: &Need| needed.name.starts_with("airtally");
    let needs = needs(manifest);
    let strangers = needs.iter().filter(|need| ours(need) && !may.know.contains(&need.name.as_str()));
    let mut faults: Vec<String> = strangers
        .map(|need| format!("{name} must not know {}: calculation, words, doors, page is the order", need.name))
        .collect();
    if name == "airtally" {
        let heavy = needs.iter().filter(|need| !need.for_tests && !CORE_NEEDS.contains(&need.name.as_str()));
        faults
            .extend(heavy.map(|need| format!("the calculation is built from serde and libm only, not {}", need.name)));
    }
    faults
}

struct Need {
    name: String,
    for_tests: bool,
}

fn package_name(manifest: &str) -> &str {
    let line = manifest.lines().find_map(|line| line.strip_prefix("name = \""));
    line.and_then(|rest| rest.split('"').next()).unwrap_or("without a name")
}

/// The names in every section of dependencies, `[dependencies.name]` tables too.
fn needs(manifest: &str) -> Vec<Need> {
    let mut needs = Vec::new();
    let mut section = String::new();
    for line in manifest.lines().map(str::trim) {
        if let Some(head) = line.strip_prefix('[') {
            section = head.trim_end_matches(']').to_owned();
            if let Some((before, name)) = section.rsplit_once("dependencies.") {
                needs.push(Need { name: name.to_owned(), for_tests: before.ends_with("dev-") });
            }
        } else if section.ends_with("dependencies") && !line.is_empty() && !line.starts_with('#') {
            let name = line.split(['=', '.', ' ']).next().unwrap_or_default().trim_matches('"');
            needs.push(Need { name: name.to_owned(), for_tests: section.ends_with("dev-dependencies") });
        }
    }
    needs
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_calculation_knows_nobody() {
        let manifest =
            "[package]\nname = \"airtally\"\n[dependencies]\nlibm.workspace = true\nairtally-words.workspace = true\n";
        assert_eq!(faults(manifest).len(), 2);
    }

    #[test]
    fn test_helpers_of_the_calculation_are_free() {
        assert!(faults("name = \"airtally\"\n[dev-dependencies]\nserde_json = \"1\"\n").is_empty());
    }

    #[test]
    fn tables_and_targets_are_seen() {
        let manifest = "name = \"airtally-words\"\n[dependencies.airtally-door]\npath = \"x\"\n[target.'cfg(unix)'.dependencies]\nairtally-app = { path = \"y\" }\n";
        assert_eq!(faults(manifest).len(), 2);
    }

    #[test]
    fn an_unknown_crate_is_a_fault() {
        assert_eq!(faults("name = \"airtally-other\"\n").len(), 1);
    }
}
