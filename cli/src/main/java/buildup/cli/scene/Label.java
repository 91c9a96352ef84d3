package buildup.cli.scene;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;

/**
 * One line of text.
 *
 * @param at on the baseline, at the start, middle or end of the text
 * @param size of the font, in
 * @param upright whether it is read from the right, turned a quarter counterclockwise
 * @param width of the text as measured, in
 */
public record Label(String text, Point at, double size, Anchor anchor, boolean upright, double width)
        implements SceneItem {
    /** Height of capitals and figures, as a share of the size. */
    public static final double CAPITALS = 0.69;
    /** How far letters reach below the baseline, as a share of the size. */
    public static final double DESCENT = 0.21;

    /** Which place of the text stands at the point given. */
    public enum Anchor {
        START(0),
        MIDDLE(0.5),
        END(1);

        private final double share;

        Anchor(double share) {
            this.share = share;
        }

        /** Share of the width that lies before the point. */
        public double share() {
            return share;
        }
    }

    /** A level text as wide as the font makes it; size in of paper. */
    public static Label of(TextMeasure measure, String text, Point at, double size, Anchor anchor) {
        return new Label(text, at, size, anchor, false, measure.width(text, size));
    }

    /** A text whose capitals are centered on a point. */
    public static Label centered(TextMeasure measure, String text, Point center, double size, boolean upright) {
        double below = size * CAPITALS / 2;
        Point at = center.plus(upright ? new Point(below, 0) : new Point(0, -below));
        return new Label(text, at, size, Anchor.MIDDLE, upright, measure.width(text, size));
    }

    /** What the text covers, from the lowest descender to the top of the capitals. */
    @Override
    public Box box() {
        double before = width * anchor.share();
        double after = width - before;
        double below = size * DESCENT;
        double above = size * CAPITALS;
        return upright
                ? new Box(at.x() - above, at.y() - before, at.x() + below, at.y() + after)
                : new Box(at.x() - before, at.y() - below, at.x() + after, at.y() + above);
    }

    /** Where the text begins, on the baseline. */
    public Point start() {
        double before = width * anchor.share();
        return at.minus(upright ? new Point(0, before) : new Point(before, 0));
    }

    @Override
    public Label moved(double right, double up) {
        return new Label(text, Motion.shift(right, up).apply(at), size, anchor, upright, width);
    }
}
