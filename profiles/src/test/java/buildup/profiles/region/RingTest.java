package buildup.profiles.region;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A ring as a value: what it encloses, and when it is the same as another. */
class RingTest {
    private static final double GAP = 0.003;

    private static Bound bound(int outline, int stroke, double x, double y, double toX, double toY) {
        return new Bound(outline, stroke, new Line(new Point(x, y), new Point(toX, toY)));
    }

    /** Round two boards of 2 by 1, one over the other with a gap between them that welding closed. */
    private static List<Bound> overGap(double x, double y) {
        return List.of(
                bound(0, 0, x, y, x + 2, y),
                bound(0, 1, x + 2, y, x + 2, y + 1),
                bound(1, 1, x + 2, y + 1 + GAP, x + 2, y + 2 + GAP),
                bound(1, 2, x + 2, y + 2 + GAP, x, y + 2 + GAP),
                bound(1, 3, x, y + 2 + GAP, x, y + 1 + GAP),
                bound(0, 3, x, y + 1, x, y));
    }

    @Test
    void a_gap_that_was_closed_is_enclosed_wherever_the_ring_lies() {
        for (double far : new double[] {0, 40, -300}) {
            Ring ring = new Ring(overGap(far, far), new Point(far + 1, far + 1));
            assertThat(ring.area()).isCloseTo(2 * (2 + GAP), within(1e-9));
            assertThat(ring.length()).as("the gaps are no bounds").isCloseTo(2 * (2 + 1 + 1), within(1e-9));
        }
    }

    @Test
    void rings_of_the_same_bounds_are_one() {
        Ring ring = new Ring(overGap(0, 0), new Point(1, 1));
        assertThat(ring)
                .isEqualTo(new Ring(overGap(0, 0), new Point(1, 0.5)))
                .isNotEqualTo(new Ring(overGap(0, 1), new Point(1, 1)));
        assertThat(ring.equals("Ring")).isFalse();
        assertThat(ring).hasSameHashCodeAs(new Ring(overGap(0, 0), new Point(1, 1)));
        assertThat(ring.hashCode()).isNotEqualTo(new Ring(overGap(0, 1), new Point(1, 1)).hashCode());
        assertThat(ring.toString()).startsWith("Ring").contains("stroke=3");
    }

    @Test
    void pairs_of_the_same_numbers_are_one() {
        assertThat(new Pairs.Pair(1, 2)).isEqualTo(new Pairs.Pair(1, 2)).hasSameHashCodeAs(new Pairs.Pair(1, 2));
        assertThat(new Pairs.Pair(1, 2)).isNotEqualTo(new Pairs.Pair(2, 2)).isNotEqualTo(new Pairs.Pair(1, 3));
        assertThat(new Pairs.Pair(1, 2).hashCode()).isNotEqualTo(new Pairs.Pair(2, 1).hashCode());
    }
}
