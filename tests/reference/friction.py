"""Friction factors: Churchill's formula, and Colebrook's solved exactly."""

import random

from fluids.friction import Churchill_1977, Colebrook


def answers():
    chance = random.Random(1977)
    for _ in range(250):
        reynolds = round(10 ** chance.uniform(0.5, 6.5), 2)
        roughness = chance.choice([0.0, round(10 ** chance.uniform(-6, -1.4), 7)])
        answer = {"kind": "friction", "reynolds": reynolds, "roughness": roughness}
        answer["churchill"] = float(Churchill_1977(reynolds, roughness))
        if reynolds >= 4000:
            answer["colebrook"] = float(Colebrook(reynolds, roughness))
        yield answer
