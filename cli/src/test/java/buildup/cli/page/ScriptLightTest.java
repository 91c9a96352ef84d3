package buildup.cli.page;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.OutsideTool;
import buildup.cli.command.Typed;
import buildup.cli.drawing.section.ScreenDrawing;
import buildup.cli.report.RandomStacks;
import buildup.cli.scene.TextMeasure;
import buildup.cli.write.ShippedFont;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page's script works with the program's tolerances and comes to the program's answers. */
class ScriptLightTest {
    private static final Path CHECKS = Path.of("src/test/browser").toAbsolutePath();
    private static final Path SCRIPTS =
            Path.of("src/main/resources/buildup/cli/page").toAbsolutePath();

    /** How many random stacks; more in the long run, and by the system property. */
    private static final int STACKS = Integer.getInteger("buildup.lit.stacks", 3);

    private static final int LIGHTS = 4;

    @TempDir
    private Path folder;

    @Tag("sampled")
    @Test
    void light_of_any_kind_falls_on_random_stacks_as_the_engine_says() throws Exception {
        TextMeasure measure = ShippedFont.load();
        List<String> lines = new ArrayList<>(List.of(StackData.tolerances()));
        for (long seed = 1; lines.size() <= STACKS; seed++) {
            Answer answer = Typed.of(RandomStacks.of(seed));
            Random random = new Random(seed);
            answer.known().ifPresent(known -> lines.add(lit(known, random, measure)));
        }
        Path cases = Files.write(folder.resolve("cases.txt"), lines, UTF_8);
        OutsideTool.Run run = OutsideTool.run(folder, "node", CHECKS.resolve("bands.mjs"), SCRIPTS, cases);
        assertThat(run.code()).as(run.output()).isZero();
        assertThat(run.output()).startsWith(STACKS + " stacks, ");
    }

    @Test
    void the_script_holds_no_tolerance_of_its_own() throws IOException {
        Pattern small = Pattern.compile("\\d[eE]-\\d|(?<![\\w.])0?\\.0\\d*[1-9]|1 / \\d{2,}");
        try (Stream<Path> scripts = Files.list(SCRIPTS)) {
            List<Path> all =
                    scripts.filter(path -> path.toString().endsWith(".js")).toList();
            assertThat(all).hasSizeGreaterThan(5);
            assertThat(all)
                    .allSatisfy(path -> assertThat(Files.readString(path))
                            .as(path.getFileName().toString())
                            .doesNotContainPattern(small));
        }
    }

    private static String lit(Answers known, Random random, TextMeasure measure) {
        Section section = known.section();
        List<Light> lights = new ArrayList<>();
        for (int i = 0; i < LIGHTS; i++) {
            lights.add(i % 2 == 0 ? distant(random) : lamp(section, random));
        }
        String data = StackData.of(known, ScreenDrawing.of(section, measure));
        String answers = LightAnswers.of(section, lights).written();
        return ("{\"data\": " + data + ", " + answers.substring(1)).replace("\n", " ");
    }

    private static Light distant(Random random) {
        return new Light.Distant("", 88 * random.nextDouble(), 160 * random.nextDouble() - 80, Optional.empty());
    }

    /** Beyond all wood, below and above it. */
    private static Light lamp(Section section, Random random) {
        double out = section.totals().projection() + 6 + 60 * random.nextDouble();
        return new Light.Lamp("", new Point(out, 60 * random.nextDouble() - 50), 0, Optional.empty());
    }
}
