//! Where a duct becomes wider or narrower, and where it enters or leaves a box.

use crate::power::power;
use crate::quantity::Area;

/// Air that leaves a box into a tube: flush and sharp, on the tube's speed. Idelchik 3-1.
pub const INTO_TUBE: f64 = 0.5;
/// Air that enters a box from a duct, on the duct's speed: all of its speed is lost. Borda and Carnot.
pub const INTO_BOX: f64 = 1.0;

/// A sudden widening, on the speed in the narrow part.
///
/// * Equation: `K = (1 − A₁/A₂)²`
/// * Valid range: A₁ ≤ A₂, Re > 3300; `None` otherwise
/// * Source: Borda and Carnot; Idelchik, diagram 4-1
///
/// ```
/// use airtally::{duct::change::widening, quantity::Length};
/// let (narrow, wide) = (Length::from_mm(63.0).section(), Length::from_mm(125.0).section());
/// assert!((widening(narrow, wide).unwrap() - 0.5565).abs() < 5e-5);
/// ```
pub fn widening(narrow: Area, wide: Area) -> Option<f64> {
    let open = 1.0 - share(narrow, wide)?;
    Some(open * open)
}

/// A sudden narrowing, on the speed in the narrow part.
///
/// * Equation: `K = 0.5·(1 − A₁/A₂)^0.75`
/// * Valid range: A₁ ≤ A₂, Re > 10 000; `None` otherwise
/// * Source: Idelchik, diagram 4-9
///
/// ```
/// use airtally::{duct::change::narrowing, quantity::Length};
/// let (narrow, wide) = (Length::from_mm(125.0).section(), Length::from_mm(160.0).section());
/// assert!((narrowing(narrow, wide).unwrap() - 0.2466).abs() < 5e-5);
/// ```
pub fn narrowing(narrow: Area, wide: Area) -> Option<f64> {
    Some(0.5 * power(1.0 - share(narrow, wide)?, 0.75))
}

/// Air that leaves a box into a tube over a rounded edge, on the tube's speed.
///
/// * Equation: `K = 0.0696·(1 − 0.569·r)·λ² + (λ − 1)²`, `λ = 1 + 0.622·(1 − 0.30·√r − 0.70·r)⁴`
/// * Units: r in bores
/// * Valid range: 0 ≤ r ≤ 1; `None` otherwise. Flush with the wall; at 0 it is a sharp edge, 0.57 to Idelchik's 0.5
/// * Source: Rennels and Hudson 2012, Pipe Flow, as a public reference library has it
///
/// ```
/// use airtally::duct::change::into_rounded_tube;
/// // Worked number of that library.
/// assert!((into_rounded_tube(0.1).unwrap() - 0.2029).abs() < 5e-5);
/// ```
pub fn into_rounded_tube(radius: f64) -> Option<f64> {
    let narrowed = 1.0 - 0.30 * f64::sqrt(radius) - 0.70 * radius;
    let squared = narrowed * narrowed;
    let jet = 1.0 + 0.622 * squared * squared;
    let loss = 0.0696 * (1.0 - 0.569 * radius) * jet * jet + (jet - 1.0) * (jet - 1.0);
    (0.0..=1.0).contains(&radius).then_some(loss)
}

fn share(narrow: Area, wide: Area) -> Option<f64> {
    let share = narrow.as_m2() / wide.as_m2();
    (share > 0.0 && share <= 1.0).then_some(share)
}
