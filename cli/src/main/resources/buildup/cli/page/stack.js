// One stack on the page: what is chosen, how far it is built up, how it is lit.

// The nearest sixteenth, with + or - behind it when the true size is a little more or less.
function sixteenths(inches) {
    const steps = Math.round(inches * 16);
    const rest = steps % 16;
    const divisor = [8, 4, 2, 1].find((one) => rest % one === 0);
    const whole = Math.floor(steps / 16);
    const fraction = rest === 0 ? '' : `${rest / divisor}/${16 / divisor}`;
    const off = inches - steps / 16;
    const mark = Math.abs(off) <= TOLERANCE.least ? '' : off > 0 ? '+' : '-';
    return (fraction === '' ? String(whole) : whole === 0 ? fraction : `${whole}-${fraction}`) + mark;
}

// Tenths of a millimeter, marked in the same way.
function millimeters(inches) {
    const tenths = Math.round(inches * 254);
    const off = inches - tenths / 254;
    return tenths / 10 + (Math.abs(off) <= TOLERANCE.least ? '' : off > 0 ? '+' : '-');
}

function made(name, attributes = {}, ...children) {
    const element = document.createElement(name);
    Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
    element.append(...children);
    return element;
}

// A size in both units; the style shows one.
const sized = (inches) => [
    made('span', { class: 'in' }, sixteenths(inches)),
    made('span', { class: 'mm' }, millimeters(inches)),
];

function readData(root) {
    const script = root.querySelector('script.data');
    if (!script) {
        return undefined;
    }
    return readStack(script.textContent);
}

class Stack {
    // shine(light) lights every stack of the page; say(text) is heard by who does not see it.
    constructor(root, shine, say) {
        this.root = root;
        this.key = root.id;
        this.say = say;
        this.data = readData(root);
        if (this.data) {
            this.step = this.data.stages.length - 1;
            this.section = root.querySelector('.section svg');
            this.layer = lightLayer(this.section, this.data);
            this.front = this.frontDrawing();
            this.readyLights(shine);
            this.readySteps();
            this.readyPieces();
            this.all('.curve').forEach((curve) => readyCurve(curve, say));
        }
    }

    all(selector) {
        return [...this.root.querySelectorAll(selector)];
    }

    // Those with a row for each piece; the first lists the pieces.
    pieceTables() {
        return this.all('.tables table').filter((table) => table.querySelector('tr[data-piece]'));
    }

    // In place of the one for browsers that run no scripts.
    frontDrawing() {
        const svg = drawn('svg', { id: `${this.key}-front`, role: 'img', 'aria-label': 'Front of the stack under the light' });
        this.root.querySelector('.front .drawing').replaceChildren(svg);
        return svg;
    }

    readyLights(shine) {
        const fields = this.all('.lights input');
        this.all('button.light').forEach((button) => {
            button.addEventListener('click', () => shine(this.lightOf(button.dataset)));
        });
        fields.forEach((field) => {
            field.addEventListener('input', () => {
                const [altitude, azimuth] = fields.map((one) => one.valueAsNumber);
                shine({ altitude, azimuth });
            });
        });
    }

    lightOf({ altitude, azimuth, x, y }) {
        return x === undefined
            ? { altitude: Number(altitude), azimuth: Number(azimuth) }
            : { at: { x: Number(x), y: Number(y) } };
    }

    // The light that is pressed when the page is opened.
    ownLight() {
        const pressed = this.data && this.root.querySelector('button.light[aria-pressed="true"]');
        return pressed ? this.lightOf(pressed.dataset) : undefined;
    }

    readySteps() {
        this.all('button.step').forEach((button, step) => {
            button.addEventListener('click', () => {
                this.build(step);
                this.say(button.dataset[document.documentElement.dataset.unit]);
            });
        });
    }

    // Every piece of the drawing becomes a button, every name in the list of pieces too.
    readyPieces() {
        this.data.letters.forEach((letter, piece) => {
            const group = this.part('piece', piece);
            if (group) {
                const label = `${letter} ${this.data.names[piece]}`;
                Object.entries({ role: 'button', tabindex: 0, 'aria-pressed': false, 'aria-label': label }).forEach(
                    ([key, value]) => group.setAttribute(key, value),
                );
                group.addEventListener('focus', () => this.choose(piece));
                group.addEventListener('keydown', (event) => {
                    if (event.key === 'Enter' || event.key === ' ') {
                        event.preventDefault();
                        this.choose(piece);
                    }
                });
            }
        });
        this.listed().forEach((row) => {
            const head = row.querySelector('th');
            const id = `${this.key}-choose-${row.dataset.piece}`;
            head.replaceChildren(made('button', { type: 'button', class: 'choose', id }, ...head.childNodes));
        });
        this.root.addEventListener('click', (event) => {
            const touched = event.target.closest('[data-piece], [id*="-piece-"]');
            if (touched && this.root.contains(touched)) {
                this.choose(Number(touched.dataset.piece ?? touched.id.split('-').pop()));
                if (touched.closest('table')) {
                    this.root.querySelector('.section').scrollIntoView({ block: 'nearest' });
                }
            }
        });
    }

