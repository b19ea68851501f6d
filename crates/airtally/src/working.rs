//! The working behind every number: formula, the numbers put in, the value, the source.
//!
//! Lines are plain `Copy` data in one arena. Nothing here is a sentence: `airtally-words` turns a line into text
//! only when somebody asks to see it.

use crate::formula::Formula;
use crate::id::{Field, GivenId, RoomId};
use crate::quantity::Unit;
use crate::source::Source;

/// A place in the [`Working`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct LineId(u32);

impl LineId {
    /// Its place in the list of all lines, from 0.
    pub const fn number(self) -> u32 {
        self.0
    }
}

/// A line by what it is: its equation, its room, and its turn among lines that share both.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Address {
    /// The equation.
    pub formula: Formula,
    /// The room it is about, if it is about one.
    pub room: Option<RoomId>,
    /// Its turn, from 0.
    pub nth: usize,
}

/// One calculated value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Line {
    /// The equation, by id.
    pub formula: Formula,
    /// The result in `unit`, not rounded.
    pub value: f64,
    /// Unit of `value`.
    pub unit: Unit,
    /// Who says that this is the equation.
    pub source: &'static Source,
    /// The room it is about, if it is about one.
    pub room: Option<RoomId>,
    terms: (u32, u32),
}

/// One number that was put into a formula.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Term {
    /// Its symbol in the formula, e.g. `"A"`.
    pub symbol: &'static str,
    /// The number in `unit`.
    pub value: f64,
    /// Unit of `value`.
    pub unit: Unit,
    /// Where the number comes from.
    pub origin: Origin,
}

impl Term {
    /// A number with its symbol, unit and origin.
    pub const fn new(symbol: &'static str, value: f64, unit: Unit, origin: Origin) -> Self {
        Self { symbol, value, unit, origin }
    }

    /// The line it comes from, if it comes from one.
    pub const fn line(&self) -> Option<LineId> {
        match self.origin {
            Origin::Line(line) => Some(line),
            _ => None,
        }
    }
}

/// Where a number in a formula comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Origin {
    /// Another line of the working.
    Line(LineId),
    /// A value of the registry, or the person's own setting in its place.
    Given(GivenId),
    /// Typed into a field.
    Typed(Field),
    /// Counted or added up from what was typed.
    Counted,
    /// Printed in a table or an equation of this source.
    Printed(&'static Source),
}

/// A value together with the line that explains it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Traced<Q> {
    /// The value.
    pub value: Q,
    /// Its line in the working.
    pub line: LineId,
}

/// About how many lines a house has whatever its rooms.
const LINES: usize = 100;
/// About how many lines a room adds.
const LINES_A_ROOM: usize = 12;
/// About how many numbers go into a line.
const TERMS_A_LINE: usize = 3;

/// All lines of one report, in the order in which they were calculated.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Working {
    lines: Vec<Line>,
    terms: Vec<Term>,
}

impl Working {
    /// Without lines, with space for those of a house of so many rooms.
    pub fn with_space_for(rooms: usize) -> Self {
        let lines = LINES + LINES_A_ROOM * rooms;
        Self { lines: Vec::with_capacity(lines), terms: Vec::with_capacity(TERMS_A_LINE * lines) }
    }

    /// Without lines again; places that were given out mean nothing any more.
    pub fn clear(&mut self) {
        self.lines.clear();
        self.terms.clear();
    }

    /// Records a line and returns its place.
    pub fn record(
        &mut self,
        formula: Formula,
        (value, unit): (f64, Unit),
        source: &'static Source,
        terms: &[Term],
    ) -> LineId {
        self.record_for(None, formula, (value, unit), source, terms)
    }

    /// Records a line about one room and returns its place.
    pub fn record_for(
        &mut self,
        room: Option<RoomId>,
        formula: Formula,
        (value, unit): (f64, Unit),
        source: &'static Source,
        terms: &[Term],
    ) -> LineId {
        let from = self.terms.len() as u32;
        self.terms.extend_from_slice(terms);
        let terms = (from, self.terms.len() as u32);
        self.lines.push(Line { formula, value, unit, source, room, terms });
        LineId(self.lines.len() as u32 - 1)
    }

    /// The line at a place; `None` for a place of another report.
    pub fn line(&self, id: LineId) -> Option<Line> {
        self.lines.get(id.0 as usize).copied()
    }

    /// The numbers put into a line.
    pub fn terms(&self, id: LineId) -> &[Term] {
        self.lines
            .get(id.0 as usize)
            .and_then(|line| self.terms.get(line.terms.0 as usize..line.terms.1 as usize))
            .unwrap_or(&[])
    }

    /// Where a line's value was made: lines that only pick one of others, or pass it on, are followed down.
    pub fn picked(&self, id: LineId) -> LineId {
        let Some(line) = self.line(id) else { return id };
        let mut same = self.terms(id).iter().filter(|term| term.value == line.value && term.unit == line.unit);
        same.find_map(Term::line).map_or(id, |below| self.picked(below))
    }

    /// Where a line stands among its like. Unlike its place it means the same line after an edit.
    pub fn address(&self, id: LineId) -> Option<Address> {
        let line = self.line(id)?;
        let nth = self.alike(line.formula, line.room).position(|other| other == id)?;
        Some(Address { formula: line.formula, room: line.room, nth })
    }

    /// The line at an address; `None` when there is no such line any more.
    pub fn find(&self, address: Address) -> Option<LineId> {
        self.alike(address.formula, address.room).nth(address.nth)
    }

    fn alike(&self, formula: Formula, room: Option<RoomId>) -> impl Iterator<Item = LineId> {
        let lines = self.ids().zip(&self.lines);
        lines.filter(move |(_, line)| line.formula == formula && line.room == room).map(|(id, _)| id)
    }

    /// All places, oldest first.
    pub fn ids(&self) -> impl Iterator<Item = LineId> + use<> {
        (0..self.lines.len() as u32).map(LineId)
    }
}
