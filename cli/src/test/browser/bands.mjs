// node bands.mjs PAGE_SCRIPTS CASES: the script's light, without a page, against what the program says of the same.
// CASES holds the page's tolerances in its first line, and in each line behind it a stack with the program's answers:
// { "data": ..., "answers": [{ light, bands, front }] }. Needs nothing but Node.js.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import path from 'node:path';
import vm from 'node:vm';

// in; the program's places come with six decimals, and a stretch shorter than this may fall to either side
const WITHIN = 0.002;

const [scripts, cases] = process.argv.slice(2);
const [tolerances, ...lines] = readFileSync(cases, 'utf8').trim().split('\n');
const page = vm.createContext({ document: { getElementById: () => ({ textContent: tolerances }) } });
const text = ['segments.js', 'view.js', 'light.js', 'front.js'].map((name) => readFileSync(path.join(scripts, name), 'utf8')).join('\n');
const { readStack, bandsOf, stripsOf } = vm.runInContext(`${text}\n({ readStack, bandsOf, stripsOf });`, page);

const long = ({ from, to }) => Math.hypot(from[0] - to[0], from[1] - to[1]) > WITHIN;

// Stretches in a row on one member, lit in one way, are one.
function joined(bands) {
    const out = [];
    for (const band of bands.filter(long)) {
        const last = out[out.length - 1];
        if (last && last.member === band.member && last.kind === band.kind) {
            last.to = band.to;
        } else {
            out.push({ ...band });
        }
    }
    return out;
}

// Of 1; the page's shares of the room have three decimals.
const TONE = 0.002;

// Whether a strip of the page lies over the middle of one of the program's.
function covers(strip, member, kind, y) {
    return strip.member === member && strip.kind === kind && strip.low.y - WITHIN <= y && y <= strip.high.y + WITHIN;
}

// The front: every strip of the program shows on the page, of the same kind and as light.
function sameFront(strips, front, what) {
    for (const { member, kind, low, high, tone } of front) {
        const y = (pair(low)[1] + pair(high)[1]) / 2;
        const over = strips.filter((strip) => covers(strip, member, kind, y));
        const long = Math.abs(pair(high)[1] - pair(low)[1]) > WITHIN;
        assert(!long || over.length > 0, `${what}: member ${member} ${kind} at ${y} does not show`);
        const off = Math.min(...over.map((strip) => Math.abs(strip.tone - tone)));
        assert(!long || off <= TONE, `${what}: member ${member} at ${y} is ${off} too light or too dark`);
    }
    const higher = (all) => Math.max(...all);
    if (front.length > 0) {
        const tops = [higher(strips.map(({ high }) => high.y)), higher(front.map(({ high }) => pair(high)[1]))];
        assert(Math.abs(tops[0] - tops[1]) <= WITHIN, `${what}: the front ends at ${tops}`);
    }
}

const at = (p) => [p.x, p.y];
const pair = (written) => written.split(' ').map(Number);
let held = 0;
for (const line of lines) {
    const { data, answers } = JSON.parse(line);
    const stack = readStack(JSON.stringify(data));
    const stage = stack.stages[stack.stages.length - 1];
    for (const { light, bands, front } of answers) {
        const shining = light.x === undefined
            ? { altitude: Number(light.altitude), azimuth: Number(light.azimuth) }
            : { at: { x: Number(light.x), y: Number(light.y) } };
        const shone = bandsOf(stage, shining);
        sameFront(stripsOf(stage, shone, shining, stack.roomShare), front, `${data.names} under ${JSON.stringify(light)}`);
        const found = joined(shone.map(({ member, kind, segment, start, end }) =>
            ({ member, kind, from: at(segment.at(start)), to: at(segment.at(end)) })));
        const asked = joined(bands.map(({ member, kind, from, to }) => ({ member, kind, from: pair(from), to: pair(to) })));
        const what = `${data.names} under ${JSON.stringify(light)}`;
        const kinds = (list) => list.map(({ member, kind }) => `${member} ${kind}`);
        assert.deepEqual(kinds(found), kinds(asked), `${what}: the same stretches, lit in the same ways`);
        found.forEach((band, i) => {
            for (const end of ['from', 'to']) {
                const off = Math.hypot(band[end][0] - asked[i][end][0], band[end][1] - asked[i][end][1]);
                assert(off <= WITHIN, `${what}: member ${band.member} ${band.kind} ${end} is off by ${off} in`);
            }
        });
        held += found.length;
    }
}
console.log(`${lines.length} stacks, ${held} stretches`);
