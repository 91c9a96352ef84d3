// node watch.mjs FOLDER JAVA CLASSPATH: follows a stack through saves, faults and storms in a real browser, and prints how
// long a save takes to be seen beside a whole report. Ends with 1 and says why when something is not as it should be.
import assert from 'node:assert/strict';
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { chromium } from 'playwright-core';
import { FLAGS, chromiumOnThePath } from './browser.mjs';

const [folder, java, classpath] = process.argv.slice(2);
const stack = join(folder, 'cornice.yaml');
const program = ['-XX:+UseSerialGC', '-XX:TieredStopAtLevel=1', '-cp', classpath, 'buildup.cli.Main'];
const ROUNDS = 9;
const MOMENT_MS = 60;
const HALF_SAVED = 'title: Half a stack\npieces:\n  - { name: "fri';

const original = cornice();

function cornice({ lip = '1', lap = '1/2', title = 'Cornice of the <b>reading room</b> "карниз"' } = {}) {
    return `title: '${title}'
wood: yellow-poplar
sizes: { lip: ${lip}, lap: ${lap} }
space: { floor: -84, ceiling: 12, projection: 8, wall: { solid: no } }
eyes:
  - { name: seated, distance: 72, height: floor + 46 }
pieces:
  - { name: case, kind: framing, section: [out 14, up 90-1/4], face: wall, top: 6-1/4 }
  - { name: bead, profile: board 1 x 3/4, back: wall, bottom: datum }
  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: bead.top }
  - { name: bed, profile: cove-bed 1-1/4 x 1-3/8, back: frieze.face, top: frieze.top }
  - { name: soffit, kind: nailer, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: frieze.top }
  - { name: fascia, profile: board 3/4 x 3-1/2, back: soffit.face, bottom: soffit.bottom - lip, top: soffit.top + 1 }
  - { name: crown, profile: plain-crown 3-1/4, back: fascia.face, bottom: fascia.top - lap }
  - { name: "<i>cap</i>", profile: board 3/4 x 7-1/4, lay: flat, back: wall, face: crown.face + 3/8, bottom: crown.top }
`;
}

const shown = (page) => page.evaluate(() => Number(document.documentElement.dataset.version));
const stale = (page) => page.evaluate(() => {
    const mark = document.getElementById('stale');
    return mark.hidden ? '' : mark.innerText;
});
const changed = (page) => page.evaluate(() => {
    const block = document.getElementById('changed');
    return block.hidden ? '' : block.innerText;
});
const until = (page, is, argument) => page.waitForFunction(is, argument, { polling: 20 });
const untilStale = (page, words) => until(page, (text) => {
    const mark = document.getElementById('stale');
    return !mark.hidden && mark.innerText.includes(text);
}, words);
const untilFresh = (page) => until(page, () => document.getElementById('stale').hidden);
const untilChanged = (page, words) =>
    until(page, (text) => document.getElementById('changed').innerText.includes(text), words);

// When the next picture stands on the screen, by the clock that this program has too.
const nextPicture = (page) => page.evaluate(() => new Promise((resolve) => {
    new MutationObserver((_, observer) => {
        observer.disconnect();
        requestAnimationFrame(() => requestAnimationFrame(() => resolve(Date.now())));
    }).observe(document.documentElement, { attributes: true, attributeFilter: ['data-version'] });
}));

const middle = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)];

async function opens(page) {
    assert.equal(await shown(page), 1);
    assert.equal(await page.title(), 'Cornice of the <b>reading room</b> "карниз"');
    assert.equal(await stale(page), '');
    assert.equal(await changed(page), '', 'at first nothing has changed');
    assert.equal(await page.locator('#a svg').count() > 0, true);
}

async function followsASave(page) {
    writeFileSync(stack, cornice({ lip: '3/4' }));
    await untilChanged(page, 'reveal of fascia over soffit 1 -> 3/4');
    assert.match(await changed(page), /more of raw soffit now shows to the seated eye/);
    assert.equal(await stale(page), '');
}

