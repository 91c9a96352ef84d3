// The page as a whole: one unit and one light for all stacks on it, and what comes in while it is open.

const page = document.documentElement;
const place = document.getElementById('stacks');
let stacks = [];
let light;

function say(text) {
    document.getElementById('said').textContent = text;
}

function shine(next) {
    light = next;
    stacks.forEach((stack) => stack.data && stack.shine(light));
    say(faultOf(light) || wordsOf(light));
}

function begin() {
    stacks = [...place.querySelectorAll('article.stack')].map((root) => new Stack(root, shine, say));
    light ??= stacks.map((stack) => stack.ownLight()).find(Boolean);
    stacks.forEach((stack) => {
        if (stack.data) {
            stack.light = light;
            stack.build(stack.step);
        }
    });
}

// New stacks in place of the old, looked at as those were.
function exchange(markup) {
    const focused = document.activeElement?.id;
    const before = new Map(stacks.filter((stack) => stack.data).map((stack) => [stack.key, stack]));
    place.innerHTML = markup;
    begin();
    stacks.forEach((stack) => {
        const old = before.get(stack.key);
        if (stack.data && old) {
            resume(stack, old);
        }
    });
    if (focused) {
        document.getElementById(focused)?.focus({ preventScroll: true });
    }
}

// The same piece by its name, the same number of pieces up unless the whole was shown, and each free size where it was
// moved to.
function resume(stack, old) {
    const last = stack.data.stages.length - 1;
    if (old.step < old.data.stages.length - 1) {
        stack.build(Math.min(old.step, last));
    }
    const chosen = old.chosen === undefined ? -1 : stack.data.names.indexOf(old.data.names[old.chosen]);
    if (chosen >= 0 && chosen < stack.data.letters.length) {
        stack.choose(chosen);
    }
    stack.all('.curve').forEach((curve) => {
        const name = (one) => one.querySelector('h3').textContent;
        const same = old.all('.curve').find((one) => name(one) === name(curve));
        if (same) {
            resumeCurve(curve, same);
        }
    });
}

function showChanged(markup) {
    const block = document.getElementById('changed');
    block.querySelector('.what').innerHTML = markup;
    block.hidden = markup === '';
    say(block.hidden ? '' : block.textContent);
}

function showStale(lines) {
    const mark = document.getElementById('stale');
    mark.replaceChildren(...lines.map((line) => made('p', {}, line)));
    mark.hidden = lines.length === 0;
}

document.addEventListener('buildup:parts', ({ detail }) => {
    if (detail.title !== undefined) {
        document.title = detail.title;
    }
    if (detail.stacks !== undefined) {
        exchange(detail.stacks);
    }
    if (detail.changed !== undefined) {
        showChanged(detail.changed);
    }
    if (detail.stale !== undefined) {
        showStale(detail.stale);
    }
});

document.querySelectorAll('.units button').forEach((button) => {
    button.addEventListener('click', () => {
        page.dataset.unit = button.dataset.unit;
        document.querySelectorAll('.units button').forEach((one) => {
            one.setAttribute('aria-pressed', String(one === button));
        });
        say(`Sizes in ${button.textContent}`);
    });
});

// The letters of the front keep their size whatever the width of the page.
let resized;
window.addEventListener('resize', () => {
    clearTimeout(resized);
    resized = setTimeout(() => stacks.forEach((stack) => stack.data && stack.shine(light)), 150);
});

// Paper cannot be opened.
const shut = new Set();
window.addEventListener('beforeprint', () => {
    document.querySelectorAll('details:not([open])').forEach((one) => {
        shut.add(one);
        one.open = true;
    });
});
window.addEventListener('afterprint', () => {
    shut.forEach((one) => {
        one.open = false;
    });
    shut.clear();
});

page.classList.add('runs');
begin();
