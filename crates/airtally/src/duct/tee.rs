//! Where one duct becomes two, or two become one.

/// A tee or wye with sharp or rounded edges, seen from the duct that carries all of the air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tee {
    /// Part of the air that goes through the branch, 0 to 1.
    pub share: f64,
    /// Section of the branch in sections of the whole, above 0 to 1.
    pub branch: f64,
    /// Degrees between branch and straight leg; 90 is a tee.
    pub angle: f64,
    /// Radius of the edge in bores of the whole; 0 is sharp.
    pub edge: f64,
}

/// What the two legs take, on the speed of the duct that carries all of the air.
///
/// A loss below nought is right: the quick leg pulls the slow one along.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TeeLoss {
    /// Between the whole and the branch.
    pub branch: f64,
    /// Between the whole and the straight leg.
    pub run: f64,
}

/// What to allow on each side of a loss of a tee, on the speed of the whole. Two published methods lie that near to each other
/// but for a branch where air divides, to which the other gives 0.30 to 0.43 more.
pub const TEE_SPREAD: f64 = 0.3;

/// Loss where air divides.
///
/// * Equation: with q the share, a the section of the branch, r the edge and `c = cot((180° − θ)/2)`, branch
///   `0.95·(1 − q)² + q²·(1.3·c − 0.3 + (0.4 − 0.1·a)/a²·(1 − 0.9·√(r/a))) + 0.4·q·(1 − q)·(1 + 1/a)·c`, run
///   `0.03·(1 − q)² + 0.35·q² − 0.2·q·(1 − q)`
/// * Valid range: 0 ≤ q ≤ 1, 0 < a ≤ 1, 0° < θ ≤ 90°, 0 ≤ r ≤ a; `None` otherwise. Checked at 90° with sharp edges only
/// * Errors: ± [`TEE_SPREAD`]; a box is easier to foretell
/// * Source: Gardel 1957 (from memory)
///
/// ```
/// use airtally::duct::tee::{Tee, dividing};
/// // Worked numbers of a handbook table.
/// let loss = dividing(Tee { share: 0.5, branch: 1.0, angle: 90.0, edge: 0.0 }).unwrap();
/// assert!((loss.branch - 0.7625).abs() < 5e-5 && (loss.run - 0.045).abs() < 5e-5);
/// ```
pub fn dividing(tee: Tee) -> Option<TeeLoss> {
    let Tee { share: q, branch: a, edge, .. } = tee;
    let c = libm::tan(turn(tee)? / 2.0);
    let rest = 1.0 - q;
    let turned = 1.3 * c - 0.3 + (0.4 - 0.1 * a) / (a * a) * (1.0 - 0.9 * f64::sqrt(edge / a));
    let branch = 0.95 * rest * rest + q * q * turned + 0.4 * q * rest * (1.0 + 1.0 / a) * c;
    let run = 0.03 * rest * rest + 0.35 * q * q - 0.2 * q * rest;
    Some(TeeLoss { branch, run })
}

/// Loss where air comes together.
///
/// * Equation: branch `−0.92·(1 − q)² − q²·((1.2 − √r)·(cos θ/a − 1) + 0.8·(1 − 1/a²) − (1 − a)·cos θ/a) + (2 − a)·q·(1 − q)`,
///   run `0.03·(1 − q)² − q²·(1 + (1.62 − √r)·(cos θ/a − 1) − 0.38·(1 − a)) + (2 − a)·q·(1 − q)`
/// * Valid range, errors, source: as [`dividing`]
///
/// ```
/// use airtally::duct::tee::{Tee, combining};
/// // Worked numbers of a handbook table: the slow branch is pulled along.
/// let loss = combining(Tee { share: 0.3, branch: 1.0, angle: 90.0, edge: 0.0 }).unwrap();
/// assert!((loss.branch + 0.1328).abs() < 5e-5 && (loss.run - 0.2805).abs() < 5e-5);
/// ```
pub fn combining(tee: Tee) -> Option<TeeLoss> {
    let Tee { share: q, branch: a, edge, .. } = tee;
    let along = libm::cos(turn(tee)?) / a;
    let (rest, round) = (1.0 - q, f64::sqrt(edge));
    let mixed = (2.0 - a) * q * rest;
    let branch = (1.2 - round) * (along - 1.0) + 0.8 * (1.0 - 1.0 / (a * a)) - (1.0 - a) * along;
    let run = 1.0 + (1.62 - round) * (along - 1.0) - 0.38 * (1.0 - a);
    Some(TeeLoss {
        branch: -0.92 * rest * rest - q * q * branch + mixed,
        run: 0.03 * rest * rest - q * q * run + mixed,
    })
}

/// The angle in radians, where the formulas hold.
fn turn(tee: Tee) -> Option<f64> {
    let Tee { share, branch, angle, edge } = tee;
    let shares = (0.0..=1.0).contains(&share) && branch > 0.0 && branch <= 1.0;
    (shares && angle > 0.0 && angle <= 90.0 && (0.0..=branch).contains(&edge)).then(|| angle.to_radians())
}

#[cfg(test)]
mod tests {
    use super::*;

    const fn sharp(share: f64) -> Tee {
        Tee { share, branch: 1.0, angle: 90.0, edge: 0.0 }
    }

    /// Handbook of physics, section 5: branch and run dividing, then combining.
    const TABLE: [(f64, [f64; 4]); 3] = [
        (0.3, [0.7505, 0.0042, -0.1328, 0.2805]),
        (0.5, [0.7625, 0.045, 0.32, 0.4125]),
        (0.7, [0.8905, 0.1322, 0.7152, 0.5165]),
    ];

    #[test]
    fn the_table_of_tees_is_met() {
        for (share, handbook) in TABLE {
            let (apart, together) = (dividing(sharp(share)).unwrap(), combining(sharp(share)).unwrap());
            let ours = [apart.branch, apart.run, together.branch, together.run];
            for (ours, handbook) in ours.into_iter().zip(handbook) {
                assert!((ours - handbook).abs() < 6e-5, "q {share}: {ours} and not {handbook}");
            }
        }
    }

    /// The same table: what another published method says, without the branch where air divides.
    #[test]
    fn another_method_lies_in_the_spread() {
        let others = [(0.3, [-0.072, 0.0693, 0.375]), (0.5, [0.0, 0.4125, 0.525]), (0.7, [0.0588, 0.7205, 0.595])];
        for (share, others) in others {
            let (apart, together) = (dividing(sharp(share)).unwrap(), combining(sharp(share)).unwrap());
            for (ours, other) in [apart.run, together.branch, together.run].into_iter().zip(others) {
                assert!((ours - other).abs() < TEE_SPREAD, "q {share}: {ours} and {other}");
            }
        }
    }

    #[test]
    fn what_the_formulas_do_not_know_is_not_answered() {
        for tee in [
            sharp(1.01),
            sharp(f64::NAN),
            Tee { branch: 0.0, ..sharp(0.5) },
            Tee { angle: 120.0, ..sharp(0.5) },
            Tee { edge: -0.1, ..sharp(0.5) },
        ] {
            assert_eq!((dividing(tee), combining(tee)), (None, None), "{tee:?}");
        }
    }
}
