//! The top level holds what the map says, and nothing else.

use super::{Findings, is_left_out};
use crate::{Outcome, files};
use std::path::Path;

const TOP: [&str; 17] = [
    ".cargo",
    ".ci",
    ".clippy.toml",
    ".config",
    ".editorconfig",
    ".gitattributes",
    ".gitignore",
    ".rustfmt.toml",
    "Cargo.lock",
    "Cargo.toml",
    "DEVELOPERS.md",
    "LICENSE",
    "README.md",
    "Trunk.toml",
    "crates",
    "tests",
    "www",
];

pub fn check(root: &Path, findings: &mut Findings) -> Outcome {
    for path in files::children(root)? {
        let name = files::name(&path);
        if !is_left_out(&path) && !TOP.contains(&name.as_str()) {
            findings.fault(format!("{name}: the map in DEVELOPERS.md has no such thing at the top level"));
        }
    }
    Ok(())
}
