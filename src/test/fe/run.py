"""Make the solids, solve them with ccx, and print what moved as a table. See README.md."""

import datetime
import subprocess
import sys

import solid

SIX = [-90, -54, -18, 18, 54, 90]
CONSTRUCTS = {
    "short": {"plates": [(1, SIX)]},
    "long": {"plates": [(1, [-90, -54, 54, 90])], "fine": 18},
    "strut": {"plates": [(1, SIX)], "strut": (10.5, 5.5, -70, 75)},
    "opposite": {"plates": [(1, SIX), (-1, [-72, -36, 36, 72])]},
    "bonded": {"plates": [(1, SIX)], "sizes": {"GAP": 0.0}},
    "meets": {"plates": [(1, SIX)], "sizes": {"GAP": 0.0}, "meets": True},
    "angle": {"plates": [(1, SIX), (0, [-72, -36, 36, 72])], "whole": True},
    "titanium": {
        "plates": [(1, SIX)],
        "sizes": {
            "OUTER": 30.0, "INNER": 16.0, "WIDTH": 16.0, "THICKNESS": 5.5, "METAL": "TITANIUM",
        },
    },
    "nail": {"nail": (9, -130, 111, [-120, -80, 85, 105], 4.5)},
}


def solved(path):
    """Run ccx; return for each step the movements by set and the forces on the cut."""
    subprocess.run(["ccx", path], check=True, stdout=subprocess.DEVNULL)
    steps = {}
    with open(path + ".dat") as file:
        rows = iter(file.read().splitlines())
    for row in rows:
        words = row.split()
        if row.startswith((" displacements", " statistics")):
            step = steps.setdefault(round(float(words[-1])), {})
        if row.startswith(" displacements"):
            here = step.setdefault(words[4], {})
        elif len(words) == 4 and words[0].isdigit():
            here[int(words[0])] = tuple(map(float, words[1:]))
        elif "moment about the origin" in row:
            next(rows)
            step["cut"] = list(map(float, next(rows).split()))
    return steps


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


def edge(path, step, nodes, hole):
    """Return the largest stress along the plate, tension or pressure, at the edge of a hole."""
    half = solid.HOLE / 2
    at_edge = {
        n
        for n, (x, y, z) in nodes.items()
        if x > solid.UNDER - 0.01 and abs((y * y + (z - hole) ** 2) ** 0.5 - half) < 1e-3
    }
    blocks, inside, largest = 0, False, 0.0
    with open(path + ".frd") as file:
        for row in file:
            if row.startswith(" -4"):
                inside = "STRESS" in row
                blocks += inside
            elif inside and row.startswith(" -1") and blocks == step and int(row[3:13]) in at_edge:
                largest = max(largest, abs(float(row[13 + 24 : 13 + 36])))
    return largest


IN_PLANE = ["end dx", "end dz", "end ry", "gap near", "gap far", "plate N", "plate Mweak"]
READ = {
    "N": IN_PLANE,
    "My": IN_PLANE,
    "-My": IN_PLANE,
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
    if "cut" in step:
        found |= {"plate " + key: value for key, value in cut(step["cut"]).items()}
    return found


def table(name, size):
    """Yield the rows of one construct; of the whole bone, not the half."""
    path = f"{name}-{size:g}"
    nodes, count = solid.deck(path, CONSTRUCTS[name], size)
    yield f"# {name}: elements of {size:g} mm, {3 * count} degrees of freedom"
    for kind, loads in solid.kinds(CONSTRUCTS[name]).items():
        steps = solved(f"{path}-{kind}")
        for number, load in enumerate(loads, 1):
            found = moved(steps[number], nodes, kind)
            if "fine" in CONSTRUCTS[name] and kind == "even":
                hole = CONSTRUCTS[name]["fine"]
                found["hole edge"] = edge(f"{path}-{kind}", number, nodes, hole)
            for quantity in (BOTH if kind == "all" else READ)[load] + ["hole edge"]:
                if quantity in found:
                    yield f"{name},{size:g},{load},{quantity},{found[quantity]:.6g}"


def main():
    size, names = float(sys.argv[1]), sys.argv[2:] or CONSTRUCTS
    print(f"# {datetime.date.today()}, gmsh {solid.gmsh.GMSH_API_VERSION}, CalculiX ccx 2.20")
    for name in names:
        for row in table(name, size):
            print(row, flush=True)


main()
