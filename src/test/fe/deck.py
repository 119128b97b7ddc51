"""Decks for CalculiX of a solid: elements, what touches, what is held, and a step for each load.

A load is named as in solids.csv: N, My, Mx or T, with a minus for the other way and with `*3` for
three times as much. P is none at all, but for what presses from the start.
"""

import math

import contact
import gmsh
import solid

MATERIALS = {
    "BONE": (15000, 0.3),
    "STEEL": (193000, 0.3),
    "SCREWS": (193000, 0.3),
    "TITANIUM": (110000, 0.34),
    "BOLTS": (110000, 0.34),
    "STRUT": (17000, 0.3),
}
TINY = 1e-6
# Half of the length of plate that is too short, where ends are to be pressed together, in mm.
SHORT = 12.0
# The part of the shaft of a screw that is too short: from the bone outwards, in mm.
SHRUNK = 1.0
# How softly a nail slides on a bolt, in N/mm: a thousandth of how a bolt of 4.5 mm sits along itself
# in this bone. Nothing else holds the nail there.
SLIDING = 84.2
GAUSS = [
    (0.223381589678011, (0.108103018168070, 0.445948490915965, 0.445948490915965)),
    (0.109951743655322, (0.816847572980459, 0.091576213509771, 0.091576213509771)),
]


def traction(name):
    """Return the traction on the distal face at (x, y); positive My presses the side of the plate."""
    area, second = solid.AREA, solid.SECOND
    of = {
        "P": lambda x, y: (0, 0, 0),
        "N": lambda x, y: (0, 0, -200 / area),
        "My": lambda x, y: (0, 0, -2500 * x / second),
        "Mx": lambda x, y: (0, 0, 1000 * y / second),
        "T": lambda x, y: (-1500 * y / (2 * second), 1500 * x / (2 * second), 0),
    }
    kind, _, times = name.lstrip("-").partition("*")
    factor = (-1 if name.startswith("-") else 1) * float(times or 1)
    return lambda x, y: tuple(factor * part for part in of[kind](x, y))


def kinds(construct):
    """Return the decks of a construct with the names of their loads."""
    if "loads" in construct:
        return construct["loads"]
    if construct.get("whole"):
        return {"all": ["N", "My", "Mx", "T"]}
    return {"even": ["N", "My"], "odd": ["Mx", "T"]}


def nodal(faces, nodes, traction):
    """Spread a traction over the nodes of the faces, each quadratic triangle by six points."""
    force = {}
    for face in faces:
        points = [nodes[n] for n in face]
        for weight, corner in GAUSS:
            for turn in range(3):
                a, b, c = corner[turn:] + corner[:turn]
                shape = [a*(2*a-1), b*(2*b-1), c*(2*c-1), 4*a*b, 4*b*c, 4*c*a]
                by_a = [4*a-1, 0, -(4*c-1), 4*b, -4*b, 4*(c-a)]
                by_b = [0, 4*b-1, -(4*c-1), 4*a, 4*(c-b), -4*a]
                dot = lambda f, k: sum(s * p[k] for s, p in zip(f, points))
                area = abs(dot(by_a, 0) * dot(by_b, 1) - dot(by_a, 1) * dot(by_b, 0)) / 2
                t = traction(dot(shape, 0), dot(shape, 1))
                for n, s in zip(face, shape):
                    old = force.get(n, (0, 0, 0))
                    force[n] = tuple(o + s * weight * area * f for o, f in zip(old, t))
    return force


def lines(values, per=12):
    values = list(values)
    return "\n".join(
        ", ".join(str(v) for v in values[i : i + per]) for i in range(0, len(values), per)
    )


def tetrahedra(materials):
    """Return for each group the ten nodes of each element, in the order of the solver."""
    groups = {}
    for name, volumes in materials.items():
        own = groups[name] = {}
        for volume in sorted(volumes):
            for kind, ids, flat in zip(*gmsh.model.mesh.getElements(3, volume)):
                assert kind == 11
                for i, element in enumerate(ids):
                    ten = list(map(int, flat[10 * i : 10 * i + 10]))
                    ten[8], ten[9] = ten[9], ten[8]
                    own[int(element)] = ten
    return groups


def touching(construct, groups, nodes, faces):
    """Lay contact; return it, and what is to be printed of it."""
    out, read = [], []
    if solid.MEETS:
        out += contact.ends_meet(groups["BONE"], faces, solid.APART)
    for first, second, levels, friction in construct.get("apart", []):
        law = first + second
        out += contact.law(law, friction)
        parted = contact.split(groups[first], groups[second], nodes, levels)
        for number, level in enumerate(sorted(parted)):
            names = [f"{first}{number}", f"{second}{number}ON"]
            for name, members in zip(names, parted[level]):
                out += contact.surface(name, members)
            out += contact.pair(*names, law, None)
            read += [f"*CONTACT PRINT, SLAVE={names[0]}, MASTER={names[1]}", "CF"]
    return out, read


def loose(construct, nodes, groups):
    """Return springs along the bolts of a nail that could slide on them, as soft as in the model."""
    out, free = [], 1 + max(e for own in groups.values() for e in own)
    for number, level in enumerate(construct.get("slides", [])):
        near = lambda n: math.dist(nodes[n], (0, 0, level))
        ends = [
            min({n for own in groups[name].values() for n in own}, key=near)
            for name in ("BOLTS", "TITANIUM")
        ]
        out += [f"*ELEMENT, TYPE=SPRING2, ELSET=SOFT{number}", f"{free + number}, {ends[0]}, {ends[1]}"]
        out += [f"*SPRING, ELSET=SOFT{number}", "1, 1", f"{SLIDING if solid.WHOLE else SLIDING / 2}"]
    return out


