//! Cold ducts in warm rooms, and warm ones in the cold: what sweats, how thick the insulation must be, and how far the air in
//! them warms up.

use crate::air::{Air, dew_point, saturation};
use crate::power::power;
use crate::quantity::{Flow, Length, Pressure, Temperature, Velocity};

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
    /// How well heat comes out of the air in the duct, W/(m²·K); infinite is on the safe side where it is about sweat, not where it is about warming.
    pub inner: f64,
}

/// How well heat goes into a jacket from the air and the walls around it, W/(m²·K).
///
/// * Equation: `h = 4·ε·σ·T_m³ + Nu·k/D`, `Nu = (0.60 + 0.387·Ra^(1/6)/(1 + (0.559/Pr)^(9/16))^(8/27))²`
/// * Units: diameter of the jacket, difference in K, below nought where the jacket is warmer
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
        let rayleigh = 9.80665 * colder.abs() * PRANDTL / (film * viscosity * viscosity);
        let grows = 0.387 * power(rayleigh, 1.0 / 6.0) / damped;
        Self { radiation, conductivity: conductivity(film), grows }
    }

    /// The same coefficient whatever the diameter, W/(m²·K).
    pub const fn steady(coefficient: f64) -> Self {
        Self { radiation: coefficient, conductivity: 0.0, grows: 0.0 }
    }

    /// What goes into a jacket of this diameter.
    pub fn at(self, diameter: Length) -> f64 {
        let d = diameter.as_m();
        let root = 0.60 + self.grows * f64::sqrt(d);
        self.radiation + root * root * self.conductivity / d
    }
}

/// How well heat comes out of air into the wall of its tube, W/(m²·K).
///
/// * Equation: `h = Nu·k/d`, `Nu = (f/8)·(Re − 1000)·Pr/(1 + 12.7·√(f/8)·(Pr^(2/3) − 1))`, `f = (0.79·ln Re − 1.64)⁻²`; 3.66 where
///   the air creeps
/// * Valid range: Re from 3000 to 5·10⁶; below it counts as creeping, which is on the safe side
/// * Source: Gnielinski 1976, International Chemical Engineering 16(2), 359–368; Petukhov 1970 for f
///
/// ```
/// use airtally::{air::Air, cold::inner, quantity::{Length, Velocity}};
/// // Hausen's creeping limit by hand: 3.66·0.0257/0.063 = 1.49.
/// assert!((inner(Velocity::from_ms(0.1), Length::from_mm(63.0), Air::STANDARD) - 1.49).abs() < 0.01);
/// ```
pub fn inner(speed: Velocity, bore: Length, air: Air) -> f64 {
    let d = bore.as_m();
    let reynolds = air.density() * speed.as_ms() * d / air.viscosity();
    let nusselt = if reynolds < TURBULENT {
        CREEPING
    } else {
        let root = 0.79 * libm::log(reynolds) - 1.64;
        turbulent(reynolds, PRANDTL, 1.0 / (root * root))
    };
    nusselt * conductivity(KELVIN + ROOM) / d
}

/// Gnielinski's Nusselt number.
fn turbulent(reynolds: f64, prandtl: f64, friction: f64) -> f64 {
    let eighth = friction / 8.0;
    let film = 12.7 * f64::sqrt(eighth) * (power(prandtl, 2.0 / 3.0) - 1.0);
    eighth * (reynolds - 1000.0) * prandtl / (1.0 + film)
}

