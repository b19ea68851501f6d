"""How long scipy's sparse Newton method and pandapipes take for networks of 40 and 400 tubes. For people to read."""

import json
import random
import time

import networks
import pipes

TIMES = 5


def best(work):
    spent = []
    for _ in range(TIMES):
        began = time.perf_counter()
        work()
        spent.append(time.perf_counter() - began)
    return min(spent) * 1e6


if __name__ == "__main__":
    with open("answers.jsonl", encoding="utf-8") as file:
        kept = [json.loads(line) for line in file]
    for network in kept:
        if network["kind"] == "network" and network["tubes"] in (40, 400):
            spent = best(lambda: networks.solve(network))
            print(f"  {network['tubes']} tubes, scipy, the equations in Python: {spent:.0f} µs")
    for tubes in (40, 400):
        net, _ = pipes.make(random.Random(1), tubes)
        spent = best(lambda: pipes.solve(net))
        print(f"  {tubes} tubes, pandapipes: {spent:.0f} µs")
