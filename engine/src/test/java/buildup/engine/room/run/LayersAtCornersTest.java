package buildup.engine.room.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.room.run.Saw.Hand;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.shared.figure.FigurePrinter;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * A stack goes up layer by layer round the room (common practice, no source): the stick that runs through ends on what the
 * layers before it left standing on the other wall. All lengths by hand.
 */
class LayersAtCornersTest {
    private static final Offset<Double> EXACT = within(1e-6);

    private static final String BEAD_ON_FRIEZE = Bench.head("space: { floor: -90, ceiling: 20, wall: { solid: yes } }")
            + Bench.list(
                    "name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum",
                    "name: bead, profile: board 1 x 1/2, back: frieze.face, bottom: datum + 2");

    private static final String CROWN_ON_FRIEZE = Bench.head("space: { floor: -90, ceiling: 9, wall: { solid: yes } }")
            + Bench.list(
                    "name: frieze, profile: board 3/4 x HIGH, back: wall, bottom: datum",
                    "name: crown, profile: check-crown 9/16 x 3-5/8, back: frieze.face, top: ceiling");

    private static String plan(String keys, String first, String second) {
        return "plan:\n  - { name: run, left: square, right: square, " + keys
                + ", stretches: [{ name: one, length: 100, " + first + " }, { name: two, length: 80" + second
                + " }] }\n";
    }

    private static String coped(String corner) {
        return plan("inside: cope", "corner: inside " + corner, "");
    }

    private static String right(Planned room, String piece) {
        return FigurePrinter.INCHES.print(room.cut(piece, "one").right().words());
    }

    @Test
    void the_second_layer_ends_on_the_first_layer_of_the_other_wall() {
        Planned room = Planned.clean(BEAD_ON_FRIEZE, coped("90"));
        assertThat(room.cut("frieze", "one").length()).isCloseTo(100, EXACT);
        assertThat(right(room, "frieze")).isEqualTo("square, against the wall, behind the coped stick");
        assertThat(room.cut("frieze", "two").length()).isCloseTo(80 - 0.75, EXACT);
        // the frieze of the other wall fills the last 3/4 of the bead's way
        assertThat(room.cut("bead", "one").length()).isCloseTo(100 - 0.75, EXACT);
        assertThat(right(room, "bead")).isEqualTo("square, against the frieze of 'two', behind the coped stick");
        // the bead of the other wall ends on the face of this one: 3/4 and 1 out
        assertThat(room.cut("bead", "two").length()).isCloseTo(80 - 1.75, EXACT);
        assertThat(room.fit("frieze", "one").meetsWall(Hand.RIGHT)).isTrue();
        assertThat(room.fit("bead", "one").meetsWall(Hand.RIGHT)).isFalse();
        // what shows of its face ends at the other's face, however it is cut behind
        assertThat(room.fit("bead", "one").seenPast(Hand.RIGHT, 1.75)).isCloseTo(-1.75, EXACT);
    }

    @Test
    void where_the_left_stick_is_coped_the_right_one_runs_through_likewise() {
        Planned room = Planned.clean(BEAD_ON_FRIEZE, coped("90, cope: left"));
        assertThat(room.cut("frieze", "two").length()).isCloseTo(80, EXACT);
        assertThat(room.cut("bead", "two").length()).isCloseTo(80 - 0.75, EXACT);
        assertThat(room.cut("bead", "one").length()).isCloseTo(100 - 1.75, EXACT);
        assertThat(FigurePrinter.INCHES.print(room.cut("bead", "two").left().words()))
                .isEqualTo("square, against the frieze of 'one', behind the coped stick");
    }

