package buildup.profiles.region;

import static buildup.profiles.region.UnionTest.bead;
import static buildup.profiles.region.UnionTest.board;
import static buildup.profiles.region.UnionTest.lines;
import static buildup.profiles.region.UnionTest.trough;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What lies nearer than touching is joined; what does not, is not. */
class WeldTest {
    private static final double EXACT = 1e-9;

    @ParameterizedTest
    @ValueSource(doubles = {1.0 / 512, -1.0 / 512})
    void a_bead_that_nearly_fits_its_hollow_fills_it(double more) {
        Part part = UnionTest.only(UnionTest.union(trough(0.75), bead(0, 0, 0.75 + more)));
        assertThat(part.holes()).isEmpty();
        // figures stay those of the outlines as given: off by less than the thin crescent
        assertThat(part.area()).isCloseTo(8, within(Math.PI * 0.75 / 512));
        assertThat(part.perimeter()).isCloseTo(12, within(4 * Tolerance.TOUCHING));
    }

    @Test
    void a_gap_or_lap_under_touching_is_closed_and_the_figures_stay() {
        for (double gap : List.of(1.0 / 300, -1.0 / 300, 1.0 / 1024)) {
            List<Outline> boards = List.of(board(0, 0, 1, 2), board(1 + gap, 0, 2, 2));
            Part part = UnionTest.only(WeldedOutlines.of(boards).union());
            assertThat(part.outer().box()).isEqualTo(new Box(0, 0, 2, 2));
            assertThat(part.outer().bounds()).hasSize(6);
            assertThat(part.outer().length()).isCloseTo(8 - 2 * Math.max(gap, 0), within(EXACT));
            assertThat(part.area()).isCloseTo(4, within(2 * Math.abs(gap)));
            assertThat(OutlineLaps.of(boards)).isEmpty();
        }
    }

    @Test
    void a_gap_over_touching_stays_open_and_a_lap_over_touching_is_told() {
        assertThat(UnionTest.union(board(0, 0, 1, 2), board(1 + 1.0 / 200, 0, 2, 2))
                        .parts())
                .hasSize(2);
        assertThat(OutlineLaps.of(List.of(board(0, 0, 1, 2), board(1 - 1.0 / 200, 0, 2, 2))))
                .singleElement()
                .satisfies(lap -> {
                    assertThat(lap.area()).isCloseTo(2.0 / 200, within(EXACT));
                    assertThat(lap.depth()).isCloseTo(1.0 / 200, within(EXACT));
                });
    }

    @Test
    void features_thinner_than_touching_stay() {
        Outline quirked = lines(0, 0, 1, 0, 1, 0.5, 0.9, 0.5, 0.9, 0.5 + 1.0 / 300, 1, 0.5 + 1.0 / 300, 1, 1, 0, 1);
        Part alone = UnionTest.only(UnionTest.union(quirked));
        assertThat(alone.area()).isCloseTo(quirked.area(), within(EXACT));
        assertThat(alone.outer().bounds()).hasSize(8);
        Part beside = UnionTest.only(UnionTest.union(board(-1, 0, 0, 1), quirked));
        assertThat(beside.area()).isCloseTo(1 + quirked.area(), within(EXACT));
    }

    @Test
    void a_quirk_that_a_board_closes_becomes_a_hole_that_is_not_wide() {
        Outline quirked = lines(0, 0, 1, 0, 1, 0.5, 0.9, 0.5, 0.9, 0.5 + 1.0 / 300, 1, 0.5 + 1.0 / 300, 1, 1, 0, 1);
        WeldedOutlines joining = WeldedOutlines.of(List.of(quirked, board(1, 0, 2, 1)));
        Part part = UnionTest.only(joining.union());
        assertThat(joining.cavities()).isNotEmpty().noneMatch(Cavity::wide);
        assertThat(part.area()).isCloseTo(2 - 0.1 / 300, within(EXACT));
    }

