package buildup.cli.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.OutsideTool;
import buildup.cli.Ran;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Label;
import buildup.cli.scene.Scene;
import buildup.profiles.outline.Box;
import buildup.shared.length.LengthUnit;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Texts keep to their places where a viewer does not have the font that they were measured with. */
class LettersTest {
    private static final int DPI = 100;

    /** The longest text of the piece table in a column that is followed by another. */
    private static final String LONGEST = "cove-bed 1-1/4 x 1-3/8";

    @TempDir
    private Path folder;

    private static Scene cornice() {
        return Drawn.of(Ran.read(Ran.demo("reading-room-cornice.yaml"))).scene();
    }

    private static List<Label> labels(Scene scene) {
        return scene.leaves().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
    }

    private static String outlined(Scene scene) {
        return new String(SvgWriter.outlined(scene, LengthUnit.INCH, Drawn.FONT), StandardCharsets.UTF_8);
    }

    @Test
    void letters_as_outlines_need_no_font_and_still_say_what_they_spell() {
        String svg = outlined(cornice());
        assertThat(svg).doesNotContain("<text").contains("<title>" + LONGEST + "</title>");
        assertThat(Pattern.compile("<title>").matcher(svg).results().count())
                .isGreaterThanOrEqualTo(labels(cornice()).size());
    }

    @Test
    void draw_and_sheets_write_outlines_when_they_are_asked_for() {
        String stack = Ran.demo("reading-room-cornice.yaml").toString();
        for (String[] words : List.of(
                new String[] {"draw", stack, "-q", "-o", folder.resolve("a.svg").toString()}, new String[] {
                    "sheets",
                    stack,
                    "-q",
                    "--only",
                    "pieces",
                    "-o",
                    folder.resolve("a.html").toString()
                })) {
            Path out = Path.of(words[words.length - 1]);
            Ran.of(words);
            assertThat(Ran.read(out)).contains("<text");
            Ran.of(Stream.concat(Stream.of(words), Stream.of("--outline-text")).toArray(String[]::new));
            assertThat(Ran.read(out)).doesNotContain("<text").contains("cove-bed 1-1/4 x 1-3/8");
        }
    }

    @Tag("long")
    @Test
    void letters_as_outlines_look_as_those_of_a_pdf_that_brings_its_font() throws Exception {
        Scene scene = cornice();
        Files.writeString(folder.resolve("outlined.svg"), outlined(scene));
        OutsideTool.Run run = OutsideTool.run(
                folder, "rsvg-convert", "-d", DPI, "-p", DPI, "-b", "white", "-o", "outlined.png", "outlined.svg");
        assertThat(run.code()).as(run.output()).isZero();
        Files.write(folder.resolve("font.pdf"), PdfWriter.write(List.of(scene), Drawn.FONT));
        run = OutsideTool.run(folder, "pdftoppm", "-r", DPI, "-png", "-singlefile", "font.pdf", "font");
        assertThat(run.code()).as(run.output()).isZero();
        BufferedImage outlined = ImageIO.read(folder.resolve("outlined.png").toFile());
        BufferedImage font = ImageIO.read(folder.resolve("font.png").toFile());
        assertThat(inkFarFromInk(outlined, font, 0)).as("of outlines").isZero();
        assertThat(inkFarFromInk(font, outlined, 0)).as("of the font").isZero();
        assertThat(inkFarFromInk(outlined, font, 4))
                .as("with one of them moved")
                .isPositive();
    }

    /** How many dots of one picture have none of the other within one dot. */
    private static int inkFarFromInk(BufferedImage one, BufferedImage other, int moved) {
        int far = 0;
        for (int y = 2; y < one.getHeight() - 2; y++) {
            for (int x = 2; x < Math.min(one.getWidth(), other.getWidth()) - 2 - moved; x++) {
                far += dark(one, x, y, 100) && !near(other, x + moved, y) ? 1 : 0;
            }
        }
        return far;
    }

    private static boolean near(BufferedImage image, int x, int y) {
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                if (y + dy < image.getHeight() && dark(image, x + dx, y + dy, 200)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean dark(BufferedImage image, int x, int y, int gray) {
        return (image.getRGB(x, y) & 255) < gray;
    }

    /**
     * A browser that draws with letters of one width, so far from those of the font as it can be, still sets each text in
     * the width that was measured.
     */
    @Tag("long")
    @Test
    void a_browser_without_the_font_sets_texts_in_their_widths_so_that_columns_never_touch() throws Exception {
        Scene scene = cornice();
        String svg = SvgWriter.element(scene, Optional.empty(), "")
                .replaceFirst("font-family=\"[^\"]*\"", "font-family=\"DejaVu Sans Mono, Courier New, monospace\"");
        List<Box> seen = boxes(svg);
        List<Label> labels = labels(scene);
        assertThat(seen).hasSameSizeAs(labels).hasSizeGreaterThan(60);
        for (int i = 0; i < seen.size(); i++) {
            Label label = labels.get(i);
            double along = label.upright() ? seen.get(i).height() : seen.get(i).width();
            assertThat(along).as(label.text()).isCloseTo(label.width(), within(0.01 + 0.02 * label.width()));
            assertThat(seen.get(i).back())
                    .as(label.text())
                    .isCloseTo(label.box().back(), within(label.size() / 2));
        }
        Box longest = seen.get(labels.stream().map(Label::text).toList().indexOf(LONGEST));
        assertThat(seen.stream().filter(box -> box != longest && Boxes.overlap(box.grown(-0.01), longest)))
                .isEmpty();
        // without their widths they would run into each other
        List<Box> free = boxes(svg.replaceAll(" textLength=\"[^\"]*\"", ""));
        Box wide = free.get(labels.stream().map(Label::text).toList().indexOf(LONGEST));
        assertThat(wide.width()).isGreaterThan(1.1 * longest.width());
    }

    /** Where a browser sets each text, inches of the sheet, y down. */
    private List<Box> boxes(String svg) throws Exception {
        String script = "<script>document.body.dataset.all = [...document.querySelectorAll('text')].map(t => {"
                + " const r = t.getBoundingClientRect(), s = document.querySelector('svg').getBoundingClientRect();"
                + " return [r.left - s.left, r.top - s.top, r.right - s.left, r.bottom - s.top].join(' '); }).join(';');"
                + "</script>";
        Path page = Files.writeString(
                folder.resolve("page.html"),
                "<!DOCTYPE html><html><head><meta charset=\"utf-8\"></head><body>" + svg + script + "</body></html>");
        OutsideTool.Run run = OutsideTool.run(
                folder,
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--user-data-dir=" + folder.resolve("browser"),
                "--dump-dom",
                page.toUri());
        Matcher found = Pattern.compile("data-all=\"([^\"]*)\"").matcher(run.output());
        assertThat(found.find()).as(run.output()).isTrue();
        List<Box> boxes = new ArrayList<>();
        for (String four : found.group(1).split(";")) {
            double[] side = Stream.of(four.split(" "))
                    .mapToDouble(word -> Double.parseDouble(word) / 96)
                    .toArray();
            boxes.add(new Box(side[0], side[1], side[2], side[3]));
        }
        return boxes;
    }
}
