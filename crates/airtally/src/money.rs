//! Money: whole hundredths, so that a sum on paper is the sum of its lines.

/// An amount in hundredths of a currency that nobody has to name.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Money(i64);

/// What one of something costs, in ten-thousandths: a ring may cost 0.0375.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Price(i64);

impl Price {
    /// A price as typed. A decimal text of up to four places and ten million comes back exactly; further places are rounded.
    ///
    /// ```
    /// use airtally::money::{Money, Price};
    /// // 12.3 m at 4.15 a metre are 51.045: half a hundredth goes up.
    /// assert_eq!(Price::of(4.15).times(12.3).to_string(), "51.05");
    /// assert_eq!(Price::of(0.1).times(3.0), Money::of_hundredths(30));
    /// ```
    pub fn of(value: f64) -> Self {
        Self((value * 1e4).round() as i64)
    }

    /// So many of it: the quantity counts to its hundredth, and the amount is rounded half away from nought.
    pub fn times(self, quantity: f64) -> Money {
        let hundredths = (quantity * 1e2).round() as i128;
        Money::rounded(i128::from(self.0) * hundredths, 10_000)
    }
}

impl Money {
    /// Nothing.
    pub const ZERO: Self = Self(0);

    /// So many hundredths.
    pub const fn of_hundredths(hundredths: i64) -> Self {
        Self(hundredths)
    }

    /// The amount in hundredths.
    pub const fn hundredths(self) -> i64 {
        self.0
    }

    /// Both together.
    pub fn plus(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }

    /// So many per cent of it, rounded half away from nought. The rate counts to its hundredth.
    ///
    /// ```
    /// use airtally::money::Money;
    /// assert_eq!(Money::of_hundredths(5_105).percent(19.0).to_string(), "9.70");
    /// ```
    pub fn percent(self, rate: f64) -> Self {
        let hundredths = (rate * 1e2).round() as i128;
        Self::rounded(i128::from(self.0) * hundredths, 10_000)
    }

    fn rounded(amount: i128, parts: i128) -> Self {
        let half = if amount < 0 { -parts / 2 } else { parts / 2 };
        let whole = (amount + half) / parts;
        Self(i64::try_from(whole).unwrap_or(if whole < 0 { i64::MIN } else { i64::MAX }))
    }
}

impl std::fmt::Display for Money {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let sign = if self.0 < 0 { "-" } else { "" };
        let hundredths = self.0.unsigned_abs();
        write!(f, "{sign}{}.{:02}", hundredths / 100, hundredths % 100)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn typed_decimals_come_back_exactly() {
        for ten_thousandths in (0..100_000_000_000_i64).step_by(98_765_431) {
            let text = format!("{}.{:04}", ten_thousandths / 10_000, ten_thousandths % 10_000);
            assert_eq!(Price::of(text.parse().unwrap()), Price(ten_thousandths), "{text}");
        }
    }

    #[test]
    fn halves_go_away_from_nought_and_nothing_overflows() {
        assert_eq!(Money::rounded(15_000, 10_000).0, 2);
        assert_eq!(Money::rounded(-15_000, 10_000).0, -2);
        assert_eq!(Money::rounded(14_999, 10_000).0, 1);
        assert_eq!(Price::of(1e7).times(1e12).0, i64::MAX);
        assert_eq!(Money::of_hundredths(i64::MAX).plus(Money::of_hundredths(1)).0, i64::MAX);
        assert_eq!(Money::of_hundredths(-5).to_string(), "-0.05");
    }
}
