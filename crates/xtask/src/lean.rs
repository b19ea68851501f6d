//! The standard library, built for size together with the page that ships.
//!
//! Rust's ready-made library is built for speed and can tell every panic's place and reason, which nobody reads in
//! a page: built here, without those texts, it saves every visitor 10 kB. Cargo does this behind unstable settings,
//! which are switched on for this one build. Where a Rust does not know them the page is built without, and it is said.

use crate::{Outcome, place, run, tools};
use std::process::Command;

/// Lets a build of the page make its own standard library, where this Rust can.
pub fn lean(build: &mut Command) -> Outcome {
    if !is_known() {
        println!("This Rust cannot build its library for size: the page is about 10 kB larger than it could be.");
        return Ok(());
    }
    tools::rust_source()?;
    build.env("RUSTC_BOOTSTRAP", "1");
    build.env("CARGO_UNSTABLE_BUILD_STD", "std,panic_abort");
    build.env("CARGO_UNSTABLE_PANIC_IMMEDIATE_ABORT", "true").env("CARGO_PROFILE_RELEASE_PANIC", "immediate-abort");
    Ok(())
}

fn is_known() -> bool {
    let mut rust = Command::new("rustc");
    rust.args(["--print", "cfg", "-Zunstable-options", "-Cpanic=immediate-abort", "--target", tools::WASM]);
    let rust_knows = run::answer(rust.env("RUSTC_BOOTSTRAP", "1").current_dir(place::root())).is_ok();
    let mut cargo = run::cargo();
    cargo.args(["-Zbuild-std", "-Zpanic-immediate-abort", "--version"]).env("RUSTC_BOOTSTRAP", "1");
    rust_knows && run::answer(&mut cargo).is_ok()
}
