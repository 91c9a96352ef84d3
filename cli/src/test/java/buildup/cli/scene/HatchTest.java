package buildup.cli.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Oracle: Cavalieri's principle. The lengths of the hatch lines times their spacing tend to the area, which for the
 * shapes here is known from school geometry.
 */
class HatchTest {
    private static final Point CENTER = new Point(2, 3);

    private static List<Segment> circle(double radius) {
        Point east = CENTER.plus(new Point(radius, 0));
        Point west = CENTER.minus(new Point(radius, 0));
        return List.of(new Arc(east, west, CENTER, true), new Arc(west, east, CENTER, true));
    }

    private static List<Segment> box(double back, double bottom, double face, double top) {
        return Outline.rectangle(new Box(back, bottom, face, top)).segments();
    }

    private static Hatch hatch(List<Segment> ring, double angle, double spacing, boolean crossed) {
        return new Hatch(ring, new Pattern(angle, spacing, crossed, 0.005, List.of()), new Point(0.013, 0.007));
    }

    private static double area(Hatch hatch) {
        return hatch.lines().stream().mapToDouble(Line::length).sum()
                * hatch.pattern().spacing();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 22, 45, -45, 90, 137})
    void the_lines_fill_a_disc_and_no_more(double angle) {
        Hatch hatch = hatch(circle(1.5), angle, 0.002, false);
        assertThat(area(hatch)).isCloseTo(Math.PI * 1.5 * 1.5, within(0.02));
        assertThat(hatch.lines()).allSatisfy(line -> {
            assertThat(line.from().distance(CENTER)).isCloseTo(1.5, within(0.0021));
            assertThat(line.to().distance(CENTER)).isCloseTo(1.5, within(0.0021));
        });
    }

    @Test
    void crossed_lines_fill_twice() {
        assertThat(area(hatch(box(0, 0, 2, 1), 45, 0.002, true))).isCloseTo(4, within(0.02));
    }

    @Test
    void a_hollow_stays_empty() {
        List<Point> corners = List.of(
                new Point(0, 0),
                new Point(3, 0),
                new Point(3, 2),
                new Point(2, 2),
                new Point(2, 1),
                new Point(1, 1),
                new Point(1, 2),
                new Point(0, 2));
        List<Segment> ring = new java.util.ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            ring.add(new Line(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        Hatch hatch = hatch(ring, 30, 0.002, false);
        assertThat(area(hatch)).isCloseTo(5, within(0.02));
        Box hollow = new Box(1.001, 1.001, 1.999, 1.999);
        assertThat(hatch.lines()).noneMatch(line -> Boxes.crosses(hollow, line.from(), line.to()));
    }

    @Test
    void a_moved_hatch_keeps_its_lines() {
        Hatch hatch = hatch(circle(1), 45, 0.1, true);
        Hatch moved = hatch.moved(3, -2);
        assertThat(moved.lines()).hasSameSizeAs(hatch.lines());
        for (int i = 0; i < moved.lines().size(); i++) {
            Point there = hatch.lines().get(i).from().plus(new Point(3, -2));
            assertThat(moved.lines().get(i).from().distance(there)).isLessThan(1e-9);
        }
    }

    @Test
    void a_ring_knows_what_it_holds_and_what_it_meets() {
        ChordRing ring = ChordRing.of(circle(1), 0.001);
        assertThat(ring.holds(CENTER)).isTrue();
        assertThat(ring.holds(new Point(3.2, 3))).isFalse();
        assertThat(ring.meets(new Box(1.9, 2.9, 2.1, 3.1))).isTrue();
        assertThat(ring.meets(new Box(0, 0, 5, 5))).isTrue();
        assertThat(ring.meets(new Box(2.8, 3.8, 3, 4))).isFalse();
        assertThat(ring.level(3)).singleElement().satisfies(span -> {
            assertThat(span.from()).isCloseTo(1, within(1e-9));
            assertThat(span.to()).isCloseTo(3, within(1e-9));
        });
    }

    @Test
    void a_line_is_broken_at_boxes() {
        Line line = new Line(new Point(0, 1), new Point(10, 1));
        List<Line> left = Boxes.broken(line, List.of(new Box(2, 0, 3, 2), new Box(9, 0, 11, 2), new Box(4, 1, 5, 2)));
        assertThat(left)
                .containsExactly(
                        new Line(new Point(0, 1), new Point(2, 1)), new Line(new Point(3, 1), new Point(9, 1)));
    }
}
