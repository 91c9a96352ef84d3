package buildup.cli.write;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.drawing.section.Drawn;
import buildup.shared.length.LengthUnit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PngWriterTest {
    private static final byte[] PNG = PngWriter.write(Drawn.of(Drawn.ONE).scene(), Drawn.FONT, 100);

    @Test
    void it_has_the_dots_asked_for_on_white() throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PNG));
        assertThat(image.getWidth()).isEqualTo(850);
        assertThat(image.getHeight()).isEqualTo(1100);
        assertThat(image.getRGB(0, 0)).isEqualTo(0xFFFFFFFF);
        assertThat(image.getRGB(849, 1099)).isEqualTo(0xFFFFFFFF);
    }

    @Test
    void it_says_how_many_dots_make_an_inch() {
        // PNG specification (W3C, second edition), 11.3.5.3 pHYs: pixels per meter, unit 1
        int at = new String(PNG, StandardCharsets.ISO_8859_1).indexOf("pHYs") + 4;
        ByteBuffer chunk = ByteBuffer.wrap(PNG, at, 9);
        assertThat(chunk.getInt()).isEqualTo(3937);
        assertThat(chunk.getInt()).isEqualTo(3937);
        assertThat(chunk.get()).isEqualTo((byte) 1);
    }

    @Test
    void the_same_scene_gives_the_same_bytes() {
        assertThat(PngWriter.write(Drawn.of(Drawn.ONE).scene(), Drawn.FONT, 100))
                .isEqualTo(PNG);
    }

    @Test
    void letters_need_no_font_on_the_machine() {
        assertThat(SvgWriter.withoutFonts(Drawn.of(Drawn.ONE).scene(), LengthUnit.INCH, Drawn.FONT))
                .doesNotContain("<text");
    }
}
