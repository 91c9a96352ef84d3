package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.cli.command.odd.EveryKey;
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

    /** The keys asked for that hold a value themselves; what stands below a named length or an own edge is its user's. */
    private static SortedSet<String> asked() {
        Notices notices = new Notices();
        Streams streams = Streams.of(
                new ByteArrayInputStream(EveryKey.STACK.getBytes(UTF_8)),
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
        assertThat(EveryKey.listedOfAStack()).isEqualTo(asked());
    }

    @Test
    void every_key_that_an_order_may_hold_is_in_the_list_and_no_other() {
        Notices notices = new Notices();
        Claims claims = new Claims();
        Order.read(
                DocumentReader.read("order.yaml", EveryKey.ORDER.getBytes(UTF_8), notices)
                        .orElseThrow(),
                Catalog.builtIn(),
                claims,
                notices);
        assertThat(notices.sorted()).isEmpty();
        SortedSet<String> asked = new TreeSet<>(claims.asked());
        asked.removeAll(List.of("items", "sheet"));
        assertThat(EveryKey.listedOfAnOrder()).isEqualTo(asked);
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
