package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.hold.nail.Drive;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A stack upside down gives the same nails upside down, and one seen from its other side the same nails turned. */
class MirroredNailsTest {
    private static final String OPEN = "{ wall: { solid: no } }";

    private static final List<String> UPRIGHT = List.of(
            "name: post, kind: framing, section: [out 3, up 10], back: 0, bottom: 0",
            "name: board, profile: board 3/4 x 5-1/2, back: post.face, bottom: 2",
            "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: board.face, top: 7-1/2",
            "name: lid, kind: nailer, grain: up, profile: board 3/4 x 3-1/2, lay: flat, back: board.back, bottom: 7-1/2");

    private static final List<String> OVER = List.of(
            "name: post, kind: framing, section: [out 3, up 10], back: 0, top: 0",
            "name: board, profile: board 3/4 x 5-1/2, back: post.face, top: -2",
            "name: bed, profile: check-bed 1-1/4 x 1-3/8, flip: over, back: board.face, bottom: -7-1/2",
            "name: lid, kind: nailer, grain: up, profile: board 3/4 x 3-1/2, lay: flat, back: board.back, top: -7-1/2");

    private static final List<String> BACKWARD = List.of(
            "name: post, kind: framing, section: [out 3, up 10], face: 0, bottom: 0",
            "name: board, profile: board 3/4 x 5-1/2, face: post.back, bottom: 2",
            "name: bed, profile: check-bed 1-1/4 x 1-3/8, flip: ends, face: board.back, top: 7-1/2",
            "name: lid, kind: nailer, grain: up, profile: board 3/4 x 3-1/2, lay: flat, face: board.face,"
                    + " bottom: 7-1/2");

    private static String row(String piece, double x, double y, double angle, String use) {
        return "piece: " + piece + ", use: " + use + ", at: { out: " + x + ", up: " + y + " }, angle: " + angle;
    }

    private static Driven upright(double turn) {
        return Driven.in(
                OPEN,
                UPRIGHT,
                row("board", 3.75, 3, 10 * turn, "15 ga x 2"),
                row("bed", 5, 7.25, -20 * turn, "16 ga x 2-1/2"),
                row("board", 3.75, 6, 30 * turn, "trim screw 8 x 3"));
    }

    private static void assertAlike(Fixed one, Fixed other) {
        assertThat(one.bite()).isCloseTo(other.bite(), within(1e-9));
        assertThat(one.spent()).isCloseTo(other.spent(), within(1e-9));
        assertThat(one.allowable()).isCloseTo(other.allowable(), within(1e-9));
        assertThat(one.edge().orElseThrow()).isCloseTo(other.edge().orElseThrow(), within(1e-9));
        assertThat(one.joints()).hasSameSizeAs(other.joints());
        IntStream.range(0, one.joints().size()).forEach(i -> {
            Joint a = one.joints().get(i);
            Joint b = other.joints().get(i);
            assertThat(a.lateral()).isCloseTo(b.lateral(), within(1e-9));
            assertThat(a.withdrawal()).isCloseTo(b.withdrawal(), within(1e-9));
        });
        assertThat(one.drive().breakOut().map(Drive.BreakOut::body))
                .isEqualTo(other.drive().breakOut().map(Drive.BreakOut::body));
    }

    @Test
    void upside_down_up_and_down_change_places() {
        Driven over = Driven.in(
                OPEN,
                OVER,
                row("board", 3.75, -3, -10, "15 ga x 2"),
                row("bed", 5, -7.25, 20, "16 ga x 2-1/2"),
                row("board", 3.75, -6, -30, "trim screw 8 x 3"));
        Driven upright = upright(1);
        IntStream.rangeClosed(1, 3).forEach(i -> {
            assertAlike(upright.nail(i), over.nail(i));
            assertThat(upright.nail(i).way().y()).isCloseTo(-over.nail(i).way().y(), within(1e-12));
        });
    }

    @Test
    void seen_from_behind_up_stays_up() {
        Driven backward = Driven.in(
                OPEN,
                BACKWARD,
                row("board", -3.75, 3, 10, "15 ga x 2"),
                row("bed", -5, 7.25, -20, "16 ga x 2-1/2"),
                row("board", -3.75, 6, 30, "trim screw 8 x 3"));
        Driven upright = upright(1);
        IntStream.rangeClosed(1, 3).forEach(i -> {
            assertAlike(upright.nail(i), backward.nail(i));
            assertThat(upright.nail(i).way().x())
                    .isCloseTo(-backward.nail(i).way().x(), within(1e-12));
            assertThat(upright.nail(i).way().y())
                    .isCloseTo(backward.nail(i).way().y(), within(1e-12));
        });
    }

    @Test
    void on_a_level_face_positive_leans_the_point_toward_the_wall() {
        Driven stack = Driven.in(
                OPEN,
                UPRIGHT,
                row("lid", 5, 8.25, 20, "15 ga x 2"),
                "piece: board, use: 15 ga x 1, at: { out: 3-3/8, up: board.bottom }, angle: 20");
        assertThat(stack.nail(1).way().x()).isNegative();
        assertThat(stack.nail(1).way().y()).isNegative();
        assertThat(stack.nail(2).way().x()).isNegative();
        assertThat(stack.nail(2).way().y()).isPositive();
    }
}
