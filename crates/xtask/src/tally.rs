//! Saying how far things are: one line while a tool is built, one table at the end of the tests.

use std::io::{IsTerminal, Write};
use std::time::{Duration, Instant};

/// A count of packages compiled: one line that moves on a terminal, a line every fifteen seconds elsewhere.
pub struct Progress {
    what: &'static str,
    total: usize,
    count: usize,
    began: Instant,
    told: Instant,
    terminal: bool,
}

impl Progress {
    pub fn new(what: &'static str, total: usize) -> Self {
        let now = Instant::now();
        Self { what, total, count: 0, began: now, told: now, terminal: std::io::stdout().is_terminal() }
    }

    /// One more package, by name.
    pub fn step(&mut self, package: &str) {
        self.count += 1;
        self.total = self.total.max(self.count);
        if self.terminal {
            print!("\r\x1b[2K  {}: {} of about {}, {package}", self.what, self.count, self.total);
            let _ = std::io::stdout().flush();
        } else if self.told.elapsed() > Duration::from_secs(15) {
            println!(
                "  {}: {} of about {} packages, {}",
                self.what,
                self.count,
                self.total,
                clock(self.began.elapsed())
            );
            self.told = Instant::now();
        }
    }

    pub fn done(&self) {
        let start = if self.terminal { "\r\x1b[2K" } else { "" };
        println!("{start}  {}: {} packages in {}", self.what, self.count, clock(self.began.elapsed()));
    }
}

/// `8 s`, `2 min 05 s`.
pub fn clock(time: Duration) -> String {
    let seconds = time.as_secs_f64();
    if seconds < 60.0 {
        return format!("{seconds:.1} s");
    }
    let whole = time.as_secs();
    format!("{} min {:02} s", whole / 60, whole % 60)
}

/// Rows of text in columns, the first row over a rule.
pub fn table(rows: &[Vec<String>]) -> String {
    let columns = rows.iter().map(Vec::len).max().unwrap_or(0);
    let widths: Vec<usize> = (0..columns).map(|column| width(rows, column)).collect();
    let mut text = String::new();
    for (number, row) in rows.iter().enumerate() {
        let cells = row.iter().zip(&widths).map(|(cell, width)| format!("{cell:<width$}"));
        text.push_str(cells.collect::<Vec<_>>().join("  ").trim_end());
        text.push('\n');
        if number == 0 {
            text.push_str(&"-".repeat(widths.iter().sum::<usize>() + 2 * widths.len().saturating_sub(1)));
            text.push('\n');
        }
    }
    text
}

fn width(rows: &[Vec<String>], column: usize) -> usize {
    rows.iter().filter_map(|row| row.get(column)).map(|cell| cell.chars().count()).max().unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn times_read_like_a_clock() {
        assert_eq!(clock(Duration::from_millis(8240)), "8.2 s");
        assert_eq!(clock(Duration::from_secs(125)), "2 min 05 s");
    }

    #[test]
    fn columns_line_up() {
        let rows = [vec!["step".to_owned(), "time".to_owned()], vec!["clippy".to_owned(), "9 s".to_owned()]];
        assert_eq!(table(&rows), "step    time\n------------\nclippy  9 s\n");
    }
}
