//! Walking folders and reading files, in a fixed order, with errors that name the file.

use crate::Outcome;
use std::fs;
use std::path::{Path, PathBuf};

/// Every file under a folder, sorted, leaving out what `skip` names.
pub fn under(folder: &Path, skip: &dyn Fn(&Path) -> bool) -> Outcome<Vec<PathBuf>> {
    let mut found = Vec::new();
    for path in children(folder)? {
        if skip(&path) {
            continue;
        }
        if path.is_dir() {
            found.extend(under(&path, skip)?);
        } else {
            found.push(path);
        }
    }
    Ok(found)
}

/// What lies directly in a folder, sorted.
pub fn children(folder: &Path) -> Outcome<Vec<PathBuf>> {
    let entries = fs::read_dir(folder).map_err(|reason| about(folder, "cannot be read", &reason))?;
    let mut paths: Vec<PathBuf> = entries.filter_map(|entry| entry.ok().map(|entry| entry.path())).collect();
    paths.sort();
    Ok(paths)
}

/// The text of a file.
pub fn text(path: &Path) -> Outcome<String> {
    fs::read_to_string(path).map_err(|reason| about(path, "cannot be read", &reason))
}

/// The bytes of a file.
pub fn bytes(path: &Path) -> Outcome<Vec<u8>> {
    fs::read(path).map_err(|reason| about(path, "cannot be read", &reason))
}

/// Writes a file.
pub fn write(path: &Path, content: impl AsRef<[u8]>) -> Outcome {
    fs::write(path, content).map_err(|reason| about(path, "cannot be written", &reason))
}

/// Makes a folder and those above it.
pub fn make(folder: &Path) -> Outcome {
    fs::create_dir_all(folder).map_err(|reason| about(folder, "cannot be made", &reason))
}

/// Renames a file or folder.
pub fn rename(from: &Path, to: &Path) -> Outcome {
    fs::rename(from, to).map_err(|reason| about(from, "cannot be renamed", &reason))
}

/// Removes a file or a folder with all it holds; nothing there is fine.
pub fn remove(path: &Path) -> Outcome {
    let removed = if path.is_dir() { fs::remove_dir_all(path) } else { fs::remove_file(path) };
    match removed {
        Err(reason) if reason.kind() != std::io::ErrorKind::NotFound => Err(about(path, "cannot be removed", &reason)),
        _ => Ok(()),
    }
}

/// The last part of a path as text.
pub fn name(path: &Path) -> String {
    path.file_name().unwrap_or_default().to_string_lossy().into_owned()
}

/// A short fingerprint of some bytes (64-bit FNV-1a): tells versions of a file apart, proves nothing to an attacker.
pub fn fingerprint(bytes: &[u8]) -> String {
    let mut hash: u64 = 0xcbf2_9ce4_8422_2325;
    for byte in bytes {
        hash = (hash ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3);
    }
    format!("{hash:016x}")
}

fn about(path: &Path, what: &str, reason: &std::io::Error) -> String {
    format!("{} {what}: {reason}.", path.display())
}

#[cfg(test)]
mod tests {
    use super::fingerprint;

    /// Source: test vectors of the FNV reference pages (`""`, `"a"`, `"foobar"` under 64-bit FNV-1a).
    #[test]
    fn fingerprints_agree_with_the_published_vectors() {
        assert_eq!(fingerprint(b""), "cbf29ce484222325");
        assert_eq!(fingerprint(b"a"), "af63dc4c8601ec8c");
        assert_eq!(fingerprint(b"foobar"), "85944171f73967e8");
    }
}
