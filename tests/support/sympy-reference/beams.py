"""The beams of the reference: lengths, loads and stiffnesses as exact fractions.

A beam is a dict: `length`; `supports` by station, 'fixed' or 'roller' (nothing acts along the
beam); `hinges`, stations; `stretches`, pairs of (end, EI) from left to right; `loads`:

    ('force', x, P)            P upward at x
    ('couple', x, m)           m counterclockwise at x
    ('spread', a, b, q1, q2)   upward, straight from q1 at a to q2 at b
"""

from fractions import Fraction as F

EI = F(3, 2) * 10**4


def beam(name, length, supports, loads, **more):
    return {
        "name": name,
        "length": F(length),
        "supports": [(F(x), kind) for x, kind in supports],
        "hinges": [F(x) for x in more.get("hinges", [])],
        "stretches": [(F(x), F(e)) for x, e in more.get("stretches", [(length, EI)])],
        "loads": [(load[0], *map(F, load[1:])) for load in loads],
    }


def load_sets(length):
    """Loads of every kind, in places that are nothing special."""
    l = F(length)
    return {
        "a force": [("force", l * F(2, 7), -12)],
        "a couple": [("couple", l * F(5, 9), 7)],
        "a uniform load all along": [("spread", 0, l, -3, -3)],
        "a uniform load on a part": [("spread", l * F(1, 5), l * F(3, 4), -4, -4)],
        "a triangle": [("spread", 0, l, 0, -6)],
        "a trapezoid on a part": [("spread", l * F(1, 8), l * F(5, 6), -5, F(-3, 2))],
        "everything at once": [
            ("force", l * F(1, 3), -9),
            ("force", l * F(4, 5), 4),
            ("couple", l * F(1, 2), -11),
            ("spread", l * F(1, 4), l * F(2, 3), -2, -7),
        ],
    }


def held_in_one_way(kind, length, supports):
    return [
        beam(f"{kind} under {name}", length, supports, loads)
        for name, loads in load_sets(length).items()
    ]


def all_beams():
    beams = []
    beams += held_in_one_way("simple span", 9, [(0, "roller"), (9, "roller")])
    beams += held_in_one_way("cantilever from the left", 5, [(0, "fixed")])
    beams += held_in_one_way("cantilever from the right", F(7, 2), [(F(7, 2), "fixed")])
    beams += held_in_one_way("span with two overhangs", 12, [(2, "roller"), (9, "roller")])
    beams += held_in_one_way("propped cantilever", 8, [(0, "fixed"), (8, "roller")])
    beams += held_in_one_way("propped cantilever with an overhang", 10, [(0, "fixed"), (7, "roller")])
    beams += held_in_one_way("span built in at both ends", 6, [(0, "fixed"), (6, "fixed")])
    beams += held_in_one_way("two spans", 11, [(0, "roller"), (4, "roller"), (11, "roller")])
    beams += held_in_one_way(
        "three spans", 15, [(0, "roller"), (5, "roller"), (9, "roller"), (15, "roller")]
    )
    for name in ("a force", "a trapezoid on a part", "everything at once"):
        beams.append(
            beam(
                f"two spans with an overhang, built in at the right, under {name}",
                14,
                [(2, "roller"), (8, "roller"), (14, "fixed")],
                load_sets(14)[name],
            )
        )
        beams.append(
            beam(
                f"three spans built in at both ends under {name}",
                18,
                [(0, "fixed"), (5, "roller"), (12, "roller"), (18, "fixed")],
                load_sets(18)[name],
            )
        )
        beams.append(
            beam(
                f"cantilever of two stiffnesses under {name}",
                6,
                [(0, "fixed")],
                load_sets(6)[name],
                stretches=[(F(5, 2), 4 * 10**4), (6, 10**4)],
            )
        )
    # sympy parts the loads of a hinged beam at the hinge by where their terms stand, and so loses
    # balance under a spread load that begins left of it or is not uniform; these it does right.
    for name, loads in {
        "forces": [("force", F(18, 7), -12), ("force", F(20, 3), -5)],
        "a couple": [("couple", F(13, 2), -8)],
        "a uniform load on the right part": [("spread", 5, 9, -3, -3)],
        "a uniform load on some of the right part": [("spread", F(11, 2), 8, -4, -4)],
        "everything on both parts": [
            ("force", 3, -9),
            ("couple", 1, 6),
            ("force", 7, 4),
            ("spread", 5, F(17, 2), -2, -2),
        ],
    }.items():
        beams.append(
            beam(
                f"built in at the left, a hinge, a roller, under {name}",
                9,
                [(0, "fixed"), (9, "roller")],
                loads,
                hinges=[4],
            )
        )
    for name in ("a force", "everything at once"):
        beams.append(
            beam(
                f"four spans under {name}",
                20,
                [(0, "roller"), (4, "roller"), (10, "roller"), (15, "roller"), (20, "roller")],
                load_sets(20)[name],
            )
        )
        beams.append(
            beam(
                f"five spans under {name}",
                24,
                [(0, "roller"), (5, "roller"), (9, "roller"), (15, "roller"), (19, "roller"), (24, "roller")],
                load_sets(24)[name],
            )
        )
    return beams
