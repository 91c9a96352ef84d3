package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.shared.notice.Notices;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A beam that tips out on its post until a joint before it closes, and a load on its back end that keeps it from that. */
class LoadThatKeepsTest {
    private static final double GAP = 1.0 / 16;

    /** The middle of the beam lies at 5, the post below it ends at 2, the one with the joint at 10. */
    private static final Held BEAM = Held.of(Bench.loose(
            "name: under, kind: framing, section: [out 1, up 9], back: 1, top: 10",
            "name: before, kind: framing, section: [out 1, up 9], back: 9, top: " + (10 - GAP),
            "name: beam, profile: board 1 x 10, lay: flat, back: 0, bottom: 10"));

    /** Weight 10 sq in of wood, 3 before the edge; the load has 1-1/2 behind it to keep that up: two and a half times it do. */
    private static final Held KEPT = BEAM.load("beam", 0.5, 2.5 * 10 * Held.WOOD);

    private static void closes(Held held) {
        Notices notices = new Notices();
        Support support = held.support(notices);
        assertThat(support.whole().answer()).isEqualTo(Support.Answer.TRUST);
        Fall.Part part = support.whole().closing().orElseThrow().first();
        assertThat(part.way()).isEqualTo(Fall.Way.TIPS_OUT);
        Fall.Stop stop = part.stop().orElseThrow();
        assertThat(held.names(List.of(stop.by()))).containsExactly("before");
        assertThat(stop.travel()).isCloseTo(GAP, within(1e-9));
        // as arc over radius
        assertThat(stop.degrees()).isCloseTo(Math.toDegrees(GAP / (10 - 2)), within(0.01));
        assertThat(notices.sorted()).anyMatch(notice -> notice.code().equals("gap-that-closes"));
    }

    @Test
    void its_own_weight_closes_the_joint() {
        closes(BEAM);
    }

    @Test
    void what_closes_is_told_also_where_a_load_keeps_it_open() {
        closes(KEPT);
    }
}
