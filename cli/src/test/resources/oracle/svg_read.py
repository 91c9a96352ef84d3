"""The area within the first path of each SVG file as svgelements (Debian package python3-svgelements) has it, in square
inches, one line for each file."""

import sys

from svgelements import SVG, Arc, Close, Line, Move, Path, Shape

CHORDS = 1000
UNITS_PER_INCH = 96.0

for name in sys.argv[1:]:
    shape = next(e for e in SVG.parse(name).elements() if isinstance(e, Shape))
    points = []
    for segment in Path(shape).segments():
        if isinstance(segment, Arc):
            points += [segment.point(i / CHORDS) for i in range(1, CHORDS + 1)]
        elif isinstance(segment, (Move, Line)):
            points.append(segment.end)
        elif not isinstance(segment, Close):
            sys.exit("neither line nor arc: %r" % segment)
    twice = sum(a.x * b.y - a.y * b.x for a, b in zip(points, points[1:] + points[:1]))
    print(repr(abs(twice) / 2 / UNITS_PER_INCH**2))
