package buildup.engine.hold.fixing;

import buildup.catalog.wood.Wood;
import buildup.engine.hold.nail.Strength;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.FiberDirection;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** The bodies of a section as a nail meets them: what is up in a step, of which wood, with the grain which way. */
final class Timber {
    /** An outline with its chords and the ends of its segments in plain numbers: asked thousands of times for each stack. */
    static final class Solid {
        private final Outline outline;
        private final List<Point> ring;
        private final Segment[] segments;
        private final Box[] boxes;
        private final double[] fromX;
        private final double[] fromY;

        private Solid(Outline outline) {
            this.outline = outline;
            this.ring = outline.chords();
            int count = outline.strokes().size();
            this.segments = new Segment[count];
            this.boxes = new Box[count];
            this.fromX = new double[count + 1];
            this.fromY = new double[count + 1];
            for (int i = 0; i <= count; i++) {
                Segment segment = outline.strokes().get(i % count).segment();
                segments[i % count] = segment;
                boxes[i % count] = segment.box();
                fromX[i] = segment.from().x();
                fromY[i] = segment.from().y();
            }
        }

        static Solid of(Outline outline) {
            return new Solid(outline);
        }

        Outline outline() {
            return outline;
        }

        List<Point> ring() {
            return ring;
        }

        boolean holds(Point p) {
            return outline.box().holds(p, 0) && Outline.isInside(ring, p);
        }

        int count() {
            return segments.length;
        }

        Segment segment(int i) {
            return segments[i];
        }

        /** Around a segment. */
        Box box(int i) {
            return boxes[i];
        }

        /** Where a segment begins; that of the number of segments is where the last one ends. */
        double x(int i) {
            return fromX[i];
        }

        double y(int i) {
            return fromY[i];
        }
    }

    /** A nail nearer than this to the way of the fibers is in end grain, degrees: common practice, no source. */
    private static final double ALONG = 45;

    /** Between two marks of a tape, in. */
    private static final double TAPE = 1.0 / 16;

    private final Section section;
    private final double covering;
    private final List<Solid> bodies;
    private final List<Solid> woods;
    private final List<Boolean> standing;
    /** What alone is there when pieces are joined on the bench; empty at the wall, where all is. */
    private final Set<Integer> bench;

    Timber(Section section) {
        this(section, Set.of());
    }

    Timber(Section section, Set<Integer> bench) {
        this.section = section;
        this.bench = bench;
        this.covering = section.stack().space().wall().covering();
        this.standing = section.bodies().stream().map(Body::standing).toList();
        this.bodies =
                section.bodies().stream().map(body -> Solid.of(body.outline())).toList();
        this.woods = IntStream.range(0, bodies.size())
                .mapToObj(i -> covering(i) > 0 ? Solid.of(withoutCovering(i)) : bodies.get(i))
                .toList();
    }

    Section section() {
        return section;
    }

    /**
     * The place on a face of a body nearest to one whose height and projection stand on a tape: whoever is told them finds
     * it again. The same in a document that counts in millimeters, so that the job does not change with its unit.
     */
    Spot onTheTape(int number, Stroke stroke, double t) {
        Point at = stroke.segment().at(t);
        Point shown = new Point(Math.rint(at.x() / TAPE) * TAPE, Math.rint(at.y() / TAPE) * TAPE);
        return Spot.on(number, stroke, stroke.segment().nearest(shown));
    }

    int count() {
        return section.bodies().size();
    }

    Body body(int number) {
        return section.body(number);
    }

    /** Whether a body stands once the piece of that number is up: it stood before, or is no later one. */
    boolean up(int number, int step) {
        return bench.isEmpty() ? standing.get(number) || number <= step : number <= step && bench.contains(number);
    }

    boolean wall(int number) {
        return !body(number).piece() && body(number).name().equals("wall");
    }

    /** Whether wood of it holds: floor and ceiling are finishes whose wood nobody has shown. */
    boolean holds(int number) {
        return body(number).piece() || wall(number);
    }

    Solid solid(int number) {
        return bodies.get(number);
    }

    /** What of a body is wood. */
    Solid wood(int number) {
        return woods.get(number);
    }

    private Outline withoutCovering(int number) {
        return body(number)
                .outline()
                .moved(wall(number) ? Motion.shift(-covering, 0) : Motion.shift(0, covered(number)));
    }

    /** Thickness of plaster or wallboard over a body, in; the ceiling is taken to be covered as the wall is. */
    double covering(int number) {
        return wall(number) ? covering : section.overCeiling(number) ? covered(number) : 0;
    }

    /** How much of the covering a joist that is given as a piece takes in, in: none when it is drawn behind it. */
    private double covered(int number) {
        Box box = body(number).outline().box();
        double behind = box.bottom()
                - section.stack().space().ceilingAt(box.middle().x()).orElse(box.bottom());
        return Math.max(0, covering - Math.max(0, behind));
    }

    private Optional<Placed> placed(int number) {
        return body(number).placed();
    }

    double gravity(int number) {
        return placed(number)
                .map(placed -> placed.piece().wood().specificGravity())
                .orElse(Strength.STUD_GRAVITY);
    }

    Optional<Wood.Group> group(int number) {
        return placed(number).isPresent()
                ? placed(number).get().piece().wood().group()
                : Optional.of(Wood.Group.SOFTWOOD);
    }

    /** Whether there is no published figure for nails in it. */
    boolean panel(int number) {
        return group(number).equals(Optional.of(Wood.Group.PANEL));
    }

    boolean endGrain(int number, Point way) {
        FiberDirection grain =
                placed(number).map(placed -> placed.piece().grain()).orElse(FiberDirection.RUN);
        double along = grain == FiberDirection.RUN ? 0 : Math.abs(grain == FiberDirection.OUT ? way.x() : way.y());
        return along > Math.cos(Math.toRadians(ALONG));
    }

    /** Whether it is the wall, and the plan has masonry there behind a piece. */
    boolean masonry(int number, String piece) {
        return wall(number) && section.stack().onMasonry().contains(piece);
    }

    /**
     * Whether a nail through a piece that runs that way through a body is held there: neither in end grain nor in a panel
     * nor in masonry.
     */
    boolean counts(int number, Point way, String piece) {
        return !panel(number) && !endGrain(number, way) && !masonry(number, piece);
    }

    /** As messages call a body. */
    String quoted(int number) {
        return body(number).piece()
                ? "'" + body(number).name() + "'"
                : "the " + body(number).name();
    }
}
