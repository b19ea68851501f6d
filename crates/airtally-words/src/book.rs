//! The book: words that nobody needs at first sight, in one text file. A page loads it after its first paint, so that
//! nobody waits for it; elsewhere it is always there.

use crate::label::Label;
use airtally::formula::Formula;
use airtally::house::HouseField;
use airtally::id::CheckRule;
use airtally::parts::{Group, Part};
use airtally::pocket::{Ask, Slot};
use airtally::steps::StepRule;
use std::ops::Range;
use std::sync::OnceLock;

/// The sentences of the steps, and the names of equations and registered values. The head of `text/book.txt` says how
/// they are written down.
#[derive(Debug)]
pub struct Book {
    text: String,
    steps: [Range<usize>; StepRule::ALL.len()],
    checks: [Range<usize>; CheckRule::ALL.len()],
    fields: Vec<Range<usize>>,
    asks: Vec<Range<usize>>,
    slots: Vec<Range<usize>>,
    groups: Vec<Range<usize>>,
    parts: Vec<Range<usize>>,
    sums: Vec<Range<usize>>,
    values: Vec<Range<usize>>,
    symbols: Range<usize>,
    advice: Range<usize>,
    houses: Range<usize>,
    letter: Range<usize>,
}

/// What only the letter says, and what is said about it, in the order of the book.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Word {
    /// The file was made.
    Sent,
    /// What the report is.
    Note,
    /// Over what wants a look.
    Issues,
    /// Over the rooms.
    Rooms,
    /// What their flows are.
    Flows,
    /// The last row.
    Sum,
    /// Over the table of levels.
    AirColumns,
    /// Over the table of rooms.
    RoomColumns,
    /// Over the table of runs.
    TubeColumns,
    /// Over what is heard of them.
    HeardColumns,
}

static OPEN: OnceLock<Book> = OnceLock::new();

/// The book that was opened first; before that, on a page, none.
pub fn book() -> Option<&'static Book> {
    #[cfg(not(target_family = "wasm"))]
    let book = Some(OPEN.get_or_init(|| Book::of(include_str!("../text/book.txt").to_owned())));
    #[cfg(target_family = "wasm")]
    let book = OPEN.get();
    book
}

/// Opens the book for every later [`book`].
pub fn open(text: String) {
    OPEN.get_or_init(|| Book::of(text));
}

/// What can be done about an issue, by its place; nothing before the book has come.
pub(crate) fn advised(at: usize) -> &'static str {
    let line = book().and_then(|book| book.marked(Some(&book.advice), '-').nth(at));
    line.and_then(|line| line.split_once(" | ")).map_or("", |(_, words)| words)
}

/// What the book says about houses kept on a device, by its name there; nothing before it has come.
pub fn of_houses(name: &str) -> &'static str {
    let Some(book) = book() else { return "" };
    let named = |line: &'static str| line.strip_prefix(name)?.strip_prefix(" | ");
    book.marked(Some(&book.houses), '-').find_map(named).unwrap_or_default()
}

impl Book {
    /// Finds the chapters. One that is missing, or whose step is not known, is left out.
    ///
    /// ```
    /// use airtally::steps::StepRule;
    /// use airtally_words::book::Book;
    /// let book = Book::of("\n= hang-unit\n- Hang the unit\n: On rubber.\n> the unit hangs\n".to_owned());
    /// assert_eq!(book.rule(StepRule::HangUnit), "On rubber.");
    /// assert_eq!(book.rule(StepRule::FixManifolds), "");
    /// ```
    pub fn of(text: String) -> Self {
        let mut book = Self {
            text: String::new(),
            steps: [const { 0..0 }; StepRule::ALL.len()],
            checks: [const { 0..0 }; CheckRule::ALL.len()],
            fields: Vec::new(),
            asks: Vec::new(),
            slots: Vec::new(),
            groups: Vec::new(),
            parts: Vec::new(),
            sums: Vec::new(),
            values: Vec::new(),
            symbols: 0..0,
            advice: 0..0,
            houses: 0..0,
            letter: 0..0,
        };
        let mut at = 0;
        for chapter in text.split(HEAD) {
            let head = chapter.lines().next().unwrap_or_default();
            book.take(head, at..at + chapter.len());
            at += chapter.len() + HEAD.len();
        }
        Self { text, ..book }
    }

