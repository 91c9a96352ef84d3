package buildup.profiles.member;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws members one after another. All sizes are inches and positive; a size that is not is an
 * {@link IllegalArgumentException}, because the reader of the words has already said so to the user.
 *
 * <p>Members that take a height and a width end that much up (or down) and out (or in) from where they began. Height
 * and width unequal: one circular arc, tangent at its end to the longer of the two.
 */
public final class Walk {
    private final List<Stroke> strokes = new ArrayList<>();
    private Point at = Point.ORIGIN;
    private Point heading = Way.UP.unit();

    /** Where the walk has come to, in. */
    public Point at() {
        return at;
    }

    /** Everything walked so far, not closed. */
    public List<Stroke> strokes() {
        return List.copyOf(strokes);
    }

    /** A straight member. */
    public void straight(Way way, double length, String name) {
        require(length, "length");
        lineTo(at.plus(way.unit().times(length)), name);
    }

    /** A straight member to a named level or projection: the other coordinate stays. */
    public void straightTo(Way way, double coordinate, String name) {
        boolean level = way == Way.OUT || way == Way.IN;
        lineTo(level ? new Point(coordinate, at.y()) : new Point(at.x(), coordinate), name);
    }

    /** A straight slope from corner to corner of its box. */
    public void chamfer(Way vertical, double height, Way level, double width, String name) {
        require(height, "height");
        require(width, "width");
        lineTo(at.plus(vertical.unit().times(height)).plus(level.unit().times(width)), name);
    }

    /** Cove (cavetto): a hollow quarter. */
    public void cove(Way vertical, double height, Way level, double width, String name) {
        quarter(vertical, height, level, width, true, name);
    }

    /** Ovolo (quarter round): a round quarter. */
    public void ovolo(Way vertical, double height, Way level, double width, String name) {
        quarter(vertical, height, level, width, false, name);
    }

    /** Greek cove: a hollow quarter of an ellipse, upright and level at its ends. */
    public void greekCove(Way vertical, double height, Way level, double width, String name) {
        ellipse(vertical, height, level, width, true, name);
    }

    /** Greek ovolo: a round quarter of an ellipse, upright and level at its ends. */
    public void greekOvolo(Way vertical, double height, Way level, double width, String name) {
        ellipse(vertical, height, level, width, false, name);
    }

    private void ellipse(Way vertical, double height, Way level, double width, boolean hollow, String name) {
        require(height, "height");
        require(width, "width");
        Point rise = vertical.unit().times(height);
        Point run = level.unit().times(width);
        boolean riseFirst = verticalFirst(vertical, level, hollow);
        EllipseQuarter.arcs(at, riseFirst ? rise : run, riseFirst ? run : rise).forEach(arc -> add(arc, name));
    }

    /**
     * Hollow or round of any radius: the shorter arc of such a circle that ends {@code height} up or down and {@code
     * width} out or in; one of the two may be nothing, and half the span is the least radius.
     */
    public void arc(Way vertical, double height, Way level, double width, double radius, boolean hollow, String name) {
        require(radius, "radius");
        Point chord = vertical.unit().times(height).plus(level.unit().times(width));
        require(chord.length(), "span");
        double half = chord.length() / 2;
        Point middle = at.plus(chord.times(0.5));
        Point left = chord.unit().left();
        double off = Math.sqrt(Math.max(0, (radius - half) * (radius + half)));
        arcTo(at.plus(chord), middle.plus(left.times(hollow ? -off : off)), !hollow, name);
    }

    /** Cyma recta: round where it is nearest the wall, hollow where it is outermost; two like arcs tangent halfway. */
    public void cymaRecta(Way vertical, double height, Way level, double width, String name) {
        ogee(vertical, height, level, width, level == Way.IN, name);
    }

    /** Cyma reversa (ogee, talon): hollow nearest the wall, round outermost; two like arcs tangent halfway. */
    public void cymaReversa(Way vertical, double height, Way level, double width, String name) {
        ogee(vertical, height, level, width, level == Way.OUT, name);
    }

    private void ogee(Way vertical, double height, Way level, double width, boolean hollowFirst, String name) {
        quarter(vertical, height / 2, level, width / 2, hollowFirst, name);
        quarter(vertical, height / 2, level, width / 2, !hollowFirst, name);
    }

    /** Bead, torus: a half round of that diameter standing on the line the walk is on, and going on along it. */
    public void halfRound(double diameter, String name) {
        require(diameter, "diameter");
        Point along = heading;
        Point end = at.plus(along.times(diameter));
        arcTo(end, at.towards(end, 0.5), true, name);
        heading = along;
    }

    /** As {@link #halfRound(double, String)}, on a line in a direction that the words name. */
    public void halfRound(Way along, double diameter, String name) {
        heading = along.unit();
        halfRound(diameter, name);
    }

