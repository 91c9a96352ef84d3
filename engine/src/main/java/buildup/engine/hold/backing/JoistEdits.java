package buildup.engine.hold.backing;

import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import java.util.List;
import java.util.stream.Stream;

/**
 * A joist over the ceiling, as a way out for what is driven up into it: what a ceiling is made of is not known, so nothing
 * is known to hold there until the joist is given as a piece.
 */
public final class JoistEdits {
    /** A framing board on edge, in: 2x6, PS 20 dry. */
    private static final double WIDE = 1.5;

    private static final double HIGH = 5.5;

    private JoistEdits() {}

    /**
     * The joist that a nail would need, middle over its point, or against the wall where that is nearer; none unless the
     * point lies in a ceiling, and before a wall that goes up to it.
     */
    public static Stream<Cure> over(Section section, Point point, String piece) {
        double back = Math.max(leastBack(section.stack().space()), Math.rint(16 * (point.x() - WIDE / 2)) / 16);
        return section.bodies().stream()
                .filter(body -> !body.piece() && body.name().equals("ceiling"))
                .filter(body -> body.outline().holds(point))
                .filter(body -> point.x() > back)
                .limit(1)
                .map(body -> cure(section, body, back, piece));
    }

    /** No joist is found behind the plane of a wall that goes up to the ceiling: what is there is the wall. */
    private static double leastBack(Space space) {
        boolean up = space.wall().solid()
                && space.wall().to().orElse(Double.POSITIVE_INFINITY)
                        >= space.ceiling().orElse(0) - Tolerance.TOUCHING;
        return up ? 0 : Double.NEGATIVE_INFINITY;
    }

    private static Cure cure(Section section, Body ceiling, double back, String piece) {
        String joist = "joist over " + piece;
        String place = "pieces." + joist + ".";
        double covering = section.stack().space().wall().covering();
        Phrase covered = covering > 0
                ? Phrase.of(" What covers the ceiling, {covering} as the wall, is counted.")
                        .with("covering", Figure.length(covering))
                : Phrase.of("");
        return new Cure(
                Phrase.of("Find the joist and give it as a piece: 'kind: framing', {wide} wide, its back at {back} out,"
                                + " 'bottom: {ceiling}'. Joists of a plan count along the run alone.{covered}")
                        .with("covered", covered)
                        .with("wide", Figure.length(WIDE))
                        .with("back", Figure.length(back))
                        .with("ceiling", ceiling.name()),
                List.of(
                        Change.entry("pieces", 1, joist),
                        new Change(place + "kind", Phrase.of("framing")),
                        new Change(
                                place + "section",
                                Phrase.of("out {wide}, up {high}")
                                        .with("wide", Figure.length(WIDE))
                                        .with("high", Figure.length(HIGH))),
                        new Change(place + "back", Phrase.of("{back}").with("back", Figure.length(back))),
                        new Change(place + "bottom", Phrase.of("{ceiling}").with("ceiling", ceiling.name()))));
    }
}
