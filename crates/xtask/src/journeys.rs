//! Browser journeys and screenshots: Node scripts in tests/browser, given the tools and the page as it ships.

use crate::browser::Browser;
use crate::tools::{self, ForTest};
use crate::{Outcome, browser, dist, node, place, run};
use std::process::Command;

const MADE: &str = "--made";

/// Walks the journeys, all or those named.
pub fn journeys(arguments: &[String]) -> Outcome {
    let tools = ready(arguments)?;
    run::live(command(&tools, "run.mjs").arg(place::dist()).args(names(arguments)))
}

/// Takes screenshots of the states in tests/browser/shots.mjs, all or those named.
pub fn shots(arguments: &[String]) -> Outcome {
    let tools = ready(arguments)?;
    let target = place::at("target/shots");
    run::live(command(&tools, "shoot.mjs").arg(place::dist()).arg(target).args(names(arguments)))
}

/// Says how long a key takes until its result is painted, and how soon the page is there.
pub fn pace(arguments: &[String]) -> Outcome {
    let tools = ready(arguments)?;
    run::live(command(&tools, "pace.mjs").arg(place::dist()))?;
    run::live(command(&tools, "speed.mjs").arg(place::dist()))
}

/// One of the scripts, with the places of its tools.
pub fn command(tools: &ForTest, script: &str) -> Command {
    let mut command = Command::new("node");
    command.current_dir(place::root()).arg(format!("tests/browser/{script}"));
    command.env("AIRTALLY_NODE_MODULES", &tools.node_modules);
    command.env("AIRTALLY_CHROMIUM", &tools.browser.chromium).env("AIRTALLY_CHROMIUM_FLAGS", browser::flags());
    command
}

fn ready(arguments: &[String]) -> Outcome<ForTest> {
    if arguments.iter().any(|argument| argument == MADE) {
        let browser: Browser = browser::ready()?;
        return Ok(ForTest { browser, node_modules: node::kit()? });
    }
    let tools = tools::for_test()?;
    dist::dist()?;
    Ok(tools)
}

fn names(arguments: &[String]) -> impl Iterator<Item = &String> {
    arguments.iter().filter(|argument| *argument != MADE)
}