    fn take(&mut self, head: &str, chapter: Range<usize>) {
        match head.split_once(' ') {
            Some(("field", _)) => self.fields.push(chapter),
            Some(("ask", _)) => self.asks.push(chapter),
            Some(("slot", _)) => self.slots.push(chapter),
            Some(("group", _)) => self.groups.push(chapter),
            Some(("part", _)) => self.parts.push(chapter),
            Some(("sum", _)) => self.sums.push(chapter),
            Some(("value", _)) => self.values.push(chapter),
            Some((_, id)) => set(&mut self.checks, CheckRule::ALL.iter().position(|rule| rule.id() == id), chapter),
            None if head == "symbols" => self.symbols = chapter,
            None if head == "advice" => self.advice = chapter,
            None if head == "houses" => self.houses = chapter,
            None if head == "letter" => self.letter = chapter,
            None => set(&mut self.steps, StepRule::ALL.iter().position(|rule| rule.id() == head), chapter),
        }
    }

    /// The lines of a step that begin with a mark.
    pub(crate) fn step(&self, rule: StepRule, mark: char) -> impl Iterator<Item = &str> {
        self.marked(self.steps.get(rule as usize), mark)
    }

    /// The lines of a check that begin with a mark.
    pub(crate) fn check_lines(&self, rule: CheckRule, mark: char) -> impl Iterator<Item = &str> {
        self.marked(self.checks.get(rule as usize), mark)
    }

    /// The name and the hint of a field of what is found on site.
    pub(crate) fn found(&'static self, field: HouseField) -> Label {
        let first = HouseField::ON_SITE.first().map_or(0, |first| *first as usize);
        self.label((field as usize).checked_sub(first).and_then(|at| self.fields.get(at)))
    }

    /// The name and the hint of a field of the pocket.
    pub(crate) fn slot(&'static self, slot: Slot) -> Label {
        self.label(self.slots.get(slot as usize))
    }

    /// The name and the hint of a part, or of hours of work.
    pub fn part(&'static self, part: Part) -> Label {
        self.label(self.parts.get(part as usize))
    }

    /// What stands over a group of parts.
    pub fn group(&'static self, group: Group) -> &'static str {
        self.label(self.groups.get(group as usize)).name
    }

    fn label(&'static self, chapter: Option<&'static Range<usize>>) -> Label {
        let line = |mark| self.marked(chapter, mark).next().unwrap_or_default();
        Label { name: line('-'), hint: line(':') }
    }

    /// The line of a question of the pocket that begins with a mark.
    pub(crate) fn ask(&self, ask: Ask, mark: char) -> Option<&str> {
        self.marked(self.asks.get(ask as usize), mark).next()
    }

    /// The lines of an equation that begin with a mark.
    pub(crate) fn sum(&self, formula: Formula, mark: char) -> impl Iterator<Item = &str> {
        self.marked(self.sums.get(formula as usize), mark)
    }

    /// The line of a registered value that begins with a mark.
    pub(crate) fn value(&self, at: usize) -> Option<&str> {
        self.marked(self.values.get(at), '-').next()
    }

    /// The symbols that mean the same in most equations.
    pub(crate) fn symbols(&self) -> impl Iterator<Item = &str> {
        self.marked(Some(&self.symbols), '.')
    }

    /// A word of the letter.
    pub fn letter(&self, word: Word) -> &str {
        self.marked(Some(&self.letter), '-').nth(word as usize).unwrap_or_default()
    }

    fn marked(&self, chapter: Option<&Range<usize>>, mark: char) -> impl Iterator<Item = &str> {
        let chapter = chapter.and_then(|chapter| self.text.get(chapter.clone())).unwrap_or_default();
        chapter.lines().filter_map(move |line| line.strip_prefix(mark)).map(str::trim)
    }
}

fn set(chapters: &mut [Range<usize>], place: Option<usize>, chapter: Range<usize>) {
    if let Some(place) = place.and_then(|place| chapters.get_mut(place)) {
        *place = chapter;
    }
}

/// Begins a chapter.
const HEAD: &str = "\n= ";

#[cfg(test)]
mod tests {
    use super::*;
    use crate::issue::Advice;
    use airtally::given::GivenId;

