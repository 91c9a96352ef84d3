package buildup.cli.write;

import buildup.catalog.Catalog;
import buildup.catalog.format.Drawn;
import buildup.catalog.format.TracingReader;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.profiles.Profile;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.document.Scalar;
import buildup.shared.length.LengthPrinter;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Outlines of the catalog as drawings of nothing else. */
final class Outlines {
    private static final Catalog CATALOG = Catalog.builtIn();

    private Outlines() {}

    /** Every profile of the catalog in every usual size. */
    static List<Profile> all() {
        return CATALOG.families().stream()
                .flatMap(family -> family.usual().stream()
                        .map(sizes -> family.name() + " "
                                + sizes.stream()
                                        .map(size -> LengthPrinter.fraction(size, 64))
                                        .collect(Collectors.joining(" x "))))
                .flatMap(Outlines::named)
                .toList();
    }

    private static Stream<Profile> named(String call) {
        Notices notices = new Notices();
        Profile profile = CATALOG.profile(
                        new Scalar(call, new Mark("test", 1, 1)),
                        Catalog.USUAL_BOARDS,
                        new LengthReader(LengthUnit.INCH, Map.of()),
                        notices)
                .orElseThrow(() -> new AssertionError(call + notices.sorted()));
        return Stream.of(profile);
    }

    /** The outline, its box at the lower left corner of the sheet. */
    static Outline home(Profile profile) {
        Box box = profile.outline().box();
        return profile.outline().moved(Motion.shift(-box.back(), -box.bottom()));
    }

    static Scene scene(Outline outline) {
        return new Scene(
                "outline",
                "one outline",
                outline.box().face(),
                outline.box().top(),
                List.of(new Path(outline.segments(), true, LineStyle.OUTLINE)));
    }

    static Drawn read(byte[] file, String name) {
        Notices notices = new Notices();
        Drawn drawn = TracingReader.read(file, name, notices).orElseThrow(() -> new AssertionError(notices.sorted()));
        if (!notices.sorted().isEmpty()) {
            throw new AssertionError(notices.sorted());
        }
        return drawn;
    }

    /** Greatest distance of a trail's points from an outline. */
    static double off(Trail trail, Outline outline) {
        return trail.points().stream().mapToDouble(outline::distance).max().orElseThrow();
    }

    /** The area within a trail, by the shoelace. */
    static double area(Trail trail) {
        double twice = 0;
        for (int i = 0; i < trail.points().size(); i++) {
            twice += trail.points()
                    .get(i)
                    .cross(trail.points().get((i + 1) % trail.points().size()));
        }
        return Math.abs(twice) / 2;
    }

    /** Distance of a place from the chords of the trails. */
    static double distance(Point place, List<Trail> trails) {
        double least = Double.MAX_VALUE;
        for (Trail trail : trails) {
            int count = trail.points().size();
            for (int i = trail.closed() ? 0 : 1; i < count; i++) {
                Point from = trail.points().get((i + count - 1) % count);
                Point chord = trail.points().get(i).minus(from);
                double square = chord.dot(chord);
                double share = square > 0 ? place.minus(from).dot(chord) / square : 0;
                least = Math.min(least, place.distance(from.plus(chord.times(Math.max(0, Math.min(1, share))))));
            }
        }
        return least;
    }
}
