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
 * What the program draws of a profile is traced back to that profile, within a thousandth and without a doubt. The build
 * tries one profile of so many; {@code -Dbuildup.own.every=1} tries the whole catalog.
 */
class OwnDrawingsTest {
    private static final int EVERY = Integer.getInteger("buildup.own.every", 12);

    /** A thousandth: what whoever grinds a knife reads from a drawing, twice. In. */
    private static final double WITHIN = 1e-3;

    /** A cap may as well lie on its back: of two long sides square to each other a drawing does not say which is the back. */
    private static final String EITHER_SIDE = "back-unsure";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"dxf", "svg"})
    void a_profile_that_was_drawn_is_traced_back_to_itself(String format) throws Exception {
        List<Profile> all = Outlines.all();
        StringBuilder wrong = new StringBuilder();
        for (int i = 0; i < all.size(); i += EVERY) {
            Path file = folder.resolve("profile." + format);
            Ran ran = Ran.of("profile", all.get(i).name(), "--format", format, "-o", file.toString());
            assertThat(ran.code()).as(all.get(i).name()).isEqualTo(ExitCode.CLEAN);
            Told told = Told.of(all.get(i), file);
            if (told.off() > WITHIN || !told.said().isEmpty()) {
                wrong.append(String.format(
                        Locale.ROOT, "%n%s: %.6f off, %s", all.get(i).name(), told.off(), told.said()));
            }
        }
        assertThat(wrong.toString()).isEmpty();
    }

    /**
     * What a drawing is traced to.
     *
     * @param off how far that is from the profile, in; infinite when it is refused
     * @param said what is doubted or refused, but for which side is the back
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
                            .filter(notice -> !notice.code().equals(EITHER_SIDE))
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
