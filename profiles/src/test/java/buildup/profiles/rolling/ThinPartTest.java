package buildup.profiles.rolling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ThinPartTest {
    private static final double OFFSET = 3.0 / 16;

    /**
     * A nose of 1/2 by 1/4 at the top of a piece 1 deep. The disc of 3/16 comes nearest to its tip (1.5, 1.25) where it
     * touches the top and the inside corner (1, 1): its center is 3/16 under the top, so 1/16 over the corner, and
     * as far behind it as Pythagoras says.
     */
    @Test
    void a_nose_thinner_than_the_disc_is_lost_and_its_thickness_is_told() {
        List<ThinPart> parts =
                ThinPart.of(outline(p(0, 0), p(1, 0), p(1, 1), p(1.5, 1), p(1.5, 1.25), p(0, 1.25)), OFFSET);
        double behind = Math.sqrt(OFFSET * OFFSET - 1.0 / 256);
        assertThat(parts).hasSize(1);
        assertThat(parts.get(0).width()).isCloseTo(0.25, within(1e-6));
        assertThat(parts.get(0).lost()).isCloseTo(Math.hypot(0.5 + behind, OFFSET) - OFFSET, within(1e-6));
    }

    @Test
    void corners_that_come_out_round_are_no_thin_parts() {
        assertThat(ThinPart.of(Outline.rectangle(new Box(0, 0, 1, 0.38)), OFFSET))
                .isEmpty();
        // half of a square corner, and a chamfer narrower than the disc
        assertThat(ThinPart.of(outline(p(0, 0), p(2, 0), p(2, 1.9), p(1.9, 2), p(0, 2)), OFFSET))
                .isEmpty();
    }

    /** A wedge of 30 degrees: a disc of r comes as near to its tip as r / sin 15 less r. */
    @Test
    void a_feather_edge_is_lost_as_far_as_the_disc_stays_out_of_it() {
        double rise = Math.tan(Math.toRadians(30));
        List<ThinPart> parts = ThinPart.of(outline(p(0, 0), p(3, 0), p(0, 3 * rise)), OFFSET);
        assertThat(parts).hasSize(1);
        assertThat(parts.get(0).width()).isZero();
        assertThat(parts.get(0).lost()).isCloseTo(OFFSET / Math.sin(Math.toRadians(15)) - OFFSET, within(1e-6));
    }

    /** A hollow of 1/2 that ends level under a level top leaves wood of no thickness there. */
    @Test
    void a_curve_that_runs_out_into_a_side_leaves_an_edge() {
        List<Stroke> walk = new ArrayList<>();
        walk.add(new Stroke(new Line(p(0, 0), p(1, 0)), "bottom"));
        walk.add(new Stroke(new Line(p(1, 0), p(1, 1)), "face"));
        walk.add(new Stroke(new Arc(p(1, 1), p(1.5, 1.5), p(1.5, 1), false), "hollow"));
        walk.add(new Stroke(new Line(p(1.5, 1.5), p(0, 1.5)), "top"));
        walk.add(new Stroke(new Line(p(0, 1.5), p(0, 0)), "back"));
        List<ThinPart> parts = ThinPart.of(Outline.closed(walk), OFFSET);
        assertThat(parts).hasSize(1);
        assertThat(parts.get(0).width()).isZero();
    }

    @Test
    void a_waist_is_lost_on_both_its_sides() {
        List<ThinPart> parts = ThinPart.of(
                outline(
                        p(0, 0), p(1, 0), p(1, 0.4), p(2, 0.4), p(2, 0), p(3, 0), p(3, 1), p(2, 1), p(2, 0.7),
                        p(1, 0.7), p(1, 1), p(0, 1)),
                OFFSET);
        assertThat(parts).hasSize(2).allSatisfy(part -> assertThat(part.width()).isCloseTo(0.3, within(1e-6)));
    }

    @Test
    void a_lath_into_which_no_disc_goes_is_lost_whole() {
        List<ThinPart> parts = ThinPart.of(Outline.rectangle(new Box(0, 0, 3, 0.25)), OFFSET);
        assertThat(parts).hasSize(1);
        assertThat(parts.get(0).width()).isCloseTo(0.25, within(1e-6));
        assertThat(parts.get(0).lost()).isInfinite();
    }

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    private static Outline outline(Point... corners) {
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            strokes.add(new Stroke(new Line(corners[i], corners[(i + 1) % corners.length]), "edge"));
        }
        return Outline.closed(strokes);
    }
}
