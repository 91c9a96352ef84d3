package buildup.profiles.region;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Areas of unions against Clipper (Debian package python3-pyclipper), which neither is nor was ported from the overlay
 * library used here. Areas only: on slanted contacts Clipper leaves slits, which have length but no area.
 */
@Tag("long")
class ClipperTest {
    private static final double UNITS_PER_INCH = 1e6;

    @TempDir
    private static Path folder;

    private static Path script;
    private static List<String> python;

    @BeforeAll
    static void find() throws IOException {
        script = folder.resolve("union_areas.py");
        try (var in = ClipperTest.class.getResourceAsStream("/oracle/union_areas.py")) {
            Files.write(script, in.readAllBytes());
        }
        Optional<Path> found =
                interpreters().stream().filter(ClipperTest::hasClipper).findFirst();
        if (found.isEmpty() && "1".equals(System.getenv("BUILDUP_REQUIRE_TOOLS"))) {
            fail("no python3 on the path can import pyclipper (Debian: python3-pyclipper)");
        }
        assumeTrue(found.isPresent(), "no python3 with pyclipper");
        python = List.of(found.orElseThrow().toString());
    }

    /** All on the path, not the first alone: a user's own interpreter may hide the system's. */
    private static List<Path> interpreters() {
        return Arrays.stream(
                        Optional.ofNullable(System.getenv("PATH")).orElse("").split(File.pathSeparator))
                .filter(entry -> !entry.isEmpty())
                .flatMap(entry -> List.of("python3", "python3.11").stream().map(name -> Path.of(entry, name)))
                .filter(Files::isExecutable)
                .toList();
    }

    private static boolean hasClipper(Path interpreter) {
        try {
            Process process = new ProcessBuilder(interpreter.toString(), "-c", "import pyclipper")
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static List<Double> areas(List<List<Outline>> stacks) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(python);
        command.add(script.toString());
        Path input = folder.resolve("stacks.json");
        Files.writeString(input, json(stacks));
        Process process = new ProcessBuilder(command)
                .redirectInput(input.toFile())
                .redirectErrorStream(true)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(output).isZero();
        return output.lines().map(Double::valueOf).toList();
    }

    private static String json(List<List<Outline>> stacks) {
        return stacks.stream()
                .map(stack -> stack.stream().map(ClipperTest::polygon).collect(Collectors.joining(",", "[", "]")))
                .collect(Collectors.joining(",", "[", "]"));
    }

    private static String polygon(Outline outline) {
        return outline.flattened(Tolerance.CHORD).stream()
                .map(p -> "[" + Math.round(p.x() * UNITS_PER_INCH) + "," + Math.round(p.y() * UNITS_PER_INCH) + "]")
                .collect(Collectors.joining(",", "[", "]"));
    }

    private static double perimeter(List<Outline> pieces) {
        return pieces.stream().mapToDouble(Outline::perimeter).sum();
    }

    @ParameterizedTest
    @EnumSource(value = Stacks.Kind.class, mode = EnumSource.Mode.EXCLUDE, names = "NEARLY")
    void the_hard_sets_have_the_areas_that_clipper_finds(Stacks.Kind kind) throws Exception {
        List<Stacks.Stack> stacks = new Stacks(12345).many(kind, 100);
        List<Double> areas = areas(stacks.stream().map(Stacks.Stack::pieces).toList());
        for (int i = 0; i < stacks.size(); i++) {
            List<Outline> pieces = stacks.get(i).pieces();
            // all curves of these stacks face the air, so the chords of each piece err as those of the union
            double chordError = 0;
            for (int k = 0; k < pieces.size(); k++) {
                chordError += pieces.get(k).area()
                        - Chords.of(k, pieces.get(k)).polygon().getArea();
            }
            // Clipper's whole numbers move each boundary by up to half a unit each way, 0.7 of one along the slant
            double rounding = perimeter(pieces) / UNITS_PER_INCH;
            assertThat(WeldedOutlines.of(pieces).union().area() - chordError)
                    .as("%s %d", kind, i)
                    .isCloseTo(areas.get(i), within(rounding));
        }
    }

    @Test
    void stacks_thrown_together_have_the_areas_that_clipper_finds() throws Exception {
        Stacks source = new Stacks(77);
        List<List<Outline>> stacks = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            stacks.add(source.thrown());
        }
        List<Double> areas = areas(stacks);
        for (int i = 0; i < stacks.size(); i++) {
            // true curves against chords: at most 2/3 of the chord error times their length; welding has the rest
            double slack = Tolerance.CHORD * perimeter(stacks.get(i));
            assertThat(WeldedOutlines.of(stacks.get(i)).union().area())
                    .as("stack %d", i)
                    .isCloseTo(areas.get(i), within(slack));
        }
    }
}
