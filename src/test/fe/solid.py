"""A plated bone as a solid: one half of it, meshed with quadratic tetrahedra, as decks for CalculiX.

Half is enough where the plane y = 0 is a mirror. Pull and bending in the plane of plate and bone leave
both halves alike ("even"); bending across it and torsion turn every movement over ("odd").
Units and axes as in bench files: N, mm, MPa; z from proximal to distal, x towards the plate.
"""

import math

import gmsh

USUAL = {
    "OUTER": 24.0, "INNER": 13.0, "GAP": 4.0, "WIDTH": 12.5, "THICKNESS": 4.2, "STAND_OFF": 0.5,
    "HOLE": 5.2, "CORE": 4.3, "METAL": "STEEL",
}
PROXIMAL, DISTAL = 140.0, 110.0
HOLES = [-90, -72, -54, -36, -18, 18, 36, 54, 72, 90]
OVERHANG, BEYOND = 8.0, 0.3
# Ends that may meet are meshed apart by this much, and moved together before any load.
APART = 0.002
# How steeply ends that meet push, in N/mm for each mm²: so much that it hardly gives.
HARD = 1e6
MATERIALS = {
    "BONE": (15000, 0.3),
    "STEEL": (193000, 0.3),
    "TITANIUM": (110000, 0.34),
    "STRUT": (17000, 0.3),
}

TINY = 1e-6


def use(construct):
    """Take the sizes of a construct."""
    here = globals()
    here.update(USUAL | construct.get("sizes", {}))
    here["MEETS"] = construct.get("meets", False)
    here["WHOLE"] = construct.get("whole", False)
    here["UNDER"] = OUTER / 2 + STAND_OFF
    here["TOP"] = UNDER + THICKNESS
    here["HELD"] = -GAP / 2 - PROXIMAL
    here["LOADED"] = GAP / 2 + DISTAL
    here["AREA"] = math.pi / 4 * (OUTER**2 - INNER**2)
    here["SECOND"] = math.pi / 64 * (OUTER**4 - INNER**4)


# Traction on the distal face at (x, y); positive My presses the side of the plate.
EVEN = {
    "N": lambda x, y: (0, 0, -200 / AREA),
    "My": lambda x, y: (0, 0, -2500 * x / SECOND),
}
PULLED = {"-My": lambda x, y: (0, 0, 2500 * x / SECOND)}
ODD = {
    "Mx": lambda x, y: (0, 0, 1000 * y / SECOND),
    "T": lambda x, y: (-1500 * y / (2 * SECOND), 1500 * x / (2 * SECOND), 0),
}


def tube(outer, inner, start, end):
    occ = gmsh.model.occ
    solid = occ.addCylinder(0, 0, start, 0, 0, end - start, outer / 2)
    bore = occ.addCylinder(0, 0, start, 0, 0, end - start, inner / 2)
    return occ.cut([(3, solid)], [(3, bore)])[0]


def rod(x, length, z, diameter):
    return (3, gmsh.model.occ.addCylinder(x, 0, z, length, 0, 0, diameter / 2))


def plate(side, screws):
    """A plate (1: towards x, -1: opposite, 0: towards y) and its screws, in one piece."""
    occ = gmsh.model.occ
    if side == 0:
        turned = plate(1, screws)
        occ.rotate(turned, 0, 0, 0, 0, 0, 1, math.pi / 2)
        return turned
    length = HOLES[-1] + OVERHANG
    start = UNDER if side > 0 else -TOP
    bar = (3, occ.addBox(start, -WIDTH / 2, -length, THICKNESS, WIDTH, 2 * length))
    empty = [rod(start - 1, THICKNESS + 2, z, HOLE) for z in HOLES if z not in screws]
    body = occ.cut([bar], empty)[0] if empty else [bar]
    # A screw starts inside the plate, whose hole it fills, and ends beyond the far cortex.
    head = side * (UNDER + THICKNESS / 2)
    tip = -side * (OUTER / 2 + BEYOND)
    return occ.fuse(body, [rod(head, tip - head, z, CORE) for z in screws])[0]


def nail(diameter, start, end, bolts, thick):
    """A solid nail with bolts along x, in one piece."""
    occ = gmsh.model.occ
    body = (3, occ.addCylinder(0, 0, start, 0, 0, end - start, diameter / 2))
    edge = OUTER / 2 + BEYOND
    return occ.fuse([body], [rod(-edge, 2 * edge, z, thick) for z in bolts])[0]


