//! What water does in air: how much of it there is, how much heat it carries, how far it cools by evaporating.

use super::{HALVINGS, TRIPLE_POINT, saturation};
use crate::quantity::{Pressure, Temperature};

/// Water in air, kg for each kg of dry air.
///
/// * Equation: `W = 0.621945·p_w/(p − p_w)`
/// * Units: vapour and whole pressure alike
/// * Valid range: vapour from nought on and below the whole pressure; `None` otherwise
/// * Errors: up to 0.5 % too low, since air and vapour are not ideal gases
/// * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 20
///
/// ```
/// use airtally::{air::{humidity_ratio, saturation}, quantity::{Pressure, Temperature}};
/// // Worked number of a public reference library: 20 °C and 50 % at sea level.
/// let vapour = saturation(Temperature::from_celsius(20.0)).unwrap() * 0.5;
/// assert!((humidity_ratio(vapour, Pressure::from_pa(101_325.0)).unwrap() - 0.007262).abs() < 5e-7);
/// ```
pub fn humidity_ratio(vapour: Pressure, whole: Pressure) -> Option<f64> {
    let (vapour, dry) = (vapour.as_pa(), whole.as_pa() - vapour.as_pa());
    (vapour >= 0.0 && dry > 0.0).then_some(0.621_945 * vapour / dry)
}

/// Heat in moist air, J for each kg of dry air, from dry air and water of 0 °C on.
///
/// * Equation: `h = 1006·t + W·(2.501·10⁶ + 1860·t)`
/// * Units: °C
/// * Valid range: from −50 to 100 °C
/// * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 30
///
/// ```
/// use airtally::{air::enthalpy, quantity::Temperature};
/// // Worked number of a public reference library.
/// assert!((enthalpy(Temperature::from_celsius(20.0), 0.007262) - 38_552.0).abs() < 1.0);
/// ```
pub fn enthalpy(temperature: Temperature, ratio: f64) -> f64 {
    let t = temperature.as_celsius();
    1006.0 * t + ratio * (2.501e6 + 1860.0 * t)
}

/// The temperature of a wet thermometer in moving air.
///
/// * Equation: the `t*` at which `W = ((2501 − 2.326·t*)·W_s* − 1.006·(t − t*))/(2501 + 1.86·t − 4.186·t*)`, over ice
///   `((2830 − 0.24·t*)·W_s* − 1.006·(t − t*))/(2830 + 1.86·t − 2.1·t*)`, by halving
/// * Valid range: what [`saturation`] knows; `None` where the vapour exceeds saturation or the pressure
/// * Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equations 33 and 35
///
/// ```
/// use airtally::{air::{saturation, wet_bulb}, quantity::{Pressure, Temperature}};
/// // Worked number of a public reference library: 20 °C and 50 % at sea level.
/// let air = Temperature::from_celsius(20.0);
/// let vapour = saturation(air).unwrap() * 0.5;
/// assert!((wet_bulb(air, vapour, Pressure::from_pa(101_325.0)).unwrap().as_celsius() - 13.78).abs() < 5e-3);
/// ```
pub fn wet_bulb(temperature: Temperature, vapour: Pressure, whole: Pressure) -> Option<Temperature> {
    let ratio = humidity_ratio(vapour, whole)?;
    if vapour > saturation(temperature)? {
        return None;
    }
    let t = temperature.as_celsius();
    let (mut low, mut high) = (super::COLDEST, t);
    for _ in 0..HALVINGS {
        let middle = (low + high) / 2.0;
        // Where even the wet thermometer would boil, it is too warm.
        let saturated = humidity_ratio(saturation(Temperature::from_celsius(middle))?, whole);
        if saturated.is_none_or(|saturated| evaporating(t, middle, saturated) > ratio) {
            high = middle;
        } else {
            low = middle;
        }
    }
    Some(Temperature::from_celsius((low + high) / 2.0))
}

/// What air of `t` holds, if a thermometer wet with water or ice shows `wet` in it.
fn evaporating(t: f64, wet: f64, saturated: f64) -> f64 {
    let [heat, slope, carried] = if wet < TRIPLE_POINT { [2830.0, 0.24, 2.1] } else { [2501.0, 2.326, 4.186] };
    ((heat - slope * wet) * saturated - 1.006 * (t - wet)) / (heat + 1.86 * t - carried * wet)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Definition: in saturated air a wet thermometer shows what a dry one shows, over water and over ice.
    #[test]
    fn nothing_evaporates_into_saturated_air() {
        for celsius in [-15.0, -1.0, 1.0, 20.0, 35.0] {
            let air = Temperature::from_celsius(celsius);
            let wet = wet_bulb(air, saturation(air).unwrap(), Pressure::from_pa(101_325.0)).unwrap();
            assert!((wet.as_celsius() - celsius).abs() < 1e-9, "{celsius}: {}", wet.as_celsius());
        }
    }

    #[test]
    fn more_vapour_than_there_can_be_has_no_answer() {
        let [air, sea] = [Temperature::from_celsius(20.0), Temperature::from_celsius(100.0)];
        let whole = Pressure::from_pa(101_325.0);
        assert_eq!(wet_bulb(air, saturation(sea).unwrap(), whole), None);
        assert_eq!(humidity_ratio(whole, whole), None);
        assert_eq!(humidity_ratio(Pressure::from_pa(-1.0), whole), None);
    }
}
