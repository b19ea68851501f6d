//! Tubes whose inside is not a smooth wall: corrugated through and through, or pushed together.

use crate::quantity::Length;

/// Friction factor of a tube of a single corrugated wall, without an inner skin: the same at any speed.
///
/// * Equation: `f = K·d/s`, `K = (1 − (d/(d + 0.438·s))²)²`: each corrugation is a sudden widening
/// * Units: bore d and pitch s alike
/// * Valid range: turbulent flow, corrugations about as deep as they are long; `None` for a bore or pitch of nought
/// * Errors: ± 30 %
/// * Source: Hawthorne 1963, Product Engineering, 10 June, 98–100
///
/// ```
/// use airtally::{duct::corrugated::friction, quantity::Length};
/// // Worked number of a handbook: twice what a smooth tube of this bore has.
/// let factor = friction(Length::from_mm(63.0), Length::from_mm(6.0)).unwrap();
/// assert!((factor - 0.06468).abs() < 5e-6);
/// ```
pub fn friction(bore: Length, pitch: Length) -> Option<f64> {
    let (d, s) = (bore.as_m(), pitch.as_m());
    let share = d / (d + 0.438 * s);
    let widened = 1.0 - share * share;
    (d > 0.0 && s > 0.0 && d.is_finite()).then_some(widened * widened * d / s)
}

/// How many times as much a flexible duct with a wire takes when it is pushed together, by the part of its full length that
/// it is shorter (0 is fully stretched).
///
/// * Equation: `1 + 0.58·r·e^(−0.00496·D)`, r in %, D in mm
/// * Valid range: tested for bores of 150 to 250 mm and up to 30 %; `None` outside 100 to 250 mm and 0 to 30 %
/// * Source: Abushakra, Walker and Sherman 2004, ASHRAE Transactions (from memory)
///
/// ```
/// use airtally::{duct::corrugated::pushed_together, quantity::Length};
/// // Worked number of a handbook: 150 mm, pushed together by 15 %.
/// assert!((pushed_together(Length::from_mm(150.0), 0.15).unwrap() - 5.134).abs() < 5e-4);
/// ```
pub fn pushed_together(bore: Length, shorter: f64) -> Option<f64> {
    let known = (100.0..=250.0).contains(&bore.as_mm()) && (0.0..=0.3).contains(&shorter);
    known.then(|| 1.0 + 58.0 * shorter * libm::exp(-0.00496 * bore.as_mm()))
}
