//! Texts that nobody would think of.

use super::*;
use proptest::prelude::*;

/// Few cases, since each walks every spelling: what matters is that odd text of every sort gets its turn.
const CASES: u32 = 256;

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(CASES) })]

    #[test]
    fn is_read_or_refused(text in "\\PC{0,40}") {
        reads_or_refuses(&text)?;
    }

    #[test]
    fn near_numbers_are_read_or_refused(text in "[-+−0-9.,eE/⁄½ '’″\"²^\u{a0}minfthC°%·]{0,24}") {
        reads_or_refuses(&text)?;
    }

    /// Oracle: std's own reader, which is right to the last bit everywhere.
    #[test]
    fn numbers_of_people_are_read_as_std_reads_them(digits in 0_u64..1_000_000_000_000_000, power in -22_i32..=22) {
        let text = format!("{digits}e{power}");
        let expect = text.parse().map(|value| Measure::new(value, Unit::Metre));
        prop_assert_eq!(parse(&text, Kind::Length, Unit::Metre).ok(), expect.ok());
    }

    #[test]
    fn printed_numbers_come_back_to_fourteen_digits(value in proptest::num::f64::NORMAL) {
        let text = format!("{value:e}");
        prop_assert!(is_nearly(&text, value));
    }
}

fn reads_or_refuses(text: &str) -> Result<(), TestCaseError> {
    for (kind, unit) in [(Kind::Length, Unit::Foot), (Kind::Temperature, Unit::Celsius), (Kind::Count, Unit::Count)] {
        match parse(text, kind, unit) {
            Ok(measure) => prop_assert!(measure.value().is_finite() && measure.kind() == kind),
            Err(UnknownUnit { at }) => prop_assert!(at < text.len() && text.is_char_boundary(at)),
            Err(_) => {}
        }
    }
    Ok(())
}
