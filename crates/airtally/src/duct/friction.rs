//! Friction of the wall: from creeping to turbulent in one formula.

use crate::power::power;

/// The friction factor (Darcy's, four times Fanning's) with how it changes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Friction {
    /// `f`.
    pub factor: f64,
    /// `Re/f · df/dRe`: −1 where the flow creeps, close to 0 where only roughness counts.
    pub exponent: f64,
}

/// Friction at a Reynolds number, for a roughness in bores (`ε/d`).
///
/// * Equation: `f = 8·((8/Re)¹² + (A + B)^(−1.5))^(1/12)`, `A = (2.457·ln(1/((7/Re)^0.9 + 0.27·ε/d)))¹⁶`, `B = (37530/Re)¹⁶`
/// * Valid range: Re ≥ 0, ε/d from 0 to 0.05
/// * Errors: up to 3.1 % against Colebrook and White from Re 4000 on; between 2000 and 4000 no formula is right, since real
///   tubes jump
/// * Source: Churchill 1977, Chemical Engineering 84(24), 91–92
///
/// ```
/// use airtally::duct::friction::friction;
/// // Worked numbers of a public reference library.
/// assert!((friction(11_000.0, 1.1e-4).factor - 0.030407).abs() < 5e-7);
/// assert!((friction(1000.0, 0.0).factor - 0.064).abs() < 5e-6);
/// ```
pub fn friction(reynolds: f64, roughness: f64) -> Friction {
    friction_with(reynolds, thin(reynolds), roughness)
}

/// The part of the formula that smooth walls have: `(7/Re)^0.9`.
pub(crate) fn thin(reynolds: f64) -> f64 {
    power(7.0 / reynolds, 0.9)
}

/// [`friction`] where that part is known already.
pub(crate) fn friction_with(reynolds: f64, thin: f64, roughness: f64) -> Friction {
    if reynolds < CREEPING {
        return Friction { factor: 64.0 / reynolds, exponent: -1.0 };
    }
    let wall = thin + 0.27 * roughness;
    let log = -2.457 * libm::log(wall);
    let log_15 = power_15(log);
    let a = log_15 * log;
    let b = power_16(37_530.0 / reynolds);
    let sum = a + b;
    let root = 1.0 / (sum * f64::sqrt(sum));
    let creep = power_12(8.0 / reynolds);
    let total = creep + root;
    // Re·d/dRe of A + B, and with it of the whole bracket.
    let sum_grows = 16.0 * (log_15 * 2.457 * 0.9 * thin / wall - b);
    let total_grows = -12.0 * creep - 1.5 * root / sum * sum_grows;
    Friction { factor: 8.0 * twelfth_root(creep, root, sum), exponent: total_grows / (12.0 * total) }
}

/// Below this the formula is Hagen and Poiseuille's to the last bit, and its powers would overflow.
const CREEPING: f64 = 1.0;

/// `(creep + root)^(1/12)` with `root = sum^(−3/2)`. Where hardly anything creeps, roots and three terms of the series are
/// good to 10⁻¹³ and much quicker.
fn twelfth_root(creep: f64, root: f64, sum: f64) -> f64 {
    let part = creep / root;
    if part > HARDLY {
        return power(creep + root, 1.0 / 12.0);
    }
    (1.0 + part * (1.0 / 12.0 - 11.0 / 288.0 * part)) / f64::sqrt(f64::sqrt(f64::sqrt(sum)))
}

/// The next term of the series is below 0.025 of this cubed.
const HARDLY: f64 = 1e-4;

fn power_12(x: f64) -> f64 {
    let x2 = x * x;
    let x4 = x2 * x2;
    x4 * x4 * x4
}

fn power_15(x: f64) -> f64 {
    let x2 = x * x;
    let x4 = x2 * x2;
    x4 * x4 * x4 * x2 * x
}

fn power_16(x: f64) -> f64 {
    let x2 = x * x;
    let x4 = x2 * x2;
    let x8 = x4 * x4;
    x8 * x8
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Table of the handbook of physics, section 2, worked with a public reference library.
    #[test]
    fn the_table_of_the_reference_library_is_met() {
        let table = [
            (3000.0, 1e-4, 0.043049),
            (5000.0, 1e-4, 0.038015),
            (30_000.0, 6e-4, 0.025117),
            (100_000.0, 6e-4, 0.02084),
        ];
        for (reynolds, roughness, factor) in table {
            let ours = friction(reynolds, roughness).factor;
            assert!((ours - factor).abs() < 6e-7, "Re {reynolds}: {ours} and not {factor}");
        }
    }

    #[test]
    fn the_exponent_is_the_slope_of_the_formula() {
        for reynolds in [0.5, 3.0, 7.0, 600.0, 2100.0, 2700.0, 4000.0, 20_000.0, 3e5] {
            for roughness in [0.0, 1e-4, 2e-3, 0.04] {
                let step = 1e-5;
                let at = |factor: f64| libm::log(friction(reynolds * factor, roughness).factor);
                let slope = (at(1.0 + step) - at(1.0 - step)) / (libm::log1p(step) - libm::log1p(-step));
                let ours = friction(reynolds, roughness).exponent;
                assert!((slope - ours).abs() < 1e-5, "Re {reynolds}, ε/d {roughness}: {ours} and not {slope}");
            }
        }
    }
}
