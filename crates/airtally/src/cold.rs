//! Cold ducts in warm rooms: what sweats, how thick the insulation must be, and how far the air in them warms up.

use crate::air::{Air, dew_point, saturation};
use crate::power::power;
use crate::quantity::{Flow, Length, Pressure, Temperature};

/// What the jacket looks like: bright metal gives off little heat and stays colder.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Jacket {
    /// Foam, plastic, paint, paper: emissivity 0.9.
    Matt,
    /// Bright aluminium: emissivity 0.05.
    Bright,
}

/// A duct in a room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ColdDuct {
    /// Its bore; its wall is thin.
    pub bore: Length,
    /// Temperature of the air in it.
    pub inside: Temperature,
    /// Temperature of the room.
    pub room: Temperature,
    /// How well the insulation conducts, W/(m·K).
    pub conductivity: f64,
    /// How well heat comes out of the air in the duct, W/(m²·K); infinite is on the safe side.
    pub inner: f64,
}

/// How well heat goes into a jacket from the air and the walls around it, W/(m²·K).
///
/// * Equation: `h = 4·ε·σ·T_m³ + Nu·k/D`, `Nu = (0.60 + 0.387·Ra^(1/6)/(1 + (0.559/Pr)^(9/16))^(8/27))²`
/// * Units: diameter of the jacket, difference in K
/// * Valid range: lying cylinders, Ra ≤ 10¹²
/// * Source: Stefan and Boltzmann; Churchill and Chu 1975
///
/// ```
/// use airtally::{cold::{outer, Jacket}, quantity::{Length, Temperature}};
/// // Worked numbers of the handbook: 200 mm, 8 K colder than a room of 21 °C: about 8 for matt, 3.6 for bright.
/// let h = |jacket| outer(Length::from_mm(200.0), 8.0, Temperature::from_celsius(21.0), jacket);
/// assert!((h(Jacket::Matt) - 8.174).abs() < 0.1 && (h(Jacket::Bright) - 3.538).abs() < 0.1);
/// ```
pub fn outer(diameter: Length, colder: f64, room: Temperature, jacket: Jacket) -> f64 {
    Film::of(colder, room, jacket).at(diameter)
}

/// The air around a jacket that is so much colder than its room, for any diameter.
#[derive(Clone, Copy, Debug)]
pub struct Film {
    radiation: f64,
    conductivity: f64,
    /// How Nu^½ grows with D^½: Ra grows with D³.
    grows: f64,
}

impl Film {
    /// The film at a difference in K.
    pub fn of(colder: f64, room: Temperature, jacket: Jacket) -> Self {
        let emissivity = match jacket {
            Jacket::Matt => 0.9,
            Jacket::Bright => 0.05,
        };
        let film = room.as_celsius() + KELVIN - colder / 2.0;
        let radiation = 4.0 * emissivity * STEFAN_BOLTZMANN * film * film * film;
        let film_air = Air::at(Temperature::from_celsius(film - KELVIN), 0.5, Pressure::from_pa(101_325.0));
        let Some(air) = film_air else { return Self { radiation, conductivity: 0.0, grows: 0.0 } };
        let viscosity = air.viscosity() / air.density();
        let damped = power(1.0 + power(0.559 / PRANDTL, 9.0 / 16.0), 8.0 / 27.0);
        let rayleigh = 9.80665 * colder.max(0.0) * PRANDTL / (film * viscosity * viscosity);
        let grows = 0.387 * power(rayleigh, 1.0 / 6.0) / damped;
        Self { radiation, conductivity: 0.0241 * power(film / KELVIN, 0.9), grows }
    }

    /// What goes into a jacket of this diameter.
    pub fn at(self, diameter: Length) -> f64 {
        let d = diameter.as_m();
        let root = 0.60 + self.grows * f64::sqrt(d);
        self.radiation + root * root * self.conductivity / d
    }
}

impl ColdDuct {
    /// Temperature of the jacket under so much insulation, for a known outer coefficient.
    ///
    /// * Equation: `q' = (T_a − T_i)/(1/(h_i·π·d) + ln(D/d)/(2π·λ) + 1/(h_e·π·D))`, `T_s = T_a − q'/(h_e·π·D)`
    /// * Source: ISO 12241, 2022 (from memory)
    pub fn surface(&self, thickness: Length, outer: f64) -> Temperature {
        let wide = self.bore + thickness * 2.0;
        let room = self.room.as_celsius();
        Temperature::from_celsius(
            room - self.per_metre(thickness, outer) * (room - self.inside.as_celsius()) / (outer * around(wide)),
        )
    }

    /// How well heat comes through the insulation of a metre, W/(m·K).
    ///
    /// * Equation: `U' = 1/(1/(h_i·π·d) + ln(D/d)/(2π·λ) + 1/(h_e·π·D))`
    /// * Source: ISO 12241, 2022 (from memory)
    pub fn per_metre(&self, thickness: Length, outer: f64) -> f64 {
        let wide = self.bore + thickness * 2.0;
        let wall = libm::log(wide.as_m() / self.bore.as_m()) / (2.0 * std::f64::consts::PI * self.conductivity);
        1.0 / (1.0 / (self.inner * around(self.bore)) + wall + 1.0 / (outer * around(wide)))
    }

