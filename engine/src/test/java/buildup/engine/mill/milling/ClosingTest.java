package buildup.engine.mill.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Outside;
import buildup.profiles.Profile;
import buildup.profiles.outline.Outline;
import buildup.profiles.rolling.Rolling;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a round cutter leaves of every profile of the catalog against the same outline offset out and in again by Clipper
 * (Debian package python3-pyclipper), which shares no code with this project nor with its overlay library.
 */
@Tag("long")
class ClosingTest {
    private static final double UNITS_PER_INCH = 1e6;

    /** Finer than the project's own chords: here they are the error of the measure. */
    private static final double CHORD = 2e-5;

    @TempDir
    private static Path folder;

    private record Case(Profile profile, double radius) {
        String json() {
            String ring = profile.outline().flattened(CHORD).stream()
                    .map(p -> "[" + Math.round(p.x() * UNITS_PER_INCH) + "," + Math.round(p.y() * UNITS_PER_INCH) + "]")
                    .collect(Collectors.joining(",", "[", "]"));
            return String.format(Locale.ROOT, "[%s,%d]", ring, Math.round(radius * UNITS_PER_INCH));
        }
    }

    @Test
    void what_a_disc_leaves_of_every_profile_is_what_clipper_closes() throws Exception {
        Path python = Outside.python("pyclipper", "python3-pyclipper");
        List<Case> cases = new ArrayList<>();
        for (Profile profile : Molded.all()) {
            // no shop fractions: whether a slot just as wide as the disc is open turns on Clipper's rounding
            for (double radius : new double[] {0.03, 0.07, 0.13, 0.19, 0.31, 0.52, 1.03}) {
                cases.add(new Case(profile, radius));
            }
        }
        Path script = Outside.oracle("closed_areas.py", folder);
        Path input = folder.resolve("cases.json");
        Files.writeString(input, cases.stream().map(Case::json).collect(Collectors.joining(",", "[", "]")));
        Process process = new ProcessBuilder(python.toString(), script.toString())
                .redirectInput(input.toFile())
                .redirectErrorStream(true)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(output).isZero();
        List<Double> areas = output.lines().map(Double::valueOf).toList();
        assertThat(areas).hasSameSizeAs(cases);
        for (int i = 0; i < cases.size(); i++) {
            Outline outline = cases.get(i).profile.outline();
            // both offsets have round joins of chords, each up to 5e-5 off, and the outline's own chords
            double slack = 1e-4 * outline.perimeter();
            assertThat(Rolling.of(outline, cases.get(i).radius).left())
                    .as("%s by %s", cases.get(i).profile.name(), cases.get(i).radius)
                    .isCloseTo(areas.get(i), within(slack));
        }
    }
}
