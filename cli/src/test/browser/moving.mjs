// What moves: steps, pieces and rows, the keyboard, new parts in an open page.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';

const standing = (page) =>
    page.locator('.section [id*="-piece-"][role=button]').evaluateAll((all) =>
        all
            .filter((one) => getComputedStyle(one).display !== 'none')
            .map((one) => one.getAttribute('aria-label')),
    );

export async function steps(open, file) {
    const page = await open(file);
    const buttons = page.locator('button.step');
    const whole = await standing(page);
    const count = await buttons.count();
    const first = whole.length - count;
    for (let step = 0; step < count; step++) {
        await buttons.nth(step).click();
        const now = await standing(page);
        assert.equal(now.length, first + step + 1, `step ${step + 1} adds one piece`);
        const name = await buttons.nth(step).locator('bdi').textContent();
        assert(now.some((label) => label.endsWith(` ${name}`)), `step ${step + 1} puts up ${name}`);
        const says = await page.locator('.stepsays').innerText();
        assert.match(says, new RegExp(`^Step ${step + 1} of ${count}, ${name}: height`));
        assert.notEqual(await page.locator('.section path.band').count(), 0, 'light falls on what stands');
    }
    assert.deepEqual((await standing(page)).sort(), whole.sort());
    assert.equal(await page.locator('[id$="-dimensions-in"]').isVisible(), true);
}

const chosen = (page) => page.locator('tr.chosen').evaluateAll((rows) => [...new Set(rows.map((row) => row.dataset.piece))]);

export async function pieces(open, file) {
    const page = await open(file);
    const list = page.locator('.tables table:has(tr[data-piece])').first();
    const count = await list.locator('tr[data-piece]').count();
    for (let i = 0; i < count; i++) {
        const button = list.locator('tr[data-piece]').nth(i).locator('button.choose');
        const name = await button.locator('bdi').evaluate((one) => one.textContent);
        await button.click();
        const piece = await list.locator('tr[data-piece]').nth(i).getAttribute('data-piece');
        assert.deepEqual(await chosen(page), [piece]);
        const drawn = page.locator('.section [id*="-piece-"][aria-pressed="true"]');
        // a piece far from the stack is not on the drawing
        if ((await page.locator(`.section [id$="-piece-${piece}"]`).count()) > 0) {
            assert((await drawn.getAttribute('aria-label')).endsWith(` ${name}`));
        }
        assert((await page.locator('.card h3 bdi').textContent()) === name);
    }
    // and the other way round
    const drawn = page.locator('.section [id*="-piece-"][role=button]');
    for (let i = 0; i < (await drawn.count()); i++) {
        await drawn.nth(i).focus();
        const piece = (await drawn.nth(i).getAttribute('id')).split('-').pop();
        assert.deepEqual(await chosen(page), [piece]);
        assert.notEqual(await page.locator('.card dd').count(), 0, 'its row is shown under the drawing');
    }
}

export async function touched(open, file) {
    const page = await open(file);
    await page.locator('.section [id$="-piece-2"]').click();
    assert.deepEqual(await chosen(page), ['2']);
}

// Tab goes through everything that can be pressed, sees where it is, and comes out at the end.
export async function keyboard(open, file) {
    const page = await open(file);
    const wanted = await page.evaluate(() => {
        const all = document.querySelectorAll('a[href], button, input, summary, [tabindex="0"]');
        return [...all].filter((one) => one.checkVisibility() || one.matches('.skip')).length;
    });
    const reached = await page.evaluateHandle(() => new Set());
    let stops = 0;
    for (; stops < wanted + 20; stops++) {
        await page.keyboard.press('Tab');
        const at = await page.evaluate((seen) => {
            const one = document.activeElement;
            if (one === document.body || seen.has(one)) {
                return 'out';
            }
            seen.add(one);
            const style = getComputedStyle(one);
            const outlined = style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2;
            const stroked = [...one.querySelectorAll('path')].some(
                (path) => getComputedStyle(path).stroke !== 'none' && parseFloat(getComputedStyle(path).strokeWidth) >= 4,
            );
            return outlined || stroked ? 'seen' : one.outerHTML.slice(0, 90);
        }, reached);
        if (at === 'out') {
            break;
        }
        assert.equal(at, 'seen', 'where the keyboard is can be seen');
    }
    const all = await page.evaluate(
        (seen) =>
            [...document.querySelectorAll('a[href], button, input, summary, [tabindex="0"]')]
                .filter((one) => one.checkVisibility() && !seen.has(one) && !one.closest('.card'))
                .map((one) => one.outerHTML.slice(0, 90)),
        reached,
    );
    assert.deepEqual(all, [], 'everything was reached');
    assert(stops >= wanted, `${stops} stops, ${wanted} things to reach`);
    await keys(page);
}

