//! An equation with numbers in the place of its letters.

use airtally::formula::Formula;
use airtally::working::{Line, Term};
use airtally_words::{format, formula};

/// The whole line in one: its numbers put in without their units, and what they make. Conditions are left out.
pub fn in_one(line: &Line, terms: &[Term]) -> String {
    let number = |term: &Term| (term.symbol, format::value(term.value, term.unit).number);
    let numbers: Vec<_> = terms.iter().map(number).collect();
    let made = match line.formula {
        Formula::LevelShare => Some(joined(&numbers, "·")),
        formula => put_in(sides(formula).1.split(',').next().unwrap_or_default(), &numbers),
    };
    [made.as_deref().unwrap_or_default(), " = ", &format::text(line.value, line.unit)].concat()
}

/// Both sides of an equation; the left one is empty where it has none.
pub fn sides(formula: Formula) -> (&'static str, &'static str) {
    let notation = formula::notation(formula);
    notation.split_once('=').map_or(("", notation), |(left, right)| (left.trim_end(), right.trim_start()))
}

/// Puts each text in the place of its symbol. `None` when no symbol stands in the equation.
pub fn put_in(equation: &str, numbers: &[(&str, String)]) -> Option<String> {
    if equation.starts_with(LARGEST) {
        return Some([LARGEST, &joined(numbers, ", ")].concat());
    }
    if equation.starts_with('Σ') && number_of(equation, numbers).is_none() {
        return (!numbers.is_empty()).then(|| joined(numbers, " + "));
    }
    let mut text = String::with_capacity(equation.len() * 2);
    let mut found = false;
    let mut rest = equation;
    while let Some(next) = rest.chars().next() {
        let (word, after) = rest.split_at_checked(word_length(rest).max(next.len_utf8())).unwrap_or((rest, ""));
        let number = number_of(word, numbers);
        found |= number.is_some();
        let powered = number.is_some() && after.starts_with(['²', '^']);
        text.push_str(if powered { "(" } else { "" });
        text.push_str(number.unwrap_or(word));
        text.push_str(if powered { ")" } else { "" });
        rest = after;
    }
    found.then_some(text)
}

/// Of a list, only what this house has is put in.
const LARGEST: &str = "largest of ";

fn joined(numbers: &[(&str, String)], with: &str) -> String {
    let numbers: Vec<&str> = numbers.iter().map(|(_, number)| number.as_str()).collect();
    numbers.join(with)
}

fn number_of<'a>(symbol: &str, numbers: &'a [(&str, String)]) -> Option<&'a str> {
    numbers.iter().find(|(own, _)| *own == symbol).map(|(_, number)| number.as_str())
}

/// Letters, digits and underscores that stand together make one symbol.
pub fn word_length(text: &str) -> usize {
    text.find(|letter: char| !is_symbol(letter)).unwrap_or(text.len())
}

/// Whether a letter can be part of a symbol: `C_o`, `Σq`, `a₂`.
fn is_symbol(letter: char) -> bool {
    letter.is_ascii_alphanumeric() || matches!(letter, '_' | 'Α'..='ω' | '₀'..='₉')
}

#[cfg(test)]
mod tests {
    use super::put_in;

    #[test]
    fn letters_become_numbers_and_the_rest_stays() {
        let numbers = [("A", "148 m²".to_owned()), ("N", "3".to_owned())];
        let text = put_in("0.01·A + 7.5·(N + 1)", &numbers);
        assert_eq!(text.as_deref(), Some("0.01·148 m² + 7.5·(3 + 1)"));
    }

    #[test]
    fn a_sum_is_written_out() {
        let numbers = [("q", "13 L/s".to_owned()), ("q", "8 L/s".to_owned())];
        assert_eq!(put_in("Σq", &numbers).as_deref(), Some("13 L/s + 8 L/s"));
        assert_eq!(put_in("Σq", &[("Σq", "21 L/s".to_owned())]).as_deref(), Some("21 L/s"));
    }

    #[test]
    fn part_of_a_longer_symbol_is_left_alone() {
        let numbers = [("q", "1".to_owned()), ("C_o", "420 ppm".to_owned())];
        assert_eq!(put_in("C_o + q_min", &numbers).as_deref(), Some("420 ppm + q_min"));
        assert_eq!(put_in("x + y", &numbers), None);
    }

    #[test]
    fn a_power_holds_for_the_unit_too() {
        let numbers = [("d", "63 mm".to_owned())];
        assert_eq!(put_in("π·d² / 4", &numbers).as_deref(), Some("π·(63 mm)² / 4"));
    }
}
