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

/** Against closed forms: Steiner's formula for convex bodies (J. Steiner, 1840; from memory), and corners by hand. */
class InsetTest {
    private static Outline polygon(Point... corners) {
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            strokes.add(new Stroke(new Line(corners[i], corners[(i + 1) % corners.length]), "edge"));
        }
        return Outline.closed(strokes);
    }

    private static double length(List<Segment> line) {
        return line.stream().mapToDouble(Segment::length).sum();
    }

    @Test
    void of_a_rectangle_it_is_the_smaller_rectangle() {
        List<Segment> line = Inset.of(Outline.rectangle(new Box(0, 0, 4, 2)), 0.5);
        assertThat(length(line)).isCloseTo(2 * (3 + 1), within(1e-9));
        assertThat(line).allSatisfy(one -> {
            Box box = one.box();
            assertThat(box.back()).isGreaterThan(0.5 - 1e-9);
            assertThat(box.face()).isLessThan(3.5 + 1e-9);
        });
    }

    @Test
    void round_an_inside_corner_it_runs_in_an_arc_of_the_distance() {
        Outline ell = polygon(
                new Point(0, 0), new Point(4, 0), new Point(4, 1), new Point(1, 1), new Point(1, 4), new Point(0, 4));
        List<Segment> line = Inset.of(ell, 0.25);
        // the perimeter of 16, less half an inch at each of five outside corners and at the inside one, and a quarter
        // turn
        double expected = 16 - 5 * 2 * 0.25 + Math.PI / 2 * 0.25;
        assertThat(length(line)).isCloseTo(expected, within(1e-9));
        assertThat(line).anyMatch(one -> one instanceof Arc arc && Math.abs(arc.radius() - 0.25) < 1e-9);
    }

    /** Of a half disc of radius 2: the chord at 1/2 is 2 sqrt(1.5^2 - 0.5^2), the arc of radius 1.5 spans between its ends. */
    @Test
    void of_a_half_disc_it_is_the_smaller_segment_of_a_circle() {
        Arc dome = new Arc(new Point(2, 0), new Point(-2, 0), new Point(0, 0), true);
        Outline half = Outline.closed(List.of(
                new Stroke(new Line(new Point(-2, 0), new Point(2, 0)), "base"), new Stroke(dome, "dome")));
        double angle = Math.PI - 2 * Math.asin(0.5 / 1.5);
        assertThat(length(Inset.of(half, 0.5)))
                .isCloseTo(2 * Math.sqrt(1.5 * 1.5 - 0.5 * 0.5) + 1.5 * angle, within(1e-9));
    }

    @Test
    void where_nothing_is_so_far_inside_there_is_none() {
        assertThat(Inset.of(Outline.rectangle(new Box(0, 0, 4, 0.5)), 0.3)).isEmpty();
    }
}
