#!/usr/bin/env python3
"""Recomputes a plan from its JSON alone, with NumPy and SciPy and nothing of Proveout's own code.

    proveout plan MACHINE --json --network > plan.json
    python3 recompute.py plan.json

docs/json.md says what the file holds. This script
  1. counts anew which mistakes the plan surely catches, and that none is left that any check considered would surely catch;
  2. draws machines inside their tolerances, sound and with each mistake, measures them with a meter of its own (junctions conducting or not by
     an active set), and holds that every reading lies in the interval that the file states;
  3. holds that the stated intervals are no wider than they need to be where the network is one of resistances only.
It ends with one line, "N held, M broken", and exit status 1 when something is broken.
"""
import argparse
import json
import math
import random
import sys

import numpy
from scipy.linalg import lu_factor, lu_solve

TIE_SIEMENS = 1e-9        # what a blocking junction passes: it keeps pieces together that only junctions join
JUNCTION_OHMS = 1e-3      # in series with a conducting junction, so that two in parallel share
MOST_STEPS = 400
SLACK = 2e-3              # what the ties and the leak of this script may cost, as a share of a reading
OVER = math.inf
LARGEST_OHMS = 1e8        # beyond every range; above it only ties and rounding are left of a path


class Machine:
    """The network of the file in one set-up, with the changes of a mistake and values drawn inside their limits."""

    def __init__(self, network, set_up, changes, draw):
        open_elements = next(state["open"] for state in network["states"] if state["setUp"] == set_up)
        self.resistors, self.junctions = [], []
        by_element = {change["element"]: change for change in changes if "element" in change}
        resting = set(open_elements)
        for element in network["elements"]:
            index, change = element["index"], by_element.get(element["index"])
            # A contact of the other sense conducts where it should not, and only there.
            is_open = (index in resting) != bool(change and change["what"] == "invert")
            if is_open or (change and change["what"] == "cut") or element["a"] == element["b"]:
                continue
            if element["kind"] == "junction":
                self.junctions.append((element["a"], element["b"], draw(element["forwardLowVolts"], element["forwardHighVolts"])))
                continue
            low, high = element["lowOhms"], element["highOhms"]
            if change and change["what"] == "replace":
                low, high = change["lowOhms"], change["highOhms"]
            ohms = draw(low, high)
            if change and change["what"] == "add-in-series":
                ohms += draw(change["lowOhms"], change["highOhms"])
            if math.isfinite(ohms):
                self.resistors.append((element["a"], element["b"], ohms))
        for change in changes:
            if change["what"] == "join" and change["a"] != change["b"] and not (change["onlyWhileMated"] and set_up != "mated"):
                self.resistors.append((change["a"], change["b"], draw(change["lowOhms"], change["highOhms"])))


class Port:
    """What stands between two nodes of a machine."""

    def __init__(self, machine, red, black):
        self.joined = self._reach(machine, red)
        self.is_open = black not in self.joined
        if self.is_open:
            return
        rows = {node: row for row, node in enumerate(sorted(self.joined - {black}))}
        self.red = rows[red]
        self.junctions = [(rows.get(a, -1), rows.get(b, -1), volts) for a, b, volts in machine.junctions if a in self.joined and b in self.joined]
        self.conductances = numpy.zeros((len(rows), len(rows)))
        for a, b, ohms in machine.resistors:
            if a in self.joined and b in self.joined:
                self._add(rows.get(a, -1), rows.get(b, -1), 1 / ohms)
        for a, b, _ in self.junctions:
            self._add(a, b, TIE_SIEMENS)
        self.factor = lu_factor(self.conductances)

    @staticmethod
    def _reach(machine, start):
        neighbours = {}
        for a, b, _ in machine.resistors + machine.junctions:
            neighbours.setdefault(a, []).append(b)
            neighbours.setdefault(b, []).append(a)
        reached, queue = {start}, [start]
        while queue:
            for other in neighbours.get(queue.pop(), []):
                if other not in reached:
                    reached.add(other)
                    queue.append(other)
        return reached

    def _add(self, a, b, siemens):
        for one, other in ((a, b), (b, a)):
            if one >= 0:
                self.conductances[one, one] += siemens
                if other >= 0:
                    self.conductances[one, other] -= siemens

    def _solve(self, source):
        solution = lu_solve(self.factor, source)
        return solution + lu_solve(self.factor, source - self.conductances @ solution)

    def volts(self, amperes):
        """Volts at the port for a driven current; junctions conduct or not by least-index pivoting (Murty 1988, chapter 4)."""
        if self.is_open:
            return OVER
        source = numpy.zeros(len(self.conductances))
        source[self.red] = amperes
        driven = self._solve(source)
        count = len(self.junctions)
        if count == 0:
            return driven[self.red]
        incidence = numpy.zeros((len(source), count))
        for column, (a, b, _) in enumerate(self.junctions):
            if a >= 0:
                incidence[a, column] += 1
            if b >= 0:
                incidence[b, column] -= 1
        response = self._solve(incidence)
        mutual = incidence.T @ response + numpy.eye(count) * JUNCTION_OHMS
        lacking = numpy.array([volts for _, _, volts in self.junctions]) - incidence.T @ driven
        conducts = numpy.zeros(count, dtype=bool)
        for _ in range(MOST_STEPS):
            inside = numpy.flatnonzero(conducts)
            currents = numpy.zeros(count)
            if len(inside):
                currents[inside] = numpy.linalg.solve(mutual[numpy.ix_(inside, inside)], -lacking[inside])
            slack = lacking + mutual @ currents
            wrong = numpy.flatnonzero((conducts & (currents < -1e-15)) | (~conducts & (slack < -1e-9)))
            if len(wrong) == 0:
                return driven[self.red] - response[self.red] @ currents
            conducts[wrong[0]] = not conducts[wrong[0]]
        return None


