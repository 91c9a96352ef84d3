// A free size under the finger: its place on every curve, and the figures there.

function readyCurve(curve, say) {
    const slider = curve.querySelector('input[type="range"]');
    if (!slider) {
        return;
    }
    const rows = [...curve.querySelectorAll('table.places tbody tr')];
    const figures = [...curve.querySelectorAll('figure')];
    const show = () => {
        const row = rows[slider.valueAsNumber];
        const typed = row.querySelector('th').textContent;
        rows.forEach((one) => one.classList.toggle('chosen', one === row));
        curve.querySelector('.at').textContent = typed;
        slider.setAttribute('aria-valuetext', typed);
        [...row.querySelectorAll('td')].forEach((cell, i) => {
            const { x, y } = cell.dataset;
            const spot = figures[i].querySelector('.spot');
            spot.setAttribute('visibility', x === undefined ? 'hidden' : 'visible');
            if (x !== undefined) {
                spot.setAttribute('cx', x);
                spot.setAttribute('cy', y);
            }
            figures[i].querySelector('.value').replaceChildren(...[...cell.childNodes].map((node) => node.cloneNode(true)));
        });
    };
    slider.addEventListener('input', () => {
        show();
        say(figures.map((figure) => figure.querySelector('figcaption').innerText).join('; '));
    });
    slider.addEventListener('resume', show);
    show();
}


// The place that was chosen on an old curve of the same size; one that was left alone shows what the size is now.
function resumeCurve(curve, old) {
    const typed = (row) => row.querySelector('th').textContent.replace(/ \(now\)$/, '');
    const rows = (one) => [...one.querySelectorAll('table.places tbody tr')];
    const [slider, before] = [curve, old].map((one) => one.querySelector('input[type="range"]'));
    if (!slider || !before || before.value === before.defaultValue) {
        return;
    }
    const chosen = typed(rows(old)[before.valueAsNumber]);
    const place = rows(curve).findIndex((row) => typed(row) === chosen);
    if (place >= 0) {
        slider.value = place;
        slider.dispatchEvent(new Event('resume'));
    }
}