    fn names<'a>(book: &'a Book, chapters: &'a [Range<usize>]) -> impl Iterator<Item = &'a str> {
        let head = |chapter: &Range<usize>| book.text[chapter.clone()].lines().next().unwrap();
        chapters.iter().map(move |chapter| head(chapter).split_once(' ').unwrap().1)
    }

    #[test]
    fn chapters_stand_in_the_order_of_what_they_name() {
        let book = book().unwrap();
        assert!(names(book, &book.values).eq(GivenId::all().map(|id| format!("{id:?}"))));
        let on_site = HouseField::ON_SITE.iter().map(|field| field.id());
        assert!(names(book, &book.fields).eq(on_site));
        assert!(names(book, &book.asks).eq(Ask::ALL.map(|ask| format!("{ask:?}"))));
        let slots: Vec<_> = names(book, &book.slots).collect();
        for slot in Ask::ALL.iter().flat_map(|ask| ask.slots()) {
            assert_eq!(slots[*slot as usize], format!("{slot:?}"));
        }
        assert!(names(book, &book.groups).eq(Group::ALL.map(|group| format!("{group:?}"))));
        assert!(names(book, &book.parts).eq(Part::all().map(|part| format!("{part:?}"))));
        let advice = book.marked(Some(&book.advice), '-').map(|line| line.split_once(" | ").unwrap().0);
        assert!(advice.eq(Advice::ALL.map(|advice| format!("{advice:?}"))));
        let sums: Vec<_> = names(book, &book.sums).collect();
        assert_eq!(sums.len(), crate::formula::tests::ALL.len());
        for (name, formula) in sums.into_iter().zip(crate::formula::tests::ALL) {
            assert_eq!(name, format!("{formula:?}"));
        }
    }

    /// The page and its store say these by name, which no compiler sees.
    #[test]
    fn what_is_said_of_houses_stands_in_the_book() {
        let said = [
            include_str!("../../../www/store/store.js"),
            include_str!("../../../www/store/list.js"),
            include_str!("../../airtally-app/src/shelf.rs"),
            include_str!("../../airtally-app/src/sheet/houses.rs"),
            include_str!("../../airtally-app/src/frame/banner.rs"),
        ];
        let names = |line: &str| line.split_once(" | ").unwrap().0.to_owned();
        let book = book().unwrap();
        let known: Vec<String> = book.marked(Some(&book.houses), '-').map(names).collect();
        let is_name = |word: &&str| word.starts_with(char::is_uppercase) && word.chars().all(char::is_alphabetic);
        let used: Vec<&str> = said.iter().flat_map(|text| text.split('"').skip(1).step_by(2)).filter(is_name).collect();
        for name in &used {
            let ours = known.iter().any(|known| known == name) || FOREIGN.contains(name);
            assert!(ours, "“{name}” is said, and the book does not have it");
        }
        for name in known.iter().filter(|name| !crate::demo::OTHERS.contains(&name.as_str())) {
            assert!(used.contains(&name.as_str()), "nobody says “{name}”");
        }
    }

    /// Names of the browser's, and what is said without the book.
    const FOREIGN: [&str; 4] = ["Apple", "NFKD", "QuotaExceededError", "Nothing"];
}
