"""Make the solids, solve them with ccx, and print what moved as a table. See README.md."""

import datetime
import subprocess
import sys

import deck
import solid

SIX = [-90, -54, -18, 18, 54, 90]
NAIL = (9, -130, 111, [-120, -80, 85, 105], 4.5)
CONSTRUCTS = {
    "short": {"plates": [(1, SIX)]},
    "long": {"plates": [(1, [-90, -54, 54, 90])], "fine": 18},
    "two": {"plates": [(1, [-90, -54, -36, 36, 54, 90])]},
    "six": {"plates": [(1, [-90, -72, 72, 90])]},
    "strut": {"plates": [(1, SIX)], "strut": (10.5, 5.5, -70, 75)},
    "opposite": {"plates": [(1, SIX), (-1, [-72, -36, 36, 72])]},
    "bonded": {"plates": [(1, SIX)], "sizes": {"GAP": 0.0}},
    "meets": {
        "plates": [(1, SIX)], "sizes": {"GAP": 0.0}, "meets": True,
        "loads": {"even": ["N", "My", "-My"]},
    },
    "squeezed": {
        "plates": [(1, SIX)], "sizes": {"GAP": 0.0}, "meets": True, "squeeze": (800, 0),
        "loads": {"even": ["P", "N", "-N", "My", "-My", "-N*10", "My*5", "-My*5", "My*3"]},
    },
    "angle": {"plates": [(1, SIX), (0, [-72, -36, 36, 72])], "whole": True},
    "titanium": {
        "plates": [(1, SIX)],
        "sizes": {
            "OUTER": 30.0, "INNER": 16.0, "WIDTH": 16.0, "THICKNESS": 5.5, "METAL": "TITANIUM",
        },
    },
    "nail": {"nail": NAIL},
    "loose": {
        "nail": NAIL, "loose": True, "round": 8, "slides": NAIL[3],
        "loads": {"even": ["N", "My"]},
        "apart": [("BOLTS", "TITANIUM", NAIL[3], 0)],
    },
    "feet": {"feet": SIX},
    "pressed": {
        "pressed": SIX, "preload": 2000,
        "apart": [("STEEL", "BONE", SIX, 0.3), ("SCREWS", "STEEL", SIX, 0)],
        "loads": {"even": ["P", "N*0.5", "My*0.4", "-My*0.4", "N", "N*2", "N*4"]},
    },
}


def solved(path):
    """Run ccx; return for each step the movements by set and the forces on cut and contacts."""
    subprocess.run(["ccx", path], check=True, stdout=subprocess.DEVNULL)
    steps = {}
    with open(path + ".dat") as file:
        rows = iter(file.read().splitlines())
    for row in rows:
        words = row.split()
        if row.startswith((" displacements", " statistics")):
            # Only a step that has come to its end is told at a whole time.
            step = steps.setdefault(round(float(words[-1]), 6), {})
        if row.startswith(" displacements"):
            here = step.setdefault(words[4], {})
        elif row.startswith(" statistics for slave"):
            here = words[4].rstrip(",")
        elif row.startswith(" statistics"):
            here = "cut"
        elif len(words) == 4 and words[0].isdigit():
            here[int(words[0])] = tuple(map(float, words[1:]))
        elif "moment about the origin" in row:
            next(rows)
            step[here] = list(map(float, next(rows).split()))
    return {round(time): step for time, step in steps.items() if time == round(time)}


def solve(matrix, right):
    """Solve three equations by Cramer's rule."""
    det = lambda m: (
        m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
        - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
        + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0])
    )
    with_column = lambda k: [
        [right[i] if j == k else matrix[i][j] for j in range(3)] for i in range(3)
    ]
    return [det(with_column(k)) / det(matrix) for k in range(3)]


