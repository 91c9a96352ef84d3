package buildup.cli.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.OutsideTool;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.profiles.outline.Box;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PdfWriterTest {
    @TempDir
    private java.nio.file.Path folder;

    static Stream<String> stacks() {
        return Stream.of(Drawn.CORNICE, Drawn.BASE, Drawn.ONE, Drawn.NAMES);
    }

    private static byte[] pdf(String yaml) {
        return PdfWriter.write(Drawn.of(yaml).scene(), Drawn.FONT);
    }

    @Test
    void the_page_is_as_large_as_the_sheet_and_asks_to_be_printed_unscaled() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(Drawn.CORNICE))) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            PDRectangle page = document.getPage(0).getMediaBox();
            assertThat(page.getWidth()).isEqualTo(11 * 72);
            assertThat(page.getHeight()).isEqualTo(17 * 72);
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
        }
    }

    @Test
    void the_same_scene_gives_the_same_bytes_and_no_date() {
        byte[] first = pdf(Drawn.CORNICE);
        assertThat(pdf(Drawn.CORNICE)).isEqualTo(first);
        assertThat(new String(first, StandardCharsets.ISO_8859_1)).doesNotContain("CreationDate", "ModDate");
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void another_reader_finds_no_fault_and_the_font_in_the_file(String yaml) throws Exception {
        Files.write(folder.resolve("a.pdf"), pdf(yaml));
        OutsideTool.Run check = OutsideTool.run(folder, "qpdf", "--check", "a.pdf");
        assertThat(check.code()).as(check.output()).isZero();
        OutsideTool.Run fonts = OutsideTool.run(folder, "pdffonts", "a.pdf");
        // name, type, encoding, embedded, subset, unicode
        assertThat(fonts.output()).containsPattern("\\+LiberationSans +CID TrueType +Identity-H +yes yes yes");
        assertThat(fonts.output().lines().skip(2))
                .as("embedded, and it is known what their letters say")
                .hasSizeBetween(1, 2)
                .allMatch(line -> line.matches(".* yes +(yes|no) +yes +\\d+ +0"));
    }

    @ParameterizedTest
    @ValueSource(ints = {150, 300})
    void four_inches_are_four_inches_on_paper_both_ways(int dpi) throws Exception {
        Scene scene = Drawn.of(Drawn.CORNICE).scene();
        Files.write(folder.resolve("a.pdf"), PdfWriter.write(scene, Drawn.FONT));
        OutsideTool.Run run = OutsideTool.run(folder, "pdftoppm", "-r", dpi, "-gray", "-png", "a.pdf", "page");
        assertThat(run.code()).as(run.output()).isZero();
        BufferedImage page = ImageIO.read(folder.resolve("page-1.png").toFile());
        scene.leaves().stream()
                .filter(item -> item instanceof Path path && path.style() == LineStyle.CHECK)
                .forEach(check -> assertThat(measured(page, check.box(), scene.height(), dpi))
                        .isCloseTo(4, within(4 * 0.002)));
    }

    /** From the middle of one end stroke to the middle of the other, in; the line between is crossed out of the way. */
    private static double measured(BufferedImage page, Box check, double top, int dpi) {
        boolean level = check.width() > check.height();
        // along a line between the long end strokes' tips and the shorter inch marks' tips
        double aside = 0.068;
        double across = level ? (check.bottom() + check.top()) / 2 + aside : (check.back() + check.face()) / 2 + aside;
        double from = level ? check.back() : top - check.top();
        double to = level ? check.face() : top - check.bottom();
        int row = (int) ((level ? top - across : across) * dpi);
        int[] dark = IntStream.range((int) ((from - 0.1) * dpi), (int) ((to + 0.1) * dpi))
                .filter(i -> (page.getRGB(level ? i : row, level ? row : i) & 255) < 128)
                .toArray();
        assertThat(dark).isNotEmpty();
        int middle = (int) ((from + to) / 2 * dpi);
        double first = IntStream.of(dark).filter(i -> i < middle).average().orElseThrow();
        double last = IntStream.of(dark).filter(i -> i > middle).average().orElseThrow();
        return (last - first) / dpi;
    }

    @Test
    void text_can_be_found_in_the_file() throws Exception {
        Files.write(folder.resolve("a.pdf"), pdf(Drawn.CORNICE));
        OutsideTool.Run text = OutsideTool.run(folder, "pdftotext", "-layout", "a.pdf", "-");
        assertThat(text.output()).contains("Reading-room bookcase cornice", "board 3/4 x 5-1/2");
    }
}
