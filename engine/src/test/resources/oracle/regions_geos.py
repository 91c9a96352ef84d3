"""Figures of stacks by GEOS, one line for each stack read from standard input.

A stack is a line `stack ID`, then for each body `body 0|1` (1: part of the stack) and its segments, walked round with the
wood on the left, `L x y x y` or `A x y x y cx cy 0|1` (center, 1: clockwise), then `end`.

A line of the answer: ID, area of the union of the bodies of the stack, perimeter and number of the connected parts of the
union of all bodies, areas of the holes that are wide enough, and of the overlaps of pairs `i-j:area:depth`. A figure on
which the touching distance decides by a hair is `?`.
"""
import math
import sys

import numpy
from shapely.geometry import MultiPolygon, Point, Polygon
from shapely.ops import unary_union
from shapely.validation import make_valid

TOUCHING = 1 / 256
SAGITTA = 5e-5
HAIR = 1e-6
# how near to touching a gap may be before its chords decide: a slit of 0.004 is told apart
NEAR = 0.02


def walked(segments):
    points = []
    for s in segments:
        if s[0] == "L":
            points.append((s[1], s[2]))
            continue
        _, x1, y1, x2, y2, cx, cy, clockwise = s
        r = math.hypot(x1 - cx, y1 - cy)
        start = math.atan2(y1 - cy, x1 - cx)
        turn = math.atan2(y2 - cy, x2 - cx) - start
        if clockwise:
            turn = -((-turn) % (2 * math.pi))
        else:
            turn = turn % (2 * math.pi)
        steps = max(1, math.ceil(abs(turn) / (2 * math.acos(max(-1.0, 1 - SAGITTA / r)))))
        points.append((x1, y1))
        for k in range(1, steps):
            a = start + turn * k / steps
            points.append((cx + r * math.cos(a), cy + r * math.sin(a)))
    return points


def polygons(geometry):
    if geometry.is_empty:
        return []
    if isinstance(geometry, Polygon):
        return [geometry]
    return [p for g in getattr(geometry, "geoms", []) for p in polygons(g)]


def mitred(geometry, by):
    return geometry.buffer(by, join_style=2, mitre_limit=20)


def shrunk(geometry, by):
    """As `mitred` with less than nothing, which drops holes: rim and holes each by themselves."""
    parts = []
    for p in polygons(geometry):
        rim = mitred(Polygon(p.exterior), -by)
        for ring in p.interiors:
            rim = rim.difference(mitred(Polygon(ring), by))
        parts.extend(polygons(rim))
    return MultiPolygon(parts)


def width(polygon):
    # outlines that agree but for the last digit share a sliver, which is no part of how far they lap
    hull = polygon.buffer(-HAIR).convex_hull
    if not isinstance(hull, Polygon):
        return 0.0
    corners = numpy.asarray(hull.exterior.coords)
    ways = corners[1:] - corners[:-1]
    lengths = numpy.hypot(ways[:, 0], ways[:, 1])
    ways = ways[lengths > 1e-12] / lengths[lengths > 1e-12][:, None]
    starts = corners[:-1][lengths > 1e-12]
    off = ways[:, 0][:, None] * (corners[None, :, 1] - starts[:, 1][:, None])
    off -= ways[:, 1][:, None] * (corners[None, :, 0] - starts[:, 0][:, None])
    return float(numpy.abs(off).max(axis=1).min()) + 2 * HAIR


def holes(closed):
    return [Polygon(ring) for p in polygons(closed) for ring in p.interiors]


def hole_areas(bodies, union, reach):
    """Areas of the bounded air, what comes nearer than 2 `reach` closing it; None where a thin one decides."""
    air = []
    for hole in holes(unary_union([b.buffer(reach, resolution=8) for b in bodies])):
        open_air = hole.buffer(1.1 * reach, resolution=8).difference(union)
        whole = max(polygons(open_air), key=lambda p: p.area, default=None)
        if whole is not None:
            air.append((whole.area, hole.area))
    return air


def air(bodies, union):
    upper = hole_areas(bodies, union, (1 + NEAR) * TOUCHING / 2)
    lower = hole_areas(bodies, union, (1 - NEAR) * TOUCHING / 2)
    if len(lower) != len(upper):
        return "?"
    lower.sort()
    if any(area < 0.004 or inner < 0.001 for area, inner in lower):
        return "?"
    return ",".join("%.9f" % area for area, _ in lower)


def corners_near(one, other):
    return any(HAIR < other.distance(Point(at)) < TOUCHING for at in one.exterior.coords)


def by_a_corner(one, other):
    """Whether two meet at a point, and a corner there is near enough to touch and does not: then it is a joint or none."""
    if not isinstance(one, Polygon) or not isinstance(other, Polygon):
        return False
    apart = one.distance(other)
    if apart >= TOUCHING:
        return False
    shared = mitred(one, apart / 2 + HAIR).intersection(mitred(other, apart / 2 + HAIR)).bounds
    if not shared or max(shared[2] - shared[0], shared[3] - shared[1]) > 4 * TOUCHING:
        return False
    return corners_near(one, other) or corners_near(other, one)


def figures(bodies, own):
    exact = unary_union(bodies)
    tight = shrunk(unary_union([mitred(b, HAIR) for b in bodies]), HAIR)
    closed = shrunk(unary_union([mitred(b, TOUCHING / 2) for b in bodies]), TOUCHING / 2)
    # a contact of no length is no joint, a lap at a corner is one: both hang by a neck that one of these breaks
    necks = ((tight, 10 * HAIR), (tight, TOUCHING / 2), (closed, TOUCHING / 4), (closed, TOUCHING))
    counts = [len(polygons(g.buffer(-by, resolution=4))) for g, by in necks]
    laps, thin = [], False
    for i in range(len(bodies)):
        for j in range(i + 1, len(bodies)):
            thin |= by_a_corner(bodies[i], bodies[j])
            if bodies[i].intersects(bodies[j]) and (own[i] or own[j]):
                for part in polygons(bodies[i].intersection(bodies[j])):
                    if part.area > 1e-7:
                        depth = width(part)
                        thin |= 1e-6 < depth < TOUCHING
                        laps.append("%d-%d:%.9f:%.9f" % (i, j, part.area, depth))
    # where a lap or a corner is taken as touching, what it joins and how long its edges are is a matter of which gives way
    parts = str(counts[0]) if min(counts) == max(counts) and not thin else "?"
    near = abs(closed.length - tight.length) > 0.02
    perimeter = "?" if near or parts == "?" else "%.9f" % tight.length
    area = unary_union([b for b, mine in zip(bodies, own) if mine]).area
    return "%.9f %s %s %s %s" % (area, perimeter, parts, air(bodies, exact) or "-", ";".join(laps) or "-")


def main():
    bodies, own, segments = [], [], []

    def close():
        if segments:
            polygon = Polygon(walked(segments))
            bodies.append(polygon if polygon.is_valid else make_valid(polygon))
            segments.clear()

    for line in sys.stdin:
        words = line.split()
        if words[0] == "stack":
            name = words[1]
        elif words[0] == "body":
            close()
            own.append(words[1] == "1")
        elif words[0] == "end":
            close()
            print(name, figures(bodies, own), flush=True)
            bodies.clear()
            own.clear()
        else:
            segments.append([words[0]] + [float(w) for w in words[1:]])


main()
