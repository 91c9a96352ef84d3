package buildup.profiles.region;

import static buildup.profiles.region.UnionTest.lines;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** How two outlines lie against each other: exactly, with nothing in common, or so that nobody can say. */
class AbutmentTest {
    private static final double EXACT = 1e-9;

    /** Less than any joint that a carpenter can see, and more than rounding. */
    private static final double GAP = 0.003;

    private static Outline board(double back, double bottom, double face, double top) {
        return Outline.rectangle(new Box(back, bottom, face, top));
    }

    /** A half round that looks to the right, its flat upright. */
    private static Outline halfRound(double x, double y, double r) {
        Point low = new Point(x, y - r);
        Point high = new Point(x, y + r);
        return Outline.closed(List.of(
                new Stroke(new Arc(low, high, new Point(x, y), true), "round"),
                new Stroke(new Line(high, low), "flat")));
    }

    /** A block from which a hollow is taken that looks to the right, half a circle about (x, y). */
    private static Outline halfHollow(double x, double y, double r) {
        Point low = new Point(x, y - r);
        Point high = new Point(x, y + r);
        Point over = new Point(x, y + 2 * r);
        Point under = new Point(x, y - 2 * r);
        Point top = new Point(x - 2 * r, y + 2 * r);
        Point bottom = new Point(x - 2 * r, y - 2 * r);
        return Outline.closed(List.of(
                new Stroke(new Arc(low, high, new Point(x, y), false), "hollow"),
                new Stroke(new Line(high, over), "upper"),
                new Stroke(new Line(over, top), "top"),
                new Stroke(new Line(top, bottom), "back"),
                new Stroke(new Line(bottom, under), "bottom"),
                new Stroke(new Line(under, low), "lower")));
    }

    /** In both orders, since the two are asked about differently, and turned, since stacks are. */
    private static void inDoubt(String why, Outline first, Outline second) {
        for (double angle : new double[] {0, 90, 180, 211.3}) {
            Outline one = first.moved(Motion.turn(angle));
            Outline other = second.moved(Motion.turn(angle));
            assertThat(Abutment.of(one, other)).as("%s, turned %s", why, angle).isEmpty();
            assertThat(Abutment.of(other, one))
                    .as("%s, turned %s, the other first", why, angle)
                    .isEmpty();
        }
    }

    private static double covered(List<Abutment.Covered> stretches, Outline outline) {
        return stretches.stream()
                .mapToDouble(one -> (one.end() - one.start())
                        * outline.strokes().get(one.stroke()).segment().length())
                .sum();
    }

    private static void share(double length, Outline one, Outline other) {
        for (double angle : new double[] {0, 90, 180, 211.3}) {
            Outline first = one.moved(Motion.turn(angle));
            Outline second = other.moved(Motion.turn(angle));
            Abutment both = Abutment.of(first, second).orElseThrow();
            assertThat(covered(both.ofFirst(), first)).isCloseTo(length, within(EXACT));
            assertThat(covered(both.ofSecond(), second)).isCloseTo(length, within(EXACT));
        }
    }

    @Test
    void a_gap_that_a_joint_would_hide_is_in_doubt_whichever_is_the_wider() {
        inDoubt("a narrow board over a wide one", board(0, 0, 4, 1), board(1, 1 + GAP, 2, 2));
        inDoubt("one that stands out", board(0, 0, 4, 1), board(1, 1 + GAP, 5, 2));
        inDoubt("beside, flush", board(0, 0, 2, 1), board(2 + GAP, 0, 4, 1));
        inDoubt("corner beside corner", board(0, 0, 2, 1), board(2 + GAP, 1, 4, 2));
        inDoubt("one line, end beside end", board(0, 0, 2, 1), board(-2, 1, -GAP, 2));
    }

    @Test
    void a_corner_that_stands_just_off_a_face_is_in_doubt() {
        inDoubt("off a board", board(0, 0, 2, 4), lines(2 + GAP, 2, 3, 1, 3, 3));
        double r = Math.sqrt(0.5);
        inDoubt("off a round", halfRound(0, 0, 1), lines(r + GAP, r, 3, 0.5, 3, 1));
    }

    @Test
    void a_round_that_nearly_touches_a_face_or_just_does_is_in_doubt() {
        for (double gap : new double[] {0, GAP}) {
            inDoubt("a face", halfRound(0, 0, 1), board(1 + gap, -3, 2, 3));
            inDoubt("the flat of another", halfRound(0, 0, 1), halfRound(1 + gap, 0, 3));
            inDoubt(
                    "another round",
                    halfRound(0, 0, 1),
                    halfRound(0, 0, 1).moved(Motion.ENDS.then(Motion.shift(2 + gap, 0))));
            inDoubt("the bottom of a hollow", halfHollow(0, 0, 1), roundIn(gap));
        }
    }

