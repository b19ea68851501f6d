//! Benchmarks, for people to read: they are never a gate, since machines differ.

use crate::{Outcome, run};

/// Runs the benchmarks of the tests crate, with these further arguments.
pub fn bench(arguments: &[String]) -> Outcome {
    run::live(run::cargo().args(["bench", "--package", "airtally-tests"]).args(arguments))
}
