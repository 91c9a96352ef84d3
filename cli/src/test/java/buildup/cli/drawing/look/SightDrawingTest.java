package buildup.cli.drawing.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.Ran;
import buildup.cli.command.Typed;
import buildup.cli.command.files.ExitCode;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.engine.Answers;
import buildup.engine.look.sight.Sighting;
import buildup.engine.section.stack.Eye;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What one eye sees stands in one picture, and every line of it is named. */
class SightDrawingTest {
    private static final java.nio.file.Path CORNICE = Ran.demo("reading-room-cornice.yaml");

    /** A third place to look from. */
    private static final String THREE = Ran.read(CORNICE)
            .replaceFirst("(?m)^eyes:\n", "eyes:\n  - { name: on the ladder, distance: 40, height: floor + 90 }\n");

    @TempDir
    private java.nio.file.Path folder;

    private static Answers three() {
        Answers known = Typed.of(THREE).known().orElseThrow();
        assertThat(known.sights()).hasSize(3);
        return known;
    }

    private static List<Path> drawn(Scene scene, LineStyle style) {
        return scene.items().stream()
                .filter(item -> item instanceof Group group && !group.id().equals("legend"))
                .flatMap(item -> ((Group) item).items().stream())
                .filter(item -> item instanceof Path path && path.style() == style)
                .map(Path.class::cast)
                .toList();
    }

    @Test
    void a_lamp_within_the_picture_is_drawn_where_it_is_and_rays_come_from_it() {
        Answers known = Typed.of("""
                title: Cove light
                wood: yellow-poplar
                space: { floor: -96, ceiling: 6 }
                lights:
                  - { name: LED, at: { distance: 4-1/2, height: 1.2 } }
                  - { name: far lamp, at: { distance: 60, height: 3 } }
                pieces:
                  - { name: frieze, profile: board 3/4 x 4, back: wall, bottom: datum }
                  - { name: shelf, profile: board 3/4 x 3, lay: flat, back: frieze.face, bottom: 1 }
                """).known().orElseThrow();
        Scene near = RaysDrawing.of(known.section(), known.lights().get(0), Drawn.FONT);
        assertThat(named(near, "LED")).hasSize(1);
        List<Path> rays = drawn(near, LineStyle.RAY);
        assertThat(rays).isNotEmpty();
        Point lamp = drawn(near, LineStyle.TICK).stream()
                .map(path -> path.box().middle())
                .findFirst()
                .orElseThrow();
        assertThat(rays)
                .allSatisfy(ray ->
                        assertThat(ray.segments().get(0).to().distance(lamp)).isLessThan(1e-6));
        Scene far = RaysDrawing.of(known.section(), known.lights().get(1), Drawn.FONT);
        assertThat(named(far, "far lamp")).isEmpty();
    }

    private static List<Label> named(Scene scene, String name) {
        return scene.leaves().stream()
                .filter(item -> item instanceof Label label && label.text().equals(name))
                .map(Label.class::cast)
                .toList();
    }

    @Test
    void every_line_of_a_picture_goes_to_the_one_eye_and_is_named() {
        Answers known = three();
        for (Sighting sight : known.sights()) {
            Scene scene = SightDrawing.of(known.section(), sight, Drawn.FONT);
            List<Path> lines = drawn(scene, LineStyle.SIGHT);
            long names = scene.leaves().stream()
                    .filter(item -> item instanceof Label label && label.text().matches(".*: \\S+ of \\S+ seen"))
                    .count();
            assertThat(lines).as(sight.eye().name()).hasSizeBetween(1, 8);
            assertThat(names).as(sight.eye().name()).isEqualTo(lines.size());
            assertSameEye(sight.eye(), lines);
        }
    }

    /** Lines of a picture may be moved on their sheet; drawn on, they still all meet in one point as far off as the eye. */
    private static void assertSameEye(Eye eye, List<Path> lines) {
        for (Path path : lines) {
            Line line = (Line) path.segments().get(0);
            Line first = (Line) lines.get(0).segments().get(0);
            double slope = line.direction(0).y() / line.direction(0).x();
            double firstSlope = first.direction(0).y() / first.direction(0).x();
            if (Math.abs(slope - firstSlope) > 0.01) {
                double x = (first.from().y()
                                - line.from().y()
                                + slope * line.from().x()
                                - firstSlope * first.from().x())
                        / (slope - firstSlope);
                double y = line.from().y() + slope * (x - line.from().x());
                Point wood = first.from();
                assertThat(x - wood.x()).as(eye.name()).isBetween(eye.distance() - 8, eye.distance());
                assertThat(y - wood.y()).as(eye.name()).isCloseTo((x - wood.x()) * firstSlope, within(1e-6));
            }
        }
    }

    @Test
    void what_is_drawn_as_seen_is_as_long_as_what_the_eye_sees() {
        Answers known = three();
        for (Sighting sight : known.sights()) {
            double drawn = drawn(SightDrawing.of(known.section(), sight, Drawn.FONT), LineStyle.SEEN).stream()
                    .flatMap(path -> path.segments().stream())
                    .mapToDouble(Segment::length)
                    .sum();
            assertThat(drawn)
                    .isCloseTo(
                            sight.members().stream()
                                    .mapToDouble(member -> member.length())
                                    .sum(),
                            within(1e-9));
        }
    }

    @Test
    void each_eye_has_a_page_of_its_own_after_that_of_the_light() throws Exception {
        java.nio.file.Path stack = java.nio.file.Files.writeString(folder.resolve("three.yaml"), THREE);
        java.nio.file.Path out = folder.resolve("rays.pdf");
        Ran ran = Ran.of("draw", stack.toString(), "--view", "rays", "-q", "-o", out.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        try (PDDocument document = Loader.loadPDF(out.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(4);
            List<String> said =
                    List.of("Section with light", "Seen by on the ladder", "Seen by standing", "Seen by seated");
            for (int page = 1; page <= 4; page++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setStartPage(page);
                text.setEndPage(page);
                assertThat(text.getText(document)).contains(said.get(page - 1));
            }
        }
    }

    @Test
    void one_eye_may_be_asked_for_and_an_unknown_one_is_answered_with_the_nearest() {
        java.nio.file.Path out = folder.resolve("seen.svg");
        Ran one = Ran.of("draw", CORNICE.toString(), "--view", "rays", "--eye", "seated", "-o", out.toString());
        assertThat(one.code()).isZero();
        assertThat(Ran.read(out)).contains("Seen by seated").doesNotContain("standing");
        Ran none = Ran.of("draw", CORNICE.toString(), "--view", "rays", "--eye", "standng", "-o", out.toString());
        assertThat(none.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(none.err()).contains("The stack has no eye 'standng'. Did you mean standing?");
    }

    @Test
    void every_ray_of_light_is_named_by_what_it_leaves_dark_and_what_casts_it() {
        Answers known = three();
        Scene scene = RaysDrawing.of(known.section(), known.lights().get(0), Drawn.FONT);
        List<String> names = scene.leaves().stream()
                .filter(Label.class::isInstance)
                .map(item -> ((Label) item).text())
                .filter(text -> text.contains(" dark, by "))
                .toList();
        assertThat(drawn(scene, LineStyle.RAY)).hasSize(3);
        assertThat(names)
                .containsExactlyInAnyOrder(
                        "crown face: 1-5/16- of 3-1/4 dark, by cap",
                        "fascia face: 3/8- of 2-3/8+ dark, by crown",
                        "frieze face: 3-1/8- of 4-1/8 dark, by fascia");
    }
}
