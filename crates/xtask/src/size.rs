//! Sizes of the shipped page, in Brotli as a web host sends them, against the budget.

use crate::{Outcome, alone, embed, files, node, place, run, tally};
use std::path::Path;
use std::process::Command;

/// Everything a first visit loads, in bytes after Brotli, with every stage of the job: no more than this. The ledger in
/// DEVELOPERS.md says where the bytes went.
const BUDGET: u64 = 256_000;

/// A change larger than this is worth a line in the ledger.
const LEDGER_STEP: u64 = 1_000;

/// Prefixes of files that are loaded after the first paint: nobody waits for them.
const LATER: [&str; 7] = [alone::FILE, "book-", "icon-", "link-", "manifest", "store-", "sw.js"];

/// The page of an invented contractor: shown, not shipped into other pages.
const SHOWN: &str = "contractor";

/// Node brings Brotli at its best quality; a Rust one would have to be compiled first.
const MEASURE: &str = "
const { readFileSync } = require('node:fs');
const { brotliCompressSync, constants } = require('node:zlib');
for (const file of process.argv.slice(1)) {
  const bytes = readFileSync(file);
  const options = { params: { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length } };
  console.log(bytes.length, brotliCompressSync(bytes, options).length);
}";

/// Prints the size of each file of target/dist and fails when the first visit is over budget.
pub fn size() -> Outcome {
    node::check()?;
    let sizes = measure()?;
    let sum = |of: &dyn Fn(&str) -> bool| sizes.iter().filter(|size| of(&size.name)).map(|size| size.brotli).sum();
    let total = sum(&|name| !is_later(name) && !is_elsewhere(name));
    let embed = sum(&is_embed);
    let whole = sizes.iter().find(|size| size.name == alone::FILE).map_or(0, |size| size.raw);
    println!("{}", report(&sizes, total, embed, whole));
    if let Some(note) = ledger_note(total, &files::text(&place::at("DEVELOPERS.md"))?) {
        println!("note: {note}");
    }
    within("The first visit", total, BUDGET)?;
    within("The sizer for other pages", embed, embed::BUDGET)?;
    if whole == 0 {
        return Err(format!("There is no {} in target/dist.", alone::FILE));
    }
    within("The page in one file, as it lies in a mail,", whole, alone::BUDGET)
}

struct Size {
    name: String,
    raw: u64,
    brotli: u64,
}

fn measure() -> Outcome<Vec<Size>> {
    let folder = place::dist();
    if !folder.join("index.html").is_file() {
        return Err("There is no page in target/dist yet: run `cargo xtask dist` first.".to_owned());
    }
    let paths = files::under(&folder, &|_| false)?;
    let said = run::answer(Command::new("node").args(["-e", MEASURE, "--"]).args(&paths))?;
    let names = paths.iter().map(|path| path.strip_prefix(&folder).unwrap_or(path).display().to_string());
    let sizes: Option<Vec<Size>> = names.zip(said.lines()).map(|(name, line)| read(name, line)).collect();
    sizes.filter(|sizes| sizes.len() == paths.len()).ok_or_else(|| format!("Node measured strangely:\n{said}"))
}

fn read(name: String, line: &str) -> Option<Size> {
    let (raw, brotli) = line.split_once(' ')?;
    Some(Size { name, raw: raw.parse().ok()?, brotli: brotli.parse().ok()? })
}

fn is_later(name: &str) -> bool {
    LATER.iter().any(|prefix: &&str| name.starts_with(prefix))
}

/// Loaded by other pages.
fn is_embed(name: &str) -> bool {
    is_elsewhere(name) && !name.contains(SHOWN)
}

/// Not part of the page.
fn is_elsewhere(name: &str) -> bool {
    name.starts_with(SHOWN) || name == embed::FRAME || Path::new(name).starts_with(embed::FOLDER)
}

fn report(sizes: &[Size], total: u64, embed: u64, whole: u64) -> String {
    let mut rows = vec![["file", "bytes", "Brotli", ""].map(str::to_owned).to_vec()];
    for size in sizes {
        let note = match size.name.as_str() {
            name if is_elsewhere(name) => "elsewhere",
            name if is_later(name) => "later",
            _ => "",
        };
        rows.push(vec![size.name.clone(), size.raw.to_string(), size.brotli.to_string(), note.to_owned()]);
    }
    rows.push(vec!["first visit".to_owned(), String::new(), total.to_string(), format!("of {BUDGET}")]);
    rows.push(vec!["sizer".to_owned(), String::new(), embed.to_string(), format!("of {}", embed::BUDGET)]);
    rows.push(vec!["one file".to_owned(), whole.to_string(), String::new(), format!("of {}", alone::BUDGET)]);
    tally::table(&rows)
}

/// A reminder when the last line of the ledger no longer tells the size.
fn ledger_note(total: u64, developers: &str) -> Option<String> {
    let ledger = developers.split("## Size ledger").nth(1)?.split("\n## ").next()?;
    let digits = |cell: &str| cell.chars().filter(char::is_ascii_digit).collect::<String>().parse::<u64>().ok();
    let last = ledger.lines().filter_map(|line| digits(line.strip_prefix('|')?.split('|').next()?)).next_back()?;
    let far = total.abs_diff(last) > LEDGER_STEP;
    far.then(|| format!("the size ledger in DEVELOPERS.md ends at {last}, the first visit weighs {total}: add a line"))
}

fn within(what: &str, total: u64, budget: u64) -> Outcome {
    if total <= budget {
        return Ok(());
    }
    Err(format!("{what} weighs {total} bytes; the budget is {budget}."))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_budget_can_be_broken() {
        assert!(within("The first visit", BUDGET, BUDGET).is_ok());
        assert!(within("The first visit", BUDGET + 1, BUDGET).is_err());
    }

    #[test]
    fn what_other_pages_load_is_no_part_of_the_first_visit() {
        for (name, elsewhere, embed) in [
            ("index.html", false, false),
            ("embed.html", true, true),
            ("embed/sizer.js", true, true),
            ("embed/contractor.css", true, false),
            ("contractor.html", true, false),
        ] {
            assert_eq!((is_elsewhere(name), is_embed(name)), (elsewhere, embed), "{name}");
        }
    }

    #[test]
    fn the_ledger_is_held_against_the_size() {
        let ledger = "## Size ledger\n\n| Total | Why |\n|---|---|\n| 49 000 | a |\n| 52 000 | b |\n\n## More\n| 9 |\n";
        assert_eq!(ledger_note(52_900, ledger), None);
        assert!(ledger_note(53_100, ledger).is_some_and(|note| note.contains("ends at 52000")));
    }

    #[test]
    fn a_line_of_sizes_is_read() {
        assert!(read("a".to_owned(), "120 47").is_some_and(|size| size.raw == 120 && size.brotli == 47));
        assert!(read("a".to_owned(), "120").is_none());
    }
}
