//! The sizer for other pages, beside the page: one script and its program in `embed`, the page for a frame, and the page of
//! an invented contractor. None of it is part of the page's first visit, nor of what its worker keeps.

use crate::{Outcome, files, node, package, place, run};
use std::path::Path;
use std::process::Command;

/// Its folder beside the page.
pub const FOLDER: &str = "embed";
/// The page that a frame shows.
pub const FRAME: &str = "embed.html";
/// Most bytes after Brotli of all that a page with the sizer loads.
pub const BUDGET: u64 = 150_000;

/// Makes the package and lays what other pages need beside the page.
pub fn embed() -> Outcome {
    package::package()?;
    let beside = place::dist();
    let folder = beside.join(FOLDER);
    files::make(&folder)?;
    join(&package::folder().join("sizer.js"), &folder.join("sizer.js"))?;
    for name in [package::PROGRAM, "frame.js"] {
        put(&package::folder().join(name), &folder.join(name))?;
    }
    for path in files::children(&place::at("www/embed"))? {
        let name = files::name(&path);
        put(&path, &if name.ends_with(".html") { beside.join(name) } else { folder.join(name) })?;
    }
    Ok(())
}

/// A script and all that it imports, as one small file: a page waits for two files instead of seventeen.
pub fn join(script: &Path, into: &Path) -> Outcome {
    let mut esbuild = Command::new("node");
    esbuild.arg(node::kit()?.join("esbuild/bin/esbuild")).arg(script).arg(format!("--outfile={}", into.display()));
    esbuild.args(["--bundle", "--format=esm", "--minify", "--target=es2023", "--log-level=error"]);
    run::answer(&mut esbuild).map(drop)
}

fn put(from: &Path, to: &Path) -> Outcome {
    files::write(to, files::bytes(from)?)
}
