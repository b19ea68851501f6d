"""Moist air after the ASHRAE handbook (psychrolib) and as a real gas (CoolProp)."""

import random

import psychrolib
from CoolProp.HumidAirProp import HAPropsSI

KELVIN = 273.15


def answers():
    psychrolib.SetUnitSystem(psychrolib.SI)
    chance = random.Random(1976)
    for _ in range(80):
        celsius, humidity = round(chance.uniform(-20, 40), 5), round(chance.uniform(0.05, 1.0), 5)
        metres = round(chance.uniform(-100, 3000), 5)
        pressure = psychrolib.GetStandardAtmPressure(metres)
        ratio = psychrolib.GetHumRatioFromRelHum(celsius, humidity, pressure)
        state = ("T", celsius + KELVIN, "P", pressure, "R", humidity)
        yield {
            "kind": "air",
            "celsius": celsius,
            "humidity": humidity,
            "metres": metres,
            "pressure": pressure,
            "saturation": psychrolib.GetSatVapPres(celsius),
            "dew_point": psychrolib.GetTDewPointFromRelHum(celsius, humidity),
            "ratio": ratio,
            "enthalpy": psychrolib.GetMoistAirEnthalpy(celsius, ratio),
            "wet_bulb": psychrolib.GetTWetBulbFromRelHum(celsius, humidity, pressure),
            "density": psychrolib.GetMoistAirDensity(celsius, ratio, pressure),
            "real_density": 1 / HAPropsSI("Vha", *state),
            "real_viscosity": HAPropsSI("mu", *state),
        }
