package buildup.profiles.region;

import static buildup.profiles.region.UnionTest.board;
import static buildup.profiles.region.UnionTest.lines;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What there are several of comes from lowest to highest, and from the wall outward at one height, whatever was given first. */
class ReadingOrderTest {
    /** Places that come in another order by their projection than by their height; two of them at one height. */
    private static final List<Point> PLACES =
            List.of(new Point(9, 0), new Point(3, 3), new Point(6, 3), new Point(0, 7));

    private static List<Outline> squares(List<Point> at, double side) {
        return at.stream()
                .map(p -> board(p.x(), p.y(), p.x() + side, p.y() + side))
                .toList();
    }

    /** The places as given, the other way about, and with the two at one height changed. */
    private static List<List<Point>> mixed() {
        List<Point> backward = new ArrayList<>(PLACES);
        Collections.reverse(backward);
        return List.of(PLACES, backward, List.of(PLACES.get(2), PLACES.get(0), PLACES.get(3), PLACES.get(1)));
    }

    /** A board with square holes at those places, cut in two at each so that its outline does not cross itself. */
    private static List<Outline> pierced(List<Point> at) {
        List<Outline> frames = new ArrayList<>();
        for (Point p : at) {
            double x = p.x();
            double y = p.y();
            frames.add(lines(
                    x - 1, y - 1, x + 2, y - 1, x + 2, y, x, y, x, y + 1, x + 2, y + 1, x + 2, y + 2, x - 1, y + 2));
            frames.add(board(x + 1, y, x + 2, y + 1));
        }
        return frames;
    }

    private static Point low(Box box) {
        return new Point(box.back(), box.bottom());
    }

    @Test
    void parts_of_a_union() {
        for (List<Point> at : mixed()) {
            assertThat(WeldedOutlines.of(squares(at, 1)).union().parts())
                    .extracting(part -> low(part.outer().box()))
                    .containsExactlyElementsOf(PLACES);
        }
    }

    @Test
    void holes_and_air_that_is_closed_in() {
        for (List<Point> at : mixed()) {
            WeldedOutlines joined = WeldedOutlines.of(pierced(at));
            assertThat(joined.union().parts().stream().flatMap(part -> part.holes().stream()))
                    .extracting(hole -> low(hole.box()))
                    .containsExactlyInAnyOrderElementsOf(PLACES);
            assertThat(joined.cavities())
                    .extracting(cavity -> low(cavity.ring().box()))
                    .containsExactlyElementsOf(PLACES);
        }
    }

    @Test
    void holes_of_one_part() {
        for (List<Point> at : mixed()) {
            List<Outline> outlines = new ArrayList<>(pierced(at));
            // boards from one frame to the next make one part of them
            outlines.add(board(-1, -3, 12, -1));
            outlines.add(board(8, 2, 12, 4));
            outlines.add(board(-1, 5, 8, 6));
            outlines.add(board(10, -1, 11, 2));
            for (double degrees : new double[] {0, 90, 180, 270, 33}) {
                List<Part> parts = WeldedOutlines.of(outlines.stream()
                                .map(one -> one.moved(Motion.turn(degrees)))
                                .toList())
                        .union()
                        .parts();
                assertThat(parts).hasSize(1);
                assertThat(parts.get(0).holes()).hasSizeGreaterThan(3);
                assertThat(parts.get(0).holes().stream().map(Ring::inside))
                        .isSortedAccordingTo(
                                Comparator.comparingDouble(Point::y).thenComparingDouble(Point::x));
            }
        }
    }

    @Test
    void laps_of_two_outlines() {
        // a comb of three teeth let into a board: its laps lie at one height; a second comb's above each other
        Outline comb = lines(0, 0, 7, 0, 7, 3, 6, 3, 6, 1, 4, 1, 4, 3, 3, 3, 3, 1, 1, 1, 1, 3, 0, 3);
        assertThat(OutlineLaps.of(List.of(comb, board(-1, 2, 8, 4))))
                .extracting(lap -> lap.at().x())
                .containsExactly(0.5, 3.5, 6.5);
        Outline ladder = lines(0, 0, 3, 0, 3, 1, 1, 1, 1, 3, 3, 3, 3, 4, 1, 4, 1, 6, 3, 6, 3, 7, 0, 7);
        assertThat(OutlineLaps.of(List.of(board(2, -1, 4, 8), ladder)))
                .extracting(lap -> lap.at().y())
                .containsExactly(0.5, 3.5, 6.5);
    }

    @Test
    void what_cuts_leave_of_a_blank() {
        Outline blank = board(0, 0, 10, 8);
        Outline wood = board(0, 0, 1, 8);
        List<Outline> cuts = List.of(board(1, 3, 10, 5), board(4, -1, 6, 4), board(2, 4, 3, 9));
        assertThat(Carving.left(blank, wood, cuts))
                .extracting(left -> left.ring().stream()
                        .mapToDouble(line -> line.from().y())
                        .min()
                        .orElseThrow())
                .containsExactly(0.0, 0.0, 5.0, 5.0);
        assertThat(Carving.left(blank, wood, cuts))
                .extracting(
                        left -> left.ring().get(0).from().y(),
                        left -> left.ring().get(0).from().x())
                .isSortedAccordingTo((a, b) -> compare(a.toList(), b.toList()))
                .isNotEqualTo(List.of(tuple(0.0, 0.0)));
    }

    private static int compare(List<Object> a, List<Object> b) {
        int byHeight = Double.compare((Double) a.get(0), (Double) b.get(0));
        return byHeight != 0 ? byHeight : Double.compare((Double) a.get(1), (Double) b.get(1));
    }
}
