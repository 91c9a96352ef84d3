// The front of a length of the run, both ends returned round square corners, so that they show the section's own
// outline; each strip as light as the light and the open room before it make it. What shows, in which strips, and how
// much of the room each sees, the program has found: here the light is laid on.

// The cosine between a face and the light, the part of it along the run included.
function direct(light, place, outward) {
    const altitude = radians(light.altitude);
    const towards = light.at
        ? nearBy(light.at).towards(place)
        : { x: Math.cos(altitude) * Math.cos(radians(light.azimuth)), y: Math.sin(altitude) };
    return Math.max(0, dot(outward, towards));
}

// Level strips from low to high: { member, kind, low, high, tone }, tone 0 for black to 1.
function stripsOf(stage, bands, light, roomShare) {
    const strips = [];
    for (const band of bands) {
        for (const face of stage.front.filter(({ segment }) => segment === band.segment)) {
            face.open.forEach((open, i) => {
                const [first, last] = [i, i + 1].map((k) => face.start + ((face.end - face.start) * k) / face.open.length);
                const start = Math.max(band.start, first);
                const end = Math.min(band.end, last);
                if ((end - start) * band.segment.length > TOLERANCE.least) {
                    strips.push(stripOf(band, start, end, light, roomShare, open));
                }
            });
        }
    }
    return strips.sort((a, b) => a.low.y - b.low.y);
}

function stripOf({ member, kind, segment }, start, end, light, roomShare, open) {
    const middle = (start + end) / 2;
    const way = segment.direction(middle);
    const lit = kind === 'lit' ? direct(light, segment.at(middle), { x: way.y, y: -way.x }) : 0;
    const [low, high] = [segment.at(start), segment.at(end)].sort((p, q) => p.y - q.y);
    return { member, kind, low, high, tone: roomShare * open + (1 - roomShare) * lit };
}

const alike = (a, b) => a && b && a.member === b.member && a.kind === b.kind && near(a.high, b.low, TOLERANCE.touching);

// Draws the front into an svg whose user unit is an inch, y down; box is that of the whole stack.
function drawFront(svg, stage, bands, light, box, data) {
    const height = box.top - box.bottom;
    const run = Math.max(4, 0.8 * height);
    // inches to a pixel, as if the letters took no room
    const pixel = (run + 2 * box.face) / Math.max(240, svg.clientWidth - 60);
    const size = 15 * pixel;
    const [left, right] = [-box.face - 3.2 * size, run + box.face + 0.4 * size];
    const margin = 0.4 * size;
    hatchPatterns(svg, 8 * pixel);
    svg.setAttribute('viewBox', [left, -box.top - margin, right - left, height + 2 * margin].map(number).join(' '));
    svg.querySelectorAll('g').forEach((old) => old.remove());
    const strips = stripsOf(stage, bands, light, data.roomShare);
    const faces = drawn('g', { class: 'faces', transform: 'scale(1 -1)' }, svg);
    strips.forEach((strip, i) => {
        // a strip runs on under the next of its kind, so that no seam shows between them
        const lap = alike(strip, strips[i + 1]) ? strips[i + 1].high : strip.high;
        const face = drawn('path', { d: ringOf([strip.low, lap], run), fill: tint(strip.tone) }, faces);
        face.dataset.piece = stage.members[strip.member].body;
    });
    const shadows = drawn('g', { class: 'shadows', transform: 'scale(1 -1)' }, svg);
    darkRuns(strips).forEach((dark) => {
        const ring = ringOf([dark[0].low, ...dark.map((strip) => strip.high)], run);
        const face = drawn('path', { class: dark[0].kind, d: ring, fill: `url(#${svg.id}-${dark[0].kind})` }, shadows);
        face.dataset.piece = stage.members[dark[0].member].body;
    });
    drawEdges(drawn('g', { class: 'edges', transform: 'scale(1 -1)' }, svg), strips, run);
    drawLetters(drawn('g', { class: 'letters' }, svg), strips, stage, data, -box.face - 0.4 * size, size);
}

