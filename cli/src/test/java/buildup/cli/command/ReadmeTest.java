package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.engine.mill.quote.Order;
import buildup.shared.document.Claims;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notices;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README says is so. */
class ReadmeTest {
    private static final String README = Ran.read(Path.of("../README.md"));
    private static final String KEYS = Ran.read(Path.of("guide/keys.md"));

    /** Every key of the language, in as many entries as it takes. */
    private static final String EVERY_KEY = """
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
            parts: { architrave: [c], frieze: [a], cornice: [b] }
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
              - { name: n, piece: a, use: 15 ga x 2, at: { out: 1/2, up: 1 }, angle: 0, spacing: 16, per: 2, after: a }
            pieces:
              - { name: a, kind: trim, grain: run, cut: flat, spread: { width: 1/32, thickness: 1/64 }, profile: board 3/4 x 3, wood: red-oak, rip: { top: lap, bottom: 1/8, back: 1/16, face: 1/16 }, back: wall, bottom: 0, fixed: wall, leave-out: no }
              - { name: b, section: [out 1, up 1], lay: flat, turn: 90, spring: 38, flip: over, face: wall + 1, top: a.top }
              - { name: c, profile: board 1 x 1, at: { top: a.bottom }, back: wall }
            """;

    /** The same of an order. */
    private static final String EVERY_KEY_OF_AN_ORDER = """
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

    private static SortedSet<String> listed(String from, String to) {
        String keys = KEYS.substring(KEYS.indexOf(from), to.isEmpty() ? KEYS.length() : KEYS.indexOf(to));
        SortedSet<String> listed = new TreeSet<>();
        for (String row : keys.lines().filter(line -> line.startsWith("| `")).toList()) {
            Matcher key = Pattern.compile("`([^`]+)`").matcher(row.substring(0, row.indexOf(" |", 2)));
            while (key.find()) {
                listed.add(key.group(1));
            }
        }
        return listed;
    }

    /** The keys asked for that hold a value themselves; what stands below a named length or an own edge is its user's. */
    private static SortedSet<String> asked() {
        Notices notices = new Notices();
        Streams streams = Streams.of(
                new ByteArrayInputStream(EVERY_KEY.getBytes(UTF_8)),
                new ByteArrayOutputStream(),
                new ByteArrayOutputStream());
        StackLoader loader = new StackLoader(new InputFiles(streams, notices), notices);
        loader.load("-", List.of());
        SortedSet<String> asked = loader.asked();
        return asked.stream()
                .map(key -> key.startsWith("sizes.") ? "sizes" : key)
                .filter(key -> asked.stream().noneMatch(other -> other.startsWith(key + ".")) || key.equals("sizes"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void every_key_that_a_stack_may_hold_is_in_the_list_and_no_other() {
        assertThat(listed("## Keys of a stack\n", "## Keys of an order")).isEqualTo(asked());
    }

    @Test
    void every_key_that_an_order_may_hold_is_in_the_list_and_no_other() {
        Notices notices = new Notices();
        Claims claims = new Claims();
        Order.read(
                DocumentReader.read("order.yaml", EVERY_KEY_OF_AN_ORDER.getBytes(UTF_8), notices)
                        .orElseThrow(),
                Catalog.builtIn(),
                claims,
                notices);
        assertThat(notices.sorted()).isEmpty();
        SortedSet<String> asked = new TreeSet<>(claims.asked());
        asked.removeAll(List.of("items", "sheet"));
        assertThat(listed("## Keys of an order", "")).isEqualTo(asked);
    }

    @Test
    void the_order_of_the_readme_and_of_the_demo_are_quoted() {
        String example = KEYS.substring(KEYS.indexOf("title: Reading-room moldings"));
        Ran ran = Ran.with(example.substring(0, example.indexOf("```")).getBytes(UTF_8), "quote", "-");
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        Ran demo = Ran.of("quote", Ran.demo("reading-room-order.yaml").toString());
        assertThat(demo.code()).as(demo.err()).isEqualTo(ExitCode.CLEAN);
    }

    @Test
    void a_key_that_stands_nowhere_in_the_list_is_refused_with_the_nearest_one_that_does() {
        Ran ran = Ran.report(
                "tittle: x\nwood: red-oak\npieces: [{ name: a, profile: board 1 x 1, back: wall, bottom: 0 }]\n");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).isEqualTo("refusal  stdin:1:1  No key is called 'tittle' here. Did you mean title?\n");
    }

    @Test
    void the_example_of_the_stack_language_reports_clean() {
        String example = README.substring(README.indexOf("title: Reading-room bookcase cornice"));
        Ran ran = Ran.report(example.substring(0, example.indexOf("```")));
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
    }

    @Test
    void every_demo_reports_clean() {
        for (String demo : List.of("cornice", "door-head", "wainscot-cap", "case")) {
            Ran ran =
                    Ran.of("report", Ran.demo("reading-room-" + demo + ".yaml").toString());
            assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        }
    }

    @Test
    void every_link_of_the_readme_and_the_guide_leads_somewhere() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(Path.of("../README.md"), Path.of("../DEVELOPERS.md")));
        try (Stream<Path> guide = Files.list(Path.of("guide"))) {
            guide.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
        }
        assertThat(pages).hasSizeGreaterThan(6);
        for (Path page : pages) {
            Matcher link = Pattern.compile("\\]\\(([^)#]*)(?:#([^)]+))?\\)").matcher(Ran.read(page));
            while (link.find()) {
                Path target = link.group(1).isEmpty() ? page : page.resolveSibling(link.group(1));
                assertThat(target).as("%s in %s", link.group(1), page).exists();
                if (link.group(2) != null) {
                    assertThat(anchors(target))
                            .as("%s in %s", link.group(), page)
                            .contains(link.group(2));
                }
            }
        }
    }

    /** The headings of a page as links name them: small letters, blanks as hyphens, no other signs. */
    private static List<String> anchors(Path page) throws IOException {
        return Ran.read(page)
                .lines()
                .filter(line -> line.matches("#+ .*"))
                .map(line -> line.replaceFirst("#+ ", "").toLowerCase(Locale.ROOT))
                .map(line -> line.replaceAll("[^a-z0-9 -]", "").replace(' ', '-'))
                .toList();
    }

    @Test
    void the_words_of_the_table_draw() {
        for (String words : List.of(
                "out 1, up 3/4, fillet 1/8, chamfer 1/4 x 1/2",
                "out 1/4, cove 1/2 x 3/8, ovolo 1/2",
                "out 1/4, greek cove 1/2 x 3/8, greek ovolo 1/2 x 3/8",
                "out 1/4, hollow 1/2 x 3/8 x 3/4, round 1/2 x 3/8 x 3/4",
                "out 1/4, cyma recta 1 x 3/4, cyma reversa 1 x 3/4",
                "out 1, scotia 3/4 x 1/4, up 1/4",
                "out 1, up 1/4, bead 1/4, torus 1/2, astragal 1/4, up 1/4",
                "out 1, bead up 3/4",
                "out 1, up 1/2, quirk 1/16 x 1/8, up 2",
                "out 1/2, drip 1/4 x 1/4, out 1/2, up 1",
                "out 3/4, rabbet 3/8 x 3/4, up 1/4",
                "out 1, up to 2")) {
            Ran ran = Ran.report("pieces: [{ name: a, section: [" + words + "], back: wall, bottom: 0 }]\n");
            assertThat(ran.code()).as(words + ran.err()).isLessThan(ExitCode.REFUSED);
        }
    }

    @Test
    void the_picture_of_the_readme_is_the_one_that_its_first_command_draws(@TempDir Path folder) {
        Path drawn = folder.resolve("cornice.svg");
        Ran.of("draw", Ran.demo("reading-room-cornice.yaml").toString(), "-o", drawn.toString());
        assertThat(Ran.read(drawn)).isEqualTo(Ran.read(Ran.demo("reading-room-cornice.svg")));
    }
}