    /// The thinnest insulation whose jacket does not sweat at this humidity of the room; `None` beyond 300 mm.
    ///
    /// ```
    /// use airtally::{cold::ColdDuct, quantity::{Length, Temperature}};
    /// // Worked numbers of the handbook: λ 0.035, h_e 8, room of 21 °C and 50 %.
    /// let least = |mm, celsius| {
    ///     let duct = ColdDuct {
    ///         bore: Length::from_mm(mm), inside: Temperature::from_celsius(celsius), room: Temperature::from_celsius(21.0),
    ///         conductivity: 0.035, inner: f64::INFINITY,
    ///     };
    ///     duct.least(0.5, |_| |_| 8.0).unwrap().as_mm()
    /// };
    /// for (mm, celsius, handbook) in [(160.0, -10.0, 7.804), (160.0, -15.0, 9.638), (75.0, -10.0, 7.473)] {
    ///     assert!((least(mm, celsius) - handbook).abs() < 0.01, "{}", least(mm, celsius));
    /// }
    /// ```
    pub fn least<H: Fn(Length) -> f64>(&self, humidity: f64, outer: impl Fn(f64) -> H) -> Option<Length> {
        let dew = dew_point(saturation(self.room)? * humidity)?.as_celsius();
        // The coefficient where it just sweats, and how far the jacket is above that.
        let outer = outer(self.room.as_celsius() - dew);
        let above = |thickness: Length| self.surface(thickness, outer(self.bore + thickness * 2.0)).as_celsius() - dew;
        let (mut low, mut high) = (Length::ZERO, Length::from_mm(300.0));
        let (mut wet, mut dry) = (above(low), above(high));
        if wet >= 0.0 {
            return Some(low);
        }
        if dry < 0.0 {
            return None;
        }
        // Where a straight line between the ends is nought; an end that stays counts half (Illinois).
        for _ in 0..MOST_STEPS {
            if high - low < Length::from_mm(NEAR) {
                break;
            }
            let middle = low + (high - low) * (wet / (wet - dry));
            let here = above(middle);
            if here < 0.0 {
                (low, wet, dry) = (middle, here, dry / 2.0);
            } else {
                (high, dry, wet) = (middle, here, wet / 2.0);
            }
        }
        Some(high)
    }

    /// Temperature of its air after a length, at a flow.
    ///
    /// * Equation: `T(L) = T_a + (T_0 − T_a)·e^(−U'·L/(ρ·Q·c_p))`, with the density of its own air
    /// * Source: energy balance
    ///
    /// ```
    /// use airtally::{air::Air, cold::ColdDuct, quantity::{Flow, Length, Pressure, Temperature}};
    /// // Worked numbers of the handbook: U' 0.7012 W/mK, 150 m³/h from −10 °C warm by 2.16 K in 6 m of a room of 20 °C.
    /// let cold = Temperature::from_celsius(-10.0);
    /// let duct = ColdDuct { bore: Length::from_mm(160.0), inside: cold, room: Temperature::from_celsius(20.0), conductivity: 0.035, inner: f64::INFINITY };
    /// let air = Air::at(cold, 0.8, Pressure::from_pa(101_325.0)).unwrap();
    /// let warm = duct.after(Length::from_m(6.0), Length::from_mm(25.0), 8.0, Flow::from_m3h(150.0), air);
    /// assert!((warm.as_celsius() + 10.0 - 2.16).abs() < 0.01, "{}", warm.as_celsius());
    /// ```
    pub fn after(&self, length: Length, thickness: Length, outer: f64, flow: Flow, air: Air) -> Temperature {
        let carried = air.density() * flow.as_m3h() / 3600.0 * HEAT_CAPACITY;
        let left =
            if carried > 0.0 { libm::exp(-self.per_metre(thickness, outer) * length.as_m() / carried) } else { 0.0 };
        let room = self.room.as_celsius();
        Temperature::from_celsius(room + (self.inside.as_celsius() - room) * left)
    }
}

fn around(diameter: Length) -> f64 {
    std::f64::consts::PI * diameter.as_m()
}

/// mm.
const NEAR: f64 = 1e-3;
const MOST_STEPS: u32 = 60;
const KELVIN: f64 = 273.15;
/// W/(m²·K⁴).
const STEFAN_BOLTZMANN: f64 = 5.670_374e-8;
const PRANDTL: f64 = 0.71;
/// J/(kg·K).
const HEAT_CAPACITY: f64 = 1006.0;

#[cfg(test)]
mod tests {
    use super::*;

    /// Handbook of work on site, section 3: 160 mm in a utility room of 22 °C and 60 %, insulation in whole mm.
    #[test]
    fn thicknesses_are_those_of_the_handbook_of_work_on_site() {
        let room = Temperature::from_celsius(22.0);
        for (celsius, jacket, handbook) in [
            (-10.0, Jacket::Matt, 12.0),
            (-10.0, Jacket::Bright, 25.0),
            (-25.0, Jacket::Matt, 19.0),
            (-25.0, Jacket::Bright, 39.0),
        ] {
            let inside = Temperature::from_celsius(celsius);
            let bore = Length::from_mm(160.0);
            let duct = ColdDuct { bore, inside, room, conductivity: 0.035, inner: f64::INFINITY };
            let least = duct
                .least(0.6, |colder| {
                    let film = Film::of(colder, room, jacket);
                    move |wide| film.at(wide)
                })
                .unwrap()
                .as_mm();
            assert!((least - handbook).abs() <= 1.0, "{celsius} °C, {jacket:?}: {least} and not {handbook}");
        }
    }
}
