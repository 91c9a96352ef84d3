package buildup.profiles.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import java.util.List;
import org.junit.jupiter.api.Test;

class AccessTest {
    private static double reached(Access reach, int stroke) {
        return reach.reached().stream()
                .filter(stretch -> stretch.stroke() == stroke)
                .mapToDouble(stretch -> stretch.to() - stretch.from())
                .sum();
    }

    /** Strokes bottom, face, top, back: the face, and the two edges by a cutter's side; not the back. */
    @Test
    void a_board_is_reached_on_its_face_and_along_both_edges() {
        Access reach = Access.of(Outline.rectangle(new Box(0, 0, 1, 3)), 0);
        assertThat(List.of(reached(reach, 0), reached(reach, 1), reached(reach, 2)))
                .allSatisfy(share -> assertThat(share).isCloseTo(1, within(1e-9)));
        assertThat(reached(reach, 3)).isZero();
        assertThat(reach.shadows()).isEmpty();
    }

    /** A rod is reached on the half that faces the head: up to where it is tangent to the way in. */
    @Test
    void a_rod_is_reached_to_its_points_of_tangency_from_every_direction() {
        Point right = new Point(1, 0);
        Point left = new Point(-1, 0);
        Outline rod = Outline.closed(List.of(
                new Stroke(new Arc(right, left, Point.ORIGIN, true), "upper"),
                new Stroke(new Arc(left, right, Point.ORIGIN, true), "lower")));
        for (double degrees = -180; degrees <= 180; degrees += 15) {
            Access reach = Access.of(rod, degrees);
            assertThat(reached(reach, 0) + reached(reach, 1))
                    .as("from %s", degrees)
                    .isCloseTo(1, within(1e-9));
        }
        assertThat(reached(Access.of(rod, 90), 0)).isCloseTo(1, within(1e-9));
        // from 30 degrees the upper half is reached from 0 to 120 degrees of its 180
        assertThat(reached(Access.of(rod, 30), 0)).isCloseTo(120.0 / 180, within(1e-9));
    }

    /** A shelf 1 out from a post hides from above what stands under it: 1 wide and 1 high. */
    @Test
    void what_lies_under_a_shelf_is_in_shadow() {
        Outline post = Outline.closed(List.of(
                line(0, 0, 3, 0),
                line(3, 0, 3, 1),
                line(3, 1, 1, 1),
                line(1, 1, 1, 2),
                line(1, 2, 2, 2),
                line(2, 2, 2, 3),
                line(2, 3, 0, 3),
                line(0, 3, 0, 0)));
        Access above = Access.of(post, 90);
        assertThat(above.shadows()).hasSize(1);
        assertThat(above.shadows().get(0).area()).isCloseTo(1, within(1e-9));
        assertThat(above.shadows().get(0).floor().stroke()).isEqualTo(2);
        assertThat(reached(above, 2)).as("half of the ledge").isCloseTo(0.5, within(1e-9));
        assertThat(reached(above, 3)).isZero();
        // from straight out the post under the shelf is open
        assertThat(reached(Access.of(post, 0), 3)).isCloseTo(1, within(1e-9));
    }

    private static Stroke line(double x, double y, double toX, double toY) {
        return new Stroke(new Line(new Point(x, y), new Point(toX, toY)), "side");
    }
}
