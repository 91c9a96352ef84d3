package buildup.profiles.region;

import static buildup.profiles.region.UnionTest.lines;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What outlines make that only lie against each other, held against sums by hand and stacks whose union is known. */
class AbuttingUnionTest {
    private static final double EXACT = 1e-9;

    private static Optional<List<Part>> union(Outline... outlines) {
        return union(List.of(outlines));
    }

    private static Optional<List<Part>> union(List<Outline> outlines) {
        return Abutting.union(outlines, (i, j) -> Abutment.of(outlines.get(i), outlines.get(j)));
    }

    private static Outline board(double back, double bottom, double face, double top) {
        return Outline.rectangle(new Box(back, bottom, face, top));
    }

    /** A square of 2 with the quarter of a circle of 1 about (2, 2) taken out of its corner, or the quarter itself. */
    private static Outline hollow() {
        Point low = new Point(2, 1);
        Point high = new Point(1, 2);
        return Outline.closed(List.of(
                new Stroke(new Line(new Point(0, 0), new Point(2, 0)), "bottom"),
                new Stroke(new Line(new Point(2, 0), low), "face"),
                new Stroke(new Arc(low, high, new Point(2, 2), false), "cove"),
                new Stroke(new Line(high, new Point(0, 2)), "top"),
                new Stroke(new Line(new Point(0, 2), new Point(0, 0)), "back")));
    }

    private static Outline quarter() {
        Point low = new Point(2, 1);
        Point high = new Point(1, 2);
        Point corner = new Point(2, 2);
        return Outline.closed(List.of(
                new Stroke(new Arc(high, low, corner, true), "round"),
                new Stroke(new Line(low, corner), "face"),
                new Stroke(new Line(corner, high), "top")));
    }

    @Test
    void what_two_share_is_no_boundary_of_what_they_make() {
        Part part = union(board(0, 0, 4, 1), board(1, 1, 2, 3)).orElseThrow().get(0);
        assertThat(part.area()).isCloseTo(4 + 2, within(EXACT));
        assertThat(part.perimeter()).isCloseTo(10 + 6 - 2 * 1, within(EXACT));
        assertThat(part.holes()).isEmpty();
    }

    @Test
    void one_face_across_a_joint_is_walked_as_one_for_each_piece() {
        Part part = union(board(0, 0, 4, 1), board(0, 1, 4, 2)).orElseThrow().get(0);
        assertThat(part.outer().bounds()).hasSize(6);
        assertThat(part.area()).isCloseTo(8, within(EXACT));
    }

    @Test
    void four_boards_round_a_window_leave_its_air_in_a_hole() {
        Part part = union(board(0, 0, 5, 1), board(0, 4, 5, 5), board(0, 1, 1, 4), board(4, 1, 5, 4))
                .orElseThrow()
                .get(0);
        assertThat(part.area()).isCloseTo(25 - 9, within(EXACT));
        assertThat(part.holes()).hasSize(1);
        assertThat(part.holes().get(0).area()).isCloseTo(9, within(EXACT));
        assertThat(Abutting.cavities(List.of(part))).hasSize(1);
    }

    @Test
    void a_round_that_fills_a_hollow_leaves_nothing_of_either_arc() {
        Part part = union(hollow(), quarter()).orElseThrow().get(0);
        assertThat(part.area()).isCloseTo(4, within(EXACT));
        assertThat(part.perimeter()).isCloseTo(8, within(EXACT));
        assertThat(part.outer().bounds()).noneMatch(bound -> bound.segment() instanceof Arc);
    }

    @Test
    void parts_that_do_not_meet_come_from_lowest_to_highest() {
        List<Part> parts = union(board(0, 5, 1, 6), board(3, 0, 4, 1)).orElseThrow();
        assertThat(parts).extracting(part -> part.outer().box().bottom()).containsExactly(0.0, 5.0);
    }

    @Test
    void where_an_overlay_alone_can_say_nothing_is_said() {
        assertThat(union(board(0, 0, 2, 1), board(1, 0.5, 3, 2)))
                .as("one in the other")
                .isEmpty();
        assertThat(union(board(0, 0, 2, 2), board(0.5, 0.5, 1, 1)))
                .as("one inside the other")
                .isEmpty();
        assertThat(union(board(0, 0, 2, 1), board(0, 1 + 1.0 / 500, 2, 2)))
                .as("a gap that is touching")
                .isEmpty();
        assertThat(union(board(0, 0, 2, 1), board(2, 1, 3, 2)))
                .as("a bare corner")
                .isEmpty();
        Outline leaning = lines(2, 0.5, 3, 0, 3, 1);
        assertThat(union(board(0, 0, 2, 1), leaning)).as("a corner on a face").isEmpty();
    }

    @Test
    void stacks_whose_union_is_known_have_its_area_and_perimeter() {
        int told = 0;
        for (Stacks.Kind kind : List.of(Stacks.Kind.TENTHS, Stacks.Kind.THIRDS, Stacks.Kind.TURNED)) {
            for (Stacks.Stack stack : new Stacks(77).many(kind, 30)) {
                Optional<List<Part>> parts = union(stack.pieces());
                if (parts.isPresent()) {
                    told++;
                    assertThat(parts.get()).hasSize(1);
                    assertThat(parts.get().get(0).area()).isCloseTo(stack.area(), within(1e-6));
                    assertThat(parts.get().get(0).perimeter()).isCloseTo(stack.perimeter(), within(1e-6));
                }
            }
        }
        assertThat(told).isGreaterThan(45);
    }

    @Test
    void stacks_that_nearly_touch_or_overlap_are_left_to_the_overlay() {
        for (Stacks.Kind kind : List.of(Stacks.Kind.NEARLY, Stacks.Kind.OVERLAPPING)) {
            assertThat(new Stacks(78).many(kind, 10))
                    .as(kind.name())
                    .allSatisfy(stack -> assertThat(union(stack.pieces())).isEmpty());
        }
    }

    @Test
    void what_was_found_of_two_outlines_is_found_once_in_each_order() {
        OutlinePairs<String> pairs = new OutlinePairs<>();
        Outline one = board(0, 0, 1, 1);
        Outline other = board(0, 0, 1, 1);
        assertThat(pairs.of(one, other, () -> "first")).isEqualTo("first");
        assertThat(pairs.of(one, other, () -> "again")).isEqualTo("first");
        assertThat(pairs.of(other, one, () -> "turned")).isEqualTo("turned");
        for (int i = 0; i < 20_000; i++) {
            pairs.of(board(0, 0, 1, 2), one, () -> "more");
        }
        assertThat(pairs.of(one, other, () -> "forgotten")).isEqualTo("forgotten");
    }
}
