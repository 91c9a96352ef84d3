// What a light has in front of it. Every ray has a key that grows from one side of the view to the other; seen from the
// light, an outline with its wood on the left faces it where the key falls along the walk.

// Parallel rays; angle of the direction towards the light, radians counterclockwise from straight out.
function farAway(angle) {
    const towards = direction(angle);
    return {
        key: (p) => cross(p, towards),
        depth: (p) => -dot(p, towards),
        towards: () => towards,
        ray: (key) => ({ from: { x: towards.y * key, y: -towards.x * key }, way: { x: -towards.x, y: -towards.y } }),
        grazing: () => [angle - Math.PI / 2, angle + Math.PI / 2],
        seams: () => [],
        wraps: false,
    };
}

// Rays from a point; the key is the angle from straight out, 0 to a full turn.
function nearBy(at) {
    return {
        key: (p) => {
            const angle = angleOf(minus(p, at));
            return angle < 0 ? angle + TURN : angle;
        },
        depth: (p) => distance(p, at),
        towards: (p) => {
            const far = distance(p, at);
            return { x: (at.x - p.x) / far, y: (at.y - p.y) / far };
        },
        ray: (key) => ({ from: at, way: direction(key) }),
        grazing: (arc) => {
            const to = minus(at, arc.center);
            const far = Math.hypot(to.x, to.y);
            const half = Math.acos(Math.min(1, arc.radius / far));
            return far <= arc.radius ? [] : [angleOf(to) - half, angleOf(to) + half];
        },
        seams: (segment) => seams(segment, at),
        wraps: true,
    };
}

// Where a segment crosses the ray on which the keys of a point begin again.
function seams(segment, at) {
    let places;
    if (segment.straight) {
        const rise = segment.to.y - segment.from.y;
        places = Math.abs(rise) > 0 ? [(at.y - segment.from.y) / rise] : [];
    } else {
        const sine = (at.y - segment.center.y) / segment.radius;
        const angle = Math.asin(Math.max(-1, Math.min(1, sine)));
        places = Math.abs(sine) > 1 ? [] : [segment.atAngle(angle), segment.atAngle(Math.PI - angle)];
    }
    return places.filter((t) => t > 0 && t < 1 && segment.at(t).x > at.x);
}

// The stretches of a segment that face the light, on each of which the key runs one way; edge-on ones left out.
function facing(view, segment, body) {
    const grazes = segment.straight ? [] : view.grazing(segment).map(segment.atAngle);
    const cuts = [0, 1, ...view.seams(segment), ...grazes.filter((t) => t > 0 && t < 1)].sort((a, b) => a - b);
    const sweeps = [];
    for (let i = 0; i + 1 < cuts.length; i++) {
        const [start, end] = [cuts[i], cuts[i + 1]];
        if (end - start > TOLERANCE.edgeOn) {
            const high = keyAt(view, segment, start, (start + end) / 2);
            const low = keyAt(view, segment, end, (start + end) / 2);
            if (high - low > TOLERANCE.edgeOn) {
                sweeps.push({ view, segment, body, start, end, low, high });
            }
        }
    }
    return sweeps;
}

// The key at an end; on the seam, the one of its two keys that is on the side of the stretch.
function keyAt(view, segment, t, inside) {
    const key = view.key(segment.at(t));
    if (!view.wraps) {
        return key;
    }
    const off = key - view.key(segment.at(inside));
    return off > Math.PI ? key - TURN : off < -Math.PI ? key + TURN : key;
}

// The t at which the ray of a key meets a sweep.
function meeting(sweep, key) {
    if (key >= sweep.high) {
        return sweep.start;
    }
    if (key <= sweep.low) {
        return sweep.end;
    }
    const { from, way } = sweep.view.ray(key);
    const t = sweep.segment.straight ? onLine(sweep.segment, from, way) : onArc(sweep, from, way);
    return Math.max(sweep.start, Math.min(sweep.end, t));
}

function onLine(line, from, way) {
    return cross(minus(from, line.from), way) / cross(minus(line.to, line.from), way);
}

// Of the two meetings of ray and circle, the one nearest the stretch.
function onArc(sweep, from, way) {
    const arc = sweep.segment;
    const toCenter = minus(arc.center, from);
    const along = dot(toCenter, way);
    const off = Math.abs(cross(way, toCenter));
    const half = Math.sqrt(Math.max(0, (arc.radius - off) * (arc.radius + off)));
    const outside = (t) => Math.max(0, sweep.start - t, t - sweep.end);
    const [first, second] = [along - half, along + half].map((s) =>
        arc.atAngle(angleOf(minus(plus(from, way, s), arc.center))),
    );
    return outside(first) <= outside(second) ? first : second;
}

const depthAt = (sweep, key) => sweep.view.depth(sweep.segment.at(meeting(sweep, key)));

// The stretches of keys of a sweep that something else stands before. Outlines of one union do not cross, so which of
// two is nearer is the same all along what they share.
function hidden(sweep, walls) {
    const out = [];
    for (const wall of walls) {
        const low = Math.max(sweep.low, wall.low);
        const high = Math.min(sweep.high, wall.high);
        if (high - low > TOLERANCE.edgeOn) {
            const middle = (low + high) / 2;
            if (depthAt(sweep, middle) > depthAt(wall, middle) + TOLERANCE.least) {
                out.push({ low, high, wall });
            }
        }
    }
    return out.sort((a, b) => b.high - a.high);
}

// The stretches of a sweep that the light sees, in walking order, and the wall that bounds each at its ends, if any.
function seen(sweep, walls) {
    const out = [];
    let at = sweep.high;
    let before;
    const show = (high, low, after) => {
        if (high - low > TOLERANCE.edgeOn) {
            out.push({ start: meeting(sweep, high), end: meeting(sweep, low), before, after });
        }
    };
    for (const one of hidden(sweep, walls)) {
        if (one.high < at) {
            show(at, one.high, one.wall);
        }
        if (one.low < at) {
            at = one.low;
            before = one.wall;
        }
    }
    show(at, sweep.low, undefined);
    return out;
}

// All stretches of outlines that a light has in front of it.
const wallsOf = (view, surfaces) => surfaces.flatMap((one) => facing(view, one.segment, one.body));
