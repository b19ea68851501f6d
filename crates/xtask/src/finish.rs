//! What Trunk calls after each build (`post_build`). A release is finished here: the wasm is made smaller, the
//! styles become one file, files are named by content, and the content security policy goes in.
//!
//! Trunk would name files before the wasm is made smaller, so naming is done here and nowhere else.

use crate::alone::{self, Parts};
use crate::{Outcome, embed, files, imports, node, offline, run};
use std::env;
use std::path::{Path, PathBuf};
use std::process::Command;

const WASM: &str = "airtally-app_bg.wasm";
const SCRIPT: &str = "airtally-app.js";
const PAGE: &str = "index.html";
/// The book, loaded after the first paint.
const BOOK: &str = "book.txt";
/// Scripts that come later: where houses are kept, after the first paint, and what makes and reads links, when somebody does. Each
/// is a folder with a script of its name, which becomes one file with all that it imports.
const LATER: [&str; 2] = ["store", "link"];
/// Never renamed: old copies of the page must find it.
const LOADER: &str = "start.js";

/// Nothing but our own files; no inline script or style; the wasm may be compiled; markup is never made from text.
const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data:; \
    connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; \
    require-trusted-types-for 'script'; trusted-types airtally";

/// Finishes the staged page of a release; leaves a working build as it is.
pub fn hook() -> Outcome {
    let called = "`hook` is called by Trunk after a build; use `cargo xtask dist`.";
    let folder = env::var_os("TRUNK_STAGING_DIR").map(PathBuf::from).ok_or(called)?;
    match env::var("TRUNK_PROFILE").as_deref() {
        Ok("release") => finish(&folder),
        _ => Ok(()),
    }
}

fn finish(folder: &Path) -> Outcome {
    make_smaller(&folder.join(WASM))?;
    make_script_smaller(&folder.join(SCRIPT))?;
    shorten_imports(&folder.join(WASM), &folder.join(SCRIPT))?;
    let page = join_styles(folder, &files::text(&folder.join(PAGE))?)?;
    let page = without_remarks(&page);
    let wasm = name_by_content(folder, WASM)?;
    replace_in(&folder.join(SCRIPT), WASM, &wasm)?;
    let script = name_by_content(folder, SCRIPT)?;
    replace_in(&folder.join(LOADER), SCRIPT, &script)?;
    for name in LATER {
        let joined = join_later(folder, name)?;
        replace_in(&folder.join(LOADER), &format!("{name}/{name}.js"), &joined)?;
    }
    write_without_notes(&folder.join(BOOK))?;
    let book = name_by_content(folder, BOOK)?;
    if !page.contains(BOOK) {
        return Err(format!("{PAGE} does not name {BOOK}: the release would load no words."));
    }
    let page = page.replace(WASM, &wasm).replace(SCRIPT, &script).replace(BOOK, &book);
    let links = style_links(&page);
    let styles = links.first().map_or("", |(_, name)| name);
    alone::alone(folder, &Parts { page: &page, program: &wasm, book: &book, styles })?;
    files::write(&folder.join(PAGE), with_policy(&offline::named(&page)?)?)?;
    offline::list(folder)
}

/// Makes a program smaller and takes what browsers do not read.
pub fn make_smaller(wasm: &Path) -> Outcome {
    let tool = node::kit()?.join("binaryen/bin/wasm-opt");
    let mut command = Command::new("node");
    // The lowest kilobyte lies beyond the end of Rust's stack; hints of alignment say nothing to browsers but cost 1 kB.
    let smaller = ["-Os", "-Oz", "--low-memory-unused", "--dealign", "--strip-debug", "--strip-producers"];
    command.arg(tool).args(smaller).arg(wasm).arg("-o").arg(wasm);
    run::answer(&mut command).map(drop)
}

/// Makes a script smaller.
pub fn make_script_smaller(script: &Path) -> Outcome {
    let tool = node::kit()?.join("terser/bin/terser");
    let smaller = ["--module", "--ecma", "2020", "--compress", "passes=3,ecma=2020,unsafe_arrows=true", "--mangle"];
    let mut command = Command::new("node");
    command.arg(tool).arg(script).args(smaller).arg("--output").arg(script);
    run::answer(&mut command).map(drop)
}

/// Takes the notes for those who write the book, which begin with #.
fn write_without_notes(book: &Path) -> Outcome {
    let text = files::text(book)?;
    let kept: Vec<&str> = text.lines().filter(|line| !line.starts_with('#')).collect();
    files::write(book, kept.join("\n") + "\n")
}

/// Makes one file of a folder of scripts and gives back its name.
fn join_later(folder: &Path, name: &str) -> Outcome<String> {
    let (scripts, joined) = (folder.join(name), format!("{name}.js"));
    embed::join(&scripts.join(&joined), &folder.join(&joined))?;
    files::remove(&scripts)?;
    name_by_content(folder, &joined)
}

/// Gives what the program imports short names, in it and in its script.
pub fn shorten_imports(wasm: &Path, script: &Path) -> Outcome {
    let (program, text) = imports::shorten(&files::bytes(wasm)?, &files::text(script)?)?;
    files::write(wasm, program)?;
    files::write(script, text)
}

