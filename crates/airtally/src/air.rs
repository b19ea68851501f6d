//! Moist air: what it weighs, how it resists, when its water condenses.

mod moisture;

pub use moisture::{enthalpy, humidity_ratio, wet_bulb};

use crate::power::power;
use crate::quantity::{Length, Pressure, Temperature};

/// Air in one state: what a duct needs to know of it.
///
/// Units: kg/m³ and Pa·s inside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Air {
    density: f64,
    viscosity: f64,
}

impl Air {
    /// Air of this temperature and relative humidity (0 to 1) at this pressure.
    ///
    /// * Equation: `ρ = (p − 0.378·φ·p_ws) / (287.05·T)`, `μ = 1.458·10⁻⁶·T^1.5 / (T + 110.4)`
    /// * Units: Pa, K, kg/m³, Pa·s
    /// * Valid range: −20 to 40 °C, up to 3000 m; `None` outside −100 to 200 °C or where the vapour alone would exceed the pressure
    /// * Errors: density below 0.1 % against real gas, viscosity of damp air too high by about a third of the
    ///   share of vapour: 0.8 % at 30 °C, 3 % at 40 °C and 2300 m
    /// * Source: Dalton and the ideal gas for the density; U.S. Standard Atmosphere 1976, equation 51, for the viscosity (from memory)
    ///
    /// ```
    /// use airtally::{air::Air, quantity::{Pressure, Temperature}};
    /// // Worked numbers of a public reference library: 1.1989 kg/m³ and 1.8134·10⁻⁵ Pa·s.
    /// let air = Air::at(Temperature::from_celsius(20.0), 0.5, Pressure::from_pa(101_325.0)).unwrap();
    /// assert!((air.density() - 1.1989).abs() < 5e-5);
    /// assert!((air.viscosity() - 1.8134e-5).abs() < 5e-10);
    /// ```
    pub fn at(temperature: Temperature, humidity: f64, pressure: Pressure) -> Option<Self> {
        let vapour = saturation(temperature)?.as_pa() * humidity;
        let (p, t) = (pressure.as_pa(), kelvin(temperature));
        if !((0.0..=1.0).contains(&humidity) && vapour < p) {
            return None;
        }
        let density = (p - LIGHTER * vapour) / (GAS * t);
        let viscosity = SUTHERLAND * t * f64::sqrt(t) / (t + SUTHERLAND_TEMPERATURE);
        Some(Self { density, viscosity })
    }

    /// Air of 1.2 kg/m³ and 20 °C, in which fans and terminals are rated (common practice).
    pub const STANDARD: Self = Self { density: 1.2, viscosity: 1.813_4e-5 };

    /// Mass of a cubic metre, kg.
    pub const fn density(self) -> f64 {
        self.density
    }

    /// Dynamic viscosity, Pa·s.
    pub const fn viscosity(self) -> f64 {
        self.viscosity
    }
}

/// Pressure of the atmosphere at a height above the sea.
///
/// * Equation: `p = 101325·(1 − 2.25577·10⁻⁵·z)^5.2559`
/// * Units: z in m, p in Pa
/// * Valid range: −500 to 11 000 m; `None` otherwise
/// * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 3, after the U.S. Standard Atmosphere 1976
///
/// ```
/// use airtally::{air::standard_pressure, quantity::Length};
/// assert!((standard_pressure(Length::from_m(1500.0)).unwrap().as_pa() - 84_556.0).abs() < 1.0);
/// ```
pub fn standard_pressure(altitude: Length) -> Option<Pressure> {
    let z = altitude.as_m();
    let pressure = || Pressure::from_pa(SEA_LEVEL * power(1.0 - 2.255_77e-5 * z, 5.2559));
    (-500.0..=11_000.0).contains(&z).then(pressure)
}

