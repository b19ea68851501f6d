//! What we need beside Cargo itself, pinned, and who needs it.

use crate::browser::{self, Browser};
use crate::install::{self, CargoTool};
use crate::{Outcome, node, place, run};
use std::path::PathBuf;
use std::process::Command;

/// Must equal the version of wasm-bindgen in Cargo.toml and in Trunk.toml; `tidy` checks it.
pub const WASM_BINDGEN: CargoTool = CargoTool {
    package: "wasm-bindgen-cli",
    program: "wasm-bindgen",
    version: "0.2.130",
    // Not --locked: its lock file may name a package that registries no longer serve. No TLS client is needed.
    arguments: &["--no-default-features"],
    why: "it joins the compiled page to JavaScript.",
    takes: "about one and a half minutes",
    packages: 150,
};

const TRUNK: CargoTool = CargoTool {
    package: "trunk",
    program: "trunk",
    version: "0.21.14",
    arguments: &["--locked", "--no-default-features", "--features", "rustls"],
    why: "it builds the page.",
    takes: "about four minutes",
    packages: 343,
};

/// The target that the page is compiled for.
pub const WASM: &str = "wasm32-unknown-unknown";

/// Tools that building the page needs: folders for the front of PATH.
pub fn for_page() -> Outcome<Vec<PathBuf>> {
    rust_target()?;
    install::cargo_tools(&[&WASM_BINDGEN, &TRUNK])
}

/// Tools that the package needs: folders for the front of PATH.
pub fn for_package() -> Outcome<Vec<PathBuf>> {
    rust_target()?;
    install::cargo_tools(&[&WASM_BINDGEN])
}

/// All that the tests need.
pub struct ForTest {
    pub browser: Browser,
    pub node_modules: PathBuf,
}

/// Installs what the tests need, as far as it can. What is missing is said at once; the rest is installed all the same.
pub fn for_test() -> Outcome<ForTest> {
    let browser = said(browser::ready());
    let node_modules = said(node::kit());
    rust_component("fmt", "rustfmt")?;
    rust_component("clippy", "clippy")?;
    for_page()?;
    Ok(ForTest { browser: browser?, node_modules: node_modules? })
}

fn said<T>(outcome: Outcome<T>) -> Outcome<T> {
    if let Err(reason) = &outcome {
        println!("{reason}");
    }
    outcome
}

fn rust_target() -> Outcome {
    let print = ["--print", "target-libdir", "--target", WASM];
    let library = run::answer(Command::new("rustc").args(print).current_dir(place::root()))?;
    if PathBuf::from(library.trim()).is_dir() {
        return Ok(());
    }
    println!("Installing the Rust target {WASM}: the page is compiled for it. Once, some seconds.");
    rustup(&["target", "add", WASM], &format!("The Rust target {WASM} is missing"))
}

/// The source of Rust's standard library, which the page that ships is built with.
pub fn rust_source() -> Outcome {
    let sysroot = run::answer(Command::new("rustc").args(["--print", "sysroot"]).current_dir(place::root()))?;
    if PathBuf::from(sysroot.trim()).join("lib/rustlib/src/rust/library/std").is_dir() {
        return Ok(());
    }
    println!("Installing the Rust component rust-src: the page that ships is built with it. Once, some seconds.");
    rustup(&["component", "add", "rust-src"], "The source of Rust's standard library is missing")
}

fn rust_component(command: &str, component: &str) -> Outcome {
    if run::answer(run::cargo().args([command, "--version"])).is_ok() {
        return Ok(());
    }
    println!("Installing the Rust component {component}: the tests call it. Once, some seconds.");
    rustup(&["component", "add", component], &format!("The Rust component {component} is missing"))
}

fn rustup(arguments: &[&str], missing: &str) -> Outcome {
    if place::in_path(&["rustup"]).is_none() {
        return Err(format!("{missing} and there is no rustup to add it: install rustup, then run this again."));
    }
    let _only_us = install::lock()?;
    install::quietly(Command::new("rustup").args(arguments).current_dir(place::root()), "rustup")
}
