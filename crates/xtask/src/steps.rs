//! The steps of `cargo xtask test`, in the order that tells soonest what is wrong.

use crate::run::{self, Said};
use crate::tools::{ForTest, WASM};
use crate::{Outcome, browser, dist, journeys, package, place, reference, size, tidy, tools};
use std::process::Command;

/// Packages of the page: they are compiled for the browser, and their tests run there.
const PAGE_PACKAGES: [&str; 3] = ["airtally-door", "airtally-js", "airtally-app"];
/// The line in which the parity test says its digest.
const DIGEST: &str = "parity digest: ";

/// How many tests a step ran.
#[derive(Clone, Copy, Default, Debug, PartialEq)]
pub struct Count {
    pub passed: usize,
    pub failed: usize,
}

impl Count {
    pub fn plus(self, other: Self) -> Self {
        Self { passed: self.passed + other.passed, failed: self.failed + other.failed }
    }
}

/// How a step ended.
pub struct Ended {
    pub well: bool,
    pub count: Count,
    pub reason: Option<String>,
    pub passes: Passed,
}

impl Ended {
    pub fn well(count: Count) -> Self {
        Self { well: true, count, reason: None, passes: Passed::default() }
    }

    pub fn badly(reason: String) -> Self {
        Self { well: false, count: Count::default(), reason: Some(reason), passes: Passed::default() }
    }
}

/// What an earlier step leaves for a later one.
#[derive(Default)]
pub struct Passed {
    digest: Option<String>,
    page_is_made: bool,
}

impl Passed {
    pub fn take(&mut self, new: Self) {
        self.digest = new.digest.or(self.digest.take());
        self.page_is_made |= new.page_is_made;
    }
}

type Step<'a> = Box<dyn Fn(&Passed) -> Ended + 'a>;

/// Every step with its name.
pub fn all(tools: &Outcome<ForTest>) -> Vec<(&'static str, Step<'_>)> {
    vec![
        ("format", Box::new(|_| tested(run::cargo().args(["fmt", "--all", "--check"])))),
        ("tidy", Box::new(|_| simple(tidy::tidy()))),
        (
            "clippy",
            Box::new(|_| tested(run::cargo().args(["clippy", "--locked", "--all-targets", "--", "-D", "warnings"]))),
        ),
        ("clippy, page", Box::new(|_| tested(&mut page_clippy()))),
        ("native tests", Box::new(|_| tested(&mut native_tests()))),
        ("examples in docs", Box::new(|_| tested(run::cargo().args(["test", "--quiet", "--doc"])))),
        ("reference libraries", Box::new(|_| simple(reference::ask()))),
        ("native digest", Box::new(|_| native_digest())),
        ("wasm = native", Box::new(move |passed| with(tools, |tools| wasm_digest(tools, passed)))),
        ("wasm tests", Box::new(move |_| with(tools, wasm_tests))),
        ("package", Box::new(move |_| with(tools, packaged))),
        ("release page", Box::new(|_| release_page())),
        ("size", Box::new(|passed| on_the_page(passed, || simple(size::size())))),
        ("journeys", Box::new(move |passed| on_the_page(passed, || with(tools, walked)))),
    ]
}

/// Runs a step that needs the tools, or repeats why they are not there.
fn with(tools: &Outcome<ForTest>, step: impl FnOnce(&ForTest) -> Ended) -> Ended {
    tools.as_ref().map_or_else(|reason| Ended::badly(reason.clone()), step)
}

fn page_clippy() -> Command {
    let mut command = run::cargo();
    command.args(["clippy", "--locked"]).args(page_packages()).args([
        "--target",
        WASM,
        "--all-targets",
        "--",
        "-D",
        "warnings",
    ]);
    command
}

fn native_tests() -> Command {
    let mut command = run::cargo();
    match run::answer(run::cargo().args(["nextest", "--version"])) {
        Ok(_) => command.args(["nextest", "run", "--no-fail-fast", "--status-level", "fail"]),
        Err(_) => command.args(["test", "--quiet", "--no-fail-fast", "--lib", "--bins", "--tests"]),
    };
    command
}

fn native_digest() -> Ended {
    let mut command = run::cargo();
    command.args(["test", "--quiet", "--package", "airtally-tests", "--test", "parity", "--", "--nocapture"]);
    let mut ended = tested(&mut command);
    ended.count = Count::default();
    ended
}

fn wasm_digest(tools: &ForTest, passed: &Passed) -> Ended {
    let Some(digest) = &passed.digest else {
        return Ended::badly("The native run gave no digest to compare with.".to_owned());
    };
    let command = in_browser(tools, &["--package", "airtally-tests", "--test", "parity"]);
    command.map_or_else(Ended::badly, |mut command| tested(command.env("AIRTALLY_NATIVE_DIGEST", digest)))
}

