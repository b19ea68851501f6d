//! The book of the steps: their sentences in one text file, one chapter a step.
//!
//! The text is no part of the program. A page loads it after its first paint, so that nobody waits for it.

use airtally::id::CheckRule;
use airtally::steps::StepRule;
use std::ops::Range;

/// The sentences of every step, in one language. The head of `text/steps.txt` says how they are written down.
#[derive(Debug)]
pub struct StepBook {
    text: String,
    chapters: [Range<usize>; StepRule::ALL.len()],
    checks: [Range<usize>; CheckRule::ALL.len()],
}

impl StepBook {
    /// Opens a book. A chapter that is missing, or whose step is not known, is left out.
    ///
    /// ```
    /// use airtally::steps::StepRule;
    /// use airtally_words::step::StepBook;
    /// let book = StepBook::open("= hang-unit\n- Hang the unit\n: On rubber.\n> the unit hangs\n".to_owned());
    /// assert_eq!(book.rule(StepRule::HangUnit), "On rubber.");
    /// assert_eq!(book.rule(StepRule::FixManifolds), "");
    /// ```
    pub fn open(text: String) -> Self {
        let mut chapters = [const { 0..0 }; StepRule::ALL.len()];
        let mut checks = [const { 0..0 }; CheckRule::ALL.len()];
        let mut at = 0;
        for chapter in text.split(HEAD) {
            let id = chapter.lines().next().unwrap_or_default().trim();
            let place = match id.strip_prefix(CHECK) {
                Some(id) => CheckRule::ALL.iter().position(|rule| rule.id() == id).map(|at| &mut checks[at]),
                None => StepRule::ALL.iter().position(|rule| rule.id() == id).map(|at| &mut chapters[at]),
            };
            if let Some(place) = place {
                *place = at..at + chapter.len();
            }
            at += chapter.len() + HEAD.len_utf8();
        }
        Self { text, chapters, checks }
    }

    /// The book as it is in the repository, for tests and other programs.
    #[cfg(not(target_family = "wasm"))]
    pub fn english() -> Self {
        Self::open(include_str!("../../text/steps.txt").to_owned())
    }

    /// The rule of thumb of a step.
    pub fn rule(&self, rule: StepRule) -> &str {
        self.lines(rule, ':').next().unwrap_or_default()
    }

    /// The caution of a step; `None` where there is no particular danger.
    pub fn caution(&self, rule: StepRule) -> Option<&str> {
        self.lines(rule, '!').next()
    }

    /// The lines of a chapter that begin with a mark.
    pub(super) fn lines(&self, rule: StepRule, mark: char) -> impl Iterator<Item = &str> {
        self.marked(&self.chapters[rule as usize], mark)
    }

    /// The lines of a check's chapter that begin with a mark.
    pub(super) fn check_lines(&self, rule: CheckRule, mark: char) -> impl Iterator<Item = &str> {
        self.marked(&self.checks[rule as usize], mark)
    }

    fn marked(&self, chapter: &Range<usize>, mark: char) -> impl Iterator<Item = &str> {
        let chapter = self.text.get(chapter.clone()).unwrap_or_default();
        chapter.lines().filter_map(move |line| line.strip_prefix(mark)).map(str::trim)
    }
}

/// Begins a chapter. No sentence has it.
const HEAD: char = '=';
/// Begins the head of a check's chapter.
const CHECK: &str = "check ";
