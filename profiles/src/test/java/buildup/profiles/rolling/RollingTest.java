package buildup.profiles.rolling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Closed forms of plane geometry, written beside each. */
class RollingTest {
    private static final double EXACT = 1e-9;

    private static Outline polygon(double... xy) {
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            int next = (i + 2) % xy.length;
            strokes.add(new Stroke(
                    new Line(new Point(xy[i], xy[i + 1]), new Point(xy[next], xy[next + 1])), "side-" + i / 2));
        }
        return Outline.closed(strokes);
    }

    private static Outline step() {
        return polygon(0, 0, 2, 0, 2, 1, 1, 1, 1, 2, 0, 2);
    }

    /** A slot of a width, 1 deep, in the face of a board 2 thick. */
    private static Outline slot(double width) {
        double a = 1.5 - width / 2;
        double b = 1.5 + width / 2;
        return polygon(0, 0, 2, 0, 2, a, 1, a, 1, b, 2, b, 2, 3, 0, 3);
    }

    /** A square inside corner keeps a square of r less a quarter disc: r^2 (1 - pi/4). */
    @ParameterizedTest
    @ValueSource(doubles = {1.0 / 16, 0.25, 0.5, 0.999})
    void a_square_inside_corner_keeps_its_fillet(double r) {
        Rolling rolling = Rolling.of(step(), r);
        assertThat(rolling.pockets()).hasSize(1);
        assertThat(rolling.left()).isCloseTo(r * r * (1 - Math.PI / 4), within(EXACT));
        assertThat(rolling.touched(2)).isCloseTo(1 - r, within(EXACT));
        assertThat(rolling.touched(0)).isCloseTo(2, within(EXACT));
    }

    /** Two tangents from a corner of angle a and the arc between them: r^2 (cot(a/2) - (pi - a)/2). */
    @ParameterizedTest
    @ValueSource(doubles = {30, 60, 90, 120, 170})
    void a_v_groove_keeps_its_point(double degrees) {
        double half = Math.toRadians(degrees) / 2;
        double wide = Math.tan(half);
        Outline outline = polygon(0, 0, 2, 0, 2, 20 - wide, 1, 20, 2, 20 + wide, 2, 40, 0, 40);
        double r = 0.05;
        assertThat(Rolling.of(outline, r).left())
                .isCloseTo(r * r * (1 / Math.tan(half) - (Math.PI - 2 * half) / 2), within(EXACT));
    }

    /** A disc wider than the slot rests on its lips and dips in by a segment of its own, which is what it cuts. */
    @Test
    void a_slot_narrower_than_the_disc_stays_whole_but_for_the_segment_that_dips_in() {
        double w = 0.5;
        double r = 0.75;
        Rolling rolling = Rolling.of(slot(w), r);
        double theta = 2 * Math.asin(w / 2 / r);
        assertThat(rolling.left()).isCloseTo(w - r * r / 2 * (theta - Math.sin(theta)), within(EXACT));
        assertThat(rolling.touched(3)).isZero();
    }

    @Test
    void a_slot_as_wide_as_the_disc_keeps_the_corners_of_its_floor() {
        double r = 0.25;
        Rolling rolling = Rolling.of(slot(2 * r), r);
        assertThat(rolling.left()).isCloseTo(2 * r * r * (1 - Math.PI / 4), within(1e-6));
    }

    @Test
    void a_wide_slot_keeps_two_corners() {
        assertThat(Rolling.of(slot(1), 0.25).left()).isCloseTo(2 * 0.0625 * (1 - Math.PI / 4), within(EXACT));
    }

    @Test
    void a_disc_seats_in_a_hollow_of_its_own_radius_and_a_larger_one_does_not() {
        assertThat(Rolling.of(hollow(0.5), 0.5).left()).isCloseTo(0, within(1e-6));
        assertThat(Rolling.of(hollow(0.5), 0.25).left()).isCloseTo(0, within(1e-6));
        Rolling larger = Rolling.of(hollow(0.5), 0.75);
        double theta = 2 * Math.asin(0.5 / 0.75);
        assertThat(larger.left())
                .isCloseTo(Math.PI * 0.25 / 2 - 0.75 * 0.75 / 2 * (theta - Math.sin(theta)), within(EXACT));
    }

    /** A half-round flute in the face of a board. */
    private static Outline hollow(double r) {
        Point low = new Point(2, 2 - r);
        Point high = new Point(2, 2 + r);
        return Outline.closed(List.of(
                new Stroke(new Line(new Point(0, 0), new Point(2, 0)), "bottom"),
                new Stroke(new Line(new Point(2, 0), low), "face"),
                new Stroke(new Arc(low, high, new Point(2, 2), false), "flute"),
                new Stroke(new Line(high, new Point(2, 4)), "face-2"),
                new Stroke(new Line(new Point(2, 4), new Point(0, 4)), "top"),
                new Stroke(new Line(new Point(0, 4), Point.ORIGIN), "back")));
    }

    /** A disc fits into the round end of a keyhole but not through its neck: the neck alone is left. */
    @Test
    void a_wide_end_behind_a_narrow_neck_is_open_to_a_disc_that_is_already_there() {
        double half = 0.125;
        double r = 0.5;
        double x = Math.sqrt(r * r - half * half);
        Point low = new Point(1 + x, 2 - half);
        Point high = new Point(1 + x, 2 + half);
        Outline keyhole = Outline.closed(List.of(
                new Stroke(new Line(new Point(0, 0), new Point(2, 0)), "bottom"),
                new Stroke(new Line(new Point(2, 0), new Point(2, 2 - half)), "face"),
                new Stroke(new Line(new Point(2, 2 - half), low), "neck"),
                new Stroke(new Arc(low, high, new Point(1, 2), false), "eye"),
                new Stroke(new Line(high, new Point(2, 2 + half)), "neck-2"),
                new Stroke(new Line(new Point(2, 2 + half), new Point(2, 4)), "face-2"),
                new Stroke(new Line(new Point(2, 4), new Point(0, 4)), "top"),
                new Stroke(new Line(new Point(0, 4), Point.ORIGIN), "back")));
        double disc = 0.3;
        Rolling rolling = Rolling.of(keyhole, disc);
        double eye = 2 * Math.asin(half / r);
        double eyeSegment = r * r / 2 * (eye - Math.sin(eye));
        double theta = 2 * Math.asin(half / disc);
        double dip = disc * disc / 2 * (theta - Math.sin(theta));
        // of the neck: its rectangle, the segment of the eye before it, less what the disc dips in at either end
        double neck = 2 * half * (1 - x) - eyeSegment;
        assertThat(rolling.pockets()).hasSize(1);
        assertThat(rolling.left()).isLessThan(neck).isGreaterThan(0);
        // from within, the disc in the eye touches both lips of the neck: it bulges past their chord by a dip
        assertThat(rolling.left()).isCloseTo(2 * half * (1 - x) - 2 * dip, within(EXACT));
    }

    @Test
    void what_is_left_grows_with_the_disc() {
        double before = 0;
        for (double r = 0.05; r < 2; r += 0.05) {
            double left = Rolling.of(slot(0.5), r).left();
            assertThat(left).as("r %s", r).isGreaterThanOrEqualTo(before - EXACT);
            before = left;
        }
    }

    @Test
    void a_rectangle_keeps_nothing() {
        Rolling rolling = Rolling.of(Outline.rectangle(new Box(0, 0, 1, 3)), 0.5);
        assertThat(rolling.pockets()).isEmpty();
        assertThat(rolling.left()).isZero();
    }

    @Test
    void the_ring_of_a_pocket_is_closed() {
        for (Pocket pocket : Rolling.of(slot(0.5), 0.2).pockets()) {
            List<Segment> ring = pocket.ring();
            for (int i = 0; i < ring.size(); i++) {
                assertThat(ring.get(i)
                                .to()
                                .distance(ring.get((i + 1) % ring.size()).from()))
                        .isLessThan(1e-6);
            }
        }
    }
}
