package buildup.engine.room.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.room.plan.Plan;
import buildup.engine.room.run.EndCut;
import buildup.engine.room.run.Job;
import buildup.engine.room.run.Runs;
import buildup.engine.room.run.Saw;
import buildup.engine.room.run.Saw.Hand;
import buildup.shared.document.Claims;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Fields;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Rooms by hand: ceilings, floors and walls that are not straight, along a crown, a base and a wainscot cap. */
class SurveyingTest {
    private static final Offset<Double> EXACT = within(1e-9);

    /** A frieze with a crown whose top is at 5-3/4, a quarter under the ceiling as drawn. */
    private static final String HALL = Bench.head("space: { floor: -90, ceiling: 6, wall: { solid: yes } }")
            + Bench.list(
                    "name: frieze, profile: board 3/4 x 2-1/2, back: wall, bottom: datum",
                    "name: crown, profile: check-crown-edged 9/16 x 3-5/8, back: wall, top: ceiling - 1/4");

    private static final String BASE = Bench.head("space: { floor: 0, ceiling: 96, wall: { solid: yes } }")
            + Bench.list(
                    "name: base, profile: board 3/4 x 5-1/2, back: wall, bottom: floor",
                    "name: shoe, profile: board 1/2 x 3/4, back: base.face, bottom: floor");

    private record Asked(Surfaced surfaced, List<Notice> plan, List<Notice> said) {
        GapAlong gap(String stretch, Surface surface) {
            return surfaced.gaps().stream()
                    .filter(gap -> gap.stretch().equals(stretch) && gap.surface() == surface)
                    .findFirst()
                    .orElseThrow();
        }

