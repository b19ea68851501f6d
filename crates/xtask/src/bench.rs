//! Benchmarks, for people to read: they are never a gate, since machines differ.

mod timed;

use crate::lean::lean;
use crate::{Outcome, journeys, reference, run, tools};
use std::path::PathBuf;
use timed::Timed;

const BUDGET: &str = "\
Budgets, on a quiet machine of two cores: a report of 12 rooms 0.1 ms and of 60 rooms 0.4 ms native, in wasm at most
2.2 times as long, growing with the rooms up to 1 000; a network of 40 tubes 60 µs native and 130 µs in wasm, of 400 tubes
0.6 ms native, of 4 000 tubes no more than ten times that, and 40 tubes a hundred times as fast as by the best peer;
from a key to its painted result 50 ms (median).";

/// Reports and networks native, as wasm under Node with the profile of the page, and by the peers, side by side; then from a
/// key to its painted result. Arguments go to the native benchmarks.
pub fn bench(arguments: &[String]) -> Outcome {
    let folders = tools::for_page()?;
    let runner = folders.iter().map(|folder| folder.join("wasm-bindgen-test-runner")).find(|runner| runner.is_file());
    let runner = runner.ok_or("wasm-bindgen-test-runner is not where it was installed.")?;
    let mut columns = [("native", Vec::new()), ("wasm", Vec::new()), ("peers", Vec::new())];
    for what in ["report", "network"] {
        println!("The {what}, native:");
        columns[0].1.extend(native(what, arguments)?);
        println!("The {what}, as wasm under Node, built as the page is:");
        columns[1].1.extend(in_node(what, &runner)?);
    }
    println!("The peers on networks of tubes:");
    columns[2].1.extend(timed::read(&reference::peers()?));
    println!("\n{}\n", timed::side_by_side(&columns));
    journeys::pace(&[])?;
    println!("{BUDGET}");
    Ok(())
}

fn native(what: &str, arguments: &[String]) -> Outcome<Vec<Timed>> {
    let mut bench = run::cargo();
    times(bench.args(["bench", "--package", "airtally-tests", "--bench", what, "--"]).args(arguments))
}

fn in_node(what: &str, runner: &PathBuf) -> Outcome<Vec<Timed>> {
    let mut bench = run::cargo();
    bench.args(["bench", "--package", "airtally-tests", "--bench", what]);
    bench.args(["--profile", "release", "--target", tools::WASM]);
    lean(&mut bench)?;
    // Cargo would unwind in a benchmark, and so need a second standard library beside the lean one.
    bench.env("CARGO_UNSTABLE_PANIC_ABORT_TESTS", "true");
    times(bench.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER", runner))
}

fn times(bench: &mut std::process::Command) -> Outcome<Vec<Timed>> {
    let said = run::printed(bench)?;
    if said.well { Ok(timed::read(&said.text)) } else { Err("The benchmark did not end well.".into()) }
}