def rigid(moved, nodes, kind):
    """Return the rigid movement of a face, by least squares: dx, dy, dz, rx, ry, rz."""
    rows = []
    for n, (u, v, w) in moved.items():
        x, y, _ = nodes[n]
        rows.append((x, y, u, v, w))
        if kind != "all":
            rows.append((x, -y, -u, v, -w) if kind == "odd" else (x, -y, u, -v, w))
    total = lambda f: sum(f(*row) for row in rows)
    x, y = total(lambda x, y, *_: x), total(lambda x, y, *_: y)
    xx, yy = total(lambda x, y, *_: x * x), total(lambda x, y, *_: y * y)
    xy, n = total(lambda x, y, *_: x * y), len(rows)
    # Out of the plane dz + rx y - ry x, in it dx - rz y and dy + rz x.
    dz, rx, ry = solve(
        [[n, y, -x], [y, yy, -xy], [-x, -xy, xx]],
        [
            total(lambda x, y, u, v, w: w),
            total(lambda x, y, u, v, w: w * y),
            total(lambda x, y, u, v, w: -w * x),
        ],
    )
    dx, dy, rz = solve(
        [[n, 0, -y], [0, n, x], [-y, x, xx + yy]],
        [
            total(lambda x, y, u, v, w: u),
            total(lambda x, y, u, v, w: v),
            total(lambda x, y, u, v, w: v * x - u * y),
        ],
    )
    return dict(dx=dx, dy=dy, dz=dz, rx=rx, ry=ry, rz=rz)


def opening(step, nodes, x):
    """Return how far the two ends part at (x, 0)."""
    at = lambda name: min(
        step[name], key=lambda n: abs(nodes[n][0] - x) + abs(nodes[n][1])
    )
    return step["DIST"][at("DIST")][2] - step["PROX"][at("PROX")][2]


def cut(printed):
    """Return what the plate carries, about its own axis, from forces and moments printed."""
    # The printed side faces proximally: its forces are the opposite of the plate's own.
    times = 1 if solid.WHOLE else 2
    fx, fy, fz, mx, my, mz = (-times * value for value in printed)
    axis = solid.UNDER + solid.THICKNESS / 2
    return {"N": fz, "Mweak": my + axis * fz, "Mstrong": mx, "T": mz - axis * fy}


def along(path, step, wanted):
    """Return the stresses along the bone at some nodes."""
    blocks, inside, found = 0, False, []
    with open(path + ".frd") as file:
        for row in file:
            if row.startswith(" -4"):
                inside = "STRESS" in row
                blocks += inside
            elif inside and row.startswith(" -1") and blocks == step and int(row[3:13]) in wanted:
                found.append(float(row[13 + 24 : 13 + 36]))
    return found


def edge(path, step, nodes, hole):
    """Return the largest stress along the plate, tension or pressure, at the edge of a hole."""
    half = solid.HOLE / 2
    at_edge = {
        n
        for n, (x, y, z) in nodes.items()
        if x > solid.UNDER - 0.01 and abs((y * y + (z - hole) ** 2) ** 0.5 - half) < 1e-3
    }
    return max(map(abs, along(path, step, at_edge)))


def opening_moment(path, construct, size, short):
    """Return at what My in N·m the pressure at the far cortex is gone, from ends that are one piece."""
    bonded = construct | {"meets": False, "loads": {"even": ["P", "My"]}, "far": True}
    nodes, _ = deck.deck(path, bonded, size, short=short)
    solved(path + "-even")
    far = {
        n
        for n, (x, y, z) in nodes.items()
        if abs(z) < 1 and abs(y) < 2 and abs(x + (solid.OUTER**2 / 4 - y * y) ** 0.5) < 1e-3
    }
    before, after = (sum(along(path + "-even", step, far)) for step in (1, 2))
    return 2.5 * before / (before - after)


IN_PLANE = ["end dx", "end dz", "end ry", "gap near", "gap far", "plate N", "plate Mweak"]
READ = {
    "P": ["gap near", "gap far", "plate N", "plate Mweak"],
    "N": IN_PLANE,
    "My": IN_PLANE,
    "Mx": ["end dy", "end rx", "plate Mstrong"],
    "T": ["end dy", "end rz", "gap shear", "plate T"],
}
BOTH = {  # with plates at an angle every load moves every way
    "N": ["end dx", "end dy", "end dz", "end rx", "end ry", "gap near", "gap far", "plate N"],
    "My": ["end dx", "end dy", "end dz", "end rx", "end ry", "gap near", "gap far", "plate N"],
    "Mx": ["end dx", "end dy", "end rx", "end ry", "plate Mstrong"],
    "T": ["end rz", "gap shear", "plate T"],
}


