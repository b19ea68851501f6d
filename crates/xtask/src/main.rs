//! The workshop: makes the page, serves it, and proves that everything holds.
//!
//! It only spawns other programs and reads files; it links none of our crates, so that it builds in seconds.

mod alone;
mod bench;
mod browser;
mod dist;
mod embed;
mod files;
mod finish;
mod imports;
mod install;
mod journeys;
mod lean;
mod node;
mod offline;
mod package;
mod place;
mod reference;
mod run;
mod serve;
mod size;
mod steps;
mod tally;
mod test;
mod tidy;
mod tools;

use std::process::ExitCode;

/// What every command gives back: nothing, or one sentence for the person at the keyboard.
type Outcome<T = ()> = Result<T, String>;

const HELP: &str = "\
cargo xtask serve [--port N] [--open]    make the page, serve it on 127.0.0.1, make it again on every change
cargo xtask serve --release [--port N]   the same for the page as it ships, made once
cargo xtask test                         everything that must hold, then a summary
cargo xtask dist                         the page as it ships, in target/dist
cargo xtask package                      the package for other pages and for Node, in target/airtally-js, checked
cargo xtask tidy                         the rules of the house: directions, lengths, words
cargo xtask size                         sizes in Brotli against the budget (after dist)
cargo xtask journeys [--made] [NAME…]    browser journeys (--made: on the page in target/dist as it is)
cargo xtask shots [--made] [NAME…]       screenshots in target/shots, three sizes in three looks
cargo xtask pace [--made]                from a key to its painted result, and to a page that is there, slowed down
cargo xtask bench [ARGUMENT…]            benchmarks
cargo xtask reference                    asks the reference libraries again
cargo xtask trunk [ARGUMENT…]            the pinned Trunk, with its tools in PATH
cargo xtask tools                        install what test needs, and stop";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    match dispatch(&arguments) {
        Ok(()) => ExitCode::SUCCESS,
        Err(reason) => {
            eprintln!("{reason}");
            ExitCode::FAILURE
        }
    }
}

fn dispatch(arguments: &[String]) -> Outcome {
    let (command, rest) = match arguments.split_first() {
        Some((command, rest)) => (command.as_str(), rest),
        None => ("help", &[][..]),
    };
    match command {
        "serve" => serve::serve(rest),
        "test" => test::test(),
        "dist" => dist::dist(),
        "package" => package::checked(),
        "tidy" => tidy::tidy(),
        "size" => size::size(),
        "journeys" => journeys::journeys(rest),
        "shots" => journeys::shots(rest),
        "pace" => journeys::pace(rest),
        "bench" => bench::bench(rest),
        "trunk" => dist::trunk(rest),
        "reference" => reference::ask(),
        "tools" => tools::for_test().map(drop),
        "hook" => finish::hook(),
        "help" | "--help" | "-h" => {
            println!("{HELP}");
            Ok(())
        }
        other => Err(format!("There is no command “{other}”.\n\n{HELP}")),
    }
}
