package buildup.cli.write;

import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType3Font;

/**
 * Letters of other fonts in a PDF file: fonts whose letters are drawn in the file itself (Type 3, ISO 32000-1, 9.6.5), so that
 * they are embedded whatever kind of file they come from, with what they say, so that text is found.
 */
final class PdfLetters {
    /** A letter is called by one byte. */
    private static final int MOST = 256;

    private static final double UNITS = 1000;

    private final PDDocument document;
    private final Map<String, Letter> letters = new HashMap<>();
    private final List<List<SetText.Glyph>> held = new ArrayList<>();
    private final List<Coded> fonts = new ArrayList<>();

    PdfLetters(PDDocument document) {
        this.document = document;
    }

    /** A letter by the font that holds it and by its number there, as a text of one character. */
    record Letter(PDType3Font font, String code) {}

    /** A font whose texts are the numbers of its letters. */
    private static final class Coded extends PDType3Font {
        Coded(COSDictionary dictionary) throws IOException {
            super(dictionary);
        }

        @Override
        protected byte[] encode(int code) {
            return new byte[] {(byte) code};
        }
    }

    /** Where a letter is found, which is put into the file when it is first asked for. */
    Letter of(SetText.Glyph glyph) throws IOException {
        Letter known = letters.get(glyph.key());
        if (known == null) {
            int last = held.size() - 1;
            if (last < 0 || held.get(last).size() == MOST) {
                held.add(new ArrayList<>());
                fonts.add(new Coded(empty()));
                last++;
            }
            known = new Letter(
                    fonts.get(last), Character.toString(held.get(last).size()));
            held.get(last).add(glyph);
            letters.put(glyph.key(), known);
        }
        return known;
    }

    private static COSDictionary empty() {
        COSDictionary font = new COSDictionary();
        font.setItem(COSName.TYPE, COSName.FONT);
        font.setItem(COSName.SUBTYPE, COSName.TYPE3);
        COSDictionary encoding = new COSDictionary();
        encoding.setItem(COSName.TYPE, COSName.ENCODING);
        encoding.setItem(COSName.DIFFERENCES, new COSArray());
        font.setItem(COSName.ENCODING, encoding);
        return font;
    }

    /** Puts into the file what the fonts hold, once no letter is asked for any more. */
    void finish() throws IOException {
        for (int i = 0; i < fonts.size(); i++) {
            fill(fonts.get(i).getCOSObject(), held.get(i));
        }
    }

    private void fill(COSDictionary font, List<SetText.Glyph> glyphs) throws IOException {
        COSDictionary drawings = new COSDictionary();
        COSArray names = new COSArray();
        names.add(COSInteger.ZERO);
        COSArray widths = new COSArray();
        Rectangle2D all = new Rectangle2D.Double();
        for (int code = 0; code < glyphs.size(); code++) {
            SetText.Glyph glyph = glyphs.get(code);
            COSName name = COSName.getPDFName("g" + code);
            names.add(name);
            widths.add(new COSFloat((float) rounded(glyph.advance())));
            drawings.setItem(name, stream(drawing(glyph)));
            all = all.createUnion(glyph.outline().getBounds2D());
        }
        font.setItem(
                COSName.FONT_BBOX,
                new PDRectangle(
                        (float) (all.getX() * UNITS),
                        (float) (all.getY() * UNITS),
                        (float) (all.getWidth() * UNITS),
                        (float) (all.getHeight() * UNITS)));
        COSArray matrix = new COSArray();
        for (double share : new double[] {1 / UNITS, 0, 0, 1 / UNITS, 0, 0}) {
            matrix.add(new COSFloat((float) share));
        }
        font.setItem(COSName.FONT_MATRIX, matrix);
        font.setItem(COSName.CHAR_PROCS, drawings);
        font.getCOSDictionary(COSName.ENCODING).setItem(COSName.DIFFERENCES, names);
        font.setInt(COSName.FIRST_CHAR, 0);
        font.setInt(COSName.LAST_CHAR, glyphs.size() - 1);
        font.setItem(COSName.WIDTHS, widths);
        font.setItem(COSName.RESOURCES, new COSDictionary());
        font.setItem(COSName.TO_UNICODE, stream(toUnicode(glyphs)));
    }

    private COSStream stream(String content) throws IOException {
        COSStream stream = document.getDocument().createCOSStream();
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(content.getBytes(StandardCharsets.US_ASCII));
        }
        return stream;
    }

    private static double rounded(double share) {
        return Math.rint(share * UNITS);
    }

    private static String drawing(SetText.Glyph glyph) {
        Rectangle2D box = glyph.outline().getBounds2D();
        StringBuilder drawing = new StringBuilder(numbers(rounded(glyph.advance()), 0))
                .append(numbers(
                        UNITS * box.getMinX(), UNITS * box.getMinY(), UNITS * box.getMaxX(), UNITS * box.getMaxY()))
                .append("d1\n");
        return drawing.append(path(glyph.outline())).append("f\n").toString();
    }

    private static String path(GeneralPath outline) {
        StringBuilder path = new StringBuilder();
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator walk = outlines(outline); !walk.isDone(); walk.next()) {
            switch (walk.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> {
                    path.append(numbers(c[0], c[1])).append("m\n");
                    x = c[0];
                    y = c[1];
                }
                case PathIterator.SEG_LINETO -> {
                    path.append(numbers(c[0], c[1])).append("l\n");
                    x = c[0];
                    y = c[1];
                }
                case PathIterator.SEG_QUADTO -> {
                    // a curve of the third degree alike: two thirds of the way to its corner from either end
                    path.append(numbers(
                                    x + 2 * (c[0] - x) / 3,
                                    y + 2 * (c[1] - y) / 3,
                                    c[2] + 2 * (c[0] - c[2]) / 3,
                                    c[3] + 2 * (c[1] - c[3]) / 3,
                                    c[2],
                                    c[3]))
                            .append("c\n");
                    x = c[2];
                    y = c[3];
                }
                case PathIterator.SEG_CUBICTO -> {
                    path.append(numbers(c)).append("c\n");
                    x = c[4];
                    y = c[5];
                }
                default -> path.append("h\n");
            }
        }
        return path.toString();
    }

    private static PathIterator outlines(GeneralPath outline) {
        return outline.getPathIterator(java.awt.geom.AffineTransform.getScaleInstance(UNITS, UNITS));
    }

    private static String numbers(double... values) {
        StringBuilder numbers = new StringBuilder();
        for (double value : values) {
            numbers.append(String.format(Locale.ROOT, "%.2f ", value));
        }
        return numbers.toString();
    }

    /** What each letter says (ISO 32000-1, 9.10.3). */
    private static String toUnicode(List<SetText.Glyph> glyphs) {
        StringBuilder map = new StringBuilder("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n")
                .append("/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n")
                .append("/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n")
                .append("1 begincodespacerange\n<00> <FF>\nendcodespacerange\n");
        for (int code = 0; code < glyphs.size(); code++) {
            if (!glyphs.get(code).says().isEmpty()) {
                map.append(String.format(Locale.ROOT, "1 beginbfchar\n<%02X> <", code));
                for (byte half : glyphs.get(code).says().getBytes(StandardCharsets.UTF_16BE)) {
                    map.append(String.format(Locale.ROOT, "%02X", half));
                }
                map.append(">\nendbfchar\n");
            }
        }
        return map.append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n")
                .toString();
    }
}
