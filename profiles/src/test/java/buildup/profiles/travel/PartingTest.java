package buildup.profiles.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.travel.Parting.Stretch;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shapes whose ways past each other are found with a pencil; closed forms of line and circle. */
class PartingTest {
    private static final double OUT = 0;
    private static final double UP = 90;

    private static Outline box(double back, double bottom, double face, double top) {
        return Outline.rectangle(new Box(back, bottom, face, top));
    }

    private static Outline disc(double x, double y, double r) {
        Point center = new Point(x, y);
        Point right = new Point(x + r, y);
        Point left = new Point(x - r, y);
        return Outline.closed(List.of(
                new Stroke(new Arc(right, left, center, true), "upper"),
                new Stroke(new Arc(left, right, center, true), "lower")));
    }

    @Test
    void a_block_behind_a_lip_is_barred_until_it_is_lifted_over_it() {
        List<Stretch> barred = Parting.barred(box(0, 0, 1, 1), box(1, 0, 2, 0.75), UP, OUT);
        assertThat(barred).containsExactly(new Stretch(0, 0.75));
        assertThat(Parting.away(box(0, 0, 1, 1), box(1, 0, 2, 0.75), OUT)).isFalse();
        assertThat(Parting.away(box(0, 0.75, 1, 1.75), box(1, 0, 2, 0.75), OUT)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 30, 90, 137, 180, 270, 301})
    void turning_everything_changes_nothing(double degrees) {
        Motion turn = Motion.turn(degrees);
        Outline moving = box(0, 0, 1, 1).moved(turn);
        Outline staying = box(1, 0, 2, 0.75).moved(turn);
        assertThat(Parting.room(moving, staying, OUT + degrees)).isCloseTo(0, within(1e-9));
        assertThat(Parting.room(box(-3, 0, -2, 1).moved(turn), staying, OUT + degrees))
                .isCloseTo(3, within(1e-9));
        List<Stretch> barred = Parting.barred(moving, staying, UP + degrees, OUT + degrees);
        assertThat(barred).hasSize(1);
        assertThat(barred.get(0).from()).isCloseTo(0, within(1e-9));
        assertThat(barred.get(0).to()).isCloseTo(0.75, within(1e-9));
    }

    @Test
    void a_disc_under_a_disc_is_free_when_their_edges_are_past_each_other() {
        // lowered by the sum of their radii, one goes out under the other
        List<Stretch> barred = Parting.barred(disc(0, 0, 1), disc(2.5, 0, 0.75), 270, OUT);
        assertThat(barred).hasSize(1);
        assertThat(barred.get(0).to()).isCloseTo(1.75, within(1e-9));
    }

    @Test
    void a_disc_rises_until_it_meets_a_disc_above_and_beside() {
        // centers so far apart that the sum of the radii is the hypotenuse: 3-4-5
        assertThat(Parting.room(disc(0, 0, 2), disc(3, 10, 3), UP)).isCloseTo(10 - 4, within(1e-9));
    }

    @Test
    void what_only_touches_bars_nothing() {
        Outline slides = box(0, 0, 1, 1);
        assertThat(Parting.room(slides, box(0, 1, 1, 2), OUT)).isInfinite();
        assertThat(Parting.away(slides, box(0, 0.999, 4, 2), OUT)).isTrue();
        assertThat(Parting.away(slides, box(0, 0.99, 4, 2), OUT)).isFalse();
    }

    @Test
    void a_slot_of_exactly_its_size_lets_a_block_through() {
        Outline block = box(0, -3, 1, -2);
        List<Stretch> below = Parting.barred(block, box(2, -9, 3, 0), UP, OUT);
        List<Stretch> above = Parting.barred(block, box(2, 1, 3, 9), UP, OUT);
        assertThat(below).containsExactly(new Stretch(0, 3));
        assertThat(above).containsExactly(new Stretch(3, 12));
        assertThat(below.get(0).bars(3)).isFalse();
        assertThat(above.get(0).bars(3)).isFalse();
    }

    @Test
    void along_a_slope_a_wedge_leaves_without_lifting() {
        Outline wedge = Outline.closed(List.of(
                new Stroke(new Line(new Point(0, 0), new Point(2, 0)), "bottom"),
                new Stroke(new Line(new Point(2, 0), new Point(0, 2)), "slope"),
                new Stroke(new Line(new Point(0, 2), new Point(0, 0)), "back")));
        Outline over = Outline.closed(List.of(
                new Stroke(new Line(new Point(2, 0), new Point(4, 0)), "bottom"),
                new Stroke(new Line(new Point(4, 0), new Point(4, 2)), "face"),
                new Stroke(new Line(new Point(4, 2), new Point(0, 2)), "top"),
                new Stroke(new Line(new Point(0, 2), new Point(2, 0)), "slope")));
        assertThat(Parting.room(wedge, over, 135)).isInfinite();
        assertThat(Parting.room(wedge, over, OUT)).isCloseTo(0, within(1e-9));
        assertThat(Parting.away(wedge, over, 135)).isTrue();
    }
}
