package buildup.cli.write;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.OutsideTool;
import buildup.cli.scene.Label;
import buildup.cli.scene.Scene;
import buildup.profiles.outline.Point;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names in scripts that the shipped font lacks, with fonts of the machine and without any. */
class OtherLettersTest {
    /** Chinese and Japanese, from a package of Debian, {@code fonts-droid-fallback}. */
    private static final String INSTALLED = "Droid Sans Fallback";

    private static final ShippedFont ALONE = ShippedFont.beside(new OtherFonts(List::of));

    /** "Shelf" in Chinese, the word in Japanese letters beside it. */
    private static final String SHELF = "\u67b6\u5b50 \u305f\u306a shelf";

    @TempDir
    private Path folder;

    private static ShippedFont beside(String family) {
        return ShippedFont.beside(new OtherFonts(() -> List.of(new Font(family, Font.PLAIN, 1))));
    }

    private static Scene scene(ShippedFont font, String text) {
        return new Scene(
                "A shelf",
                "",
                6,
                1,
                List.of(
                        Label.of(font, text, new Point(0.5, 0.5), 0.25, Label.Anchor.START),
                        Label.centered(font, text, new Point(5.5, 0.5), 0.05, true)));
    }

    private static void requireInstalled() {
        OutsideTool.require(
                INSTALLED,
                Arrays.asList(GraphicsEnvironment.getLocalGraphicsEnvironment()
                                .getAvailableFontFamilyNames(Locale.ROOT))
                        .contains(INSTALLED));
    }

    private String found(byte[] pdf) throws Exception {
        Files.write(folder.resolve("a.pdf"), pdf);
        assertThat(OutsideTool.run(folder, "qpdf", "--check", "a.pdf").code()).isZero();
        return OutsideTool.run(folder, "pdftotext", "-enc", "UTF-8", "a.pdf", "-")
                .output();
    }