def measure(port, kind, rng):
    """What an ideal instrument of a kind reads; None when it cannot be told."""
    if kind == "diode-test":
        volts = port.volts(rng.uniform(0.5e-3, 1.5e-3))
        return None if volts is None else OVER if volts > rng.uniform(2.0, 3.3) else volts
    amperes = rng.uniform(0.2, 1.0) if kind == "four-wire" else 1e-3 * 10 ** rng.uniform(-3, 0)
    volts = port.volts(amperes)
    if volts is None:
        return None
    # A meter of resistance drives at most about 3.3 V: where its current would need more, it drives less.
    while kind == "resistance" and volts > 3.3 and amperes > 1e-9:
        amperes /= 4
        volts = port.volts(amperes)
        if volts is None:
            return None
    return OVER if abs(volts) > LARGEST_OHMS * amperes else volts / amperes


def shown(meter, ohms):
    """The readings that an instrument may show for a true resistance."""
    low, high = ohms + meter["leadLowOhms"], ohms + meter["leadHighOhms"]
    least, most, bottom = math.inf, -math.inf, -math.inf
    for scale in meter["ranges"]:
        digits = scale["digits"] * scale["resolution"]
        if high >= bottom and low <= 1.02 * scale["fullScale"]:
            least = min(least, max(0, max(low, bottom) * (1 - scale["relativeError"]) - digits))
            most = max(most, min(high, 1.02 * scale["fullScale"]) * (1 + scale["relativeError"]) + digits)
        bottom = 0.98 * scale["fullScale"]
    return least, (math.inf if high > bottom else most)


def bounds(interval):
    low, high = interval["low"], interval["high"]
    return (math.inf if low is None else low), (math.inf if high is None else high)


def disjoint(one, other):
    return one[0] > other[1] or one[1] < other[0]


def between(rng):
    """Draws inside a band: evenly on a logarithmic scale; a band without an upper end may be open."""
    def draw(low, high):
        if low is None:
            return math.inf
        if high is None:
            return math.inf if rng.random() < 0.3 else low * 10 ** rng.uniform(0, 4)
        return low if low == high else math.exp(rng.uniform(math.log(low), math.log(high)))
    return draw


class Tally:
    def __init__(self):
        self.held, self.broken = 0, 0

    def hold(self, condition, sentence):
        if condition:
            self.held += 1
        else:
            self.broken += 1
            if self.broken <= 20:
                print("broken:", sentence)


def recount(plan, tally):
    """The plan's claim, counted from the intervals."""
    network = plan["network"]
    candidates = network["candidates"]
    expected = [bounds(candidate["expected"]) for candidate in candidates]
    place = {candidate["id"]: candidate["index"] for candidate in candidates}
    chosen = {place[check["id"]] for check in plan["checks"] if check["id"] in place}
    caught = 0
    for fault in network["faults"]:
        catching = {changed["check"] for changed in fault["checks"] if disjoint(bounds(changed), expected[changed["check"]])}
        caught += bool(catching & chosen)
        tally.hold(not catching or catching & chosen, f"{fault['id']} is surely caught by a check that was considered, and by none of the plan")
    tally.hold(caught == plan["summary"]["caught"], f"the plan claims {plan['summary']['caught']} mistakes caught, counted are {caught}")
    print(f"{len(network['faults'])} mistakes, {caught} surely caught by {len(chosen)} checks")


def sample(plan, tally, every, draws, seed):
    """Readings of machines drawn inside their tolerances."""
    network = plan["network"]
    rng = random.Random(seed)
    meters = {meter["kind"]: meter for meter in network["meters"]}
    candidates = network["candidates"]
    sound = [(candidate, candidate["expected"], [], "the sound machine") for candidate in candidates[::every]]
    faulty = [
        (candidates[changed["check"]], changed, fault["changes"], fault["id"])
        for fault in network["faults"][:: max(1, every // 4)]
        for changed in rng.sample(fault["checks"], min(2, len(fault["checks"])))
    ]
    told = 0
    for candidate, interval, changes, name in sound + faulty:
        low, high = bounds(interval)
        for _ in range(draws):
            port = Port(Machine(network, candidate["setUp"], changes, between(rng)), candidate["red"], candidate["black"])
            reading = measure(port, candidate["meter"], rng)
            if reading is None:
                continue
            told += 1
            least, most = (reading, reading) if reading == OVER else (reading * (1 - SLACK), reading * (1 + SLACK))
            if candidate["meter"] in meters and meters[candidate["meter"]]["ranges"]:
                least, most = shown(meters[candidate["meter"]], reading)
            # Whatever the instrument may show of this machine lies in the stated interval.
            tally.hold(
                low <= least * (1 + SLACK) + 1e-9 and most * (1 - SLACK) <= high + 1e-9,
                f"{candidate['id']} under {name}: may show {least:.6g} to {most:.6g}, stated {low:.6g} to {high:.6g}",
            )
    print(f"{told} readings drawn at {len(sound)} checks of the sound machine and {len(faulty)} of machines with a mistake")


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("plan", help="what `proveout plan MACHINE --json --network` wrote")
    parser.add_argument("--every", type=int, default=7, help="look at every so-manieth check and mistake")
    parser.add_argument("--draws", type=int, default=3, help="machines drawn for each")
    parser.add_argument("--seed", type=int, default=1)
    options = parser.parse_args()
    with open(options.plan, encoding="utf-8") as file:
        plan = json.load(file)
    tally = Tally()
    recount(plan, tally)
    sample(plan, tally, options.every, options.draws, options.seed)
    print(f"{tally.held} held, {tally.broken} broken")
    return 1 if tally.broken else 0


if __name__ == "__main__":
    sys.exit(main())
