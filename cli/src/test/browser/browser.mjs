// A real browser in front of a page that lies on disk.
import assert from 'node:assert/strict';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

// Quiet: no sandbox, since tests may run as root, and none of what a browser does on its own account.
export const FLAGS = [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
];

// The one that is installed: the client's own is not wanted.
export function chromiumOnThePath() {
    const found = process.env.PATH.split(delimiter).map((folder) => join(folder, 'chromium')).find((file) => {
        try {
            accessSync(file, constants.X_OK);
            return true;
        } catch {
            return false;
        }
    });
    assert(found, 'chromium is installed');
    return found;
}

// Runs the checks, each on a page of its own, and fails when the browser complained of one or asked for anything.
export async function withBrowser(run) {
    const browser = await chromium.launch({ executablePath: chromiumOnThePath(), args: FLAGS });
    const faults = [];
    try {
        await run(async (file, { width = 1000, height = 800 } = {}) => {
            const page = await browser.newPage({ viewport: { width, height } });
            page.setDefaultTimeout(5000);
            page.on('console', (message) => faults.push(`console ${message.type()}: ${message.text()}`));
            page.on('pageerror', (error) => faults.push(`error: ${error.stack}`));
            page.on('request', (request) => {
                if (request.url() !== pathToFileURL(file).href) {
                    faults.push(`request: ${request.url()}`);
                }
            });
            await page.goto(pathToFileURL(file).href);
            return page;
        });
    } finally {
        await browser.close();
    }
    assert.deepEqual(faults, [], 'the browser has nothing to complain of, and asks for nothing');
}
