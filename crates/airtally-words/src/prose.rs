//! What every text must be like.

/// Longest sentence that is read at work.
const LONGEST: usize = 220;

/// Something to read, without gaps, leftovers of a template or dangling spaces.
pub fn is_clean(text: &str) {
    assert!(!text.trim().is_empty(), "empty");
    assert_eq!(text, text.trim(), "space around “{text}”");
    assert!(!text.contains("  "), "two spaces in “{text}”");
    assert!(!text.contains(['{', '}']), "a template in “{text}”");
    assert!(
        !text.split_whitespace().any(|word| word == "NaN" || word.ends_with("inf") && !word.ends_with("_inf")),
        "no number in “{text}”"
    );
    assert!(text.chars().count() < LONGEST, "too long: “{text}”");
}

/// A sentence or several: begins with a capital, a digit or a quotation, ends with a stop.
pub fn is_sentence(text: &str) {
    is_clean(text);
    let first = text.chars().next().unwrap_or(' ');
    assert!(first.is_uppercase() || first.is_ascii_digit() || first == '“', "the beginning of “{text}”");
    assert!(text.ends_with(['.', '?']), "the end of “{text}”");
}

/// A label: no stop at its end.
pub fn is_label(text: &str) {
    is_clean(text);
    assert!(!text.ends_with(['.', ',', ':', ';']), "the end of “{text}”");
}
