//! What the store of houses has told, as it told it: lines, and what a line holds parted by tabs.

use airtally_words::book::of_houses;
use airtally_words::page::NOT_KEPT;
use yew::AttrValue;

/// What is told apart.
#[derive(Clone, Copy)]
pub enum Told {
    /// How the house on screen is kept: a word, when it was saved, when a copy was sent.
    Kept,
    /// What the browser promises, then the houses, the youngest change first.
    List,
    /// The versions of the house that is looked at more closely, the youngest first.
    Versions,
    /// What a person looks for in the list.
    Wanted,
}

/// All of it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shelf([AttrValue; 4]);

impl Shelf {
    /// Takes in what was told.
    pub fn tell(&mut self, told: Told, words: AttrValue) {
        if let Some(place) = self.0.get_mut(told as usize) {
            *place = words;
        }
    }

    /// What was told, line by line.
    fn lines(&self, told: Told) -> Vec<&str> {
        parted(self.0.get(told as usize).map_or("", |words| words), '\n')
    }

    /// One line of it; empty where there is none.
    pub fn line(&self, told: Told, at: usize) -> &str {
        self.lines(told).get(at).copied().unwrap_or_default()
    }

    /// The houses of the list: id, when changed or removed, whether removed, rooms, name.
    pub fn houses(&self) -> Vec<[&str; 5]> {
        self.lines(Told::List).into_iter().skip(1).map(cells).collect()
    }

    /// The versions of a house: at, when, nothing, rooms, name.
    pub fn versions(&self) -> Vec<[&str; 5]> {
        self.lines(Told::Versions).into_iter().filter(|line| !line.is_empty()).map(cells).collect()
    }

    /// What a person must know and can do, where the house on screen is not kept as it should be.
    pub fn trouble(&self) -> Option<&'static str> {
        let state = self.line(Told::Kept, 0);
        let words = of_houses(state);
        match state {
            "" | "kept" => None,
            _ if words.is_empty() => Some(NOT_KEPT),
            _ => Some(words),
        }
    }
}

fn cells(line: &str) -> [&str; 5] {
    let cells = parted(line, '\t');
    std::array::from_fn(|at| cells.get(at).copied().unwrap_or_default())
}

/// Compiled once for lines and cells.
#[inline(never)]
fn parted(text: &str, mark: char) -> Vec<&str> {
    text.split(mark).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn told(told: Told, words: &'static str) -> Shelf {
        let mut shelf = Shelf::default();
        shelf.tell(told, words.into());
        shelf
    }

    #[test]
    fn a_list_is_read_and_what_is_missing_is_empty() {
        let shelf = told(Told::List, "maybe\n0\t14:32\t\t11\tLarkfield\n1795\tMay 2, 09:10\tremoved\t1");
        assert_eq!(shelf.line(Told::List, 0), "maybe");
        assert_eq!(
            shelf.houses(),
            [["0", "14:32", "", "11", "Larkfield"], ["1795", "May 2, 09:10", "removed", "1", ""]]
        );
        assert!(shelf.versions().is_empty());
    }

    #[test]
    fn what_is_not_kept_as_it_should_be_is_trouble() {
        assert_eq!(told(Told::Kept, "kept\n14:32\n").trouble(), None);
        assert_eq!(told(Told::Kept, "no such word").trouble(), Some(NOT_KEPT));
        assert!(told(Told::Kept, "Full\n").trouble().is_some_and(|words| words.contains("full")));
    }
}
