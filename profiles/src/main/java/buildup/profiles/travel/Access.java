package buildup.profiles.travel;

import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What of an outline can be come to along a straight way in from one direction, exactly: split at corners, at points of
 * tangency and where a shadow falls. A stretch in line with the direction counts as come to: a cutter's side makes it.
 */
public final class Access {
    /**
     * A stretch of a stroke.
     *
     * @param stroke counted from 0
     * @param from, to shares of it walked
     */
    public record Stretch(int stroke, double from, double to) {}

    /**
     * Air with wood before and behind it along the direction.
     *
     * @param floor the stretch that closes it behind
     * @param area sq in
     */
    public record Shadow(Stretch floor, double area) {}

    private record Run(int stroke, Segment whole, SegmentPart piece) {
        Stretch between(double left, double right) {
            double a = whole.nearest(new Point(left, piece.height(left)));
            double b = whole.nearest(new Point(right, piece.height(right)));
            return new Stretch(stroke, Math.min(a, b), Math.max(a, b));
        }

        /** Area between the run and y = 0 from one x to another. */
        double area(Stretch stretch) {
            Segment part = whole.part(stretch.from, stretch.to);
            Point a = part.from();
            Point b = part.to();
            double under = (b.x() * b.y() - a.x() * a.y() - part.twiceArea()) / 2;
            return a.x() < b.x() ? under : -under;
        }
    }

    /** Where one or two slabs meet: the highest wood just left and just right of it. */
    private record Cliff(double x, double left, double right) {}

    private final List<Stretch> reached = new ArrayList<>();
    private final List<Shadow> shadows = new ArrayList<>();
    private final List<Cliff> cliffs = new ArrayList<>();

    private Access(Outline turned) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < turned.strokes().size(); i++) {
            Segment whole = turned.strokes().get(i).segment();
            for (SegmentPart piece : SegmentPart.of(whole)) {
                runs.add(new Run(i, whole, piece));
            }
        }
        slabs(runs);
        for (int i = 0; i < turned.strokes().size(); i++) {
            upright(i, turned.strokes().get(i).segment());
        }
        reached.sort(Comparator.comparingInt(Stretch::stroke).thenComparingDouble(Stretch::from));
    }

    /**
     * What of an outline can be reached along one straight direction.
     *
     * @param degrees of the direction that is come from, counterclockwise from straight out
     */
    public static Access of(Outline outline, double degrees) {
        return new Access(outline.moved(Motion.turn(90 - degrees)));
    }

    /** By stroke and along it; stretches that follow one another may touch. */
    public List<Stretch> reached() {
        return List.copyOf(reached);
    }

    /** The air that has wood before and behind it, left to right. */
    public List<Shadow> shadows() {
        return List.copyOf(shadows);
    }

    private void slabs(List<Run> runs) {
        List<Double> cuts = cuts(runs);
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double left = cuts.get(i);
            double right = cuts.get(i + 1);
            double middle = (left + right) / 2;
            // pieces of one outline do not cross: the order halfway is that of the whole slab
            List<Run> over = runs.stream()
                    .filter(run -> run.piece.left().x() < middle
                            && middle < run.piece.right().x())
                    .sorted(Comparator.comparingDouble((Run run) -> -run.piece.height(middle)))
                    .toList();
            cliffs.add(new Cliff(
                    left,
                    before,
                    over.isEmpty()
                            ? Double.NEGATIVE_INFINITY
                            : over.get(0).piece.height(left)));
            before = over.isEmpty()
                    ? Double.NEGATIVE_INFINITY
                    : over.get(0).piece.height(right);
            if (!over.isEmpty()) {
                reached.add(over.get(0).between(left, right));
            }
            for (int k = 1; k + 1 < over.size(); k += 2) {
                Stretch floor = over.get(k + 1).between(left, right);
                double area = over.get(k).area(over.get(k).between(left, right))
                        - over.get(k + 1).area(floor);
                shadows.add(new Shadow(floor, area));
            }
        }
        cliffs.add(new Cliff(cuts.get(cuts.size() - 1), before, Double.NEGATIVE_INFINITY));
    }

    private static List<Double> cuts(List<Run> runs) {
        List<Double> ends = new ArrayList<>();
        for (Run run : runs) {
            ends.add(run.piece.left().x());
            ends.add(run.piece.right().x());
        }
        ends.sort(Comparator.naturalOrder());
        List<Double> cuts = new ArrayList<>();
        for (double end : ends) {
            // ends that are one but for rounding would leave a slab of nothing between them
            if (cuts.isEmpty() || end - cuts.get(cuts.size() - 1) > Tolerance.SNAP) {
                cuts.add(end);
            }
        }
        return cuts;
    }

    /** A line along the direction is reached, from the open side, as far down as the wood beside it lets a cutter. */
    private void upright(int stroke, Segment segment) {
        Point a = segment.from();
        Point b = segment.to();
        if (!(segment instanceof Line) || Math.abs(a.x() - b.x()) > Tolerance.SNAP) {
            return;
        }
        double x = (a.x() + b.x()) / 2;
        double floor = cliffs.stream()
                .min(Comparator.comparingDouble(cliff -> Math.abs(cliff.x - x)))
                .map(cliff -> Math.min(cliff.left, cliff.right))
                .orElse(Double.NEGATIVE_INFINITY);
        double length = segment.length();
        double high = Math.max(a.y(), b.y());
        double open = Math.min(length, high - floor);
        if (open > Tolerance.SNAP) {
            double share = open / length;
            reached.add(a.y() > b.y() ? new Stretch(stroke, 0, share) : new Stretch(stroke, 1 - share, 1));
        }
    }
}
