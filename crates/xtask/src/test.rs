//! Everything that must hold, step by step, with a table at the end.

use crate::steps::{self, Count, Ended};
use crate::{Outcome, tally, tools};
use std::time::{Duration, Instant};

/// Runs every step, also after one has failed, and fails if any did.
pub fn test() -> Outcome {
    let began = Instant::now();
    // Without its tools a step fails; the others still tell what they can.
    let tools = tools::for_test();
    let mut ledger = Ledger::default();
    for (name, step) in steps::all(&tools) {
        println!("\n== {name}");
        let start = Instant::now();
        let ended = step(&ledger.said);
        ledger.write(name, ended, start.elapsed());
    }
    println!("\n{}", ledger.table(began.elapsed()));
    ledger.verdict()
}

/// What each step came to.
#[derive(Default)]
struct Ledger {
    rows: Vec<Row>,
    /// What earlier steps pass on to later ones.
    said: steps::Passed,
}

struct Row {
    name: &'static str,
    well: bool,
    count: Count,
    time: Duration,
}

impl Ledger {
    fn write(&mut self, name: &'static str, ended: Ended, time: Duration) {
        if let Some(reason) = &ended.reason {
            println!("{reason}");
        }
        self.said.take(ended.passes);
        // A step that fails without a failed test (it did not compile, say) still counts as one failure.
        let mut count = ended.count;
        if !ended.well && count.failed == 0 {
            count.failed = 1;
        }
        self.rows.push(Row { name, well: ended.well, count, time });
    }

    fn table(&self, total: Duration) -> String {
        let mut rows = vec![["step", "result", "tests", "time"].map(str::to_owned).to_vec()];
        for row in &self.rows {
            let tests = if row.count.passed > 0 { row.count.passed.to_string() } else { String::new() };
            let result = if row.well { "ok" } else { "FAILED" };
            rows.push(vec![row.name.to_owned(), result.to_owned(), tests, tally::clock(row.time)]);
        }
        rows.push(vec!["all".to_owned(), String::new(), self.sum().passed.to_string(), tally::clock(total)]);
        tally::table(&rows)
    }

    fn sum(&self) -> Count {
        self.rows.iter().fold(Count::default(), |sum, row| sum.plus(row.count))
    }

    fn verdict(&self) -> Outcome {
        let Count { passed, failed } = self.sum();
        let line = format!("{passed} passed, {failed} failed");
        if failed > 0 {
            return Err(line);
        }
        println!("{line}");
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_step_that_breaks_without_a_test_is_still_a_failure() {
        let mut ledger = Ledger::default();
        ledger.write("clippy", Ended::badly("it did not compile".to_owned()), Duration::ZERO);
        ledger.write("tests", Ended::well(Count { passed: 3, failed: 0 }), Duration::ZERO);
        assert_eq!(ledger.verdict(), Err("3 passed, 1 failed".to_owned()));
    }
}
