"""What ezdxf (Debian package python3-ezdxf) finds in DXF files: one line for each file, with errors and repairs of its
audit, the number of the unit, how many entities of each kind, and the area within its first closed polyline as it
turns bulges into arcs; then its texts."""

import sys

import ezdxf


def area(polyline):
    twice, at, first = 0.0, None, None
    for part in polyline.virtual_entities():
        if part.dxftype() == "ARC":
            points = [(p.x, p.y) for p in part.flattening(1e-6)]
        else:
            points = [(part.dxf.start.x, part.dxf.start.y), (part.dxf.end.x, part.dxf.end.y)]
        # its arcs all run counterclockwise
        if at is not None and distance(points[-1], at) < distance(points[0], at):
            points.reverse()
        for a, b in zip(points, points[1:]):
            twice += a[0] * b[1] - a[1] * b[0]
        at = points[-1]
        first = first or points[0]
    twice += at[0] * first[1] - at[1] * first[0]
    return abs(twice) / 2


def distance(a, b):
    return abs(a[0] - b[0]) + abs(a[1] - b[1])


for name in sys.argv[1:]:
    document = ezdxf.readfile(name)
    audit = document.audit()
    space = document.modelspace()
    kinds = {}
    for entity in space:
        kinds[entity.dxftype()] = kinds.get(entity.dxftype(), 0) + 1
    closed = [p for p in space.query("POLYLINE") if p.is_closed]
    print(
        len(audit.errors),
        len(audit.fixes),
        document.header.get("$INSUNITS", 0),
        ",".join("%s:%d" % kind for kind in sorted(kinds.items())),
        repr(area(closed[0])) if closed else "-",
    )
    for text in space.query("TEXT"):
        print("text " + text.plain_text())
