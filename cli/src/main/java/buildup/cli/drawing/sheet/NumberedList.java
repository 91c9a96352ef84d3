package buildup.cli.drawing.sheet;

import buildup.cli.drawing.draft.Words;
import buildup.cli.scene.About;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What the numbers of a picture mean, one under the other; in several groups, so that each goes on a page. */
public final class NumberedList {
    /** How the names of its groups begin. */
    public static final String GROUP = "list-";

    /** Widest line, in sizes of the letters. */
    private static final double WIDTH = 46;

    /** A group has no more lines; so many are read on the smallest page. */
    private static final int LINES = 24;

    private static final int MOST_LINES = 4;
    private static final double LEADING = 1.5;
    private static final double BETWEEN = 0.7;

    private final TextMeasure measure;
    private final double size;
    private final double indent;
    private final List<Group> groups = new ArrayList<>();
    private final List<SceneItem> items = new ArrayList<>();
    private int lines;

    /**
     * An empty list.
     *
     * @param size of its letters, in
     * @param key how wide the widest number is, in
     */
    public NumberedList(TextMeasure measure, double size, double key) {
        this.measure = measure;
        this.size = size;
        this.indent = key + BETWEEN * size;
    }

    /**
     * Adds what a number means.
     *
     * @param subject what it is about
     * @param key draws the number as it stands in the picture, from the middle of its left edge
     */
    public void add(Subject subject, String meaning, Function<Point, List<SceneItem>> key) {
        List<String> said = Words.lines(measure, meaning, size, WIDTH * size - indent, MOST_LINES);
        if (lines > 0 && lines + said.size() > LINES) {
            close();
        }
        List<SceneItem> entry =
                new ArrayList<>(key.apply(new Point(0, -lines * LEADING * size + size * Label.CAPITALS / 2)));
        for (String line : said) {
            Point at = new Point(indent, -lines * LEADING * size);
            entry.add(Label.of(measure, line, at, size, Label.Anchor.START));
            lines++;
        }
        items.addAll(About.of(subject, entry));
    }

    private void close() {
        groups.add(new Group(GROUP + (groups.size() + 1), items));
        items.clear();
        lines = 0;
    }

    /** The list so far, from its upper left corner down; nothing more can be added then. */
    public List<Group> groups() {
        if (lines > 0) {
            close();
        }
        return List.copyOf(groups);
    }
}
