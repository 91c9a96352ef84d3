"""What ezdxf (Debian package python3-ezdxf) finds in DXF files, on one line each: 'file', with errors and repairs of its
audit; 'layers', those that entities lie on; 'block', a piece where it stands: name, layer, place of its base point, its
exact box and the area within its closed outlines; 'words', the texts of a layer."""

import math
import sys

import ezdxf


def ends(entity):
    """Ends and, of an arc, its points farthest up, down, left and right."""
    if entity.dxftype() == "LINE":
        return [(entity.dxf.start.x, entity.dxf.start.y), (entity.dxf.end.x, entity.dxf.end.y)]
    center, radius = entity.dxf.center, entity.dxf.radius
    start, end = entity.dxf.start_angle, entity.dxf.end_angle
    sweep = (end - start) % 360 or 360
    angles = [start, end] + [a for a in (0, 90, 180, 270) if (a - start) % 360 <= sweep]
    return [
        (center.x + radius * math.cos(math.radians(a)), center.y + radius * math.sin(math.radians(a))) for a in angles
    ]


def area(polyline):
    """The area within the chords, and the segments between chords and arcs."""
    points = [(v.dxf.location.x, v.dxf.location.y, v.dxf.bulge) for v in polyline.vertices]
    total = 0.0
    for (x, y, bulge), (nx, ny, _) in zip(points, points[1:] + points[:1]):
        total += (x * ny - nx * y) / 2
        if bulge:
            sweep = 4 * math.atan(bulge)
            radius = math.hypot(nx - x, ny - y) / 2 / math.sin(abs(sweep) / 2)
            total += radius * radius / 2 * (sweep - math.sin(sweep))
    return abs(total)


def repairs(audit):
    # before 1.0 it says of a polyline in a block, also in a file of its own, that its end has no owner
    known = "Deleted SEQEND" if ezdxf.version[0] < 1 else "\0"
    return [repair for repair in audit.fixes if not repair.message.startswith(known)]


for name in sys.argv[1:]:
    document = ezdxf.readfile(name)
    audit = document.audit()
    print("file\t%d\t%d" % (len(audit.errors), len(repairs(audit))))
    space = document.modelspace()
    print("layers\t" + ",".join(sorted({entity.dxf.layer for entity in space})))
    for insert in space.query("INSERT"):
        parts = [part for part in insert.virtual_entities()]
        lines = []
        closed = 0.0
        for part in parts:
            if part.dxftype() == "POLYLINE":
                closed += area(part)
                lines += list(part.virtual_entities())
            elif part.dxf.layer != "HATCH":
                lines.append(part)
        points = [point for line in lines for point in ends(line)]
        xs, ys = [x for x, _ in points], [y for _, y in points]
        at = insert.dxf.insert
        values = [at.x, at.y, min(xs), min(ys), max(xs), max(ys), closed]
        print("block\t%s\t%s\t%s" % (insert.dxf.name, insert.dxf.layer, "\t".join(repr(v) for v in values)))
    for text in space.query("TEXT"):
        print("words\t%s\t%s" % (text.dxf.layer, text.plain_text()))
