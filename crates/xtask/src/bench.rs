//! Benchmarks, for people to read: they are never a gate, since machines differ.

use crate::lean::lean;
use crate::{Outcome, journeys, reference, run, tools};

const BUDGET: &str = "\
Budgets, on a quiet machine of two cores: a report of 12 rooms 0.1 ms and of 60 rooms 0.4 ms native, in wasm at most
2.2 times as long, growing with the rooms up to 1 000; a network of 40 tubes 60 µs, of 400 tubes 0.6 ms; from a key to its painted result 50 ms (median).";

/// The report native and, with the profile of the page, as wasm under Node; then from a key to its painted result.
/// Arguments go to the native benchmark.
pub fn bench(arguments: &[String]) -> Outcome {
    let folders = tools::for_page()?;
    println!("The report, native:");
    run::live(run::cargo().args(["bench", "--package", "airtally-tests", "--bench", "report", "--"]).args(arguments))?;
    println!("A network of tubes, native, and its peers:");
    run::live(run::cargo().args(["bench", "--package", "airtally-tests", "--bench", "network", "--"]).args(arguments))?;
    reference::peers()?;
    println!("The report, as wasm under Node, built as the page is:");
    let mut wasm = run::cargo();
    wasm.args(["bench", "--package", "airtally-tests", "--bench", "report"]);
    wasm.args(["--profile", "release", "--target", tools::WASM]);
    let runner = folders.iter().map(|folder| folder.join("wasm-bindgen-test-runner")).find(|runner| runner.is_file());
    let runner = runner.ok_or("wasm-bindgen-test-runner is not where it was installed.")?;
    lean(&mut wasm)?;
    run::live(wasm.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER", runner))?;
    journeys::pace(&[])?;
    println!("{BUDGET}");
    Ok(())
}