    @Test
    void a_cusp_that_lies_along_an_edge_is_welded_shut() {
        // a torus standing on a step: the air between them is a cusp, and the earlier board ends in its line
        Walk walk = new Walk();
        walk.straight(Way.OUT, 1.5, "bottom");
        walk.straight(Way.UP, 0.5, "face");
        walk.straight(Way.IN, 0.125, "step");
        walk.ovolo(Way.UP, 0.5, Way.OUT, 0.5, "ovolo");
        walk.levelToBack();
        Outline molding = Outline.closed(walk.close());
        for (double degrees : List.of(0.0, 45.0, 7.3, 200.0)) {
            Motion turn = Motion.turn(degrees);
            Outline first = board(1.2, 0.2, 2.5, 0.5).moved(turn);
            WeldedOutlines.Joined joined =
                    WeldedOutlines.of(List.of(first, molding.moved(turn))).union();
            assertThat(joined.area()).isCloseTo(molding.area() + 1.3 * 0.3 - 0.3 * 0.3, within(0.001));
        }
    }

    @Test
    void an_edge_that_gives_way_to_one_corner_stays_with_those_that_lay_on_it() {
        for (double degrees : List.of(0.0, 12.0, 90.0, 222.0)) {
            Motion turn = Motion.turn(degrees);
            // the board below gives way to the corners of the second block by half a thousandth; the first stays on it
            WeldedOutlines.Joined joined = WeldedOutlines.of(List.of(
                            board(0, 1, 1.25, 2).moved(turn),
                            board(2, 1 - 0.0005, 3, 2).moved(turn),
                            board(-1, 0, 4, 1).moved(turn)))
                    .union();
            Part part = UnionTest.only(joined);
            assertThat(part.perimeter()).isCloseTo(12 + 2 + 2, within(4 * Tolerance.TOUCHING));
            assertThat(part.area()).isCloseTo(5 + 1.25 + 1, within(0.001));
        }
    }

    @Test
    void feet_that_nearly_rest_on_a_later_board_are_welded_along_it_whatever_their_order() {
        Outline near = lines(0.5, 1, 0.9, 0.002, 1.1, 0.002, 1.5, 1);
        Outline far = lines(2.5, 1, 2.9, 0.002, 3.1, 0.002, 3.5, 1);
        for (List<Outline> feet : List.of(List.of(near, far), List.of(far, near))) {
            List<Outline> all = new ArrayList<>(feet);
            all.add(board(0, -1, 4, 0));
            Part part = UnionTest.only(WeldedOutlines.of(all).union());
            assertThat(part.area()).isCloseTo(4 + 2 * 0.6 * 0.998, within(4 * 0.002));
            // round the board but for what they stand on, and up and down each
            assertThat(part.perimeter())
                    .isCloseTo(10 + 2 * (1 - 0.2 + 2 * Math.hypot(0.4, 0.998)), within(8 * Tolerance.TOUCHING));
        }
    }

    @Test
    void corners_come_back_as_they_were_given_to_the_last_digit() {
        Walk cyma = new Walk();
        cyma.straight(Way.OUT, 0.5, "bottom");
        cyma.cymaReversa(Way.UP, 1, Way.OUT, 1, "cyma");
        cyma.cymaRecta(Way.UP, 1, Way.IN, 0.5, "recta");
        cyma.levelToBack();
        List<Outline> given = new ArrayList<>(UnionTest.readingRoom());
        given.add(Outline.closed(cyma.close()).moved(Motion.shift(-20, 0)));
        double hair = 3e-7;
        for (int i = 0; i < 9; i++) {
            double out = (i % 3 - 1) * hair;
            double up = (i / 3 - 1) * hair;
            given.add(board(-3, 4 * i, -1, 4 * i + 1));
            given.add(board(-3 + out, 4 * i + 1 + up, -1 + out, 4 * i + 2));
        }
        assertCornersComeBack(given);
    }

