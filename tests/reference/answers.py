"""What general-purpose reference libraries answer to the questions of this folder.

python answers.py          writes the answers as JSON lines
python answers.py FILE     works them out anew and says where FILE differs, if it does by more than one part in 10^9
"""

import json
import sys

import air
import fittings
import friction
import networks
import pipes

# Libraries may round their last digits otherwise on another processor.
CLOSE = 1e-9


def answers():
    for part in (friction, air, networks, pipes, fittings):
        yield from part.answers()


def close(one, other):
    if isinstance(one, dict):
        return isinstance(other, dict) and one.keys() == other.keys() and all(close(one[k], other[k]) for k in one)
    if isinstance(one, list):
        return isinstance(other, list) and len(one) == len(other) and all(map(close, one, other))
    if isinstance(one, float) and isinstance(other, (int, float)):
        return abs(one - other) <= CLOSE * max(abs(one), abs(other), 1e-6)
    return one == other


def compare(path):
    with open(path, encoding="utf-8") as file:
        kept = [json.loads(line) for line in file]
    fresh = list(answers())
    if len(kept) != len(fresh):
        return f"{len(fresh)} answers, but {len(kept)} are kept"
    for number, (old, new) in enumerate(zip(kept, fresh), start=1):
        if not close(new, old):
            return f"line {number} is kept as {json.dumps(old)[:300]}, but is {json.dumps(new)[:300]}"
    print(f"{len(fresh)} answers of the reference libraries are as they are kept")
    return None


if __name__ == "__main__":
    if len(sys.argv) > 1:
        sys.exit(compare(sys.argv[1]))
    for answer in answers():
        print(json.dumps(answer))
