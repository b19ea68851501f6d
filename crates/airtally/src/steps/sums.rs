//! The sums of the work on site: sizes of holes, traps, bends, and what may leak or differ.

use crate::quantity::{Area, Flow, Length, Pressure, Velocity};

/// Pressure of 1 mm of water. Conventional, exact.
const PASCAL_PER_MM_WATER: f64 = 9.80665;

/// Core of a wall for an insulated duct.
///
/// * Equation: `D = d + 2·t + c`
/// * Units: mm
/// * Valid range: every length; sizes that are not negative make sense
/// * Source: common practice; worked number of the site handbook, section 2: 160 + 2 × 25 with 20 to spare is 230
///
/// ```
/// use airtally::{quantity::Length, steps::wall_core};
/// let core = wall_core(Length::from_mm(160.0), Length::from_mm(25.0), Length::from_mm(20.0));
/// assert!((core.as_mm() - 230.0).abs() < 1e-9);
/// ```
pub fn wall_core(duct: Length, insulation: Length, clearance: Length) -> Length {
    duct + insulation * 2.0 + clearance
}

/// Drop of a condensate trap under suction, from the pan to the outlet.
///
/// * Equation: `H = p/9.80665 + e`
/// * Units: p Pa, H and e mm
/// * Valid range: p ≥ 0, the suction at the drain pan with dirty filters
/// * Source: a published trap-sizing note; its worked numbers, in whole millimetres upward: 250 Pa 51 mm, 400 Pa 66 mm
///
/// ```
/// use airtally::{quantity::{Length, Pressure}, steps::{trap_drop, trap_seal}};
/// let drop = |pa| trap_drop(Pressure::from_pa(pa), Length::from_mm(25.0));
/// let upward = |length: Length| length.as_mm().ceil();
/// assert_eq!((upward(drop(250.0)), trap_seal(drop(250.0)).as_mm().round()), (51.0, 25.0));
/// assert_eq!((upward(drop(400.0)), trap_seal(drop(400.0)).as_mm().round()), (66.0, 33.0));
/// ```
pub fn trap_drop(suction: Pressure, extra: Length) -> Length {
    Length::from_mm(suction.as_pa() / PASCAL_PER_MM_WATER) + extra
}

/// Water seal of a condensate trap: half of its drop. See [`trap_drop`] for the worked numbers.
pub fn trap_seal(drop: Length) -> Length {
    drop / 2.0
}

/// Smallest radius of a bend.
///
/// * Equation: `r = k·OD`
/// * Source: common practice, k = 2; so 75 mm outside bends no tighter than 150 mm
///
/// ```
/// use airtally::{quantity::Length, steps::bend_radius};
/// assert!((bend_radius(Length::from_mm(75.0), 2.0).as_mm() - 150.0).abs() < 1e-9);
/// ```
pub fn bend_radius(outside: Length, ratio: f64) -> Length {
    outside * ratio
}

/// Depth of the smallest joist that bears a hole on the rule's share of its depth.
///
/// * Equation: `d = D/s`
/// * Units: mm; s the largest hole as a share of the depth
/// * Valid range: s > 0; zero otherwise. Solid timber only: trusses, I-joists, LVL and steel belong to their designer
/// * Source: IRC R502.8, s = 1/3: an 11.25 in joist takes 3.75 in, which is the handbook's 2 × 12 row
///
/// ```
/// use airtally::{quantity::Length, steps::joist_depth};
/// let depth = joist_depth(Length::from_inch(3.75), 1.0 / 3.0);
/// assert!((depth.as_inch() - 11.25).abs() < 1e-9);
/// ```
pub fn joist_depth(hole: Length, share: f64) -> Length {
    if share > 0.0 { hole / share } else { Length::ZERO }
}

/// Free area of an outside grille.
///
/// * Equation: `A = q/v`
/// * Units: q m³/h, v m/s, A m²
/// * Valid range: v > 0; zero otherwise
/// * Source: continuity; 180 m³/h at 2 m/s is 0.05 m³/s over 2 m/s, 0.025 m²
///
/// ```
/// use airtally::{quantity::{Flow, Velocity}, steps::grille_area};
/// let area = grille_area(Flow::from_m3h(180.0), Velocity::from_ms(2.0));
/// assert!((area.as_m2() - 0.025).abs() < 1e-12);
/// ```
pub fn grille_area(flow: Flow, speed: Velocity) -> Area {
    if speed > Velocity::ZERO { flow / speed } else { Area::ZERO }
}

/// Smallest maximum of a unit that still has a reserve at boost.
///
/// * Equation: `q_max = q_boost/s`
/// * Valid range: s > 0; zero otherwise
/// * Source: common practice, boost at most 80 % of the maximum: 160 m³/h asks for 200
///
/// ```
/// use airtally::{quantity::Flow, steps::unit_maximum};
/// assert!((unit_maximum(Flow::from_m3h(160.0), 0.8).as_m3h() - 200.0).abs() < 1e-9);
/// ```
pub fn unit_maximum(boost: Flow, share: f64) -> Flow {
    if share > 0.0 { boost / share } else { Flow::ZERO }
}

/// A part of a flow: what may leak, or what two totals may differ by.
///
/// * Equation: `q = s·Q`
/// * Source: arithmetic; the handbook's 3–5 % of a design flow of 160 m³/h is 4.8 to 8 m³/h
///
/// ```
/// use airtally::{quantity::Flow, steps::part_of_flow};
/// assert!((part_of_flow(Flow::from_m3h(160.0), 0.05).as_m3h() - 8.0).abs() < 1e-9);
/// ```
pub fn part_of_flow(flow: Flow, share: f64) -> Flow {
    flow * share
}
