package buildup.catalog.format;

import buildup.profiles.curve.Bezier;
import buildup.profiles.curve.DrawnCurve;
import buildup.profiles.curve.Oval;
import buildup.profiles.curve.Straight;
import buildup.profiles.curve.Strand;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the {@code d} of an SVG path (SVG 1.1, section 8.3). The drawing library's own parser gives single precision,
 * in which a large drawing loses what a caliper still sees.
 */
final class SvgPath {
    /** What was read up to the fault, if there is one, and the letter at which it stands. */
    record Read(List<Strand> strands, Optional<Integer> faultAt) {}

    private final Cursor cursor;
    private final List<Strand> strands = new ArrayList<>();
    private final List<DrawnCurve> curves = new ArrayList<>();
    private Point start = Point.ORIGIN;
    private Point at = Point.ORIGIN;
    private boolean moved;
    private int drawn;
    /** The last handle of the curve before, for one that goes on smoothly. */
    private Optional<Point> cubic = Optional.empty();

    private Optional<Point> quadratic = Optional.empty();

    private SvgPath(String data) {
        this.cursor = new Cursor(data);
    }

    static Read read(String data) {
        SvgPath path = new SvgPath(data);
        Optional<Integer> fault = path.walk();
        path.endStrand(false);
        return new Read(path.strands, fault);
    }

    private Optional<Integer> walk() {
        char command = 0;
        // one beyond the bound is enough: the plot refuses it
        while (!cursor.atEnd() && drawn <= Limits.MOST_POINTS) {
            int place = cursor.place();
            Optional<Character> letter = cursor.letter();
            if (letter.isPresent()) {
                command = letter.get();
            } else if (command == 'M' || command == 'm') {
                // more pairs behind a move are lines
                command = command == 'M' ? 'L' : 'l';
            }
            boolean again = letter.isEmpty() && (command == 'Z' || command == 'z');
            if (again || !step(Character.toUpperCase(command), Character.isLowerCase(command))) {
                return Optional.of(cursor.atEnd() ? place : cursor.place());
            }
        }
        return Optional.empty();
    }

    /** Draws one step; whether it could be read. */
    private boolean step(char verb, boolean relative) {
        if (!moved && verb != 'M') {
            return false;
        }
        Point base = relative ? at : Point.ORIGIN;
        Optional<Point> lastCubic = cubic;
        Optional<Point> lastQuadratic = quadratic;
        cubic = Optional.empty();
        quadratic = Optional.empty();
        return switch (verb) {
            case 'M' -> points(1, base).map(to -> move(to.get(0))).isPresent();
            case 'L' -> points(1, base).map(to -> line(to.get(0))).isPresent();
            case 'H' -> {
                List<Double> x = cursor.numbers(1);
                yield !x.isEmpty() && draw(new Straight(at, new Point(base.x() + x.get(0), at.y())));
            }
            case 'V' -> {
                List<Double> y = cursor.numbers(1);
                yield !y.isEmpty() && draw(new Straight(at, new Point(at.x(), base.y() + y.get(0))));
            }
            case 'C' ->
                points(3, base).map(p -> cubic(p.get(0), p.get(1), p.get(2))).isPresent();
            case 'S' ->
                points(2, base)
                        .map(p -> cubic(mirrored(lastCubic), p.get(0), p.get(1)))
                        .isPresent();
            case 'Q' -> points(2, base).map(p -> quadratic(p.get(0), p.get(1))).isPresent();
            case 'T' ->
                points(1, base)
                        .map(p -> quadratic(mirrored(lastQuadratic), p.get(0)))
                        .isPresent();
            case 'A' -> arc(base);
            case 'Z' -> {
                endStrand(true);
                at = start;
                yield true;
            }
            default -> false;
        };
    }

    private Optional<List<Point>> points(int count, Point base) {
        List<Double> numbers = cursor.numbers(2 * count);
        if (numbers.size() < 2 * count) {
            return Optional.empty();
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            points.add(base.plus(new Point(numbers.get(2 * i), numbers.get(2 * i + 1))));
        }
        return Optional.of(points);
    }

    private boolean move(Point to) {
        endStrand(false);
        moved = true;
        start = to;
        at = to;
        return true;
    }

    private boolean line(Point to) {
        return draw(new Straight(at, to));
    }

    private boolean draw(DrawnCurve curve) {
        curves.add(curve);
        drawn++;
        at = curve.to();
        return true;
    }

    private boolean cubic(Point first, Point second, Point to) {
        cubic = Optional.of(second);
        return draw(new Bezier(at, first, second, to));
    }

    private boolean quadratic(Point handle, Point to) {
        quadratic = Optional.of(handle);
        return draw(Bezier.quadratic(at, handle, to));
    }

    /** The handle of the curve before, on the other side of where it ended. */
    private Point mirrored(Optional<Point> handle) {
        return handle.map(last -> at.times(2).minus(last)).orElse(at);
    }

    private boolean arc(Point base) {
        List<Double> radii = cursor.numbers(3);
        Optional<Boolean> large = radii.size() == 3 ? cursor.flag() : Optional.empty();
        Optional<Boolean> positive = large.isPresent() ? cursor.flag() : Optional.empty();
        Optional<List<Point>> to = positive.isPresent() ? points(1, base) : Optional.empty();
        if (large.isEmpty() || positive.isEmpty() || to.isEmpty()) {
            return false;
        }
        return draw(Oval.between(
                at,
                to.get().get(0),
                Math.abs(radii.get(0)),
                Math.abs(radii.get(1)),
                Math.toRadians(radii.get(2)),
                large.get(),
                positive.get()));
    }

    private void endStrand(boolean closed) {
        if (!curves.isEmpty()) {
            strands.add(new Strand(curves, closed));
            curves.clear();
        }
    }
}
