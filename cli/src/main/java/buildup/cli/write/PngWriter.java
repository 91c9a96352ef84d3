package buildup.cli.write;

import buildup.cli.scene.Scene;
import buildup.shared.length.LengthUnit;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;

/** Writes a scene as PNG on white. Letters are drawn from the shipped font's outlines, whatever is installed. */
public final class PngWriter {
    /** A larger picture takes more memory than a small machine has, and no viewer shows it whole. */
    public static final int MOST_PIXELS = 60_000_000;

    private static final double MILLIMETERS_PER_INCH = 25.4;

    private PngWriter() {}

    /**
     * The scene as a PNG file, on white.
     *
     * @param dpi pixels in an inch; the file says so too
     * @throws IllegalStateException when the picture cannot be read back, which is a fault of the program
     */
    public static byte[] write(Scene scene, ShippedFont font, int dpi) {
        PNGTranscoder transcoder = new PNGTranscoder();
        transcoder.addTranscodingHint(
                ImageTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, (float) (MILLIMETERS_PER_INCH / dpi));
        transcoder.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            transcoder.transcode(
                    new TranscoderInput(new StringReader(SvgWriter.withoutFonts(scene, LengthUnit.INCH, font))),
                    new TranscoderOutput(out));
        } catch (TranscoderException e) {
            throw new IllegalStateException("a picture that was just drawn cannot be read", e);
        }
        return out.toByteArray();
    }
}
