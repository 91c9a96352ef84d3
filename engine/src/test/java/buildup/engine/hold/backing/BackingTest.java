package buildup.engine.hold.backing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.Bench;
import buildup.engine.hold.backing.Backing.Stretch;
import buildup.shared.document.DocumentReader;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Change;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What stands behind a piece to nail into. */
class BackingTest {
    private static final String FRIEZE = "name: frieze, profile: board 3/4 x 6, back: 1, bottom: datum";

    private static List<Stretch> behind(Bench bench, String name) {
        return bench.backings().stream()
                .filter(backing -> bench.name(backing.body()).equals(name))
                .findFirst()
                .orElseThrow()
                .stretches();
    }

    private static Stretch only(Bench bench, String name) {
        assertThat(behind(bench, name)).hasSize(1);
        return behind(bench, name).get(0);
    }

    @Test
    void a_nail_through_the_face_finds_the_nailer_behind_as_far_as_it_reaches_up() {
        Bench bench =
                Bench.loose(FRIEZE, "name: block, kind: nailer, section: [out 1, up 2], face: frieze.back, bottom: 1");
        Stretch stretch = only(bench, "frieze");
        assertThat(bench.name(stretch.by())).isEqualTo("block");
        assertThat(stretch.from().y()).isCloseTo(1, within(1e-6));
        assertThat(stretch.to().y()).isCloseTo(3, within(1e-6));
        assertThat(stretch.from().x()).as("given on the face").isEqualTo(1.75);
    }

    /** A board on the far side of a beam's core is nailed into that from its own free face (common practice, no source). */
    @Test
    void a_board_flat_against_a_nailer_before_it_is_nailed_from_its_free_face() {
        String core = "name: core, kind: nailer, profile: board 1-1/2 x 5-1/2, lay: flat, back: 3, bottom: 0";
        String side = "name: side, profile: board 3/4 x 6, face: core.back, top: core.top";
        Bench beam = Bench.loose(core, side);
        Stretch stretch = only(beam, "side");
        assertThat(beam.name(stretch.by())).isEqualTo("core");
        assertThat(stretch.from().x())
                .as("given on the free face, 3/4 behind the core")
                .isEqualTo(2.25);
        assertThat(Math.abs(stretch.to().y() - stretch.from().y()))
                .as("as high as the core")
                .isCloseTo(1.5, within(1e-6));
        assertThat(beam.notices("no-backing")).isEmpty();
        Bench shut = Bench.loose("name: post, profile: board 1 x 8, back: 0, bottom: -6", core, side);
        assertThat(behind(shut, "side")).as("no tool gets in behind it").isEmpty();
        Bench thick = Bench.loose(core, side.replace("board 3/4 x 6", "board 2-1/4 x 6"));
        assertThat(behind(thick, "side")).as("no nail goes through so much").isEmpty();
    }

    /** A sill's stool is nailed down before the casing stands on it (common practice, no source); it bears on 2-1/2 of the sill. */
    @Test
    void a_piece_is_nailed_from_a_face_that_only_later_ones_stand_before() {
        String sill = "name: sill, kind: framing, section: [out 4, up 1-1/2], back: -4, bottom: -1-1/2";
        String stool = "name: stool, section: [out 5, bead up 1 as nose], back: -2-1/2, bottom: 0";
        String casing = "name: casing, profile: board 3/4 x 3-1/2, back: 0, bottom: stool.top";
        Bench after = Bench.loose(sill, stool, casing);
        Stretch stretch = only(after, "stool");
        assertThat(after.name(stretch.by())).isEqualTo("sill");
        assertThat(Math.abs(stretch.to().x() - stretch.from().x())).isCloseTo(2.5, within(1e-6));
        assertThat(after.notices("no-backing"))
                .noneMatch(notice -> notice.piece().equals(Optional.of("stool")));
        Bench before = Bench.loose(sill, casing.replace("stool.top", "1"), stool);
        assertThat(behind(before, "stool"))
                .as("the casing is up: no tool gets in over the sill")
                .isEmpty();
    }

