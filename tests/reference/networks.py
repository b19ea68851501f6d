"""Whole houses of tubes, solved with a sparse Newton method on the equations of every branch and joint at once.

The equations are written down here once more, with the friction factor of fluids: nothing is shared with the crate.
A branch takes `linear q + square q^2`, a duct's friction and fixed losses, and a power law; joints keep their air.
"""

import math
import random

import numpy as np
from fluids.friction import Churchill_1977
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve

DENSITY, VISCOSITY = 1.2, 1.8134e-5
HOUR = 3600.0


def answers():
    chance = random.Random(2024)
    for tubes in (6, 9, 14, 23, 40, 90, 180, 400):
        network = house(chance, tubes)
        yield {"kind": "network", "tubes": tubes, **network, "flows": solve(network)}


def house(chance, tubes):
    """A unit, its main, one to three manifolds, and tubes of which some join in a box. Both ends of the whole are open."""
    branches = []

    def branch(start, end, **what):
        branches.append({"from": start, "to": end, **what})

    manifolds = chance.randint(1, 3)
    fan = chance.choice(["formula", "curve", "steady"])
    joints = 1 + manifolds
    unit = {"linear": round(chance.uniform(0, 0.1), 5), "square": round(chance.uniform(1e-4, 1e-3), 5)}
    branch(None, 0, **unit, fan=a_fan(chance, fan, tubes))
    for manifold in range(1, joints):
        branch(0, manifold, duct=duct(chance, 160 + 40 * (tubes > 60), (1, 8), 3.0))
    left = tubes
    while left > 0:
        manifold = 1 + left % manifolds
        twins = min(left, chance.choice([1, 1, 1, 2, 3]))
        valve = {"power": [round(chance.uniform(0.004, 0.03), 5), round(chance.uniform(1.8, 2.0), 5)]}
        if twins == 1:
            branch(manifold, None, duct=duct(chance, chance.choice([51, 63, 75]), (2, 25), 2.5), **valve)
        else:
            for _ in range(twins):
                branch(manifold, joints, duct=duct(chance, 63, (2, 25), 2.5))
            branch(joints, None, **valve)
            joints += 1
        left -= twins
    return {"joints": joints, "branches": branches}


def a_fan(chance, kind, tubes):
    """Pa over m3/h, for a unit of this size."""
    most = 30.0 * tubes
    if kind == "steady":
        return {"steady": 0.7 * most}
    if kind == "curve":
        return {"curve": [[0.0, 350.0], [0.4 * most, 300.0], [0.9 * most, 170.0], [1.3 * most, 0.0]]}
    return {"shut": 320.0, "linear": 20.0 / most, "square": 250.0 / most**2}


def duct(chance, millimetres, metres, losses):
    roughness = chance.choice([0.0015, 0.1, 0.4])
    length = round(chance.uniform(*metres), 5)
    losses = round(chance.uniform(0.5, losses), 5)
    return {"bore": millimetres, "roughness": roughness, "length": length, "losses": losses}


def pressure(branch, flow):
    """What a branch takes, less what its fan gives, in Pa at m3/h."""
    q = abs(flow)
    taken = branch.get("linear", 0.0) * q + branch.get("square", 0.0) * q * q
    if "power" in branch:
        scale, exponent = branch["power"]
        taken += scale * q**exponent
    if "duct" in branch:
        taken += duct_pressure(branch["duct"], q)
    taken = math.copysign(taken, flow)
    return taken - drive(branch.get("fan"), flow)


def duct_pressure(duct, flow):
    bore = duct["bore"] / 1000
    speed = flow / HOUR / (math.pi * bore * bore / 4)
    if speed == 0.0:
        return 0.0
    factor = Churchill_1977(DENSITY * speed * bore / VISCOSITY, duct["roughness"] / duct["bore"])
    return (factor * duct["length"] / bore + duct["losses"]) * DENSITY * speed * speed / 2


def drive(fan, flow):
    if fan is None or "steady" in fan:
        return 0.0
    if "curve" in fan:
        flows, pressures = zip(*fan["curve"])
        at = min(max(sum(flow > known for known in flows), 1), len(flows) - 1)
        slope = (pressures[at] - pressures[at - 1]) / (flows[at] - flows[at - 1])
        return pressures[at - 1] + slope * (flow - flows[at - 1])
    return fan["shut"] - fan["linear"] * flow - fan["square"] * flow * abs(flow)


def solve(network):
    """The flow of every branch in m3/h. One more step after rest squares what is left of the smallest flow's error too."""
    branches, joints = network["branches"], network["joints"]
    count = len(branches)
    fed = sum(1 for branch in branches if branch["to"] is None)
    state = np.concatenate([np.full(count, 20.0), np.zeros(joints)])
    state[0] = 20.0 * fed
    for _ in range(400):
        wrong, slopes = residual(branches, joints, state)
        step = spsolve(matrix(branches, joints, slopes), -wrong)
        if np.max(np.abs(wrong)) < 1e-11 * max(1.0, np.max(np.abs(state))):
            return [float(flow) for flow in (state + step)[:count]]
        state = state + shorten(branches, joints, state, step, wrong) * step
    raise ArithmeticError("the network does not come to rest")


def residual(branches, joints, state):
    count = len(branches)
    wrong, slopes = np.zeros(count + joints), np.zeros(count)
    for number, branch in enumerate(branches):
        flow = state[number]
        start, end = branch["from"], branch["to"]
        if "steady" in (branch.get("fan") or {}):
            wrong[number], slopes[number] = flow - branch["fan"]["steady"], np.nan
        else:
            ends = (0.0 if start is None else state[count + start]) - (0.0 if end is None else state[count + end])
            wrong[number] = pressure(branch, flow) - ends
            small = 1e-5 * max(abs(flow), 1.0)
            slopes[number] = (pressure(branch, flow + small) - pressure(branch, flow - small)) / (2 * small)
        for joint, sign in ((start, -1.0), (end, 1.0)):
            if joint is not None:
                wrong[count + joint] += sign * flow
    return wrong, slopes


def matrix(branches, joints, slopes):
    count = len(branches)
    rows, columns, values = [], [], []
    for number, branch in enumerate(branches):
        steady = np.isnan(slopes[number])
        rows.append(number), columns.append(number), values.append(1.0 if steady else slopes[number])
        for joint, sign in ((branch["from"], -1.0), (branch["to"], 1.0)):
            if joint is not None:
                rows.append(count + joint), columns.append(number), values.append(sign)
                if not steady:
                    rows.append(number), columns.append(count + joint), values.append(sign)
    size = count + joints
    return coo_matrix((values, (rows, columns)), shape=(size, size)).tocsc()


def shorten(branches, joints, state, step, wrong):
    """Half the step until it does not make the whole worse."""
    before, share = np.linalg.norm(wrong), 1.0
    while share > 1e-4:
        after, _ = residual(branches, joints, state + share * step)
        if np.linalg.norm(after) <= before * (1 + 1e-9):
            return share
        share /= 2
    return share
