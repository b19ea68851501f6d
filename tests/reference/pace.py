"""How long scipy's sparse Newton method and pandapipes take for networks of 40 and 400 tubes. For people to read."""

import json
import random
import statistics
import time

import networks
import pipes

TIMES = 7


def tell(name, work):
    """Least, usual and most, as the benchmarks of the crate are printed."""
    spent = []
    for _ in range(TIMES):
        began = time.perf_counter()
        work()
        spent.append((time.perf_counter() - began) * 1e6)
    least, usual, most = min(spent), statistics.median(spent), max(spent)
    print(f"{name} time: [{least:.0f} µs {usual:.0f} µs {most:.0f} µs]")


if __name__ == "__main__":
    with open("answers.jsonl", encoding="utf-8") as file:
        kept = [json.loads(line) for line in file]
    for network in kept:
        if network["kind"] == "network" and network["tubes"] in (40, 400):
            tell(f"network/{network['tubes']} scipy", lambda: networks.solve(network))
    for tubes in (40, 400):
        net, _ = pipes.make(random.Random(1), tubes)
        tell(f"network/{tubes} pandapipes", lambda: pipes.solve(net))
