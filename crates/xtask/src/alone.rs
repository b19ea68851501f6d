//! The page in one file, made of the page as it ships: it opens from a folder, from a stick, from a mail. Program and words are
//! packed in it, style and script stand in it under a policy that knows them by their hashes and lets nothing else run.

use crate::finish::{between_removed, compact};
use crate::{Outcome, files, node, offline, place, run};
use std::path::{Path, PathBuf};
use std::process::Command;

/// Its name beside the page, which never changes: the page sends houses in it.
pub const FILE: &str = "airtally.html";
/// Most bytes of it as it lies in a mail.
pub const BUDGET: u64 = 450_000;

/// Nothing from anywhere; `blob:` is what lies in the file itself.
const POLICY: &str = "default-src 'none'; script-src '{script}' 'wasm-unsafe-eval'; style-src '{style}'; img-src data:; \
    connect-src blob:; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types airtally";

/// Smaller, as letters that every mail lets through: pairs of 91 for 13 bits, 8 % shorter than base64. `alone.js` reads them.
/// How many bytes there are stands in front, since the last pair may hold more. Zopfli packs 5 % tighter than zlib.
const PACK: &str = "
const { readFileSync } = require('node:fs');
const [kit, ...files] = process.argv.slice(1);
const { deflate } = require(kit);
const alphabet = [...Array(94).keys()].map((at) => String.fromCharCode(at + 33)).filter((letter) => !'\\x22&<'.includes(letter));
const packed = files.map((file) => new Promise((done, failed) => {
  deflate(readFileSync(file), { numiterations: 5 }, (error, bytes) => (error ? failed(error) : done(bytes)));
}));
Promise.all(packed).then((all) => all.map(letters).forEach((text) => console.log(text)));
function letters(bytes) {
  let [held, bits, letters] = [0, 0, bytes.length + ' '];
  const pair = () => { letters += alphabet[(held & 8191) % 91] + alphabet[Math.floor((held & 8191) / 91)]; held >>= 13; bits -= 13; };
  for (const byte of bytes) {
    held |= byte << bits;
    if ((bits += 8) >= 13) pair();
  }
  if (bits > 0) pair();
  return letters;
}";

/// What the page is made of: its markup, finished but for its policy, and names of files in its folder.
pub struct Parts<'a> {
    pub page: &'a str,
    pub program: &'a str,
    pub book: &'a str,
    pub styles: &'a str,
}

/// Writes the one file into the folder of the finished page.
pub fn alone(folder: &Path, parts: &Parts) -> Outcome {
    let bench = place::at("target/alone");
    files::remove(&bench)?;
    files::make(&bench)?;
    let script = joined(folder, &bench)?;
    let letter = compact(&files::text(&place::at("www/alone/letter.css"))?);
    let styles = [files::text(&folder.join(parts.styles))?, letter].concat();
    let style = bench.join("page.css");
    files::write(&style, &styles)?;
    let hashes = offline::hashes(&[&script, &style])?;
    let policy = POLICY.replace("{script}", &hashes[0]).replace("{style}", &hashes[1]);
    let packed = packed(&[folder.join(parts.program), folder.join(parts.book)])?;
    let script = files::text(&script)?;
    let content = Content { policy: &policy, styles: &styles, script: &script, program: &packed[0], book: &packed[1] };
    let page = swapped(parts.page, &places(parts.book), " data-alone=\"\">")?;
    files::write(&folder.join(FILE), content.within(&page)?)
}

/// Where the page says what lies beside it: in the one file nothing does.
fn places(book: &str) -> String {
    format!(" data-book=\"./{book}\" data-offline=\"\" data-shell=\"./{FILE}\">")
}

