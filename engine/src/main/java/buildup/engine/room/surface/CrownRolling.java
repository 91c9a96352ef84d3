package buildup.engine.room.surface;

import buildup.engine.room.run.Course;
import buildup.engine.room.run.Saw.Hand;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * Rolls a sprung molding down under a ceiling that is not level. It turns about the lower end of the flat that lies on
 * the wall, so its top comes down and out; set for the highest place of the ceiling along its whole run it keeps its spring
 * there, and the sticks at the two sides of a corner come down alike. The saw's settings follow from the spring that it
 * then has.
 */
final class CrownRolling {
    /** Rolled farther, degrees, it no longer looks like the same molding; a bound of the search, not of the trade. */
    private static final double MOST = 20;

    private final Outline outline;
    private final Point pivot;
    private final double top;

    private CrownRolling(Outline outline, Line flat) {
        this.outline = outline;
        this.pivot = flat.from().y() < flat.to().y() ? flat.from() : flat.to();
        this.top = outline.box().top();
    }

    /** How the moldings roll, given the gaps along all of its sticks; nothing where their ceiling is even. */
    static List<Rolled> of(Section section, List<GapAlong> gaps) {
        List<GapAlong> over =
                gaps.stream().filter(gap -> gap.surface() == Surface.CEILING).toList();
        List<Rolled> all = new ArrayList<>();
        for (GapAlong gap : over) {
            List<GapAlong> run =
                    over.stream().filter(other -> sameRun(gap, other)).toList();
            double widest = run.stream()
                    .mapToDouble(other -> other.most().amount())
                    .max()
                    .orElseThrow();
            if (run.stream().anyMatch(other -> widest - other.least().amount() > Tolerance.TOUCHING)) {
                all.addAll(of(section, gap, widest));
            }
        }
        return all;
    }

    private static boolean sameRun(GapAlong one, GapAlong other) {
        return one.fit().run() == other.fit().run()
                && one.fit().course().body() == other.fit().course().body();
    }

    /** @param widest gap along the run: there the molding keeps its spring */
    private static List<Rolled> of(Section section, GapAlong gap, double widest) {
        Course course = gap.fit().course();
        Outline outline = section.body(course.body()).outline();
        Optional<Line> flat = outline.straights("wall-flat").stream().findFirst();
        if (!course.sprung() || course.spring() < 0 || flat.isEmpty()) {
            return List.of();
        }
        CrownRolling rolling = new CrownRolling(outline, flat.get());
        List<Rolled> all = new ArrayList<>();
        double left = gap.gap().stations().get(0).along();
        double right = gap.gap().stations().get(gap.gap().stations().size() - 1).along();
        for (double along :
                DoubleStream.of(left, gap.least().along(), right).distinct().toArray()) {
            double down = widest - gap.gap().at(along);
            Optional<Hand> end = Tolerance.same(along, left)
                    ? Optional.of(Hand.LEFT)
                    : Tolerance.same(along, right) ? Optional.of(Hand.RIGHT) : Optional.empty();
            String where = end.map(hand -> hand.word() + " end").orElse("lowest place");
            rolling.by(down, outline.box().height())
                    .map(degrees -> rolling.rolled(gap, where, along, down, degrees, flat.get(), end))
                    .ifPresent(all::add);
        }
        return all;
    }

    private Outline turned(double degrees) {
        return outline.moved(Motion.shift(-pivot.x(), -pivot.y())
                .then(Motion.turn(-degrees))
                .then(Motion.shift(pivot.x(), pivot.y())));
    }

    /** By how many degrees the molding rolls so that its top comes down; none where that takes more than is sought. */
    private Optional<Double> by(double down, double height) {
        if (down <= Tolerance.COINCIDENT) {
            return Optional.of(0.0);
        }
        double low = 0;
        double high = MOST;
        if (down >= height || top - turned(high).box().top() < down) {
            return Optional.empty();
        }
        while (high - low > Tolerance.COINCIDENT) {
            double middle = (low + high) / 2;
            if (top - turned(middle).box().top() < down) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of((low + high) / 2);
    }

    private Rolled rolled(
            GapAlong gap, String where, double along, double down, double degrees, Line flat, Optional<Hand> end) {
        Box box = turned(degrees).box();
        double spring = gap.fit().course().spring();
        return new Rolled(
                gap,
                where,
                along,
                down,
                spring + degrees,
                box.face(),
                flat.length() * Math.sin(Math.toRadians(degrees)),
                end.flatMap(hand -> gap.fit().flat(hand, spring)),
                end.flatMap(hand -> gap.fit().flat(hand, spring + degrees)));
    }
}
