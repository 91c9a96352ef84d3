package buildup.cli.write;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * How wide the characters of a font are, out of the bytes of its file (OpenType 1.9: tables {@code head}, {@code hhea},
 * {@code hmtx}, and {@code cmap} in its format 4). A whole font is parsed where its outlines are asked for; to lay out a
 * picture that would take longer than the picture.
 */
final class FontWidths {
    /** Platform and encoding: Unicode, as far as two bytes go. */
    private static final int WINDOWS = 3;

    private static final int UNICODE = 1;

    private final ByteBuffer file;
    private final int unitsPerEm;
    private final int metrics;
    private final int widths;
    private final int characters;

    /** @throws IllegalArgumentException when the file holds no widths for Unicode */
    FontWidths(byte[] bytes) {
        this.file = ByteBuffer.wrap(bytes);
        this.unitsPerEm = number(table("head") + 18);
        this.metrics = number(table("hhea") + 34);
        this.widths = table("hmtx");
        this.characters = unicode(table("cmap"));
    }

    private int number(int at) {
        return Short.toUnsignedInt(file.getShort(at));
    }

    private int table(String name) {
        byte[] tag = new byte[4];
        for (int i = 0; i < number(4); i++) {
            file.get(12 + 16 * i, tag);
            if (name.equals(new String(tag, StandardCharsets.US_ASCII))) {
                return file.getInt(12 + 16 * i + 8);
            }
        }
        throw new IllegalArgumentException("no table " + name);
    }

    private int unicode(int maps) {
        for (int i = 0; i < number(maps + 2); i++) {
            int entry = maps + 4 + 8 * i;
            int map = maps + file.getInt(entry + 4);
            if (number(entry) == WINDOWS && number(entry + 2) == UNICODE && number(map) == 4) {
                return map;
            }
        }
        throw new IllegalArgumentException("no map of Unicode in format 4");
    }

    /** The number of the glyph of a character, 0 for one that the font does not hold. */
    int glyph(int character) {
        int segments = number(characters + 6) / 2;
        int ends = characters + 14;
        int starts = ends + 2 * segments + 2;
        int i = 0;
        while (i < segments && number(ends + 2 * i) < character) {
            i++;
        }
        if (i == segments || number(starts + 2 * i) > character) {
            return 0;
        }
        int shift = number(starts + 2 * segments + 2 * i);
        int at = starts + 4 * segments + 2 * i;
        int offset = number(at);
        if (offset == 0) {
            return (character + shift) & 0xFFFF;
        }
        int glyph = number(at + offset + 2 * (character - number(starts + 2 * i)));
        return glyph == 0 ? 0 : (glyph + shift) & 0xFFFF;
    }

    /** The width of a glyph as a share of the size. */
    double width(int glyph) {
        return (double) number(widths + 4 * Math.min(glyph, metrics - 1)) / unitsPerEm;
    }
}
