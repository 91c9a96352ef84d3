package buildup.profiles.region;

import static buildup.profiles.region.UnionTest.bead;
import static buildup.profiles.region.UnionTest.board;
import static buildup.profiles.region.UnionTest.lines;
import static buildup.profiles.region.UnionTest.trough;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Air that outlines enclose, closed by contacts with or without length. */
class CavityTest {
    private static final double EXACT = 1e-9;

    private static List<Cavity> wide(List<Outline> outlines) {
        return WeldedOutlines.of(outlines).cavities().stream()
                .filter(Cavity::wide)
                .toList();
    }

    private static List<Outline> turned(List<Outline> outlines, double degrees) {
        return outlines.stream()
                .map(outline -> outline.moved(Motion.turn(degrees)))
                .toList();
    }

    private static Outline disc(double x, double y, double r) {
        Point east = new Point(x + r, y);
        Point west = new Point(x - r, y);
        Point center = new Point(x, y);
        return Outline.closed(List.of(
                new Stroke(new Arc(east, west, center, true), "up"),
                new Stroke(new Arc(west, east, center, true), "low")));
    }

    /** A three-sided box, open to the right, and a board that closes it but for a gap at its upper corner. */
    private static List<Outline> box(double gap) {
        Outline open = lines(0, 0, 4, 0, 4, 1, 1, 1, 1, 3, 4, 3, 4, 4, 0, 4);
        // its foot lies on the lower arm, its upper corner (3, 3) meets the corner of the upper arm
        Outline leaning = lines(4 + gap, 0.5, 5, 0.5, 5, 3 - gap, 4 + gap, 3 - gap);
        return List.of(open, leaning);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-7, 1.0 / 1024, 1.0 / 400})
    void a_corner_nearer_than_touching_closes_what_it_touches(double gap) {
        for (double degrees : new double[] {0, 17, 45, 90, 222.2}) {
            assertThat(wide(turned(box(gap), degrees)))
                    .as("turned by %s", degrees)
                    .singleElement()
                    .satisfies(air -> {
                        assertThat(air.area()).isCloseTo(6, within(3 * gap + EXACT));
                        assertThat(air.corners()).hasSize(1);
                        assertThat(air.corners()
                                        .get(0)
                                        .at()
                                        .distance(Motion.turn(degrees).apply(new Point(4, 3))))
                                .isLessThan(2 * Tolerance.TOUCHING);
                    });
        }
    }

    @Test
    void a_corner_farther_than_touching_closes_nothing() {
        for (double degrees : new double[] {0, 17, 45, 90, 222.2}) {
            // the corner is the gap off both ways
            assertThat(wide(turned(box(1.0 / 180), degrees)))
                    .as("turned by %s", degrees)
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1.0 / 1000, -1.0 / 1000, 1.0 / 300})
    void a_round_that_is_tangent_closes_what_it_touches(double gap) {
        // a disc in a square corner: between it and the two sides r^2 (1 - pi/4) of air
        double r = 1;
        Outline corner = lines(-1, -1, 3, -1, 3, 0, 0, 0, 0, 3, -1, 3);
        List<Outline> outlines = List.of(corner, disc(r + gap, r + gap, r));
        for (double degrees : new double[] {0, 13, 45, 200}) {
            assertThat(wide(turned(outlines, degrees)))
                    .as("turned by %s", degrees)
                    .singleElement()
                    .satisfies(air -> {
                        assertThat(air.area()).isCloseTo(1 - Math.PI / 4, within(2.5 * Math.abs(gap) + EXACT));
                        // one that laps a hair may as well close it along the lap
                        assertThat(air.corners().size()).isIn(gap < 0 ? List.of(0, 2) : List.of(2));
                    });
        }
    }

    @Test
    void a_round_farther_than_touching_closes_nothing() {
        Outline corner = lines(-1, -1, 3, -1, 3, 0, 0, 0, 0, 3, -1, 3);
        for (double degrees : new double[] {0, 13, 45, 200}) {
            assertThat(wide(turned(List.of(corner, disc(1.0047, 1.0047, 1)), degrees)))
                    .isEmpty();
        }
    }

    @Test
    void three_rounds_that_touch_enclose_the_triangle_between_them() {
        // between three discs of radius r, each tangent to the others: r^2 (sqrt 3 - pi/2)
        double r = 0.75;
        List<Outline> discs = List.of(disc(0, 0, r), disc(2 * r, 0, r), disc(r, r * Math.sqrt(3), r));
        assertThat(wide(discs)).singleElement().satisfies(air -> {
            assertThat(air.area()).isCloseTo(r * r * (Math.sqrt(3) - Math.PI / 2), within(EXACT));
            assertThat(air.corners()).hasSize(3);
        });
        assertThat(WeldedOutlines.of(discs).union().parts())
                .as("they stay apart")
                .hasSize(3);
    }

    @Test
    void wood_that_stands_in_the_air_is_taken_off() {
        Outline frame = lines(0, 0, 6, 0, 6, 1, 1, 1, 1, 5, 6, 5, 6, 6, 0, 6);
        List<Outline> outlines = List.of(frame, board(5, 1, 6, 5), board(2, 2, 3, 3), disc(4.5, 4.5, 0.5));
        double behind = 0.25 * (1 - Math.PI / 4);
        assertThat(wide(outlines))
                .as("the air at large, and that behind the disc")
                .satisfiesExactly(
                        air -> assertThat(air.area()).isCloseTo(16 - 1 - Math.PI / 4 - behind, within(EXACT)),
                        air -> assertThat(air.area()).isCloseTo(behind, within(EXACT)));
        assertThat(wide(outlines)).allSatisfy(air -> assertThat(air.corners()).hasSize(2));
    }

    @Test
    void a_contact_of_some_length_is_no_corner() {
        assertThat(wide(List.of(trough(0.75), board(-2, 0, 2, 1))))
                .singleElement()
                .satisfies(air -> {
                    assertThat(air.area()).isCloseTo(Math.PI * 0.75 * 0.75 / 2, within(EXACT));
                    assertThat(air.corners()).isEmpty();
                });
        // a bead that nearly fits its hollow leaves specks along the joint, and they are no corners either
        assertThat(wide(List.of(
                        lines(-2, -2, 2, -2, 2, -1, -2, -1),
                        trough(0.75),
                        bead(0, 0, 0.75 - 1.0 / 512),
                        board(-2, 0.5, 2, 1))))
                .isEmpty();
    }

    @Test
    void a_pinwheel_of_boards_is_closed_by_its_four_corners() {
        List<Outline> pinwheel =
                List.of(board(0, 0, 2, 1), board(2, 1, 3, 3), board(1, 3, 2, 4).moved(Motion.NONE), board(0, 1, 1, 3));
        assertThat(wide(pinwheel)).singleElement().satisfies(air -> {
            assertThat(air.area()).isCloseTo(2, within(EXACT));
            assertThat(air.corners()).extracting(Cavity.Corner::at).hasSize(3);
        });
    }

    @Test
    void a_line_from_a_corner_to_an_edge_of_another_closes_too() {
        // two boards lean on each other over a floor: a triangle
        Line ridge = new Line(new Point(0, 0), new Point(2, 2));
        Outline left = lines(0, 0, 0.5, 0, ridge.to().x(), 1.5, 2, 2);
        Outline right = lines(2, 2, 2, 1.5, 3.5, 0, 4, 0);
        assertThat(wide(List.of(board(-1, -1, 5, 0), left, right)))
                .singleElement()
                .satisfies(air -> {
                    assertThat(air.area()).isCloseTo(1.5 * 1.5, within(EXACT));
                    assertThat(air.corners()).isEmpty();
                });
    }

    /** The leaf's tip is nearer than touching to the post as given; the post's end goes to the beam, and away from it. */
    @Test
    void a_corner_closes_what_it_touches_also_where_an_end_of_that_edge_is_moved_away() {
        Outline beam = board(0, 4, 3, 5);
        Outline leaf = lines(2.8, 3, 2, 4.5, 1, 4.5);
        Outline post = board(2.8025, 1, 4, 4.5);
        // the beam ends a hair beside the back of the post
        Outline ending = board(0, 4, 2.806, 5);
        for (Outline over : List.of(beam, ending)) {
            List<Cavity> air = wide(List.of(over, leaf, post));
            double across = 2.8025 - (2.8 - 0.8 * (1 / 1.5));
            assertThat(air)
                    .singleElement()
                    .satisfies(one -> assertThat(one.area()).isCloseTo(across / 2, within(0.01)));
        }
    }

    /** The shelf lies two thousandths over the bench; the block in it draws its foot up, and the gap is as thin as it was. */
    @Test
    void a_gap_thinner_than_touching_is_no_air_also_where_a_third_draws_it_open() {
        Outline wall = board(-5, -9, 0, 9);
        Outline bench = board(-2, -1, 2.9, 0);
        Outline block = board(1.6, -0.996, 2.9, 0.004);
        Outline shelf = board(-1, 0.0025, 2.9, 0.9);
        assertThat(wide(List.of(wall, bench, block, shelf))).isEmpty();
    }

    private static Integer[] sorted(int a, int b) {
        return new Integer[] {Math.min(a, b), Math.max(a, b)};
    }

    private static final double[] TURNS = {0, 17, 90, 222.2};

    /** The upper arm ends three thousandths under a shelf: whichever is put up first, its corner is where it is. */
    @Test
    void a_corner_closes_what_it_touches_also_where_a_third_draws_it_away() {
        Outline open = lines(0, 0, 4, 0, 4, 1, 1, 1, 1, 3, 4, 3, 4, 4, 0, 4);
        Outline leaning = board(4.0025, 0.5, 5, 2.9985);
        for (double under : new double[] {0.001, 0.002, 0.003, 0.0038}) {
            for (List<Outline> order : Orders.of(List.of(open, leaning, board(3.5, 3 + under, 6, 5)))) {
                for (double degrees : TURNS) {
                    assertThat(wide(turned(order, degrees)))
                            .as("%s under the shelf, turned by %s", under, degrees)
                            .singleElement()
                            .satisfies(air -> {
                                assertThat(air.area()).isCloseTo(6, within(0.01));
                                if (under + 0.0015 < Tolerance.TOUCHING) {
                                    assertThat(air.corners())
                                            .as("the shelf closes it too")
                                            .isEmpty();
                                } else {
                                    assertThat(air.corners())
                                            .singleElement()
                                            .satisfies(corner -> assertThat(corner.outlines())
                                                    .containsExactly(
                                                            sorted(order.indexOf(open), order.indexOf(leaning))));
                                }
                            });
                }
            }
        }
    }

    /** A slit between two that both lie on a plate, one a hair behind its face, the other a hair before. */
    @Test
    void a_slit_is_as_wide_as_it_is_given_also_where_a_third_draws_both_its_sides_to_itself() {
        Outline plate = board(-2.75, 1, 0, 1.75);
        Outline behind = lines(-1.25, 0, -0.0015, 0, -0.0015, 0.75, -0.75, 1.5, -1.25, 1.5);
        for (double before : new double[] {0.001, 0.002, 0.0026, 0.0035, 0.0038}) {
            boolean closed = 0.0015 + before < Tolerance.TOUCHING;
            for (List<Outline> order : Orders.of(List.of(plate, behind, board(before, -1, 2, 1.75)))) {
                for (double degrees : TURNS) {
                    List<Cavity> air = wide(turned(order, degrees));
                    assertThat(air)
                            .as("slit of %s, turned by %s", 0.0015 + before, degrees)
                            .hasSize(closed ? 1 : 0);
                    // a triangle under the plate
                    air.forEach(one -> assertThat(one.area()).isCloseTo(0.2485 * 0.2485 / 2, within(0.002)));
                }
            }
        }
    }

    @Test
    void a_slit_that_is_closed_at_both_ends_is_air_when_it_is_wider_than_touching() {
        Outline low = board(-1, -1, 0, 0);
        Outline high = board(-1, 2, 0, 3);
        for (double before : new double[] {0.002, 0.0035}) {
            double slit = before + 0.0015;
            List<Outline> all = List.of(low, high, board(-1.5, -1, -0.0015, 3), board(before, -1, 1, 3));
            for (List<Outline> order : Orders.of(all)) {
                List<Cavity> air = wide(turned(order, 17));
                assertThat(air).as("slit of %s", slit).hasSize(slit > Tolerance.TOUCHING ? 1 : 0);
                air.forEach(one -> assertThat(one.area()).isCloseTo(2 * slit, within(1e-4)));
            }
        }
    }

    /** A shelf lies 0.0035 over a sill that goes on under it: the void ends at the shelf, also where a brace slants by. */
    @Test
    void a_joint_along_which_two_touch_is_no_part_of_the_air_beside_it() {
        Outline sill = board(0, -0.5, 3.125, 0);
        Outline shelf = board(2.4985, 0.0035, 3.2485, 2);
        Outline brace = lines(1.9, -1.5, 3.6, 1.2, 3.9, 1.2, 2.2, -1.5);
        for (List<Outline> order :
                Orders.of(List.of(sill, shelf, brace, lines(0, 0, 0, 1, 2.5, 1, 2.5, 2, -1, 2, -1, 0)))) {
            for (double degrees : TURNS) {
                assertThat(wide(turned(order, degrees)))
                        .singleElement()
                        .satisfies(air -> assertThat(air.area()).isCloseTo(2.4985, within(1e-6)));
            }
        }
    }
}
