//! What takes the noise away before it is heard.

use super::spectrum::{BANDS, lg};
use crate::quantity::{Flow, Length, Volume};

/// Insertion loss of a round lined silencer, dB.
///
/// * Equation: `D = 1.5·(U/S)·α·L`, no more than 40 dB; U/S = 4/d
/// * Valid range: below c/(2·d)
/// * Source: Piening (from memory)
///
/// ```
/// use airtally::{quantity::Length, sound::silencer};
/// let loss = silencer(Length::from_mm(125.0), Length::from_m(0.9), [0.5; 8]);
/// assert!((loss[2] - 21.6).abs() < 0.005);
/// ```
pub fn silencer(bore: Length, length: Length, absorption: [f64; 8]) -> [f64; 8] {
    absorption.map(|alpha| (1.5 * 4.0 / bore.as_m() * alpha * length.as_m()).min(FLANKING))
}

/// What a branch gets less than the whole, dB. Equation: `10·lg(Q/q)`. Ten equal tubes: 10 dB.
pub fn split(whole: Flow, part: Flow) -> f64 {
    10.0 * lg(whole.as_m3h() / part.as_m3h())
}

/// What a flush opening throws back into the duct, dB.
///
/// * Equation: `10·lg(1 + (0.7·c/(π·f·D))²)`
/// * Errors: measured ducts scatter by 10 dB
/// * Source: after ASHRAE RP-1314, handbooks from 2011 (from memory)
///
/// ```
/// use airtally::{quantity::Length, sound::end_reflection};
/// let thrown = end_reflection(Length::from_mm(63.0));
/// for (ours, handbook) in thrown.into_iter().zip([25.7, 19.8, 13.9, 8.38, 3.93, 1.36, 0.382, 0.0987]) {
///     assert!((ours / handbook - 1.0).abs() < 0.01, "{ours} and {handbook}");
/// }
/// ```
pub fn end_reflection(bore: Length) -> [f64; 8] {
    BANDS.map(|f| {
        let part = 0.7 * SPEED_OF_SOUND / (std::f64::consts::PI * f * bore.as_m());
        10.0 * lg(1.0 + part * part)
    })
}

/// From sound power in a room to the level at an ear, dB.
///
/// * Equation: `L_p − L_W = 10·lg(Q_d/(4π·r²) + 4/A)`, `A = 0.163·V/T₆₀`, Q_d = 2 on a wall or ceiling
/// * Source: diffuse field after Sabine
///
/// ```
/// use airtally::{quantity::{Length, Volume}, sound::room};
/// let level = |m3, m| room(Volume::from_m3(m3), 0.5, Length::from_m(m));
/// assert!((level(30.0, 1.5) - -3.19).abs() < 0.005 && (level(75.0, 2.0) - -6.917).abs() < 0.0005);
/// ```
pub fn room(volume: Volume, reverberation: f64, distance: Length) -> f64 {
    let (absorption, r) = (0.163 * volume.as_m3() / reverberation, distance.as_m());
    10.0 * lg(2.0 / (4.0 * std::f64::consts::PI * r * r) + 4.0 / absorption)
}

/// The same in a furnished room of a dwelling whose reverberation nobody knows, in each band, dB: a second opinion on [`room`].
///
/// * Equation: `L_p − L_W = 12 − 5·lg V − 3·lg f − 10·lg r`
/// * Source: Schultz, as in the ASHRAE handbook's chapter on sound (from memory)
///
/// ```
/// use airtally::{quantity::{Length, Volume}, sound::furnished_room};
/// // Worked number of the handbook: 30 m³, 1.5 m, 500 Hz.
/// assert!((furnished_room(Volume::from_m3(30.0), Length::from_m(1.5))[3] + 5.243).abs() < 5e-4);
/// ```
pub fn furnished_room(volume: Volume, distance: Length) -> [f64; 8] {
    BANDS.map(|f| 12.0 - 5.0 * lg(volume.as_m3()) - 3.0 * lg(f) - 10.0 * lg(distance.as_m()))
}

/// dB: beyond this sound goes round a silencer.
pub(super) const FLANKING: f64 = 40.0;
/// m/s, at 20 °C.
const SPEED_OF_SOUND: f64 = 343.0;
