"""A plated bone as a solid: one half of it, meshed with quadratic tetrahedra.

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
# Under a pressed screw: radius of the foot of the plate, of the ball that is its head, and how far
# above the underside of the plate that ball has its middle.
FOOT, BALL, MIDDLE = 5.0, 3.2, 3.0
SHAFT = 3.0


def use(construct):
    """Take the sizes of a construct."""
    here = globals()
    here.update(USUAL | construct.get("sizes", {}))
    here["MEETS"] = construct.get("meets", False)
    here["WHOLE"] = construct.get("whole", False)
    # Elements round a full circle, where they must be more than the size asks for.
    here["ROUND"] = construct.get("round")
    here["UNDER"] = OUTER / 2 + STAND_OFF
    here["TOP"] = UNDER + THICKNESS
    here["HELD"] = -GAP / 2 - PROXIMAL
    here["LOADED"] = GAP / 2 + DISTAL
    here["AREA"] = math.pi / 4 * (OUTER**2 - INNER**2)
    here["SECOND"] = math.pi / 64 * (OUTER**4 - INNER**4)


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


def footed(screws):
    """A plate on feet that fit the bone; only its holes without a screw are open."""
    occ = gmsh.model.occ
    length = HOLES[-1] + OVERHANG
    bar = (3, occ.addBox(UNDER, -WIDTH / 2, -length, THICKNESS, WIDTH, 2 * length))
    feet = [rod(0, UNDER + 1, z, 2 * FOOT) for z in screws]
    bone = (3, occ.addCylinder(0, 0, -length, 0, 0, 2 * length, OUTER / 2))
    body = occ.cut(occ.fuse([bar], feet)[0], [bone])[0]
    empty = [rod(0, TOP + 1, z, HOLE) for z in HOLES if z not in screws]
    return occ.cut(body, empty)[0]


def pressed(screws):
    """A plate on feet, and screws whose heads are balls in it."""
    occ = gmsh.model.occ
    middle = UNDER + MIDDLE
    ball = lambda z: (3, occ.addSphere(middle, 0, z, BALL))
    away = [rod(0, TOP + 1, z, HOLE) for z in screws]
    away += [rod(middle, 5, z, 2 * BALL) for z in screws] + [ball(z) for z in screws]
    body = occ.cut(footed(screws), away)[0]
    made = []
    for z in screws:
        upper = rod(middle, 5, z, 4 * BALL)
        head = occ.cut([ball(z)], [upper])[0]
        tip = -(OUTER / 2 + BEYOND)
        made += occ.fuse(head, [rod(tip, middle - tip, z, SHAFT)])[0]
    return body, made


def nail(diameter, start, end, bolts, thick):
    """A solid nail and its bolts along x."""
    occ = gmsh.model.occ
    body = (3, occ.addCylinder(0, 0, start, 0, 0, end - start, diameter / 2))
    edge = OUTER / 2 + BEYOND
    return [body], [rod(-edge, 2 * edge, z, thick) for z in bolts]


def build(construct):
    """Make the volumes; return which belong to which material."""
    occ = gmsh.model.occ
    metal, soft = {}, {}
    for side, screws in construct.get("plates", []):
        metal[METAL] = metal.get(METAL, []) + plate(side, screws)
    if "nail" in construct:
        body, bolts = nail(*construct["nail"])
        if construct.get("loose"):
            metal["TITANIUM"], metal["BOLTS"] = occ.cut(body, bolts, removeTool=False)[0], bolts
        else:
            metal["TITANIUM"] = occ.fuse(body, bolts)[0]
    if "feet" in construct:
        metal[METAL] = footed(construct["feet"])
    if "pressed" in construct:
        metal[METAL], metal["SCREWS"] = pressed(construct["pressed"])
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


def mesh(size, fine, far=False):
    """Mesh with elements of this size in the plate, half of it at the screws, twice in the bone.

    Around the hole at the level `fine`, if there is one, they are of a fifth of it; if wanted, at
    the far cortex over the fracture of a third.
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
    if far:
        fields.append(field.add("Box"))
        for key, value in {
            "VIn": size / 3, "VOut": 2 * size, "XMin": -OUTER, "XMax": -OUTER / 4,
            "YMin": -1, "YMax": 5, "ZMin": -6, "ZMax": 6, "Thickness": 6,
        }.items():
            field.setNumber(fields[-1], key, value)
    least = field.add("Min")
    field.setNumbers(least, "FieldsList", fields)
    field.setAsBackgroundMesh(least)
    gmsh.option.setNumber("Mesh.MeshSizeFromCurvature", ROUND or 4 * math.pi * CORE / 2 / size)
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
