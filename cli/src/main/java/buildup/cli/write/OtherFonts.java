package buildup.cli.write;

import buildup.profiles.outline.Point;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * Letters that the shipped font lacks, as outlines of the fonts that are installed. A font of all scripts is too large to
 * ship, and whoever writes in a script has a font of it. The library shapes what joins (Arabic) or stacks (Devanagari).
 */
final class OtherFonts {
    /** Outlines are asked for at this size, so that no hinting is left in them. */
    private static final float SIZE = 1000;

    /** These stand for whatever the machine is set to, which may differ by language. */
    private static final Set<String> LOGICAL =
            Set.of(Font.DIALOG, Font.DIALOG_INPUT, Font.MONOSPACED, Font.SANS_SERIF, Font.SERIF);

    /** Apart, so that a picture whose letters are all in the shipped font does not wait for the graphics of Java. */
    private static final class Drawing {
        private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
    }

    private final Supplier<List<Font>> installed;
    private final Map<Integer, Optional<Font>> known = new HashMap<>();
    private Optional<List<Font>> fonts = Optional.empty();

    /** @param installed the fonts, the best first; asked for when the first letter is */
    OtherFonts(Supplier<List<Font>> installed) {
        this.installed = installed;
    }

    /** Those of the machine: plain faces, those without serifs first, in the order of their names. */
    static OtherFonts ofTheMachine() {
        return new OtherFonts(OtherFonts::installed);
    }

    private static List<Font> installed() {
        String[] families;
        try {
            families = GraphicsEnvironment.getLocalGraphicsEnvironment().getAvailableFontFamilyNames(Locale.ROOT);
        } catch (InternalError | LinkageError | RuntimeException none) {
            // a machine without the libraries of fonts has none to offer
            return List.of();
        }
        return Arrays.stream(families)
                .filter(family -> !LOGICAL.contains(family) && !family.contains("LastResort"))
                .sorted(Comparator.comparing((String family) -> !family.contains("Sans"))
                        .thenComparing(Comparator.naturalOrder()))
                .map(family -> new Font(family, Font.PLAIN, (int) SIZE))
                .toList();
    }

    /** The letters of a text that no font has. */
    Set<Integer> lacking(String text) {
        Set<Integer> lacking = new TreeSet<>();
        text.codePoints()
                .filter(letter -> !isUnseen(letter) && font(letter).isEmpty())
                .forEach(lacking::add);
        return lacking;
    }

    /** Whether a character only tells how others are drawn. */
    static boolean isUnseen(int letter) {
        return Character.getType(letter) == Character.FORMAT
                || (letter >= 0xFE00 && letter <= 0xFE0F)
                || (letter >= 0xE0100 && letter <= 0xE01EF);
    }

    private synchronized Optional<Font> font(int letter) {
        if (fonts.isEmpty()) {
            fonts = Optional.of(installed.get());
        }
        return known.computeIfAbsent(
                letter,
                key -> fonts.orElseThrow().stream()
                        .filter(font -> draws(font, key))
                        .findFirst());
    }

    /** A font of colored pictures has a letter and no outline of it. */
    private static boolean draws(Font font, int letter) {
        return font.canDisplay(letter)
                && (Character.isWhitespace(letter)
                        || !font.createGlyphVector(Drawing.CONTEXT, Character.toString(letter))
                                .getOutline()
                                .getBounds2D()
                                .isEmpty());
    }

    /** A stretch whose letters the shipped font lacks. */
    SetText.Other set(TextOrder.Stretch stretch, LetterBox box) {
        List<TextOrder.Stretch> byFont = byFont(stretch);
        List<SetText.Glyph> glyphs = new ArrayList<>();
        double width = 0;
        for (TextOrder.Stretch one : byFont) {
            Optional<Font> font = one.text()
                    .codePoints()
                    .filter(letter -> !isUnseen(letter))
                    .mapToObj(this::font)
                    .findFirst()
                    .orElse(Optional.empty());
            SetText.Other part = font.map(found -> laid(found, one)).orElseGet(() -> box.set(one));
            for (SetText.Glyph glyph : part.glyphs()) {
                glyphs.add(glyph.moved(width));
            }
            width += part.width();
        }
        return new SetText.Other(glyphs, width);
    }

    /** Cut where another font takes over, from left to right. */
    private List<TextOrder.Stretch> byFont(TextOrder.Stretch stretch) {
        List<TextOrder.Stretch> cut = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        Optional<Font> current = Optional.empty();
        for (int letter : stretch.text().codePoints().toArray()) {
            Optional<Font> own = isUnseen(letter) ? current : font(letter);
            if (!text.isEmpty() && !own.equals(current)) {
                cut.add(new TextOrder.Stretch(text.toString(), stretch.fromRight()));
                text.setLength(0);
            }
            current = own;
            text.appendCodePoint(letter);
        }
        cut.add(new TextOrder.Stretch(text.toString(), stretch.fromRight()));
        if (stretch.fromRight()) {
            Collections.reverse(cut);
        }
        return cut;
    }

    private static SetText.Other laid(Font font, TextOrder.Stretch stretch) {
        char[] letters = stretch.text().toCharArray();
        GlyphVector vector = font.deriveFont(SIZE)
                .layoutGlyphVector(
                        Drawing.CONTEXT,
                        letters,
                        0,
                        letters.length,
                        stretch.fromRight() ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT);
        int count = vector.getNumGlyphs();
        int[] firsts = vector.getGlyphCharIndices(0, count, null);
        List<SetText.Glyph> glyphs = new ArrayList<>();
        Set<Integer> said = new TreeSet<>();
        for (int i = 0; i < count; i++) {
            String says =
                    said.add(firsts[i]) ? stretch.text().substring(firsts[i], after(firsts, i, letters.length)) : "";
            Point2D at = vector.getGlyphPosition(i);
            AffineTransform home = AffineTransform.getScaleInstance(1 / SIZE, -1 / SIZE);
            home.translate(-at.getX(), -at.getY());
            GeneralPath outline = new GeneralPath(home.createTransformedShape(vector.getGlyphOutline(i)));
            glyphs.add(new SetText.Glyph(
                    font.getFontName(Locale.ROOT) + "/" + vector.getGlyphCode(i) + "/" + says,
                    says,
                    outline,
                    new Point(at.getX() / SIZE, -at.getY() / SIZE),
                    vector.getGlyphMetrics(i).getAdvanceX() / SIZE));
        }
        return new SetText.Other(glyphs, vector.getGlyphPosition(count).getX() / SIZE);
    }

    /** Where the letters of the next glyph begin, in the order in which they are spoken. */
    private static int after(int[] firsts, int glyph, int length) {
        return Arrays.stream(firsts)
                .filter(first -> first > firsts[glyph])
                .min()
                .orElse(length);
    }
}
