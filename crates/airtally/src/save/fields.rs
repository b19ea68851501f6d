//! Taking a map apart, field by field, knowing where we are.

use super::Tree;
use std::fmt;

/// Why a file is refused, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal {
    /// Where in the file: `house.rooms[3].name`; empty for the whole of it.
    pub path: String,
    /// What is wrong there.
    pub why: String,
}

impl Refusal {
    /// A refusal here.
    pub fn new(why: impl Into<String>) -> Self {
        Self { path: String::new(), why: why.into() }
    }

    /// The same, one step further out.
    pub fn within(mut self, step: &str) -> Self {
        let dot = if self.path.is_empty() || self.path.starts_with('[') { "" } else { "." };
        self.path = [step, dot, &self.path].concat();
        self
    }
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if !self.path.is_empty() {
            f.write_str(&self.path)?;
            f.write_str(": ")?;
        }
        f.write_str(&self.why)
    }
}

/// The fields of a map that have not been taken yet, and the first thing that was wrong with one.
///
/// A field that is wrong reads as nothing, and [`Fields::end`] says so: a reader is a plain list of fields without a way
/// out of every line, in a third of the code.
pub struct Fields {
    left: Vec<(String, Tree)>,
    refusal: Option<Refusal>,
}

impl Fields {
    /// The fields of a map.
    pub fn of(tree: Tree) -> Self {
        match tree {
            Tree::Map(left) => Self { left, refusal: None },
            _ => Self { left: Vec::new(), refusal: Some(Refusal::new("this must be a map")) },
        }
    }

    /// Takes a field that may be absent.
    pub fn take(&mut self, name: &str) -> Tree {
        let at = self.left.iter().position(|(field, _)| field == name);
        at.map_or(Tree::Nothing, |at| self.left.swap_remove(at).1)
    }

    /// Takes a field that must be there.
    pub fn need(&mut self, name: &str) -> Tree {
        if !self.has(name) {
            self.refuse(Refusal::new(["missing field `", name, "`"].concat()));
        }
        self.take(name)
    }

    /// Takes a text.
    #[inline(never)]
    pub fn text(&mut self, name: &str) -> String {
        match self.need(name) {
            Tree::Text(text) => text,
            _ => self.wrong(name, "this must be a string"),
        }
    }

    /// Takes a text that may be absent.
    #[inline(never)]
    pub fn text_or_none(&mut self, name: &str) -> Option<String> {
        match self.take(name) {
            Tree::Nothing => None,
            Tree::Text(text) => Some(text),
            _ => self.wrong(name, "this must be a string"),
        }
    }

    /// Takes a whole number of a range; it is the nearest of the range when it is refused.
    pub fn whole(&mut self, name: &str, (least, most): (i64, i64)) -> i64 {
        let tree = self.need(name);
        self.as_whole(name, tree, (least, most))
    }

    /// A whole number of a range.
    pub fn as_whole(&mut self, name: &str, tree: Tree, (least, most): (i64, i64)) -> i64 {
        match tree {
            Tree::Number(number) if number == f64::trunc(number) && number >= least as f64 && number <= most as f64 => {
                number as i64
            }
            _ => {
                self.refuse(Refusal::new(format!("this must be a whole number from {least} to {most}")).within(name));
                least
            }
        }
    }

    /// Takes a list and reads each of its items.
    pub fn list<T>(&mut self, name: &str, mut read: impl FnMut(Tree) -> Result<T, Refusal>) -> Vec<T> {
        let Tree::List(list) = self.need(name) else { return self.wrong(name, "this must be a list") };
        let mut items = Vec::with_capacity(list.len());
        for (at, item) in list.into_iter().enumerate() {
            match read(item) {
                Ok(item) => items.push(item),
                Err(refusal) => self.refuse(refusal.within(&[name, "[", &at.to_string(), "]"].concat())),
            }
        }
        items
    }

    /// Whether a field is there.
    pub fn has(&self, name: &str) -> bool {
        self.left.iter().any(|(field, _)| field == name)
    }

    /// Notes that a field is wrong, and reads it as nothing.
    pub fn wrong<T: Default>(&mut self, name: &str, why: &str) -> T {
        self.refuse(Refusal::new(why).within(name));
        T::default()
    }

    /// Notes that a field is wrong for this reason. Apart, so that the many readers of a choice stay small.
    #[inline(never)]
    pub fn refuse_at(&mut self, name: &str, why: Refusal) {
        self.refuse(why.within(name));
    }

    /// Notes what is wrong, unless something was before.
    pub fn refuse(&mut self, refusal: Refusal) {
        self.refusal.get_or_insert(refusal);
    }

    /// What was read, when nothing was wrong and nothing is left.
    pub fn end<T>(mut self, read: T) -> Result<T, Refusal> {
        if let Some((name, _)) = self.left.first() {
            let refusal = Refusal::new(["unknown field `", name, "`"].concat());
            self.refuse(refusal);
        }
        match self.refusal {
            None => Ok(read),
            Some(refusal) => Err(refusal),
        }
    }
}
