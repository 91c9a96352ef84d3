package buildup.cli.write;

import buildup.cli.scene.Label;
import buildup.profiles.outline.Point;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.util.List;

/**
 * A line of text as it stands on paper, left to right, at size 1.
 *
 * @param parts in the order in which they stand
 */
record SetText(List<Part> parts) {
    SetText {
        parts = List.copyOf(parts);
    }

    /** What is set in one go. */
    sealed interface Part permits Shipped, Other {
        /** How much further right the next one begins. */
        double width();
    }

    /** Letters of the shipped font, in the order in which they stand. */
    record Shipped(String text, double width) implements Part {}

    /** Letters of another font, or boxes for what no font has. */
    record Other(List<Glyph> glyphs, double width) implements Part {
        Other {
            glyphs = List.copyOf(glyphs);
        }
    }

    /**
     * One drawn letter, or several that are drawn as one.
     *
     * @param key the same for the same drawing of the same letters
     * @param says the letters; empty where they are said by the glyph before
     * @param outline from its own origin, y up
     * @param at where its origin stands within its part
     * @param advance its own width
     */
    record Glyph(String key, String says, GeneralPath outline, Point at, double advance) {
        Glyph moved(double right) {
            return new Glyph(key, says, outline, at.plus(new Point(right, 0)), advance);
        }
    }

    double width() {
        return parts.stream().mapToDouble(Part::width).sum();
    }

    /** Whether the shipped font has all of it. */
    boolean plain() {
        return parts.stream().allMatch(Shipped.class::isInstance);
    }

    /** So much narrower than it would be it is set, where another font is wider than the room that was left for it. */
    double squeezed(Label label) {
        double natural = width() * label.size();
        return plain() || natural <= label.width() ? 1 : label.width() / natural;
    }

    /** Where it begins, on the baseline: a text that is narrower than its room still keeps to its anchor. */
    Point start(Label label) {
        if (plain()) {
            return label.start();
        }
        double before = label.anchor().share() * width() * label.size() * squeezed(label);
        return label.at().minus(label.upright() ? new Point(0, before) : new Point(before, 0));
    }

    /** Where letters of that size stand: turned, squeezed, from the start of the text and so much further along. */
    AffineTransform place(Label label, Point along) {
        Point start = start(label);
        AffineTransform place = AffineTransform.getTranslateInstance(start.x(), start.y());
        if (label.upright()) {
            place.quadrantRotate(1);
        }
        place.scale(squeezed(label), 1);
        place.translate(along.x() * label.size(), along.y() * label.size());
        return place;
    }
}
