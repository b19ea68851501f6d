//! The reference libraries, asked again: what is kept of their answers in tests/reference must still be what they say.

use crate::{Outcome, files, install, place, run};
use std::path::{Path, PathBuf};
use std::process::Command;

const FOLDER: &str = "tests/reference";

/// Compares the kept answers with fresh ones. Where the libraries cannot be had the kept ones stand, and it says so.
pub fn ask() -> Outcome {
    match packages() {
        Ok(packages) => run::live(python(&packages).arg("answers.py").arg("answers.jsonl")),
        Err(reason) => {
            println!("The answers of the reference libraries stand as they are kept: {reason}");
            Ok(())
        }
    }
}

/// The solver's peers on the same networks: what they print. For people to read.
pub fn peers() -> Outcome<String> {
    match packages() {
        Ok(packages) => Ok(run::printed(python(&packages).arg("pace.py"))?.text),
        Err(reason) => {
            println!("The peers cannot be timed here: {reason}");
            Ok(String::new())
        }
    }
}

/// Python with these packages and no others of its user.
fn python(packages: &Path) -> Command {
    let mut python = Command::new("python3");
    python.current_dir(place::at(FOLDER)).env("PYTHONPATH", packages).env("PYTHONNOUSERSITE", "1");
    python.env("PYTHONDONTWRITEBYTECODE", "1");
    python
}

/// The folder with the packages pinned beside the questions, installed once for each list.
fn packages() -> Outcome<PathBuf> {
    let list = place::at(FOLDER).join("requirements.txt");
    let folder = place::tools()?.join(format!("reference-{}", files::fingerprint(&files::bytes(&list)?)));
    if folder.is_dir() {
        return Ok(folder);
    }
    run::answer(Command::new("python3").args(["-m", "pip", "--version"]))
        .map_err(|_| "they need Python 3.11 or newer with pip.".to_owned())?;
    let _only_us = install::lock()?;
    if folder.is_dir() {
        return Ok(folder);
    }
    println!(
        "Installing scipy, fluids, psychrolib, CoolProp and pandapipes from PyPI: the calculation is held against them. \
         Once for this user, about 500 MB, about a minute."
    );
    install::in_one_move(&folder, |partial| {
        let mut pip = Command::new("python3");
        pip.args(["-m", "pip", "install", "--quiet", "--no-input", "--disable-pip-version-check", "--prefer-binary"]);
        pip.arg("--target").arg(partial).arg("--requirement").arg(&list);
        install::quietly(&mut pip, "pip install")
    })?;
    Ok(folder)
}
