package buildup.engine.mill.milling;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.travel.Access;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A run of the outline that neither the head in front nor the one behind reaches.
 *
 * @param strokes that it lies on, counted from 0
 * @param line from end to end, in walking order
 * @param area of the air that the wood hides from the front there, sq in
 * @param passes the fewest square heads that reach all of it together; none when they do not
 * @param tilt that reaches all of it, off straight from the front, when the square heads do not; least first
 */
public record Undercut(List<Integer> strokes, List<Segment> line, double area, List<Side> passes, Optional<Side> tilt) {
    /** Tilts are tried in such steps, degrees. */
    private static final int STEP = 5;

    public Undercut {
        strokes = List.copyOf(strokes);
        line = List.copyOf(line);
        passes = List.copyOf(passes);
    }

    /** Where the stretch starts, in. */
    public Point from() {
        return line.get(0).from();
    }

    /** Where the stretch ends, in. */
    public Point to() {
        return line.get(line.size() - 1).to();
    }

    /** Whether straight passes reach all of it. */
    public boolean open() {
        return !passes.isEmpty() || tilt.isPresent();
    }

    /** Whether it is a slot: the floor of a groove, or a wall of it. */
    boolean holds(Groove groove) {
        return groove.strokes().stream().anyMatch(strokes::contains);
    }

    static List<Undercut> of(MillStick stick, List<Reached> reached) {
        List<List<Reached>> runs = runs(reached);
        if (runs.isEmpty()) {
            return List.of();
        }
        List<Access.Shadow> shadows =
                Access.of(stick.outline(), Side.FRONT.degrees()).shadows();
        return runs.stream().map(run -> undercut(stick, run, shadows)).toList();
    }

    private static boolean hidden(Reached stretch) {
        return !stretch.sides().contains(Side.FRONT)
                && !stretch.sides().contains(Side.BACK)
                && stretch.segment().length() > Tolerance.TOUCHING;
    }

    /** Neighbors that are hidden, also across the start of the walk. */
    private static List<List<Reached>> runs(List<Reached> reached) {
        List<List<Reached>> runs = new ArrayList<>();
        boolean goesOn = false;
        for (Reached stretch : reached) {
            if (!hidden(stretch)) {
                goesOn = false;
                continue;
            }
            if (!goesOn) {
                runs.add(new ArrayList<>());
            }
            runs.get(runs.size() - 1).add(stretch);
            goesOn = true;
        }
        boolean across = runs.size() > 1 && goesOn && hidden(reached.get(0));
        if (across) {
            List<Reached> last = runs.remove(runs.size() - 1);
            last.addAll(runs.get(0));
            runs.set(0, last);
        }
        return runs;
    }

    private static Undercut undercut(MillStick stick, List<Reached> run, List<Access.Shadow> shadows) {
        double area = shadows.stream()
                .filter(shadow -> run.stream().anyMatch(stretch -> holds(stretch, shadow.floor())))
                .mapToDouble(Access.Shadow::area)
                .sum();
        List<Side> passes = fewest(run);
        Optional<Side> tilt = passes.isEmpty() ? tilt(stick, run) : Optional.empty();
        return new Undercut(
                run.stream().map(Reached::stroke).distinct().toList(),
                run.stream().map(Reached::segment).toList(),
                area,
                passes,
                tilt);
    }

    private static boolean holds(Reached stretch, Access.Stretch floor) {
        double middle = (floor.from() + floor.to()) / 2;
        return stretch.stroke() == floor.stroke() && stretch.from() <= middle && middle <= stretch.to();
    }

    /** Of the sides other than the front and the back: one if one is enough, else both, else none. */
    private static List<Side> fewest(List<Reached> run) {
        List<List<Side>> ways = List.of(List.of(Side.BELOW), List.of(Side.ABOVE), List.of(Side.BELOW, Side.ABOVE));
        return ways.stream()
                .filter(way -> run.stream().allMatch(stretch -> way.stream().anyMatch(stretch.sides()::contains)))
                .findFirst()
                .orElse(List.of());
    }

    private static Optional<Side> tilt(MillStick stick, List<Reached> run) {
        return IntStream.rangeClosed(1, 180 / STEP)
                .map(step -> step * STEP)
                .boxed()
                .flatMap(degrees -> List.of(degrees, -degrees).stream())
                .map(Side::tilted)
                .filter(side -> {
                    List<Access.Stretch> seen =
                            Access.of(stick.outline(), side.degrees()).reached();
                    return run.stream().allMatch(stretch -> covers(seen, stretch));
                })
                .findFirst();
    }

    private static boolean covers(List<Access.Stretch> seen, Reached stretch) {
        double share = seen.stream()
                .filter(one -> one.stroke() == stretch.stroke())
                .mapToDouble(one -> Math.min(one.to(), stretch.to()) - Math.max(one.from(), stretch.from()))
                .filter(part -> part > 0)
                .sum();
        return (stretch.to() - stretch.from() - share)
                        * stretch.segment().length()
                        / Math.max(stretch.to() - stretch.from(), Tolerance.SNAP)
                <= Tolerance.TOUCHING;
    }
}