def build(construct):
    """Make the volumes; return which belong to which material."""
    occ = gmsh.model.occ
    metal, soft = {}, {}
    for side, screws in construct.get("plates", []):
        metal[METAL] = metal.get(METAL, []) + plate(side, screws)
    if "nail" in construct:
        metal["TITANIUM"] = nail(*construct["nail"])
    apart = APART if MEETS else GAP
    if apart > 0:
        soft["BONE"] = tube(OUTER, INNER, HELD, -apart / 2) + tube(OUTER, INNER, apart / 2, LOADED)
    else:
        soft["BONE"] = tube(OUTER, INNER, HELD, LOADED)
    if "strut" in construct:
        soft["STRUT"] = tube(*construct["strut"])
    groups = metal | soft
    for name, volumes in groups.items():
        half = occ.addBox(-50, -50 if WHOLE else 0, -300, 100, 100 if WHOLE else 50, 600)
        groups[name] = occ.intersect(volumes, [(3, half)])[0]
    tools = [volume for name in metal for volume in groups[name]]
    for name in soft:
        groups[name] = occ.cut(groups[name], tools, removeTool=False)[0]
    # The cut over the fracture, at which the forces of the first plate are read.
    low = -WIDTH / 2 if WHOLE else 0
    across = occ.addRectangle(UNDER, low, 0, THICKNESS, WIDTH / 2 - low) if METAL in metal else 0
    cut = [(2, across)] if METAL in metal else []
    parts = [volume for volumes in groups.values() for volume in volumes]
    became = occ.fragment(parts, cut)[1]
    occ.synchronize()
    names = [name for name, volumes in groups.items() for _ in volumes]
    materials = {name: set() for name in groups}
    for name, volumes in zip(names, became):
        materials[name].update(tag for dim, tag in volumes if dim == 3)
    return materials


def mesh(size, fine):
    """Mesh with elements of this size in the plate, half of it at the screws, twice in the bone.

    Around the hole at the level `fine`, if there is one, they are of a fifth of it.
    """
    field = gmsh.model.mesh.field
    box = field.add("Box")
    for key, value in {
        "VIn": size, "VOut": 2 * size, "XMin": UNDER - 0.1, "XMax": TOP + 1,
        "YMin": -1, "YMax": WIDTH, "ZMin": -200, "ZMax": 200, "Thickness": 4,
    }.items():
        field.setNumber(box, key, value)
    fields = [box]
    if WHOLE:
        fields.append(field.add("Box"))
        for key, value in {
            "VIn": size, "VOut": 2 * size, "YMin": UNDER - 0.1, "YMax": TOP + 1,
            "XMin": -WIDTH, "XMax": WIDTH, "ZMin": -200, "ZMax": 200, "Thickness": 4,
        }.items():
            field.setNumber(fields[1], key, value)
    if fine is not None:
        fields.append(field.add("Cylinder"))
        for key, value in {
            "VIn": size / 5, "VOut": 2 * size, "Radius": HOLE / 2 + 1.2, "XCenter": UNDER,
            "ZCenter": fine, "XAxis": 2 * THICKNESS, "ZAxis": 0,
        }.items():
            field.setNumber(fields[1], key, value)
    least = field.add("Min")
    field.setNumbers(least, "FieldsList", fields)
    field.setAsBackgroundMesh(least)
    gmsh.option.setNumber("Mesh.MeshSizeFromCurvature", 4 * math.pi * CORE / 2 / size)
    gmsh.option.setNumber("Mesh.MeshSizeExtendFromBoundary", 1)
    gmsh.option.setNumber("Mesh.ElementOrder", 2)
    gmsh.option.setNumber("Mesh.HighOrderOptimize", 1)
    gmsh.option.setNumber("General.Verbosity", 2)
    gmsh.model.mesh.generate(3)


def triangles(test):
    """Return the six-node triangles of the plane faces all of whose bounds pass a test."""
    found = []
    for _, tag in gmsh.model.getEntities(2):
        if test(gmsh.model.getBoundingBox(2, tag)):
            for kind, _, nodes in zip(*gmsh.model.mesh.getElements(2, tag)):
                assert kind == 9
                found += [list(map(int, nodes[i : i + 6])) for i in range(0, len(nodes), 6)]
    return found


def level(z, inside=0.0):
    """A test: the face lies at this level, on the bone."""
    return lambda b: (
        abs(b[2] - z) < 1e-3 and abs(b[5] - z) < 1e-3 and b[3] > OUTER / 2 - 0.1 and b[3] < UNDER
    )


GAUSS = [
    (0.223381589678011, (0.108103018168070, 0.445948490915965, 0.445948490915965)),
    (0.109951743655322, (0.816847572980459, 0.091576213509771, 0.091576213509771)),
]


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


def kinds(construct):
    """Return the decks of a construct with their loads."""
    if construct.get("whole"):
        return {"all": EVEN | ODD}
    if construct.get("meets"):
        return {"even": EVEN | PULLED}
    return {"even": EVEN, "odd": ODD}