async function keepsWhatTheUserChose(page) {
    await page.click('button[data-unit=mm]');
    await page.click('#a-step-3');
    writeFileSync(stack, original);
    await untilChanged(page, 'reveal of fascia over soffit 19.1- -> 25.4 mm');
    assert.equal(await page.getAttribute('html', 'data-unit'), 'mm');
    assert.equal(await page.getAttribute('#a-step-3', 'aria-pressed'), 'true');
    await page.click('button[data-unit=in]');
}

async function marksABrokenSave(page) {
    const picture = await page.innerHTML('#a');
    writeFileSync(stack, original.replace('profile: cove-bed', 'profile: cove-bad'));
    await untilStale(page, 'cornice.yaml:11:');
    assert.match(await stale(page), /Out of date/);
    assert.match(await stale(page), /cove-bed/, 'the cure names what is near');
    assert.equal(await page.innerHTML('#a'), picture, 'the last good picture stays');
    await page.reload();
    assert.match(await stale(page), /Out of date/, 'whoever comes later sees the mark too');
    writeFileSync(stack, original.replace('lip: 1,', 'lip: 7/8,'));
    await untilFresh(page);
    await untilChanged(page, 'reveal of fascia over soffit 1 -> 7/8');
}

// Written in one go, so that a busy machine does not stretch the moment.
function writeHalfAndThenWhole() {
    const start = performance.now();
    writeFileSync(stack, HALF_SAVED);
    while (performance.now() - start < MOMENT_MS) {
        continue;
    }
    writeFileSync(stack, original);
}

async function passesOverAHalfSave(page) {
    const before = await shown(page);
    writeHalfAndThenWhole();
    await untilChanged(page, 'reveal of fascia over soffit 7/8 -> 1');
    assert.equal(await shown(page), before + 1, 'the half was never shown');
    writeFileSync(stack, HALF_SAVED);
    await untilStale(page, 'cornice.yaml:');
    writeFileSync(stack, original);
    await untilFresh(page);
}

async function outlivesADeletion(page) {
    rmSync(stack);
    await untilStale(page, 'There is no file');
    const beside = join(folder, '.cornice.part');
    writeFileSync(beside, cornice({ lip: '5/8' }));
    renameSync(beside, stack);
    await untilFresh(page);
    await untilChanged(page, 'reveal of fascia over soffit 1 -> 5/8');
}

async function outlivesAStorm(page) {
    const before = await shown(page);
    for (let save = 1; save <= 100; save++) {
        writeFileSync(stack, save % 7 === 0 ? HALF_SAVED : cornice({ title: `Save ${save}` }));
        await sleep(10);
    }
    await until(page, () => document.title === 'Save 100');
    await sleep(500);
    assert.equal(await page.title(), 'Save 100');
    assert.equal(await stale(page), '');
    const pictures = (await shown(page)) - before;
    assert.ok(pictures < 50, `${pictures} pictures of a hundred saves`);
    console.log(`a storm of 100 saves: ${pictures} pictures`);
}

async function comesBack(page) {
    await page.context().setOffline(true);
    await page.evaluate(() => fetch('parts').catch(() => {}));
    writeFileSync(stack, cornice({ title: 'Saved while away' }));
    await sleep(400);
    await page.context().setOffline(false);
    await until(page, () => document.title === 'Saved while away');
    await untilFresh(page);
}

async function answersNoOtherSite(browser, address) {
    const other = createServer((_, answer) => answer.setHeader('Content-Type', 'text/html').end('<p>another site</p>'));
    other.listen(0, '127.0.0.1');
    await once(other, 'listening');
    const answered = [];
    for (const host of ['127.0.0.1', 'localhost']) {
        const page = await browser.newPage();
        page.on('response', (response) => response.url().startsWith(address) && answered.push(response.status()));
        await page.goto(`http://${host}:${other.address().port}/`);
        const got = await page.evaluate(async (there) => {
            const read = await fetch(there + 'parts').then(() => 'read', () => 'kept out');
            await fetch(there + 'parts', { mode: 'no-cors' }).catch(() => {});
            const frame = document.body.appendChild(document.createElement('iframe'));
            frame.src = there;
            await new Promise((resolve) => frame.addEventListener('load', resolve));
            const events = await new Promise((resolve) => {
                const stream = new EventSource(there + 'events');
                stream.onmessage = () => resolve('read');
                stream.onerror = () => resolve('kept out');
            });
            return [read, events];
        }, address);
        assert.deepEqual(got, ['kept out', 'kept out']);
        const refused = page.waitForResponse(address);
        await page.evaluate((there) => { location.href = there; }, address);
        await refused;
        await page.close();
    }
    assert.ok(answered.length >= 4, 'it was asked');
    assert.deepEqual(answered.filter((status) => status !== 404), []);
    other.close();
}

