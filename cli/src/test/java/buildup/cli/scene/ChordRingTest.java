package buildup.cli.scene;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A ring that asks only the chords near a place answers as one that asks them all. */
class ChordRingTest {
    private static final int RINGS = Integer.getInteger("buildup.rings", 60);
    private static final int PLACES = 60;

    @Test
    void a_box_is_crossed_when_any_chord_of_all_crosses_it() {
        Random random = new Random(11);
        for (int i = 0; i < RINGS; i++) {
            ChordRing ring = star(random);
            for (int k = 0; k < PLACES; k++) {
                Box box = Box.of(place(random), place(random));
                assertThat(ring.crosses(box))
                        .isEqualTo(ring.chords().stream().anyMatch(line -> Boxes.crosses(box, line.from(), line.to())));
            }
        }
    }

    @Test
    void every_chord_that_meets_a_box_is_asked_and_none_is_asked_twice() {
        Random random = new Random(12);
        for (int i = 0; i < RINGS; i++) {
            ChordRing ring = star(random);
            for (int k = 0; k < PLACES; k++) {
                Box box = Box.of(place(random), place(random));
                List<Line> asked = new ArrayList<>();
                assertThat(ring.anyNear(box, line -> !asked.add(line))).isFalse();
                assertThat(asked).doesNotHaveDuplicates();
                assertThat(asked)
                        .containsAll(ring.chords().stream()
                                .filter(line -> line.box().near(box, 0))
                                .toList());
            }
        }
    }

    @Test
    void a_level_line_lies_inside_between_its_crossings_with_all_chords() {
        Random random = new Random(13);
        for (int i = 0; i < RINGS; i++) {
            ChordRing ring = star(random);
            for (int k = 0; k < PLACES; k++) {
                double y = place(random).y();
                List<Double> crossings = ring.chords().stream()
                        .filter(line -> line.from().y() > y != line.to().y() > y)
                        .map(line -> line.from()
                                .towards(
                                        line.to(),
                                        (y - line.from().y())
                                                / (line.to().y() - line.from().y()))
                                .x())
                        .sorted()
                        .toList();
                List<Double> ends = new ArrayList<>();
                ring.level(y).forEach(span -> {
                    ends.add(span.from());
                    ends.add(span.to());
                });
                assertThat(ends).isEqualTo(crossings);
            }
        }
    }

    @Test
    void a_ring_without_height_is_crossed_by_a_box_across_it_and_encloses_nothing() {
        ChordRing flat = ChordRing.of(
                List.of(new Line(new Point(0, 1), new Point(4, 1)), new Line(new Point(4, 1), new Point(0, 1))), 0.001);
        assertThat(flat.crosses(new Box(1, 0, 2, 2))).isTrue();
        assertThat(flat.crosses(new Box(1, 2, 2, 3))).isFalse();
        assertThat(flat.level(1)).isEmpty();
    }

    /** A ring of straight lines round the origin, each corner in its own direction. */
    private static ChordRing star(Random random) {
        int corners = 3 + random.nextInt(40);
        List<Line> walk = new ArrayList<>();
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            points.add(Point.towards(2 * Math.PI * i / corners).times(0.2 + 2 * random.nextDouble()));
        }
        for (int i = 0; i < corners; i++) {
            walk.add(new Line(points.get(i), points.get((i + 1) % corners)));
        }
        return ChordRing.of(walk, 0.001);
    }

    private static Point place(Random random) {
        return new Point(5 * random.nextDouble() - 2.5, 5 * random.nextDouble() - 2.5);
    }
}
