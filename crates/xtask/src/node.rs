//! Node and the few packages we need from npm.

use crate::{Outcome, files, install, place, run};
use std::path::PathBuf;
use std::process::Command;

const OLDEST: u32 = 20;

/// Node in a version that will do, or one sentence.
pub fn check() -> Outcome {
    let version = run::answer(Command::new("node").arg("--version"))
        .map_err(|_| format!("Node {OLDEST} or newer is needed for this: install it, then run this again."))?;
    match major(&version) {
        Some(number) if number >= OLDEST => Ok(()),
        _ => Err(format!("Node {OLDEST} or newer is needed for this; `node --version` says {}.", version.trim())),
    }
}

/// The folder `node_modules` with the packages pinned in tests/browser, installed once for each lock file.
pub fn kit() -> Outcome<PathBuf> {
    check()?;
    let lock = place::at("tests/browser/package-lock.json");
    let folder = place::tools()?.join(format!("node-kit-{}", files::fingerprint(&files::bytes(&lock)?)));
    let modules = folder.join("node_modules");
    if modules.is_dir() {
        return Ok(modules);
    }
    let _only_us = install::lock()?;
    if modules.is_dir() {
        return Ok(modules);
    }
    println!(
        "Installing binaryen, terser, zopfli, playwright-core, axe-core, jsqr, ajv, esbuild, vite, publint, \
         are-the-types-wrong and TypeScript from npm: they make the page small and try it and the package. Once for this user, \
         about 240 MB, some seconds to a minute."
    );
    install::in_one_move(&folder, |partial| {
        for name in ["package.json", "package-lock.json"] {
            files::write(&partial.join(name), files::bytes(&place::at("tests/browser").join(name))?)?;
        }
        let mut npm = Command::new("npm");
        npm.current_dir(partial).args(["ci", "--no-audit", "--no-fund", "--ignore-scripts", "--loglevel=error"]);
        install::quietly(&mut npm, "npm ci")
    })?;
    Ok(modules)
}

fn major(version: &str) -> Option<u32> {
    version.trim().trim_start_matches('v').split('.').next()?.parse().ok()
}

#[cfg(test)]
mod tests {
    use super::major;

    #[test]
    fn the_version_of_node_is_read() {
        assert_eq!(major("v20.20.2\n"), Some(20));
        assert_eq!(major("no such thing"), None);
    }
}
