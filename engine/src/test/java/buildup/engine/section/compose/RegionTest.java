package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Areas, overlaps and voids. */
class RegionTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static final String LOW = "name: low, profile: board 1 x 2, back: wall, bottom: datum";

    @Test
    void an_overlap_counts_once_in_the_area_and_twice_in_the_weight() {
        Bench bench = Bench.loose(LOW, "name: high, profile: board 1 x 2, back: wall, bottom: low.top - 1/2");
        assertThat(bench.section().totals().area()).isCloseTo(3.5, EXACT);
        assertThat(bench.section().totals().weightPerFoot()).isCloseTo(4 * 29.35 / 144, EXACT);
    }

    @Test
    void an_overlap_has_the_least_width_over_all_directions_as_its_depth() {
        Bench bench = Bench.loose(LOW, "name: high, profile: board 1 x 2, back: 3/4, bottom: low.top - 1/2");
        assertThat(bench.section().overlaps()).singleElement().satisfies(overlap -> {
            assertThat(overlap.area()).isCloseTo(0.125, EXACT);
            assertThat(overlap.depth()).isCloseTo(0.25, EXACT);
            assertThat(bench.piece("low").outline().holds(overlap.at())).isTrue();
            assertThat(bench.piece("high").outline().holds(overlap.at())).isTrue();
        });
        assertThat(bench.notices("overlap")).singleElement().satisfies(notice -> {
            assertThat(notice.level()).isEqualTo(Level.PROBLEM);
            assertThat(NoticeWords.INCHES.message(notice)).isEqualTo("'high' cuts 1/4 into 'low' (0.13 sq in).");
            assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Rabbet it, or move it out 1/4.");
        });
    }

    @Test
    void two_connected_parts_of_an_overlap_are_two_rows() {
        Bench bench = Bench.loose(
                "name: low, section: [out 1, up 1/2, out 1, down 1/2, out 1, up 1], flip: over, back: wall, bottom: datum",
                "name: high, profile: board 1 x 3, lay: flat, back: wall, bottom: low.top - 1/4");
        assertThat(bench.section().overlaps())
                .hasSize(2)
                .allSatisfy(overlap -> assertThat(overlap.area()).isCloseTo(0.25, EXACT));
        assertThat(bench.notices("overlap")).as("two alike are said once").hasSize(1);
    }

    @Test
    void an_overlap_thinner_than_touching_is_a_contact_with_one_note() {
        Bench bench = Bench.loose(LOW, "name: high, profile: board 1 x 2, back: wall, bottom: low.top - 0.003");
        assertThat(bench.section().overlaps()).isEmpty();
        assertThat(bench.contacts()).containsExactly("low carries high 1.000");
        assertThat(bench.section().totals().area()).as("as given").isCloseTo(4 - 0.003, EXACT);
        assertThat(bench.notices("overlap-thinner-than-touching"))
                .singleElement()
                .satisfies(notice -> {
                    assertThat(notice.level()).isEqualTo(Level.NOTE);
                    assertThat(NoticeWords.INCHES.message(notice))
                            .isEqualTo("'high' laps 'low' by 0.0030: so little is taken as touching.");
                });
    }

    @Test
    void a_gap_thinner_than_touching_is_closed_and_not_worth_a_word() {
        Bench bench = Bench.loose(LOW, "name: high, profile: board 1 x 2, back: wall, bottom: low.top + 0.003");
        assertThat(bench.section().skin()).hasSize(1);
        assertThat(bench.section().voids()).isEmpty();
        assertThat(bench.notices("overlap-thinner-than-touching")).isEmpty();
        assertThat(bench.walk()).hasSize(4);
    }

    @Test
    void a_piece_that_cuts_into_wall_floor_or_ceiling_is_said_to() {
        Bench bench = Bench.in(
                "{ floor: 0, ceiling: 10 }", "name: post, profile: board 1 x 11, back: -1/4, bottom: floor - 1/2");
        assertThat(bench.notices("overlap"))
                .extracting(notice -> NoticeWords.INCHES.message(notice))
                .contains(
                        "'post' cuts 1/4 into the wall (2.50 sq in).", "'post' cuts 1/2 into the floor (0.50 sq in).");
    }

    @Test
    void framing_may_stand_in_the_wall() {
        Bench bench =
                Bench.onWall(LOW, "name: stud, kind: framing, section: [out 3-1/2, up 90], face: wall, bottom: -40");
        assertThat(bench.section().overlaps()).isEmpty();
    }

    @Test
    void a_void_is_closed_by_wall_floor_and_ceiling_as_far_as_they_do() {
        String board = "profile: board 1 x 4, lay: flat";
        Bench wood = Bench.loose(
                "name: a, " + board + ", back: wall, bottom: 0",
                "name: b, profile: board 1 x 2, back: wall, bottom: a.top",
                "name: c, profile: board 1 x 2, face: a.face, bottom: a.top",
                "name: d, " + board + ", back: wall, bottom: b.top");
        assertThat(wood.section().voids()).singleElement().satisfies(hollow -> {
            assertThat(hollow.area()).isCloseTo(4, EXACT);
            assertThat(hollow.closedBy()).isEmpty();
        });
        Bench corner =
                Bench.in("{ floor: 0, ceiling: 3 }", "name: front, profile: board 1 x 3, back: 2, bottom: floor");
        assertThat(corner.section().voids())
                .extracting(ClosedVoid::closedBy)
                .containsExactly(List.of("wall", "floor", "ceiling"));
        assertThat(corner.section().voids().get(0).area()).isCloseTo(6, EXACT);
    }

    @Test
    void a_hollow_that_is_open_anywhere_is_no_void() {
        Bench bench =
                Bench.in("{ floor: 0, ceiling: 3 }", "name: front, profile: board 1 x 2-7/8, back: 2, bottom: floor");
        assertThat(bench.section().voids()).isEmpty();
    }

    @Test
    void a_void_thinner_than_touching_or_as_small_as_a_glue_line_is_none() {
        Bench thin = Bench.loose(
                "name: a, profile: board 1 x 4, back: wall, bottom: 0",
                "name: b, profile: board 1 x 4, back: a.face + 0.0035, bottom: 0",
                "name: c, profile: board 1 x 3, lay: flat, back: wall, top: a.bottom",
                "name: d, profile: board 1 x 3, lay: flat, back: wall, bottom: a.top");
        assertThat(thin.section().voids()).isEmpty();
        Bench speck = Bench.loose(
                "name: a, section: [out 1, up 1, in 0.02, up 0.02, out 0.02, up 1], back: wall, bottom: 0",
                "name: b, profile: board 1 x 2.02, back: a.face, bottom: 0");
        assertThat(speck.section().voids()).as("0.0004 sq in").isEmpty();
    }

    @Test
    void weights_go_by_each_piece_s_own_wood_nailers_in_framing_out() {
        Bench bench = Bench.loose(
                LOW,
                "name: high, profile: board 1 x 2, wood: heavy-wood, back: wall, bottom: low.top",
                "name: block, kind: nailer, section: [out 1, up 1], back: wall, bottom: high.top",
                "name: stud, kind: framing, section: [out 10, up 10], face: wall, bottom: 0");
        assertThat(bench.section().totals().weightPerFoot()).isCloseTo((2 * 29.35 + 2 * 58.7 + 29.35) / 144, EXACT);
    }

    @Test
    void nailers_count_in_the_totals_and_not_in_those_of_the_trim() {
        Bench bench = Bench.loose(
                LOW, "name: block, kind: nailer, profile: board 1 x 5, lay: flat, back: wall, bottom: low.top");
        Totals totals = bench.section().totals();
        assertThat(List.of(totals.height(), totals.projection(), totals.trimHeight(), totals.trimProjection()))
                .containsExactly(3.0, 5.0, 2.0, 1.0);
    }

    @Test
    void a_stack_of_nailers_alone_has_no_trim_to_measure() {
        Totals totals = Bench.loose("name: block, kind: nailer, section: [out 1, up 1], back: wall, bottom: 2")
                .section()
                .totals();
        assertThat(List.of(totals.bottom(), totals.top(), totals.trimHeight(), totals.trimProjection()))
                .containsExactly(2.0, 3.0, 0.0, 0.0);
    }

    @Test
    void without_a_ceiling_or_a_limit_nothing_is_left_of_them() {
        Section section = Bench.loose(LOW).section();
        assertThat(section.ceilingLeft()).isEmpty();
        assertThat(section.projectionLeft()).isEmpty();
    }

    @Test
    void a_void_that_a_corner_closes_is_one_and_a_note_says_what_closes_it() {
        Bench bench = Bench.sound(Bench.resource("/corner-void.yaml"));
        assertThat(bench.section().voids()).singleElement().satisfies(hollow -> {
            // a triangle under the lid: the board's thickness, turned by 30 degrees
            assertThat(hollow.area())
                    .isCloseTo(0.75 * 0.75 * Math.sin(Math.toRadians(30)) * Math.cos(Math.toRadians(30)) / 2, EXACT);
            assertThat(hollow.closedBy()).containsExactly("wall");
        });
        assertThat(bench.notices("void-closed-by-a-point"))
                .singleElement()
                .satisfies(notice -> assertThat(NoticeWords.INCHES.message(notice))
                        .startsWith("The void of 0.12 sq in is closed only by points: 'slope' and the wall at 0 out")
                        .contains("'slope' and 'lid' at"));
    }

    private static double seconds(String text) {
        long start = System.nanoTime();
        Bench.sound(text);
        return (System.nanoTime() - start) / 1e9;
    }

    private static String touching(String shape, int count) {
        int columns = shape.equals("grid") ? (int) Math.sqrt(count) : 1;
        String[] pieces = new String[count];
        for (int i = 0; i < count; i++) {
            int row = i / columns;
            double back = 0.75 * (i % columns) + (shape.equals("stairs") ? 0.75 * row : 0);
            pieces[i] = "name: p" + i + ", section: [out 3/4, up 1-1/2], back: " + back + ", bottom: " + 1.5 * row;
        }
        return Bench.head("space: { wall: { solid: yes } }") + Bench.list(pieces);
    }
}