/// Of air at so many kelvin, W/(m·K).
fn conductivity(kelvin: f64) -> f64 {
    0.0241 * power(kelvin / KELVIN, 0.9)
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
    /// use airtally::{cold::{ColdDuct, Film}, quantity::{Length, Temperature}};
    /// // Worked numbers of the handbook: λ 0.035, h_e 8, room of 21 °C and 50 %.
    /// let least = |mm, celsius| {
    ///     let duct = ColdDuct {
    ///         bore: Length::from_mm(mm), inside: Temperature::from_celsius(celsius), room: Temperature::from_celsius(21.0),
    ///         conductivity: 0.035, inner: f64::INFINITY,
    ///     };
    ///     duct.least(0.5, |_| Film::steady(8.0)).unwrap().as_mm()
    /// };
    /// for (mm, celsius, handbook) in [(160.0, -10.0, 7.804), (160.0, -15.0, 9.638), (75.0, -10.0, 7.473)] {
    ///     assert!((least(mm, celsius) - handbook).abs() < 0.01, "{}", least(mm, celsius));
    /// }
    /// ```
    pub fn least(&self, humidity: f64, outer: impl Fn(f64) -> Film) -> Option<Length> {
        let dew = dew_point(saturation(self.room)? * humidity)?.as_celsius();
        let film = outer(self.room.as_celsius() - dew);
        thinnest(|thickness| self.surface(thickness, film.at(self.bore + thickness * 2.0)).as_celsius() - dew)
    }

    /// Temperature of the wall inside, for a known outer coefficient. Equation: `T_w = T_i + q'/(h_i·π·d)`, q' as for the jacket.
    pub fn wall(&self, thickness: Length, outer: f64) -> Temperature {
        let (inside, room) = (self.inside.as_celsius(), self.room.as_celsius());
        let heat = self.per_metre(thickness, outer) * (room - inside);
        Temperature::from_celsius(inside + heat / (self.inner * around(self.bore)))
    }

    /// The thinnest insulation of warm air in the cold, such as extract air under a roof, whose wall stays above the dew point
    /// of that air; `None` beyond 300 mm. Its humidity is that inside.
    ///
    /// * Errors: the outer coefficient is asked where the jacket would be as warm as the dew point, which is on the safe side
    /// * Source: as [`ColdDuct::surface`]
    ///
    /// ```
    /// use airtally::{cold::{ColdDuct, Film}, quantity::{Length, Temperature}};
    /// // By hand: 20 °C and 55 % is 10.69 °C at the dew point; −10 °C outside, h_i 8, h_e 8, λ 0.035, 63 mm. 9.31 of the 30 K may
    /// // lie between air and wall: 1/(8·π·0.063) is 9.31/30 of the whole where 6.77 mm lie around it.
    /// let tube = ColdDuct {
    ///     bore: Length::from_mm(63.0), inside: Temperature::from_celsius(20.0), room: Temperature::from_celsius(-10.0),
    ///     conductivity: 0.035, inner: 8.0,
    /// };
    /// assert!((tube.least_within(0.55, |_| Film::steady(8.0)).unwrap().as_mm() - 6.765).abs() < 0.002);
    /// ```
    pub fn least_within(&self, humidity: f64, outer: impl Fn(f64) -> Film) -> Option<Length> {
        let dew = dew_point(saturation(self.inside)? * humidity)?.as_celsius();
        let film = outer(self.room.as_celsius() - dew);
        thinnest(|thickness| self.wall(thickness, film.at(self.bore + thickness * 2.0)).as_celsius() - dew)
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

/// The thinnest insulation that is dry, of `above` a dew point by its thickness: where a straight line between two thicknesses is
/// nought, an end that stays counting half (Illinois). `None` beyond 300 mm.
fn thinnest(above: impl Fn(Length) -> f64) -> Option<Length> {
    let (mut low, mut high) = (Length::ZERO, Length::from_mm(300.0));
    let (mut wet, mut dry) = (above(low), above(high));
    if wet >= 0.0 {
        return Some(low);
    }
    if dry < 0.0 {
        return None;
    }
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
/// Nusselt number of air that creeps, Hausen.
const CREEPING: f64 = 3.66;
/// Reynolds number from which Gnielinski's equation is published.
const TURBULENT: f64 = 3000.0;
/// °C: what the air in a tube of a house has, near enough for how it conducts.
const ROOM: f64 = 20.0;
/// J/(kg·K).
const HEAT_CAPACITY: f64 = 1006.0;

#[cfg(test)]
mod tests {
    use super::*;

    /// Worked number of a public reference library: Re 10⁵, Pr 1.2, f 0.0185.
    #[test]
    fn heat_leaves_the_air_as_the_reference_library_says() {
        assert!((turbulent(1e5, 1.2, 0.0185) - 254.626_827).abs() < 1e-6);
    }

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
            let least = duct.least(0.6, |colder| Film::of(colder, room, jacket)).unwrap().as_mm();
            assert!((least - handbook).abs() <= 1.0, "{celsius} °C, {jacket:?}: {least} and not {handbook}");
        }
    }
}