    part(what, piece) {
        return document.getElementById(`${this.key}-${what}-${piece}`);
    }

    // The rows of the list of pieces.
    listed() {
        const list = this.pieceTables()[0];
        return list ? [...list.querySelectorAll('tr[data-piece]')] : [];
    }

    choose(piece) {
        this.chosen = piece;
        this.all('.chosen').forEach((one) => one.classList.remove('chosen'));
        this.all('[aria-pressed="true"][id*="-piece-"]').forEach((one) => one.setAttribute('aria-pressed', 'false'));
        this.all(`[data-piece="${piece}"]`).forEach((one) => one.classList.add('chosen'));
        ['piece', 'hatch', 'edge', 'letter'].forEach((what) => this.part(what, piece)?.classList.add('chosen'));
        this.part('piece', piece)?.setAttribute('aria-pressed', 'true');
        this.showCard(piece);
    }

    // What the tables say of a piece, gathered under the drawing.
    showCard(piece) {
        const card = this.root.querySelector('.card');
        const tables = this.pieceTables().slice(0, 3);
        const list = made('dl');
        tables.forEach((table) => {
            table.querySelectorAll(`tr[data-piece="${piece}"] td[data-head]`).forEach((cell) => {
                if (cell.hasChildNodes()) {
                    const said = [...cell.childNodes].map((node) => node.cloneNode(true));
                    list.append(made('div', {}, made('dt', {}, cell.dataset.head), made('dd', {}, ...said)));
                }
            });
        });
        const name = made('bdi', {}, this.data.names[piece]);
        const link = made('a', { href: `#${this.key}-choose-${piece}` }, 'Its row in the tables');
        card.replaceChildren(made('h3', {}, `${this.data.letters[piece]} `, name), list, made('p', {}, link));
    }

    // Builds the stack up to a step; the last is the whole.
    build(step) {
        this.step = step;
        const stage = this.data.stages[step];
        this.root.classList.toggle('partial', step < this.data.stages.length - 1);
        this.all('button.step').forEach((button, i) => button.setAttribute('aria-pressed', String(i === step)));
        this.data.letters.forEach((_, piece) => {
            const later = piece > stage.piece && !this.data.framing.includes(piece);
            ['piece', 'hatch', 'edge', 'letter'].forEach((what) => this.part(what, piece)?.classList.toggle('later', later));
        });
        const unit = this.all('button.step')[step].dataset;
        const said = [made('span', { class: 'in' }, unit.in), made('span', { class: 'mm' }, unit.mm)];
        this.root.querySelector('.stepsays').replaceChildren(...said);
        if (this.light) {
            this.shine(this.light);
        }
    }

    shine(light) {
        this.light = light;
        const stage = this.data.stages[this.step];
        const fault = faultOf(light);
        const bands = fault ? [] : bandsOf(stage, light);
        drawBands(this.layer, bands, stage, this.data);
        drawFront(this.front, stage, bands, light, this.data.box, this.data);
        this.showDark(shadowsOf(bands, stage), stage);
        const says = this.root.querySelector('.lightsays');
        says.textContent = fault || wordsOf(light);
        says.classList.toggle('fault', fault !== '');
        this.all('button.light').forEach((button) => {
            button.setAttribute('aria-pressed', String(sameLight(this.lightOf(button.dataset), light)));
        });
        const fields = this.all('.lights input');
        if (!fields.includes(document.activeElement)) {
            [fields[0].value, fields[1].value] = light.at ? ['', ''] : [light.altitude, light.azimuth];
        }
    }

    showDark(shadows, stage) {
        const { names } = this.data;
        const cell = (head, ...what) => made('td', { role: 'cell', 'data-head': head }, ...what);
        const rows = shadows.map((shadow) => {
            const { body, name } = stage.members[shadow.member];
            const on = made('th', { role: 'rowheader', scope: 'row', 'data-head': 'on' }, made('bdi', {}, names[body]));
            const row = made('tr', { role: 'row', 'data-piece': body, 'data-member': shadow.member }, on);
            row.append(cell('member', name), cell('how', KINDS[shadow.kind]), cell('dark', ...sized(shadow.dark)));
            row.append(cell('of', ...sized(shadow.whole)));
            row.append(cell('by', ...(shadow.by ? [made('bdi', {}, names[shadow.by.body])] : [])));
            return row;
        });
        this.root.querySelector('.dark tbody').replaceChildren(...rows);
        if (this.chosen !== undefined) {
            this.all(`[data-piece="${this.chosen}"]`).forEach((one) => one.classList.add('chosen'));
        }
    }
}

const sameLight = (a, b) =>
    a.at && b.at ? near(a.at, b.at, TOLERANCE.least) : !a.at && !b.at && a.altitude === b.altitude && a.azimuth === b.azimuth;

function wordsOf(light) {
    if (light.at) {
        return 'A lamp in the room, its shadows drawn sharp.';
    }
    const side = light.azimuth === 0 ? '' : light.azimuth > 0 ? ' from the left' : ' from the right';
    const angle = sectionAngle(light.altitude, light.azimuth).toFixed(1);
    return `${light.altitude}° up, ${Math.abs(light.azimuth)}° off square${side}: ${angle}° in section.`;
}
