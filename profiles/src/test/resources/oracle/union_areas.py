"""Areas of unions by Clipper, which shares no code with the overlay library of the project.

Reads from standard input a JSON list of stacks, each a list of polygons, each a list of [x, y] in millionths of an
inch; writes one area for each stack, in square inches.
"""
import json
import sys

import pyclipper

for stack in json.load(sys.stdin):
    clipper = pyclipper.Pyclipper()
    clipper.AddPaths(stack, pyclipper.PT_SUBJECT, True)
    union = clipper.Execute(pyclipper.CT_UNION, pyclipper.PFT_NONZERO, pyclipper.PFT_NONZERO)
    print(sum(pyclipper.Area(ring) for ring in union) / 1e12)
