package buildup.engine.room.sticks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.room.splice.Splice;
import buildup.engine.room.stock.End;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.StickPiece;
import buildup.shared.figure.FigurePrinter;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where long pieces are joined, by hand: a board 3/4 thick laps 3/4, and the middle of a joint is 3/8 on. */
class SplicePlacesTest {
    private static final String RAIL = "name: rail, profile: board 3/4 x 3-1/2, back: wall, bottom: datum";
    private static final String STUDS = "studs: { every: 16, first: 12 },";

    private static List<Splice.Joint> joints(String keys, String stretches, String stock) {
        return Cutlist.of(
                        Cutlist.WALL + Bench.list(RAIL),
                        "plan: [{ name: room, " + keys + " stretches: [" + stretches + "] }]\nstock: { " + stock
                                + "sticks: [{ of: 1x4, buy: 16' }] }\n")
                .cutList()
                .splices();
    }

    private static List<Splice.Joint> alone(String keys, String length, String stock) {
        return joints("left: square, right: square, " + keys, "{ name: north, length: " + length + " }", stock);
    }

    private static String why(Splice.Joint joint) {
        return FigurePrinter.INCHES.print(joint.why());
    }

    /** Of 250 in, a stick of 192 leaves 58 to 191-1/4 for the joint: of the studs at 60, 76 .. 188 the last is the usual. */
    @Test
    void a_joint_lies_on_a_stud() {
        assertThat(alone(STUDS, "250", "")).singleElement().satisfies(joint -> {
            assertThat(joint.middle()).isCloseTo(188, within(1e-9));
            assertThat(LengthSteps.inches(joint.at())).isCloseTo(188 - 0.375, within(1e-9));
            assertThat(why(joint)).isEqualTo("on the stud at 188");
        });
    }

    /**
     * Behind the stick of the other wall the piece begins 3/4 from the corner: the middle of its joint, on the stud at 188,
     * lies 187-1/4 from its end. The left part goes on 3/8 past it, the right one begins 3/8 before it.
     */
    @Test
    void the_middle_of_a_joint_on_the_piece_is_its_middle_on_the_wall() {
        List<Splice.Joint> joints = joints(
                "left: square, right: square, inside: cope,",
                "{ name: west, length: 40, corner: inside 90 }, { name: north, length: 250, studs: { every: 16, first: 12 } }",
                "");
        assertThat(joints).singleElement().satisfies(joint -> {
            assertThat(joint.middle()).isCloseTo(188, within(1e-9));
            assertThat(joint.fromLeft()).isCloseTo(187.25, within(1e-9));
            assertThat(LengthSteps.inches(joint.left().length())).isCloseTo(187.625, within(1e-9));
            assertThat(LengthSteps.inches(joint.right().length())).isCloseTo(249.25 - 186.875, within(1e-9));
        });
    }

    @Test
    void where_no_stud_is_within_reach_or_none_is_given_that_is_said() {
        assertThat(alone("", "250", "")).singleElement().satisfies(joint -> {
            assertThat(LengthSteps.inches(joint.at())).isCloseTo(191.25, within(1e-9));
            assertThat(why(joint)).isEqualTo("over something solid: no studs are given");
        });
        assertThat(alone("studs: [20, 230],", "250", ""))
                .singleElement()
                .satisfies(joint ->
                        assertThat(why(joint)).isEqualTo("over a block: no stud lies within reach of the sticks"));
        assertThat(alone("studs: masonry,", "250", ""))
                .singleElement()
                .satisfies(joint -> assertThat(why(joint)).isEqualTo("where backing runs all along behind it"));
    }

