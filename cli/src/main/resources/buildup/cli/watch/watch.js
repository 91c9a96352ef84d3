
(() => {
'use strict';

// Follows the file. The program says which version of the picture is newest, and the page asks for its parts. While the
// program does not answer, the page says so, since what it shows may be out of date.
let version = 0 /* version */;
let newest = version;
let cut = false;
let asking = false;

const CUT = 'Not connected: what you see may be out of date. Is the program still running?';
const AGAIN_MS = 2000;

function tell(detail) {
    document.dispatchEvent(new CustomEvent('buildup:parts', { detail }));
}

function lost() {
    if (!cut) {
        cut = true;
        tell({ stale: [CUT] });
    }
}

// What the user has folded open stays open.
function show(parts) {
    const open = document.querySelector('#changed details')?.open;
    tell(parts);
    if (open) {
        document.querySelector('#changed details')?.setAttribute('open', '');
    }
}

async function fetchParts() {
    const answer = await fetch('parts', { cache: 'no-store' });
    if (!answer.ok) {
        throw new Error(answer.statusText);
    }
    return answer.json();
}

async function catchUp() {
    if (asking) {
        return;
    }
    asking = true;
    try {
        while (version !== newest || cut) {
            const parts = await fetchParts();
            cut = false;
            version = parts.version;
            newest = Math.max(newest, version);
            show(parts);
            document.documentElement.dataset.version = version;
        }
    } catch {
        lost();
    } finally {
        asking = false;
    }
}

function follow() {
    const versions = new EventSource('events');
    versions.onmessage = (message) => {
        newest = Number(message.data);
        catchUp();
    };
    versions.onerror = () => {
        lost();
        // the browser tries again by itself, unless it was turned away
        if (versions.readyState === EventSource.CLOSED) {
            setTimeout(follow, AGAIN_MS);
        }
    };
}

document.documentElement.dataset.version = version;
addEventListener('pageshow', (shown) => {
    if (shown.persisted) {
        location.reload();
    }
});
follow();
})();
