// How a light falls on the walk along the room side.

const degrees = (radians) => (radians * 180) / Math.PI;
const radians = (angle) => (angle * Math.PI) / 180;

// tan a = tan h / cos z, in degrees.
function sectionAngle(altitude, azimuth) {
    const h = radians(altitude);
    return degrees(Math.atan2(Math.sin(h), Math.cos(h) * Math.cos(radians(azimuth))));
}

const viewOf = (light) => (light.at ? nearBy(light.at) : farAway(radians(sectionAngle(light.altitude, light.azimuth))));

// Why a light cannot be shown; empty when it can.
function faultOf(light) {
    if (light.at) {
        return '';
    }
    if (!(light.altitude >= 0 && light.altitude <= 90)) {
        return 'Give an altitude from 0 to 90 degrees.';
    }
    if (!(Math.abs(light.azimuth) <= 90)) {
        return 'Give an azimuth from -90 to 90 degrees: beyond that the light is behind the wall.';
    }
    // nearer to upright than this, a ray meets no face
    return sectionAngle(light.altitude, light.azimuth) > 90 - TOLERANCE.upright
        ? 'The light runs along the wall and lights none of it: bring it lower or nearer to square.'
        : '';
}

// The whole walk, cut where the light changes: lit, shade (turned away) or cast (turned to the light, wood in between).
// A cast stretch that ends in light knows what casts it there: by = { body, arris, edge }.
function bandsOf(stage, light) {
    const view = viewOf(light);
    const walls = wallsOf(view, stage.surfaces);
    const bands = [];
    stage.members.forEach((member, number) => {
        for (const segment of member.segments) {
            bandsOn(segment, view, walls, (kind, start, end, by) => {
                if ((end - start) * segment.length > TOLERANCE.least) {
                    bands.push({ member: number, kind, segment, start, end, by });
                }
            });
        }
    });
    return bands;
}

function bandsOn(segment, view, walls, add) {
    let at = 0;
    for (const sweep of facing(view, segment)) {
        add('shade', at, sweep.start);
        at = sweep.start;
        let caster;
        for (const stretch of seen(sweep, walls)) {
            add('cast', at, stretch.start, caster ?? casting(stretch.before, segment.at(stretch.start), false));
            add('lit', stretch.start, stretch.end);
            at = stretch.end;
            caster = casting(stretch.after, segment.at(stretch.end), true);
        }
        add('cast', at, sweep.end, caster);
        at = sweep.end;
    }
    add('shade', at, 1);
}

// The corner of a wall whose ray ends a shadow; the shadow lies on the side of the wall's greater keys, or lesser.
function casting(wall, edge, greater) {
    return wall && { body: wall.body, arris: wall.segment.at(greater ? wall.start : wall.end), edge };
}

// Dark stretches in a row on one member, dark in one way, are one shadow.
function shadowsOf(bands, stage) {
    const shadows = [];
    let last;
    for (const band of bands) {
        if (last && last.member === band.member && last.kind === band.kind) {
            last.dark += (band.end - band.start) * band.segment.length;
            last.by ??= band.by;
        } else {
            last = { member: band.member, kind: band.kind, by: band.by, dark: (band.end - band.start) * band.segment.length };
            shadows.push(last);
        }
    }
    shadows.forEach((shadow) => {
        shadow.whole = stage.members[shadow.member].segments.reduce((sum, one) => sum + one.length, 0);
    });
    return shadows.filter((shadow) => shadow.kind !== 'lit');
}
