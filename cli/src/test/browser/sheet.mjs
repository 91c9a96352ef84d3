// Draws a profile on a sheet with @tarikjabiri/dxf, in inches: a frame, dimensions, leaders and texts on layers, and the
// profile as a polyline with bulges, as lines and arcs, or in a block that is put in turned by a quarter.
//
// The profile stands in a file, a stroke a line: from, to and, for an arc, its center and whether it is walked
// counterclockwise.
import { readFileSync, writeFileSync } from 'node:fs';
import dxf from '@tarikjabiri/dxf';

const { DxfWriter, point2d, point3d, Units, LWPolylineFlags } = dxf;
const [, , profile, name, way] = process.argv;
const strokes = readFileSync(profile, 'utf8')
  .trim()
  .split('\n')
  .map((line) => line.split(' ').map(Number));
const TURN = 2 * Math.PI;
const positive = (angle) => ((angle % TURN) + TURN) % TURN;
const at = (x, y, center) => Math.atan2(y - center[1], x - center[0]);

function sweep([x0, y0, x1, y1, ...arc]) {
  if (arc.length === 0) {
    return 0;
  }
  const turned = at(x1, y1, arc) - at(x0, y0, arc);
  return arc[2] ? positive(turned) : -positive(-turned);
}

const width = Math.max(...strokes.map((stroke) => stroke[0]));
const height = Math.max(...strokes.map((stroke) => stroke[1]));
const drawing = new DxfWriter();
drawing.setUnits(Units.Inches);
for (const layer of ['FRAME', 'DIMENSIONS', 'PROFILE']) {
  drawing.addLayer(layer, 7, 'Continuous');
}

function draw(into) {
  if (way === 'strokes') {
    for (const [x0, y0, x1, y1, ...arc] of strokes) {
      if (arc.length === 0) {
        into.addLine(point3d(x0, y0), point3d(x1, y1), { layerName: 'PROFILE' });
      } else {
        const from = (at(x0, y0, arc) * 180) / Math.PI;
        const to = (at(x1, y1, arc) * 180) / Math.PI;
        const radius = Math.hypot(x0 - arc[0], y0 - arc[1]);
        into.addArc(point3d(arc[0], arc[1]), radius, arc[2] ? from : to, arc[2] ? to : from, { layerName: 'PROFILE' });
      }
    }
    return;
  }
  const vertices = strokes.map((stroke) => ({
    point: point2d(stroke[0], stroke[1]),
    bulge: Math.tan(sweep(stroke) / 4),
  }));
  into.addLWPolyline(vertices, { flags: LWPolylineFlags.Closed, layerName: way === 'block' ? '0' : 'PROFILE' });
}

if (way === 'block') {
  const block = drawing.addBlock('section');
  draw(block);
  drawing.addInsert('section', point3d(height, 0), { rotationAngle: 90, layerName: 'PROFILE' });
} else {
  draw(drawing);
}

const frame = [
  [-2, -3],
  [14, -3],
  [14, 8],
  [-2, 8],
];
drawing.addLWPolyline(
  frame.map(([x, y]) => ({ point: point2d(x, y) })),
  { flags: LWPolylineFlags.Closed, layerName: 'FRAME' },
);
drawing.addText(point3d(9, -2.5), 0.25, 'A molding', { layerName: 'FRAME' });
const lines = [
  [0, height + 0.1, 0, height + 0.6],
  [width, height + 0.1, width, height + 0.6],
  [0, height + 0.5, width, height + 0.5],
  [width + 0.1, 0, width + 0.6, 0],
  [width + 0.1, height, width + 0.6, height],
  [width + 0.5, 0, width + 0.5, height],
  [width / 2, height / 2, width + 2, height + 1],
];
for (const [x0, y0, x1, y1] of lines) {
  drawing.addLine(point3d(x0, y0), point3d(x1, y1), { layerName: 'DIMENSIONS' });
}
drawing.addCircle(point3d(width / 2, height / 2), 0.05, { layerName: 'DIMENSIONS' });
writeFileSync(name, drawing.stringify());
