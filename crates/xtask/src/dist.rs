//! The page as it ships, and Trunk with its tools in PATH.

use crate::lean::lean;
use crate::{Outcome, embed, files, node, place, run, tools};
use std::path::PathBuf;
use std::process::Command;

/// Builds the page as it ships into target/dist, and beside it what other pages embed.
pub fn dist() -> Outcome {
    node::kit()?;
    let mut trunk = trunk_with(&tools::for_page()?)?;
    trunk.args(["build", "--release"]).arg("--dist").arg(place::dist());
    trunk.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS", nameless_paths()?);
    lean(&mut trunk)?;
    fetch(lean)?;
    run::live(&mut trunk)?;
    files::remove(&place::dist().join(".trunk-lock"))?;
    embed::embed()
}

/// Brings the crates a build of the page needs, since Trunk asks no registry (`offline` in Trunk.toml). Where they are all
/// there it needs no network.
pub fn fetch(built: impl Fn(&mut Command) -> Outcome) -> Outcome {
    let mut cargo = run::cargo();
    cargo.args(["fetch", "--quiet", "--locked", "--target", tools::WASM]);
    built(&mut cargo)?;
    run::live(&mut cargo)
}

/// Runs the pinned Trunk with these arguments.
pub fn trunk(arguments: &[String]) -> Outcome {
    fetch(|_| Ok(()))?;
    run::live(trunk_with(&tools::for_page()?)?.args(arguments))
}

/// Trunk, ready for its arguments.
pub fn trunk_with(folders: &[PathBuf]) -> Outcome<Command> {
    let mut trunk = Command::new("trunk");
    trunk.current_dir(place::root()).env("PATH", place::path_with(folders)?).env("TRUNK_SKIP_VERSION_CHECK", "true");
    // Trunk reads NO_COLOR as true or false and stops at any other value.
    if std::env::var_os("NO_COLOR").is_some() {
        trunk.env("NO_COLOR", "true");
    }
    Ok(trunk)
}

/// Flags that keep the paths of this machine out of the shipped file: they would tell a stranger who built it,
/// and the same source would give other bytes in another folder.
pub fn nameless_paths() -> Outcome<String> {
    let home = std::env::home_dir().ok_or("There is no home folder.")?;
    let cargo = std::env::var_os("CARGO_HOME").map(PathBuf::from).unwrap_or_else(|| home.join(".cargo"));
    let sysroot = run::answer(Command::new("rustc").args(["--print", "sysroot"]).current_dir(place::root()))?;
    let names = [(cargo, "cargo"), (PathBuf::from(sysroot.trim()), "rust"), (place::root(), "airtally")];
    let flags = names.map(|(path, name)| format!("--remap-path-prefix={}={name}", path.display()));
    Ok(flags.join(" "))
}
