//! What makes the noise.

use super::spectrum::{BANDS, LG_BANDS, Spectrum, lg};
use crate::quantity::{Flow, Length, Pressure, Velocity};

/// Sound power of a fan into the duct on each side, dB.
///
/// * Equation: `L_W = 37 + 10·lg Q + 20·lg Δp_t`, Q in m³/s, Δp_t in Pa
/// * Errors: ±4 dB
/// * Source: VDI 2081-1 (from memory)
///
/// ```
/// use airtally::{quantity::{Flow, Pressure}, sound::fan};
/// let level = |m3h, pa| fan(Flow::from_m3h(m3h), Pressure::from_pa(pa));
/// assert!((level(200.0, 150.0) - 67.97).abs() < 0.005 && (level(120.0, 60.0) - 57.79).abs() < 0.005);
/// ```
pub fn fan(flow: Flow, pressure: Pressure) -> f64 {
    37.0 + 10.0 * lg(flow.as_m3h() / 3600.0) + 20.0 * lg(pressure.as_pa())
}

/// How much louder a fan is at this part of its speed, dB. Equation: `50·lg(n₂/n₁)`.
///
/// ```
/// // Worked number of the handbook: at 70 %.
/// assert!((airtally::sound::at_speed(0.7) + 7.745).abs() < 5e-4);
/// ```
pub fn at_speed(part: f64) -> f64 {
    50.0 * lg(part)
}

/// How a fan with backward-curved blades shares its level among the bands, dB: 8 below the sum, falling by 5 from octave to
/// octave above 500 Hz. From memory.
pub const fn fan_bands(level: f64) -> Spectrum {
    let l = level - 8.0;
    Spectrum([l, l, l, l, l - 5.0, l - 10.0, l - 15.0, l - 20.0])
}

/// Sound power of a valve into its room, dB(A) at 30 m³/h as measured, at another flow. Falls by 5 dB an octave on both sides
/// of 500 to 2000 Hz; from memory.
///
/// * Equation: `L_W = L_30 + 60·lg(q/30)`
/// * Errors: a measured spectrum and a measured flow are better
/// * Source: common practice, no source
///
/// ```
/// use airtally::{quantity::Flow, sound::valve};
/// let level = |m3h| valve(20.0, Flow::from_m3h(m3h)).a_weighted();
/// // Common practice: half the pressure, by less flow through the same gap, is about 9 dB less.
/// assert!((level(30.0) - 20.0).abs() < 1e-9 && (level(30.0) - level(30.0 / 2.0_f64.sqrt()) - 9.03).abs() < 0.01);
/// ```
pub fn valve(measured: f64, flow: Flow) -> Spectrum {
    let shape = Spectrum([-15.0, -10.0, -5.0, 0.0, 0.0, 0.0, -5.0, -10.0]);
    let level = measured + 60.0 * lg(flow.as_m3h() / 30.0) - shape.a_weighted();
    shape.map(|own, _| own + level)
}

/// Flow noise of a straight round duct.
///
/// * Equation: each octave `−2 − 26·lg(1.14 + 0.02·f/v)` of [`straight_level`]
/// * Valid range: 3 to 20 m/s; below it is an extrapolation
/// * Source: VDI 2081-1 (from memory)
pub fn straight(speed: Velocity, bore: Length) -> Spectrum {
    let v = speed.as_ms();
    if v <= 0.0 {
        return Spectrum::SILENT;
    }
    let level = straight_level(speed, bore);
    Spectrum(BANDS.map(|f| level - 2.0 - 26.0 * lg(1.14 + 0.02 * f / v)))
}

/// Flow noise of a straight round duct, all octaves together, dB.
///
/// * Equation: `L_W = 7 + 50·lg v + 10·lg S`
/// * Valid range, source: as [`straight`]
///
/// ```
/// use airtally::{quantity::{Length, Velocity}, sound::straight_level};
/// // Worked number of the handbook: 4 m/s in 160 mm.
/// assert!((straight_level(Velocity::from_ms(4.0), Length::from_mm(160.0)) - 20.14).abs() < 0.005);
/// ```
pub fn straight_level(speed: Velocity, bore: Length) -> f64 {
    7.0 + 50.0 * lg(speed.as_ms()) + 10.0 * lg(bore.section().as_m2())
}

/// Flow noise of a bend.
///
/// * Equation: `L_W,oct = L_s + 10·lg Δf + 30·lg d + 50·lg v`, `St = f·d/v`, `Δf = f/√2`, `L_s = 12 − 21.5·(lg St)^1.268`
/// * Valid range: St ≥ 1; below it the value at 1 is kept
/// * Source: VDI 2081-1, Strouhal method (from memory)
pub fn bend(speed: Velocity, bore: Length) -> Spectrum {
    let (v, d) = (speed.as_ms(), bore.as_m());
    if v <= 0.0 || d <= 0.0 {
        return Spectrum::SILENT;
    }
    let (lg_d, lg_v) = (lg(d), lg(v));
    let size = 12.0 - 10.0 * lg(1.414) + 30.0 * lg_d + 50.0 * lg_v;
    Spectrum(LG_BANDS.map(|lg_f| {
        let strouhal = (lg_f + lg_d - lg_v).max(0.0);
        size + 10.0 * lg_f - 21.5 * crate::power::power(strouhal, 1.268)
    }))
}
