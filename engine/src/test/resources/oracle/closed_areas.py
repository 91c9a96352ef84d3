"""Areas of outlines closed by a disc, by Clipper's own offsetting: out by the radius, then in by it.

Reads from standard input a JSON list of [polygon, radius], a polygon a list of [x, y], all in millionths of an inch;
writes for each the area of the closed outline less its own, in square inches.
"""
import json
import sys

import pyclipper

ARC = 50  # millionths of an inch that a chord of a round join may be off


def offset(paths, by):
    offsetter = pyclipper.PyclipperOffset(2.0, ARC)
    offsetter.AddPaths(paths, pyclipper.JT_ROUND, pyclipper.ET_CLOSEDPOLYGON)
    return offsetter.Execute(by)


for polygon, radius in json.load(sys.stdin):
    closed = offset(offset([polygon], radius), -radius)
    print(sum(pyclipper.Area(ring) for ring in closed) / 1e12 - abs(pyclipper.Area(polygon)) / 1e12)
