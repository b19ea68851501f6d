//! What was typed, and what it means.

use crate::issue::Trouble;
use crate::quantity::{Measure, Unit, parse};

/// The text of one field, exactly as typed, with the unit its chip showed at the time.
///
/// The text may carry a unit of its own (`"12 ft 6 in"`), which wins over the chip.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    /// As typed.
    pub text: String,
    /// The unit of a bare number.
    pub unit: Unit,
}

impl Entry {
    /// A text with the unit of a bare number.
    pub fn new(text: impl Into<String>, unit: Unit) -> Self {
        Self { text: text.into(), unit }
    }

    /// Reads the text.
    ///
    /// # Errors
    /// [`Trouble::Unreadable`] when it is not a value of the unit's kind; [`Trouble::OutOfRange`] when it lies
    /// outside `limit`. The text itself is never changed.
    pub fn read(&self, limit: Limit) -> Result<Measure, Trouble> {
        let measure = parse(&self.text, self.unit.kind(), self.unit).map_err(Trouble::Unreadable)?;
        limit.admit(measure)
    }
}

/// What a value may be. Declared once per field; messages print it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limit {
    /// Smallest and largest value that can be calculated with.
    pub range: (f64, f64),
    /// Smallest and largest value that is usual.
    pub usual: (f64, f64),
    /// Unit of all four.
    pub unit: Unit,
}

impl Limit {
    /// A range with a usual part.
    pub const fn new(range: (f64, f64), usual: (f64, f64), unit: Unit) -> Self {
        Self { range, usual, unit }
    }

    /// Lets a value through, or says what is accepted.
    ///
    /// # Errors
    /// [`Trouble::OutOfRange`].
    pub fn admit(&self, measure: Measure) -> Result<Measure, Trouble> {
        let (min, max) = self.range;
        match measure.value_in(self.unit) {
            Some(value) if value >= min && value <= max => Ok(measure),
            _ => Err(Trouble::OutOfRange { min, max, unit: self.unit }),
        }
    }

    /// A remark when a value that was let through is seldom right.
    pub fn remark(&self, measure: Measure) -> Option<Trouble> {
        let (min, max) = self.usual;
        let value = measure.value_in(self.unit)?;
        (value < min || value > max).then_some(Trouble::SeldomRight { min, max, unit: self.unit })
    }
}