    /** What no one sees of the finished work was nailed before the crown closed it in. */
    @Test
    void a_board_on_the_wall_inside_a_hollow_is_nailed_before_that_is_closed() {
        Bench bench = Bench.in(
                "{ floor: -84, ceiling: 12, wall: { solid: yes } }",
                "name: backer, profile: board 3/8 x 3/4, back: wall, top: ceiling - 1",
                "name: crown, profile: cyma-crown 11/16 x 4-5/8, back: wall, top: ceiling");
        Stretch stretch = only(bench, "backer");
        assertThat(bench.name(stretch.by())).isEqualTo("wall");
        assertThat(Math.abs(stretch.to().y() - stretch.from().y())).isCloseTo(0.75, within(1e-6));
        assertThat(bench.notices("no-backing"))
                .noneMatch(notice -> notice.piece().equals(Optional.of("backer")));
    }

    @Test
    void a_narrow_strip_that_lies_is_nailed_through_its_edge_and_a_shelf_is_not() {
        String stud = "name: stud, kind: framing, section: [out 2, up 6], face: wall, bottom: datum";
        Bench strip = Bench.loose(stud, "name: strip, profile: board 3/4 x 2, lay: flat, back: stud.face, bottom: 2");
        assertThat(strip.name(only(strip, "strip").by())).isEqualTo("stud");
        Bench shelf =
                Bench.loose(stud, "name: shelf, profile: board 3/4 x 2-1/4, lay: flat, back: stud.face, bottom: 2");
        assertThat(behind(shelf, "shelf")).isEmpty();
    }

    @Test
    void a_piece_that_stands_on_framing_is_nailed_down_into_it_before_a_later_one_covers_it() {
        String top = "name: case, kind: framing, section: [out 12, up 20], face: wall, top: 0";
        String plinth = "name: plinth, profile: board 3/4 x 2-3/8, back: wall - 3/4, bottom: datum";
        Stretch alone = only(Bench.loose(top, plinth), "plinth");
        Bench covered = Bench.loose(
                top, plinth, "name: shelf, profile: board 1 x 5-1/2, lay: flat, back: plinth.back, bottom: plinth.top");
        Stretch under = only(covered, "plinth");
        assertThat(covered.name(under.by())).isEqualTo("case");
        assertThat(under.from().y()).isCloseTo(alone.from().y(), within(1e-9));
        assertThat(under.to().x()).isCloseTo(alone.to().x(), within(1e-6));
        assertThat(covered.notices("no-backing"))
                .noneMatch(notice -> notice.piece().equals(Optional.of("plinth")));
        // what was up before it lets no nail in
        Bench before =
                Bench.loose(top, "name: shelf, profile: board 1 x 5-1/2, lay: flat, back: -3/4, bottom: 2-3/8", plinth);
        assertThat(behind(before, "plinth")).isEmpty();
    }

    private static Answer answer(String yaml) {
        return Answer.of(
                DocumentReader.read("stack.yaml", yaml.getBytes(StandardCharsets.UTF_8), new Notices())
                        .orElseThrow(),
                Catalog.builtIn());
    }

    private static final String HEAD = """
            wood: yellow-poplar
            space: { floor: -84, %s wall: { covering: 1/2 } }
            pieces:
              - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum }
              - { name: cap, profile: board 3/4 x 2-1/2, lay: flat, back: wall, bottom: frieze.top }
            """;

