"""One length of duct with its fittings, bends, mitres, edges, plates with a hole, and valves, after fluids, scipy and numpy."""

import math
import random

import numpy as np
from fluids import bend_miter, bend_rounded, diffuser_sharp, entrance_rounded, one_phase_dP
from fluids.core import dP_from_K
from fluids.flow_meter import C_Reader_Harris_Gallagher, discharge_coefficient_to_K
from scipy.optimize import brentq

DENSITY, VISCOSITY = 1.2, 1.8134e-5
HOUR = 3600.0


def answers():
    chance = random.Random(1738)
    for part in (run, bend, widening, plate, hole, valve, mitre, edge):
        for _ in range(25):
            yield {"kind": part.__name__, **part(chance)}


def run(chance):
    bore, roughness = round(chance.uniform(40, 250), 3), chance.choice([0.0, round(chance.uniform(0.001, 1), 4)])
    length, losses = round(chance.uniform(0.5, 40), 3), round(chance.uniform(0, 6), 3)
    speed = chance.uniform(0.05, 6)
    flow = round(speed * section(bore) * HOUR, 4)
    speed = flow / HOUR / section(bore)
    friction = one_phase_dP(DENSITY * flow / HOUR, DENSITY, VISCOSITY, bore / 1000, roughness=roughness / 1000,
                            L=length, Method="Churchill_1977")
    pressure = float(friction + dP_from_K(losses, DENSITY, speed))
    return {"bore": bore, "roughness": roughness, "length": length, "losses": losses, "flow": flow,
            "pressure": pressure}


def bend(chance):
    """A quarter turn with its own friction, smooth."""
    radius, reynolds = round(chance.uniform(1, 3), 3), round(10 ** chance.uniform(3.7, 5), 1)
    of = {"Di": 0.063, "angle": 90.0, "bend_diameters": radius, "Re": reynolds, "roughness": 0.0}
    return {"radius": radius, "reynolds": reynolds, "rennels": float(bend_rounded(method="Rennels", **of)),
            "miller": float(bend_rounded(method="Miller", **of))}


def widening(chance):
    narrow = round(chance.uniform(40, 200), 3)
    wide = round(narrow * chance.uniform(1.01, 4), 3)
    return {"narrow": narrow, "wide": wide, "loss": float(diffuser_sharp(Di1=narrow, Di2=wide))}


def plate(chance):
    """The lasting loss of an orifice plate after ISO 5167-2, on the speed of the tube."""
    bore, hole_size = 75.0, round(75.0 * chance.uniform(0.3, 0.65), 3)
    flow = round(chance.uniform(20, 60), 3)
    mass = DENSITY * flow / HOUR
    sizes = {"D": bore / 1000, "Do": hole_size / 1000}
    discharge = C_Reader_Harris_Gallagher(**sizes, rho=DENSITY, mu=VISCOSITY, m=mass, taps="corner")
    return {"hole": hole_size, "bore": bore, "loss": float(discharge_coefficient_to_K(**sizes, C=discharge))}


def hole(chance):
    """The hole for a loss in Idelchik's diagram 4-11, found by Brent's method."""
    bore, size, flow = round(chance.uniform(50, 160), 3), chance.uniform(0.3, 0.9), round(chance.uniform(5, 60), 3)
    head = DENSITY * (flow / HOUR / section(bore)) ** 2 / 2
    pressure = float(f"{thin(size) * head:.6g}")
    found = brentq(lambda beta: math.log(thin(beta) * head / pressure), 0.02, 0.98, xtol=1e-15)
    return {"bore": bore, "flow": flow, "pressure": pressure, "hole": float(found * bore)}


def thin(beta):
    open_share = beta * beta
    return (1 + 0.707 * math.sqrt(1 - open_share) - open_share) ** 2 / open_share**2


def valve(chance):
    """Points that scatter about a power law, and the straight line through them on logarithmic paper."""
    scale, exponent = chance.uniform(0.002, 0.05), chance.uniform(1.7, 2.1)
    flows = [round(chance.uniform(5, 80), 1) for _ in range(chance.randint(3, 8))]
    points = [[q, float(f"{scale * q**exponent * chance.uniform(0.9, 1.1):.4g}")] for q in flows]
    slope, height = np.polyfit(*np.log(np.array(points)).T, 1)
    return {"points": points, "exponent": float(slope), "scale": float(np.exp(height))}


def mitre(chance):
    angle = round(chance.uniform(5, 150), 3)
    return {"angle": angle, "loss": float(bend_miter(angle, method="Rennels"))}


def edge(chance):
    """Out of a box into a tube, flush and rounded."""
    radius = round(chance.uniform(0, 1), 4)
    return {"radius": radius, "loss": float(entrance_rounded(Di=1.0, rc=radius, method="Rennels"))}


def section(bore):
    return math.pi * (bore / 1000) ** 2 / 4