async function keys(page) {
    await page.locator('button.step').first().focus();
    await page.keyboard.press('Enter');
    assert.match(await page.locator('#said').textContent(), /^Step 1 of/, 'who does not see it hears it');
    await page.locator('.lights input').first().focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('50');
    assert.match(await page.locator('#said').textContent(), /^50° up/);
    await page.getByRole('button', { name: 'millimeters' }).focus();
    await page.keyboard.press('Space');
    assert.equal(await page.locator('html').getAttribute('data-unit'), 'mm');
    const drawn = page.locator('.section [id*="-piece-"][role=button]').first();
    await drawn.focus();
    await page.keyboard.press('Enter');
    assert.equal(await drawn.getAttribute('aria-pressed'), 'true');
}

// An open page takes new parts, keeps what it was set to, and marks what is out of date.
export async function exchange(open, file, other) {
    const page = await open(file);
    // as the program writes it, before a script touched it
    const written = await readFile(other, 'utf8');
    const markup = written.slice(written.indexOf('<article'), written.indexOf('</main>'));
    const title = 'another title';
    await page.getByRole('button', { name: 'millimeters' }).click();
    await page.getByLabel('Altitude').fill('50');
    await page.locator('button.step').first().click();
    await page.getByRole('button', { name: 'bead', exact: true }).click();
    const send = (detail) =>
        page.evaluate((one) => document.dispatchEvent(new CustomEvent('buildup:parts', { detail: one })), detail);
    await send({ title, stacks: markup, changed: '<p>height 1 -&gt; 2</p>' });
    assert.equal(await page.title(), title);
    assert.equal(await page.locator('#changed').isVisible(), true);
    assert.match(await page.locator('#said').textContent(), /height 1 -> 2/);
    assert.equal(await page.locator('html').getAttribute('data-unit'), 'mm');
    assert.match(await page.locator('.lightsays').textContent(), /^50° up/);
    assert.match(await page.locator('.stepsays').innerText(), /^Step 1 of/);
    assert.equal(await page.locator('.card h3 bdi').textContent(), 'bead');
    await send({ stale: ['cornice.yaml:3:1 this line is wrong', '<b>not markup</b>'] });
    assert.match(await page.locator('#stale').innerText(), /<b>not markup<\/b>/);
    const mark = await page.locator('.section .drawing').evaluate((one) => getComputedStyle(one, '::before').content);
    assert.equal(mark, '"Last good picture"');
    await send({ stale: [], changed: '' });
    assert.equal(await page.locator('#stale').isVisible(), false);
    assert.equal(await page.locator('#changed').isVisible(), false);
}

// Names that look like markup, that are written from the right, that are alike but for an accent: each is itself.
export async function hostile_names(open, file) {
    const page = await open(file);
    assert.equal(await page.evaluate(() => window.taken), undefined, 'nothing of a name runs');
    assert.equal(await page.locator('img, iframe, object, link, base').count(), 0);
    const ids = await page.evaluate(() => [...document.querySelectorAll('[id]')].map((one) => one.id));
    assert.equal(new Set(ids).size, ids.length, 'no id twice');
    const names = await page.locator('.tables table:has(tr[data-piece])').first().locator('tr[data-piece] bdi').allTextContents();
    assert.equal(names.length, 6);
    assert.equal(new Set(names).size, 6);
    const labels = await standing(page);
    names.forEach((name) => assert(labels.some((label) => label.endsWith(` ${name}`)), `${name} is on the drawing`));
    await pieces(async () => page, file);
}

// A free size on its slider: the figures at each place are those that the engine reported, handed in as JSON. When the
// stack comes in anew with another size, the slider stays where it was moved to.
export async function slider(open, file, expectedFile, other) {
    const page = await open(file);
    const expected = JSON.parse(await readFile(expectedFile, 'utf8'));
    const curve = page.locator('.curve').first();
    const handle = curve.locator('input[type="range"]');
    await handle.focus();
    await page.keyboard.press('Home');
    let before;
    for (const { typed, figures } of expected) {
        assert.equal((await curve.locator('.at').innerText()).replace(' (now)', ''), typed);
        const shown = await curve.locator('figcaption').allInnerTexts();
        figures.forEach((words) => assert(shown.includes(words), `${typed}: '${words}' is shown among ${shown}`));
        const spot = await curve.locator('.spot').first().getAttribute('cx');
        assert(before === undefined || Number(spot) > before, 'the spot goes right as the size grows');
        before = Number(spot);
        await page.keyboard.press('ArrowRight');
    }
    const written = await readFile(other, 'utf8');
    const stacks = written.slice(written.indexOf('<article'), written.indexOf('</main>'));
    const send = () =>
        page.evaluate((one) => document.dispatchEvent(new CustomEvent('buildup:parts', { detail: one })), { stacks });
    const shown = () => page.locator('.curve .at').first().innerText();
    const last = expected.length - 1;
    await send();
    assert.equal(await shown(), expected[last].typed, 'it stays where it was moved to');
    const captions = await page.locator('.curve').first().locator('figcaption').allInnerTexts();
    expected[last].figures.forEach((words) => assert(captions.includes(words), `'${words}' is shown among ${captions}`));
    const now = await page.locator('.curve input[type="range"]').first().evaluate((one) => one.defaultValue);
    await page.locator('.curve input[type="range"]').first().fill(now);
    await send();
    assert.match(await shown(), /\(now\)$/, 'left where the size is now, it goes with it');
}
