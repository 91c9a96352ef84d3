package buildup.engine.room.run;

import buildup.engine.room.plan.Opening;
import buildup.engine.room.plan.Stretch;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What stands on the other wall of an inside corner at the heights of a course. A stack goes up layer by layer, each layer
 * round the whole room (common practice, no source): a stick finds there the framing and the layers before its own.
 */
final class OtherWall {
    private final Section section;
    private final List<Course> courses;

    OtherWall(Section section, List<Course> courses) {
        this.section = section;
        this.courses = courses;
    }

    /**
     * The other wall of a corner.
     *
     * @param leftEnd whether the corner is at its left end
     */
    record Side(Stretch stretch, boolean leftEnd) {
        /** Whether a course runs along it as far as the corner. */
        private boolean carries(Course course) {
            return stretch.carries(course.name())
                    && stretch.openings().stream()
                            .filter(this::atCorner)
                            .noneMatch(opening -> opening.interrupts(course.name(), course.asDrawn()));
        }

        private boolean atCorner(Opening opening) {
            return leftEnd
                    ? opening.from() <= Tolerance.TOUCHING
                    : opening.to() >= stretch.length() - Tolerance.TOUCHING;
        }
    }

    /**
     * The piece that comes out farthest.
     *
     * @param projection from its own wall within the heights of the course, in
     */
    record Piece(String name, double projection) {}

    /**
     * What a course finds there when it is put up.
     *
     * @param nailers whether those of the other wall come as far as the corner
     */
    Optional<Piece> before(Course course, Side other, boolean nailers) {
        return farthest(course, other, there -> there.body() < course.body() && (nailers || there.trim()));
    }

    /** What is there once all is up, the course itself included. */
    Optional<Piece> atLast(Course course, Side other) {
        return farthest(course, other, there -> true);
    }

    private Optional<Piece> farthest(Course course, Side other, Predicate<Course> counts) {
        if (course.turned()) {
            // round an opening the corners turn in the wall's face: there is no other wall
            return Optional.empty();
        }
        Stream<Integer> framing = IntStream.range(0, section.bodies().size())
                .filter(number -> section.body(number).framing())
                .boxed();
        Stream<Integer> stack =
                courses.stream().filter(counts).filter(other::carries).map(Course::body);
        return Stream.concat(framing, stack)
                .flatMap(body -> piece(body, course.box()).stream())
                .filter(piece -> piece.projection() > Tolerance.TOUCHING)
                .max(Comparator.comparingDouble(Piece::projection));
    }

    private Optional<Piece> piece(int body, Box heights) {
        Outline outline = section.body(body).outline();
        double low = Math.max(outline.box().bottom(), heights.bottom());
        double high = Math.min(outline.box().top(), heights.top());
        OptionalDouble out = high - low > Tolerance.TOUCHING ? reach(outline, low, high) : OptionalDouble.empty();
        return out.isPresent() ? Optional.of(new Piece(section.name(body), out.getAsDouble())) : Optional.empty();
    }

    /** The greatest projection of an outline between two heights; what only touches one of them does not count. */
    private static OptionalDouble reach(Outline outline, double low, double high) {
        double from = low + Tolerance.SNAP;
        double to = high - Tolerance.SNAP;
        return outline.segments().stream()
                .flatMap(segment -> farthest(segment, outline.box(), from, to))
                .filter(point -> point.y() > from - Tolerance.COINCIDENT && point.y() < to + Tolerance.COINCIDENT)
                .mapToDouble(Point::x)
                .max();
    }

    /** Where the farthest place of a segment can lie: its ends, where it crosses the heights, the front of an arc. */
    private static Stream<Point> farthest(Segment segment, Box box, double from, double to) {
        Stream<Point> crossings = Stream.of(from, to)
                .flatMap(height -> Crossings.of(
                        segment,
                        new Line(new Point(box.back() - 1, height), new Point(box.face() + 1, height)),
                        Tolerance.COINCIDENT)
                        .stream());
        Stream<Point> front = segment instanceof Arc arc && arc.atAngle(0) >= 0 && arc.atAngle(0) <= 1
                ? Stream.of(arc.at(arc.atAngle(0)))
                : Stream.empty();
        return Stream.of(Stream.of(segment.from(), segment.to()), crossings, front)
                .flatMap(points -> points);
    }
}