    private static void assertCornersComeBack(List<Outline> given) {
        List<Point> corners = given.stream()
                .flatMap(outline -> outline.strokes().stream())
                .map(stroke -> stroke.segment().from())
                .toList();
        for (Part part : WeldedOutlines.of(given).union().parts()) {
            for (Bound bound : part.outer().bounds()) {
                Point from = bound.segment().from();
                Point nearest = corners.stream()
                        .min(Comparator.comparingDouble(from::distance))
                        .orElseThrow();
                // either a corner as given, or where two outlines meet away from all corners
                assertThat(from.distance(nearest))
                        .satisfiesAnyOf(
                                off -> assertThat(off).isLessThan(1e-14),
                                off -> assertThat(off).isGreaterThan(Tolerance.SNAP));
            }
        }
    }

    @Test
    void a_curve_that_begins_a_hair_over_an_edge_meets_it_there_and_not_where_it_crosses_it_far_off() {
        // from (3, 1/300) over to (1, -0.2); its foot stands on the board from 2.5 to 3
        Point center = new Point(2, (1.0 / 300 - 0.2) / 2);
        Arc over = new Arc(new Point(3, 1.0 / 300), new Point(1, -0.2), center, true);
        List<Point> rest = List.of(over.to(), new Point(2.5, -0.2), new Point(2.5, 1.0 / 300), over.from());
        List<Stroke> strokes = new ArrayList<>(List.of(new Stroke(over, "bow")));
        for (int i = 0; i + 1 < rest.size(); i++) {
            strokes.add(new Stroke(new Line(rest.get(i), rest.get(i + 1)), "s" + i));
        }
        Part part = UnionTest.only(WeldedOutlines.of(List.of(board(0, -1, 4, 0), Outline.closed(strokes)))
                .union());
        double r = center.distance(over.from());
        double half = Math.acos(-center.y() / r);
        double bow = r * r * (half - Math.sin(half) * Math.cos(half));
        assertThat(part.area()).isCloseTo(4 + bow, within(0.01));
        assertThat(part.perimeter()).isCloseTo(10 - 2 * r * Math.sin(half) + 2 * r * half, within(0.02));
    }

    @Test
    void a_lip_thinner_than_touching_comes_down_on_the_board_below_it() {
        // over the lip a slot as thin, from the face to (1, ..): all of it goes down on the board
        Outline lipped = lines(0, 0, 4, 0, 4, 0.001, 1, 0.001, 1, 0.002, 4, 0.002, 4, 2, 0, 2);
        for (double degrees : new double[] {0, 30, 90, 211}) {
            Part part = UnionTest.only(WeldedOutlines.of(List.of(
                            board(-1, -1, 5, 0).moved(Motion.turn(degrees)), lipped.moved(Motion.turn(degrees))))
                    .union());
            assertThat(part.holes()).isEmpty();
            assertThat(part.area()).isCloseTo(6 + 8, within(0.01));
            assertThat(part.perimeter()).isCloseTo(14 + 4, within(0.02));
            assertThat(part.outer().bounds()).hasSizeBetween(8, 10);
        }
    }

    @Test
    void of_two_alike_in_one_place_the_first_bounds_the_union() {
        Part part = UnionTest.only(UnionTest.union(board(0, 0, 1, 2), board(0, 0, 1, 2)));
        assertThat(part.outer().bounds()).hasSize(4).allMatch(bound -> bound.outline() == 0);
    }

    @Test
    void a_ring_whose_neighbors_were_drawn_apart_is_closed_straight() {
        // a unit square with one corner cut off: 1 less 0.1 x 0.1 / 2
        List<Bound> bounds = new ArrayList<>();
        double[][] ends = {{3, 5, 4, 5}, {4, 5, 4, 5.9}, {3.9, 6, 3, 6}, {3, 6, 3, 5}};
        for (double[] e : ends) {
            bounds.add(new Bound(0, bounds.size(), new Line(new Point(e[0], e[1]), new Point(e[2], e[3]))));
        }
        assertThat(new Ring(bounds, new Point(3.5, 5.5)).area()).isCloseTo(0.995, within(EXACT));
    }

