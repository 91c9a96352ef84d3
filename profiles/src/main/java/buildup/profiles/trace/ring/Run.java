package buildup.profiles.trace.ring;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A trail on its way to a ring, in inches.
 *
 * @param dots at least two
 * @param closed whether the last goes on to the first
 * @param layers names of the layers or groups that hold it, the outermost first
 */
public record Run(List<Dot> dots, boolean closed, List<String> layers) {
    /** Copies the lists. */
    public Run {
        dots = List.copyOf(dots);
        layers = List.copyOf(layers);
    }

    /** Trails as runs, their points numbered through. */
    public static List<Run> of(List<Trail> trails) {
        List<Run> runs = new ArrayList<>();
        int number = 1;
        for (Trail trail : trails) {
            List<Dot> dots = new ArrayList<>();
            for (Point p : trail.points()) {
                dots.add(new Dot(p, number++));
            }
            if (dots.size() > 1) {
                runs.add(new Run(dots, trail.closed(), trail.layers()));
            }
        }
        return runs;
    }

    /** Where it begins. */
    Point first() {
        return dots.get(0).at();
    }

    /** Where it ends. */
    Point last() {
        return dots.get(dots.size() - 1).at();
    }

    /** The box round all points. */
    Box box() {
        return RingSizes.box(dots);
    }

    /** Enclosed area, positive. */
    double area() {
        return Math.abs(RingSizes.area(dots));
    }

    /** The other way. */
    Run turned() {
        List<Dot> turned = new ArrayList<>(dots);
        Collections.reverse(turned);
        return new Run(turned, closed, layers);
    }

    /** This and then another as one that is open. */
    Run then(Run next) {
        List<Dot> all = new ArrayList<>(dots);
        all.addAll(next.dots);
        int alike = 0;
        while (alike < Math.min(layers.size(), next.layers.size())
                && layers.get(alike).equals(next.layers.get(alike))) {
            alike++;
        }
        return new Run(all, false, layers.subList(0, alike));
    }

    /** The ring that a run makes which ends where it began; the place counts once. */
    Run closing() {
        return new Run(dots.size() > 3 ? dots.subList(0, dots.size() - 1) : dots, true, layers);
    }

    /** The same going on from the end of another, which holds its first point already. */
    Run goingOn() {
        return dots.size() > 1 ? new Run(dots.subList(1, dots.size()), closed, layers) : this;
    }
}
