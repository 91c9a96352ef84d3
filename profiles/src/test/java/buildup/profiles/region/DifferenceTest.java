package buildup.profiles.region;

import static buildup.profiles.region.UnionTest.board;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DifferenceTest {
    private static final double EXACT = 1e-9;

    private static double apart(Outline a, Outline b) {
        return Difference.from(a).to(Difference.from(b));
    }

    private static Outline quarterRound(double r) {
        Walk walk = new Walk();
        walk.straight(Way.OUT, r, "bottom");
        walk.ovolo(Way.UP, r, Way.IN, r, "round");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    /** A square of side r less the quarter disc round its outer lower corner. */
    private static Outline cavetto(double r) {
        Walk walk = new Walk();
        walk.straight(Way.OUT, r / 1e6, "bottom");
        walk.cove(Way.UP, r, Way.OUT, r, "cove");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-6, 1e-3, 1 / 256.0, 0.25, 1, 1.5})
    void a_square_against_itself_shifted_differs_by_two_strips(double shift) {
        Outline square = board(0, 0, 1, 1);
        double strip = Math.min(shift, 1);
        assertThat(apart(square, square.moved(Motion.shift(shift, 0)))).isCloseTo(2 * strip, within(EXACT));
        double both = 2 * (1 - (1 - strip) * (1 - strip));
        assertThat(apart(square, square.moved(Motion.shift(shift, shift)))).isCloseTo(both, within(EXACT));
    }

    @Test
    void round_and_hollow_of_one_radius_differ_by_what_their_closed_forms_say() {
        // both arcs bound a disc of radius r round neighboring corners of one square; what the hollow's wood has of
        // the
        // round is the round less the discs' lens, of which the square holds half: r^2 (pi/3 - sqrt(3)/4)
        double r = 1;
        int slices = 400_000;
        double shared = 0;
        for (int i = 0; i < slices; i++) {
            double x = (i + 0.5) * r / slices;
            double round = Math.sqrt(r * r - x * x);
            double hollow = Math.sqrt(r * r - (x - r) * (x - r));
            shared += Math.max(0, round - hollow) * r / slices;
        }
        assertThat(shared).isCloseTo(Math.PI / 4 - (Math.PI / 3 - Math.sqrt(3) / 4), within(1e-6));
        double expected = Math.PI / 4 + (1 - Math.PI / 4) - 2 * (Math.PI / 4 - Math.PI / 3 + Math.sqrt(3) / 4);
        assertThat(apart(quarterRound(r), cavetto(r))).isCloseTo(expected, within(3e-6));
    }

    @Test
    void a_round_in_its_square_leaves_the_hollow() {
        // Trade facts, "circular segment" and quarter round rows: (1 - pi/4) r^2
        assertThat(apart(board(0, 0, 1, 1), quarterRound(1))).isCloseTo(1 - Math.PI / 4, within(EXACT));
    }

    @Test
    void what_is_shifted_differs_as_the_moved_outline_does() {
        Outline a = UnionTest.readingRoom().get(2);
        Difference still = Difference.from(a);
        for (Point by : List.of(new Point(0.3, 0), new Point(0, -0.2), new Point(-0.7, 0.4))) {
            Difference moved = Difference.from(a.moved(Motion.shift(by.x(), by.y())));
            Difference shifted = still.shifted(by.x(), by.y());
            assertThat(shifted.area()).isCloseTo(a.area(), within(EXACT));
            assertThat(shifted.to(moved)).isCloseTo(0, within(EXACT));
            assertThat(shifted.to(still))
                    .isCloseTo(moved.to(still), within(EXACT))
                    .isGreaterThan(0.1);
            assertThat(shifted.box().near(moved.box(), EXACT)).isTrue();
            assertThat(shifted.box().middle().distance(moved.box().middle())).isLessThan(EXACT);
            assertThat(shifted.box().width()).isCloseTo(moved.box().width(), within(EXACT));
            assertThat(shifted.box().height()).isCloseTo(moved.box().height(), within(EXACT));
        }
    }

    @Test
    void outlines_that_do_not_meet_differ_by_all_they_have() {
        assertThat(apart(quarterRound(1), board(5, 5, 6, 6))).isCloseTo(1 + Math.PI / 4, within(EXACT));
    }

    @RepeatedTest(40)
    void the_overlay_library_says_the_same(RepetitionInfo round) {
        Random random = new Random(round.getCurrentRepetition());
        List<Outline> shapes = List.of(
                UnionTest.readingRoom().get(2), UnionTest.readingRoom().get(8), quarterRound(1.3), cavetto(1.1));
        Outline a = shapes.get(random.nextInt(4)).moved(Motion.turn(random.nextInt(360)));
        Outline moved = shapes.get(random.nextInt(4)).moved(Motion.turn(random.nextInt(360)));
        Point onto = a.centroid().minus(moved.centroid());
        Outline b =
                moved.moved(Motion.shift(onto.x() + random.nextDouble() - 0.5, onto.y() + random.nextDouble() - 0.5));
        double union = WeldedOutlines.of(List.of(a, b)).union().area();
        // what two outlines share is what their areas have over their union's; it is traced within touching there
        assertThat(apart(a, b))
                .as("seed %d", round.getCurrentRepetition())
                .isCloseTo(2 * union - a.area() - b.area(), within(2e-4));
    }

    @RepeatedTest(20)
    void counting_points_says_the_same(RepetitionInfo round) {
        Random random = new Random(100 + round.getCurrentRepetition());
        Outline a = UnionTest.readingRoom().get(2).moved(Motion.turn(random.nextInt(360)));
        Outline b = a.moved(Motion.turn(random.nextInt(90)));
        int n = 400;
        double left = Math.min(a.box().back(), b.box().back());
        double low = Math.min(a.box().bottom(), b.box().bottom());
        double wide = Math.max(a.box().face(), b.box().face()) - left;
        double high = Math.max(a.box().top(), b.box().top()) - low;
        // the same in slices, each measured along its whole height
        double counted = 0;
        for (int i = 0; i < n * 10; i++) {
            double x = left + (i + 0.5) * wide / (n * 10);
            counted +=
                    single(Slices.heights(a.flattened(1e-5), x), Slices.heights(b.flattened(1e-5), x), low, low + high);
        }
        counted *= wide / (n * 10);
        assertThat(apart(a, b)).as("seed %d", round.getCurrentRepetition()).isCloseTo(counted, within(2e-3));
    }

    /** Length of an upright that lies in one of the two alone. */
    private static double single(List<Double> a, List<Double> b, double low, double high) {
        List<Double> all = new ArrayList<>(a);
        all.addAll(b);
        all.add(low);
        all.add(high);
        all.sort(null);
        double length = 0;
        for (int i = 0; i + 1 < all.size(); i++) {
            double middle = (all.get(i) + all.get(i + 1)) / 2;
            boolean inA = a.stream().filter(y -> y < middle).count() % 2 == 1;
            boolean inB = b.stream().filter(y -> y < middle).count() % 2 == 1;
            length += inA != inB ? all.get(i + 1) - all.get(i) : 0;
        }
        return length;
    }
}
