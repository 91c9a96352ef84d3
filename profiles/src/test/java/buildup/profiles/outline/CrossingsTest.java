package buildup.profiles.outline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CrossingsTest {
    private static final Line LEVEL = new Line(new Point(-2, 0), new Point(2, 0));
    private static final Arc UPPER = new Arc(new Point(1, 0), new Point(-1, 0), Point.ORIGIN, true);

    private static void assertMeet(Segment a, Segment b, Point... expected) {
        for (List<Point> met : List.of(Crossings.of(a, b, 1e-9), Crossings.of(b, a, 1e-9))) {
            assertThat(met).hasSize(expected.length);
            for (Point p : expected) {
                assertThat(met).anySatisfy(q -> assertThat(q.distance(p)).isLessThan(1e-9));
            }
        }
    }

    @Test
    void lines_cross_once_or_never() {
        assertMeet(LEVEL, new Line(new Point(1, -1), new Point(1, 1)), new Point(1, 0));
        assertMeet(LEVEL, new Line(new Point(1, 1), new Point(1, 2)));
        assertMeet(LEVEL, new Line(new Point(-2, 1), new Point(2, 1)));
        assertMeet(LEVEL, LEVEL.reversed());
    }

    @Test
    void a_line_meets_an_arc_twice_once_or_never() {
        Line low = new Line(new Point(-2, 0.6), new Point(2, 0.6));
        assertMeet(low, UPPER, new Point(-0.8, 0.6), new Point(0.8, 0.6));
        assertMeet(new Line(new Point(-2, 1), new Point(2, 1)), UPPER, new Point(0, 1));
        assertMeet(new Line(new Point(-2, 1.1), new Point(2, 1.1)), UPPER);
        assertMeet(new Line(new Point(0, 0), new Point(0, 2)), UPPER, new Point(0, 1));
        assertMeet(new Line(new Point(-2, -0.6), new Point(2, -0.6)), UPPER);
    }

    @Test
    void arcs_meet_twice_once_or_never() {
        Arc other = new Arc(new Point(2, 0), new Point(0, 0), new Point(1, 0), true);
        assertMeet(UPPER, other, new Point(0.5, Math.sqrt(0.75)));
        Arc over = new Arc(new Point(-1, 2), new Point(1, 2), new Point(0, 2), true);
        assertMeet(UPPER, over, new Point(0, 1));
        assertMeet(UPPER, over.moved(Motion.shift(0, 0.1)));
        assertMeet(UPPER, new Arc(new Point(0.5, 0), new Point(-0.5, 0), Point.ORIGIN, true));
        assertMeet(UPPER, new Arc(new Point(0.5, 0.1), new Point(-0.3, 0.1), new Point(0.1, 0.1), true));
        assertMeet(UPPER, UPPER.reversed());
    }

    @Test
    void slack_lets_a_meeting_lie_a_little_beyond_an_end() {
        Line upright = new Line(new Point(2.003, -1), new Point(2.003, 1));
        assertThat(Crossings.of(LEVEL, upright, 0.004)).hasSize(1);
        assertThat(Crossings.of(LEVEL, upright, 0.002)).isEmpty();
    }
}