/// The loader and all that it imports as one plain script.
fn joined(folder: &Path, bench: &Path) -> Outcome<PathBuf> {
    for path in files::children(folder)? {
        let name = files::name(&path);
        if name.ends_with(".js") && name != offline::WORKER {
            files::write(&bench.join(name), files::bytes(&path)?)?;
        }
    }
    let (entry, script) = (bench.join("alone.js"), bench.join("joined.js"));
    files::write(&entry, files::bytes(&place::at("www/alone/alone.js"))?)?;
    let mut esbuild = Command::new("node");
    esbuild.arg(node::kit()?.join("esbuild/bin/esbuild")).arg(&entry).arg(format!("--outfile={}", script.display()));
    esbuild.args(["--bundle", "--format=iife", "--minify", "--target=es2022", "--log-level=error"]);
    // Never asked for there.
    esbuild.arg("--external:./link-*.js");
    run::answer(&mut esbuild)?;
    // No line end before or after: the hash is of what stands between the tags.
    files::write(&script, files::text(&script)?.trim())?;
    Ok(script)
}

fn packed(paths: &[PathBuf; 2]) -> Outcome<Vec<String>> {
    let kit = node::kit()?.join("@gfx/zopfli");
    let said = run::answer(Command::new("node").args(["-e", PACK, "--"]).arg(kit).args(paths))?;
    let packed: Vec<String> = said.lines().map(str::to_owned).collect();
    if packed.len() == paths.len() { Ok(packed) } else { Err("Node packed strangely.".to_owned()) }
}

struct Content<'a> {
    policy: &'a str,
    styles: &'a str,
    script: &'a str,
    program: &'a str,
    book: &'a str,
}

impl Content<'_> {
    /// The page with everything in it and nothing to load.
    fn within(&self, page: &str) -> Outcome<String> {
        if ["</style", "<!--"].iter().any(|end| self.styles.contains(end))
            || ["</script", "<!--"].iter().any(|end| self.script.contains(end))
        {
            return Err("A style or script would end before its end.".to_owned());
        }
        let page = between_removed(&between_removed(page, "<link", ">"), "<script", "</script>");
        let head = format!(
            "<meta charset=\"utf-8\"><meta http-equiv=\"Content-Security-Policy\" content=\"{}\">\
             <link rel=\"icon\" href=\"data:,\"><style>{}</style>",
            self.policy, self.styles
        );
        let packed = |id, packed| format!("<script type=\"text/plain\" id=\"{id}\">{packed}</script>");
        let end = [
            "<script type=\"application/json\" id=\"sent\" data-id=\"\"></script>",
            &packed("program", self.program),
            &packed("book", self.book),
            "<script>",
            self.script,
            "</script></body>",
        ];
        let page = swapped(&page, "<meta charset=\"utf-8\">", &head)?;
        swapped(&page, "</body>", &end.concat())
    }
}

fn swapped(page: &str, old: &str, new: &str) -> Outcome<String> {
    match page.contains(old) {
        true => Ok(page.replacen(old, new, 1)),
        false => Err(format!("index.html has no {old}: the page cannot be one file.")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const PAGE: &str = "<head><meta charset=\"utf-8\"><link rel=\"manifest\" href=\"m\"><script type=\"module\" src=\"s\"></script></head>\
        <body><p>a</p></body>";

    fn content<'a>(styles: &'a str, script: &'a str) -> Content<'a> {
        Content { policy: "p", styles, script, program: "cA==", book: "Yg==" }
    }

    #[test]
    fn nothing_is_left_to_load() {
        let page = content("a{}", "f()").within(PAGE).unwrap_or_default();
        assert!(!page.contains("src=") && !page.contains("href=\"m\""), "{page}");
        assert!(page.ends_with("<script>f()</script></body>"), "{page}");
        assert!(page.find("Content-Security-Policy") < page.find("<style>"), "{page}");
    }

    #[test]
    fn what_would_end_before_its_end_is_refused() {
        assert!(content("a{}</style>", "f()").within(PAGE).is_err());
        assert!(content("a{}", "\"</script>\"").within(PAGE).is_err());
        assert!(content("a{}", "f()").within("<p>").is_err());
    }

    #[test]
    fn the_page_that_ships_has_the_places() {
        let page = files::text(&place::at("www/index.html")).unwrap_or_default();
        assert!(page.contains(&places("book.txt")));
        assert!(page.contains("</div><p id=\"trouble\""));
    }
}