    /** The face of the other wall's frieze, 3/4 from its wall, is a line in plan: the bead ends on it all across. */
    @Test
    void at_any_corner_the_end_lies_on_the_face_that_it_meets() {
        for (double corner : new double[] {60, 80, 88, 92, 120, 135, 150}) {
            Planned room = Planned.of(BEAD_ON_FRIEZE, coped(Double.toString(corner)));
            double angle = Math.toRadians(corner);
            for (double out : new double[] {0.75, 1.75}) {
                // the corner is at (100, 0), the other wall goes on from it into the room at the corner's angle
                Point end = room.fit("bead", "one").right(out);
                double fromWall = (100 - end.x()) * Math.sin(angle) + end.y() * Math.cos(angle);
                assertThat(fromWall).as("corner %s, %s out", corner, out).isCloseTo(0.75, EXACT);
            }
        }
        // 135: 3/4 of clearance takes 0.75 / sin 135 = 1.0607 of the stick, 1.75 out it goes 1.75 / tan 45 past the
        // corner
        Planned bay = Planned.of(BEAD_ON_FRIEZE, coped("135"));
        assertThat(bay.fit("bead", "one").faceLength()).isCloseTo(100 - 0.75 * Math.sqrt(2) + 1.75, EXACT);
    }

    @Test
    void only_what_stands_at_the_heights_of_the_stick_counts() {
        // 3-5/8 at 38 degrees hangs less than 3-5/8 under a ceiling at 9: down to 5.375 at the most
        String tall = CROWN_ON_FRIEZE.replace("HIGH", "7-1/4");
        assertThat(Planned.clean(tall, coped("90")).cut("crown", "one").length())
                .isCloseTo(100 - 0.75, EXACT);
        String low = CROWN_ON_FRIEZE.replace("HIGH", "5");
        Planned room = Planned.clean(low, coped("90"));
        assertThat(room.fit("crown", "one").course().box().bottom()).isGreaterThan(5.1);
        assertThat(room.cut("crown", "one").length()).isCloseTo(100, EXACT);
        assertThat(right(room, "crown")).isEqualTo("square, against the wall, behind the coped stick");
    }

    /** A quarter round of 1 in. over a flat of 1 in.: at a height h it comes out by 1 + sqrt(1 - (1 - h)^2), 1.8 at 0.4. */
    @Test
    void of_a_molding_counts_how_far_it_comes_out_within_those_heights() {
        String stack = Bench.head("space: { floor: -90, ceiling: 20, wall: { solid: yes } }")
                + Bench.list(
                        "name: round, section: [out 1, ovolo 1], back: wall, bottom: datum",
                        "name: band, profile: board 1/2 x 1, back: round.face, top: datum + 0.4",
                        "name: lip, profile: board 1/2 x 1/4, back: round.face, top: datum + 0.72");
        Planned room = Planned.clean(stack, coped("90"));
        assertThat(room.cut("band", "one").length()).isCloseTo(100 - 1.8, within(1e-5));
        // 0.28 under its top: 1 + sqrt(1 - 0.0784)
        assertThat(room.cut("lip", "one").length()).isCloseTo(100 - 1.96, within(1e-5));
    }

    @Test
    void a_later_piece_is_not_yet_there_and_one_that_only_touches_is_not_in_the_way() {
        String stack = Bench.head("space: { floor: -90, ceiling: 20, wall: { solid: yes } }")
                + Bench.list(
                        "name: low, profile: board 2 x 3, back: wall, bottom: datum",
                        "name: high, profile: board 3/4 x 3, back: wall, bottom: low.top",
                        "name: rail, profile: board 1 x 1, back: high.face, bottom: high.bottom + 1");
        Planned room = Planned.clean(stack, coped("90"));
        assertThat(room.cut("low", "one").length()).isCloseTo(100, EXACT);
        assertThat(room.cut("high", "one").length()).isCloseTo(100, EXACT);
        assertThat(room.cut("rail", "one").length()).isCloseTo(99.25, EXACT);
    }

    @Test
    void what_an_opening_or_the_plan_keeps_off_the_corner_is_not_in_the_way() {
        Planned door = Planned.of(
                BEAD_ON_FRIEZE,
                plan(
                        "inside: cope",
                        "corner: inside 90",
                        ", openings: [{ name: door, from: 0, to: 30, pieces: [frieze] }]"));
        assertThat(door.cut("bead", "one").length()).isCloseTo(100, EXACT);
        Planned bare = Planned.of(BEAD_ON_FRIEZE, plan("inside: cope", "corner: inside 90", ", pieces: [bead]"));
        assertThat(bare.cut("bead", "one").length()).isCloseTo(100, EXACT);
    }

