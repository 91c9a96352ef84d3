package buildup.cli.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.OutsideTool;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Area;
import buildup.cli.scene.Label;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Tone;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.shared.length.LengthUnit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

class SvgWriterTest {
    private static final String DOCTYPE = "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" \"svg11.dtd\">\n";
    private static final String DTD = "/org/apache/batik/dom/svg/resources/";

    @TempDir
    private java.nio.file.Path folder;

    static Stream<String> stacks() {
        return Stream.of(Drawn.CORNICE, Drawn.BASE, Drawn.ONE, Drawn.NAMES);
    }

    private static String svg(Scene scene) {
        return new String(SvgWriter.write(scene, LengthUnit.INCH), StandardCharsets.UTF_8);
    }

    /** Checks against the SVG 1.1 DTD of the W3C, as the SVG library brings it along. */
    private static Document valid(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setValidating(true);
        DocumentBuilder builder = factory.newDocumentBuilder();
        List<String> faults = new ArrayList<>();
        builder.setErrorHandler(new ErrorHandler() {
            @Override
            public void warning(SAXParseException e) {
                faults.add(e.toString());
            }

            @Override
            public void error(SAXParseException e) {
                faults.add(e.toString());
            }

            @Override
            public void fatalError(SAXParseException e) {
                faults.add(e.toString());
            }
        });
        builder.setEntityResolver((publicId, systemId) -> {
            String name = systemId.substring(systemId.lastIndexOf('/') + 1);
            InputStream part = SvgWriterTest.class.getResourceAsStream(DTD + name);
            assertThat(part).as(systemId).isNotNull();
            return new InputSource(part);
        });
        String typed = svg.replaceFirst("\\?>\n", "?>\n" + DOCTYPE);
        Document document = builder.parse(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
        assertThat(faults).isEmpty();
        return document;
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void a_drawing_is_valid_svg_1_1(String yaml) throws Exception {
        valid(svg(Drawn.of(yaml).scene()));
    }

    @Test
    void the_check_of_validity_refuses_what_svg_1_1_does_not_know() {
        String svg = svg(Drawn.of(Drawn.ONE).scene()).replaceFirst("<g id=", "<g data-kind=\"trim\" id=");
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> valid(svg)))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void the_sheet_has_real_inches_or_millimeters_and_an_inch_for_a_unit() {
        Scene scene = Drawn.of(Drawn.ONE).scene();
        assertThat(svg(scene)).contains("width=\"8.5in\"", "height=\"11in\"", "viewBox=\"0 0 8.5 11\"");
        assertThat(new String(SvgWriter.write(scene, LengthUnit.MILLIMETER), StandardCharsets.UTF_8))
                .contains("width=\"215.9mm\"", "height=\"279.4mm\"", "viewBox=\"0 0 8.5 11\"");
    }

    @Test
    void ids_are_unique() {
        Matcher ids = Pattern.compile(" id=\"([^\"]*)\"")
                .matcher(svg(Drawn.of(Drawn.NAMES).scene()));
        List<String> found = ids.results().map(result -> result.group(1)).toList();
        assertThat(found).hasSizeGreaterThan(8).doesNotHaveDuplicates().allMatch(id -> id.matches("[a-z][a-z0-9-]*"));
    }

    @Test
    void an_arc_is_an_arc() {
        // quarter of radius 1 from (1,0) round the origin to (0,1), seen with y down on a sheet 4 high
        Arc quarter = new Arc(new Point(1, 0), new Point(0, 1), Point.ORIGIN, true);
        assertThat(PathData.of(List.<Segment>of(quarter), false, 4)).isEqualTo("M1 4 A1 1 0 0 0 0 3");
        assertThat(PathData.of(List.<Segment>of(quarter.reversed()), false, 4)).isEqualTo("M0 3 A1 1 0 0 1 1 4");
        Arc rest = new Arc(new Point(0, 1), new Point(1, 0), Point.ORIGIN, true);
        assertThat(PathData.of(List.<Segment>of(rest), true, 4)).isEqualTo("M0 3 A1 1 0 1 0 1 4 Z");
        Matcher bed = Pattern.compile("<path [^>]*id=\"piece-bed\"[^>]*>")
                .matcher(svg(Drawn.of(Drawn.CORNICE).scene()));
        assertThat(bed.find()).isTrue();
        assertThat(bed.group()).contains(" A1 1 0 0 ").doesNotContain("C").doesNotContain("stroke=");
    }

    @Test
    void a_piece_is_one_filled_element_without_a_stroke_and_says_its_name() throws Exception {
        Document document = valid(svg(Drawn.of(Drawn.NAMES).scene()));
        NodeList paths = document.getElementsByTagName("path");
        List<String> titles = new ArrayList<>();
        for (int i = 0; i < paths.getLength(); i++) {
            org.w3c.dom.Element path = (org.w3c.dom.Element) paths.item(i);
            if (path.getAttribute("id").startsWith("piece-")) {
                assertThat(path.hasAttribute("stroke")).isFalse();
                titles.add(path.getElementsByTagName("title").item(0).getTextContent());
            }
        }
        assertThat(titles).hasSize(6).contains("E \u00c9cran <&> 1", "C \u98fe\u308a\u7e01");
    }

    @Test
    void numbers_are_short_and_never_minus_nothing() {
        String svg = svg(Drawn.of(Drawn.CORNICE).scene());
        assertThat(svg).doesNotContainPattern("\\d\\.\\d{6}").doesNotContainPattern("-0[^.\\d]");
        assertThat(Numbers.text(-0.0000001)).isEqualTo("0");
        assertThat(Numbers.text(1e-9)).isEqualTo("0");
        assertThat(Numbers.text(100)).isEqualTo("100");
        assertThat(Numbers.text(-1.234565)).isEqualTo("-1.23457");
    }

    @Test
    void characters_that_xml_cannot_hold_are_replaced() throws Exception {
        Label label = Label.of(Drawn.FONT, "a\u0007<b>&\ud800", new Point(1, 1), 0.2, Label.Anchor.START);
        Document document = valid(svg(new Scene("x", "y", 3, 3, List.of(label))));
        assertThat(document.getElementsByTagName("text").item(0).getTextContent())
                .isEqualTo("a\ufffd<b>&\ufffd");
    }

    @Test
    void the_same_scene_gives_the_same_bytes_under_any_locale() {
        byte[] first = SvgWriter.write(Drawn.of(Drawn.CORNICE).scene(), LengthUnit.INCH);
        Locale usual = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(SvgWriter.write(Drawn.of(Drawn.CORNICE).scene(), LengthUnit.INCH))
                    .isEqualTo(first);
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(SvgWriter.write(Drawn.of(Drawn.CORNICE).scene(), LengthUnit.INCH))
                    .isEqualTo(first);
        } finally {
            Locale.setDefault(usual);
        }
    }

