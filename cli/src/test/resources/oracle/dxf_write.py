"""Writes a DXF file of a release with ezdxf (Debian package python3-ezdxf), in millimeters, and prints the number of
its trails and then places on its curves, as ezdxf's own evaluators have them, one "x y" on a line."""

import math
import sys

import ezdxf
from ezdxf.math import BSpline

name, release = sys.argv[1:]
document = ezdxf.new(release)
if release != "R12":
    document.header["$INSUNITS"] = 4
space = document.modelspace()
places = []
trails = 0

space.add_line((0, 0, 1), (30, 10, 2))
places += [(30 * i / 10, i) for i in range(11)]
trails += 1

for start, end in ((20, 110), (300, 45)):
    arc = space.add_arc((50, 40), 12.5, start, end)
    places += [(p.x, p.y) for p in arc.flattening(0.01)]
    trails += 1

behind = space.add_arc((-50, 80), 7, 10, 80, dxfattribs={"extrusion": (0, 0, -1)})
places += [(p.x, p.y) for p in behind.vertices([10, 30, 80])]
trails += 1

circle = space.add_circle((90, 90), 5)
places += [(p.x, p.y) for p in circle.vertices(range(0, 360, 15))]
trails += 1

bulged = [(0, 50, 0.3), (20, 50, -1), (20, 70, 0), (0, 75, math.tan(math.pi / 8))]
if release == "R12":
    poly = space.add_polyline2d([(x, y) for x, y, _ in bulged], close=True)
    for vertex, (_, _, bulge) in zip(poly.vertices, bulged):
        vertex.dxf.bulge = bulge
else:
    poly = space.add_lwpolyline(bulged, format="xyb", close=True)
for part in poly.virtual_entities():
    if part.dxftype() == "ARC":
        places += [(p.x, p.y) for p in part.flattening(0.01)]
    else:
        places += [part.dxf.start.vec2, part.dxf.end.vec2]
trails += 1

block = document.blocks.new("corner", base_point=(1, 1))
block.add_line((1, 1), (4, 1))
insert = space.add_blockref("corner", (100, 20), dxfattribs={"xscale": 2, "yscale": -3, "rotation": 30})
for part in insert.virtual_entities():
    places += [part.dxf.start.vec2, part.dxf.end.vec2]
trails += 1

space.add_text("not a line")

if release != "R12":
    controls = [(0, 100), (10, 120), (25, 120), (30, 95), (45, 90), (60, 110)]
    for weights in (None, [1, 2, 0.5, 1, 3, 1]):
        curve = BSpline(controls, order=4, weights=weights)
        spline = space.add_spline()
        spline.apply_construction_tool(curve)
        places += [(p.x, p.y) for p in curve.approximate(60)]
        trails += 1
    ellipse = space.add_ellipse((70, 60), major_axis=(15, 5), ratio=0.4, start_param=0.5, end_param=4)
    places += [(p.x, p.y) for p in ellipse.vertices([0.5 + 3.5 * i / 40 for i in range(41)])]
    trails += 1

document.saveas(name)
print(trails)
for x, y in places:
    print(repr(float(x)), repr(float(y)))