def meeting(volumes, faces):
    """Let the two ends push, without friction, once they meet; they start in touch."""
    out = []
    for end in ("PROX", "DIST"):
        corners = {frozenset(face[:3]) for face in faces[end]}
        out.append(f"*SURFACE, NAME=S{end}, TYPE=ELEMENT")
        for volume in sorted(volumes):
            for _, ids, flat in zip(*gmsh.model.mesh.getElements(3, volume)):
                for i, element in enumerate(ids):
                    own = list(map(int, flat[10 * i : 10 * i + 4]))
                    for side, ends in enumerate([(0, 1, 2), (0, 3, 1), (1, 3, 2), (2, 3, 0)]):
                        if frozenset(own[e] for e in ends) in corners:
                            out.append(f"{element}, S{side + 1}")
    out += [f"*CONTACT PAIR, INTERACTION=PUSH, TYPE=SURFACE TO SURFACE, ADJUST={2 * APART}"]
    out += ["SPROX, SDIST", "*SURFACE INTERACTION, NAME=PUSH"]
    out += ["*SURFACE BEHAVIOR, PRESSURE-OVERCLOSURE=LINEAR", f"{HARD:g}, 0.01"]
    return out


def deck(path, construct, size):
    """Write the decks, such as PATH-even.inp; return all nodes and how many are used."""
    use(construct)
    gmsh.initialize()
    gmsh.option.setNumber("General.Terminal", 0)
    materials = build(construct)
    mesh(size, construct.get("fine"))
    tags, flat, _ = gmsh.model.mesh.getNodes()
    nodes = {int(t): tuple(flat[3 * i : 3 * i + 3]) for i, t in enumerate(tags)}
    out, owner, used = ["*NODE, NSET=ALL"], {}, set()
    elements = []
    for name, volumes in materials.items():
        elements.append(f"*ELEMENT, TYPE=C3D10, ELSET={name}")
        for volume in sorted(volumes):
            for kind, ids, flat in zip(*gmsh.model.mesh.getElements(3, volume)):
                assert kind == 11
                for i, element in enumerate(ids):
                    own = list(map(int, flat[10 * i : 10 * i + 10]))
                    own[8], own[9] = own[9], own[8]
                    used.update(own)
                    elements.append(f"{element}, " + ", ".join(map(str, own)))
                    if name == METAL:
                        owner[int(element)] = own
    out += [f"{n}, {x:.9g}, {y:.9g}, {z:.9g}" for n, (x, y, z) in nodes.items() if n in used]
    out += elements
    for name in materials:
        young, poisson = MATERIALS[name]
        out += [f"*MATERIAL, NAME={name}", "*ELASTIC", f"{young}, {poisson}"]
        out += [f"*SOLID SECTION, ELSET={name}, MATERIAL={name}"]
    faces = {"END": triangles(level(LOADED)), "HELD": triangles(level(HELD))}
    apart = APART if MEETS else GAP
    if apart > 0:
        faces["PROX"], faces["DIST"] = triangles(level(-apart / 2)), triangles(level(apart / 2))
    sets = {name: {n for face in found for n in face} for name, found in faces.items()}
    sets["MIRROR"] = {n for n in used if abs(nodes[n][1]) < TINY} - sets["HELD"]
    for name, members in sets.items():
        out += [f"*NSET, NSET={name}", lines(sorted(members))]
    # Faces of the distal side of the cut only: a cut has two sides.
    cut = triangles(lambda b: abs(b[2]) < 1e-4 and abs(b[5]) < 1e-4 and b[0] > UNDER - 0.1)
    corners = {frozenset(face[:3]) for face in cut}
    read = [f"*NODE PRINT, NSET={name}\nU" for name in faces if name != "HELD"]
    if cut:
        out += ["*SURFACE, NAME=CUT"]
        read += ["*SECTION PRINT, SURFACE=CUT, NAME=CUT", "SOF, SOM"]
    for element, own in owner.items():
        for side, ends in enumerate([(0, 1, 2), (0, 3, 1), (1, 3, 2), (2, 3, 0)]):
            if frozenset(own[e] for e in ends) in corners and max(nodes[n][2] for n in own) > TINY:
                out.append(f"{element}, S{side + 1}")
    if MEETS:
        out += meeting(materials["BONE"], faces)
    for kind, cases in kinds(construct).items():
        text = out + ["*BOUNDARY", "HELD, 1, 3"]
        text += {"even": ["MIRROR, 2, 2"], "odd": ["MIRROR, 1, 1", "MIRROR, 3, 3"], "all": []}[kind]
        for traction in cases.values():
            text += ["*STEP", "*STATIC", "*CLOAD, OP=NEW"]
            for n, force in nodal(faces["END"], nodes, traction).items():
                text += [f"{n}, {k + 1}, {f:.9g}" for k, f in enumerate(force) if f]
            text += read + ["*EL FILE", "S", "*END STEP"]
        with open(f"{path}-{kind}.inp", "w") as file:
            file.write("\n".join(text) + "\n")
    gmsh.finalize()
    return nodes, len(used)