    @Test
    void a_piece_that_stops_at_a_corner_ends_on_what_the_other_wall_carries() {
        Planned room = Planned.of(BEAD_ON_FRIEZE, plan("inside: miter", "corner: inside 90", ", pieces: [frieze]"));
        assertThat(room.cut("bead", "one").length()).isCloseTo(99.25, EXACT);
        assertThat(right(room, "bead")).isEqualTo("square, against the frieze of 'two'");
    }

    @Test
    void framing_stands_before_anything_is_put_up() {
        String stack = Bench.head("space: { floor: -90, ceiling: 20, wall: { solid: yes } }")
                + Bench.list(
                        "name: soffit, kind: framing, section: [out 12, up 8], back: wall, top: ceiling",
                        "name: band, profile: board 3/4 x 3, back: soffit.face, bottom: soffit.bottom + 1");
        Planned room = Planned.clean(stack, coped("90"));
        assertThat(room.cut("band", "one").length()).isCloseTo(100 - 12, EXACT);
        assertThat(right(room, "band")).isEqualTo("square, against the soffit of 'two', behind the coped stick");
    }

    /**
     * Blocking of 1-3/4 behind a fascia that stands out to 2-1/2: on the coped wall it begins where the fascia of the other
     * wall has passed.
     */
    @Test
    void blocking_leaves_the_way_to_the_stick_that_runs_through() {
        String stack = Bench.head("space: { floor: -90, ceiling: 20, wall: { solid: yes } }")
                + Bench.list(
                        "name: block, kind: nailer, profile: board 3/4 x 1-3/4, lay: flat, back: wall, bottom: datum",
                        "name: fascia, profile: board 3/4 x 3, back: block.face, bottom: datum - 1");
        Planned room = Planned.clean(stack, coped("90"));
        assertThat(room.cut("block", "one").length()).isCloseTo(100, EXACT);
        assertThat(room.cut("block", "two").length()).isCloseTo(80 - 2.5, EXACT);
        assertThat(FigurePrinter.INCHES.print(room.cut("block", "two").left().words()))
                .isEqualTo("square, clear of the fascia of 'one'");
        assertThat(room.cut("fascia", "one").length()).isCloseTo(100, EXACT);
        assertThat(room.cut("fascia", "two").length()).isCloseTo(80 - 2.5, EXACT);
    }

    /** No two sticks of square section may be in one place: their boxes in plan and height, corner by corner. */
    @Test
    void no_two_boards_of_a_coped_room_are_in_one_place() {
        String stack = Bench.head("space: { floor: -90, ceiling: 20, wall: { solid: yes } }")
                + Bench.list(
                        "name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum",
                        "name: block, kind: nailer, profile: board 3/4 x 3, lay: flat, back: wall, bottom: frieze.top",
                        "name: fascia, profile: board 3/4 x 2, back: block.face, bottom: block.bottom - 1/4",
                        "name: bead, profile: board 1/2 x 1/2, back: frieze.face, bottom: datum + 1",
                        "name: cap, profile: board 3/4 x 6, lay: flat, back: wall, bottom: fascia.top");
        for (String side : List.of("left", "right")) {
            Planned room = Planned.clean(stack, coped("90, cope: " + side));
            List<Fit> fits = room.job().fits();
            assertThat(fits).hasSize(10);
            for (Fit a : fits) {
                for (Fit b : fits) {
                    if (a != b) {
                        assertThat(overlap(a, b))
                                .as(
                                        "%s %s, %s %s",
                                        a.course().name(),
                                        a.stretch(),
                                        b.course().name(),
                                        b.stretch())
                                .isLessThan(1e-9);
                    }
                }
            }
        }
    }

    /** The least of the overlaps in plan and height, in; of what is square to both walls. */
    private static double overlap(Fit a, Fit b) {
        Box one = Box.of(a.outline().get(0), a.outline().get(2));
        Box other = Box.of(b.outline().get(0), b.outline().get(2));
        return Math.min(
                Math.min(
                        Math.min(one.face(), other.face()) - Math.max(one.back(), other.back()),
                        Math.min(one.top(), other.top()) - Math.max(one.bottom(), other.bottom())),
                Math.min(a.course().box().top(), b.course().box().top())
                        - Math.max(a.course().box().bottom(), b.course().box().bottom()));
    }
}
