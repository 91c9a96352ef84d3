package buildup.cli.drawing.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.command.Typed;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.report.Fitted;
import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.ChordRing;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Tone;
import buildup.engine.Answers;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanDrawingTest {
    private static final String CASE = """
            plan:
              - name: case
                left: die
                right: return
                stretches:
                  - { name: left side, length: 14, corner: outside 90 }
                  - { name: front, length: 96, corner: outside 90, openings: [{ name: door, from: 40, to: 60 }] }
                  - { name: right side, length: 14, corner: inside 135 }
                  - { name: wing, length: 40 }
              - { name: head, left: { end: butt, casing: 3/4 }, right: square, stretches: [{ name: lintel, length: 36 }] }
            """;

    private static Scene drawn(String plan) {
        return PlanDrawing.of(Fitted.of(Drawn.CORNICE + plan).job(), Drawn.FONT);
    }

    private static List<String> texts(Scene scene) {
        return scene.leaves().stream()
                .filter(Label.class::isInstance)
                .map(item -> ((Label) item).text())
                .toList();
    }

    private static List<Group> groups(Scene scene, String start) {
        return scene.items().stream()
                .filter(Group.class::isInstance)
                .map(Group.class::cast)
                .filter(group -> group.id().startsWith(start))
                .toList();
    }

    @Test
    void what_runs_round_an_opening_alone_is_a_front_view_and_no_plan_from_above() {
        String casing = """
                title: casing
                wood: yellow-poplar
                pieces:
                  - { name: casing, profile: board 3/4 x 3-1/2, back: wall, bottom: 0 }
                plan:
                  - name: door
                    around: opening
                    left: butt
                    right: butt
                    stretches:
                      - { name: left leg, length: 82, corner: outside 90 }
                      - { name: head, length: 32, corner: outside 90 }
                      - { name: right leg, length: 82 }
                """;
        Scene scene = PlanDrawing.of(Fitted.of(casing).job(), Drawn.FONT);
        assertThat(String.join(" ", texts(scene)))
                .contains("Front view from the room.")
                .doesNotContain("from above");
        assertThat(String.join(" ", texts(drawn(CASE)))).contains("Plan from above");
    }

    @Test
    void each_run_is_drawn_whole_and_each_kind_of_corner_and_end_large_once() {
        Scene scene = drawn(CASE);
        assertThat(groups(scene, "run-")).hasSize(2);
        // the two square outside corners share one
        assertThat(groups(scene, "place-")).hasSize(6);
        assertThat(texts(scene))
                .contains("front 96", "left side 14", "right side 14", "wing 40", "door", "lintel 36")
                .containsOnlyOnce(
                        "left end: dies on a wall at 90°",
                        "outside 90° corner",
                        "inside 135° corner",
                        "right end: returned to the wall",
                        "left end: butts a casing",
                        "right end: cut square");
        assertThat(texts(scene).stream().filter("2"::equals)).hasSize(3);
    }

    @Test
    void every_course_is_named_with_its_projection_at_every_kind_of_corner() {
        List<String> texts = texts(drawn(CASE));
        for (String name : List.of("bead 1", "frieze 3/4", "bed 2", "fascia 4-1/4", "crown 6-7/16+", "cap 6-13/16+")) {
            assertThat(texts.stream().filter(name::equals)).as(name).hasSize(6);
        }
    }

    @Test
    void a_corner_shows_an_outline_for_every_course() {
        Group corner = groups(drawn(CASE), "place-2").get(0);
        long lines = corner.items().stream()
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .filter(path -> path.style() == LineStyle.ARRIS)
                .flatMap(path -> path.segments().stream())
                .count();
        // on both sides of the corner: back, face and miter of six courses
        assertThat(lines).isGreaterThanOrEqualTo(2 * 3 * 6);
        assertThat(corner.items()).anyMatch(Hatch.class::isInstance);
    }

    @Test
    void all_lies_on_the_sheet_and_no_panel_over_another() {
        Scene scene = drawn(CASE);
        Box sheet = new Box(0, 0, scene.width(), scene.height());
        for (SceneItem item : scene.leaves()) {
            assertThat(sheet.grown(1e-6).with(item.box())).isEqualTo(sheet.grown(1e-6));
        }
        List<Box> boxes = scene.items().stream().map(SceneItem::box).toList();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                assertThat(Boxes.overlap(boxes.get(i), boxes.get(j))).isFalse();
            }
        }
    }

    @Test
    void what_lies_beyond_a_panel_is_cut_off() {
        Group corner = groups(drawn(CASE), "place-2").get(0);
        Box walls = Box.around(corner.items().stream()
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .filter(path -> path.style() == LineStyle.ARRIS)
                .flatMap(path -> path.segments().stream())
                .map(Segment::box)
                .toList());
        assertThat(walls.width()).isLessThanOrEqualTo(3 + 1e-9);
    }

    @Test
    void a_closed_run_is_drawn_round() {
        String side = "{ length: 20, corner: outside 120 }";
        Scene post = drawn(
                "plan: [{ name: post, stretches: [" + String.join(", ", side, side, side, side, side, side) + "] }]\n");
        assertThat(groups(post, "place-")).hasSize(1);
        assertThat(texts(post)).contains("post, drawn 1 : 10", "stretch 6 20");
        assertThat(drawn(CASE)).isEqualTo(drawn(CASE));
    }

    @Test
    void a_slanting_wall_is_drawn_at_its_slant() {
        Scene scene = drawn("plan: [{ left: square, right: { end: die, corner: 60 }, stretches: [{ length: 40 }] }]\n");
        assertThat(texts(scene)).contains("right end: dies on a wall at 60°");
        assertThat(groups(scene, "place-2").get(0).items().stream().filter(Hatch.class::isInstance))
                .hasSize(2);
    }

    private static final String TIGHT = """
            plan:
              - name: shelf
                left: die
                right: square
                stretches: [{ name: wall, length: 230, corner: outside 90 }, { name: end, length: 12 }]
              - name: seat
                left: die
                right: die
                stretches:
                  - { name: left, length: 14, corner: outside 91.5 }
                  - { name: front, length: 200, corner: outside 89 }
                  - { name: right, length: 14 }
              - name: niche
                left: { end: die, plumb: { out: 1/2, over: 96 } }
                right: { end: die, plumb: { out: -1/2, over: 96 } }
                stretches:
                  - { name: long wall, length: 60, corner: inside 135 }
                  - { name: cheek, length: 4, corner: outside 90 }
                  - { name: breast, length: 50, corner: outside 90 }
                  - { name: other cheek, length: 4, corner: inside 90 }
                  - { name: window wall, length: 80, openings: [{ name: slit, from: 20, to: 25, ends: return }] }
            """;

    /** What is set on the runs: names, and numbers in their rings. */
    @Test
    void no_name_and_no_ring_of_a_run_lies_on_another_or_on_wood_or_wall() {
        for (Group run : groups(drawn(TIGHT), "run-")) {
            List<ChordRing> solid = Scene.leaves(run.items()).stream()
                    .filter(Area.class::isInstance)
                    .map(Area.class::cast)
                    .filter(area -> area.tone() != Tone.PAPER)
                    .map(area -> ChordRing.of(area.ring(), 0.01))
                    .toList();
            List<Box> rings = Scene.leaves(run.items()).stream()
                    .filter(Area.class::isInstance)
                    .map(Area.class::cast)
                    .filter(area -> area.tone() == Tone.PAPER)
                    .map(Area::box)
                    .toList();
            List<Box> set = new ArrayList<>(rings);
            Scene.leaves(run.items()).stream()
                    .filter(Label.class::isInstance)
                    .map(Label.class::cast)
                    .filter(label -> !label.text().matches("\\d+"))
                    .map(SceneItem::box)
                    .forEach(set::add);
            assertThat(rings).isNotEmpty();
            for (int i = 0; i < set.size(); i++) {
                Box box = set.get(i);
                assertThat(solid).as(run.id()).noneMatch(ring -> ring.meets(box));
                for (int j = i + 1; j < set.size(); j++) {
                    assertThat(Boxes.overlap(box, set.get(j))).as(run.id()).isFalse();
                }
            }
        }
    }

    /** A pilaster 24 wide and 4 deep on a wall of 100 and one of 100: its sides lie 24 apart. */
    @Test
    void the_name_of_a_wall_shorter_than_it_is_led_to_the_middle_of_that_wall() {
        Group run = groups(drawn("""
                            plan:
                              - name: pier
                                left: die
                                right: die
                                stretches:
                                  - { name: before, length: 100, corner: inside 90 }
                                  - { name: left side, length: 4, corner: outside 90 }
                                  - { name: front, length: 24, corner: outside 90 }
                                  - { name: right side, length: 4, corner: inside 90 }
                                  - { name: behind, length: 100 }
                            """), "run-").get(0);
        double scale = 8.5 / 224;
        List<Box> dots = Scene.leaves(run.items()).stream()
                .filter(Area.class::isInstance)
                .map(Area.class::cast)
                .filter(area -> area.tone() == Tone.INK)
                .map(Area::box)
                .toList();
        Label left = label(run, "left side 4");
        Label right = label(run, "right side 4");
        assertThat(left).isNotEqualTo(right);
        assertThat(dots)
                .anySatisfy(one -> assertThat(dots).anySatisfy(other -> {
                    assertThat(other.middle().x() - one.middle().x()).isCloseTo(24 * scale, within(1e-6));
                    assertThat(other.middle().y()).isCloseTo(one.middle().y(), within(1e-6));
                }));
    }

    @Test
    void an_end_at_a_leaning_wall_is_another_than_one_at_a_plumb_wall() {
        // 1/2 in 96: atan 0.0052 = 0.298 degrees
        assertThat(texts(drawn(TIGHT)))
                .containsOnlyOnce(
                        "left end: dies on a wall at 90°",
                        "left end: dies on a wall at 90°, leaning 0.3° over the run",
                        "right end: dies on a wall at 90°, leaning 0.3° away from it");
    }

    private static final String DOOR = """
            title: Door
            wood: yellow-poplar
            space: { floor: 0, ceiling: 96, wall: { covering: 1/2 } }
            pieces: [{ name: casing, profile: board 3/4 x 3-1/2, back: wall, bottom: datum }]
            plan:
              - name: door
                around: opening
                left: { end: block, block: 6 }
                right: { end: block, block: 6 }
                stretches:
                  - { name: left leg, length: 80, corner: outside 90%s }
                  - { name: head, length: 32, corner: outside 90%s }
                  - { name: right leg, length: 80 }
            """;

    /** The casing is 3-1/2 wide, and a rosette reaches 1/8 past it on all sides: in every detail it is 3-3/4 to its 3-1/2. */
    @Test
    void the_corners_of_a_casing_are_drawn_at_large_with_their_rosettes() {
        List<Group> places = places(DOOR.formatted(", block: 1/8", ", block: 1/8"));
        assertThat(places).extracting(Group::id).containsExactly("place-1", "place-2", "place-3");
        List<Box> squares = alone(places.get(1)).leaves().stream()
                .filter(Area.class::isInstance)
                .map(SceneItem::box)
                .toList();
        // the leg, the head, the rosette over both; then the ring of the number
        Box rosette = squares.get(2);
        assertThat(rosette.width()).isCloseTo(rosette.height(), within(1e-9));
        assertThat(squares)
                .anySatisfy(box -> assertThat(box.width() / rosette.width()).isCloseTo(3.5 / 3.75, within(1e-9)));
        assertThat(texts(alone(places.get(1)))).contains("corner of the opening, outside 90°, on a rosette");
        assertThat(texts(alone(places(DOOR.formatted("", "")).get(1))))
                .contains("corner of the opening, outside 90°, mitered flat");
    }

    private static final String BANDED = """
            title: Door
            wood: yellow-poplar
            space: { wall: { covering: 1/2 } }
            pieces:
              - { name: casing, profile: board 3/4 x 3-1/2, back: wall, bottom: 1/4 }
              - { name: band, profile: board 1-1/8 x 3/4, back: wall, bottom: casing.top }
            plan:
              - name: door
                around: opening
                left: { end: block, block: 6 }
                right: { end: block, block: 6 }
                stretches:
                  - { name: left leg, length: 80, corner: outside 90, block: 1/8 }
                  - { name: head, length: 32, corner: outside 90, block: 1/8 }
                  - { name: right leg, length: 80 }
            """;

    /** Casing and band are 3-1/2 + 3/4 = 4-1/4 wide, from a reveal of 1/4 on: so wide is the block, and 6 high. */
    @Test
    void a_plinth_block_is_drawn_as_wide_as_what_stands_on_it() {
        for (Group place : List.of(places(BANDED).get(0), places(BANDED).get(2))) {
            List<Box> areas = alone(place).leaves().stream()
                    .filter(Area.class::isInstance)
                    .map(SceneItem::box)
                    .toList();
            // the leg's casing and band, then the block, then the ring of the number
            Box leg = areas.get(0).with(areas.get(1));
            Box block = areas.get(2);
            assertThat(block.back()).isCloseTo(leg.back(), within(1e-9));
            assertThat(block.face()).isCloseTo(leg.face(), within(1e-9));
            assertThat(block.width() / block.height()).isCloseTo(4.25 / 6, within(1e-9));
        }
    }

    @Test
    void names_beside_the_head_of_a_casing_stand_in_the_order_of_its_pieces() {
        Group corner = places(BANDED).get(1);
        Label casing = label(corner, "casing 3-3/4");
        Label band = label(corner, "band 4-1/2");
        // the band lies outside, which is up
        assertThat(band.at().y()).isGreaterThan(casing.at().y());
    }

    private static Label label(Group group, String text) {
        return alone(group).leaves().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .filter(label -> label.text().equals(text))
                .findFirst()
                .orElseThrow();
    }

    private static final String MIXED = """
            title: Shelf
            wood: yellow-poplar
            space: { wall: { covering: 1/2 } }
            pieces:
              - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 0 }
              - { name: bed, profile: board 1 x 1, back: frieze.face, top: frieze.top }
              - { name: shelf, profile: board 1 x 4, lay: flat, back: wall, bottom: frieze.top }
            plan:
              - name: shelf
                left: [{ end: return, pieces: [bed, shelf] }, { end: butt, casing: 1/2 }]
                right: [{ end: die, pieces: [shelf] }, square]
                stretches: [{ name: wall, length: 60 }]
              - { name: other, left: { end: butt, casing: 1/2 }, right: square, stretches: [{ name: wall, length: 60 }] }
            """;

    @Test
    void an_end_where_pieces_end_differently_tells_each_and_has_a_number_of_its_own() {
        List<Group> ends = places(MIXED);
        assertThat(ends).hasSize(4);
        assertThat(texts(alone(ends.get(0))))
                .contains("left end", "frieze: butts a casing", "bed, shelf: returned to the wall");
        assertThat(texts(alone(ends.get(1))))
                .contains("right end", "frieze, bed: cut square", "shelf: dies on a wall at 90°");
        assertThat(texts(alone(ends.get(2)))).contains("left end: butts a casing");
        assertThat(texts(alone(ends.get(3)))).contains("right end: cut square");
        // behind, and what it ends against
        assertThat(hatches(ends.get(0))).isEqualTo(2);
        assertThat(hatches(ends.get(1))).isEqualTo(2);
        assertThat(hatches(ends.get(3))).isEqualTo(1);
    }

    private static long hatches(Group group) {
        return alone(group).leaves().stream().filter(Hatch.class::isInstance).count();
    }

    private static List<Group> places(String yaml) {
        return groups(
                PlanDrawing.of(Typed.of(yaml).known().flatMap(Answers::job).orElseThrow(), Drawn.FONT), "place-");
    }

    private static Scene alone(SceneItem item) {
        return new Scene("", "", 0, 0, List.of(item));
    }
}
