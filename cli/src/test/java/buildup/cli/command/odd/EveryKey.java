package buildup.cli.command.odd;

import buildup.cli.Ran;
import java.nio.file.Path;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Documents that hold every key of the language, and the guide's list of those keys. */
public final class EveryKey {
    private static final String KEYS = Ran.read(Path.of("guide/keys.md"));
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");

    /** Every key of the language, in as many entries as it takes. */
    public static final String STACK = """
            title: All keys
            job: { name: a, client: b, address: c, number: 1, drawn-by: d, checked-by: e, date: f, scale-note: g, revision: B }
            templates: { bearing: 1/2, bushing: 5/8, bit: 1/4 }
            ends: [{ name: scroll, section: [out 3, up 1] }, { name: s, profile: cove 3/4 x 3/4 }]
            revisions: [{ letter: A, date: then, change: what }]
            units: in
            wood: yellow-poplar
            boards: softwood
            catalog: none.yaml
            sizes: { lap: 1/2 }
            wish: [least change]
            space: { floor: -84, ceiling: { height: 12, slope: 0 in 12 }, projection: 8, wall: { from: -84, to: 12, solid: yes, covering: 1/2 } }
            eyes: [{ name: standing, distance: 72, height: floor + 60 }]
            approach:
              - { name: door, from: { distance: 140, height: 0 }, to: { distance: 24, height: 0 } }
            lights:
              - { name: far, altitude: 30, azimuth: 20 }
              - { name: lamp, at: { distance: 40, height: 0 }, width: 4 }
              - { name: sun, latitude: 42, longitude: -71, day: 21 June, hour: 15, utc-offset: -5, faces: 180, window: 180 }
            plan:
              - name: case
                around: room
                studs: { every: 16, first: 12, width: 1-1/2, top-plate: 3, bottom-plate: 1-1/2 }
                joists: { every: 16, first: 12, width: 1-1/2, run: out }
                left: { end: die, corner: 90, plumb: { out: 1/8, over: 96 }, pieces: [] }
                right: { end: die, plumb: { out: 1/8, over: 96 } }
                inside: miter
                entry: { stretch: front, at: 20 }
                grain: a
                stretches:
                  - { name: front, length: 96, corner: inside 90, cope: no, plumb: { out: 1/8, over: 96 }, ceiling: [[0, 12]], floor: [[0, -84]], wall: [[0, 0]], pieces: [a, b, c], block: 0, studs: [12], joists: [12] }
                  - { name: side, length: 40, openings: [{ name: door, from: 10, to: 30, bottom: 0, top: 9, pieces: [a], ends: butt, casing: 3/4 }] }
            supplies:
              fasteners: [{ of: 15 ga x 2, box: 1000, on-hand: 5 }]
              glue: {}
              adhesive: {}
              filler: {}
              primer: {}
              paint: {}
            stock:
              kerf: 1/8
              rip-kerf: 1/8
              trim: 1/2
              offcut: 12
              hold: 12
              aim: fewest
              sticks: [{ of: 1x4, wood: red-oak, buy: 8', on-hand: 3 x 61, price: 1.20, per: foot }]
              joints: { miter: 1, cope: 1, return: 1, butt: 1, square: 1, scarf: 1 }
            table-saw-cove: [{ name: c, width: 3, depth: 3/4, blade: 10, kerf: 1/8 }]
            seasons: [{ name: built, moisture: 8 % }, { name: winter, temperature: 68 F, humidity: 25 % }]
            tolerance: { builds: 100, seed: 1, shape: normal, plumb: { out: 1/8, over: 96 }, ceiling: 1/8 }
            parts: { architrave: [c], frieze: [a], cornice: [b, d, e] }
            proportion: { beside: Doric, room: 96, opening: { width: 30, height: 80 } }
            firebox: { top: -20, left: 12, right: 48, rules: [IRC 2018], noncombustible: [c], beside: [{ name: leg, from: 0, to: 3, out: 1 }] }
            keep-clear:
              - { name: track, kind: box, back: 9, face: 10, bottom: 2, top: 3, clear: 1/4 }
              - { name: roller, kind: shade, roll: 2, back: 9, bottom: 2, top: 5 }
              - { name: leaf, kind: door, width: 30, bottom: -80, top: -10 }
              - { name: side, kind: side-wall, away: 20 }
              - { name: head, kind: sprinkler, out: 30, up: 10, clear: 4 }
            loads: [{ name: hand, on: a, out: 1/2, load: 20 lb/ft }]
            bench: { top: [a, b] }
            fastenings:
              - { name: n, piece: a, use: 15 ga x 2, at: { out: 1/2, up: 1 }, angle: 0, spacing: 16, per: 2, bored: yes, after: a }
            pieces:
              - { name: a, kind: trim, grain: run, cut: flat, spread: { width: 1/32, thickness: 1/64 }, profile: board 3/4 x 3, wood: red-oak, rip: { top: lap, bottom: 1/8, back: 1/16, face: 1/16 }, back: wall, bottom: 0, fixed: wall, leave-out: no }
              - { name: b, section: [out 1, up 1], turn: 90, face: a.face + 1, top: a.top }
              - { name: d, profile: board 3/4 x 2, lay: flat, flip: over, back: wall, bottom: a.top }
              - { name: e, profile: plain-crown 3-1/4, spring: 38, back: a.face, bottom: d.top }
              - { name: c, profile: board 1 x 1, at: { top: a.bottom }, back: wall }
            """;

    /** The same of an order. */
    public static final String ORDER = """
            title: All keys
            units: in
            boards: softwood
            catalog: none.yaml
            valid-until: then
            rates: example
            mill: usual
            head: molder head
            wood: red-oak
            quantities: [100]
            sheet: { number: 1, revision: A, date: then, customer: [one, two], mill: a mill, terms: t, tax: 1 %, deposit: 5 %, note: n }
            items:
              - { name: a, wood: red-oak, profile: cove 3/4 x 3/4, feet: 1, lengths: 12', board: 8, knife: new, waste: simple, finish: sanded }
              - { name: b, section: [out 1, up 1], meters: 1 }
            """;

    private EveryKey() {}

    /** The keys of a stack that the guide lists, as {@code space.wall.from}. */
    public static SortedSet<String> listedOfAStack() {
        return listed(KEYS.substring(KEYS.indexOf("## Keys of a stack\n"), KEYS.indexOf("## Keys of an order")));
    }

    /** The same of an order. */
    public static SortedSet<String> listedOfAnOrder() {
        return listed(KEYS.substring(KEYS.indexOf("## Keys of an order")));
    }

    private static SortedSet<String> listed(String keys) {
        SortedSet<String> listed = new TreeSet<>();
        for (String row : keys.lines().filter(line -> line.startsWith("| `")).toList()) {
            Matcher key = QUOTED.matcher(row.substring(0, row.indexOf(" |", 2)));
            while (key.find()) {
                listed.add(key.group(1));
            }
        }
        return listed;
    }
}
