package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Text, page, JSON, the short verdict, the picture of what holds and the exit code tell one and the same of a stack. */
class OneAnswerEverywhereTest {
    private static final int STACKS = Integer.getInteger("buildup.agree", 5);

    private static final Map<String, String> WORDS = Map.of("no", "NO", "look", "look", "yes", "yes", "trust", "trust");

    @TempDir
    private Path folder;

    /** Boards laid on a case, more or less far out, some nailed, some loaded, some a little off what is behind them. */
    private static String stack(long seed) {
        Random random = new Random(seed);
        StringBuilder yaml = new StringBuilder("""
                title: agree
                wood: yellow-poplar
                space: { floor: -84, ceiling: 30, wall: { solid: no } }
                eyes: [{ name: standing, distance: 72, height: floor + 60 }]
                pieces:
                  - { name: case, kind: framing, section: [out 14, up 90], face: wall, top: 0 }
                """);
        StringBuilder nails = new StringBuilder();
        String below = "case";
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            double width = 2 + random.nextInt(24) / 4.0;
            double back = -3 + random.nextInt(24) / 4.0;
            yaml.append(String.format(
                    Locale.ROOT,
                    "  - { name: b%d, profile: board 3/4 x %.2f, lay: flat, back: %.2f, bottom: %s.top%s }%n",
                    i,
                    width,
                    back,
                    below,
                    random.nextInt(6) == 0 ? " + 1/16" : ""));
            if (random.nextInt(3) == 0) {
                nails.append(String.format(
                        Locale.ROOT,
                        "  - { name: n%d, piece: b%d, use: %s, at: { out: %.2f, up: b%d.top }, spacing: 12 }%n",
                        i,
                        i,
                        random.nextBoolean() ? "screw 8 x 2" : "16 ga x 1-1/2",
                        back + 0.5,
                        i));
            }
            below = random.nextInt(4) == 0 ? below : "b" + i;
        }
        if (!nails.isEmpty()) {
            yaml.append("fastenings:\n").append(nails);
        }
        if (random.nextInt(3) == 0) {
            yaml.append("loads:\n  - { name: lamp, on: b0, out: 1/2, load: ")
                    .append(1 + random.nextInt(20))
                    .append(" lb/ft }\n");
        }
        return yaml.toString();
    }

    @Tag("sampled")
    @Test
    void of_stacks_at_random() throws IOException {
        Map<String, Integer> answers = new TreeMap<>();
        int falls = 0;
        for (long seed = 1; seed <= STACKS; seed++) {
            Path file = Files.writeString(folder.resolve("s" + seed + ".yaml"), stack(seed));
            Ran json = Ran.of("report", file.toString(), "--format", "json");
            JsonNode report = new JsonMapper().readTree(json.out());
            String as = "seed " + seed + "\n" + stack(seed);
            Ran text = Ran.of("report", file.toString());
            Ran html = Ran.of("report", file.toString(), "--format", "html");
            Ran check = Ran.of("check", file.toString());
            boolean wrong = false;
            assertThat(report.at("/verdict").size()).as(as).isGreaterThan(4);
            for (JsonNode row : report.at("/verdict")) {
                String question = row.get("question").asString();
                String answer = row.get("answer").asString();
                wrong |= answer.equals("no");
                answers.merge(question + " " + answer, 1, Integer::sum);
                String line = String.format(" %-6s%s ", WORDS.get(answer), question);
                assertThat(text.out()).as(as).containsOnlyOnce("\n" + line);
                assertThat(html.out())
                        .as(as)
                        .contains("<div class=\"" + answer + "\"><dt><span class=\"answer\">" + answer + "</span> "
                                + question + "</dt>");
                assertThat(check.out().contains("\n" + line)).as(as).isEqualTo(!answer.equals("yes"));
            }
            for (Ran ran : List.of(json, text, html, check)) {
                assertThat(ran.code()).as(as).isEqualTo(wrong ? ExitCode.PROBLEM : ExitCode.CLEAN);
            }
            falls += picture(file, report, as) ? 1 : 0;
        }
        assertThat(answers).containsKeys("stands no", "stands yes");
        assertThat(falls).isGreaterThan(0);
    }

    /** The picture names what falls just when the whole does not stand, and then the verdict says no. */
    private boolean picture(Path file, JsonNode report, String as) throws IOException {
        Path svg = folder.resolve("holds.svg");
        Files.deleteIfExists(svg);
        Ran.of("draw", file.toString(), "--view", "holds", "-o", svg.toString());
        boolean falls = StreamSupport.stream(report.at("/support/balances").spliterator(), false)
                .anyMatch(balance -> balance.get("keptBy").asString().equals("nothing"));
        boolean stands = report.at("/support/whole/stands").asBoolean();
        assertThat(Ran.read(svg).contains("falls: ") || Ran.read(svg).contains("falls, though"))
                .as(as)
                .isEqualTo(!stands);
        assertThat(stands && falls).as(as).isFalse();
        boolean no = report.at("/verdict/0/answer").asString().equals("no");
        assertThat(!stands && !no).as(as).isFalse();
        return falls;
    }
}
