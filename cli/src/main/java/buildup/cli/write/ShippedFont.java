package buildup.cli.write;

import buildup.cli.scene.TextMeasure;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Liberation Sans, which comes with the PDF library: its widths are those of Arial and Helvetica. */
public final class ShippedFont implements TextMeasure {
    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    /** About how wide a letter of another script is, as a share of the size. */
    private static final double NARROW = 0.6;

    /** Scripts whose letters each fill a square. */
    private static final Set<Character.UnicodeScript> SQUARE = EnumSet.of(
            Character.UnicodeScript.HAN,
            Character.UnicodeScript.HIRAGANA,
            Character.UnicodeScript.KATAKANA,
            Character.UnicodeScript.HANGUL,
            Character.UnicodeScript.BOPOMOFO,
            Character.UnicodeScript.YI);

    private final byte[] file;
    private final FontWidths font;
    private final OtherFonts others;
    private final LetterBox box = new LetterBox(this::own);
    private final Map<Integer, Double> widths = new HashMap<>();

    private Optional<TrueTypeFont> parsed = Optional.empty();

    private ShippedFont(byte[] file, OtherFonts others) {
        this.file = file;
        this.others = others;
        this.font = new FontWidths(file);
    }

    /**
     * The font that the program ships, and beside it those of the machine for letters that it lacks.
     *
     * @throws UncheckedIOException when it cannot be read from the jar
     */
    public static ShippedFont load() {
        return beside(OtherFonts.ofTheMachine());
    }

    /** The same beside other fonts. */
    static ShippedFont beside(OtherFonts others) {
        try (InputStream file = open()) {
            return new ShippedFont(file.readAllBytes(), others);
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
        return glyph == 0 ? guessed(character) : font.width(glyph);
    }

    /** Another font will draw it, which may be another on each machine: pictures are laid out alike on all of them. */
    private static double guessed(int character) {
        int type = Character.getType(character);
        if (OtherFonts.isUnseen(character) || type == Character.NON_SPACING_MARK) {
            return 0;
        }
        boolean square = character > 0xFFFF
                || SQUARE.contains(Character.UnicodeScript.of(character))
                || (character >= 0x3000 && character <= 0x303F)
                || (character >= 0xFF00 && character <= 0xFF60);
        return square ? 1 : NARROW;
    }

    /** A text as it stands on paper: letters that the font lacks are those of other fonts, or boxes with their numbers. */
    SetText set(String text) {
        List<SetText.Part> parts = new ArrayList<>();
        for (TextOrder.Stretch stretch : TextOrder.of(text)) {
            List<SetText.Part> own = new ArrayList<>();
            for (String piece : pieces(stretch.text())) {
                TextOrder.Stretch one = new TextOrder.Stretch(piece, stretch.fromRight());
                own.add(
                        holds(piece.codePointAt(0))
                                ? new SetText.Shipped(one.leftToRight(), width(piece, 1))
                                : others.set(one, box));
            }
            if (stretch.fromRight()) {
                Collections.reverse(own);
            }
            parts.addAll(own);
        }
        return new SetText(parts);
    }

    /** Cut where the font begins or ceases to have the letters; what is never seen is left to the other fonts. */
    private List<String> pieces(String text) {
        List<String> pieces = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        boolean held = true;
        for (int letter : text.codePoints().toArray()) {
            boolean unseen = OtherFonts.isUnseen(letter);
            if (unseen && (piece.isEmpty() || held)) {
                continue;
            }
            boolean own = !unseen && holds(letter);
            if (!piece.isEmpty() && own != held) {
                pieces.add(piece.toString());
                piece.setLength(0);
            }
            held = own;
            piece.appendCodePoint(letter);
        }
        if (!piece.isEmpty()) {
            pieces.add(piece.toString());
        }
        return pieces;
    }

    private boolean holds(int letter) {
        return font.glyph(letter) != 0;
    }

    /** The letters of a text that neither this font nor one of the machine has: boxes stand for them on paper. */
    public Set<Integer> lacking(String text) {
        return others.lacking(text.codePoints()
                .filter(letter -> !holds(letter))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString());
    }

    /** The font with its outlines, parsed when it is first asked for. */
    private synchronized TrueTypeFont whole() throws IOException {
        if (parsed.isEmpty()) {
            parsed = Optional.of(new TTFParser().parse(new RandomAccessReadBuffer(file)));
        }
        return parsed.get();
    }

    /** The outlines of letters set from the origin to the right, y up, at size 1. */
    private GeneralPath own(String text) {
        GeneralPath path = new GeneralPath();
        AffineTransform place = new AffineTransform();
        try {
            TrueTypeFont whole = whole();
            place.scale(1.0 / whole.getUnitsPerEm(), 1.0 / whole.getUnitsPerEm());
            for (int character : text.codePoints().toArray()) {
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

    /** The outlines of a text set from the origin to the right, y up, at size 1. */
    GeneralPath outlines(SetText text) {
        GeneralPath path = new GeneralPath();
        double from = 0;
        for (SetText.Part part : text.parts()) {
            AffineTransform place = AffineTransform.getTranslateInstance(from, 0);
            if (part instanceof SetText.Shipped shipped) {
                path.append(place.createTransformedShape(own(shipped.text())), false);
            } else if (part instanceof SetText.Other other) {
                for (SetText.Glyph glyph : other.glyphs()) {
                    AffineTransform at = new AffineTransform(place);
                    at.translate(glyph.at().x(), glyph.at().y());
                    path.append(at.createTransformedShape(glyph.outline()), false);
                }
            }
            from += part.width();
        }
        return path;
    }
}
