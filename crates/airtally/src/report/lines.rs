//! The lines behind a report's numbers.

use super::Report;
use crate::formula::Formula;
use crate::quantity::{Flow, Measure};
use crate::working::{Address, Line, LineId, Term};

impl Report {
    /// A line of the working.
    pub fn line(&self, id: LineId) -> Option<Line> {
        self.working.borrow().line(id)
    }

    /// Where a line's value was made: lines that only pick one of others, or pass it on, are followed down.
    pub fn picked(&self, id: LineId) -> LineId {
        self.working.borrow().picked(id)
    }

    /// Of a line that takes the larger of two: the equations of the one taken and the one left, and what lies between.
    ///
    /// ```
    /// use airtally::{edit::Edit, formula::Formula, house::{Field, House, HouseField}};
    /// use airtally::{quantity::Unit, report::Report, rules::Level};
    /// let floor = Field::House(HouseField::FloorArea);
    /// let house = Edit::Set(floor, "150".into(), Unit::SquareMetre).apply(&House::new());
    /// let report = Report::of(house);
    /// let line = report.shares().at(Level::Normal).asked[0].line;
    /// // England, 150 m²: 45 L/s by area, 19 L/s by bedrooms.
    /// let (formulas, between) = report.larger_of(line).unwrap();
    /// assert_eq!(formulas, [Formula::AdfArea, Formula::AdfTable]);
    /// assert!((between.as_ls() - 26.0).abs() < 1e-9);
    /// ```
    pub fn larger_of(&self, id: LineId) -> Option<([Formula; 2], Flow)> {
        let working = self.working.borrow();
        working.line(id).filter(|line| matches!(line.formula, Formula::AdfWhole | Formula::Larger))?;
        let [first, second] = working.terms(id) else { return None };
        let (taken, left) = if second.value > first.value { (second, first) } else { (first, second) };
        let formula = |term: &Term| working.line(term.line()?).map(|line| line.formula);
        let between = Flow::of(Measure::new(taken.value - left.value, taken.unit))?;
        Some(([formula(taken)?, formula(left)?], between))
    }

    /// Where a line stands among its like: means the same line in the report of an edited house.
    pub fn address(&self, id: LineId) -> Option<Address> {
        self.working.borrow().address(id)
    }

    /// The line at an address.
    pub fn find(&self, address: Address) -> Option<LineId> {
        self.working.borrow().find(address)
    }

    /// Every line recorded so far, in the order in which they were calculated.
    pub fn lines(&self) -> Vec<LineId> {
        self.working.borrow().ids().collect()
    }

    /// The numbers put into a line.
    pub fn terms(&self, id: LineId) -> Vec<Term> {
        self.working.borrow().terms(id).to_vec()
    }
}
