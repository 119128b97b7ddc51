"""Parts that touch without being one: nodes on the faces they share are doubled, contact is laid between.

The parts are meshed together, so that faces which touch have the same nodes; the nodes of the first
part are then replaced by copies in the same place.
"""

# How steeply faces push, in N/mm for each mm²: so much that it hardly gives.
HARD = 1e6
# How steeply faces that rub resist before they slip, in N/mm for each mm².
STICK = 1e5
FACES = [(0, 1, 2), (0, 3, 1), (1, 3, 2), (2, 3, 0)]


def faces(elements):
    """Yield element, number of the side and its three corners for every side of tetrahedra."""
    for element, own in elements.items():
        for side, ends in enumerate(FACES, 1):
            yield element, side, frozenset(own[e] for e in ends)


def surface(name, members):
    return [f"*SURFACE, NAME={name}, TYPE=ELEMENT"] + [f"{e}, S{side}" for e, side in members]


def law(name, friction):
    out = [f"*SURFACE INTERACTION, NAME={name}"]
    out += ["*SURFACE BEHAVIOR, PRESSURE-OVERCLOSURE=LINEAR", f"{HARD:g}, 0.01"]
    return out + (["*FRICTION", f"{friction:g}, {STICK:g}"] if friction else [])


def pair(first, second, interaction, adjust):
    out = [f"*CONTACT PAIR, INTERACTION={interaction}, TYPE=SURFACE TO SURFACE"]
    out[0] += f", ADJUST={adjust}" if adjust else ""
    return out + [f"{first}, {second}"]


def split(first, second, nodes, levels):
    """Double the nodes that two parts share, in place; return by level the faces of either that touch.

    first, second: nodes by element. nodes: where they are; the copies are added.
    """
    bounds = {corners: (e, side) for e, side, corners in faces(second)}
    touching = [
        (e, side, corners, bounds[corners])
        for e, side, corners in faces(first)
        if corners in bounds
    ]
    shared = {n for own in first.values() for n in own} & {n for own in second.values() for n in own}
    top = max(nodes)
    copies = {n: top + i for i, n in enumerate(sorted(shared), 1)}
    nodes.update({copy: nodes[n] for n, copy in copies.items()})
    for own in first.values():
        own[:] = [copies.get(n, n) for n in own]
    by_level = {}
    for e, side, corners, other in touching:
        z = sum(nodes[n][2] for n in corners) / 3
        level = min(levels, key=lambda known: abs(known - z))
        ones, others = by_level.setdefault(level, ([], []))
        ones.append((e, side))
        others.append(other)
    return by_level


def ends_meet(elements, faces_of, apart):
    """Let two bone ends push, without friction, once they meet; they start in touch."""
    out = []
    for end in ("PROX", "DIST"):
        corners = {frozenset(face[:3]) for face in faces_of[end]}
        members = [(e, side) for e, side, own in faces(elements) if own in corners]
        out += surface("S" + end, members)
    return out + pair("SPROX", "SDIST", "PUSH", 2 * apart) + law("PUSH", 0)
