//! Putting a tool into the per-user cache once: safe against interruption, and against two runs at the same time.

use crate::{Outcome, files, place, run, tally};
use std::fs::File;
use std::path::{Path, PathBuf};
use std::process::Command;

/// A program that Cargo builds from source, pinned.
pub struct CargoTool {
    /// The package, and the program that must be there afterwards.
    pub package: &'static str,
    pub program: &'static str,
    pub version: &'static str,
    /// Further arguments of `cargo install`.
    pub arguments: &'static [&'static str],
    /// Why it is needed, and about how long it takes on two cores.
    pub why: &'static str,
    pub takes: &'static str,
    /// How many packages are compiled, for the progress line.
    pub packages: usize,
}

impl CargoTool {
    fn folder(&self) -> Outcome<PathBuf> {
        Ok(place::tools()?.join(format!("{}-{}", self.package, self.version)))
    }

    /// The folder of its programs, once it is installed.
    pub fn installed(&self) -> Outcome<Option<PathBuf>> {
        let programs = self.folder()?.join("bin");
        Ok(programs.join(self.program).is_file().then_some(programs))
    }
}

/// Installs those of these tools that are missing. They share one build folder, so that what they have in
/// common is compiled once; it is removed at the end.
pub fn cargo_tools(tools: &[&CargoTool]) -> Outcome<Vec<PathBuf>> {
    if missing(tools)?.is_empty() {
        return programs(tools);
    }
    let _only_us = lock()?;
    let build = place::cache()?.join("build");
    for tool in missing(tools)? {
        println!("Installing {} {}: {} Once for this user, {}.", tool.package, tool.version, tool.why, tool.takes);
        in_one_move(&tool.folder()?, |partial| build_tool(tool, partial, &build))?;
    }
    files::remove(&build)?;
    programs(tools)
}

/// Fills a folder beside its final place, then renames it: a half-made one is never mistaken for a whole one.
pub fn in_one_move(folder: &Path, fill: impl FnOnce(&Path) -> Outcome) -> Outcome {
    let partial = folder.with_file_name(format!(".partial-{}", files::name(folder)));
    files::remove(&partial)?;
    files::make(&partial)?;
    fill(&partial)?;
    files::remove(folder)?;
    files::rename(&partial, folder)
}

/// Waits until no other run is installing. Dropping the file, or dying, opens the lock again.
pub fn lock() -> Outcome<File> {
    let tools = place::tools()?;
    files::make(&tools)?;
    let path = tools.join(".lock");
    let file = File::create(&path).map_err(|reason| format!("{} cannot be made: {reason}.", path.display()))?;
    if file.try_lock().is_err() {
        println!("Another run is installing tools; waiting for it.");
        file.lock().map_err(|reason| format!("{} cannot be locked: {reason}.", path.display()))?;
    }
    Ok(file)
}

fn missing<'a>(tools: &[&'a CargoTool]) -> Outcome<Vec<&'a CargoTool>> {
    let mut missing = Vec::new();
    for tool in tools {
        if tool.installed()?.is_none() {
            missing.push(*tool);
        }
    }
    Ok(missing)
}

fn programs(tools: &[&CargoTool]) -> Outcome<Vec<PathBuf>> {
    let found = tools.iter().map(|tool| {
        let lost = || format!("{} is not where it was installed.", tool.program);
        tool.installed()?.ok_or_else(lost)
    });
    found.collect()
}

fn build_tool(tool: &CargoTool, into: &Path, build: &Path) -> Outcome {
    let mut command = run::cargo();
    command.current_dir(place::tools()?);
    command.args(["install", "--debug", tool.package, "--version", tool.version]).args(tool.arguments);
    command.arg("--root").arg(into).env("CARGO_TARGET_DIR", build);
    command.env("CARGO_PROFILE_DEV_DEBUG", "0").env("CARGO_INCREMENTAL", "0").env("CARGO_TERM_COLOR", "never");
    let mut progress = tally::Progress::new(tool.package, tool.packages);
    let said = run::watched(&mut command, |line| {
        if let Some(package) = line.trim_start().strip_prefix("Compiling ") {
            progress.step(package);
        }
    })?;
    progress.done();
    if said.well {
        return Ok(());
    }
    Err(format!("{} could not be installed. Cargo said:\n{}", tool.package, last_lines(&said.text, 30)))
}

/// Runs a command quietly and shows its last lines only when it fails.
pub fn quietly(command: &mut Command, what: &str) -> Outcome {
    let said = run::watched(command, |_| {})?;
    if said.well { Ok(()) } else { Err(format!("{what} failed:\n{}", last_lines(&said.text, 30))) }
}

fn last_lines(text: &str, count: usize) -> String {
    let lines: Vec<&str> = text.lines().collect();
    lines[lines.len().saturating_sub(count)..].join("\n")
}