    /** Astragal: a half round between two fillets that stand out from the line the walk is on. */
    public void astragal(double diameter, double fillet, String name) {
        Point along = heading;
        Point outward = along.right();
        require(fillet, "fillet");
        lineTo(at.plus(outward.times(fillet)), name);
        lineTo(at.plus(along.times(fillet)), name);
        halfRound(diameter, name);
        lineTo(at.plus(along.times(fillet)), name);
        lineTo(at.minus(outward.times(fillet)), name);
        heading = along;
    }

    /**
     * Scotia: a hollow of two quarter arcs, tangent to each other at its deepest, that ends {@code height} further and
     * {@code width} out or in; width must be less than height. Radii (height - width)/2 and (height + width)/2.
     *
     * @throws IllegalArgumentException when it is not higher than wide
     */
    public void scotia(Way vertical, double height, Way level, double width, String name) {
        require(height, "height");
        if (width < 0 || width >= height) {
            throw new IllegalArgumentException("scotia " + height + " x " + width + ": wider than high");
        }
        Way first = vertical == Way.UP ? Way.IN : Way.OUT;
        Way second = vertical == Way.UP ? Way.OUT : Way.IN;
        double smaller = (height - width) / 2;
        double larger = (height + width) / 2;
        boolean smallerFirst = level == second;
        double r1 = smallerFirst ? smaller : larger;
        double r2 = smallerFirst ? larger : smaller;
        quarter(vertical, r1, first, r1, true, name);
        quarter(vertical, r2, second, r2, true, name);
    }

    /** Quirk, drip kerf, back relief: a square groove into the wood, {@code width} along the line the walk is on. */
    public void groove(double width, double depth, String name) {
        require(width, "width");
        require(depth, "depth");
        Point along = heading;
        Point inward = along.left();
        lineTo(at.plus(inward.times(depth)), name);
        lineTo(at.plus(along.times(width)), name);
        lineTo(at.minus(inward.times(depth)), name);
        heading = along;
    }

    /** Rabbet: a square step out of the corner of a box, two lines meeting inside the wood. */
    public void rabbet(Way vertical, double height, Way level, double width, String name) {
        require(height, "height");
        require(width, "width");
        Point rise = vertical.unit().times(height);
        Point run = level.unit().times(width);
        Point middle = verticalFirst(vertical, level, true) ? at.plus(rise) : at.plus(run);
        Point end = at.plus(rise).plus(run);
        lineTo(middle, name);
        lineTo(end, name);
    }

    /** Closes level to x = 0 (the stroke "top"); the walk then shapes the back, or {@link #close} ends it. */
    public void levelToBack() {
        if (Math.abs(at.x()) > 0) {
            lineTo(new Point(0, at.y()), "top");
        }
        heading = Way.DOWN.unit();
    }

    /** Closes straight to the start (the stroke "back"). */
    public List<Stroke> close() {
        if (!at.equals(Point.ORIGIN)) {
            lineTo(Point.ORIGIN, "back");
        }
        return strokes();
    }

    /** Turning right from a vertical to a level way, or the other way about, decides which of the two comes first. */
    private static boolean verticalFirst(Way vertical, Way level, boolean turnsRight) {
        boolean rightWhenVerticalFirst = vertical.unit().cross(level.unit()) < 0;
        return rightWhenVerticalFirst == turnsRight;
    }

    private void quarter(Way vertical, double height, Way level, double width, boolean hollow, String name) {
        require(height, "height");
        require(width, "width");
        boolean verticalFirst = verticalFirst(vertical, level, hollow);
        Point rise = vertical.unit().times(height);
        Point run = level.unit().times(width);
        Point end = at.plus(rise).plus(run);
        // the center stands on the normal at the end of the longer leg, as far as both ends ask
        boolean tall = height > width;
        double radius = (height * height + width * width) / (2 * Math.min(height, width));
        Point shorter = tall ? level.unit() : vertical.unit();
        boolean tangentAtStart = tall == verticalFirst;
        Point center = tangentAtStart ? at.plus(shorter.times(radius)) : end.minus(shorter.times(radius));
        arcTo(end, center, !hollow, name);
    }

    private void lineTo(Point end, String name) {
        add(new Line(at, end), name);
    }

    private void arcTo(Point end, Point center, boolean counterclockwise, String name) {
        add(new Arc(at, end, center, counterclockwise), name);
    }

    private void add(Segment segment, String name) {
        strokes.add(new Stroke(segment, name));
        at = segment.to();
        if (segment.length() > 0) {
            heading = segment.direction(1);
        }
    }

    private static void require(double size, String what) {
        if (!(size > 0) || Double.isInfinite(size)) {
            throw new IllegalArgumentException(what + " must be more than 0, not " + size);
        }
    }
}
