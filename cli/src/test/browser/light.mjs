// Light on the page against what the program itself says of the same light.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';

// in; the script's numbers have nine decimals, so this is what a carpenter may ask and no more
const WITHIN = 0.002;

const pair = (text) => text.split(' ').map(Number);

// Stretches in a row on one member, lit in one way, are one.
function joined(bands) {
    const out = [];
    for (const band of bands) {
        const last = out[out.length - 1];
        if (last && last.member === band.member && last.kind === band.kind) {
            last.to = band.to;
        } else {
            out.push({ ...band });
        }
    }
    return out;
}

async function shine(page, { altitude, azimuth, x, y }) {
    if (x !== undefined) {
        await page.locator(`button.light[data-x="${x}"][data-y="${y}"]`).click();
    } else {
        await page.getByLabel('Altitude').fill(altitude);
        await page.getByLabel('Azimuth').fill(azimuth);
    }
}

function shown(page) {
    return page.locator('.section path.band').evaluateAll((paths) =>
        paths.map((path) => ({
            member: Number(path.dataset.member),
            kind: ['lit', 'shade', 'cast'].find((kind) => path.classList.contains(kind)),
            from: path.dataset.from,
            to: path.dataset.to,
        })),
    );
}

function same(bands, expected, what) {
    const [a, b] = [joined(bands), joined(expected)];
    const kinds = (list) => list.map(({ member, kind }) => `${member} ${kind}`);
    assert.deepEqual(kinds(a), kinds(b), `${what}: the same stretches, lit in the same ways`);
    a.forEach((band, i) => {
        for (const end of ['from', 'to']) {
            const [p, q] = [pair(band[end]), pair(b[i][end])];
            const off = Math.hypot(p[0] - q[0], p[1] - q[1]);
            assert(off <= WITHIN, `${what}: member ${band.member} ${band.kind} ${end} is off by ${off} in`);
        }
    });
}

// Who casts each shadow that ends in light; the page names nobody for a member that is dark from end to end.
async function cast(page, expected, what) {
    const rows = await page.locator('.dark tbody tr').evaluateAll((all) =>
        all.map((row) => [Number(row.dataset.member), ...[...row.querySelectorAll('td')].map((cell) => cell.textContent)]),
    );
    const said = rows.filter((row) => row[2] === 'in cast shadow').map((row) => `${row[0]} ${row[5]}`);
    const asked = expected.map(({ member, by, edged }) => `${member} ${edged ? by : ''}`);
    assert.deepEqual(said, asked, `${what}: the same casters`);
}

// The pages come with a file beside each that holds the program's answers: "answers": [{ light, bands, casters }].
async function eachAnswer(open, files, look) {
    for (const file of files) {
        const page = await open(file);
        const { answers } = JSON.parse(await readFile(`${file}.json`, 'utf8'));
        assert(answers.some(({ light }) => light.x), 'a lamp among them');
        for (const answer of answers) {
            await shine(page, answer.light);
            await look(page, answer, `${file} ${JSON.stringify(answer.light)}`);
        }
        await page.close();
    }
}

export async function bands(open, ...files) {
    await eachAnswer(open, files, async (page, answer, what) => same(await shown(page), answer.bands, what));
}

export async function casters(open, ...files) {
    await eachAnswer(open, files, (page, answer, what) => cast(page, answer.casters, what));
}

export async function impossible_light(open, file) {
    const page = await open(file);
    const says = page.locator('.lightsays');
    for (const [altitude, azimuth, word] of [['91', '0', 'altitude'], ['', '0', 'altitude'], ['30', '120', 'azimuth'], ['90', '0', 'along the wall']]) {
        await shine(page, { altitude, azimuth });
        await says.getByText(word).waitFor();
        assert.deepEqual(await shown(page), [], 'no shadow of another light is left standing');
        assert.equal(await page.locator('.front .faces path').count(), 0);
        assert.equal(await page.locator('.dark tbody tr').count(), 0);
    }
    await shine(page, { altitude: '30', azimuth: '0' });
    await says.getByText('30.0° in section').waitFor();
    assert.notEqual((await shown(page)).length, 0);
}

export async function three_lights(open, file) {
    const page = await open(file);
    const front = () => page.locator('.front svg').innerHTML();
    const seen = new Set();
    for (const name of ['45°', 'Raking', 'Lamp']) {
        const button = page.getByRole('button', { name, exact: true });
        await button.click();
        assert.equal(await button.getAttribute('aria-pressed'), 'true');
        assert.equal(await page.locator('button.light[aria-pressed="true"]').count(), 1);
        seen.add(JSON.stringify(await shown(page)) + (await front()));
    }
    assert.equal(seen.size, 3, 'section and front change with every light');
    await page.getByRole('button', { name: 'Raking', exact: true }).click();
    assert.equal(await page.getByLabel('Altitude').inputValue(), '40');
    assert.equal(await page.getByLabel('Azimuth').inputValue(), '60');
}
