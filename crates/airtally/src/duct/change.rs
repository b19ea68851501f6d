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

fn share(narrow: Area, wide: Area) -> Option<f64> {
    let share = narrow.as_m2() / wide.as_m2();
    (share > 0.0 && share <= 1.0).then_some(share)
}