/// Pressure of water vapour over water, below 0.01 °C over ice.
///
/// * Equation: `ln p = c₁/T + c₂ + c₃·T + c₄·T² + c₅·T³ + c₆·T⁴ + c₇·ln T`
/// * Units: K, Pa
/// * Valid range: −100 to 200 °C; `None` otherwise
/// * Source: Hyland and Wexler 1983, as in ASHRAE Handbook Fundamentals 2017, chapter 1, equations 5 and 6
///
/// ```
/// use airtally::{air::saturation, quantity::Temperature};
/// // Worked numbers of a public reference library.
/// assert!((saturation(Temperature::from_celsius(20.0)).unwrap().as_pa() - 2338.8).abs() < 0.05);
/// assert!((saturation(Temperature::from_celsius(-10.0)).unwrap().as_pa() - 259.9).abs() < 0.05);
/// ```
pub fn saturation(temperature: Temperature) -> Option<Pressure> {
    if !(COLDEST..=HOTTEST).contains(&temperature.as_celsius()) {
        return None;
    }
    let t = kelvin(temperature);
    let [over_t, constant, t1, t2, t3, t4, log] = if temperature.as_celsius() < TRIPLE_POINT { ICE } else { WATER };
    let power = over_t / t + constant + t * (t1 + t * (t2 + t * (t3 + t * t4))) + log * libm::log(t);
    Some(Pressure::from_pa(libm::exp(power)))
}

/// The temperature at which vapour of this pressure begins to condense; below 0.01 °C the frost point.
///
/// * Equation: the inverse of [`saturation`], by halving
/// * Valid range: what saturation gives between −100 and 200 °C; `None` otherwise
/// * Source: as [`saturation`]
///
/// ```
/// use airtally::{air::{dew_point, saturation}, quantity::{Pressure, Temperature}};
/// // A room of 21 °C and 50 %: 10.19 °C, worked by a public reference library.
/// let vapour = saturation(Temperature::from_celsius(21.0)).unwrap() * 0.5;
/// assert!((dew_point(vapour).unwrap().as_celsius() - 10.19).abs() < 0.005);
/// ```
pub fn dew_point(vapour: Pressure) -> Option<Temperature> {
    let at = |celsius: f64| saturation(Temperature::from_celsius(celsius));
    let (mut low, mut high) = (COLDEST, HOTTEST);
    if !(at(low)? <= vapour && vapour <= at(high)?) {
        return None;
    }
    for _ in 0..HALVINGS {
        let middle = (low + high) / 2.0;
        if at(middle)? < vapour {
            low = middle;
        } else {
            high = middle;
        }
    }
    Some(Temperature::from_celsius((low + high) / 2.0))
}

fn kelvin(temperature: Temperature) -> f64 {
    temperature.as_celsius() + ZERO_CELSIUS
}

/// Cold air holds so little vapour that it does not matter for its weight.
pub(crate) const OUTDOOR_HUMIDITY: f64 = 0.8;
/// K, exact by definition.
const ZERO_CELSIUS: f64 = 273.15;
/// Pa.
const SEA_LEVEL: f64 = 101_325.0;
/// Gas constant of dry air, J/(kg·K).
const GAS: f64 = 287.05;
/// How much lighter vapour is than air: 1 − 0.622.
const LIGHTER: f64 = 0.378;
/// kg/(m·s·√K), U.S. Standard Atmosphere 1976.
const SUTHERLAND: f64 = 1.458e-6;
/// K, U.S. Standard Atmosphere 1976.
const SUTHERLAND_TEMPERATURE: f64 = 110.4;
/// °C.
const TRIPLE_POINT: f64 = 0.01;
const COLDEST: f64 = -100.0;
const HOTTEST: f64 = 200.0;
/// 300 K halved so often is less than 10⁻¹² K.
const HALVINGS: usize = 50;

/// Hyland and Wexler 1983, over ice.
const ICE: [f64; 7] =
    [-5.674_535_9e3, 6.392_524_7, -9.677_843e-3, 6.221_570_1e-7, 2.074_782_5e-9, -9.484_024e-13, 4.163_501_9];
/// Hyland and Wexler 1983, over water.
const WATER: [f64; 7] =
    [-5.800_220_6e3, 1.391_499_3, -4.864_023_9e-2, 4.176_476_8e-5, -1.445_209_3e-8, 0.0, 6.545_967_3];
