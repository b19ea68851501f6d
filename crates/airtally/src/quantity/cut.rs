//! Parts of a text by byte, without a panic: a cut outside the text or inside a letter gives nothing.
//!
//! Slices like `text[at..]` would bring the words of their panic, 4 kB, to every visitor of the page.

/// The text up to this byte.
pub(crate) fn before(text: &str, at: usize) -> &str {
    text.get(..at).unwrap_or_default()
}

/// The text from this byte on.
pub(crate) fn after(text: &str, at: usize) -> &str {
    text.get(at..).unwrap_or_default()
}
