//! A plate with a hole, that takes from a run what the others need.

use crate::air::Air;
use crate::power::power;
use crate::quantity::{Flow, Length, Pressure};

/// Loss of a thin sharp plate, on the speed of the tube, by its hole in bores (`d₀/d`).
///
/// * Equation: `K = (1 + 0.707·√(1 − β²) − β²)² / β⁴`, `β = d₀/d`
/// * Valid range: 0 < β ≤ 1; `None` otherwise. At least 3 bores from a bend or box
/// * Errors: 5 to 10 % below β 0.65, 30 % at 0.8 where little is lost
/// * Source: Idelchik, diagram 4-11 (from memory)
///
/// ```
/// use airtally::duct::restrictor::thin_plate;
/// // Worked number of a handbook table: a hole of 40 mm in a bore of 63 mm.
/// assert!((thin_plate(40.0 / 63.0).unwrap() - 8.04).abs() < 0.005);
/// ```
pub fn thin_plate(hole: f64) -> Option<f64> {
    let open = hole * hole;
    let narrowed = 1.0 + 0.707 * f64::sqrt(1.0 - open) - open;
    (hole > 0.0 && hole <= 1.0).then(|| narrowed * narrowed / (open * open))
}

/// Loss of a plate that is not thin, on the speed of the tube, by its hole in bores and its thickness in holes (`l = t/d₀`).
///
/// * Equation: `K = (0.5·(1 − β²)^0.75 + τ·(1 − β²)^1.375 + (1 − β²)² + 0.02·l) / β⁴`, `τ = (2.4 − l)·10^(−φ)`,
///   `φ = 0.25 + 0.535·l⁸/(0.05 + l⁸)`
/// * Valid range: 0 < β ≤ 1, 0.015 < l ≤ 2.4, Reynolds number of the hole above 1000; `None` otherwise
/// * Source: Idelchik, diagram 4-15
///
/// ```
/// use airtally::duct::restrictor::thick_plate;
/// // Worked number of a handbook table: a hole of 40 mm in a plate of 2 mm and a bore of 63 mm.
/// assert!((thick_plate(40.0 / 63.0, 2.0 / 40.0).unwrap() - 8.287).abs() < 5e-4);
/// ```
pub fn thick_plate(hole: f64, thickness: f64) -> Option<f64> {
    let open = hole * hole;
    let shut = 1.0 - open;
    let eighth = power(thickness, 8.0);
    let phi = 0.25 + 0.535 * eighth / (0.05 + eighth);
    let tau = (2.4 - thickness) * power(10.0, -phi);
    let jet = 0.5 * power(shut, 0.75) + tau * power(shut, 1.375) + shut * shut + 0.02 * thickness;
    let known = hole > 0.0 && hole <= 1.0 && thickness > 0.015 && thickness <= 2.4;
    known.then_some(jet / (open * open))
}

/// The hole that takes this pressure at this flow.
///
/// * Equation: [`thin_plate`] solved for the hole by halving: the loss falls steadily as the hole grows
/// * Units: mm
/// * Valid range: holes of 0.02 to 0.98 bores; `None` where none of them fits
/// * Source: as [`thin_plate`]
///
/// ```
/// use airtally::{air::Air, duct::restrictor::hole_for, quantity::{Flow, Length, Pressure, Temperature}};
/// let air = Air::at(Temperature::from_celsius(20.0), 0.5, Pressure::from_pa(101_325.0)).unwrap();
/// // Worked number of a handbook: 20 Pa at 25 m³/h in a bore of 63 mm.
/// let hole = hole_for(Pressure::from_pa(20.0), Flow::from_m3h(25.0), Length::from_mm(63.0), air).unwrap();
/// assert!((hole.as_mm() - 41.18).abs() < 0.01);
/// ```
pub fn hole_for(pressure: Pressure, flow: Flow, bore: Length, air: Air) -> Option<Length> {
    let speed = (flow / bore.section()).as_ms();
    let wanted = pressure.as_pa() / (air.density() * speed * speed / 2.0);
    let (mut low, mut high) = (0.02, 0.98);
    if !(thin_plate(high)? <= wanted && wanted <= thin_plate(low)?) {
        return None;
    }
    for _ in 0..HALVINGS {
        let middle = (low + high) / 2.0;
        if thin_plate(middle)? > wanted {
            low = middle;
        } else {
            high = middle;
        }
    }
    Some(bore * ((low + high) / 2.0))
}

/// Far below a hundredth of a millimetre.
const HALVINGS: usize = 40;
