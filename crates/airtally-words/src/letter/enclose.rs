//! The letter and its house in the page that is one file.

use super::named;
use super::paper::escape;

/// What goes into the file.
pub struct Letter<'a> {
    /// Name of the house.
    pub name: &'a str,
    /// The report as markup, from [`super::letter`].
    pub report: &'a str,
    /// The house as the text of its file.
    pub house: &'a str,
    /// Tells this letter from others: digits.
    pub id: &'a str,
}

/// The one file with this letter in it, in place of what was there before. `None` when it has no place for one.
///
/// ```
/// use airtally_words::letter::{Letter, enclose};
/// let shell = "<title>a</title><div id=\"page\" data-alone=\"\">b</div><p id=\"trouble\"></p>\
///     <script type=\"application/json\" id=\"sent\" data-id=\"\"></script>";
/// let letter = Letter { name: "<Ash>", report: "<p>c</p>", house: "{\"name\":\"</script>\"}", id: "7" };
/// assert_eq!(
///     enclose(shell, &letter).unwrap(),
///     "<title>&lt;Ash&gt;</title><div id=\"page\" data-alone=\"\"><p>c</p></div><p id=\"trouble\"></p>\
///     <script type=\"application/json\" id=\"sent\" data-id=\"7\">{\"name\":\"\\u003c/script>\"}</script>"
/// );
/// assert_eq!(enclose("<title>a</title>", &letter), None);
/// ```
pub fn enclose(shell: &str, letter: &Letter) -> Option<String> {
    let mut title = String::new();
    escape(named(letter.name), &mut title);
    let shell = replaced(shell, "<title>", "</title>", &title)?;
    let shell = replaced(&shell, " data-alone=\"\">", "</div><p id=\"trouble\"", letter.report)?;
    // Without this sign the text of a house can neither end its element nor begin another one, and says the same.
    let house = [letter.id, "\">", &letter.house.replace('<', "\\u003c")].concat();
    replaced(&shell, OPENS, CLOSES, &house)
}

/// What the house of a letter stands between.
const OPENS: &str = " id=\"sent\" data-id=\"";
const CLOSES: &str = "</script>";

/// The text of the house in a letter; `None` where the text is no letter.
///
/// ```
/// use airtally_words::letter::enclosed;
/// let sent = "<script type=\"application/json\" id=\"sent\" data-id=\"7\">{\"name\":\"Ash\"}</script><script>f()</script>";
/// assert_eq!(enclosed(sent), Some("{\"name\":\"Ash\"}"));
/// assert_eq!(enclosed("{\"name\":\"Ash\"}"), None);
/// ```
pub fn enclosed(letter: &str) -> Option<&str> {
    let (_, rest) = letter.split_once(OPENS)?;
    let (_, house) = rest.split_once("\">")?;
    house.split_once(CLOSES).map(|(house, _)| house)
}

/// A text with other words between two marks, the first that are found.
fn replaced(text: &str, opens: &str, closes: &str, words: &str) -> Option<String> {
    let from = text.find(opens)? + opens.len();
    let to = from + text.get(from..)?.find(closes)?;
    Some([text.get(..from)?, words, text.get(to..)?].concat())
}