    private static Notice unbacked(Answer answer) {
        return answer.notices().stream()
                .filter(notice -> notice.code().equals("no-backing"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_piece_that_no_tool_can_be_got_over_is_told_what_leaves_no_room() {
        assertThat(NoticeWords.INCHES.cure(unbacked(answer(HEAD.formatted("ceiling: 9,")))))
                .contains("it could be pinned to trim that is held, but")
                .contains("the ceiling")
                .contains("no tool of the list room.");
        // with room it is pinned to the frieze, and nothing is left to say
        Answer open = answer(HEAD.formatted(""));
        Change first = unbacked(open).changes().get(0);
        assertThat(first.place()).isEqualTo("fastenings");
    }

    /** A lid that lies with its back edge flat on the wall is not told that no wood is near: no nail goes in through 3-1/2. */
    @Test
    void what_lies_against_the_wall_is_told_that_no_square_nail_goes_in() {
        Bench bench = Bench.onWall(
                "name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum",
                "name: lid, profile: board 1-1/16 x 3-1/2, lay: flat, back: wall, bottom: frieze.top");
        assertThat(bench.notices("no-backing"))
                .singleElement()
                .satisfies(notice -> assertThat(NoticeWords.INCHES.message(notice))
                        .isEqualTo("No nail square to a face of 'lid' goes into the wall, which it lies against."));
        Bench before = Bench.onWall("name: lid, profile: board 1-1/16 x 3-1/2, lay: flat, back: 4, bottom: datum");
        assertThat(NoticeWords.INCHES.message(before.notices("no-backing").get(0)))
                .isEqualTo("'lid' has no nailer or framing within 3 of it to nail into.");
    }

    @Test
    void what_has_nothing_to_be_nailed_into_is_not_said_to_be_nailed() {
        List<String> trusted = answer(HEAD.formatted("ceiling: 9,")).known().orElseThrow().verdict().trusted().stream()
                .map(FigurePrinter.INCHES::print)
                .toList();
        assertThat(trusted).contains("frieze nailed to wall", "cap held to wall by something other than nails");
    }

    @Test
    void framing_counts_and_trim_does_not() {
        Bench bench = Bench.loose(
                FRIEZE,
                "name: batten, profile: board 1 x 6, face: frieze.back, bottom: datum",
                "name: stud, kind: framing, section: [out 2, up 6], face: batten.back, bottom: datum");
        assertThat(bench.name(only(bench, "frieze").by())).isEqualTo("stud");
    }

    @Test
    void air_does_not_matter_up_to_three_inches() {
        String stud = "name: stud, kind: framing, section: [out 2, up 6], bottom: datum, face: frieze.back - ";
        assertThat(behind(Bench.loose(FRIEZE, stud + "3"), "frieze")).hasSize(1);
        Bench far = Bench.loose(FRIEZE, stud + "3-1/8");
        assertThat(behind(far, "frieze")).isEmpty();
        assertThat(far.notices("no-backing")).singleElement().satisfies(notice -> {
            assertThat(notice.level()).isEqualTo(Level.PROBLEM);
            assertThat(NoticeWords.INCHES.message(notice))
                    .isEqualTo("'frieze' has no nailer or framing within 3 of it to nail into.");
            assertThat(NoticeWords.INCHES.cure(notice))
                    .isEqualTo("Add a nailer 3-1/8 x 1-1/2 between 'frieze' and 'stud', its top level with the piece.");
            assertThat(notice.piece()).contains("frieze");
        });
    }

    @Test
    void a_solid_wall_backs_and_one_to_measure_from_does_not() {
        assertThat(behind(Bench.onWall(FRIEZE), "frieze")).hasSize(1);
        assertThat(behind(Bench.loose(FRIEZE), "frieze")).isEmpty();
        Bench part = Bench.in("{ wall: { to: 2 } }", FRIEZE);
        assertThat(only(part, "frieze").to().y()).isCloseTo(2, within(1e-6));
    }

    @Test
    void wallboard_is_nothing_to_nail_into() {
        // the frieze's back is 1 off the plane: studs behind 2 of covering are in reach, behind 2-1/8 they are not
        assertThat(behind(Bench.in("{ wall: { covering: 2 } }", FRIEZE), "frieze"))
                .hasSize(1);
        assertThat(behind(Bench.in("{ wall: { covering: 2-1/8 } }", FRIEZE), "frieze"))
                .isEmpty();
    }

    @Test
    void a_slope_behind_is_in_reach_only_as_far_as_the_gap_allows() {
        // the slope falls 1 back for each 1 up, from the frieze's back at the datum
        Bench bench = Bench.loose(
                FRIEZE,
                "name: wedge, kind: nailer, section: [out 6, chamfer in 6 x 6], face: frieze.back, bottom: datum");
        Stretch stretch = only(bench, "frieze");
        assertThat(stretch.from().y()).isCloseTo(0, within(1e-6));
        assertThat(stretch.to().y()).isCloseTo(3, within(1e-6));
        Bench over = Bench.loose(
                FRIEZE,
                "name: wedge, kind: nailer, section: [out 6, chamfer in 6 x 6], flip: over, face: frieze.back, bottom: datum");
        assertThat(only(over, "frieze").from().y()).isCloseTo(3, within(1e-6));
    }

    @Test
    void a_lying_board_is_nailed_through_its_broad_faces() {
        Bench bench = Bench.loose(
                "name: block, kind: nailer, section: [out 2, up 2], back: wall, bottom: datum",
                "name: cap, profile: board 3/4 x 5, lay: flat, back: wall, bottom: block.top");
        Stretch stretch = only(bench, "cap");
        assertThat(stretch.from().y()).isCloseTo(2.75, within(1e-9));
        assertThat(Math.abs(stretch.to().x() - stretch.from().x())).isCloseTo(2, within(1e-6));
    }

    @Test
    void a_piece_that_shows_nothing_but_a_curve_is_nailed_square_to_its_chord() {
        Bench bench = Bench.in("{ floor: 0 }", "name: shoe, section: [out 1, ovolo in 1], back: wall, bottom: floor");
        assertThat(bench.walk()).containsExactly("shoe ovolo 1.571");
        assertThat(bench.name(only(bench, "shoe").by())).isEqualTo("wall");
    }

    @Test
    void a_shoe_before_a_base_is_nailed_level_through_the_base_into_the_wall() {
        Bench bench = Bench.in(
                "{ floor: 0 }",
                "name: base, profile: board 3/4 x 5-1/2, back: wall, bottom: floor",
                "name: shoe, profile: quarter-round 3/4 x 3/4, back: base.face, bottom: floor");
        Stretch stretch = only(bench, "shoe");
        assertThat(bench.name(stretch.by())).isEqualTo("wall");
        assertThat(Math.abs(stretch.to().y() - stretch.from().y())).isCloseTo(0.75, within(1e-6));
        assertThat(bench.notices("no-backing")).isEmpty();
    }

    @Test
    void a_shoe_too_far_before_the_wall_has_nothing_to_be_nailed_to() {
        Bench bench = Bench.in(
                "{ floor: 0 }",
                "name: post, profile: board 3-1/8 x 5-1/2, back: wall, bottom: floor",
                "name: shoe, profile: quarter-round 3/4 x 3/4, back: post.face, bottom: floor");
        assertThat(behind(bench, "shoe")).isEmpty();
        assertThat(bench.notices("no-backing")).hasSize(1);
    }

    @Test
    void a_stretch_too_short_for_a_nail_is_none() {
        Bench bench =
                Bench.loose(FRIEZE, "name: lath, kind: nailer, section: [out 1, up 0.1], face: frieze.back, bottom: 1");
        assertThat(behind(bench, "frieze")).isEmpty();
    }

    @Test
    void nailers_and_framing_ask_for_no_backing_themselves() {
        Bench bench = Bench.loose(
                "name: block, kind: nailer, section: [out 2, up 2], back: wall, bottom: datum",
                "name: stud, kind: framing, section: [out 2, up 2], back: 30, bottom: datum");
        assertThat(bench.backings()).isEmpty();
        assertThat(bench.notices("no-backing")).isEmpty();
    }
}
