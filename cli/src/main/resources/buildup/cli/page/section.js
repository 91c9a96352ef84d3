// The light on the drawing of the section.

const SVG = 'http://www.w3.org/2000/svg';

function drawn(name, attributes, parent, text) {
    const element = document.createElementNS(SVG, name);
    Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
    if (text) {
        element.textContent = text;
    }
    parent?.append(element);
    return element;
}

const KINDS = { lit: 'lit', shade: 'turned away', cast: 'in cast shadow' };
const pairOf = (p) => `${number(p.x)} ${number(p.y)}`;

// A layer in the section's own inches, y up, under the letters.
function lightLayer(svg, data) {
    const layer = drawn('g', {
        class: 'light',
        transform: `translate(${data.origin[0]} ${data.height - data.origin[1]}) scale(${data.scale} ${-data.scale})`,
    });
    const letters = svg.querySelector('[id*="-letter-"], [id*="-dimensions-"]');
    svg.insertBefore(layer, letters);
    return layer;
}

function drawBands(layer, bands, stage, data) {
    layer.replaceChildren();
    for (const band of bands) {
        const member = stage.members[band.member];
        const segment = band.segment.part(band.start, band.end);
        const path = drawn('path', { class: `band ${band.kind}`, d: pathOf(segment) }, layer);
        path.dataset.piece = member.body;
        path.dataset.member = band.member;
        path.dataset.from = pairOf(segment.from);
        path.dataset.to = pairOf(segment.to);
        drawn('title', {}, path, `${data.names[member.body]} ${member.name}: ${KINDS[band.kind]}`);
    }
    for (const { by } of bands) {
        if (by) {
            const beyond = minus(by.arris, by.edge);
            const far = plus(by.arris, beyond, 1 / Math.max(0.25, Math.hypot(beyond.x, beyond.y)));
            const path = drawn('path', { class: 'ray', d: `M${pairOf(by.edge)} L${pairOf(far)}` }, layer);
            path.dataset.piece = by.body;
        }
    }
}