    @Test
    void a_letter_that_no_font_has_is_a_box_with_its_number_and_is_found_as_the_letter_that_it_is() throws Exception {
        byte[] pdf = PdfWriter.write(scene(ALONE, SHELF), ALONE);
        assertThat(found(pdf)).contains("\u67b6\u5b50", "\u305f\u306a", "shelf").doesNotContain("?");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(document)).contains("\u67b6\u5b50");
        }
        // a letter, embedded, with its meaning
        assertThat(OutsideTool.run(folder, "pdffonts", "a.pdf").output())
                .containsPattern("Type 3 +Custom +yes no +yes");
        SetText.Glyph box =
                ((SetText.Other) ALONE.set("\u67b6").parts().get(0)).glyphs().get(0);
        assertThat(box.outline().getBounds2D().getHeight()).isGreaterThan(0.6);
        assertThat(box.outline().contains(0.5 * box.advance(), 0.755))
                .as("the line of the box above")
                .isTrue();
        assertThat(box.outline().contains(0.5 * box.advance(), 0.32))
                .as("between the rows of figures")
                .isFalse();
    }

    @Test
    void what_no_font_has_is_told_by_letter_and_number_with_a_cure() {
        Notices notices = new Notices();
        assertThat(LackingLetters.told(List.of(scene(ALONE, SHELF)), ALONE, notices))
                .isTrue();
        assertThat(notices.sorted()).hasSize(1);
        FigurePrinter printer = new FigurePrinter(LengthUnit.INCH);
        assertThat(printer.print(notices.sorted().get(0).sentence()))
                .contains("\u67b6 (U+67B6)", "\u5b50 (U+5B50)", "\u305f (U+305F)", "\u306a (U+306A)");
        assertThat(printer.print(notices.sorted().get(0).cure().orElseThrow())).startsWith("Install a font");
        assertThat(LackingLetters.told(List.of(scene(ALONE, "shelf 1/2")), ALONE, new Notices()))
                .isFalse();
    }

    @Test
    void a_font_of_the_machine_draws_them_and_they_are_found() throws Exception {
        requireInstalled();
        ShippedFont font = beside(INSTALLED);
        assertThat(font.lacking(SHELF)).isEmpty();
        byte[] pdf = PdfWriter.write(scene(font, SHELF), font);
        assertThat(PdfWriter.write(scene(font, SHELF), beside(INSTALLED))).isEqualTo(pdf);
        assertThat(found(pdf)).contains("\u67b6\u5b50", "\u305f\u306a", "shelf");
    }

    /** The reader's dots of the word in the file, beside dots of the font set by the Java library at the same place. */
    @Test
    void they_are_drawn_as_the_font_has_them() throws Exception {
        requireInstalled();
        ShippedFont font = beside(INSTALLED);
        String word = "\u67b6\u5b50\u6a90\u53e3";
        Scene scene =
                new Scene("", "", 6, 2, List.of(Label.of(font, word, new Point(0.5, 0.5), 1, Label.Anchor.START)));
        Files.write(folder.resolve("a.pdf"), PdfWriter.write(scene, font));
        OutsideTool.run(folder, "pdftoppm", "-r", "100", "-gray", "-png", "a.pdf", "page");
        BufferedImage page = ImageIO.read(folder.resolve("page-1.png").toFile());
        BufferedImage set = new BufferedImage(600, 200, BufferedImage.TYPE_BYTE_GRAY);
        java.awt.Graphics2D pen = set.createGraphics();
        pen.setColor(java.awt.Color.WHITE);
        pen.fillRect(0, 0, 600, 200);
        pen.setColor(java.awt.Color.BLACK);
        pen.setRenderingHint(
                java.awt.RenderingHints.KEY_TEXT_ANTIALIASING, java.awt.RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setFont(new Font(INSTALLED, Font.PLAIN, 100));
        pen.drawString(word, 50, 150);
        long ink = dots(page);
        long other = IntStream.range(0, 600 * 200)
                .filter(i ->
                        Math.abs((page.getRGB(i % 600, i / 600) & 255) - (set.getRGB(i % 600, i / 600) & 255)) > 128)
                .count();
        assertThat(ink).isGreaterThan(4_000);
        assertThat(other).isLessThan(ink / 20);
    }

    private static long dots(BufferedImage page) {
        return IntStream.range(0, page.getWidth() * page.getHeight())
                .filter(i -> (page.getRGB(i % page.getWidth(), i / page.getWidth()) & 255) < 128)
                .count();
    }

    @Test
    void more_letters_than_one_font_of_a_file_holds_go_on_in_another() throws Exception {
        StringBuilder text = new StringBuilder();
        IntStream.range(0x4E00, 0x4E00 + 300).forEach(text::appendCodePoint);
        Label small = Label.of(ALONE, text.toString(), new Point(0.1, 0.5), 0.01, Label.Anchor.START);
        String found = found(PdfWriter.write(new Scene("", "", 6, 1, List.of(small)), ALONE));
        assertThat(found.replaceAll("\\s", "")).isEqualTo(text.toString());
        assertThat(OutsideTool.run(folder, "pdffonts", "a.pdf")
                        .output()
                        .lines()
                        .filter(line -> line.contains("Type 3")))
                .hasSize(2);
    }

    @Test
    void letters_read_from_the_right_stand_so_between_those_read_from_the_left() {
        SetText set = ALONE.set("lip \u0639\u0631\u0628 cap");
        assertThat(set.parts()).hasSize(3);
        SetText.Other other = (SetText.Other) set.parts().get(1);
        assertThat(other.glyphs()).extracting(SetText.Glyph::says).containsExactly("\u0628", "\u0631", "\u0639");
    }

    /** By the letter of Unicode Standard Annex 9 a size behind an Arabic name would be shown as 1/2-1. */
    @ParameterizedTest
    @ValueSource(strings = {"1-1/2", "5'-6 1/2\"", "3/4", "19.05"})
    void a_size_beside_an_arabic_name_stays_that_size(String size) {
        List<SetText.Part> parts = ALONE.set("\u0639\u0631\u0628 " + size).parts();
        assertThat(parts.get(0)).isInstanceOf(SetText.Other.class);
        assertThat(parts.stream()
                        .filter(SetText.Shipped.class::isInstance)
                        .map(part -> ((SetText.Shipped) part).text())
                        .collect(Collectors.joining()))
                .contains(size);
        String svg = new String(SvgWriter.write(scene(ALONE, "\u0639\u0631\u0628 " + size), LengthUnit.INCH), UTF_8);
        assertThat(svg).contains("\u200e" + size.charAt(0));
    }

    @Test
    void a_text_wider_than_its_room_is_squeezed_into_it_and_keeps_to_its_anchor() {
        Label label = Label.of(ALONE, "\u0639\u0631\u0628", new Point(2, 1), 0.1, Label.Anchor.MIDDLE);
        SetText boxes = ALONE.set(label.text());
        double half = boxes.width() * label.size() * boxes.squeezed(label) / 2;
        assertThat(boxes.width() * label.size()).isGreaterThan(label.width());
        assertThat(2 * half).isCloseTo(label.width(), within(1e-9));
        assertThat(boxes.start(label).x()).isCloseTo(2 - half, within(1e-9));
    }

    @Test
    void an_svg_leaves_them_to_the_viewer_and_has_them_as_outlines_when_asked() {
        Scene scene = scene(ALONE, SHELF);
        String text = new String(SvgWriter.write(scene, LengthUnit.INCH), UTF_8);
        assertThat(text).contains(SHELF);
        String drawn = new String(SvgWriter.outlined(scene, LengthUnit.INCH, ALONE), UTF_8);
        assertThat(drawn).doesNotContain("<text").contains("<title>" + SHELF);
    }
}
