// Whether the page can be read: at any width, in both units, on paper, by ear.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

// Without a request and without a word from the browser: withBrowser sees to that.
export async function opens(open, ...files) {
    for (const file of files) {
        const page = await open(file);
        assert.equal(await page.locator('article.stack').count(), 1);
        assert.notEqual(await page.locator('.section path.band').count(), 0);
        assert.notEqual(await page.locator('.front .faces path').count(), 0);
        await page.close();
    }
}

export async function narrow(open, ...files) {
    for (const file of files) {
        const page = await open(file, { width: 360, height: 740 });
        const wide = await page.evaluate(() => {
            const over = [...document.querySelectorAll('body *')]
                .filter((one) => !one.closest('svg svg, .unseen, .skip, thead') && one.scrollWidth > one.clientWidth + 1)
                .filter((one) => ['auto', 'scroll'].includes(getComputedStyle(one).overflowX));
            return { page: document.documentElement.scrollWidth, over: over.map((one) => one.outerHTML.slice(0, 80)) };
        });
        assert.deepEqual(wide, { page: 360, over: [] }, `${file}: nothing scrolls sideways`);
        const small = await page.evaluate(() =>
            [...document.querySelectorAll('button, input, summary')]
                .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 44)
                .map((one) => one.outerHTML.slice(0, 80)),
        );
        assert.deepEqual(small, [], `${file}: everything is high enough to be touched`);
        await page.close();
    }
}

export async function units(open, file) {
    const page = await open(file);
    const height = page.locator('.figures dd').first();
    const inches = await height.innerText();
    assert.match(inches, /^\d+(-\d+\/\d+)?[+-]?/);
    const row = page.locator('.dark tbody tr').first().locator('td').nth(2);
    const drawing = page.locator('.section svg');
    assert.match(await drawing.innerText().catch(() => drawing.textContent()), /height/);
    await page.getByRole('button', { name: 'millimeters' }).click();
    assert.match(await height.innerText(), /^\d+(\.\d)?[-+]?$/);
    assert.match(await page.locator('.figures .small').innerText(), /^Sizes in millimeters/);
    assert.match(await row.innerText(), /^\d+(\.\d)?[-+]?$/);
    assert.equal(await page.locator('[id$="-dimensions-in"]').isVisible(), false);
    assert.equal(await page.locator('[id$="-dimensions-mm"]').isVisible(), true);
    await page.getByRole('button', { name: 'inches' }).click();
    assert.equal(await height.innerText(), inches);
}

// A checker of accessibility finds nothing serious, however the page is set.
export async function accessible(open, ...files) {
    for (const file of files) {
        for (const width of [360, 1400]) {
            const page = await open(file, { width });
            // the page's own policy lets no script in; the debugger is not asked for leave
            await page.evaluate(axe);
            await faultless(page, `${file} at ${width}`);
            await page.locator('[id*="-piece-"][role=button]').first().focus();
            await page.locator('button.step').first().click();
            await page.getByRole('button', { name: 'millimeters' }).click();
            await faultless(page, `${file} at ${width}, one piece up and chosen`);
            await page.close();
        }
    }
}

async function faultless(page, what) {
    const { violations } = await page.evaluate(() => window.axe.run({ resultTypes: ['violations'] }));
    const grave = violations
        .filter(({ impact }) => impact === 'serious' || impact === 'critical')
        .map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).slice(0, 3)}`);
    assert.deepEqual(grave, [], what);
}

export async function on_paper(open, file, paper) {
    const page = await open(file);
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    assert.equal(await page.locator('button.light').first().isVisible(), false, 'nothing to press on paper');
    assert.equal(await page.locator('.notices li').last().isVisible(), true, 'nothing is shut on paper');
    assert.equal(await page.locator('.lightsays').isVisible(), true, 'the light is said');
    await page.pdf({ path: paper, format: 'Letter' });
}
