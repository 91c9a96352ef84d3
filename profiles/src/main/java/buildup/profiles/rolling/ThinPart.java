package buildup.profiles.rolling;

import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of an outline that is too thin for a disc to go into. An {@link Inset} by the radius of the disc knows nothing of
 * it: what the inset grows back to is the opening of the outline by the disc (J. Serra, Image Analysis and Mathematical
 * Morphology, 1982, ch. II), and the part is what the opening takes away. A lone outside corner becomes round and no more,
 * and is no such part unless it is so sharp that it loses more than the radius.
 *
 * @param edge of the outline that is lost, stretch by stretch
 * @param width across it where it is thinnest, in; 0 where it thins out to an edge
 * @param lost how far the farthest place of the edge lies from what is left, in
 */
public record ThinPart(List<Segment> edge, double width, double lost) {
    /** Places on a stretch of the outline that is as long as the radius of the disc. */
    private static final int PLACES = 16;

    /** A walk that turns farther at a corner leaves a tip under 60 degrees, of which the disc takes more than its radius. */
    private static final double SHARP = Math.toRadians(120 + 0.01);

    /** Copies the list. */
    public ThinPart {
        edge = List.copyOf(edge);
    }

    /**
     * A short stretch of the outline.
     *
     * @param number of its segment
     * @param middle of it, which stands for it
     * @param lost how far it lies from what is left, in
     */
    private record Bit(int number, Segment part, Point middle, double lost) {}

    /**
     * The thin parts, in walking order; the whole outline when the disc goes in nowhere.
     *
     * @param outline walked with the wood on the left
     * @param radius of the disc, in; above 0
     */
    public static List<ThinPart> of(Outline outline, double radius) {
        List<Segment> inset = Inset.of(outline, radius);
        List<Bit> bits = bits(outline, inset, radius);
        List<ThinPart> parts = new ArrayList<>();
        for (List<Bit> run : runs(bits)) {
            double lost = run.stream().mapToDouble(Bit::lost).max().orElse(0);
            List<Double> corners = corners(run);
            boolean tip = corners.stream().anyMatch(turn -> turn > SHARP);
            double width = tip ? 0 : width(outline, run, radius);
            if (tip || (corners.size() != 1 && width < 2 * radius - Tolerance.CHORD)) {
                parts.add(new ThinPart(run.stream().map(Bit::part).toList(), width, lost));
            }
        }
        return List.copyOf(parts);
    }

    private static List<Bit> bits(Outline outline, List<Segment> inset, double radius) {
        List<Bit> bits = new ArrayList<>();
        for (int i = 0; i < outline.segments().size(); i++) {
            Segment segment = outline.segments().get(i);
            int count = (int) Math.ceil(PLACES * Math.max(1, segment.length() / radius));
            for (int k = 0; k < count; k++) {
                Segment part = segment.part((double) k / count, (k + 1.0) / count);
                Point middle = part.at(0.5);
                // the ends count too: a corner is farther from what is left than any place beside it
                double lost =
                        Math.max(far(inset, part.from()), Math.max(far(inset, middle), far(inset, part.to()))) - radius;
                bits.add(new Bit(i, part, middle, lost));
            }
        }
        return bits;
    }

    private static double far(List<Segment> inset, Point place) {
        return inset.stream()
                .mapToDouble(segment -> segment.distance(place))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Neighbors that are lost, together; a run may go on over the start of the walk. */
    private static List<List<Bit>> runs(List<Bit> bits) {
        int start = 0;
        while (start < bits.size() && isLost(bits.get(start))) {
            start++;
        }
        List<List<Bit>> runs = new ArrayList<>();
        List<Bit> run = new ArrayList<>();
        for (int k = 0; k < bits.size(); k++) {
            Bit bit = bits.get((start + k) % bits.size());
            if (isLost(bit)) {
                run.add(bit);
            } else if (!run.isEmpty()) {
                runs.add(run);
                run = new ArrayList<>();
            }
        }
        if (!run.isEmpty()) {
            runs.add(run);
        }
        return runs;
    }

    private static boolean isLost(Bit bit) {
        return bit.lost > Tolerance.CHORD;
    }

    /** By how much the walk turns at the outside corners within a run, radians. */
    private static List<Double> corners(List<Bit> run) {
        List<Double> corners = new ArrayList<>();
        for (int k = 0; k + 1 < run.size(); k++) {
            double turn = turn(run.get(k).part, run.get(k + 1).part);
            if (run.get(k).number != run.get(k + 1).number && turn > Tolerance.SAME_DIRECTION) {
                corners.add(turn);
            }
        }
        return corners;
    }

    private static double turn(Segment before, Segment after) {
        Point in = before.direction(1);
        Point out = after.direction(0);
        double turn = Math.atan2(in.cross(out), in.dot(out));
        // a tip between tangent sides turns straight back, to the left or the right by rounding alone
        return Math.abs(turn) > Math.PI - Tolerance.SAME_DIRECTION ? Math.PI : turn;
    }

    /** The shortest way through the wood, square to the edge; nothing beyond the thinness that counts is looked for. */
    private static double width(Outline outline, List<Bit> run, double radius) {
        List<Segment> segments = outline.segments();
        double least = Double.POSITIVE_INFINITY;
        for (Bit bit : run) {
            Point inward = bit.part.direction(0.5).left();
            Line across =
                    new Line(bit.middle.plus(inward.times(Tolerance.CHORD)), bit.middle.plus(inward.times(3 * radius)));
            for (int j = 0; j < segments.size(); j++) {
                if (!meetInACorner(segments, bit.number, j)) {
                    for (Point at : Crossings.of(across, segments.get(j), Tolerance.SNAP)) {
                        least = Math.min(least, at.distance(bit.middle));
                    }
                }
            }
        }
        return least;
    }

    /** The way from one side of a corner to the other becomes as short as one likes, and says nothing of a thickness. */
    private static boolean meetInACorner(List<Segment> segments, int i, int j) {
        int count = segments.size();
        return (j == (i + 1) % count && turn(segments.get(i), segments.get(j)) > Tolerance.SAME_DIRECTION)
                || (i == (j + 1) % count && turn(segments.get(j), segments.get(i)) > Tolerance.SAME_DIRECTION);
    }
}
