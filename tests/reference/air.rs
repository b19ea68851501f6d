//! Moist air beside `psychrolib` (the ASHRAE handbook's equations) and `CoolProp` (a real gas).

use super::{answers, off};
use airtally::air::{self, Air};
use airtally::quantity::{Length, Pressure, Temperature};
use serde::Deserialize;

#[derive(Deserialize, Debug)]
struct Answer {
    celsius: f64,
    humidity: f64,
    metres: f64,
    pressure: f64,
    saturation: f64,
    dew_point: f64,
    ratio: f64,
    enthalpy: f64,
    wet_bulb: f64,
    density: f64,
    real_density: f64,
    real_viscosity: f64,
}

#[test]
fn air_is_as_heavy_and_as_moist_as_the_libraries_say() {
    for answer in answers::<Answer>("air") {
        let temperature = Temperature::from_celsius(answer.celsius);
        let pressure = air::standard_pressure(Length::from_m(answer.metres)).expect("a height with air");
        let saturation = air::saturation(temperature).expect("a temperature with a vapour pressure");
        assert!(off(pressure.as_pa(), answer.pressure) < 1e-9, "pressure, {answer:?}");
        // The same equation of Hyland and Wexler.
        assert!(off(saturation.as_pa(), answer.saturation) < 1e-9, "{} Pa, {answer:?}", saturation.as_pa());
        let air = Air::at(temperature, answer.humidity, pressure).expect("air");
        // The gas constants 287.05 and 287.042, and 0.378 for 1 − 0.621945: 3·10⁻⁵, and as much for damp air.
        assert!(off(air.density(), answer.density) < 1e-4, "{} kg/m³, {answer:?}", air.density());
        // A real gas: within the 0.1 % that the function promises.
        assert!(off(air.density(), answer.real_density) < 1e-3, "{} kg/m³, {answer:?}", air.density());
        // Sutherland's is dry air. Vapour is about half as viscous, and lowers the mixture by about a third of its share.
        let vapour = answer.humidity * answer.saturation / answer.pressure;
        let most = 3e-3 + 0.35 * vapour;
        assert!(off(air.viscosity(), answer.real_viscosity) < most, "{} Pa·s, {answer:?}", air.viscosity());
        let dew = air::dew_point(saturation * answer.humidity).expect("a dew point");
        // The library seeks it to 0.001 K.
        assert!((dew.as_celsius() - answer.dew_point).abs() < 2e-3, "{} °C, {answer:?}", dew.as_celsius());
    }
}

/// The same equations; the library seeks the wet bulb to 0.001 K.
#[test]
fn water_in_air_is_as_the_library_says() {
    for answer in answers::<Answer>("air") {
        let temperature = Temperature::from_celsius(answer.celsius);
        let whole = Pressure::from_pa(answer.pressure);
        let vapour = air::saturation(temperature).expect("a temperature with a vapour pressure") * answer.humidity;
        let ratio = air::humidity_ratio(vapour, whole).expect("damp air");
        assert!(off(ratio, answer.ratio) < 1e-9, "{ratio}, {answer:?}");
        // 10⁻⁶ J/kg near nought, where heat above and below 0 °C cancel.
        let enthalpy = air::enthalpy(temperature, ratio);
        assert!(
            (enthalpy - answer.enthalpy).abs() < 1e-9 * answer.enthalpy.abs() + 1e-6,
            "{enthalpy} J/kg, {answer:?}"
        );
        let wet = air::wet_bulb(temperature, vapour, whole).expect("damp air").as_celsius();
        assert!((wet - answer.wet_bulb).abs() < 2e-3, "{wet} °C, {answer:?}");
    }
}
