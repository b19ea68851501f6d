//! What the registered values are called.

use crate::book::book;
use airtally::given::GivenId;

/// The name of a registered value: read as "Smallest step of a terminal is 5 m³/h". Empty until the book is open.
///
/// ```
/// use airtally::given::GivenId;
/// assert_eq!(airtally_words::given::name(GivenId::SpeedBoost), "Largest tube speed at boost");
/// ```
pub fn name(id: GivenId) -> &'static str {
    book().and_then(|book| book.value(id as usize)).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{prose, standing};
    use std::collections::BTreeSet;

    #[test]
    fn every_value_has_a_name_of_its_own() {
        let names: BTreeSet<_> = GivenId::all().map(name).collect();
        assert_eq!(names.len(), GivenId::all().count());
        names.iter().for_each(|name| prose::is_label(name));
    }

    #[test]
    fn every_source_can_be_cited() {
        for id in GivenId::all() {
            let source = id.given().source;
            let cited = standing::cite(source);
            prose::is_clean(&cited);
            assert_eq!(cited.contains(standing::LEAST_SURE), source.doubtful, "{cited}");
        }
    }
}
