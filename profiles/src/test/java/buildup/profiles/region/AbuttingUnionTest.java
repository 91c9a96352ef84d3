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
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
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

    /** A frame of four boards an inch wide round the inside of a box. */
    private static List<Outline> frame(double back, double bottom, double face, double top) {
        return List.of(
                board(back, bottom, face, bottom + 1),
                board(back, top - 1, face, top),
                board(back, bottom + 1, back + 1, top - 1),
                board(face - 1, bottom + 1, face, top - 1));
    }

    @Test
    void a_frame_within_a_frame_keeps_its_own_air() {
        List<Outline> both = new ArrayList<>(frame(0, 0, 9, 9));
        both.addAll(frame(2, 2, 7, 7));
        List<Part> parts = union(both).orElseThrow();
        assertThat(parts).hasSize(2);
        assertThat(parts.get(0).holes())
                .singleElement()
                .satisfies(hole -> assertThat(hole.area()).isCloseTo(49, within(EXACT)));
        assertThat(parts.get(1).holes())
                .singleElement()
                .satisfies(hole -> assertThat(hole.area()).isCloseTo(9, within(EXACT)));
        Collections.reverse(both);
        assertThat(union(both).orElseThrow())
                .as("whichever was put up first")
                .extracting(Part::area)
                .containsExactly(81.0 - 49, 25.0 - 9);
        assertThat(Abutting.cavities(parts))
                .extracting(cavity -> cavity.islands().size())
                .containsExactly(1, 0);
    }

    @Test
    void a_frame_in_the_notch_of_a_larger_part_keeps_its_own_air() {
        List<Outline> pieces = new ArrayList<>(List.of(board(0, 0, 9, 1), board(0, 1, 1, 9)));
        pieces.addAll(frame(3, 3, 8, 8));
        List<Part> parts = union(pieces).orElseThrow();
        assertThat(parts).extracting(part -> part.holes().size()).containsExactly(0, 1);
        // and the air of a frame is not the place of what stands in its notch
        List<Outline> notched = new ArrayList<>(frame(0, 0, 9, 9));
        notched.add(board(1, 4, 4, 8));
        notched.add(board(6, 6, 7, 7));
        assertThat(Abutting.cavities(union(notched).orElseThrow()))
                .singleElement()
                .satisfies(cavity -> assertThat(cavity.islands())
                        .singleElement()
                        .satisfies(island -> assertThat(island.box()).isEqualTo(new Box(6, 6, 7, 7))));
        notched.remove(notched.size() - 1);
        notched.add(board(10, 2, 11, 3));
        assertThat(Abutting.cavities(union(notched).orElseThrow()))
                .singleElement()
                .satisfies(cavity -> assertThat(cavity.islands()).isEmpty());
    }

    @Test
    void the_windows_of_one_part_and_of_all_come_from_lowest_to_highest_and_then_from_the_wall() {
        // a wall of boards with three windows: two side by side over one
        List<Outline> pieces = List.of(
                board(0, 6, 7, 7),
                board(0, 0, 7, 1),
                board(0, 1, 1, 3),
                board(6, 1, 7, 3),
                board(0, 3, 7, 4),
                board(0, 4, 1, 6),
                board(3, 4, 4, 6),
                board(6, 4, 7, 6));
        List<Outline> reversed = new ArrayList<>(pieces);
        Collections.reverse(reversed);
        for (List<Outline> order : List.of(pieces, reversed)) {
            assertThat(union(order).orElseThrow().get(0).holes())
                    .extracting(hole -> hole.box())
                    .containsExactly(new Box(1, 1, 6, 3), new Box(1, 4, 3, 6), new Box(4, 4, 6, 6));
        }
        // a higher part whose window is the lower: its frame stands on posts within reach of the other
        List<Outline> two = new ArrayList<>(List.of(board(20, -1, 21, 10)));
        two.addAll(frame(14, 8, 20, 12));
        two.addAll(frame(0, 0, 5, 5));
        assertThat(Abutting.cavities(union(two).orElseThrow()))
                .extracting(cavity -> cavity.ring().box().bottom())
                .containsExactly(1.0, 9.0);
    }

    @Test
    void a_round_whose_chords_enclose_nothing_is_a_part_wherever_it_lies() {
        for (double far : new double[] {0, 50, -300}) {
            Point left = new Point(far - 1, far);
            Point right = new Point(far + 1, far);
            Point center = new Point(far, far);
            Outline dowel = Outline.closed(List.of(
                    new Stroke(new Arc(left, right, center, true), "under"),
                    new Stroke(new Arc(right, left, center, true), "over")));
            assertThat(union(dowel, board(far + 2, far, far + 3, far + 1)).orElseThrow())
                    .extracting(Part::area)
                    .satisfiesExactly(
                            area -> assertThat(area).isCloseTo(Math.PI, within(EXACT)),
                            area -> assertThat(area).isCloseTo(1, within(EXACT)));
            Outline half = Outline.closed(List.of(
                    new Stroke(new Arc(left, right, center, true), "under"),
                    new Stroke(new Line(right, left), "flat")));
            assertThat(union(half, board(far + 2, far, far + 3, far + 1))
                            .orElseThrow()
                            .get(0)
                            .area())
                    .isCloseTo(Math.PI / 2, within(EXACT));
        }
    }

    @Test
    void the_outside_of_stacks_that_change_piece_by_piece_is_that_of_each_stack_asked_alone() {
        Random random = new Random(14);
        Abutting.Memory memory = new Abutting.Memory();
        OutlinePairs<Optional<Abutment>> known = new OutlinePairs<>();
        List<Outline> pieces = new ArrayList<>();
        int told = 0;
        for (int step = 0; step < 400; step++) {
            int row = random.nextInt(6);
            int column = random.nextInt(3);
            Outline piece = board(3 * column, row, 3 * column + 1 + random.nextInt(3), row + 1);
            if (pieces.size() > 5 && random.nextInt(3) == 0) {
                pieces.remove(random.nextInt(pieces.size()));
            } else if (pieces.size() > 9) {
                pieces.set(random.nextInt(pieces.size()), piece);
            } else {
                pieces.add(piece);
            }
            List<Outline> now = List.copyOf(pieces);
            Optional<List<Abutting.Neighbors>> neighbors = Abutting.neighbors(
                    now, (i, j) -> known.of(now.get(i), now.get(j), () -> Abutment.of(now.get(i), now.get(j))));
            if (neighbors.isPresent()) {
                Optional<List<Part>> outside = Abutting.outside(now, neighbors.get(), memory);
                assertThat(outside).as("step %s", step).isEqualTo(union(now).map(AbuttingUnionTest::withoutHoles));
                told += outside.isPresent() ? 1 : 0;
            }
        }
        assertThat(told).isGreaterThan(20);
    }

    private static List<Part> withoutHoles(List<Part> parts) {
        return parts.stream().map(part -> new Part(part.outer(), List.of())).toList();
    }

    @Test
    void parts_of_one_height_come_from_the_wall_outward_asked_for_the_outside_too() {
        List<Outline> pieces = List.of(board(5, 0, 6, 1), board(2, 0, 3, 1), board(0, 3, 1, 4));
        List<Part> parts = union(pieces).orElseThrow();
        assertThat(parts).extracting(part -> part.outer().box().back()).containsExactly(2.0, 5.0, 0.0);
        List<Abutting.Neighbors> neighbors = Abutting.neighbors(
                        pieces, (i, j) -> Abutment.of(pieces.get(i), pieces.get(j)))
                .orElseThrow();
        assertThat(Abutting.outside(pieces, neighbors, new Abutting.Memory())).hasValue(parts);
        assertThat(Abutting.outside(List.of(), List.of(), new Abutting.Memory()))
                .isEmpty();
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
