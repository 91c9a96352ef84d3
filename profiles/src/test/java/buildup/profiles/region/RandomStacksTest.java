package buildup.profiles.region;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Laws that a union keeps whatever is thrown together; more of them with {@code -Dbuildup.unions=N}. */
class RandomStacksTest {
    private static final long SEED = 2024;
    private static final int COUNT = Integer.getInteger("buildup.unions", 60);

    /** Chords are off by at most 2/3 of their error times the length; what is welded, by less than the rest. */
    private static double slack(List<Outline> pieces) {
        return Tolerance.CHORD * pieces.stream().mapToDouble(Outline::perimeter).sum();
    }

    @Tag("sampled")
    @Test
    void a_union_keeps_its_laws() {
        Stacks stacks = new Stacks(SEED);
        for (int number = 0; number < COUNT; number++) {
            List<Outline> pieces = stacks.thrown();
            String which = "seed " + SEED + ", stack " + number;
            WeldedOutlines.Joined joined = WeldedOutlines.of(pieces).union();
            double slack = slack(pieces);
            double sum = pieces.stream().mapToDouble(Outline::area).sum();
            double largest = pieces.stream().mapToDouble(Outline::area).max().orElseThrow();
            assertThat(joined.area()).as(which).isBetween(largest - slack, sum + slack);

            List<Lap> laps = OutlineLaps.of(pieces);
            double lapped = laps.stream().mapToDouble(Lap::area).sum();
            double largestLap = laps.stream().mapToDouble(Lap::area).max().orElse(0);
            assertThat(sum - joined.area()).as(which).isBetween(largestLap - slack, lapped + slack);
            assertThat(laps).as(which).allSatisfy(lap -> {
                assertThat(pieces.get(lap.first()).holds(lap.at())).isTrue();
                assertThat(pieces.get(lap.second()).holds(lap.at())).isTrue();
                assertThat(lap.depth()).isGreaterThanOrEqualTo(Tolerance.TOUCHING);
            });

            Box all = Box.around(pieces.stream().map(Outline::box).toList());
            Box met = Box.around(
                    joined.parts().stream().map(part -> part.outer().box()).toList());
            assertThat(met.back()).as(which).isCloseTo(all.back(), within(Tolerance.TOUCHING));
            assertThat(met.face()).as(which).isCloseTo(all.face(), within(Tolerance.TOUCHING));
            assertThat(met.bottom()).as(which).isCloseTo(all.bottom(), within(Tolerance.TOUCHING));
            assertThat(met.top()).as(which).isCloseTo(all.top(), within(Tolerance.TOUCHING));

            assertRingsAreTrueStretches(joined, pieces, which);
            if (number % 5 == 0) {
                assertPiecesLieWithin(joined, pieces, which);
            }
        }
    }

    @Test
    void the_area_is_that_of_a_plain_count_of_slices() {
        Stacks stacks = new Stacks(SEED + 1);
        for (int number = 0; number < 60; number++) {
            List<Outline> pieces = stacks.thrown();
            double counted = Slices.area(pieces, 4000);
            double slices =
                    Box.around(pieces.stream().map(Outline::box).toList()).width() / 4000;
            // the slices err by their width at each upright side: by chance, so a few of them, not all
            assertThat(WeldedOutlines.of(pieces).union().area())
                    .as("seed %d, stack %d", SEED + 1, number)
                    .isCloseTo(counted, within(slack(pieces) + 20 * slices));
        }
    }

    private static void assertRingsAreTrueStretches(WeldedOutlines.Joined joined, List<Outline> pieces, String which) {
        for (Part part : joined.parts()) {
            List<Ring> rings = new ArrayList<>(List.of(part.outer()));
            rings.addAll(part.holes());
            for (Ring ring : rings) {
                for (int i = 0; i < ring.bounds().size(); i++) {
                    Bound bound = ring.bounds().get(i);
                    Segment whole = pieces.get(bound.outline())
                            .strokes()
                            .get(bound.stroke())
                            .segment();
                    Bound after = ring.bounds().get((i + 1) % ring.bounds().size());
                    Segment next = after.segment();
                    // what goes on along one stroke is one stretch, also where the ring was begun
                    boolean goesOn = after.outline() == bound.outline() && after.stroke() == bound.stroke();
                    assertThat(goesOn && ring.bounds().size() > 1).as(which).isFalse();
                    assertThat(whole.distance(bound.segment().at(0.5)))
                            .as(which)
                            .isLessThan(1e-9);
                    assertThat(bound.segment().length()).as(which).isLessThanOrEqualTo(whole.length() + 1e-9);
                    assertThat(bound.segment().to().distance(next.from()))
                            .as(which)
                            .isLessThan(2 * Tolerance.TOUCHING);
                }
            }
        }
    }

    private static void assertPiecesLieWithin(WeldedOutlines.Joined joined, List<Outline> pieces, String which) {
        for (Outline piece : pieces) {
            Box box = piece.box();
            for (int i = 1; i < 6; i++) {
                for (int j = 1; j < 6; j++) {
                    Point p = new Point(box.back() + box.width() * i / 6, box.bottom() + box.height() * j / 6);
                    boolean deep = piece.holds(p)
                            && piece.strokes().stream()
                                    .allMatch(stroke -> stroke.segment().distance(p) > 2 * Tolerance.TOUCHING);
                    if (deep) {
                        assertThat(joined.parts()).as("%s at %s", which, p).anyMatch(part -> holds(part, p));
                    }
                }
            }
        }
    }

    private static boolean holds(Part part, Point p) {
        return holds(part.outer(), p) && part.holes().stream().noneMatch(hole -> holds(hole, p));
    }

    private static boolean holds(Ring ring, Point p) {
        List<Point> vertices = new ArrayList<>();
        ring.bounds().forEach(bound -> vertices.addAll(bound.segment().flattened(Tolerance.CHORD)));
        return Slices.heights(vertices, p.x()).stream().filter(y -> y > p.y()).count() % 2 == 1;
    }
}