/// Package by package: the browser runs one test program at a time.
fn wasm_tests(tools: &ForTest) -> Ended {
    let ends = PAGE_PACKAGES.iter().map(|package| {
        let command = in_browser(tools, &["--package", package, "--lib"]);
        command.map_or_else(Ended::badly, |mut command| tested(&mut command))
    });
    ends.reduce(both).unwrap_or_else(|| Ended::badly("No package has wasm tests.".to_owned()))
}

/// `cargo test` for the browser, with the runner that starts it.
fn in_browser(tools: &ForTest, what: &[&str]) -> Outcome<Command> {
    let folder = tools::WASM_BINDGEN.installed()?.ok_or("wasm-bindgen is not installed.")?;
    let mut command = run::cargo();
    command.arg("test").args(what).args(["--target", WASM]);
    command.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER", folder.join("wasm-bindgen-test-runner"));
    command.env("CHROMEDRIVER", &tools.browser.driver);
    command.env("WASM_BINDGEN_TEST_WEBDRIVER_JSON", browser::webdriver_settings(&tools.browser)?);
    // Seconds until the runner gives up: a busy machine may take long to start a browser.
    command.env("WASM_BINDGEN_TEST_TIMEOUT", "120");
    Ok(command)
}

fn packaged(tools: &ForTest) -> Ended {
    match package::package() {
        Ok(()) => tested(&mut package::checks(tools)),
        Err(reason) => Ended::badly(reason),
    }
}

fn release_page() -> Ended {
    let mut ended = simple(dist::dist());
    ended.passes.page_is_made = ended.well;
    ended
}

fn walked(tools: &ForTest) -> Ended {
    tested(journeys::command(tools, "run.mjs").arg(place::dist()))
}

/// Steps that look at the page as it ships make no sense on an old one.
fn on_the_page(passed: &Passed, step: impl FnOnce() -> Ended) -> Ended {
    if passed.page_is_made { step() } else { Ended::badly("There is no release page to look at.".to_owned()) }
}

fn tested(command: &mut Command) -> Ended {
    match run::printed(command) {
        Err(reason) => Ended::badly(reason),
        Ok(Said { text, well }) => Ended {
            well,
            count: count(&text),
            reason: None,
            passes: Passed { digest: digest(&text), page_is_made: false },
        },
    }
}

fn simple(outcome: Outcome) -> Ended {
    outcome.map_or_else(Ended::badly, |()| Ended::well(Count::default()))
}

fn both(one: Ended, other: Ended) -> Ended {
    Ended {
        well: one.well && other.well,
        count: one.count.plus(other.count),
        reason: one.reason.or(other.reason),
        passes: Passed::default(),
    }
}

fn page_packages() -> impl Iterator<Item = &'static str> {
    PAGE_PACKAGES.iter().flat_map(|package| ["--package", package])
}

fn digest(text: &str) -> Option<String> {
    let at = text.find(DIGEST)? + DIGEST.len();
    text[at..].split_whitespace().next().map(str::to_owned)
}

/// Reads the summary lines of nextest, `cargo test`, the wasm test runner, our journeys and the checks of the package.
fn count(text: &str) -> Count {
    let summaries = text.lines().map(plain).filter(|line| {
        let line = line.trim_start();
        ["test result:", "Summary [", "journeys:", "package:"].iter().any(|head| line.starts_with(head))
    });
    summaries.fold(Count::default(), |sum, line| {
        sum.plus(Count { passed: before(&line, " passed"), failed: before(&line, " failed") })
    })
}

/// The number that stands before a word: 3 in "ok. 3 passed; 0 failed".
fn before(line: &str, word: &str) -> usize {
    let Some(at) = line.find(word) else { return 0 };
    line[..at].rsplit(|c: char| !c.is_ascii_digit()).next().and_then(|digits| digits.parse().ok()).unwrap_or(0)
}

/// A line without terminal colours.
fn plain(line: &str) -> String {
    let mut parts = line.split('\u{1b}');
    let first = parts.next().unwrap_or_default().to_owned();
    parts.fold(first, |text, part| text + part.split_once('m').map_or("", |(_, rest)| rest))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn summaries_are_counted() {
        let text = "test result: ok. 3 passed; 0 failed; 0 ignored\n     Summary [   0.012s] 7 tests run: 6 passed (1 slow), 1 failed, 0 skipped\njourneys: 2 passed, 1 failed";
        assert_eq!(count(text), Count { passed: 11, failed: 2 });
    }

    #[test]
    fn colours_do_not_hide_a_count() {
        assert_eq!(count("test result: \u{1b}[32mok\u{1b}[0m. 2 passed; 0 failed"), Count { passed: 2, failed: 0 });
    }

    #[test]
    fn the_digest_is_read() {
        assert_eq!(digest("running 1 test\nparity digest: 00ff ok"), Some("00ff".to_owned()));
        assert_eq!(digest("nothing"), None);
    }
}
