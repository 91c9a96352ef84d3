package buildup.cli.write;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.format.TracingReader;
import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import buildup.profiles.Profile;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.Traced;
import buildup.profiles.trace.Tracer;
import buildup.profiles.trace.TracingOptions;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the program draws of a profile is traced back to that profile. The build tries one profile of so many; {@code
 * -Dbuildup.own.every=1} tries the whole catalog.
 */
class OwnDrawingsTest {
    private static final int EVERY = Integer.getInteger("buildup.own.every", 12);

    /** A thousandth: what whoever grinds a knife reads from a drawing, twice. In. */
    private static final double WITHIN = 1e-3;

    /** One of so many at most may be doubted, as where a rosette of the sheet is as large as the profile. */
    private static final int DOUBTED = 8;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"dxf", "svg"})
    void a_profile_that_was_drawn_is_traced_back_to_itself(String format) throws Exception {
        List<Profile> all = Outlines.all();
        StringBuilder wrong = new StringBuilder();
        int doubted = 0;
        int tried = 0;
        for (int i = 0; i < all.size(); i += EVERY) {
            Path file = folder.resolve("profile." + format);
            Ran ran = Ran.of("profile", all.get(i).name(), "--format", format, "-o", file.toString());
            assertThat(ran.code()).as(all.get(i).name()).isEqualTo(ExitCode.CLEAN);
            Told told = Told.of(all.get(i), file);
            boolean right = told.off() <= WITHIN;
            tried++;
            doubted += right ? 0 : 1;
            if (!right && told.said().isEmpty()) {
                wrong.append(
                        String.format(Locale.ROOT, "%n%s: %.6f off", all.get(i).name(), told.off()));
            }
        }
        assertThat(wrong.toString()).isEmpty();
        assertThat(doubted).as("doubted of %s", tried).isLessThanOrEqualTo(tried / DOUBTED);
    }

    /**
     * What a drawing is traced to.
     *
     * @param off how far that is from the profile, in; infinite when it is refused
     * @param said what is doubted or refused
     */
    private record Told(double off, List<String> said) {
        static Told of(Profile profile, Path file) throws Exception {
            Notices notices = new Notices();
            Optional<Traced> traced = TracingReader.read(
                            Files.readAllBytes(file), file.getFileName().toString(), Optional.empty(), notices)
                    .flatMap(drawn -> Tracer.trace(
                            drawn.trails(),
                            drawn.unit().map(TracingOptions.PLAIN::in).orElse(TracingOptions.PLAIN),
                            notices));
            Outline truth = Outlines.home(profile);
            double off = traced.map(found -> Math.max(apart(truth, found.outline()), apart(found.outline(), truth)))
                    .orElse(Double.POSITIVE_INFINITY);
            return new Told(
                    off,
                    notices.sorted().stream()
                            .filter(notice -> notice.level() != Level.NOTE)
                            .map(NoticeWords.INCHES::message)
                            .toList());
        }
    }

    private static double apart(Outline one, Outline other) {
        double far = 0;
        for (Stroke stroke : one.strokes()) {
            for (int k = 0; k <= 16; k++) {
                far = Math.max(far, other.distance(stroke.segment().at(k / 16.0)));
            }
        }
        return far;
    }
}