/// Puts all style sheets of the page into one file, in their order, and links that one.
fn join_styles(folder: &Path, page: &str) -> Outcome<String> {
    let links = style_links(page);
    let Some((first, _)) = links.first() else { return Ok(page.to_owned()) };
    let mut joined = String::new();
    for (_, name) in &links {
        let sheet = folder.join(name);
        joined.push_str(&compact(&files::text(&sheet)?));
        files::remove(&sheet)?;
    }
    files::write(&folder.join("page.css"), joined)?;
    let name = name_by_content(folder, "page.css")?;
    let first = page.find(first.as_str()).unwrap_or(0);
    let rest = links.iter().fold(page[first..].to_owned(), |text, (link, _)| text.replacen(link, "", 1));
    Ok(format!("{}<link rel=\"stylesheet\" href=\"./{name}\">{rest}", &page[..first]))
}

/// Each `<link rel="stylesheet">` of the page, whole, with the file it names.
fn style_links(page: &str) -> Vec<(String, String)> {
    let tags = page.match_indices("<link").filter_map(|(at, _)| {
        let end = page[at..].find('>')?;
        Some(&page[at..=at + end])
    });
    let sheets = tags.filter(|tag| tag.contains("rel=\"stylesheet\""));
    let named = sheets.filter_map(|tag| {
        let name = tag.split("href=\"").nth(1)?.split('"').next()?;
        Some((tag.to_owned(), name.trim_start_matches("./").to_owned()))
    });
    named.collect()
}

/// A style sheet without comments, indents, line ends, and spaces that mean nothing.
pub fn compact(sheet: &str) -> String {
    let text = between_removed(sheet, "/*", "*/");
    let lines = text.lines().map(str::trim).filter(|line| !line.is_empty());
    let line = lines.collect::<Vec<_>>().join(" ");
    [("{ ", "{"), (" {", "{"), ("} ", "}"), (" }", "}"), ("; ", ";"), (": ", ":"), (", ", ","), (";}", "}")]
        .iter()
        .fold(line, |line, (long, short)| line.replace(long, short))
}

/// The page without comments and empty lines.
fn without_remarks(page: &str) -> String {
    let text = between_removed(page, "<!--", "-->");
    text.lines().map(str::trim_end).filter(|line| !line.is_empty()).map(|line| format!("{line}\n")).collect()
}

/// A text without what stands between two marks, and without these.
pub fn between_removed(text: &str, opens: &str, closes: &str) -> String {
    let mut kept = String::new();
    let mut rest = text;
    while let Some(at) = rest.find(opens) {
        kept.push_str(&rest[..at]);
        rest = rest[at..].split_once(closes).map_or("", |(_, after)| after);
    }
    kept + rest
}

fn with_policy(page: &str) -> Outcome<String> {
    let head = "<meta charset=\"utf-8\"";
    let at = page.find(head).ok_or("index.html must begin its head with <meta charset=\"utf-8\">.")?;
    let end = at + page[at..].find('>').ok_or("The meta tag in index.html never ends.")? + 1;
    let policy = format!("<meta http-equiv=\"Content-Security-Policy\" content=\"{POLICY}\">");
    Ok(format!("{}{policy}{}", &page[..end], &page[end..]))
}

/// Renames `name.ext` to `name-<content>.ext` and gives back the new name.
fn name_by_content(folder: &Path, name: &str) -> Outcome<String> {
    let (stem, extension) = name.rsplit_once('.').ok_or("A file without an extension cannot be named by content.")?;
    let content = files::fingerprint(&files::bytes(&folder.join(name))?);
    let named = format!("{stem}-{}.{extension}", &content[..10]);
    files::rename(&folder.join(name), &folder.join(&named))?;
    Ok(named)
}

/// Replaces a name in a file, and insists that it was there.
fn replace_in(path: &Path, old: &str, new: &str) -> Outcome {
    let text = files::text(path)?;
    if !text.contains(old) {
        return Err(format!("{} does not name {old}: the release would load nothing.", files::name(path)));
    }
    files::write(path, text.replace(old, new))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn style_links_are_found_in_order() {
        let page = "<link rel=\"icon\" href=\"x\"><link rel=\"stylesheet\" href=\"./a.css\"/><link rel=\"stylesheet\" href=\"b.css\">";
        let names: Vec<String> = style_links(page).into_iter().map(|(_, name)| name).collect();
        assert_eq!(names, ["a.css", "b.css"]);
    }

    #[test]
    fn a_compact_sheet_keeps_its_rules() {
        let sheet =
            "/* why */\n.a > .c {\n  color: red; /* because */\n}\n\n.b :first-child { inset: 0 calc(1px + 2px) }";
        assert_eq!(compact(sheet), ".a > .c{color:red}.b :first-child{inset:0 calc(1px + 2px)}");
    }

    #[test]
    fn remarks_stay_at_home() {
        assert_eq!(without_remarks("<p>\n<!-- why,\nand how -->\n\n  <b>\n"), "<p>\n  <b>\n");
    }

    #[test]
    fn the_policy_comes_before_anything_it_governs() {
        let page = with_policy("<head><meta charset=\"utf-8\"><link></head>").unwrap_or_default();
        assert!(page.starts_with("<head><meta charset=\"utf-8\"><meta http-equiv=\"Content-Security-Policy\""));
        assert!(with_policy("<head></head>").is_err());
    }
}
