package buildup.cli.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;

class ShippedFontTest {
    private static final ShippedFont FONT = ShippedFont.load();

    @Test
    void widths_are_those_of_helvetica() {
        // Adobe Core 14 font metrics, Helvetica.afm: A 667, W 944, one 556, fraction slash's neighbor slash 278 per
        // mille
        assertThat(FONT.width("A", 1)).isCloseTo(0.667, within(0.001));
        assertThat(FONT.width("W", 1)).isCloseTo(0.944, within(0.001));
        assertThat(FONT.width("1/1", 0.5)).isCloseTo((0.556 + 0.278 + 0.556) / 2, within(0.001));
    }

    @Test
    void every_character_has_the_glyph_and_the_width_that_the_library_of_the_font_reads() throws IOException {
        byte[] file;
        try (InputStream in = ShippedFont.open()) {
            file = in.readAllBytes();
        }
        FontWidths ours = new FontWidths(file);
        int held = 0;
        try (TrueTypeFont theirs = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
            CmapLookup glyphs = theirs.getUnicodeCmapLookup();
            for (int character = 0; character <= 0x10FFFF; character++) {
                int glyph = glyphs.getGlyphId(character);
                if (ours.glyph(character) != glyph) {
                    assertThat(ours.glyph(character)).as("U+%04X", character).isEqualTo(glyph);
                }
                if (glyph > 0) {
                    held++;
                    assertThat(ours.width(glyph))
                            .isCloseTo((double) theirs.getAdvanceWidth(glyph) / theirs.getUnitsPerEm(), within(1e-12));
                }
            }
        }
        assertThat(held).isGreaterThan(2_000);
    }

    @Test
    void a_letter_of_another_script_takes_as_much_room_on_every_machine() {
        assertThat(FONT.width("\u98fe", 2)).isCloseTo(2, within(1e-9));
        assertThat(FONT.width("\u0639", 2)).isCloseTo(1.2, within(1e-9));
    }

    @Test
    void what_is_read_from_the_right_is_set_from_the_right() {
        assertThat(shipped("\u05d0\u05d1\u05d2")).containsExactly("\u05d2\u05d1\u05d0");
        assertThat(String.join("", shipped("cap \u05d0\u05d1 x"))).isEqualTo("cap \u05d1\u05d0 x");
        assertThat(shipped("\u05d0(\u05d1)\u05d2")).containsExactly("\u05d2(\u05d1)\u05d0");
    }

    private static List<String> shipped(String text) {
        return FONT.set(text).parts().stream()
                .map(part -> ((SetText.Shipped) part).text())
                .toList();
    }
}