def warmth(groups, nodes, short, shrunk):
    """Return the strain from the start of each node that has one, along the plate or the screw."""
    found = {}
    if short:
        axis = solid.UNDER + solid.THICKNESS / 2
        for n in {n for own in groups[solid.METAL].values() for n in own}:
            x, _, z = nodes[n]
            if abs(z) <= SHORT:
                found[n] = short[0] + short[1] * (x - axis)
    for level, strain in (shrunk or {}).items():
        for n in {n for own in groups["SCREWS"].values() for n in own}:
            x, _, z = nodes[n]
            if abs(z - level) < solid.SHAFT and solid.OUTER / 2 <= x <= solid.OUTER / 2 + SHRUNK:
                found[n] = strain
    return found


def deck(path, construct, size, short=None, shrunk=None):
    """Write the decks, such as PATH-even.inp; return all nodes and how many are used.

    short: strain of the plate across the fracture, and how it grows with the distance from its
    axis. shrunk: strain of each screw by its level.
    """
    solid.use(construct)
    gmsh.initialize()
    gmsh.option.setNumber("General.Terminal", 0)
    materials = solid.build(construct)
    solid.mesh(size, construct.get("fine"), "far" in construct)
    tags, flat, _ = gmsh.model.mesh.getNodes()
    nodes = {int(t): tuple(flat[3 * i : 3 * i + 3]) for i, t in enumerate(tags)}
    faces = {
        "END": solid.triangles(solid.level(solid.LOADED)),
        "HELD": solid.triangles(solid.level(solid.HELD)),
    }
    apart = solid.APART if solid.MEETS else solid.GAP
    if apart > 0:
        faces["PROX"] = solid.triangles(solid.level(-apart / 2))
        faces["DIST"] = solid.triangles(solid.level(apart / 2))
    cut = solid.triangles(
        lambda b: abs(b[2]) < 1e-4 and abs(b[5]) < 1e-4 and b[0] > solid.UNDER - 0.1
    )
    groups = tetrahedra(materials)
    laid, pressing = touching(construct, groups, nodes, faces)
    used = {n for group in groups.values() for own in group.values() for n in own}
    out = ["*NODE, NSET=ALL"]
    out += [f"{n}, {x:.9g}, {y:.9g}, {z:.9g}" for n, (x, y, z) in nodes.items() if n in used]
    for name, elements in groups.items():
        out.append(f"*ELEMENT, TYPE=C3D10, ELSET={name}")
        out += [f"{e}, " + ", ".join(map(str, own)) for e, own in elements.items()]
    warm = warmth(groups, nodes, short, shrunk)
    for name in groups:
        young, poisson = MATERIALS[name]
        out += [f"*MATERIAL, NAME={name}", "*ELASTIC", f"{young}, {poisson}"]
        if warm:
            along = {"SCREWS": "1, 0, 0", "STEEL": "0, 0, 1"}.get(name, "0, 0, 0")
            out += ["*EXPANSION, TYPE=ORTHO, ZERO=0", along]
        out += [f"*SOLID SECTION, ELSET={name}, MATERIAL={name}"]
    sets = {name: {n for face in found for n in face} for name, found in faces.items()}
    sets["MIRROR"] = {n for n in used if abs(nodes[n][1]) < TINY} - sets["HELD"]
    for name, members in sets.items():
        out += [f"*NSET, NSET={name}", lines(sorted(members))]
    read = [f"*NODE PRINT, NSET={name}\nU" for name in faces if name != "HELD"] + pressing
    if cut:
        # Faces of the distal side of the cut only: a cut has two sides.
        corners = {frozenset(face[:3]) for face in cut}
        metal = groups[solid.METAL]
        out += contact.surface(
            "CUT",
            [
                (e, side)
                for e, side, own in contact.faces(metal)
                if own in corners and max(nodes[n][2] for n in metal[e]) > TINY
            ],
        )
        read += ["*SECTION PRINT, SURFACE=CUT, NAME=CUT", "SOF, SOM"]
    out += laid + loose(construct, nodes, groups)
    if warm:
        out += ["*INITIAL CONDITIONS, TYPE=TEMPERATURE", "ALL, 0"]
    for kind, cases in kinds(construct).items():
        text = out + ["*BOUNDARY", "HELD, 1, 3"]
        text += {"even": ["MIRROR, 2, 2"], "odd": ["MIRROR, 1, 1", "MIRROR, 3, 3"], "all": []}[kind]
        for number, name in enumerate(cases):
            text += ["*STEP, INC=200", "*STATIC", "*CLOAD, OP=NEW"]
            for n, force in nodal(faces["END"], nodes, traction(name)).items():
                text += [f"{n}, {k + 1}, {f:.9g}" for k, f in enumerate(force) if f]
            if warm and number == 0:
                text += ["*TEMPERATURE"] + [f"{n}, {strain:.9g}" for n, strain in warm.items()]
            text += read + (["*EL FILE", "S"] if {"fine", "far"} & construct.keys() else []) + ["*END STEP"]
        with open(f"{path}-{kind}.inp", "w") as file:
            file.write("\n".join(text) + "\n")
    gmsh.finalize()
    return nodes, len(used)
