package buildup.catalog;

import buildup.catalog.format.TracingReader;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.Caliper;
import buildup.profiles.trace.Traced;
import buildup.profiles.trace.Tracer;
import buildup.profiles.trace.TracingOptions;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;

/** Drawings that other programs made of profiles of the catalog, each named for its profile and its program. */
public final class Drawings {
    private Drawings() {}

    /**
     * What a drawing is traced to.
     *
     * @param off how far that is from the profile and the profile from it, in; infinite when it is refused
     * @param missing so many members fewer than the profile has
     * @param problems what is doubted or refused
     */
    public record Told(double off, int missing, List<String> problems) {}

    /** The drawing traced, with the height of the profile by calipers where it is {@code measured}. */
    public static Told told(String file, boolean measured) throws Exception {
        Outline truth = truth(file.substring(0, file.indexOf('.')));
        Notices notices = new Notices();
        TracingOptions options = measured
                ? TracingOptions.PLAIN.measured(
                        List.of(new Caliper(Caliper.Across.HEIGHT, truth.box().height())))
                : TracingOptions.PLAIN;
        Optional<Traced> traced = TracingReader.read(bytes(file), file, Optional.empty(), notices)
                .flatMap(drawn -> Tracer.trace(
                        drawn.trails(), drawn.unit().map(options::in).orElse(options), notices));
        return new Told(
                traced.map(found -> Math.max(apart(truth, found.outline()), apart(found.outline(), truth)))
                        .orElse(Double.POSITIVE_INFINITY),
                traced.map(found -> TracedMembers.of(truth).size()
                                - TracedMembers.of(found.outline()).size())
                        .orElse(0),
                notices.sorted().stream()
                        .filter(notice -> notice.level() != Level.NOTE)
                        .map(NoticeWords.INCHES::message)
                        .toList());
    }

    private static Outline truth(String shape) {
        String name = shape.equals("ogee-bed") ? "ogee-bed 1 x 1-1/4" : "bead-cove-bed 1-1/4 x 1-1/2";
        Outline drawn = Asked.builtIn().profile(name).outline();
        return drawn.moved(Motion.shift(-drawn.box().back(), -drawn.box().bottom()));
    }

    private static byte[] bytes(String file) throws Exception {
        try (InputStream in = Drawings.class.getResourceAsStream("/reference/drawings/" + file)) {
            return in.readAllBytes();
        }
    }

    private static double apart(Outline one, Outline other) {
        double far = 0;
        for (Stroke stroke : one.strokes()) {
            for (int k = 0; k <= 16; k++) {
                Point p = stroke.segment().at(k / 16.0);
                far = Math.max(far, other.distance(p));
            }
        }
        return far;
    }
}
