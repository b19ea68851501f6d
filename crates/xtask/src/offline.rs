//! The worker that keeps the page on a device: its list is written from what the build really gave.

use crate::{Outcome, files, run};
use std::path::{Path, PathBuf};
use std::process::Command;

/// Never renamed: browsers that keep an old copy ask for it by this name.
pub const WORKER: &str = "sw.js";
/// Where the page says that there is one.
const PLACE: &str = "data-offline=\"\"";

/// SHA-256 as a browser wants it.
const HASH: &str = "
const { readFileSync } = require('node:fs');
const { createHash } = require('node:crypto');
for (const file of process.argv.slice(1)) console.log('sha256-' + createHash('sha256').update(readFileSync(file)).digest('base64'));";

/// The page names its worker. Before the list is written, since the page is on it.
pub fn named(page: &str) -> Outcome<String> {
    match page.contains(PLACE) {
        true => Ok(page.replace(PLACE, &format!("data-offline=\"./{WORKER}\""))),
        false => Err(format!("index.html has no {PLACE}: the release would need a network every time.")),
    }
}

/// Writes the list of all files with their hashes, and the version, which is a hash of that list.
pub fn list(folder: &Path) -> Outcome {
    let all = files::under(folder, &|_| false)?;
    let paths: Vec<_> = all.iter().filter(|path| !path.ends_with(WORKER)).collect();
    let hashes = hashes(&paths)?;
    let name = |path: &Path| match files::name(path).as_str() {
        "index.html" => "./".to_owned(),
        name => name.to_owned(),
    };
    let mut rows: Vec<String> =
        paths.iter().zip(hashes).map(|(path, hash)| format!("[\"{}\",\"{hash}\"]", name(path))).collect();
    rows.sort_unstable();
    let rows = rows.join(",");
    let worker = folder.join(WORKER);
    let text = files::text(&worker)?;
    let version = files::fingerprint([text.as_bytes(), rows.as_bytes()].concat().as_slice());
    files::write(&worker, filled(&text, &version, &rows)?)
}

/// The hash of each file.
pub fn hashes(paths: &[&PathBuf]) -> Outcome<Vec<String>> {
    let said = run::answer(Command::new("node").args(["-e", HASH, "--"]).args(paths))?;
    let hashes: Vec<String> = said.lines().map(str::to_owned).collect();
    if hashes.len() != paths.len() {
        return Err(format!("Node counted {} files, and there are {}.", hashes.len(), paths.len()));
    }
    Ok(hashes)
}

fn filled(worker: &str, version: &str, rows: &str) -> Outcome<String> {
    let (version_place, rows_place) = ("const VERSION = \"none\";", "const FILES = [];");
    if !worker.contains(version_place) || !worker.contains(rows_place) {
        return Err(format!("{WORKER} has no place for its version or its list."));
    }
    let worker = worker.replace(version_place, &format!("const VERSION = \"{version}\";"));
    Ok(worker.replace(rows_place, &format!("const FILES = [{rows}];")))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_worker_without_its_places_is_refused() {
        let worker = "const VERSION = \"none\";\nconst FILES = [];\n";
        let full = filled(worker, "1", "[\"./\",\"h\"]").expect("places");
        assert_eq!(full, "const VERSION = \"1\";\nconst FILES = [[\"./\",\"h\"]];\n");
        assert!(filled("const FILES = [];", "1", "").is_err());
        assert!(named("<p>").is_err());
    }
}
