package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.hold.nail.Check;
import buildup.engine.hold.nail.Check.Rule;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Grip;
import buildup.engine.hold.nail.Joint;
import buildup.profiles.outline.Point;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Worked examples D (nails) and F of reference/fixing.md: this project's own arithmetic. */
class WorkedNailsTest {
    private static final Offset<Double> NEAR = within(0.00006);

    static final List<String> HEAD = List.of(
            "name: backband, profile: board 1-5/8 x 1-1/2, back: wall, top: datum",
            "name: frieze back, kind: nailer, profile: board 3/4 x 9-1/4, back: 1/16, bottom: backband.top",
            "name: frieze, profile: board 3/4 x 9-1/4, back: frieze back.face, bottom: backband.top");

    static final String COVERED_WALL = "{ wall: { from: -4-5/8, covering: 1/2 } }";

    private static final Driven D =
            Driven.in(COVERED_WALL, HEAD, "piece: frieze, use: 15 ga x 2-1/2, at: { up: frieze.bottom + 8 }, per: 2");

    static final String ROOM = "{ floor: -84, ceiling: 12, wall: { solid: no } }";

    static List<String> cornice(boolean wedge) {
        List<String> pieces = new ArrayList<>(List.of(
                "name: case, kind: framing, section: [out 14, up 90-1/4], face: wall, top: 6-1/4",
                "name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 3/4",
                "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: frieze.face, top: frieze.top",
                "name: soffit, kind: nailer, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: frieze.top",
                "name: fascia, profile: board 3/4 x 2, back: soffit.face, bottom: soffit.bottom - 1/4",
                "name: block A, kind: nailer, section: [out 1-1/4, up 1], face: fascia.back, bottom: soffit.top",
                "name: block B, kind: nailer, section: [out 1-1/2, up 2], face: fascia.face, bottom: block A.top,"
                        + " top: crown.top"));
        if (wedge) {
            pieces.add(
                    "name: wedge, kind: nailer, section: [chamfer 1.4443 x 1.1284], back: fascia.face, top: crown.top");
        }
        pieces.add("name: crown, profile: check-crown 9/16 x 3-1/4, back: fascia.face, bottom: fascia.top - 1/2");
        pieces.add("name: cap, profile: board 3/4 x 7-1/4, lay: flat, back: wall, face: crown.face + 3/8,"
                + " bottom: crown.top");
        return pieces;
    }

    @Test
    void two_nails_of_2_and_a_half_hold_the_frieze_back_by_7_45_a_foot() {
        Fixed nail = D.nail(1);
        Joint wall = nail.joints().get(1);
        assertThat(wall.far()).isEqualTo(D.body("wall"));
        assertThat(wall.bite()).isCloseTo(0.4375, NEAR);
        assertThat(wall.gap()).isCloseTo(0.5625, NEAR);
        assertThat(wall.withdrawal()).isCloseTo(4.97, within(0.005));
        assertThat(wall.withdrawalPerFoot()).isCloseTo(7.45, within(0.005));
        assertThat(wall.lateralPerFoot()).isPositive().isLessThan(1.5 * 27.82);
    }

    @Test
    void the_leaning_load_asks_for_0_589_and_the_rule_for_0_864() {
        Fixed nail = D.nail(1);
        assertThat(nail.biteFor(D.body("wall"), 10.04)).hasValueCloseTo(0.589, within(0.0005));
        assertThat(FigurePrinter.INCHES.print(
                        Figure.atLeast(nail.biteFor(D.body("wall"), 10.04).orElseThrow())))
                .isEqualTo("5/8");
        Check twelve = nail.check(Rule.TWELVE_DIAMETERS).orElseThrow();
        assertThat(twelve.has()).isCloseTo(0.4375, NEAR);
        assertThat(twelve.needs()).isCloseTo(0.864, NEAR);
        assertThat(twelve.met()).isFalse();
        assertThat(nail.sound()).isFalse();
    }

