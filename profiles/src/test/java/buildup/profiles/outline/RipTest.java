package buildup.profiles.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RipTest {
    private static Outline cove() {
        Walk walk = new Walk();
        walk.straight(Way.OUT, 0.25, "bottom");
        walk.cove(Way.UP, 1, Way.OUT, 1, "cove");
        walk.straight(Way.UP, 0.25, "fillet");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    /** A board with a hollow of radius 1/2 in its underside: 2 wide, 1 high, the crown of the hollow half way up. */
    private static Outline arched() {
        return Outline.closed(List.of(
                new Stroke(new Line(Point.ORIGIN, new Point(0.5, 0)), "foot"),
                new Stroke(new Arc(new Point(0.5, 0), new Point(1.5, 0), new Point(1, 0), false), "arch"),
                new Stroke(new Line(new Point(1.5, 0), new Point(2, 0)), "foot"),
                new Stroke(new Line(new Point(2, 0), new Point(2, 1)), "face"),
                new Stroke(new Line(new Point(2, 1), new Point(0, 1)), "top"),
                new Stroke(new Line(new Point(0, 1), Point.ORIGIN), "back")));
    }

    private static double area(List<Outline> parts) {
        return parts.stream().mapToDouble(Outline::area).sum();
    }

    @ParameterizedTest
    @EnumSource(Rip.Side.class)
    void what_is_left_and_thinner_than_touching_is_nothing(Rip.Side side) {
        for (Outline whole : List.of(cove(), arched(), Outline.rectangle(new Box(0, 0, 0.75, 3.5)))) {
            double across = side == Rip.Side.TOP || side == Rip.Side.BOTTOM
                    ? whole.box().height()
                    : whole.box().width();
            for (double left = 1; left > 1e-13; left /= 3) {
                assertThat(Rip.off(whole, side, across - left * Tolerance.TOUCHING))
                        .as(side + " " + left)
                        .isEmpty();
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Rip.Side.class)
    void a_board_loses_the_strip_on_that_side_only(Rip.Side side) {
        Outline board = Outline.rectangle(new Box(0, 0, 0.75, 3.5));
        double off = 0.2;
        Box left = switch (side) {
            case BACK -> new Box(off, 0, 0.75, 3.5);
            case FACE -> new Box(0, 0, 0.75 - off, 3.5);
            case BOTTOM -> new Box(0, off, 0.75, 3.5);
            case TOP -> new Box(0, 0, 0.75, 3.5 - off);
        };
        List<Outline> parts = Rip.off(board, side, off);
        assertThat(parts).hasSize(1);
        assertThat(parts.get(0).isRectangle()).isTrue();
        assertThat(parts.get(0).box().grown(1e-12).holds(new Point(left.back(), left.bottom()), 0))
                .isTrue();
        assertThat(parts.get(0).box().grown(1e-12).holds(new Point(left.face(), left.top()), 0))
                .isTrue();
        assertThat(parts.get(0).area())
                .isCloseTo(
                        board.area() - off * (side == Rip.Side.BACK || side == Rip.Side.FACE ? 3.5 : 0.75),
                        within(1e-12));
        assertThat(parts.get(0).members()).containsExactlyInAnyOrder("back", "face", "bottom", "top");
    }

    @Test
    void a_cut_through_a_cove_leaves_its_closed_form() {
        // face cut at x = 1.25 - 1/2: what goes is the cove's outer part, from x = 3/4 to 5/4
        double cut = 0.75;
        List<Outline> parts = Rip.off(cove(), Rip.Side.FACE, 0.5);
        // left under the cove: integral of 1 - (x-height of the hollow), center (1.25, 0), r 1
        double hollow = integralOfCircle(0.25 - 1.25, cut - 1.25);
        double left = cut * 1.25 - hollow;
        assertThat(parts).hasSize(1);
        assertThat(area(parts)).isCloseTo(left, within(1e-12));
        assertThat(parts.get(0).straights("face")).hasSize(1);
    }

    /** Integral of sqrt(1 - u^2). */
    private static double integralOfCircle(double from, double to) {
        return (to * Math.sqrt(1 - to * to) + Math.asin(to) - from * Math.sqrt(1 - from * from) - Math.asin(from)) / 2;
    }

    @Test
    void what_is_left_and_what_goes_make_up_the_whole() {
        Outline whole = cove();
        for (Rip.Side side : Rip.Side.values()) {
            boolean level = side == Rip.Side.BACK || side == Rip.Side.FACE;
            double size = level ? whole.box().width() : whole.box().height();
            Rip.Side opposite = switch (side) {
                case BACK -> Rip.Side.FACE;
                case FACE -> Rip.Side.BACK;
                case BOTTOM -> Rip.Side.TOP;
                case TOP -> Rip.Side.BOTTOM;
            };
            for (double amount : List.of(0.1, 0.25, 0.6, 1.0, 1.2)) {
                double left = area(Rip.off(whole, side, amount));
                double gone = area(Rip.off(whole, opposite, size - amount));
                assertThat(left + gone).as("%s %s", side, amount).isCloseTo(whole.area(), within(1e-9));
            }
        }
    }

    @Test
    void a_cut_below_an_arch_leaves_two_feet() {
        List<Outline> feet = Rip.off(arched(), Rip.Side.TOP, 0.75);
        assertThat(feet).hasSize(2);
        assertThat(feet.get(0).area()).isCloseTo(feet.get(1).area(), within(1e-12));
        assertThat(feet).allSatisfy(foot -> assertThat(foot.box().top()).isCloseTo(0.25, within(1e-12)));
    }

    @Test
    void a_cut_that_just_meets_the_crown_of_an_arch_leaves_two_feet() {
        List<Outline> feet = Rip.off(arched(), Rip.Side.TOP, 0.5);
        assertThat(feet).hasSize(2);
        assertThat(area(feet)).isCloseTo(2 * 0.5 - Math.PI / 8, within(1e-12));
    }

    @Test
    void a_cut_that_just_meets_the_tip_of_a_point_leaves_one_piece() {
        Outline crowned = Outline.closed(SoundnessTest.walk(0, 0, 3, 0, 3, 1, 2.5, 0.5, 2, 1.5, 0, 1.5));
        List<Outline> left = Rip.off(crowned, Rip.Side.TOP, 0.5);
        assertThat(left).hasSize(1);
        // the cut takes the trapezoid over y = 1, 2 wide at the top and 2.25 wide below
        assertThat(area(left)).isCloseTo(crowned.area() - 0.5 * (2 + 2.25) / 2, within(1e-12));
        assertThat(Soundness.faults(left.get(0).strokes())).isEmpty();
    }

    @Test
    void a_cut_along_a_shoulder_takes_the_shoulder_name_away() {
        Outline stepped = Outline.closed(SoundnessTest.walk(0, 0, 2, 0, 2, 1, 1, 1, 1, 2, 0, 2));
        List<Outline> left = Rip.off(stepped, Rip.Side.TOP, 1);
        assertThat(left).hasSize(1);
        assertThat(left.get(0).isRectangle()).isTrue();
        assertThat(left.get(0).straights("top")).hasSize(1);
        assertThat(area(left)).isCloseTo(2, within(1e-12));
    }

    @Test
    void a_cut_through_three_teeth_leaves_them_apart() {
        Outline comb = Outline.closed(
                SoundnessTest.walk(0, 0, 1, 0, 1, 2, 2, 2, 2, 0, 3, 0, 3, 2, 4, 2, 4, 0, 5, 0, 5, 3, 0, 3));
        assertThat(Rip.off(comb, Rip.Side.TOP, 2))
                .hasSize(3)
                .allSatisfy(tooth -> assertThat(tooth.area()).isCloseTo(1, within(1e-12)));
        assertThat(Rip.off(comb, Rip.Side.BOTTOM, 1)).hasSize(1);
    }

    @Test
    void nothing_off_leaves_all_and_all_off_leaves_nothing() {
        assertThat(Rip.off(cove(), Rip.Side.TOP, 0)).containsExactly(cove());
        assertThat(Rip.off(cove(), Rip.Side.TOP, 1e-12)).hasSize(1);
        assertThat(Rip.off(cove(), Rip.Side.TOP, 1.25)).isEmpty();
        assertThat(Rip.off(cove(), Rip.Side.BACK, 7)).isEmpty();
    }
}
