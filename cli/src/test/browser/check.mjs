// node check.mjs NAME FILE...: checks one thing about a page; ends with 1 and says why when it is not so.
import { withBrowser } from './browser.mjs';
import * as light from './light.mjs';
import * as reading from './reading.mjs';
import * as moving from './moving.mjs';

const [name, ...files] = process.argv.slice(2);
const check = { ...light, ...reading, ...moving }[name];
if (!check) {
    throw new Error(`there is no check called ${name}`);
}
await withBrowser((open) => check(open, ...files));
