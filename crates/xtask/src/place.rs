//! Where things are: the repository, the page, the per-user cache.

use crate::Outcome;
use std::env;
use std::path::{Path, PathBuf};

/// The root of the repository.
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").components().fold(PathBuf::new(), |mut path, part| {
        match part {
            std::path::Component::ParentDir => {
                path.pop();
            }
            part => path.push(part),
        }
        path
    })
}

/// A path inside the repository.
pub fn at(path: &str) -> PathBuf {
    root().join(path)
}

/// The page as it ships.
pub fn dist() -> PathBuf {
    at("target/dist")
}

/// Tools that this project installed for this person: one folder for each tool and version.
pub fn tools() -> Outcome<PathBuf> {
    Ok(cache()?.join("tools"))
}

/// The per-user cache: `$XDG_CACHE_HOME/airtally`, else `~/.cache/airtally`.
pub fn cache() -> Outcome<PathBuf> {
    let base = match env::var_os("XDG_CACHE_HOME").map(PathBuf::from).filter(|path| path.is_absolute()) {
        Some(path) => path,
        None => {
            env::home_dir().ok_or("There is no home folder: set XDG_CACHE_HOME to a folder for tools.")?.join(".cache")
        }
    };
    Ok(base.join("airtally"))
}

/// The first program of these names that PATH knows.
pub fn in_path(names: &[&str]) -> Option<PathBuf> {
    let path = env::var_os("PATH")?;
    let folders: Vec<PathBuf> = env::split_paths(&path).collect();
    names.iter().find_map(|name| folders.iter().map(|folder| folder.join(name)).find(|file| file.is_file()))
}

/// PATH with these folders in front.
pub fn path_with(front: &[PathBuf]) -> Outcome<std::ffi::OsString> {
    let rest = env::var_os("PATH").unwrap_or_default();
    let folders = front.iter().cloned().chain(env::split_paths(&rest));
    env::join_paths(folders).map_err(|reason| format!("PATH cannot be extended: {reason}"))
}