    @Test
    void a_small_stack_is_drawn_as_it_was_when_somebody_looked_at_it() throws IOException {
        String drawn = svg(Drawn.of(Drawn.ONE).scene());
        java.nio.file.Path kept = java.nio.file.Path.of("target", "one-piece.svg");
        Files.createDirectories(kept.toAbsolutePath().getParent());
        Files.writeString(kept, drawn);
        try (InputStream golden = SvgWriterTest.class.getResourceAsStream("one-piece.svg")) {
            assertThat(golden).isNotNull();
            assertThat(drawn).as("see " + kept).isEqualTo(new String(golden.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 300})
    @Tag("long")
    void another_renderer_finds_every_piece_where_the_section_has_it(int dpi) throws Exception {
        Drawn drawn = Drawn.of(Drawn.CORNICE);
        List<Area> pieces = drawn.scene().leaves().stream()
                .filter(Area.class::isInstance)
                .map(Area.class::cast)
                .filter(area -> area.id().filter(id -> id.startsWith("piece-")).isPresent())
                .toList();
        assertThat(pieces).hasSize(11);
        for (Area piece : pieces) {
            String id = piece.id().orElseThrow();
            Box seen = rendered(alone(svg(drawn.scene()), id), dpi);
            Box own = piece.box();
            double top = drawn.scene().height();
            assertThat(seen.back()).as(id).isCloseTo(own.back() * dpi, within(1.0));
            assertThat(seen.face()).as(id).isCloseTo(own.face() * dpi, within(1.0));
            assertThat(seen.bottom()).as(id).isCloseTo((top - own.top()) * dpi, within(1.0));
            assertThat(seen.top()).as(id).isCloseTo((top - own.bottom()) * dpi, within(1.0));
        }
    }

    /** The drawing with nothing but one element. */
    private static String alone(String svg, String id) {
        Matcher root = Pattern.compile("<svg[^>]*>").matcher(svg);
        Matcher piece = Pattern.compile("<path[^>]* id=\"" + id + "\".*?</path>", Pattern.DOTALL)
                .matcher(svg);
        assertThat(root.find()).isTrue();
        assertThat(piece.find()).as(id).isTrue();
        return root.group() + piece.group() + "</svg>";
    }

    /** Pixels that are not wholly clear; x right, y down. */
    private Box rendered(String svg, int dpi) throws Exception {
        Files.writeString(folder.resolve("alone.svg"), svg);
        OutsideTool.Run run = OutsideTool.run(
                folder, "rsvg-convert", "-d", dpi, "-p", dpi, "-o", folder.resolve("alone.png"), "alone.svg");
        assertThat(run.code()).as(run.output()).isZero();
        BufferedImage image = ImageIO.read(folder.resolve("alone.png").toFile());
        Optional<Box> box = Optional.empty();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if (image.getRGB(x, y) >>> 24 > 0) {
                    Box pixel = new Box(x, y, x + 1, y + 1);
                    box = Optional.of(box.map(pixel::with).orElse(pixel));
                }
            }
        }
        return box.orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void another_renderer_reads_the_whole_drawing(String yaml) throws Exception {
        Files.writeString(folder.resolve("whole.svg"), svg(Drawn.of(yaml).scene()));
        OutsideTool.Run run = OutsideTool.run(
                folder, "rsvg-convert", "-d", 60, "-p", 60, "-o", folder.resolve("whole.png"), "whole.svg");
        assertThat(run.code()).as(run.output()).isZero();
        assertThat(OutsideTool.run(folder, "xmllint", "--noout", "whole.svg").code())
                .isZero();
    }

    @Test
    void every_kind_of_item_is_written() throws Exception {
        List<SceneItem> items = List.of(
                new Path(List.of(), false, buildup.cli.scene.LineStyle.RULE),
                new Area(
                        Optional.empty(),
                        Optional.empty(),
                        List.of(new Arc(new Point(1, 1), new Point(2, 1), new Point(1.5, 1), true)),
                        Tone.TRIM));
        valid(svg(new Scene("", "", 3, 3, items)));
    }

    @Test
    void a_letter_beyond_the_first_65536_is_written_as_it_is() throws Exception {
        String yaml = Drawn.ONE.replace("title: One piece", "title: \"wood \uD83E\uDEB5 & <more>\"");
        String svg = svg(Drawn.of(yaml).scene());
        assertThat(svg).contains("<title>wood \uD83E\uDEB5 &amp; &lt;more&gt;</title>");
    }
}
