//! Inside the calculation: which module may use which, and what none of them may touch.

use super::{Findings, Source};

const CORE: &str = "crates/airtally/src/";

/// Modules from the ground up. A module may use those on its own floor and below.
const FLOORS: [&[&str]; 17] = [
    &["quantity", "id", "source", "formula", "power", "money"],
    &["by_room", "issue", "working", "air", "cold", "draught"],
    &["duct"],
    &["network"],
    &["entry", "curve", "legs"],
    &["given"],
    &["house"],
    &["edit", "save", "facts"],
    &["rules"],
    &["shares"],
    &["runs", "transfer", "co2", "on_site"],
    &["delivery"],
    &["parts", "sound", "drawing", "blown"],
    &["alternatives"],
    &["pocket"],
    &["steps"],
    &["report"],
];

/// The calculation has no files, clock, network, randomness, terminal, threads, or order of hashing.
const FORBIDDEN: [&str; 10] = [
    "std::fs",
    "std::io",
    "std::time",
    "std::env",
    "std::net",
    "std::thread",
    "std::process",
    "HashMap",
    "HashSet",
    "println!",
];

pub fn check(sources: &[Source], findings: &mut Findings) {
    for source in sources.iter().filter(|source| is_calculation(source)) {
        for word in FORBIDDEN.iter().filter(|word| code(&source.text).any(|line| line.contains(**word))) {
            findings.fault(format!("{}: the calculation must not touch {word}", source.path));
        }
        for (own, used) in climbs(source) {
            findings.fault(format!("{}: {own} must not use {used}, which stands on a higher floor", source.path));
        }
    }
}

fn is_calculation(source: &Source) -> bool {
    let is_test = source.path.contains("/tests/") || source.path.ends_with("/tests.rs");
    source.path.starts_with(CORE) && source.is(&["rs"]) && !is_test
}

/// Uses of `crate::module` that go up.
fn climbs(source: &Source) -> Vec<(String, String)> {
    let own = module_of(&source.path);
    let Some(floor) = floor(own) else { return Vec::new() };
    let mut found: Vec<(String, String)> = Vec::new();
    for used in code(&source.text).flat_map(used_modules) {
        let climbs = self::floor(used).is_some_and(|other| other > floor);
        if climbs && !found.iter().any(|(_, known)| known == used) {
            found.push((own.to_owned(), used.to_owned()));
        }
    }
    found
}

/// Code lines above the unit tests: a test may use anything, a comment may name anything.
fn code(text: &str) -> impl Iterator<Item = &str> {
    let lines = text.lines().map(str::trim_start);
    lines.take_while(|line| *line != "#[cfg(test)]").filter(|line| !line.starts_with("//"))
}

fn module_of(path: &str) -> &str {
    let inside = path.strip_prefix(CORE).unwrap_or(path);
    inside.split(['/', '.']).next().unwrap_or(inside)
}

fn used_modules(line: &str) -> Vec<&str> {
    let ends = |c: char| !(c.is_ascii_alphanumeric() || c == '_');
    line.match_indices("crate::").filter_map(|(at, found)| line[at + found.len()..].split(ends).next()).collect()
}

fn floor(module: &str) -> Option<usize> {
    FLOORS.iter().position(|floor| floor.contains(&module))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn climbs_in(path: &str, text: &str) -> usize {
        climbs(&Source { path: format!("{CORE}{path}"), text: text.to_owned() }).len()
    }

    #[test]
    fn going_up_is_found_and_going_down_is_fine() {
        assert_eq!(climbs_in("quantity/flow.rs", "use crate::house::Room;\n"), 1);
        assert_eq!(climbs_in("house/room.rs", "use crate::quantity::Flow;\nuse crate::entry::Entry;\n"), 0);
    }

    #[test]
    fn comments_and_tests_may_name_anything() {
        assert_eq!(climbs_in("entry.rs", "// crate::house\n#[cfg(test)]\nuse crate::house::Room;\n"), 0);
    }
}
