"""Tubes between two pressures with pandapipes: its own pipe model, solver and friction law (Swamee and Jain)."""

import contextlib
import io
import random

import pandapipes

DENSITY, VISCOSITY = 1.2, 1.8134e-5
BAR = 1e5


def answers():
    chance = random.Random(2019)
    for tubes in (4, 7, 12):
        yield manifold(chance, tubes)


def manifold(chance, tubes):
    net, case = make(chance, tubes)
    return {"kind": "pipes", **case, "flows": solve(net)}


def make(chance, tubes):
    """A main into a manifold that is held above the rooms by so many pascals, and tubes out of it."""
    fluid = pandapipes.create_constant_fluid("air", "liquid", density=DENSITY, viscosity=VISCOSITY,
                                             heat_capacity=1005.0, molar_mass=28.97, compressibility=1.0,
                                             der_compressibility=0.0)
    net = pandapipes.create_empty_network(fluid=fluid)
    source = pandapipes.create_junction(net, pn_bar=1, tfluid_k=293.15)
    joint = pandapipes.create_junction(net, pn_bar=1, tfluid_k=293.15)
    driving = round(chance.uniform(150, 400), 5)
    pandapipes.create_ext_grid(net, source, p_bar=1 + driving / BAR, t_k=293.15)
    main = {"bore": 160.0, "roughness": 0.1, "length": round(chance.uniform(2, 9), 5), "losses": 1.5}
    runs = [{"bore": chance.choice([63.0, 75.0]), "roughness": 0.1, "length": round(chance.uniform(4, 20), 5),
             "losses": round(chance.uniform(1, 3), 5)} for _ in range(tubes)]
    pipe(net, source, joint, main)
    for run in runs:
        room = pandapipes.create_junction(net, pn_bar=1, tfluid_k=293.15)
        pandapipes.create_ext_grid(net, room, p_bar=1.0, t_k=293.15)
        pipe(net, joint, room, run)
    return net, {"driving": driving, "ducts": [main, *runs]}


def solve(net):
    """The flow of every tube in m3/h."""
    with contextlib.redirect_stdout(io.StringIO()):
        pandapipes.pipeflow(net, friction_model="swamee-jain", iter=200, tol_p=1e-10, tol_m=1e-10)
    return [float(mass) / DENSITY * 3600 for mass in net.res_pipe.mdot_from_kg_per_s]


def pipe(net, start, end, duct):
    pandapipes.create_pipe_from_parameters(
        net, start, end, length_km=duct["length"] / 1000, inner_diameter_mm=duct["bore"], k_mm=duct["roughness"],
        loss_coefficient=duct["losses"], sections=1)
