"""Draws a profile on a sheet with ezdxf (Debian package python3-ezdxf), in millimetres: a frame and a title on a layer of
their own, a dimension as ezdxf draws it, bolt holes, a hatch, a text, and the profile in one of several ways.

The profile stands in a file, a stroke a line: from, to and, for an arc, its center and whether it is walked
counterclockwise, in inches."""

import math
import sys

import ezdxf
from ezdxf.math import Vec2, bulge_center  # noqa: F401
from ezdxf.render.dimension import DimensionRenderer  # noqa: F401

profile, name, way = sys.argv[1:]
INCH = 25.4
strokes = []
for line in open(profile):
    words = [float(word) for word in line.split()]
    strokes.append((Vec2(words[0:2]) * INCH, Vec2(words[2:4]) * INCH, words[4:]))

document = ezdxf.new("R2010", setup=True)
document.header["$INSUNITS"] = 4
for layer in ("FRAME", "TITLE", "DIMENSIONS", "PROFILE", "OTHER", "HOLES"):
    document.layers.new(layer)
space = document.modelspace()

width = max(p.x for stroke in strokes for p in stroke[:2])
height = max(p.y for stroke in strokes for p in stroke[:2])


def bulge(start, end, arc):
    if not arc:
        return 0
    center = Vec2(arc[0:2]) * INCH
    sweep = (end - center).angle - (start - center).angle
    if arc[2]:
        return math.tan((sweep % math.tau) / 4)
    return -math.tan((-sweep % math.tau) / 4)


def polyline(into, layer):
    into.add_lwpolyline(
        [(start.x, start.y, bulge(start, end, arc)) for start, end, arc in strokes],
        format="xyb",
        close=True,
        dxfattribs={"layer": layer},
    )


def on_arc(start, end, arc, share):
    center = Vec2(arc[0:2]) * INCH
    first = (start - center).angle
    sweep = 4 * math.atan(bulge(start, end, arc))
    return center + Vec2.from_angle(first + share * sweep, (start - center).magnitude)


def pieces(into, layer, splines):
    """Each stroke by itself, every other one drawn backwards."""
    for number, (start, end, arc) in enumerate(strokes):
        if not arc:
            a, b = (start, end) if number % 2 else (end, start)
            into.add_line(a, b, dxfattribs={"layer": layer})
        elif splines:
            steps = max(4, math.ceil(abs(4 * math.atan(bulge(start, end, arc))) / math.radians(8)))
            into.add_spline(
                [(*on_arc(start, end, arc, k / steps), 0) for k in range(steps + 1)], dxfattribs={"layer": layer}
            )
        else:
            center = Vec2(arc[0:2]) * INCH
            first, last = (start, end) if arc[2] else (end, start)
            into.add_arc(
                center,
                (start - center).magnitude,
                (first - center).angle_deg,
                (last - center).angle_deg,
                dxfattribs={"layer": layer},
            )


def rectangle(x0, y0, x1, y1, layer):
    space.add_lwpolyline([(x0, y0), (x1, y0), (x1, y1), (x0, y1)], close=True, dxfattribs={"layer": layer})


# a sheet: frame, margin, title block with its lines
rectangle(-60, -80, 360, 217, "FRAME")
rectangle(-50, -70, 350, 207, "FRAME")
rectangle(230, -70, 350, -30, "TITLE")
for y in (-60, -50, -40):
    space.add_line((230, y), (350, y), dxfattribs={"layer": "TITLE"})
space.add_text("A molding", dxfattribs={"layer": "TITLE", "height": 5}).set_pos((235, -38))

# what is measured, as ezdxf draws it: lines, arrows and a text in a block of its own
for base, p1, p2, angle in (
    ((0, height + 12), (0, height), (width, height), 0),
    ((width + 12, 0), (width, 0), (width, height), 90),
):
    space.add_linear_dim(base=base, p1=p1, p2=p2, angle=angle, dxfattribs={"layer": "DIMENSIONS"}).render()

# what is no outline
for x in (0.3, 0.6):
    space.add_circle((width * x, height / 2), 1.2, dxfattribs={"layer": "HOLES"})
space.add_circle((width / 2, height / 2), width + height, dxfattribs={"layer": "FRAME"})
hatch = space.add_hatch(color=2)
hatch.paths.add_polyline_path([(0, 0), (1, 0), (1, 1)], is_closed=True)

if way == "polyline":
    polyline(space, "PROFILE")
elif way == "strokes":
    pieces(space, "PROFILE", False)
elif way == "splines":
    pieces(space, "PROFILE", True)
elif way == "nested":
    inner = document.blocks.new("inner", base_point=(2, 3))
    polyline(inner, "0")
    outer = document.blocks.new("outer")
    outer.add_blockref("inner", (10, 10), dxfattribs={"xscale": 0.5, "yscale": 0.5, "layer": "0"})
    space.add_blockref("outer", (5, 5), dxfattribs={"xscale": 2, "yscale": 2, "layer": "PROFILE"})
elif way == "two":
    polyline(space, "PROFILE")
    space.add_lwpolyline(
        [(150, 0), (150 + width, 0), (150 + width, height / 2), (150, height)],
        close=True,
        dxfattribs={"layer": "OTHER"},
    )
document.saveas(name)
if way == "photo":
    document = ezdxf.new("R2010")
    picture = document.add_image_def(filename="wall.jpg", size_in_pixel=(640, 480))
    document.modelspace().add_image(picture, insert=(0, 0), size_in_units=(64, 48))
    document.saveas(name)
