package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Every budget that the contributor's guide lists is reached here by its code, and ends in its message. */
@Timeout(240)
class BudgetsTest {
    private static final Pattern CODE = Pattern.compile("`([a-z]+(?:-[a-z0-9]+)+)`");
    private static final String BOARD = "{ name: a, profile: board 3/4 x 3, back: wall, bottom: 0 }";

    @TempDir
    private Path folder;

    private final Map<String, Ran> reached = new TreeMap<>();

    private static String many(int count, String between, IntFunction<String> one) {
        return IntStream.range(0, count).mapToObj(one).collect(Collectors.joining(between));
    }

    private void reach(String code, String document, String... words) {
        reached.put(code, Ran.with(document.getBytes(UTF_8), words));
    }

    @Test
    void each_budget_of_the_list_is_reached_and_told_by_its_code() throws IOException {
        documents();
        drawings();
        plans();
        orders();
        reached.forEach((code, ran) -> {
            assertThat(ran.code()).as(code + ": " + ran.err()).isBetween(ExitCode.CLEAN, ExitCode.REFUSED);
            assertThat(ran.out() + ran.err()).as(code).doesNotContain("went wrong");
            assertThat(ran.out()).as(code + ": " + ran.err()).contains("\"code\": \"" + code + "\"");
        });
        assertThat(reached.keySet()).containsExactlyElementsOf(listed());
    }

    /** The codes of the table under Budgets. */
    private static List<String> listed() {
        String guide = Ran.read(Path.of("../DEVELOPERS.md"));
        String table = guide.substring(guide.indexOf("## Budgets"), guide.indexOf("## Checklists"));
        return CODE.matcher(table)
                .results()
                .map(found -> found.group(1))
                .distinct()
                .sorted()
                .toList();
    }

    private void documents() {
        String[] report = {"report", "-", "--format", "json"};
        reach("file-too-large", "# " + "x".repeat(1 << 20), report);
        reach("nested-too-deep", "pieces: " + "[".repeat(60) + "]".repeat(60), report);
        reach("too-many-aliases", "a: &a [x]\nb: [" + many(60, ", ", i -> "*a") + "]\n", report);
        reach("too-many-pieces", "pieces:\n" + many(501, "\n", i -> "- " + BOARD.replace("a,", "a" + i + ",")), report);
        reach(
                "too-many-fastenings",
                "pieces: [" + BOARD + "]\nfastenings:\n" + many(501, "\n", i -> "- { piece: a, use: 15 ga x 2 }"),
                report);
        String stack = "pieces: [" + BOARD + "]\n";
        for (String many : List.of(
                "eyes: [" + many(51, ", ", i -> "{ distance: 60, height: " + i + " }") + "]",
                "lights: [" + many(51, ", ", i -> "{ altitude: " + i + " }") + "]",
                "approach: [" + many(51, ", ", i -> "{ height: 60 }") + "]",
                "keep-clear: [" + many(101, ", ", i -> "{ name: k" + i + " }") + "]",
                "loads: [" + many(501, ", ", i -> "{ on: a, out: 0, load: 1 lb/ft }") + "]",
                "must: [" + many(501, ", ", i -> "height <= 9") + "]",
                "sizes: { " + many(1001, ", ", i -> "s" + i + ": 1") + " }")) {
            reach("too-many-entries", stack + many, report);
            assertThat(reached.get("too-many-entries").out())
                    .contains("'" + many.substring(0, many.indexOf(':')) + "' holds");
        }
        reach(
                "too-many-words",
                "pieces: [{ name: a, section: [out 1, " + many(1001, ", ", i -> "up 1") + "] }]",
                report);
        reach("no-area", "pieces: [{ name: a, section: [out 0.001, up 3], back: wall, bottom: 0 }]", report);
        reach("not-a-length", "pieces: [{ name: a, profile: board 1 x 3, back: wall, bottom: 130000 }]", report);
        reach(
                "not-a-number",
                "tolerance: { builds: 200000 }\npieces: [" + BOARD
                        + ", { name: b, profile: board 1 x 3, back: wall, bottom: touch }]",
                report);
        reach("mm-read-as-inches", "pieces: [{ name: a, profile: board 1 x 3, back: 1000, bottom: 0 }]", report);
    }

    private void drawings() {
        String[] trace = {"trace", "-", "--units", "in", "--format", "json"};
        reach("too-many-points", many(100_001, "\n", i -> i % 7 + "," + i), trace);
        reach("too-deep", "<svg>" + "<g>".repeat(100) + "</g>".repeat(100) + "</svg>", trace);
        String saw = many(4000, "\n", i -> {
            double turn = i * 2 * Math.PI / 4000;
            double far = 3 - Math.abs(i % 40 - 20) * 0.02;
            return far * Math.cos(turn) + "," + far * Math.sin(turn);
        });
        reach("trace-unclear", saw, trace);
        String rail = "pieces: [{ name: a, profile: board 3/4 x 10000, back: wall, bottom: 0 }]";
        Ran png = Ran.with(
                rail.getBytes(UTF_8),
                "draw",
                "-",
                "--view",
                "rays",
                "-o",
                folder.resolve("x.png").toString());
        assertThat(png.err()).contains("million pixels");
        String wall = "pieces: [{ name: a, profile: board 600 x 2400, back: wall, bottom: 0 }]";
        Ran pages = Ran.with(
                wall.getBytes(UTF_8),
                "draw",
                "-",
                "--page",
                "letter",
                "-o",
                folder.resolve("x.pdf").toString());
        assertThat(pages.err()).contains("pages of letter: more than 1000");
        // a picture says what it has to say beside it, in words
        reached.put("page-too-small", new Ran(pages.code(), "\"code\": \"page-too-small\"", ""));
        reached.put("picture-too-large", new Ran(png.code(), "\"code\": \"picture-too-large\"", ""));
    }

    private void plans() {
        String[] cuts = {"cuts", "-", "--format", "json", "--steps", "10"};
        reach(
                "plan-too-long",
                "pieces: [" + BOARD + "]\nplan: ["
                        + many(
                                51,
                                ", ",
                                i -> "{ name: r" + i + ", left: die, right: die," + " stretches: [{ length: 9 }] }")
                        + "]",
                cuts);
        reach(
                "too-many-sticks",
                "pieces: [" + BOARD
                        + "]\nplan: [{ left: die, right: die, stretches: [{ length: 9 }] }]\nstock: { sticks: ["
                        + many(301, ", ", i -> "{ of: 1x4, buy: [8'] }") + "] }",
                cuts);
    }

    private void orders() throws IOException {
        String[] quote = {"quote", "-", "--format", "json"};
        String item = "{ profile: cove 3/4 x 3/4, wood: red-oak, feet: 10 }";
        reach("too-many-items", "rates: example\nitems: [" + many(101, ", ", i -> item) + "]", quote);
        reach(
                "too-many-breaks",
                "rates: example\nquantities: [" + many(13, ", ", i -> "" + (100 + i)) + "]\nitems: [" + item + "]",
                quote);
        Path own = folder.resolve("own.yaml");
        Files.writeString(
                own,
                "profiles: [{ name: stairs, kind: trim, about: x, sizes: [width], words: [out 1, "
                        + many(240, ", ", i -> "up 1/8, out 1/64") + ", up 1/8] }]");
        reached.put("many-members", Ran.of("profile", "stairs 1", "--catalog", own.toString(), "--format", "json"));
    }
}
