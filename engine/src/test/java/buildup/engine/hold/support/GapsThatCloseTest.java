package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import org.junit.jupiter.api.Test;

/** A beam that touches one post and lies a little over others: which joint its weight closes. */
class GapsThatCloseTest {
    private static final double NEAR = 1.0 / 16;
    private static final double WIDE = 3.0 / 32;

    private static String post(String name, double back, double gap) {
        return "name: " + name + ", kind: framing, section: [out 1, up 9], back: " + back + ", top: " + (10 - gap);
    }

    /** A beam of 10 on a post that begins half an inch past the middle of it: it tips back. */
    private static Held beam(double backGap, double faceGap) {
        return Held.of(Bench.loose(
                post("behind", 1, backGap),
                post("under", 5.5, 0),
                post("before", 9, faceGap),
                "name: beam, profile: board 1 x 10, lay: flat, back: 0, bottom: 10"));
    }

    private static Fall.Stop closed(Held held) {
        Support support = held.support();
        assertThat(support.whole().answer()).isEqualTo(Support.Answer.TRUST);
        Fall closing = support.whole().closing().orElseThrow();
        assertThat(closing.first().way()).isEqualTo(Fall.Way.TIPS_BACK);
        return closing.first().stop().orElseThrow();
    }

    @Test
    void the_joint_on_the_side_that_comes_down_closes_however_wide_the_one_that_opens_is() {
        for (double other : new double[] {NEAR / 2, NEAR, WIDE}) {
            Held held = beam(NEAR, other);
            Fall.Stop stop = closed(held);
            assertThat(held.names(java.util.List.of(stop.by()))).containsExactly("behind");
            assertThat(stop.travel()).isCloseTo(NEAR, within(1e-9));
            // the beam turns on the inner edge of the post until it lies on the nearer edge of the other
            assertThat(stop.degrees()).isCloseTo(Math.toDegrees(NEAR / (5.5 - 1)), within(0.01));
        }
    }

    @Test
    void without_a_joint_on_that_side_it_falls() {
        Held held = Held.of(Bench.loose(
                post("under", 5.5, 0),
                post("before", 9, WIDE),
                "name: beam, profile: board 1 x 10, lay: flat, back: 0, bottom: 10"));
        assertThat(held.support().whole().answer()).isEqualTo(Support.Answer.NO);
    }
}
