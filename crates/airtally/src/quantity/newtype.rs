//! What every quantity can do. A macro, because functions cannot give traits to ten types.

/// Ways between a quantity and any unit of its kind.
macro_rules! quantity {
    ($name:ident, $base:expr) => {
        impl $name {
            const BASE: $crate::quantity::Unit = $base;

            /// What was typed, as this quantity. `None` when it measures something else or is not a finite number.
            pub fn of(measure: $crate::quantity::Measure) -> Option<Self> {
                measure.value_in(Self::BASE).map(Self)
            }

            /// The number in this unit. `None` for a unit of another kind, or when the number is not finite.
            pub fn as_unit(self, unit: $crate::quantity::Unit) -> Option<f64> {
                $crate::quantity::convert(self.0, Self::BASE, unit)
            }

            /// Whether this is a number that can be shown: not a division by nought, not an overflow.
            pub const fn is_finite(self) -> bool {
                self.0.is_finite()
            }

            /// The larger of the two.
            pub const fn max(self, other: Self) -> Self {
                Self(self.0.max(other.0))
            }

            /// The smaller of the two.
            pub const fn min(self, other: Self) -> Self {
                Self(self.0.min(other.0))
            }

            #[allow(dead_code, reason = "not every quantity has a second named unit")]
            fn from_unit(value: f64, unit: $crate::quantity::Unit) -> Self {
                Self($crate::quantity::unit::convert_same_kind(value, unit, Self::BASE))
            }

            #[allow(dead_code, reason = "not every quantity has a second named unit")]
            fn in_unit(self, unit: $crate::quantity::Unit) -> f64 {
                $crate::quantity::unit::convert_same_kind(self.0, Self::BASE, unit)
            }
        }

        impl From<$name> for $crate::quantity::Measure {
            fn from(quantity: $name) -> Self {
                Self::new(quantity.0, $name::BASE)
            }
        }
    };
}

/// Sums, differences and multiples, for quantities of which twice as much means something.
macro_rules! amount {
    ($name:ident) => {
        impl $name {
            /// None of it.
            pub const ZERO: Self = Self(0.0);

            /// The size without the sign.
            pub const fn abs(self) -> Self {
                Self(self.0.abs())
            }
        }

        impl std::ops::Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl std::ops::AddAssign for $name {
            fn add_assign(&mut self, other: Self) {
                self.0 += other.0;
            }
        }

        impl std::ops::Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl std::ops::Mul<f64> for $name {
            type Output = Self;
            fn mul(self, times: f64) -> Self {
                Self(self.0 * times)
            }
        }

        impl std::ops::Div<f64> for $name {
            type Output = Self;
            fn div(self, parts: f64) -> Self {
                Self(self.0 / parts)
            }
        }

        /// How many times the other goes into this one.
        impl std::ops::Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 {
                self.0 / other.0
            }
        }

        /// From the first to the last, starting at +0, so that the same terms give the same bits.
        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(terms: I) -> Self {
                terms.fold(Self::ZERO, |sum, term| sum + term)
            }
        }
    };
}

pub(super) use {amount, quantity};
