// True segments, as the program holds them: inches, x out from the wall, y up; t is the share of the length walked.

// The distances below which two things count as one, as the program has them and writes them into the page, in.
const TOLERANCE = JSON.parse(document.getElementById('tolerances').textContent);
const TURN = 2 * Math.PI;

const plus = (a, b, times = 1) => ({ x: a.x + b.x * times, y: a.y + b.y * times });
const minus = (a, b) => ({ x: a.x - b.x, y: a.y - b.y });
const dot = (a, b) => a.x * b.x + a.y * b.y;
const cross = (a, b) => a.x * b.y - a.y * b.x;
const distance = (a, b) => Math.hypot(a.x - b.x, a.y - b.y);
const direction = (angle) => ({ x: Math.cos(angle), y: Math.sin(angle) });
const angleOf = (p) => Math.atan2(p.y, p.x);

// [x, y, x, y] is a line from one place to the other; with center and sense behind it, an arc.
function segmentOf(numbers) {
    const from = { x: numbers[0], y: numbers[1] };
    const to = { x: numbers[2], y: numbers[3] };
    return numbers.length === 4 ? lineOf(from, to) : arcOf(from, to, { x: numbers[4], y: numbers[5] }, numbers[6] === 1);
}

function lineOf(from, to) {
    const length = distance(from, to);
    const way = length > 0 ? { x: (to.x - from.x) / length, y: (to.y - from.y) / length } : { x: 0, y: 0 };
    return {
        from,
        to,
        length,
        straight: true,
        // the ends come back exactly, so that neighbors share them
        at: (t) => (t <= 0 ? from : t >= 1 ? to : plus(from, minus(to, from), t)),
        direction: () => way,
        part: (start, end) => lineOf(plus(from, minus(to, from), start), plus(from, minus(to, from), end)),
    };
}

function arcOf(from, to, center, counterclockwise) {
    const radius = distance(center, from);
    const startAngle = angleOf(minus(from, center));
    // how far round from the start, in the walk's own sense, a direction lies: 0 to a full turn
    const walkedTo = (angle) => {
        const turn = (counterclockwise ? angle - startAngle : startAngle - angle) % TURN;
        return turn < 0 ? turn + TURN : turn;
    };
    const whole = walkedTo(angleOf(minus(to, center)));
    const sense = counterclockwise ? 1 : -1;
    const at = (t) => (t <= 0 ? from : t >= 1 ? to : plus(center, direction(startAngle + sense * t * whole), radius));
    return {
        from,
        to,
        center,
        radius,
        counterclockwise,
        length: radius * whole,
        straight: false,
        at,
        direction: (t) => {
            const spoke = direction(startAngle + sense * t * whole);
            return { x: -sense * spoke.y, y: sense * spoke.x };
        },
        // the t at which a direction from the center is met; outside 0 to 1 when it is not on the arc
        atAngle: (angle) => {
            const walked = walkedTo(angle);
            const past = walked - whole;
            return past > 0 && TURN - walked < past ? (walked - TURN) / whole : walked / whole;
        },
        part: (start, end) => arcOf(at(start), at(end), center, counterclockwise),
    };
}

// What the page holds of a stack, its numbers as segments.
function readStack(text) {
    const data = JSON.parse(text);
    data.stages.forEach((stage) => {
        stage.members = stage.members.map(([body, name, segments]) => ({ body, name, segments: segments.map(segmentOf) }));
        stage.surfaces = stage.surfaces.map(([body, segment]) => ({ body, segment: segmentOf(segment) }));
        stage.front = stage.front.map(([member, segment, start, end, ...open]) => (
            { segment: stage.members[member].segments[segment], start, end, open }
        ));
    });
    return data;
}

const near = (a, b, within) => distance(a, b) <= within;

// Six decimals are far finer than a screen, and short.
const number = (value) => String(Number(value.toFixed(6)));

// The d of a path; y is up, so the picture it lies in is turned over.
function pathOf(segment) {
    const start = `M${number(segment.from.x)} ${number(segment.from.y)}`;
    const end = `${number(segment.to.x)} ${number(segment.to.y)}`;
    if (segment.straight) {
        return `${start} L${end}`;
    }
    const large = segment.length > Math.PI * segment.radius ? 1 : 0;
    const radius = number(segment.radius);
    return `${start} A${radius} ${radius} 0 ${large} ${segment.counterclockwise ? 1 : 0} ${end}`;
}
