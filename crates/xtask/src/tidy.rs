//! The rules of the house: who may know whom, what lies where, how long a file is, which words do not go in.

mod direction;
mod layers;
mod places;
mod words;

use crate::{Outcome, files, place};
use std::path::Path;

/// Checks everything, prints notes, and fails with the whole list of faults.
pub fn tidy() -> Outcome {
    let root = place::root();
    let sources = Source::all(&root)?;
    let mut findings = Findings::default();
    places::check(&root, &mut findings)?;
    direction::check(&sources, &mut findings);
    layers::check(&sources, &mut findings);
    words::check(&sources, &mut findings);
    findings.verdict(sources.len())
}

/// One text file of the repository.
pub struct Source {
    /// From the root, with `/`.
    pub path: String,
    pub text: String,
}

impl Source {
    fn all(root: &Path) -> Outcome<Vec<Self>> {
        let paths = files::under(root, &is_left_out)?;
        paths.iter().filter(|path| is_text(path)).map(|path| Self::read(root, path)).collect()
    }

    fn read(root: &Path, path: &Path) -> Outcome<Self> {
        let inside = path.strip_prefix(root).unwrap_or(path);
        let parts: Vec<String> = inside.iter().map(|part| part.to_string_lossy().into_owned()).collect();
        Ok(Self { path: parts.join("/"), text: files::text(path)? })
    }

    pub fn is(&self, extensions: &[&str]) -> bool {
        self.path.rsplit_once('.').is_some_and(|(_, extension)| extensions.contains(&extension))
    }
}

/// What was found: faults stop a change, notes are for thinking about.
#[derive(Default)]
pub struct Findings {
    pub faults: Vec<String>,
    pub notes: Vec<String>,
}

impl Findings {
    pub fn fault(&mut self, text: impl Into<String>) {
        self.faults.push(text.into());
    }

    fn verdict(self, files: usize) -> Outcome {
        for note in &self.notes {
            println!("note: {note}");
        }
        if self.faults.is_empty() {
            println!("{files} files are tidy.");
            return Ok(());
        }
        Err(format!("{}\n{} things are not tidy.", self.faults.join("\n"), self.faults.len()))
    }
}

/// Folders that hold nothing of ours. The same as in .gitignore, and Git's own.
pub fn is_left_out(path: &Path) -> bool {
    let name = files::name(path);
    [".git", "node_modules", "target"].contains(&name.as_str()) || name.ends_with(".tmp")
}

fn is_text(path: &Path) -> bool {
    const OTHERS: [&str; 8] = ["png", "ico", "woff2", "pdf", "jpg", "webp", "gz", "wasm"];
    !path.extension().is_some_and(|extension| OTHERS.iter().any(|other| extension == *other))
}
