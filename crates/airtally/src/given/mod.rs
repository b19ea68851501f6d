//! The registry of givens: every sourced value or limit that a person may replace by their own.
//!
//! A given has a stable key (part of the file format), a value, a unit, a range, a [`Source`] and so a mark. A house
//! holds its person's settings by id; [`Givens`] resolves them once per report.

mod sources;
mod table;

pub use crate::id::GivenId;

use crate::entry::{Entry, Limit};
use crate::id::Field;
use crate::issue::{Issue, Place};
use crate::quantity::{Length, Measure, Unit};
use crate::source::{Source, YOURS};
use crate::working::{Origin, Term};

/// One registered value.
#[derive(Clone, Copy, Debug)]
pub struct Given {
    /// Its id.
    pub id: GivenId,
    /// Its stable name in files.
    pub key: &'static str,
    /// The registered value in `unit`.
    pub value: f64,
    /// Unit of `value` and `range`.
    pub unit: Unit,
    /// What a setting may be.
    pub range: (f64, f64),
    /// Who says so.
    pub source: &'static Source,
}

impl Given {
    /// What a setting in its place may be.
    pub const fn limit(&self) -> Limit {
        Limit::new(self.range, self.range, self.unit)
    }
}

/// A value with the person's settings taken into account.
#[derive(Clone, Copy, Debug)]
pub struct Resolved {
    /// The value in the given's unit.
    pub value: f64,
    /// Who says so.
    pub source: &'static Source,
}

/// All givens of a house, settings applied.
#[derive(Clone, Debug)]
pub struct Givens {
    own: Vec<(GivenId, f64)>,
}

impl Givens {
    /// Reads a house's settings. A setting that cannot be used is reported and the registered value stands.
    pub fn of(settings: &[(GivenId, Entry)], issues: &mut Vec<Issue>) -> Self {
        let mut own = Vec::new();
        for (id, entry) in settings {
            let unit = id.given().unit;
            match entry.read(id.given().limit()).map(|measure| measure.value_in(unit)) {
                Ok(Some(value)) => own.push((*id, value)),
                Ok(None) => {}
                Err(trouble) => issues.push(Issue::new(Place::Field(Field::Given(*id)), trouble)),
            }
        }
        Self { own }
    }

    /// The registered values alone.
    pub fn registered() -> Self {
        Self { own: Vec::new() }
    }

    /// The same with another value in place of one, to look at another way.
    pub(crate) fn put(&mut self, id: GivenId, value: f64) {
        self.own.retain(|(own, _)| *own != id);
        self.own.push((id, value));
    }

    /// A value and who says so.
    pub fn get(&self, id: GivenId) -> Resolved {
        match self.own.iter().find(|(own, _)| *own == id) {
            Some((_, value)) => Resolved { value: *value, source: &YOURS },
            None => Resolved { value: id.given().value, source: id.given().source },
        }
    }

    /// A value in its own unit.
    pub fn value(&self, id: GivenId) -> f64 {
        self.get(id).value
    }

    /// A value as a measure with its unit.
    pub fn measure(&self, id: GivenId) -> Measure {
        Measure::new(self.value(id), id.given().unit)
    }

    /// A length; nought for a value of another kind.
    pub fn length(&self, id: GivenId) -> Length {
        Length::of(self.measure(id)).unwrap_or(Length::ZERO)
    }

    /// A value as a term of a working line.
    pub fn term(&self, symbol: &'static str, id: GivenId) -> Term {
        Term::new(symbol, self.value(id), id.given().unit, Origin::Given(id))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_given_stands_at_its_own_place_with_a_unique_key_and_a_value_in_range() {
        let mut keys: Vec<&str> = Vec::new();
        for id in GivenId::all() {
            let given = id.given();
            assert_eq!(given.id, id, "{} is out of order", given.key);
            assert!(given.value >= given.range.0 && given.value <= given.range.1, "{}", given.key);
            assert_eq!(GivenId::from_key(given.key), Some(id));
            keys.push(given.key);
        }
        keys.sort_unstable();
        keys.dedup();
        assert_eq!(keys.len(), GivenId::all().count());
    }

    /// So an oval is wider than high whatever is set.
    #[test]
    fn no_oval_is_higher_than_wide() {
        assert!(GivenId::OvalWide.given().range.0 >= GivenId::OvalHigh.given().range.1);
    }

    #[test]
    fn a_setting_replaces_the_value_and_its_mark() {
        let id = GivenId::SpeedNormal;
        let settings = [(id, Entry::new("1.8", id.given().unit))];
        let mut issues = Vec::new();
        let givens = Givens::of(&settings, &mut issues);
        assert_eq!(givens.value(id), 1.8);
        assert_eq!(givens.get(id).source, &YOURS);
        assert!(issues.is_empty());
    }

    #[test]
    fn a_setting_out_of_range_is_reported_and_not_used() {
        let id = GivenId::SpeedNormal;
        let settings = [(id, Entry::new("-3", id.given().unit))];
        let mut issues = Vec::new();
        assert_eq!(Givens::of(&settings, &mut issues).value(id), id.given().value);
        assert_eq!(issues.len(), 1);
    }
}
