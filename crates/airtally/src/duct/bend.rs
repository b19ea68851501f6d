//! Round bends and mitres. In the small tubes of a house a bend takes twice what tables of large ducts say.

/// A bend of a round duct.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bend {
    /// Degrees turned.
    pub angle: f64,
    /// Radius of the middle line in bores.
    pub radius: f64,
}

/// What a bend takes, on the speed of its duct.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BendLoss {
    /// The part that grows when the flow is slow: times [`slow`].
    pub shape: f64,
    /// Length of the bend in bores: friction like straight duct, unless the bend is already in the length.
    pub arc: f64,
}

/// Loss of a bend.
///
/// * Equation: `K = k_Re·A₁·B₁ + f·arc`, `A₁ = 0.9·sin δ` up to 70°, 1 at 90°, `0.7 + 0.35·δ/90°` from 100°,
///   `B₁ = 0.21 / r^2.5` for r ≤ 1 and `0.21 / √r` above, arc `= 0.0175·δ·r`
/// * Units: δ in degrees, r in bores
/// * Valid range: 0 < δ ≤ 180, 0.5 ≤ r ≤ 3 with 10 bores straight before and behind; larger r is held to be sweeping. `None` below 0.5
/// * Errors: three published methods differ by a third at the speeds of tubes
/// * Source: Idelchik, Handbook of Hydraulic Resistance, 3rd edition, diagram 6-1
///
/// ```
/// use airtally::duct::bend::{Bend, loss, slow};
/// let bend = loss(Bend { angle: 90.0, radius: 1.5 }).unwrap();
/// // Worked number of a handbook table: 0.3376 at Re 11 000 without the arc.
/// assert!((bend.shape * slow(11_000.0) - 0.3376).abs() < 0.002);
/// ```
pub fn loss(bend: Bend) -> Option<BendLoss> {
    let Bend { angle, radius } = bend;
    if !(angle > 0.0 && angle <= 180.0 && radius >= 0.5 && radius.is_finite()) {
        return None;
    }
    let turned = turning(angle);
    let sharp = if radius <= 1.0 { 0.21 / (radius * radius * f64::sqrt(radius)) } else { 0.21 / f64::sqrt(radius) };
    Some(BendLoss { shape: turned * sharp, arc: 0.0175 * angle * radius })
}

/// `A₁`, with straight lines where the print leaves gaps.
fn turning(angle: f64) -> f64 {
    let gentle = |angle: f64| 0.9 * sine(angle.to_radians());
    let sharp = |angle: f64| 0.7 + 0.35 * angle / 90.0;
    let between = |from: (f64, f64), to: (f64, f64)| from.1 + (to.1 - from.1) * (angle - from.0) / (to.0 - from.0);
    if angle <= 70.0 {
        gentle(angle)
    } else if angle <= 90.0 {
        between((70.0, gentle(70.0)), (90.0, 1.0))
    } else if angle <= 100.0 {
        between((90.0, 1.0), (100.0, sharp(100.0)))
    } else {
        sharp(angle)
    }
}

/// Sine of an angle from 0 to 1.3, by its series: exact to the last digits there. A general one reduces any angle first and
/// would cost every visitor of the page 2 kB.
fn sine(x: f64) -> f64 {
    let square = x * x;
    let series = |rest: f64, n: f64| 1.0 - square / (2.0 * n * (2.0 * n + 1.0)) * rest;
    x * [9.0, 8.0, 7.0, 6.0, 5.0, 4.0, 3.0, 2.0, 1.0].into_iter().fold(1.0, series)
}

/// Loss of a mitre: two ducts cut at a slant and joined without a radius.
///
/// * Equation: `K = 0.42·sin(δ/2) + 2.56·sin³(δ/2)`
/// * Units: δ in degrees turned
/// * Valid range: 0 < δ ≤ 150; `None` otherwise
/// * Errors: turbulent flow; four times a pressed bend at 90°, which is why nobody should make one
/// * Source: Rennels and Hudson 2012, Pipe Flow, as a public reference library has it
///
/// ```
/// use airtally::duct::bend::mitre;
/// // Worked number of that library.
/// assert!((mitre(90.0).unwrap() - 1.202).abs() < 5e-4);
/// ```
pub fn mitre(angle: f64) -> Option<f64> {
    let half = sine(angle.to_radians() / 2.0);
    (angle > 0.0 && angle <= 150.0).then_some((0.42 + 2.56 * half * half) * half)
}

/// How much more a bend takes where the flow is slow (`k_Re`), straight between the printed points.
///
/// * Valid range: held at 2.0 below Re 10 000 and at 1.0 above 400 000
/// * Source: Idelchik, diagram 6-1, for r > 0.7 (from memory)
pub fn slow(reynolds: f64) -> f64 {
    slow_and_slope(reynolds).0
}

/// `k_Re` and `dk_Re/dRe`.
pub(crate) fn slow_and_slope(reynolds: f64) -> (f64, f64) {
    let above = SLOW.iter().position(|(known, _)| *known >= reynolds);
    let (first, last) = (SLOW[0], SLOW[SLOW.len() - 1]);
    match above {
        Some(0) => (first.1, 0.0),
        Some(at) => {
            let ((x0, y0), (x1, y1)) = (SLOW[at - 1], SLOW[at]);
            let slope = (y1 - y0) / (x1 - x0);
            (y0 + slope * (reynolds - x0), slope)
        }
        None => (last.1, 0.0),
    }
}

/// Idelchik, diagram 6-1, from memory.
const SLOW: [(f64, f64); 12] = [
    (1e4, 2.0),
    (1.4e4, 1.89),
    (2e4, 1.77),
    (3e4, 1.64),
    (4e4, 1.56),
    (6e4, 1.46),
    (8e4, 1.38),
    (1e5, 1.30),
    (1.4e5, 1.21),
    (2e5, 1.15),
    (3e5, 1.06),
    (4e5, 1.0),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_series_is_the_sine() {
        for tenth in 0..=13 {
            let x = f64::from(tenth) / 10.0;
            assert!((sine(x) - libm::sin(x)).abs() < 1e-15, "{x}");
        }
    }

    /// Table of the handbook of physics, section 5: Idelchik, local part only.
    #[test]
    fn the_table_of_bends_is_met() {
        let table =
            [(1.0, 11e3, 0.4135), (2.0, 6e3, 0.297), (2.0, 11e3, 0.2924), (2.0, 2e5, 0.1708), (3.0, 11e3, 0.2387)];
        for (radius, reynolds, k) in table {
            let ours = loss(Bend { angle: 90.0, radius }).unwrap().shape * slow(reynolds);
            assert!((ours - k).abs() < 0.004, "r {radius}, Re {reynolds}: {ours} and not {k}");
        }
    }
}
