package buildup.profiles.region;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.member.Sprung;
import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnionTest {
    private static final double EXACT = 1e-9;

    static Outline board(double back, double bottom, double face, double top) {
        return Outline.rectangle(new Box(back, bottom, face, top));
    }

    static Outline lines(double... xy) {
        List<Stroke> strokes = new ArrayList<>();
        int n = xy.length / 2;
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            strokes.add(new Stroke(
                    new Line(new Point(xy[2 * i], xy[2 * i + 1]), new Point(xy[2 * j], xy[2 * j + 1])), "s" + i));
        }
        return Outline.closed(strokes);
    }

    static WeldedOutlines.Joined union(Outline... outlines) {
        return WeldedOutlines.of(List.of(outlines)).union();
    }

    static Part only(WeldedOutlines.Joined joined) {
        assertThat(joined.parts()).hasSize(1);
        return joined.parts().get(0);
    }

    /** Worked example A (reference/worked-example-a.md). */
    static List<Outline> readingRoom() {
        double top = 7.5 + 3.25 * Math.cos(Math.toRadians(38));
        Walk bed = new Walk();
        bed.straight(Way.OUT, 0.25, "bottom");
        bed.cove(Way.UP, 1, Way.OUT, 1, "cove");
        bed.straight(Way.UP, 0.375, "fillet");
        bed.levelToBack();
        Outline crown = new Sprung(38, 3.25, 0.5625, 0, 0).plain().moved(Motion.shift(4.25, 7.5));
        return List.of(
                board(0, 0, 1, 0.75),
                board(0, 0.75, 0.75, 6.25),
                Outline.closed(bed.close()).moved(Motion.shift(0.75, 4.875)),
                board(0, 6.25, 3.5, 7),
                board(3.5, 6, 4.25, 8),
                board(2.25, 7, 3.5, 8),
                board(2.75, 8, 4.25, top),
                lines(4.25, top, 4.25, top - 1.4443, 4.25 + 1.1284, top),
                crown,
                board(0, top, crown.box().face() + 0.375, top + 0.75));
    }

    @Test
    void the_reading_room_cornice_has_its_worked_figures() {
        List<Outline> pieces = readingRoom();
        WeldedOutlines joining = WeldedOutlines.of(pieces);
        Part part = only(joining.union());
        assertThat(part.area()).isCloseTo(21.5613, within(1e-4));
        assertThat(part.area())
                .isCloseTo(pieces.stream().mapToDouble(Outline::area).sum(), within(EXACT));
        assertThat(part.holes())
                .singleElement()
                .satisfies(hole -> assertThat(hole.area()).isCloseTo(0.2452, within(1e-4)));
        assertThat(joining.cavities()).singleElement().satisfies(cavity -> {
            assertThat(cavity.wide()).isTrue();
            assertThat(cavity.area()).isCloseTo(0.2452, within(1e-4));
            assertThat(cavity.ring().bounds()).extracting(Bound::outline).containsExactlyInAnyOrder(6, 7, 8, 9);
            assertThat(cavity.corners()).isEmpty();
        });
        Box box = part.outer().box();
        assertThat(box.height()).isCloseTo(10.8110, within(5e-5));
        assertThat(box.face()).isCloseTo(6.6259, within(5e-5));
        assertThat(part.outer().touches(0)).isTrue();
        assertThat(part.outer().touches(7)).isFalse();
    }

    @Test
    void the_room_side_of_the_cornice_is_its_worked_members() {
        List<Outline> pieces = readingRoom();
        List<Bound> bounds = only(WeldedOutlines.of(pieces).union()).outer().bounds();
        List<String> walked = new ArrayList<>();
        int start = 0;
        while (bounds.get(start).segment().from().distance(Point.ORIGIN) > EXACT) {
            start++;
        }
        for (int i = 0; i < 16; i++) {
            Bound bound = bounds.get((start + i) % bounds.size());
            String member =
                    pieces.get(bound.outline()).strokes().get(bound.stroke()).member();
            walked.add("%d %s %.4f"
                    .formatted(bound.outline(), member, bound.segment().length()));
        }
        assertThat(walked)
                .startsWith(
                        "0 bottom 1.0000",
                        "0 face 0.7500",
                        "0 top 0.2500",
                        "1 face 4.1250",
                        "2 bottom 0.2500",
                        "2 cove 1.5708",
                        "2 fillet 0.3750",
                        "3 bottom 1.5000",
                        "4 back 0.2500",
                        "4 bottom 0.7500",
                        "4 face 1.5000",
                        "8 face 3.2500",
                        "9 bottom 0.3750",
                        "9 face 0.7500",
                        "9 top 6.6259");
    }

    @Test
    void the_order_of_the_pieces_does_not_change_the_figures() {
        List<Outline> pieces = new ArrayList<>(readingRoom());
        double area = WeldedOutlines.of(pieces).union().area();
        double perimeter = WeldedOutlines.of(pieces).union().perimeter();
        for (int i = 0; i < pieces.size(); i++) {
            pieces.add(pieces.remove(0));
            WeldedOutlines.Joined joined = WeldedOutlines.of(pieces).union();
            assertThat(joined.area()).isCloseTo(area, within(EXACT));
            assertThat(joined.perimeter()).isCloseTo(perimeter, within(EXACT));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {7.3, 45, 61.8, 123.456, 270})
    void a_turned_cornice_has_the_same_figures(double degrees) {
        List<Outline> turned = readingRoom().stream()
                .map(piece -> piece.moved(Motion.turn(degrees)))
                .toList();
        Part part = only(WeldedOutlines.of(turned).union());
        assertThat(part.area())
                .isCloseTo(only(WeldedOutlines.of(readingRoom()).union()).area(), within(EXACT));
        assertThat(part.perimeter())
                .isCloseTo(only(WeldedOutlines.of(readingRoom()).union()).perimeter(), within(EXACT));
        assertThat(part.holes()).hasSize(1);
    }

    @Test
    void nothing_joined_is_nothing() {
        assertThat(WeldedOutlines.of(List.of()).union().parts()).isEmpty();
        assertThat(OutlineLaps.of(List.of())).isEmpty();
        assertThat(WeldedOutlines.of(List.of()).cavities()).isEmpty();
        assertThat(Covered.area(List.of())).isZero();
    }

    @Test
    void boards_apart_stay_apart_lowest_first() {
        WeldedOutlines.Joined joined = union(board(0, 5, 1, 6), board(0, 0, 1, 1), board(3, 0, 4, 1));
        assertThat(joined.parts())
                .extracting(part -> part.outer().box().bottom())
                .containsExactly(0.0, 0.0, 5.0);
        assertThat(joined.parts()).extracting(part -> part.outer().box().back()).containsExactly(0.0, 3.0, 0.0);
    }

    @Test
    void a_piece_within_another_adds_nothing() {
        WeldedOutlines.Joined joined = union(board(0, 0, 4, 4), board(1, 1, 2, 2), board(0, 0, 4, 4));
        assertThat(only(joined).area()).isCloseTo(16, within(EXACT));
        assertThat(only(joined).outer().bounds()).extracting(Bound::outline).containsOnly(0);
    }

    @Test
    void a_piece_let_into_the_joint_of_two_others_adds_nothing() {
        // the one-shot union answers with its outline once more and a loose line, and an area that is the plain sum
        WeldedOutlines.Joined joined = union(board(0, 0, 3, 2), board(1, 1, 2, 3), board(0, 2, 4, 4));
        assertThat(only(joined).area()).isCloseTo(14, within(EXACT));
    }

    @Test
    void rings_that_touch_at_a_point_enclose_what_they_enclose() {
        // four boards round a hole that meets the outside in the corner of two of them
        WeldedOutlines.Joined joined =
                union(board(0, 0, 3, 1), board(2, 1, 3, 2), board(0, 1, 1, 3), board(1, 2, 2, 3));
        assertThat(joined.area()).isCloseTo(3 + 1 + 2 + 1, within(EXACT));
        assertThat(joined.perimeter()).isCloseTo(16, within(EXACT));
    }

    @Test
    void boards_that_touch_only_at_a_corner_stay_two_parts() {
        assertThat(union(board(0, 0, 1, 1), board(1, 1, 2, 2)).parts()).hasSize(2);
    }

    static Outline bead(double x, double y, double radius) {
        Walk walk = new Walk();
        walk.halfRound(2 * radius, "bead");
        return Outline.closed(walk.close()).moved(Motion.turn(-90)).moved(Motion.shift(x - radius, y));
    }

    static Outline trough(double radius) {
        return Outline.closed(List.of(
                new Stroke(new Line(new Point(-2, -2), new Point(2, -2)), "bottom"),
                new Stroke(new Line(new Point(2, -2), new Point(2, 0)), "face"),
                new Stroke(new Line(new Point(2, 0), new Point(radius, 0)), "top"),
                new Stroke(new Arc(new Point(radius, 0), new Point(-radius, 0), Point.ORIGIN, false), "hollow"),
                new Stroke(new Line(new Point(-radius, 0), new Point(-2, 0)), "top"),
                new Stroke(new Line(new Point(-2, 0), new Point(-2, -2)), "back")));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 7.3, 33.3, 90})
    void a_bead_fills_a_hollow_of_its_own_radius(double degrees) {
        Motion turn = Motion.turn(degrees);
        Part part = only(union(trough(0.75).moved(turn), bead(0, 0, 0.75).moved(turn)));
        assertThat(part.area()).isCloseTo(8, within(EXACT));
        assertThat(part.holes()).isEmpty();
        assertThat(part.perimeter()).isCloseTo(12, within(EXACT));
    }

    @Test
    void a_rod_tangent_in_a_wider_hollow_under_a_lid_leaves_two_holes() {
        double r = 0.25;
        Outline rod = bead(0, -0.75 + r, r);
        Outline other = bead(0, -0.75 + r, r)
                .moved(Motion.shift(0, 0.75 - r))
                .moved(Motion.turn(180))
                .moved(Motion.shift(0, -0.75 + r));
        List<Cavity> cavities = WeldedOutlines.of(
                        List.of(trough(0.75), rod, other, board(-2, 0, 2, 1), board(-0.05, -0.5, 0.05, 0)))
                .cavities();
        assertThat(cavities).hasSize(2).allMatch(Cavity::wide);
        double air = cavities.stream().mapToDouble(Cavity::area).sum();
        // half disc of the hollow less the rod and the stem above it: 0.1 wide, from the rod's top to the lid
        double stem = 0.1 * 0.25 + (0.1 * r - circleUnder(0.05, r));
        double closed = Math.PI * 0.75 * 0.75 / 2 - Math.PI * r * r - stem;
        assertThat(air).isCloseTo(closed, within(1e-6));
    }

    /** Area under the arc of a circle between -x and x, above its center. */
    private static double circleUnder(double x, double r) {
        return x * Math.sqrt(r * r - x * x) + r * r * Math.asin(x / r);
    }

    @Test
    void bounds_come_from_the_true_arcs() {
        Outline bead = bead(0.3, 0.1, 1.0 / 3);
        Part part = only(union(bead, board(-1, 0.1, 1, 1)));
        assertThat(part.outer().box().bottom()).isCloseTo(0.1 - 1.0 / 3, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.002, -1e-5, 1e-5, 0.001, 0.0025})
    void of_two_faces_nearer_than_touching_the_one_that_stands_out_bounds_the_air(double out) {
        Outline first = board(0, 0, 1, 4);
        // as long as the first, within it, and past both its ends
        for (Outline later :
                List.of(board(0.2, 0, 1 + out, 4), board(0.2, 1, 1 + out, 3), board(0.2, -1, 1 + out, 5))) {
            double outside = 2 * 0.8 * (later.box().height() > 4 ? 1 : 0);
            double length = Math.min(4, later.box().height());
            double ends = Math.max(0, later.box().height() - 4) * out;
            for (double degrees : new double[] {0, 30, 90, 211}) {
                Motion turn = Motion.turn(degrees);
                Part part = only(union(first.moved(turn), later.moved(turn)));
                assertThat(part.area())
                        .as(out + ", " + later.box() + ", " + degrees)
                        .isCloseTo(4 + outside + ends + length * Math.max(0, out), within(1e-5));
                assertThat(part.perimeter())
                        .isCloseTo(
                                2
                                        * (part.outer().box().width()
                                                + part.outer().box().height()),
                                within(degrees % 90 == 0 ? 2 * Math.abs(out) + 1e-6 : 100));
            }
        }
    }

    /** The round goes two thousandths into the board: they cross far from where they come within touching. */
    @Test
    void curves_that_cross_nearly_tangent_are_followed_to_where_they_cross() {
        Outline board = board(1, 0, 3, 2);
        Point center = new Point(0.502, 1);
        Outline round = Outline.closed(List.of(
                new Stroke(new Line(center, new Point(1.002, 1)), "bottom"),
                new Stroke(new Arc(new Point(1.002, 1), new Point(0.502, 1.5), center, true), "round"),
                new Stroke(new Line(new Point(0.502, 1.5), center), "back")));
        double crossing = Math.sqrt(0.5 * 0.5 - 0.498 * 0.498);
        double arc = 0.5 * (Math.PI / 2 - Math.acos(0.498 / 0.5));
        Outline base = board(0.4, -1, 3, 1);
        double around = 2 + 2.6 + 3 + 2 + (1 - crossing) + arc + 0.5 + 0.102;
        for (double degrees : new double[] {0, 14, 90, 133}) {
            Motion turn = Motion.turn(degrees);
            for (List<Outline> both : List.of(List.of(board, round), List.of(round, board))) {
                Part part = only(union(both.get(0).moved(turn), both.get(1).moved(turn), base.moved(turn)));
                assertThat(part.perimeter()).isCloseTo(around, within(0.005));
            }
        }
    }

    @Test
    void a_joint_of_a_board_that_lies_by_a_hair_on_two_is_no_hole() {
        // the lower board is moved by its corners to the left one, and would gape under the right one
        Outline left = board(0, -0.001, 1, 2);
        Outline right = board(1, 0, 1.3, 2);
        Outline far = board(1.6, 0, 2.6, 2);
        Outline lower = board(0, -1, 3, 0);
        for (Part part : union(left, far, right, lower).parts()) {
            assertThat(part.holes()).allSatisfy(hole -> assertThat(hole.area()).isGreaterThan(1e-6));
        }
    }
}