    /** In the middle of the south wall one is 120 from the north one; its stud at 60 is 65 aside, that at 188 only 63. */
    @Test
    void of_all_studs_the_one_is_taken_that_is_seen_least_from_the_door() {
        String room = "{ name: north, length: 250, corner: inside 90 }, { name: east, length: 120, corner: inside 90 },"
                + " { name: south, length: 250, corner: inside 90 }, { name: west, length: 120, corner: inside 90 }";
        List<Splice.Joint> joints = joints(STUDS + " entry: { stretch: south, at: 125 },", room, "");
        assertThat(joints).hasSize(2);
        Splice.Joint north = joints.get(0);
        assertThat(north.middle()).isCloseTo(60, within(1e-9));
        assertThat(why(north))
                .isEqualTo("on the stud at 60, the least seen that is free, 136-1/2- from where one comes in");
        assertThat(Math.hypot(65, 120)).isCloseTo(136.47, within(0.01));
        // one looks at it from the right: the right part lies over the left
        assertThat(north.leftLiesOver()).isFalse();
        assertThat(north.right().left().slant()).isPositive();
        assertThat(north.left().right().slant()).isNegative();
        // the other lies in the wall that one comes in by, as far from the door as the sticks allow
        assertThat(joints.get(1).middle()).isIn(60.0, 188.0);
        assertThat(Math.abs(joints.get(1).middle() - 125)).isEqualTo(65);
    }

    /** In the middle wall of a bay, whose direction is no whole number, the joint still lies as far from the door as it can. */
    @Test
    void along_the_wall_that_one_comes_in_by_the_farthest_stud_is_taken() {
        String bay = "{ name: side, length: 30, corner: inside 135 }, { name: front, length: 250, corner: inside 135 },"
                + " { name: far, length: 30 }";
        List<Splice.Joint> joints = joints(
                "left: square, right: square, studs: [60, 76, 92, 108, 124, 140, 156, 172, 188],"
                        + " entry: { stretch: front, at: 30 },",
                bay,
                "");
        assertThat(joints)
                .singleElement()
                .satisfies(joint -> assertThat(joint.middle()).isCloseTo(188, within(1.0 / 64)));
    }

    /** 200 in from 192: the joint may lie from 8 to 191-1/4, but stays 30 from either end. */
    @Test
    void no_joint_lies_within_what_is_held_back_at_an_end() {
        assertThat(alone("", "200", "hold: 30, "))
                .singleElement()
                .satisfies(
                        joint -> assertThat(LengthSteps.inches(joint.at())).isCloseTo(200 - 0.75 - 30, within(1e-9)));
    }

    @Test
    void joints_of_two_pieces_on_one_wall_do_not_lie_over_each_other() {
        String two =
                Cutlist.WALL + Bench.list(RAIL, "name: cap, profile: board 3/4 x 3-1/2, back: wall, bottom: rail.top");
        List<Splice.Joint> joints = Cutlist.of(
                        two,
                        "plan: [{ left: square, right: square, " + STUDS
                                + " stretches: [{ length: 250 }] }]\nstock: { sticks: [{ of: 1x4, buy: 16' }] }\n")
                .cutList()
                .splices();
        assertThat(joints).hasSize(2).allSatisfy(joint -> assertThat(why(joint)).startsWith("on the stud"));
        assertThat(Math.abs(joints.get(0).middle() - joints.get(1).middle())).isGreaterThanOrEqualTo(16);
    }

    @Test
    void parts_of_walls_of_chance_make_the_whole_and_none_is_longer_than_a_stick() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            double length = 193 + random.nextInt(16 * 700) / 16.0;
            String first = String.format(Locale.ROOT, "%.4f", 1 + random.nextInt(15 * 16) / 16.0);
            List<Splice.Joint> joints =
                    alone("studs: { every: 16, first: " + first + " },", String.valueOf(length), "");
            StickPiece whole = joints.get(0).piece();
            int sum = joints.get(0).left().length();
            for (Splice.Joint joint : joints) {
                sum += joint.right().length() - 3 * LengthSteps.PER_INCH / 4;
                End one = joint.left().right();
                End other = joint.right().left();
                assertThat(one.slant()).isEqualTo(-other.slant());
                assertThat(joint.left().length()).isLessThanOrEqualTo(192 * LengthSteps.PER_INCH);
                assertThat(joint.right().length()).isBetween(16 * LengthSteps.PER_INCH, 192 * LengthSteps.PER_INCH);
            }
            assertThat(sum).isEqualTo(whole.length());
            int fewest = (int) Math.ceil((length - 0.75) / (192 - 0.75));
            assertThat(joints).hasSize(fewest - 1);
        }
    }
}