        Remedy way(String stretch, Remedy.Kind kind) {
            return surfaced.ways().stream()
                    .filter(way -> way.of().stretch().equals(stretch) && way.kind() == kind)
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static Asked of(String stack, String keys, String... stretches) {
        Bench bench = Bench.sound(stack);
        String text = stack + "plan:\n  - name: room\n" + keys + "    stretches:\n      - "
                + String.join("\n      - ", stretches) + "\n";
        Notices notices = new Notices();
        Fields root = Fields.of(
                DocumentReader.read("stack.yaml", text.getBytes(StandardCharsets.UTF_8), notices)
                        .orElseThrow(),
                new Claims(),
                notices,
                bench.stack().lengths());
        Plan plan = Plan.read(bench.stack(), root, notices);
        List<Notice> read = notices.sorted();
        Job job = Runs.of(bench.section(), plan, new Notices());
        Notices said = new Notices();
        return new Asked(Surveying.of(bench.section(), Optional.of(job), said), read, said.sorted());
    }

    private static final String OPEN = "    left: die\n    right: die\n";

    /** First room: reference example B, every figure by hand. */
    @Test
    void a_hall_whose_ceiling_sags_into_the_crown() {
        Asked hall = of(HALL, OPEN, "{ name: long, length: 144, ceiling: [[0, 6], [60, 5-5/8], [144, 6-1/8]] }");
        GapAlong gap = hall.gap("long", Surface.CEILING);
        assertThat(gap.fit().course().name()).isEqualTo("crown");
        assertThat(gap.least().amount()).isCloseTo(-0.125, EXACT);
        assertThat(gap.least().along()).isEqualTo(60);
        assertThat(gap.most().amount()).isCloseTo(0.375, EXACT);
        assertThat(gap.gap().area(-1)).isCloseTo(2.5625, EXACT);
        assertThat(gap.gap().area(1)).isCloseTo(16.8125, EXACT);
        Notice clash = hall.said().get(0);
        assertThat(clash.level()).isEqualTo(Level.PROBLEM);
        assertThat(NoticeWords.INCHES.message(clash))
                .isEqualTo("'crown' on 'long': the ceiling comes down 1/8 into it, most at 60 along, over a length of"
                        + " 41.");
        assertThat(NoticeWords.INCHES.cure(clash)).startsWith("Lower the stack by 1/8 ");
        Remedy open = hall.way("long", Remedy.Kind.REVEAL);
        assertThat(open.move()).isCloseTo(0.125, EXACT);
        assertThat(open.least()).isCloseTo(0, EXACT);
        assertThat(open.most()).isCloseTo(0.5, EXACT);
        Remedy scribed = hall.way("long", Remedy.Kind.SCRIBE);
        assertThat(scribed.move()).isCloseTo(-0.375, EXACT);
        assertThat(scribed.most()).isCloseTo(0.5, EXACT);
        Remedy level = hall.way("long", Remedy.Kind.FOLLOW);
        assertThat(level.move()).isCloseTo(0.125, EXACT);
        assertThat(level.most()).isCloseTo(0.4270833333, within(1e-9));
    }

    /** 6 less 5-5/8 is 3/8 into what goes up to the ceiling, ground and frieze; what stops 1/4 under it loses 1/8. */
    @Test
    void all_that_a_ceiling_comes_into_is_named_and_scribed_together() {
        String stack = Bench.head("space: { floor: -90, ceiling: 6, wall: { solid: yes } }")
                + Bench.list(
                        "name: ground, kind: nailer, profile: board 3/4 x 2-1/2, back: wall, top: ceiling",
                        "name: frieze, profile: board 3/4 x 4-1/2, back: ground.face, top: ceiling",
                        "name: bead, profile: board 1/2 x 1, back: frieze.face, top: ceiling - 1/4",
                        "name: low, profile: board 1/2 x 1, back: frieze.face, top: ceiling - 2");
        Asked hall = of(stack, OPEN, "{ name: long, length: 144, ceiling: [[0, 6], [60, 5-5/8], [144, 6]] }");
        assertThat(hall.said()).hasSize(1);
        Notice clash = hall.said().get(0);
        assertThat(NoticeWords.INCHES.message(clash))
                .isEqualTo(
                        "'frieze' on 'long': the ceiling comes down 3/8 into it, most at 60 along, over a length of 144;"
                                + " 3/8 into 'ground' and 1/8 into 'bead' too.");
        assertThat(NoticeWords.INCHES.cure(clash))
                .isEqualTo(
                        "Lower the stack by 3/8 and close what stays open by a strip, or scribe the tops of 'frieze',"
                                + " 'ground' and 'bead' to the ceiling.");
    }

    @Test
    void a_floor_that_rises_comes_into_base_and_shoe() {
        Asked room = of(BASE, OPEN, "{ name: long, length: 144, floor: [[0, 0], [60, 1/4], [144, 0]] }");
        Notice clash = room.said().get(0);
        assertThat(NoticeWords.INCHES.message(clash)).contains(" into it").endsWith("; 1/4 into 'shoe' too.");
        assertThat(NoticeWords.INCHES.cure(clash)).endsWith("or scribe the bottoms of 'base' and 'shoe' to the floor.");
    }

    /** The same crown rolled down at 60 by 3/8: reference example C. The corner is one of 92 degrees. */
    @Test
    void a_crown_rolled_down_takes_another_spring_and_other_settings_of_the_saw() {
        Asked hall = of(
                HALL,
                "    left: die\n    right: die\n",
                "{ name: long, length: 144, corner: inside 92, ceiling: [[0, 6], [60, 5-5/8], [144, 6]] }",
                "{ name: short, length: 96, ceiling: [[0, 6], [96, 5-3/4]] }");
        double s = Math.toRadians(38);
        double height = 3.625 * Math.cos(s);
        double up = (height - 0.3125 * Math.sin(s)) / Math.cos(s);
        double out = -0.3125 * Math.cos(s) + up * Math.sin(s);
        double d = Math.atan2(height, out) - Math.asin((height - 0.375) / Math.hypot(out, height));
        Rolled lowest = rolled(hall, "long", "lowest place");
        assertThat(lowest.down()).isCloseTo(0.375, EXACT);
        assertThat(lowest.spring()).isCloseTo(38 + Math.toDegrees(d), within(1e-6));
        assertThat(lowest.rolled()).isEmpty();
        Rolled corner = rolled(hall, "long", "right end");
        assertThat(corner.spring()).isCloseTo(38, EXACT);
        // trade facts: 38 at 92 degrees is 30.7331 and 33.1887, an inside corner turns both signs
        assertThat(Math.abs(corner.drawn().orElseThrow().miter())).isCloseTo(30.7331, within(5e-5));
        assertThat(Math.abs(corner.drawn().orElseThrow().bevel())).isCloseTo(33.1887, within(5e-5));
    }

    /**
     * At 135 degrees the stick that runs through is cut at 45 to its own run, along the other wall: as half of a corner of
     * 90, by the formula of compound miters atan(sin 38 / tan 45) and asin(cos 38 cos 45). The coped one is half of 135.
     * At a square corner the one that runs through is cut square.
     */
    @Test
    void a_rolled_crown_that_is_coped_is_cut_as_the_saw_table_cuts_it() {
        String coped = OPEN + "    inside: cope\n";
        Asked bay = of(
                HALL,
                coped,
                "{ name: one, length: 100, corner: inside 135, ceiling: [[0, 6], [100, 5-3/4]] }",
                "{ name: two, length: 100, corner: inside 90 }",
                "{ name: three, length: 60 }");
        double s = Math.toRadians(38);
        Saw.Flat through = rolled(bay, "one", "right end").drawn().orElseThrow();
        assertThat(Math.abs(through.miter())).isCloseTo(Math.toDegrees(Math.atan(Math.sin(s))), within(1e-9));
        assertThat(Math.abs(through.bevel()))
                .isCloseTo(Math.toDegrees(Math.asin(Math.cos(s) * Math.sqrt(0.5))), within(1e-9));
        double half = Math.toRadians(135.0 / 2);
        Saw.Flat over = rolled(bay, "two", "left end").drawn().orElseThrow();
        assertThat(Math.abs(over.miter()))
                .isCloseTo(Math.toDegrees(Math.atan(Math.sin(s) / Math.tan(half))), within(1e-9));
        assertThat(rolled(bay, "two", "right end").drawn()).isEmpty();
        assertThat(rolled(bay, "two", "right end").rolled()).isEmpty();
        assertThat(rolled(bay, "three", "left end").drawn()).isPresent();
        for (Rolled end : bay.surfaced().rolled()) {
            if (!end.where().equals("lowest place")) {
                EndCut cut = end.of().fit().cut(end.where().startsWith("left") ? Hand.LEFT : Hand.RIGHT);
                assertThat(end.drawn().map(flat -> Math.abs(flat.miter())).orElse(0.0))
                        .isCloseTo(cut.miter(), EXACT);
                assertThat(end.drawn().map(flat -> Math.abs(flat.bevel())).orElse(0.0))
                        .isCloseTo(cut.bevel(), EXACT);
            }
        }
    }

    /** Both sides of a corner come down by as much, 1/4 under the run's highest place, a level stretch all along. */
    @Test
    void crowns_rolled_on_the_two_sides_of_a_corner_meet() {
        Asked hall = of(
                HALL,
                OPEN,
                "{ name: one, length: 100, corner: inside 90, ceiling: [[0, 6], [50, 5-3/4], [100, 6]] }",
                "{ name: two, length: 100, corner: outside 90, ceiling: [[0, 6], [50, 6-1/4], [100, 6]] }",
                "{ name: three, length: 60, ceiling: [[0, 6], [60, 6]] }");
        for (String[] corner : new String[][] {{"one", "two"}, {"two", "three"}}) {
            Rolled left = rolled(hall, corner[0], "right end");
            Rolled right = rolled(hall, corner[1], "left end");
            assertThat(left.down()).isCloseTo(0.25, EXACT);
            assertThat(right.down()).isCloseTo(0.25, EXACT);
            assertThat(right.spring()).isCloseTo(left.spring(), EXACT).isGreaterThan(38);
            assertThat(right.rolled()).isEqualTo(left.rolled()).isPresent();
        }
        assertThat(rolled(hall, "one", "lowest place").down()).isCloseTo(0.5, EXACT);
    }

    /** The section's ceiling is at 6: beside a stretch that falls to 5-3/4 at its corner the next one is level and 1/4 higher. */
    @Test
    void a_stretch_that_nobody_measured_is_rolled_with_the_rest_of_its_run() {
        Asked hall = of(
                HALL,
                OPEN,
                "{ name: one, length: 100, corner: inside 90, ceiling: [[0, 6], [100, 5-3/4]] }",
                "{ name: two, length: 100 }");
        assertThat(rolled(hall, "two", "left end").down()).isCloseTo(0, EXACT);
        assertThat(rolled(hall, "two", "left end").spring()).isCloseTo(38, EXACT);
        assertThat(rolled(hall, "one", "right end").down()).isCloseTo(0.25, EXACT);
        assertThat(hall.surfaced().gaps()).extracting(GapAlong::stretch).doesNotContain("two");
    }

    private static Rolled rolled(Asked asked, String stretch, String where) {
        return asked.surfaced().rolled().stream()
                .filter(one -> one.of().stretch().equals(stretch) && one.where().equals(where))
                .findFirst()
                .orElseThrow();
    }

    /** Second room: a base on a floor that dips, parted by a door. */
    @Test
    void a_base_on_a_floor_that_dips_is_looked_at_on_each_side_of_a_door() {
        Asked study = of(
                BASE,
                "    left: square\n    right: square\n",
                "{ name: north, length: 144, floor: [[0, 0], [48, -3/8], [96, 1/8], [144, -1/8]], openings: [{ name:"
                        + " door, from: 24, to: 60 }] }");
        GapAlong left = study.gap("north, left of door", Surface.FLOOR);
        assertThat(left.least().amount()).isCloseTo(0, EXACT);
        assertThat(left.most().amount()).isCloseTo(0.1875, EXACT);
        assertThat(left.gap().area(1)).isCloseTo(24 * 0.1875 / 2, EXACT);
        GapAlong right = study.gap("north, right of door", Surface.FLOOR);
        // at 60 the floor is a quarter of the way from -3/8 to 1/8
        assertThat(right.most().amount()).isCloseTo(0.25, EXACT);
        assertThat(right.most().along()).isEqualTo(60);
        assertThat(right.least().amount()).isCloseTo(-0.125, EXACT);
        assertThat(right.gap().lengthBelow()).isCloseTo(12 + 24, EXACT);
        assertThat(study.said()).extracting(Notice::code).containsExactly("floor-too-high");
        assertThat(study.way("north, right of door", Remedy.Kind.SCRIBE).most()).isCloseTo(0.375, EXACT);
    }

    /** Third room: humps and hollows behind a base. */
    @Test
    void a_wall_with_a_hump_and_a_hollow_wants_shims_as_thick_as_both() {
        Asked passage = of(BASE, OPEN, "{ name: west, length: 144, wall: [[0, 0], [48, 3/16], [96, -1/8], [144, 0]] }");
        GapAlong gap = passage.gap("west", Surface.WALL);
        assertThat(gap.least().amount()).isCloseTo(-0.1875, EXACT);
        assertThat(gap.most().amount()).isCloseTo(0.125, EXACT);
        Remedy shims = passage.way("west", Remedy.Kind.SHIM);
        assertThat(shims.move()).isCloseTo(0.1875, EXACT);
        assertThat(shims.most()).isCloseTo(0.3125, EXACT);
        assertThat(passage.said())
                .allSatisfy(notice -> assertThat(notice.level()).isEqualTo(Level.NOTE));
        assertThat(NoticeWords.INCHES.message(passage.said().get(0)))
                .isEqualTo("'base' on 'west': the wall stands 3/16 out of its plane, most at 48 along.");
    }

    @Test
    void a_hump_that_no_tape_tells_is_not_spoken_of() {
        String wall = "{ name: west, length: 144, wall: [[0, 0], [48, %s], [144, 0]] }";
        assertThat(of(BASE, OPEN, wall.formatted("0.03")).said()).isEmpty();
        assertThat(of(BASE, OPEN, wall.formatted("1/32")).said())
                .extracting(Notice::code)
                .containsExactly("wall-stands-out");
    }

    @Test
    void a_ceiling_has_one_height_at_a_corner() {
        Asked off = of(
                HALL,
                OPEN,
                "{ name: a, length: 60, corner: inside 90, ceiling: [[0, 6]] }",
                "{ name: b, length: 60, ceiling: [[0, 6-1/4]] }");
        assertThat(off.said()).extracting(Notice::code).containsExactly("heights-disagree");
        assertThat(NoticeWords.INCHES.message(off.said().get(0)))
                .isEqualTo("At the corner of 'a' and 'b' the ceiling is at 6 and at 6-1/4, 1/4 apart.");
        Asked near = of(
                HALL,
                OPEN,
                "{ name: a, length: 60, corner: inside 90, ceiling: [[0, 6]] }",
                "{ name: b, length: 60, ceiling: [[0, 6-1/8]] }");
        assertThat(near.said()).isEmpty();
    }

    @Test
    void a_straight_and_level_room_asks_for_nothing() {
        Asked level = of(HALL, OPEN, "{ name: a, length: 60, ceiling: [[0, 6], [60, 6]] }");
        assertThat(level.surfaced().ways()).isEmpty();
        assertThat(level.surfaced().rolled()).isEmpty();
        assertThat(level.said()).isEmpty();
        assertThat(of(HALL, OPEN, "{ name: a, length: 60 }").surfaced().gaps()).isEmpty();
    }

    @Test
    void a_floor_far_below_a_cornice_is_measured_and_left_alone() {
        Asked hall = of(HALL, OPEN, "{ name: a, length: 60, floor: [[0, -90], [60, -89]] }");
        assertThat(hall.gap("a", Surface.FLOOR).least().amount()).isCloseTo(89, EXACT);
        assertThat(hall.surfaced().ways()).isEmpty();
        assertThat(hall.surfaced().tightest(Surface.FLOOR)).isEmpty();
    }

    @Test
    void measures_that_cannot_be_so_are_refused_with_their_place() {
        assertThat(refusal("ceiling: 12")).startsWith("'ceiling' of 'a' is not a list of places");
        assertThat(refusal("ceiling: [[0, 12, 3]]")).startsWith("'ceiling' of 'a' is not a list of places");
        assertThat(refusal("ceiling: []")).startsWith("'ceiling' of 'a' is not a list of places");
        assertThat(refusal("floor: [[0, 0], [61, 0]]"))
                .isEqualTo("'floor' of 'a' is measured at 61; the stretch runs from 0 to 60.");
        assertThat(refusal("floor: [[20, 0], [20, 1]]"))
                .isEqualTo("'floor' of 'a' is measured at 20 behind a place that is as far along or farther.");
        assertThat(refusal("wall: [[0, 0], [30, 7]]"))
                .isEqualTo("The wall of 'a' does not stand 7 off its plane, as at 30.");
        assertThat(refusal("ceiling: [[0, 6]], floor: [[0, -90], [60, 6]]"))
                .isEqualTo("On 'a', 60 along, the ceiling at 6 is not over the floor at 6.");
        assertThat(refusal("ceiling: [[0, six]]")).contains("six");
    }

    private static String refusal(String keys) {
        Asked asked = of(HALL, OPEN, "{ name: a, length: 60, " + keys + " }");
        assertThat(asked.plan()).hasSize(1);
        assertThat(asked.plan().get(0).level()).isEqualTo(Level.REFUSAL);
        return NoticeWords.INCHES.message(asked.plan().get(0));
    }
}