    @Test
    void no_stretch_of_a_ring_is_a_sliver_where_pieces_nearly_meet() {
        for (Stacks.Stack stack : new Stacks(7).many(Stacks.Kind.NEARLY, 40)) {
            for (Part part : WeldedOutlines.of(stack.pieces()).union().parts()) {
                assertThat(part.outer().bounds())
                        .allSatisfy(
                                bound -> assertThat(bound.segment().length()).isGreaterThan(Tolerance.TOUCHING / 2));
            }
        }
    }

    private static void assertParts(int parts, List<Outline> outlines) {
        for (List<Outline> order : Orders.of(outlines)) {
            for (double degrees : new double[] {0, 17, 90, 222.2}) {
                assertThat(WeldedOutlines.of(order.stream()
                                        .map(one -> one.moved(Motion.turn(degrees)))
                                        .toList())
                                .union()
                                .parts())
                        .as("turned by %s: %s", degrees, order)
                        .hasSize(parts);
            }
        }
    }

    /** Neither its sides nor its end is a stretch, and what lies on both sides of it is one edge of the board. */
    @ParameterizedTest
    @CsvSource({
        "3.04203, 0.00129, 1.00225, 1.00100",
        "3.34505, 0.00189, 1.00222, 1.00373",
        "2.44180, 0.00149, 1.00243, 0.99852",
        "1.85373, 0.00742, 1.00239, 0.99821"
    })
    void a_thin_spline_that_ends_a_hair_above_the_board_later_put_round_it_leaves_one_edge(
            double at, double thick, double right, double left) {
        Outline spline = lines(at - thick / 2, 0.5, at + thick / 2, 0.5, at + thick / 2, right, at - thick / 2, left);
        // two of them, since the ring begins beside one
        List<Outline> all = List.of(spline, spline.moved(Motion.shift(-0.7, 0)), board(0, 0, 4, 1));
        for (double degrees : new double[] {0, 45, 90, 115, 180, 263, 270}) {
            Motion turn = Motion.turn(degrees);
            Part part = UnionTest.only(
                    WeldedOutlines.of(all.stream().map(one -> one.moved(turn)).toList())
                            .union());
            assertThat(part.outer().bounds())
                    .as("turned by %s", degrees)
                    .hasSize(4)
                    .allMatch(bound -> bound.outline() == 2);
            assertThat(part.area()).isCloseTo(4, within(EXACT));
            assertThat(part.perimeter()).isCloseTo(10, within(EXACT));
        }
    }

    /** The post passes the corner of the base by a hair and stays farther than touching from the third. */
    @Test
    void an_edge_that_gives_way_to_a_corner_comes_no_nearer_to_a_third() {
        Outline base = board(0, 0, 2, 1);
        for (double behind : List.of(0.001, 0.002, 0.0035)) {
            Outline post = board(1, 0.2, 2 - behind, 4);
            assertParts(2, List.of(base, post, board(2.005 - behind, 1.02, 3, 1.5)));
            assertParts(1, List.of(base, post, board(2.003 - behind, 1.02, 3, 1.5)));
        }
    }

    /** A tip that stands a hair out of a slanted side points at a plate that the side touches with its end alone. */
    @Test
    void a_tip_that_stands_out_of_an_edge_draws_no_edge_along() {
        Outline tip = lines(0, 0, 2, 1, 0, 2);
        Outline slanted = lines(0, -1.85, 1.646, -1.85, 2, 1.0168, 0, 1.3);
        assertParts(2, List.of(tip, slanted, board(2, 0.3, 4, 1.2)));
    }
}
