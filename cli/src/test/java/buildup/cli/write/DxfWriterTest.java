package buildup.cli.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.format.Drawn;
import buildup.cli.scene.About;
import buildup.cli.scene.Area;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.PiecePart;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.Tone;
import buildup.profiles.Profile;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.length.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DxfWriterTest {
    private static final Line BASE = new Line(new Point(0, 0), new Point(2, 0));
    private static final Arc DOME = new Arc(new Point(2, 0), new Point(0, 0), new Point(1, 0), true);

    static List<Profile> profiles() {
        return Outlines.all();
    }

    private static String dxf(SceneItem... items) {
        return new String(DxfWriter.write(new Scene("t", "d", 4, 3, List.of(items))), DxfPairs.LETTERS);
    }

    /** The entities, each on one line: codes and values in turn. */
    private static List<String> entities(SceneItem... items) {
        String text = dxf(items);
        String inside =
                text.substring(text.indexOf("ENTITIES") + "ENTITIES\r\n".length(), text.lastIndexOf("  0\r\nENDSEC"));
        List<String> entities = new ArrayList<>();
        String[] lines = inside.split("\r\n");
        for (int i = 0; i + 1 < lines.length; i += 2) {
            String pair = lines[i].strip() + " " + lines[i + 1];
            if (pair.startsWith("0 ")) {
                entities.add(pair.substring(2));
            } else {
                entities.set(entities.size() - 1, entities.get(entities.size() - 1) + " | " + pair);
            }
        }
        return entities;
    }

    /** Bulge = tangent of a quarter of the angle swept: 1 for half a circle, counterclockwise. */
    @Test
    void a_closed_outline_is_one_closed_polyline_with_bulges() {
        assertThat(entities(new Path(List.of(BASE, DOME), true, LineStyle.OUTLINE)))
                .containsExactly(
                        "POLYLINE | 8 TRIM | 6 CONTINUOUS | 66 1 | 70 1 | 10 0.0 | 20 0.0 | 30 0.0",
                        "VERTEX | 8 TRIM | 10 0.0 | 20 0.0 | 30 0.0",
                        "VERTEX | 8 TRIM | 10 2.0 | 20 0.0 | 30 0.0 | 42 1.0",
                        "SEQEND | 8 TRIM");
        // one that the straight line back closes
        assertThat(entities(new Path(
                        List.of(DOME, new Line(new Point(0, 0), new Point(0, -1))), true, LineStyle.NAILER)))
                .hasSize(5)
                .contains("VERTEX | 8 NAILER | 10 0.0 | 20 -1.0 | 30 0.0");
    }

    @Test
    void what_is_open_is_lines_and_arcs_and_arcs_run_counterclockwise() {
        List<Segment> open = List.of(BASE, DOME.reversed().moved(buildup.profiles.outline.Motion.shift(5, 0)));
        assertThat(entities(new Path(open, false, LineStyle.RAY)))
                .containsExactly(
                        "LINE | 8 LIGHTS | 6 DASH1 | 10 0.0 | 20 0.0 | 30 0.0 | 11 2.0 | 21 0.0 | 31 0.0",
                        "ARC | 8 LIGHTS | 6 DASH1 | 10 6.0 | 20 0.0 | 30 0.0 | 40 1.0 | 50 0.0 | 51 180.0");
    }

    @Test
    void paper_is_nothing_and_hatch_leaves_it_free() {
        List<Segment> square = List.of(
                new Line(new Point(0, 0), new Point(2, 0)),
                new Line(new Point(2, 0), new Point(2, 2)),
                new Line(new Point(2, 2), new Point(0, 2)),
                new Line(new Point(0, 2), new Point(0, 0)));
        List<Segment> hole = square.stream()
                .map(side -> (Segment) new Line(
                        side.from().times(0.25).plus(new Point(0.75, 0.75)),
                        side.to().times(0.25).plus(new Point(0.75, 0.75))))
                .toList();
        Hatch hatch = new Hatch(square, new Pattern(0, 1, false, 0.01, List.of(0.1, 0.2)), Point.ORIGIN);
        Area paper = new Area(Optional.empty(), Optional.empty(), hole, Tone.PAPER);
        assertThat(entities(paper)).isEmpty();
        assertThat(entities(paper, hatch))
                .filteredOn(line -> line.contains("20 1.0"))
                .hasSize(1);
        assertThat(entities(hatch, paper))
                .filteredOn(line -> line.contains("20 1.0"))
                .containsExactly(
                        "LINE | 8 HATCH | 6 DASH1 | 10 0.0 | 20 1.0 | 30 0.0 | 11 0.75 | 21 1.0 | 31 0.0",
                        "LINE | 8 HATCH | 6 DASH1 | 10 1.25 | 20 1.0 | 30 0.0 | 11 2.0 | 21 1.0 | 31 0.0");
        assertThat(dxf(hatch)).contains(" 49\r\n0.1\r\n 49\r\n-0.2\r\n");
        assertThat(entities(new Path(List.of(BASE), false, LineStyle.CASING))).isEmpty();
        assertThat(entities(new Area(Optional.empty(), Optional.empty(), hole, Tone.INK)))
                .isNotEmpty();
    }

    @Test
    void texts_keep_to_their_place_and_to_the_letters_of_the_format() {
        assertThat(entities(
                        new Label("45\u00b0 \u98fe ^ a\\b %%d\n", new Point(1, 1), 0.2, Label.Anchor.END, true, 0.8)))
                .containsExactly("TEXT | 8 NOTES | 6 CONTINUOUS | 10 1.0 | 20 0.2 | 30 0.0 | 40 0.138"
                        + " | 1 45\u00b0 \\U+98FE ^  a\\U+005Cb % %d? | 50 90.0 | 72 5 | 11 1.0 | 21 1.0 | 31 0.0");
        assertThat(entities(new Label("A", new Point(1, 1), 0.2, Label.Anchor.MIDDLE, false, 0.2)))
                .containsExactly("TEXT | 8 NOTES | 6 CONTINUOUS | 10 0.9 | 20 1.0 | 30 0.0 | 40 0.138 | 1 A | 72 1"
                        + " | 11 1.0 | 21 1.0 | 31 0.0");
    }

    @Test
    void figures_and_letters_are_hidden_with_what_they_speak_of() {
        Label figure = new Label("1-1/2", new Point(1, 1), 0.2, Label.Anchor.START, false, 0.5);
        Path ring = new Path(List.of(DOME, BASE), true, LineStyle.LEADER);
        Path tick = new Path(List.of(BASE), false, LineStyle.TICK);
        assertThat(entities(new About(Subject.DIMENSIONS, List.of(figure, ring, tick))))
                .isNotEmpty()
                .allMatch(entity -> entity.contains("| 8 DIMENSIONS") || entity.startsWith("SEQEND | 8 DIMENSIONS"));
        assertThat(entities(new Group("letters", List.of(new About(Subject.LETTERS, List.of(figure, ring))))))
                .isNotEmpty()
                .allMatch(entity -> entity.contains("| 8 LETTERS"));
        assertThat(entities(new Group("legend", List.of(figure)))).allMatch(entity -> entity.contains("| 8 NOTES"));
    }

    private static PiecePart piece(String name, Point home, double wide) {
        Outline outline = Outline.rectangle(new Box(home.x(), home.y(), home.x() + wide, home.y() + 0.5));
        return new PiecePart(
                name,
                Subject.TRIM,
                home,
                new Point(1, 0.25),
                List.of(new Path(outline.segments(), true, LineStyle.OUTLINE)));
    }

    @Test
    void one_piece_stands_as_it_is_with_its_datum_at_the_origin() {
        assertThat(entities(piece("a-lip", new Point(1.5, 0.75), 2)))
                .containsExactly(
                        "POLYLINE | 8 TRIM | 6 CONTINUOUS | 66 1 | 70 1 | 10 0.0 | 20 0.0 | 30 0.0",
                        "VERTEX | 8 TRIM | 10 0.5 | 20 0.5 | 30 0.0",
                        "VERTEX | 8 TRIM | 10 2.5 | 20 0.5 | 30 0.0",
                        "VERTEX | 8 TRIM | 10 2.5 | 20 1.0 | 30 0.0",
                        "VERTEX | 8 TRIM | 10 0.5 | 20 1.0 | 30 0.0",
                        "SEQEND | 8 TRIM");
    }

    @Test
    void of_several_pieces_each_is_a_block_once_however_often_it_stands_there() {
        String text = dxf(
                piece("a-lip", new Point(1.5, 0.75), 2),
                piece("b-cap", new Point(1, 1.25), 2),
                piece("a-lip", new Point(5.5, 0.75), 2),
                piece("a-lip", new Point(7.5, 0.75), 3));
        assertThat(text)
                .containsOnlyOnce("BLOCK\r\n  8\r\nTRIM\r\n  2\r\nA-LIP\r\n")
                .containsOnlyOnce("BLOCK\r\n  8\r\nTRIM\r\n  2\r\nB-CAP\r\n")
                .containsOnlyOnce("BLOCK\r\n  8\r\nTRIM\r\n  2\r\nA-LIP-2\r\n");
        assertThat(text.substring(text.indexOf("ENTITIES")))
                .contains("INSERT\r\n  8\r\nTRIM\r\n  2\r\nA-LIP\r\n 10\r\n0.5\r\n 20\r\n0.5\r\n")
                .contains("INSERT\r\n  8\r\nTRIM\r\n  2\r\nB-CAP\r\n 10\r\n0.0\r\n 20\r\n1.0\r\n")
                .contains("INSERT\r\n  8\r\nTRIM\r\n  2\r\nA-LIP\r\n 10\r\n4.5\r\n 20\r\n0.5\r\n")
                .contains("INSERT\r\n  8\r\nTRIM\r\n  2\r\nA-LIP-2\r\n 10\r\n6.5\r\n")
                .doesNotContain("POLYLINE");
    }

    @Test
    void names_of_blocks_are_as_long_as_the_format_takes_and_no_two_alike() {
        String text = dxf(
                piece("a-" + "long".repeat(20), new Point(1, 1), 2),
                piece("a-" + "long".repeat(20) + "-2", new Point(1, 2), 2.5));
        assertThat(text)
                .contains("  2\r\nA-LONGLONGLONGLONGLONGLONGLONGL\r\n")
                .contains("  2\r\nA-LONGLONGLONGLONGLONGLONGLON-2\r\n");
    }

    @Test
    void the_head_states_inches_bounds_and_every_layer_that_is_used() {
        String text = dxf(new Path(List.of(BASE), false, LineStyle.GRID));
        assertThat(text)
                .startsWith("  0\r\nSECTION\r\n  2\r\nHEADER\r\n")
                .contains("$INSUNITS\r\n 70\r\n1\r\n", "$EXTMAX\r\n 10\r\n4.0\r\n 20\r\n3.0\r\n 30\r\n0.0\r\n")
                .endsWith("  0\r\nENDSEC\r\n  0\r\nEOF\r\n");
        for (Subject layer : Subject.values()) {
            assertThat(text)
                    .contains("LAYER\r\n  2\r\n" + layer.name() + "\r\n 70\r\n0\r\n 62\r\n" + DxfTables.color(layer)
                            + "\r\n");
        }
        for (LineStyle style : LineStyle.values()) {
            assertThat(Subject.of(style)).isNotNull();
        }
        // the grid is switched off
        assertThat(text).contains("GRID\r\n 70\r\n0\r\n 62\r\n-8");
    }

    @Test
    void the_same_scene_gives_the_same_bytes_under_any_locale() {
        Scene scene = buildup.cli.drawing.section.Drawn.of(buildup.cli.drawing.section.Drawn.CORNICE)
                .scene();
        byte[] first = DxfWriter.write(scene);
        Locale usual = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(DxfWriter.write(scene)).isEqualTo(first);
        } finally {
            Locale.setDefault(usual);
        }
    }

    @ParameterizedTest
    @MethodSource("profiles")
    void every_profile_of_the_catalog_comes_back_from_dxf_and_from_svg(Profile profile) {
        Outline outline = Outlines.home(profile);
        Scene scene = Outlines.scene(outline);
        comesBack(outline, Outlines.read(DxfWriter.write(scene), "a.dxf"), 1e-8);
        // five places of a coordinate, and as many of a radius, which a shallow arc magnifies
        comesBack(outline, Outlines.read(SvgWriter.write(scene, LengthUnit.INCH), "a.svg"), 5e-5);
        comesBack(outline, Outlines.read(SvgWriter.write(scene, LengthUnit.MILLIMETER), "a.svg"), 5e-5);
    }

    private static void comesBack(Outline outline, Drawn drawn, double digits) {
        Trail read = drawn.trails().get(0);
        double scale = drawn.unit().orElseThrow().of(1).toInches();
        Trail inches = new Trail(read.points().stream().map(p -> p.times(scale)).toList(), read.closed());
        assertThat(drawn.trails()).hasSize(1);
        assertThat(inches.closed()).isTrue();
        assertThat(Outlines.off(inches, outline)).isLessThan(digits);
        for (Stroke stroke : outline.strokes()) {
            assertThat(inches.points())
                    .anyMatch(point -> point.near(stroke.segment().from(), digits));
            assertThat(Outlines.distance(stroke.segment().at(0.37), List.of(inches)))
                    .isLessThan(chordError(outline) + digits);
        }
        assertThat(Outlines.area(inches))
                .isCloseTo(outline.area(), within((chordError(outline) + digits) * outline.perimeter()));
    }

    /** What the reader lets chords stray: a share of the drawing's diagonal. */
    private static double chordError(Outline outline) {
        Box box = outline.box();
        return 1e-5 * Math.hypot(box.width(), box.height());
    }
}
