package buildup.cli.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.Typed;
import buildup.cli.drawing.look.ElevationDrawing;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Area;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Tone;
import buildup.cli.write.PngWriter;
import buildup.engine.Answers;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A picture keeps what it says when a copier leaves black and white alone. */
class PhotocopyTest {
    private static final int DPI = 150;

    /** Half way from black to white, of 255. */
    private static final int THRESHOLD = 128;

    /** A face that the light meets, a hollow with both kinds of dark, and a fascia in its shadow. */
    private static final String MANTEL = """
            title: Mantel
            wood: red-oak
            pieces:
              - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum }
              - { name: bed, section: [out 1/4, cove 1, up 3/8], back: frieze.face, top: frieze.top }
              - { name: shelf, section: [out 2, torus up 1-1/4], back: wall, bottom: frieze.top }
            """;

    private static final Scene FRONT = front();

    private static Scene front() {
        Answers known = Typed.of(MANTEL).known().orElseThrow();
        return ElevationDrawing.of(known.section(), known.lights().get(0), Drawn.FONT);
    }

    static Stream<String> documents() {
        return LabelsTest.documents();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void no_tone_of_a_face_turns_black(String yaml) {
        for (Map.Entry<String, Scene> view : AnyPicture.of(Typed.of(yaml)).entrySet()) {
            assertThat(view.getValue().leaves())
                    .as(view.getKey())
                    .allMatch(item -> !(item instanceof Area area)
                            || area.tone() == Tone.INK
                            || Math.min(
                                            area.tone().rgb() >> 16 & 255,
                                            area.tone().rgb() & 255)
                                    > THRESHOLD);
        }
    }

    /** In every picture, also of stacks of chance: regions that differ in tone or hatch, and lines that a legend explains. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("documents")
    void what_differs_on_a_screen_differs_in_black_and_white(String yaml) {
        assertTellsApart(yaml);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void what_differs_in_the_pictures_of_any_stack_differs_in_black_and_white(long seed) {
        assertTellsApart(AnyPicture.thrown(seed));
    }

    static LongStream seeds() {
        return LabelsTest.seeds();
    }

    private static void assertTellsApart(String yaml) {
        int looked = 0;
        for (Map.Entry<String, Scene> view : AnyPicture.of(Typed.of(yaml)).entrySet()) {
            for (Copied copied : List.of(Copied.regions(view.getValue()), Copied.lines(view.getValue()))) {
                looked += copied.looks().size();
                assertThat(copied.alike()).as("%s of%n%s", view.getKey(), yaml).isEmpty();
            }
        }
        assertThat(looked).isGreaterThan(3);
    }

    @Tag("long")
    @Test
    void the_check_sees_tones_without_hatch_hatches_of_one_kind_and_lines_as_wide() {
        List<Segment> one = Outline.rectangle(new Box(0, 0, 2, 2)).segments();
        List<Segment> other = Outline.rectangle(new Box(3, 0, 5, 2)).segments();
        Area trim = new Area(Optional.empty(), Optional.empty(), one, Tone.TRIM);
        Area nailer = new Area(Optional.empty(), Optional.empty(), other, Tone.NAILER);
        Hatch hatch = new Hatch(other, new Pattern(45, 0.2, false, 0.01, List.of()), Point.ORIGIN);
        Hatch near = new Hatch(one, new Pattern(45, 0.19, false, 0.01, List.of()), Point.ORIGIN);
        Hatch turned = new Hatch(one, new Pattern(-45, 0.2, false, 0.01, List.of()), Point.ORIGIN);
        assertThat(Copied.regions(scene(trim, nailer)).alike()).hasSize(1);
        assertThat(Copied.regions(scene(trim, nailer, hatch)).alike()).isEmpty();
        assertThat(Copied.regions(scene(trim, near, nailer, hatch)).alike()).hasSize(1);
        assertThat(Copied.regions(scene(trim, turned, nailer, hatch)).alike()).isEmpty();
        assertThat(Copied.lines(legend(LineStyle.LIT, LineStyle.SEEN)).alike()).hasSize(1);
        assertThat(Copied.lines(legend(LineStyle.LIT, LineStyle.CAST)).alike()).isEmpty();
    }

    private static Scene scene(SceneItem... items) {
        return new Scene("", "", 6, 3, List.of(items));
    }

    private static Scene legend(LineStyle... styles) {
        return scene(new Group(
                "legend",
                Stream.of(styles)
                        .map(style ->
                                (SceneItem) new Path(List.of(new Line(new Point(0, 1), new Point(1, 1))), false, style))
                        .toList()));
    }

    /** Slanted lines leave ink in every row of pixels, rows of dots leave most rows white. */
    @Test
    void cast_shadow_shade_and_light_are_told_apart_by_hatch() throws IOException {
        BufferedImage copy = ImageIO.read(new ByteArrayInputStream(PngWriter.write(FRONT, Drawn.FONT, DPI)));
        List<Hatch> swatches = FRONT.leaves().stream()
                .filter(Hatch.class::isInstance)
                .map(Hatch.class::cast)
                .filter(hatch -> hatch.box().width() < 2)
                .toList();
        assertThat(swatches).as("one sample of each in the legend").hasSize(2);
        assertThat(inked(copy, swatches.get(0).box())).as("cast").isEqualTo(1);
        assertThat(inked(copy, swatches.get(1).box())).as("shade").isBetween(0.05, 0.6);
        for (Hatch hatch : FRONT.leaves().stream()
                .filter(Hatch.class::isInstance)
                .map(Hatch.class::cast)
                .filter(hatch -> hatch.box().width() >= 2 && hatch.box().height() > 0.3)
                .toList()) {
            Box box = hatch.box();
            Box middle = new Box(
                    (box.back() + box.face()) / 2 - 1, box.bottom(), (box.back() + box.face()) / 2 + 1, box.top());
            boolean cast = hatch.pattern().equals(swatches.get(0).pattern());
            assertThat(inked(copy, middle)).as(hatch.box().toString()).satisfies(share -> {
                if (cast) {
                    assertThat(share).isEqualTo(1);
                } else {
                    assertThat(share).isBetween(0.05, 0.7);
                }
            });
        }
        Box lowest = FRONT.leaves().stream()
                .filter(Area.class::isInstance)
                .map(SceneItem::box)
                .filter(box -> box.width() > 3)
                .min(Comparator.comparingDouble(Box::bottom))
                .orElseThrow();
        Box lit = new Box(lowest.back(), lowest.bottom(), lowest.face(), lowest.bottom() + 1);
        assertThat(inked(copy, lit.grown(-0.1))).as("lit").isZero();
    }

    /** Share of the rows of pixels within a box, its edge left out, that hold any ink. */
    private static double inked(BufferedImage image, Box box) {
        Box inner = box.grown(-0.02);
        int top = (int) Math.ceil((FRONT.height() - inner.top()) * DPI);
        int bottom = (int) Math.floor((FRONT.height() - inner.bottom()) * DPI);
        int left = (int) Math.ceil(inner.back() * DPI);
        int right = (int) Math.floor(inner.face() * DPI);
        int rows = 0;
        for (int y = top; y < bottom; y++) {
            boolean ink = false;
            for (int x = left; x < right; x++) {
                ink |= (image.getRGB(x, y) & 255) < THRESHOLD;
            }
            rows += ink ? 1 : 0;
        }
        return (double) rows / (bottom - top);
    }
}