// The patterns of what is dark, their lines so far apart; the darker faces could be told apart by nothing else.
function hatchPatterns(svg, apart) {
    svg.querySelector('defs')?.remove();
    const defs = drawn('defs', {}, svg);
    for (const [kind, angle, dash] of [['cast', 45, 'none'], ['shade', 0, '0.8 3.2']]) {
        const square = { width: 4, height: 4, viewBox: '0 0 4 4', patternUnits: 'userSpaceOnUse' };
        const patternTransform = `scale(${number(apart / 4)}) rotate(${angle})`;
        const pattern = drawn('pattern', { id: `${svg.id}-${kind}`, ...square, patternTransform }, defs);
        drawn('path', { d: 'M0 2 H4', stroke: '#1b1b19', 'stroke-width': 0.6, 'stroke-dasharray': dash }, pattern);
    }
}

// The outline of some places one above the other, the right side up and the left side down.
function ringOf(places, run) {
    const rightSide = places.map((p) => `${number(run + p.x)} ${number(p.y)}`);
    const leftSide = places.map((p) => `${number(-p.x)} ${number(p.y)}`).reverse();
    return `M${[...rightSide, ...leftSide].join(' L')} Z`;
}

// The paper's own white, darkened, and still nearer to white than to black: a photocopy leaves only the hatch.
function tint(tone) {
    const light = 0.62 + 0.36 * Math.min(1, tone);
    return `rgb(${[253, 251, 245].map((part) => Math.round(part * light)).join(' ')})`;
}

// Strips in a row of one member that are dark in one way.
function darkRuns(strips) {
    const runs = [];
    strips.forEach((strip, i) => {
        if (strip.kind !== 'lit') {
            if (i > 0 && alike(strips[i - 1], strip)) {
                runs[runs.length - 1].push(strip);
            } else {
                runs.push([strip]);
            }
        }
    });
    return runs;
}

// A level line wherever a member ends, and the silhouettes of both ends.
function drawEdges(layer, strips, run) {
    const level = (x, y) => `M${number(-x)} ${number(y)} H${number(run + x)}`;
    const arrises = strips
        .filter((strip, i) => i === 0 || strips[i - 1].member !== strip.member)
        .map((strip) => {
            const below = strips[strips.indexOf(strip) - 1] ?? { high: strip.low };
            return level(Math.max(strip.low.x, below.high.x), strip.low.y);
        });
    const top = strips[strips.length - 1];
    const ends = strips.flatMap(({ low, high }) =>
        [(x) => -x, (x) => run + x].map(
            (side) => `M${number(side(low.x))} ${number(low.y)} L${number(side(high.x))} ${number(high.y)}`,
        ),
    );
    drawn('path', { class: 'arris', d: arrises.join(' ') }, layer);
    drawn('path', { class: 'outline', d: [...ends, ...(top ? [level(top.high.x, top.high.y)] : [])].join(' ') }, layer);
}

// The letter of each piece beside what shows of it.
function drawLetters(layer, strips, stage, data, x, size) {
    const shown = new Map();
    for (const strip of strips) {
        const { body } = stage.members[strip.member];
        const known = shown.get(body) ?? { low: strip.low.y, high: strip.high.y };
        shown.set(body, { low: Math.min(known.low, strip.low.y), high: Math.max(known.high, strip.high.y) });
    }
    const rows = [...shown]
        .map(([body, { low, high }]) => ({ body, low, high, y: (low + high) / 2 }))
        .sort((a, b) => a.y - b.y);
    spread(rows, 1.15 * size, Math.max(...rows.map(({ high }) => high)));
    for (const { body, low, high, y } of rows) {
        const group = drawn('g', { class: 'letter' }, layer);
        group.dataset.piece = body;
        const bracket = `M${number(x)} ${number(-low)} H${number(x - 0.4 * size)} V${number(-high)} H${number(x)}`;
        const leader = `M${number(x - 0.4 * size)} ${number(-(low + high) / 2)} L${number(x - 1.1 * size)} ${number(-y)}`;
        drawn('path', { d: `${bracket} ${leader}` }, group);
        const at = { x: number(x - 1.3 * size), y: number(0.36 * size - y), 'font-size': number(size) };
        drawn('text', at, group, data.letters[body]);
    }
}

// Moves the y of rows, lowest first, so far apart, up where need be and then down from the top.
function spread(rows, apart, top) {
    rows.forEach((row, i) => {
        row.y = i > 0 ? Math.max(row.y, rows[i - 1].y + apart) : row.y;
    });
    for (let i = rows.length - 1; i >= 0; i--) {
        rows[i].y = Math.min(rows[i].y, i + 1 < rows.length ? rows[i + 1].y - apart : top);
    }
}
