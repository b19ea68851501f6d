//! Powers with any exponent.

/// `base` to the power of `exponent`, for bases from 0 on: e^(exponent · ln base).
///
/// Good to 10⁻¹³ of the result for bases and results between 10⁻³⁰ and 10³⁰, and a third of the size of a power that is
/// right to the last bit. 0 to a positive power is 0, 1 to any power is 1; a negative base is not a number.
pub(crate) fn power(base: f64, exponent: f64) -> f64 {
    libm::exp(exponent * libm::log(base))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn powers_agree_with_the_exact_function() {
        for base in [1e-30, 1e-9, 0.02, 0.7, 1.0, 1.3, 20.0, 4e5, 1e30] {
            for exponent in [-1.0, 0.4, 0.65, 0.9, 1.0, 1.0 / 0.65, 5.2559] {
                let exact = libm::pow(base, exponent);
                if (1e-30..=1e30).contains(&exact) {
                    let off = (power(base, exponent) / exact - 1.0).abs();
                    assert!(off < 1e-13, "{base}^{exponent}: {off:e}");
                }
            }
        }
        assert_eq!([power(0.0, 0.65), power(1.0, 0.65)], [0.0, 1.0]);
        assert!(power(-1.0, 0.65).is_nan());
    }
}