    /** A half round of 1/2 that looks into the hollow of 1 about (0, 0), its crown a gap away from the bottom. */
    private static Outline roundIn(double gap) {
        return halfRound(0, 0, 0.5).moved(Motion.ENDS.then(Motion.shift(-0.5 + gap, 0)));
    }

    @Test
    void a_round_a_little_too_small_for_its_hollow_is_in_doubt() {
        Outline small = halfRound(0, 0, 1 - GAP).moved(Motion.ENDS);
        inDoubt("about one center", halfHollow(0, 0, 1), small);
    }

    @Test
    void what_is_farther_off_than_any_joint_has_nothing_in_common() {
        double off = 0.01;
        for (Outline other :
                List.of(board(1 + off, -3, 2, 3), lines(1 + off, 0, 2, -1, 2, 1), halfRound(1 + off, 0, 1))) {
            Abutment apart = Abutment.of(halfRound(0, 0, 1), other).orElseThrow();
            assertThat(apart.ofFirst()).isEmpty();
            assertThat(apart.ofSecond()).isEmpty();
        }
        Abutment inside = Abutment.of(halfHollow(0, 0, 1), roundIn(off)).orElseThrow();
        assertThat(inside.ofFirst()).isEmpty();
    }

    @Test
    void what_lies_in_another_is_in_doubt() {
        inDoubt("wholly", board(0, 0, 4, 4), board(1, 1, 2, 2));
        inDoubt("across", board(0, 0, 4, 1), board(1, -1, 2, 2));
        inDoubt("a round", board(0, 0, 4, 4), halfRound(1, 2, 1));
        inDoubt("the same", board(0, 0, 4, 1), board(0, 0, 4, 1));
    }

    @Test
    void boards_share_what_of_their_faces_lies_together() {
        share(1, board(0, 0, 4, 1), board(1, 1, 2, 2));
        share(3, board(0, 0, 4, 1), board(1, 1, 6, 2));
        share(2, board(0, 0, 4, 1), board(-3, 1, 2, 2));
        share(4, board(0, 0, 4, 1), board(-1, 1, 5, 2));
        Random random = new Random(15);
        for (int i = 0; i < 100; i++) {
            double wide = 1 + random.nextInt(40) / 8.0;
            double from = -3 + random.nextInt(70) / 8.0;
            double to = from + 1 + random.nextInt(40) / 8.0;
            double shared = Math.max(0, Math.min(wide, to) - Math.max(0, from));
            share(shared, board(0, 0, wide, 1), board(from, 1, to, 2));
        }
    }

    @Test
    void a_round_shares_with_its_hollow_the_arc_on_which_both_lie() {
        share(Math.PI, halfHollow(0, 0, 1), halfRound(0, 0, 1).moved(Motion.ENDS));
        // a quarter of the circle, filled from its foot
        Point low = new Point(0, -1);
        Point back = new Point(-1, 0);
        Outline quarter = Outline.closed(List.of(
                new Stroke(new Arc(back, low, new Point(0, 0), true), "round"),
                new Stroke(new Line(low, new Point(0, 0)), "face"),
                new Stroke(new Line(new Point(0, 0), back), "top")));
        share(Math.PI / 2, halfHollow(0, 0, 1), quarter);
    }

    @Test
    void a_round_that_ends_tangent_to_a_face_meets_it_in_that_point() {
        Point low = new Point(2, 1);
        Point high = new Point(1, 2);
        Point corner = new Point(2, 2);
        Outline quarter = Outline.closed(List.of(
                new Stroke(new Arc(high, low, corner, true), "round"),
                new Stroke(new Line(low, corner), "face"),
                new Stroke(new Line(corner, high), "top")));
        for (Outline board : List.of(board(0, 0, 4, 1), board(0, 0, 1, 4))) {
            Abutment meeting = Abutment.of(board, quarter).orElseThrow();
            assertThat(covered(meeting.ofFirst(), board)).isZero();
            assertThat(meeting.ofFirst())
                    .isNotEmpty()
                    .allSatisfy(one -> assertThat(
                                    board.strokes().get(one.stroke()).segment().at(one.start()))
                            .satisfies(at -> assertThat(at.near(low, EXACT) || at.near(high, EXACT))
                                    .isTrue()));
            share(0, board, quarter);
        }
    }
}
