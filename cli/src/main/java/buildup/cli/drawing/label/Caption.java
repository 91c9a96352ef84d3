package buildup.cli.drawing.label;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.scene.Area;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.cli.scene.Tone;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The text of a dimension, after the letter of the piece in its ring when it is about one piece. */
public record Caption(Optional<String> letter, String text, double width, double height) {
    private static final double GAP = 0.05;

    static Caption of(TextMeasure measure, Optional<String> letter, String text) {
        double width = measure.width(text, Drafting.FIGURES);
        double height = Drafting.FIGURES * (Label.CAPITALS + Label.DESCENT);
        return letter.isEmpty()
                ? new Caption(letter, text, width, height)
                : new Caption(letter, text, width + 2 * Drafting.SMALL_RING + GAP, 2 * Drafting.SMALL_RING);
    }

    /** Set with its middle on a point of a dimension line. */
    List<SceneItem> at(TextMeasure measure, DimensionAxis run, Point middle) {
        List<SceneItem> items = new ArrayList<>();
        double textWidth = measure.width(text, Drafting.FIGURES);
        boolean upright = run == DimensionAxis.UPRIGHT;
        double along = run.along(middle);
        double across = run.across(middle);
        Point textMiddle = run.point(along + (width - textWidth) / 2, across);
        items.add(Label.centered(measure, text, textMiddle, Drafting.FIGURES, upright));
        letter.ifPresent(word -> items.addAll(
                ringed(measure, word, run.point(along - width / 2 + Drafting.SMALL_RING, across), upright)));
        return items;
    }

    /** A letter in its small ring. */
    public static List<SceneItem> ringed(TextMeasure measure, String letter, Point center, boolean upright) {
        return ringed(measure, letter, center, Drafting.SMALL_RING, Drafting.SMALL_LETTER, upright);
    }

    /** A letter in a ring, no larger than {@code size} and small enough to fit; in of paper. */
    public static List<SceneItem> ringed(
            TextMeasure measure, String letter, Point center, double radius, double size, boolean upright) {
        // the corners of the text just inside the ring
        double corner = Math.hypot(measure.width(letter, 1) / 2, Label.CAPITALS / 2);
        double fitted = Math.min(size, Math.max(Drafting.SMALLEST, 0.95 * radius / corner));
        return List.of(
                new Area(Optional.empty(), Optional.empty(), circle(center, radius), Tone.PAPER),
                new Path(circle(center, radius), true, LineStyle.LEADER),
                Label.centered(measure, letter, center, fitted, upright));
    }

    /** A circle as two half circles; in of paper. */
    public static List<Segment> circle(Point center, double radius) {
        Point east = center.plus(new Point(radius, 0));
        Point west = center.minus(new Point(radius, 0));
        return List.of(new Arc(east, west, center, true), new Arc(west, east, center, true));
    }
}
