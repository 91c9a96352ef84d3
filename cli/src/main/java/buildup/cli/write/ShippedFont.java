package buildup.cli.write;

import buildup.cli.scene.TextMeasure;
import java.awt.geom.GeneralPath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Liberation Sans, which comes with the PDF library: its widths are those of Arial and Helvetica. */
public final class ShippedFont implements TextMeasure {
    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    /** Drawn for a character that the font does not hold. */
    private static final int MISSING = '?';

    private final byte[] file;
    private final FontWidths font;
    private final Map<Integer, Double> widths = new HashMap<>();

    private Optional<TrueTypeFont> parsed = Optional.empty();

    private ShippedFont(byte[] file) {
        this.file = file;
        this.font = new FontWidths(file);
    }

    /**
     * The font that the program ships.
     *
     * @throws UncheckedIOException when it cannot be read from the jar
     */
    public static ShippedFont load() {
        try (InputStream file = open()) {
            return new ShippedFont(file.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException("the font that comes with the program cannot be read", e);
        }
    }

    static InputStream open() {
        return Objects.requireNonNull(PDType0Font.class.getResourceAsStream(FILE), "no font in the program: " + FILE);
    }

    @Override
    public double width(String text, double size) {
        return size * text.codePoints().mapToDouble(this::width).sum();
    }

    /** Share of the size. */
    private double width(int character) {
        return widths.computeIfAbsent(character, this::measured);
    }

    private double measured(int character) {
        int glyph = font.glyph(character);
        // another font will draw what is missing here: wide characters are as wide as the size
        double own = font.width(glyph);
        return glyph == 0 ? Math.max(1, own) : own;
    }

    /** The text with a question mark for each character that the font lacks, left to right as it stands on paper. */
    String drawable(String text) {
        StringBuilder drawn = new StringBuilder();
        leftToRight(text)
                .codePoints()
                .map(character -> font.glyph(character) == 0 ? MISSING : character)
                .forEach(drawn::appendCodePoint);
        return drawn.toString();
    }

    private static String leftToRight(String text) {
        char[] characters = text.toCharArray();
        if (!Bidi.requiresBidi(characters, 0, characters.length)) {
            return text;
        }
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
        int count = bidi.getRunCount();
        byte[] levels = new byte[count];
        String[] runs = new String[count];
        for (int i = 0; i < count; i++) {
            String run = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            levels[i] = (byte) bidi.getRunLevel(i);
            runs[i] =
                    levels[i] % 2 == 0 ? run : new StringBuilder(run).reverse().toString();
        }
        Bidi.reorderVisually(levels, 0, runs, 0, count);
        return String.join("", runs);
    }

    /** The font with its outlines, parsed when it is first asked for. */
    private synchronized TrueTypeFont whole() throws IOException {
        if (parsed.isEmpty()) {
            parsed = Optional.of(new TTFParser().parse(new RandomAccessReadBuffer(file)));
        }
        return parsed.get();
    }

    /** The outlines of a text set from the origin to the right, y up, at size 1. */
    GeneralPath outlines(String text) {
        GeneralPath path = new GeneralPath();
        java.awt.geom.AffineTransform place = new java.awt.geom.AffineTransform();
        try {
            TrueTypeFont whole = whole();
            place.scale(1.0 / whole.getUnitsPerEm(), 1.0 / whole.getUnitsPerEm());
            for (int character : drawable(text).codePoints().toArray()) {
                int glyph = font.glyph(character);
                GlyphData data = whole.getGlyph().getGlyph(glyph);
                if (data != null) {
                    path.append(place.createTransformedShape(data.getPath()), false);
                }
                place.translate(whole.getAdvanceWidth(glyph), 0);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return path;
    }
}
