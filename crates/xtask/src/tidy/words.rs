//! Lengths of files, and words that do not go in.

use super::{Findings, Source};

const LONG: usize = 300;
const TOO_LONG: usize = 400;
const CODE: [&str; 6] = ["rs", "mjs", "js", "css", "html", "sh"];

/// A word, where it must not stand, and why.
struct Forbidden {
    word: &'static str,
    within: &'static [&'static str],
    why: &'static str,
}

/// In pieces, so that this file does not hold them.
const FORBIDDEN: [Forbidden; 10] = [
    Forbidden { word: concat!("TO", "DO"), within: &[], why: "do it, or write it down elsewhere" },
    Forbidden { word: concat!("FIX", "ME"), within: &[], why: "mend it, or write it down elsewhere" },
    Forbidden { word: concat!("/wo", "rk/"), within: &[], why: "a path of one machine" },
    Forbidden { word: concat!("/ro", "ot/"), within: &[], why: "a path of one machine" },
    Forbidden { word: concat!("/ho", "me/"), within: &[], why: "a path of one machine" },
    Forbidden { word: concat!("/t", "mp/"), within: &[], why: "a path of one machine" },
    Forbidden { word: concat!("inner_", "html"), within: &["rs"], why: "nothing typed becomes markup" },
    Forbidden { word: concat!("from_html_", "unchecked"), within: &["rs"], why: "nothing typed becomes markup" },
    Forbidden { word: concat!("set_inner_", "html"), within: &["rs"], why: "nothing typed becomes markup" },
    Forbidden { word: concat!("\"reso", "lved\":"), within: &["json"], why: "a lock file names no registry host" },
];

pub fn check(sources: &[Source], findings: &mut Findings) {
    for source in sources {
        length(source, findings);
        for forbidden in FORBIDDEN.iter().filter(|forbidden| forbidden.within.is_empty() || source.is(forbidden.within))
        {
            if let Some(line) = line_of(&source.text, forbidden.word) {
                findings.fault(format!("{}:{line}: “{}”: {}", source.path, forbidden.word, forbidden.why));
            }
        }
        if source.path.starts_with("crates/airtally-app/") {
            inline_style(source, findings);
        }
    }
    pinned_alike(sources, findings);
}

fn length(source: &Source, findings: &mut Findings) {
    let lines = source.text.lines().count();
    if !source.is(&CODE) || lines <= LONG {
        return;
    }
    if lines > TOO_LONG {
        findings.fault(format!("{}: {lines} lines; split it before {TOO_LONG}", source.path));
    } else {
        findings.notes.push(format!("{}: {lines} lines; is it one thing?", source.path));
    }
}

/// The content security policy of the release refuses inline styles: they would work here and not there.
fn inline_style(source: &Source, findings: &mut Findings) {
    for form in [" style=\"", " style={"] {
        if let Some(line) = line_of(&source.text, form) {
            findings.fault(format!("{}:{line}: an inline style; use a class or an SVG attribute", source.path));
        }
    }
}

/// wasm-bindgen and its tool must be the same version in all three places that name it.
fn pinned_alike(sources: &[Source], findings: &mut Findings) {
    let version = crate::tools::WASM_BINDGEN.version;
    let places = [
        ("Cargo.toml", format!("wasm-bindgen = \"={version}\"")),
        ("Trunk.toml", format!("wasm_bindgen = \"{version}\"")),
    ];
    for (path, line) in places {
        let named = sources.iter().any(|source| source.path == path && source.text.contains(&line));
        if !named {
            findings.fault(format!("{path}: must say {line}, as crates/xtask/src/tools.rs does"));
        }
    }
}

fn line_of(text: &str, word: &str) -> Option<usize> {
    text.lines().position(|line| line.contains(word)).map(|index| index + 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn faults(path: &str, text: String) -> Vec<String> {
        let mut findings = Findings::default();
        let version = crate::tools::WASM_BINDGEN.version;
        let pins = [
            Source { path: "Cargo.toml".to_owned(), text: format!("wasm-bindgen = \"={version}\"") },
            Source { path: "Trunk.toml".to_owned(), text: format!("wasm_bindgen = \"{version}\"") },
            Source { path: path.to_owned(), text },
        ];
        check(&pins, &mut findings);
        findings.faults
    }

    #[test]
    fn forbidden_words_are_found_with_their_line() {
        let found = faults("tests/lib.rs", format!("//! Fine.\n// {}: later\n", concat!("TO", "DO")));
        assert!(found.len() == 1 && found[0].starts_with("tests/lib.rs:2:"), "{found:?}");
    }

    #[test]
    fn long_files_are_found_and_long_tables_are_not() {
        assert_eq!(faults("crates/a/src/lib.rs", "x\n".repeat(TOO_LONG + 1)).len(), 1);
        assert_eq!(faults("crates/a/src/lib.rs", "x\n".repeat(TOO_LONG)).len(), 0);
        assert_eq!(faults("tests/cases/air.toml", "x\n".repeat(TOO_LONG + 1)).len(), 0);
    }

    #[test]
    fn inline_styles_are_found_in_the_page_only() {
        assert_eq!(faults("crates/airtally-app/src/ui/bar.rs", "<i style=\"width: 3px\" />".to_owned()).len(), 1);
        assert_eq!(faults("crates/airtally-words/src/svg.rs", "<i style=\"width: 3px\" />".to_owned()).len(), 0);
    }

    #[test]
    fn a_pin_that_differs_is_found() {
        let mut findings = Findings::default();
        check(&[], &mut findings);
        assert_eq!(findings.faults.len(), 2);
    }
}
