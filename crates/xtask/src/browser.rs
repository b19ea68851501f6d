//! Chromium and ChromeDriver: found, or installed through apt where that is possible.

use crate::{Outcome, files, install, place, run};
use std::env;
use std::path::PathBuf;
use std::process::Command;

/// The two programs.
pub struct Browser {
    pub chromium: PathBuf,
    pub driver: PathBuf,
}

/// Flags that keep the browser quiet: no window, no sandbox (it does not run as root), no background traffic.
const FLAGS: [&str; 8] = [
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-dev-shm-usage",
    "--disable-background-networking",
    "--no-first-run",
    "--disable-component-update",
    "--disable-sync",
];

/// Finds the browser, and installs it if it is missing and we may.
pub fn ready() -> Outcome<Browser> {
    if let Some(browser) = find() {
        return Ok(browser);
    }
    let _only_us = install::lock()?;
    if find().is_none() {
        through_apt()?;
    }
    find().ok_or_else(|| by_hand("apt-get ran, but they are still not in PATH"))
}

/// The settings of ChromeDriver for the wasm tests, written where the test runner can read them.
pub fn webdriver_settings(browser: &Browser) -> Outcome<PathBuf> {
    let flags = FLAGS.map(|flag| format!("\"{flag}\"")).join(", ");
    let program = browser.chromium.display();
    let settings = format!("{{\"goog:chromeOptions\": {{\"binary\": \"{program}\", \"args\": [{flags}]}}}}\n");
    let path = place::at("target/webdriver.json");
    files::make(&place::at("target"))?;
    files::write(&path, settings)?;
    Ok(path)
}

/// The same flags, for a program that starts the browser itself.
pub fn flags() -> String {
    FLAGS.join(" ")
}

fn find() -> Option<Browser> {
    let chromium = named("CHROMIUM").or_else(|| place::in_path(&["chromium", "chromium-browser", "chrome"]))?;
    let driver = named("CHROMEDRIVER").or_else(|| place::in_path(&["chromedriver"]))?;
    Some(Browser { chromium, driver })
}

fn named(variable: &str) -> Option<PathBuf> {
    env::var_os(variable).map(PathBuf::from).filter(|path| path.is_file())
}

fn through_apt() -> Outcome {
    if place::in_path(&["apt-get"]).is_none() {
        return Err(by_hand("there is no apt-get here"));
    }
    let sudo: &[&str] = match is_root() {
        true => &[],
        false if run::answer(Command::new("sudo").args(["-n", "true"])).is_ok() => &["sudo", "-n"],
        false => return Err(by_hand("installing them here needs root")),
    };
    println!("Installing chromium and chromium-driver through apt-get: the tests run in them. Once, about a minute.");
    let packages = ["install", "--yes", "--no-install-recommends", "chromium", "chromium-driver"];
    install::quietly(&mut apt(sudo, &["update"]), "apt-get update")
        .and_then(|()| install::quietly(&mut apt(sudo, &packages), "apt-get install"))
        .map_err(|reason| format!("{reason}\n{}", by_hand("apt-get could not install them")))
}

fn apt(sudo: &[&str], arguments: &[&str]) -> Command {
    let words: Vec<&str> = sudo.iter().copied().chain(["apt-get"]).chain(arguments.iter().copied()).collect();
    let mut command = Command::new(words[0]);
    command.args(&words[1..]).env("DEBIAN_FRONTEND", "noninteractive");
    command
}

fn is_root() -> bool {
    run::answer(Command::new("id").arg("-u")).is_ok_and(|id| id.trim() == "0")
}

fn by_hand(why: &str) -> String {
    format!(
        "Chromium and ChromeDriver of the same version are needed for the browser tests ({why}): install both, or \
         name them in the variables CHROMIUM and CHROMEDRIVER."
    )
}