async function time(page) {
    const saves = [];
    for (let round = 0; round < ROUNDS; round++) {
        await sleep(200);
        const picture = nextPicture(page);
        const start = Date.now();
        writeFileSync(stack, cornice({ lap: round % 2 ? '1/2' : '3/8' }));
        saves.push((await picture) - start);
    }
    const reports = [];
    for (let round = 0; round < 5; round++) {
        const start = Date.now();
        spawnSync(java, [...program, 'report', stack, '--format', 'html', '-o', join(folder, 'report.html')]);
        reports.push(Date.now() - start);
    }
    const share = (100 * middle(saves)) / middle(reports);
    console.log(`from save to new picture: ${middle(saves)} ms; a whole report run: ${middle(reports)} ms;`
        + ` ${share.toFixed(0)} % (medians of ${saves.length} and ${reports.length}; saves ${saves.join(' ')})`);
}

async function followsTwo(browser, faults) {
    const other = join(folder, 'other.yaml');
    writeFileSync(stack, original);
    writeFileSync(other, cornice({ lip: '3/4' }));
    const { process: watch, address } = await start('--beside', other);
    const page = await opened(browser, address, faults);
    await untilChanged(page, 'reveal of fascia over soffit 1 -> 3/4');
    await page.click('#changed summary');
    writeFileSync(other, cornice({ lip: '1/2' }));
    await untilChanged(page, 'reveal of fascia over soffit 1 -> 1/2');
    assert.equal(await page.locator('#changed details[open]').count(), 1, 'what was folded open stays open');
    assert.equal(await page.locator('article.stack').count(), 2);
    await stop(watch, page);
}

async function stop(watch, page) {
    watch.kill('SIGINT');
    const [code] = await once(watch, 'exit');
    assert.equal(code, 0, 'Ctrl-C ends it well');
    await untilStale(page, 'Not connected');
    await page.close();
}

async function start(...words) {
    const watch = spawn(java, [...program, 'watch', stack, ...words], { stdio: ['ignore', 'pipe', 'inherit'] });
    const failed = once(watch, 'exit').then(([code]) => {
        throw new Error(`watch ended with ${code}`);
    });
    failed.catch(() => {});
    const [said] = await Promise.race([once(watch.stdout, 'data'), failed]);
    return { process: watch, address: String(said).match(/http:\S+/)[0] };
}

async function opened(browser, address, faults) {
    const page = await browser.newPage();
    page.setDefaultTimeout(15000);
    page.on('pageerror', (error) => faults.push(`error: ${error.stack}`));
    page.on('request', (request) => request.url().startsWith(address) || faults.push(`request: ${request.url()}`));
    page.on('console', (message) => faults.push(`console ${message.type()}: ${message.text()}`));
    await page.goto(address);
    return page;
}

// A browser says itself that a connection is lost.
const expected = /ERR_(INTERNET_DISCONNECTED|INCOMPLETE_CHUNKED_ENCODING|CONNECTION_REFUSED|CONNECTION_RESET|EMPTY_RESPONSE)/;

writeFileSync(stack, original);
const browser = await chromium.launch({ executablePath: chromiumOnThePath(), args: FLAGS });
const { process: watch, address } = await start();
try {
    const faults = [];
    const page = await opened(browser, address, faults);
    await opens(page);
    await followsASave(page);
    await keepsWhatTheUserChose(page);
    await marksABrokenSave(page);
    await passesOverAHalfSave(page);
    await outlivesADeletion(page);
    await outlivesAStorm(page);
    await comesBack(page);
    await answersNoOtherSite(browser, address);
    await time(page);
    await stop(watch, page);
    await followsTwo(browser, faults);
    assert.deepEqual(faults.filter((fault) => !expected.test(fault)), [], 'the browser has nothing to complain of');
} finally {
    watch.kill('SIGKILL');
    await browser.close();
}
