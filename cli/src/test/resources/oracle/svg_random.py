"""Writes an SVG file of random paths and shapes in nested, transformed groups, and prints the number of its trails and
then places on its curves as svgelements (Debian package python3-svgelements) has them, in 1/96 in, y down."""

import random
import sys

from svgelements import SVG, Close, Move, Path, Shape

name, seed = sys.argv[1], int(sys.argv[2])
rng = random.Random(seed)


def number(low=-3.0, high=3.0):
    return rng.choice(["%.3f", "%.2e", "%g"]) % rng.uniform(low, high)


def pair():
    return number() + rng.choice([",", " ", " , "]) + number()


def step(before):
    # svgelements gives T a cubic's handle and S a quadratic's, against SVG 1.1, 8.3.6 and 8.3.7
    smooth = ("" if before[:1] in "CcSs" else "Tt") + ("" if before[:1] in "QqTt" else "Ss")
    verb = rng.choice("LlHhVvCcQqAaZzMm" + 2 * smooth)
    upper = verb.upper()
    if upper == "Z":
        return verb
    if upper in "HV":
        return verb + " ".join(number() for _ in range(rng.randint(1, 2)))
    if upper == "A":
        return "%s%s %s %s %d%s%d %s" % (
            verb, number(0.1, 3), number(0.1, 3), number(-180, 180),
            rng.randint(0, 1), rng.choice([" ", ","]), rng.randint(0, 1), pair())
    count = {"M": 1, "L": 1, "T": 1, "S": 2, "Q": 2, "C": 3}[upper]
    return verb + " ".join(pair() for _ in range(count * rng.randint(1, 2)))


def transform(skewed):
    """Arcs only turned, mirrored and scaled evenly: svgelements keeps no arc of an ellipse that is skewed."""
    size = number(0.3, 1.5)
    ways = [
        "translate(%s)" % pair(),
        "rotate(%s)" % number(-180, 180),
        "rotate(%s %s %s)" % (number(-180, 180), number(), number()),
        "scale(%s)" % size,
        "scale(%s,-%s)" % (size, size),
    ]
    if skewed:
        ways += [
            "scale(%s,%s)" % (number(0.3, 1.5), number(-1.5, -0.3)),
            "skewX(%s)" % number(-40, 40),
            "skewY(%s)" % number(-40, 40),
            "matrix(1 %s %s 1 %s %s)" % (number(-0.5, 0.5), number(-0.5, 0.5), number(), number()),
        ]
    return rng.choice(ways)


def path():
    steps = ["L0 0"]
    for _ in range(rng.randint(2, 6)):
        steps.append(step(steps[-1]))
    return '<path d="M%s %s"' % (pair(), rng.choice(["", " "]).join(steps))


def shape():
    return rng.choice([
        path(),
        path(),
        path(),
        '<rect x="%s" y="%s" width="%s" height="%s"' % (number(), number(), number(1, 2), number(1, 2)),
        '<rect x="%s" y="%s" width="2" height="1.5" rx="%s"' % (number(), number(), number(0.1, 0.7)),
        '<circle cx="%s" cy="%s" r="%s"' % (number(), number(), number(0.5, 2)),
        '<ellipse cx="%s" cy="%s" rx="%s" ry="%s"' % (number(), number(), number(0.5, 2), number(0.5, 2)),
        '<polygon points="%s"' % " ".join(pair() for _ in range(4)),
        '<polyline points="%s"' % " ".join(pair() for _ in range(3)),
        '<line x1="%s" y1="%s" x2="%s" y2="%s"' % (number(), number(), number(), number()),
    ])


def drawn():
    one = shape()
    rounded = any(c in one for c in ("circle", "ellipse", "rx")) or "path" in one and ("A" in one or "a" in one[6:])
    ways = [transform(not rounded) for _ in range(5)]
    return '<g transform="%s"><g transform="%s, %s">%s transform="%s %s"/></g></g>\n' % tuple(ways[:3] + [one] + ways[3:])


body = "".join(drawn() for _ in range(60))
with open(name, "w") as out:
    out.write('<svg xmlns="http://www.w3.org/2000/svg" width="20in" height="10in" viewBox="-10 -5 20 10">\n%s</svg>\n' % body)

trails, places = 0, []
for element in SVG.parse(name).elements():
    if not isinstance(element, Shape):
        continue
    begun = False
    for segment in Path(element).segments():
        if isinstance(segment, Move):
            begun = False
            continue
        if not begun and not isinstance(segment, Close):
            trails += 1
            begun = True
        if isinstance(segment, Close):
            begun = False
        for i in range(9):
            point = segment.point(i / 8)
            if point is not None:
                places.append((point.x, point.y))
print(trails)
for x, y in places:
    print(repr(x), repr(y))