def moved(step, nodes, kind):
    """Return all that is read from one step, by name."""
    found = {"end " + key: value for key, value in rigid(step["END"], nodes, kind).items()}
    if "DIST" in step:
        radius = solid.OUTER / 2
        distal, proximal = (rigid(step[key], nodes, kind) for key in ("DIST", "PROX"))
        apart = {key: distal[key] - proximal[key] for key in distal}
        across = (apart["dx"] ** 2 + apart["dy"] ** 2) ** 0.5 if kind == "all" else abs(apart["dy"])
        found["gap shear"] = across + radius * abs(apart["rz"])
        found["gap near"] = opening(step, nodes, radius)
        found["gap far"] = opening(step, nodes, -radius)
    times = 1 if kind == "all" else 2
    for side, foot in enumerate(sorted(key for key in step if key.startswith("STEEL")), 1):
        rest = step["SCREWS" + foot[5:]]
        found[f"foot {side} force"] = times * step[foot][0]
        found[f"foot {side} along"] = times * step[foot][2]
        found[f"screw {side} along"] = times * rest[2]
    if "cut" in step:
        found |= {"plate " + key: value for key, value in cut(step["cut"]).items()}
    return found


def squeeze(path, construct, size):
    """Return the strain of the plate that presses bonded ends as wanted: how much, and how it grows."""
    force, towards = construct["squeeze"]
    axis = solid.UNDER + solid.THICKNESS / 2
    bonded = construct | {"meets": False, "loads": {"even": ["P"]}}
    units = [(-1e-4, 0), (0, 1e-5)]
    carried = []
    for number, unit in enumerate(units):
        nodes, _ = deck.deck(f"{path}-unit{number}", bonded, size, short=unit)
        step = solved(f"{path}-unit{number}-even")[1]
        carried.append([cut(step["cut"])[key] for key in ("N", "Mweak")])
    (a, c), (b, d) = carried
    moment = force * (axis - towards)
    whole = a * d - b * c
    return units[0][0] * (force * d - b * moment) / whole, units[1][1] * (a * moment - c * force) / whole


def tighten(path, construct, size):
    """Return by how much each screw is to shrink, by level, so that its foot presses as wanted."""
    shrunk = dict.fromkeys(construct["pressed"], -0.03)
    only = construct | {"loads": {"even": ["P"]}}
    deck.deck(f"{path}-tight", only, size, shrunk=shrunk)
    step = solved(f"{path}-tight-even")[1]
    for side, level in enumerate(sorted(shrunk)):
        shrunk[level] *= construct["preload"] / abs(2 * step[f"STEEL{side}"][0])
    return shrunk


def table(name, size):
    """Yield the rows of one construct; of the whole bone, not the half."""
    path, construct, start = f"{name}-{size:g}", CONSTRUCTS[name], {}
    solid.use(construct)
    if "squeeze" in construct:
        start["short"] = squeeze(path, construct, size)
        moment = opening_moment(f"{path}-far", construct, size, start["short"])
        yield f"{name},{size:g},P,opening moment,{moment:.6g}"
    if "preload" in construct:
        start["shrunk"] = tighten(path, construct, size)
    nodes, count = deck.deck(path, construct, size, **start)
    yield f"# {name}: elements of {size:g} mm, {3 * count} degrees of freedom"
    for kind, loads in deck.kinds(construct).items():
        steps = solved(f"{path}-{kind}")
        before = {}
        for number, load in enumerate(loads, 1):
            if number not in steps:
                yield f"# {name}, {load}: no rest was found"
                break
            found = moved(steps[number], nodes, kind)
            if load == "P":
                before = {key: of for key, of in found.items() if key[:3] in ("end", "gap")}
            elif before:
                found |= {key: found[key] - of for key, of in before.items()}
            if "fine" in construct and kind == "even":
                found["hole edge"] = edge(f"{path}-{kind}", number, nodes, construct["fine"])
            wanted = (BOTH if kind == "all" else READ)[load.lstrip("-").partition("*")[0]]
            extra = [key for key in found if key.startswith(("foot", "screw", "hole"))]
            for quantity in wanted + extra:
                if quantity in found:
                    yield f"{name},{size:g},{load},{quantity},{found[quantity]:.6g}"


def main():
    size, names = float(sys.argv[1]), sys.argv[2:] or CONSTRUCTS
    print(f"# {datetime.date.today()}, gmsh {deck.gmsh.GMSH_API_VERSION}, CalculiX ccx 2.20")
    for name in names:
        for row in table(name, size):
            print(row, flush=True)


main()
