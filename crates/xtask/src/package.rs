//! The package for other pages and for Node, in target/airtally-js: the calculation as wasm, its glue, and the
//! hand-written scripts, types and papers of crates/airtally-js/js.

use crate::lean::lean;
use crate::tools::{self, ForTest, WASM};
use crate::{Outcome, dist, files, finish, journeys, node, place, run};
use std::path::{Path, PathBuf};
use std::process::Command;

/// Most bytes of the package's wasm after Brotli.
pub const BUDGET: u64 = 80_000;
const CRATE: &str = "airtally-js";
const GLUE: &str = "airtally.js";
/// The program.
pub const PROGRAM: &str = "airtally_bg.wasm";

/// The same as a script, for `inline.js`: gzip, which every browser and Node unpack by themselves, in base64.
const PACKED: &str = "packed.js";
const PACK: &str = "
const { readFileSync } = require('node:fs');
const [kit, program] = process.argv.slice(1);
require(kit).gzip(readFileSync(program), { numiterations: 5 }, (error, bytes) => {
  if (error) throw error;
  console.log('export default \"' + Buffer.from(bytes).toString('base64') + '\";');
});";

/// Where the package is made.
pub fn folder() -> PathBuf {
    place::at("target/airtally-js")
}

/// Makes the package.
pub fn package() -> Outcome {
    node::kit()?;
    let tools = tools::for_package()?;
    compile()?;
    let folder = folder();
    files::remove(&folder)?;
    files::make(&folder)?;
    bind(&tools, &folder)?;
    finish::make_smaller(&folder.join(PROGRAM))?;
    finish::make_script_smaller(&folder.join(GLUE))?;
    finish::shorten_imports(&folder.join(PROGRAM), &folder.join(GLUE))?;
    copy(&place::at("crates/airtally-js/js"), &folder)?;
    pack(&folder.join(PROGRAM), &folder.join(PACKED))?;
    files::write(&folder.join("LICENSE"), files::bytes(&place::at("LICENSE"))?)
}

/// The checks of tests/package on what was made.
pub fn checks(tools: &ForTest) -> Command {
    let mut command = journeys::command(tools, "package.mjs");
    command.arg(folder()).arg(BUDGET.to_string());
    command
}

/// Makes the package and checks it.
pub fn checked() -> Outcome {
    package()?;
    let tools = tools::for_test()?;
    run::live(&mut checks(&tools))
}

fn compile() -> Outcome {
    let mut cargo = run::cargo();
    cargo.args(["build", "--release", "--locked", "--package", CRATE, "--lib", "--target", WASM]);
    cargo.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS", dist::nameless_paths()?);
    // Who asks once in a while waits a few microseconds more; who loads it loads a twentieth less.
    cargo.env("CARGO_PROFILE_RELEASE_OPT_LEVEL", "z");
    lean(&mut cargo)?;
    run::live(&mut cargo)
}

fn bind(tools: &[PathBuf], folder: &Path) -> Outcome {
    let built = place::at("target").join(WASM).join("release/airtally_js.wasm");
    let mut command = Command::new("wasm-bindgen");
    command.env("PATH", place::path_with(tools)?).arg(built).arg("--out-dir").arg(folder);
    // Our scripts say where the program is: a bundler that read of it in the glue too would carry it where nobody asks for it.
    command.args(["--target", "web", "--no-typescript", "--out-name", "airtally", "--omit-default-module-path"]);
    run::answer(&mut command).map(drop)
}

fn pack(program: &Path, script: &Path) -> Outcome {
    let kit = node::kit()?.join("@gfx/zopfli");
    files::write(script, run::answer(Command::new("node").args(["-e", PACK, "--"]).arg(kit).arg(program))?)
}

fn copy(from: &Path, to: &Path) -> Outcome {
    for path in files::under(from, &|_| false)? {
        let inside = path.strip_prefix(from).unwrap_or(&path);
        let copied = to.join(inside);
        files::make(copied.parent().unwrap_or(to))?;
        files::write(&copied, files::bytes(&path)?)?;
    }
    Ok(())
}
