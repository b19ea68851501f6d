//! Levels in octave bands.

/// Middle frequencies of the octave bands, Hz.
pub const BANDS: [f64; 8] = [63.0, 125.0, 250.0, 500.0, 1000.0, 2000.0, 4000.0, 8000.0];

/// Their logarithms to 10.
pub(super) const LG_BANDS: [f64; 8] = [
    1.799_340_549_453_581_7,
    2.096_910_013_008_056_2,
    2.397_940_008_672_037_5,
    2.698_970_004_336_018_7,
    3.0,
    3.301_029_995_663_981_3,
    3.602_059_991_327_962_5,
    3.903_089_986_991_943_8,
];

/// A-weights of the bands, dB. Source: IEC 61672-1.
const A_WEIGHTS: [f64; 8] = [-26.2, -16.1, -8.6, -3.2, 0.0, 1.2, 1.0, -1.1];

/// Noise criterion curves: number, then their levels. Source: ANSI/ASA S12.2; those of 20, 30 and 40 from memory.
const CURVES: [(f64, [f64; 8]); 7] = [
    (15.0, [47.0, 36.0, 29.0, 22.0, 17.0, 14.0, 12.0, 11.0]),
    (20.0, [51.0, 40.0, 33.0, 26.0, 22.0, 19.0, 17.0, 16.0]),
    (25.0, [54.0, 44.0, 37.0, 31.0, 27.0, 24.0, 22.0, 21.0]),
    (30.0, [57.0, 48.0, 41.0, 35.0, 31.0, 29.0, 28.0, 27.0]),
    (35.0, [60.0, 52.0, 45.0, 40.0, 36.0, 34.0, 33.0, 32.0]),
    (40.0, [64.0, 56.0, 50.0, 45.0, 41.0, 39.0, 38.0, 37.0]),
    (45.0, [67.0, 60.0, 54.0, 49.0, 46.0, 44.0, 43.0, 42.0]),
];

/// A level in each octave band, dB: sound power over 1 pW or sound pressure over 20 µPa, as its maker says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spectrum(pub [f64; 8]);

impl Spectrum {
    /// No sound at all that anybody could hear.
    pub const SILENT: Self = Self([-100.0; 8]);

    /// The same level in every band.
    pub const fn flat(level: f64) -> Self {
        Self([level; 8])
    }

    /// A band at a time.
    pub fn map(self, change: impl Fn(f64, usize) -> f64) -> Self {
        let mut bands = self.0;
        for (at, level) in bands.iter_mut().enumerate() {
            *level = change(*level, at);
        }
        Self(bands)
    }

    /// Less so much in each band.
    pub fn less(self, damping: [f64; 8]) -> Self {
        self.map(|level, at| level - damping[at])
    }

    /// Both sounds together.
    ///
    /// ```
    /// use airtally::sound::Spectrum;
    /// // Worked numbers of the handbook: 30 and 30 dB are 33.01 dB, 30 and 24 dB are 30.97 dB.
    /// assert!((Spectrum::flat(30.0).and(Spectrum::flat(30.0)).0[0] - 33.01).abs() < 0.005);
    /// assert!((Spectrum::flat(30.0).and(Spectrum::flat(24.0)).0[0] - 30.97).abs() < 0.005);
    /// ```
    pub fn and(self, other: Self) -> Self {
        self.map(|level, at| level_of(energy(level) + energy(other.0[at])))
    }

    /// The level that an ear hears, dB(A). Equation: `L = 10·lg Σ 10^((L_i + A_i)/10)`. Source: IEC 61672-1.
    ///
    /// ```
    /// use airtally::sound::Spectrum;
    /// // Worked numbers of the handbook.
    /// let heard = Spectrum([48.0, 42.0, 34.0, 27.0, 21.0, 16.0, 12.0, 10.0]);
    /// assert!((heard.a_weighted() - 31.25).abs() < 0.005);
    /// assert!((heard.nc() - 22.5).abs() < 1e-9);
    /// ```
    pub fn a_weighted(self) -> f64 {
        level_of(self.0.iter().zip(A_WEIGHTS).fold(0.0, |sum, (level, weight)| sum + energy(level + weight)))
    }

    /// The noise criterion: the highest curve that any band reaches, between curves in proportion; 15 below them all, 45
    /// above. Source: ANSI/ASA S12.2, tangent method.
    pub fn nc(self) -> f64 {
        let of_band = |(at, level): (usize, &f64)| {
            let above = CURVES.windows(2).find(|pair| *level <= pair[1].1[at]);
            let [(low, lower), (high, upper)] = above.and_then(|pair| pair.first_chunk()).unwrap_or(LOUDEST);
            let share = (level - lower[at]) / (upper[at] - lower[at]);
            low + share.clamp(0.0, 1.0) * (high - low)
        };
        self.0.iter().enumerate().map(of_band).fold(CURVES[0].0, f64::max)
    }
}

const LOUDEST: &[(f64, [f64; 8]); 2] = &[CURVES[5], CURVES[6]];

fn energy(level: f64) -> f64 {
    libm::exp(level * (std::f64::consts::LN_10 / 10.0))
}

fn level_of(energy: f64) -> f64 {
    10.0 * lg(energy)
}

/// The logarithm to 10.
pub(super) fn lg(value: f64) -> f64 {
    libm::log(value) / std::f64::consts::LN_10
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_logarithms_are_those_of_the_bands() {
        assert!(BANDS.iter().zip(LG_BANDS).all(|(f, lg_f)| (libm::log10(*f) - lg_f).abs() < 1e-15));
    }
}
