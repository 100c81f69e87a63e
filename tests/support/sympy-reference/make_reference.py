"""Makes tests/statics/sympy-reference.json: beams worked by sympy's beam module, in exact fractions.

Run by hand when the list of beams changes, never by the tests:

    /usr/bin/python3 tests/support/sympy-reference/make_reference.py

It needs Debian's python3-sympy, and some minutes. sympy integrates singularity functions and
solves for the constants, so it shares no method and no rounding with the solver that it judges. Its signs are
brought to those of src/statics here (sympy: couples clockwise, hogging moments positive).

For each beam the file holds what beams.py gave, as plain numbers, and `reactions`
[station, force up, couple counterclockwise], `moments` [station, sagging], `deflections`
[station, up], all exact results rounded once. A beam that sympy cannot do, or not in ten
minutes, is named in `left_out` with the reason.
"""

import json
import multiprocessing
from pathlib import Path

import sympy
from sympy import Rational, symbols
from sympy.physics.continuum_mechanics.beam import Beam

from beams import all_beams

PATIENCE = 600
OUTPUT = Path(__file__).parents[2] / "statics" / "sympy-reference.json"
x = symbols("x")


def exact(fraction):
    return Rational(fraction.numerator, fraction.denominator)


def bare_beam(spec):
    """A beam of the right stiffness and hinges; sympy joins parts for both."""
    stretches = spec["stretches"]
    if spec["hinges"]:
        (hinge,) = spec["hinges"]
        ei = exact(stretches[0][1])
        return Beam(exact(hinge), 1, ei).join(
            Beam(exact(spec["length"] - hinge), 1, ei), "hinge"
        )
    start = 0
    whole = None
    for end, ei in stretches:
        part = Beam(exact(end - start), 1, exact(ei))
        whole = part if whole is None else whole.join(part, "fixed")
        start = end
    return whole


def put_on(b, load):
    kind, *numbers = load
    numbers = [exact(number) for number in numbers]
    if kind == "force":
        b.apply_load(numbers[1], numbers[0], -1)
    elif kind == "couple":
        b.apply_load(-numbers[1], numbers[0], -2)
    else:
        start, end, q1, q2 = numbers
        if q1 != 0:
            b.apply_load(q1, start, 0, end)
        if q2 != q1:
            b.apply_load((q2 - q1) / (end - start), start, 1, end)


def work(spec):
    b = bare_beam(spec)
    forces, couples = [], []
    for index, (station, kind) in enumerate(spec["supports"]):
        place = exact(station)
        force = symbols(f"R{index}")
        b.apply_load(force, place, -1)
        b.bc_deflection.append((place, 0))
        forces.append(force)
        couples.append(None)
        if kind == "fixed":
            couples[-1] = symbols(f"M{index}")
            b.apply_load(couples[-1], place, -2)
            b.bc_slope.append((place, 0))
    for load in spec["loads"]:
        put_on(b, load)
    b.solve_for_reaction_loads(*forces, *[one for one in couples if one is not None])
    moment, deflection = b.bending_moment(), b.deflection()
    if len(spec["stretches"]) > 1:
        # For parts joined "fixed", sympy 1.11 gives the deflection downward, and for all others upward:
        # v = P x² (3a − x) / 6EI of a cantilever under one force shows it.
        deflection = -deflection
    places = [Rational(n, 31) * exact(spec["length"]) for n in range(1, 31, 3)]
    value = lambda expression, place: float(Rational(expression.subs(x, place)))
    return {
        "reactions": [
            [
                float(station),
                float(b.reaction_loads[force]),
                None if couple is None else float(-b.reaction_loads[couple]),
            ]
            for (station, _), force, couple in zip(spec["supports"], forces, couples)
        ],
        "moments": [[float(p), -value(moment, p) + 0.0] for p in places],
        "deflections": [[float(p), value(deflection, p)] for p in places],
    }


def work_into(spec, queue):
    try:
        queue.put(("done", work(spec)))
    except Exception as reason:  # whatever sympy says goes into the file
        queue.put(("left out", f"{type(reason).__name__}: {reason}"))


def with_patience(spec):
    queue = multiprocessing.Queue()
    process = multiprocessing.Process(target=work_into, args=(spec, queue))
    process.start()
    try:
        answer = queue.get(timeout=PATIENCE)
    except Exception:
        answer = ("left out", f"not done in {PATIENCE} s")
    process.terminate()
    process.join()
    return answer


def plain(spec):
    return {
        "name": spec["name"],
        "length": float(spec["length"]),
        "supports": [[float(s), kind] for s, kind in spec["supports"]],
        "hinges": [float(s) for s in spec["hinges"]],
        "stretches": [[float(s), float(ei)] for s, ei in spec["stretches"]],
        "loads": [[load[0], *map(float, load[1:])] for load in spec["loads"]],
    }


def main():
    beams, left_out = [], []
    for spec in all_beams():
        outcome, found = with_patience(spec)
        print(outcome, spec["name"], found if outcome == "left out" else "", flush=True)
        if outcome == "done":
            beams.append({**plain(spec), **found})
        else:
            left_out.append([spec["name"], found])
        lines = ",\n".join("    " + json.dumps(one) for one in beams)
        OUTPUT.write_text(
            "{\n"
            f'  "made by": "sympy {sympy.__version__}, tests/support/sympy-reference/make_reference.py",\n'
            f'  "left_out": {json.dumps(left_out)},\n'
            f'  "beams": [\n{lines}\n  ]\n}}\n'
        )


if __name__ == "__main__":
    main()
