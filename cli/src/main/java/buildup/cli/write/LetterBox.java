package buildup.cli.write;

import buildup.profiles.outline.Point;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * A box with the number of a letter that no font has, as the Unicode charts number it, in two rows of figures.
 *
 * @param figures the outlines of figures at size 1
 */
record LetterBox(Function<String, GeneralPath> figures) {
    /** Of the figures in it. */
    private static final double SIZE = 0.4;

    private static final double LINE = 0.03;
    private static final double LOW = -0.14;
    private static final double HIGH = 0.78;
    private static final double LEFT = 0.05;

    /** The widest of the figures and of A to F. */
    private static final double FIGURE = 0.72;

    /** The boxes of a stretch, from left to right. */
    SetText.Other set(TextOrder.Stretch stretch) {
        List<SetText.Glyph> boxes = new ArrayList<>();
        double at = 0;
        for (int letter : stretch.leftToRight()
                .codePoints()
                .filter(one -> !OtherFonts.isUnseen(one))
                .toArray()) {
            SetText.Glyph box = box(letter, at);
            boxes.add(box);
            at += box.advance();
        }
        return new SetText.Other(boxes, at);
    }

    private SetText.Glyph box(int letter, double at) {
        String number = String.format(Locale.ROOT, letter > 0xFFFF ? "%06X" : "%04X", letter);
        int half = number.length() / 2;
        double wide = half * FIGURE * SIZE + 4 * LINE;
        GeneralPath drawn = new GeneralPath(Path2D.WIND_NON_ZERO);
        // the inside runs the other way round, so that it stays empty
        drawn.append(new Rectangle2D.Double(LEFT, LOW, wide, HIGH - LOW), false);
        Rectangle2D inside = new Rectangle2D.Double(LEFT + LINE, LOW + LINE, wide - 2 * LINE, HIGH - LOW - 2 * LINE);
        drawn.moveTo(inside.getMinX(), inside.getMinY());
        drawn.lineTo(inside.getMinX(), inside.getMaxY());
        drawn.lineTo(inside.getMaxX(), inside.getMaxY());
        drawn.lineTo(inside.getMaxX(), inside.getMinY());
        drawn.closePath();
        row(drawn, number.substring(0, half), (LOW + HIGH) / 2 + 2 * LINE);
        row(drawn, number.substring(half), LOW + 3 * LINE);
        return new SetText.Glyph("box/" + number, Character.toString(letter), drawn, new Point(at, 0), wide + 2 * LEFT);
    }

    private void row(GeneralPath drawn, String number, double baseline) {
        AffineTransform place = AffineTransform.getTranslateInstance(LEFT + 2 * LINE, baseline);
        place.scale(SIZE, SIZE);
        drawn.append(place.createTransformedShape(figures.apply(number)), false);
    }
}