    @Test
    void the_covering_and_the_gap_are_crossed_and_hold_nothing() {
        assertThat(D.nail(1).drive().crossings())
                .extracting(Crossing::stuff)
                .containsExactly(
                        Crossing.Stuff.WOOD,
                        Crossing.Stuff.WOOD,
                        Crossing.Stuff.AIR,
                        Crossing.Stuff.COVERING,
                        Crossing.Stuff.WOOD);
        assertThat(D.nail(1).drive().air()).isCloseTo(0.0625, NEAR);
        assertThat(D.nail(1).grips())
                .extracting(Grip::body)
                .doesNotHaveDuplicates()
                .hasSize(3);
    }

    @Test
    void it_is_said_that_only_seven_sixteenths_are_left_in_the_wall() {
        assertThat(D.said())
                .contains(
                        "PROBLEM nail-too-short frieze 8 Nail 1 (15 ga x 2-1/2): only 7/16 left in the wall. Needs 7/8"
                                + " (12 diameters). | Use trim screw 7 x 3.");
    }

    @Test
    void the_nail_of_f_spends_0_7586_and_bites_1_2414() {
        Driven f = Driven.in(ROOM, cornice(true), "piece: crown, use: 15 ga x 2, at: { up: 8.9 }, angle: -25");
        Fixed nail = f.nail(1);
        assertThat(nail.spent()).isCloseTo(0.7586, NEAR);
        assertThat(nail.bite()).isCloseTo(1.2414, NEAR);
        assertThat(nail.design()).isCloseTo(14.1, within(0.05));
        assertThat(nail.test()).isCloseTo(80.2, within(0.05));
        assertThat(nail.drive().in(f.body("wedge"))).isLessThan(0.981).isPositive();
        assertThat(nail.drive().in(f.body("wedge")) + nail.drive().in(f.body("block B")))
                .isCloseTo(1.2414, NEAR);
        assertThat(nail.beyond()).extracting(Grip::gravity).containsOnly(0.42);
    }

    /** NDS 2018, 12.5.4: 0.67 of the withdrawal of a toe-nail, whose bite counts square to the joint. */
    @Test
    void at_25_degrees_the_nail_of_f_counts_as_a_toe_nail() {
        Driven f = Driven.in(ROOM, cornice(true), "piece: crown, use: 15 ga x 2, at: { up: 8.9 }, angle: -25");
        Fixed nail = f.nail(1);
        assertThat(nail.slant()).isTrue();
        assertThat(nail.allowable()).isCloseTo(14.1008 * 0.67 * Math.cos(Math.toRadians(25)), within(0.0005));
        assertThat(nail.joints().get(0).withdrawal()).isCloseTo(nail.allowable(), NEAR);
        assertThat(nail.joints().get(0).lateral()).isLessThanOrEqualTo(0.83 * 27.82);
    }

    @Test
    void the_nail_of_f_points_up_13_degrees_and_is_2_long() {
        Fixed nail = Driven.in(ROOM, cornice(true), "piece: crown, use: 15 ga x 2, at: { up: 8.9 }, angle: -25")
                .nail(1);
        Point way = nail.way();
        assertThat(Math.toDegrees(Math.atan2(way.y(), -way.x()))).isCloseTo(38 - 25, within(1e-9));
        assertThat(nail.head().distance(nail.point())).isCloseTo(2, NEAR);
        assertThat(nail.head().y()).isCloseTo(8.9, NEAR);
    }

    @Test
    void without_the_wedge_the_nail_ends_in_the_hollow_and_the_wedge_of_f_is_the_cure() {
        Driven f = Driven.in(ROOM, cornice(false), "name: top row, piece: crown, use: 15 ga x 1, at: { up: 9.1 }");
        assertThat(f.said())
                .contains("PROBLEM nail-in-air crown 14 'top row' (15 ga x 1) ends in the hollow behind 'crown'. |"
                        + " Longer will not help: add a wedge about 1-7/16 x 1-1/8.");
    }
}
