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

/// The fields of a map that have not been taken yet.
pub struct Fields(Vec<(String, Tree)>);

impl Fields {
    /// The fields of a map.
    pub fn of(tree: Tree) -> Result<Self, Refusal> {
        match tree {
            Tree::Map(map) => Ok(Self(map)),
            _ => Err(Refusal::new("this must be a map")),
        }
    }

    /// Takes a field that may be absent.
    pub fn take(&mut self, name: &str) -> Option<Tree> {
        let at = self.0.iter().position(|(field, _)| field == name)?;
        Some(self.0.swap_remove(at).1)
    }

    /// Takes a field that must be there.
    pub fn need(&mut self, name: &str) -> Result<Tree, Refusal> {
        self.take(name).ok_or_else(|| Refusal::new(["missing field `", name, "`"].concat()))
    }

    /// Takes a text.
    pub fn text(&mut self, name: &str) -> Result<String, Refusal> {
        match self.need(name)? {
            Tree::Text(text) => Ok(text),
            _ => Err(Refusal::new("this must be a string").within(name)),
        }
    }

    /// Takes a whole number of a range.
    pub fn whole(&mut self, name: &str, (least, most): (i64, i64)) -> Result<i64, Refusal> {
        whole(self.need(name)?, (least, most)).map_err(|refusal| refusal.within(name))
    }

    /// Takes a list and reads each of its items.
    pub fn list<T>(&mut self, name: &str, mut read: impl FnMut(Tree) -> Result<T, Refusal>) -> Result<Vec<T>, Refusal> {
        let Tree::List(list) = self.need(name)? else { return Err(Refusal::new("this must be a list").within(name)) };
        let mut items = Vec::with_capacity(list.len());
        for (at, item) in list.into_iter().enumerate() {
            let step = || [name, "[", &at.to_string(), "]"].concat();
            items.push(read(item).map_err(|refusal| refusal.within(&step()))?);
        }
        Ok(items)
    }

    /// Insists that nothing is left.
    pub fn end(self) -> Result<(), Refusal> {
        match self.0.first() {
            None => Ok(()),
            Some((name, _)) => Err(Refusal::new(["unknown field `", name, "`"].concat())),
        }
    }
}

/// A whole number of a range.
pub fn whole(tree: Tree, (least, most): (i64, i64)) -> Result<i64, Refusal> {
    match tree {
        Tree::Number(number) if number == libm::trunc(number) && number >= least as f64 && number <= most as f64 => {
            Ok(number as i64)
        }
        _ => Err(Refusal::new(format!("this must be a whole number from {least} to {most}"))),
    }
}
