package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.profiles.outline.Point;
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
        assertThat(held.section().name(part.on().orElseThrow())).isEqualTo("under");
        assertThat(part.about().orElseThrow().x()).isCloseTo(2, within(1e-9));
        Fall.Stop stop = part.stop().orElseThrow();
        assertThat(held.names(List.of(stop.by()))).containsExactly("before");
        assertThat(stop.travel()).isCloseTo(GAP, within(1e-9));
        // as arc over radius
        assertThat(stop.degrees()).isCloseTo(Math.toDegrees(GAP / (10 - 2)), within(0.01));
        assertThat(notices.sorted()).anyMatch(notice -> notice.code().equals("gap-that-closes"));
    }

    /** On the one post alone: without the load it tips out, and with more than 4 / 0.5 times its weight it tips back. */
    @Test
    void what_falls_without_its_load_is_told_with_it_where_it_falls_then_too() {
        Held alone = Held.of(Bench.loose(
                "name: under, kind: framing, section: [out 1, up 9], back: 1, top: 10",
                "name: beam, profile: board 1 x 10, lay: flat, back: 0, bottom: 10"));
        Support.Whole kept =
                alone.load("beam", 0.5, 7 * 10 * Held.WOOD).support().whole();
        assertThat(kept.answer()).as("a load may be taken away").isEqualTo(Support.Answer.NO);
        assertThat(kept.falls().get(0).first().way()).isEqualTo(Fall.Way.TIPS_OUT);
        Support.Whole over =
                alone.load("beam", 0.5, 9 * 10 * Held.WOOD).support().whole();
        assertThat(over.falls().get(0).first().way()).isEqualTo(Fall.Way.TIPS_BACK);
        for (Support.Whole whole : List.of(kept, over)) {
            assertThat(whole.underLoad()).as("it falls without it too").isFalse();
            assertThat(whole.loadFactor()).hasValue(0);
        }
    }

    /**
     * A bridge of 16-1/2 square inches lies on a post and on the back end of a beam, 3-1/2 behind the edge that the beam
     * turns on: half its weight keeps 29 of the 120 that the beam's 20 square inches take 6 before it, the load on the
     * bridge the rest. Without the load it is the nail.
     */
    @Test
    void a_group_that_a_load_beside_it_keeps_is_told_to_hang_on_its_nail() {
        Held held = Held.of(Bench.loose(
                        "name: post, kind: framing, section: [out 1, up 9], back: -20, top: 1",
                        "name: ledge, kind: framing, section: [out 3, up 9], face: 0, top: 0",
                        "name: beam, section: [out 20, up 1], back: -4, bottom: 0",
                        "name: bridge, section: [out 16-1/2, up 1], back: -20, bottom: 1"))
                .load("bridge", -3.75, 40 * Held.WOOD);
        assertThat(held.support().whole().answer()).as("without its load").isEqualTo(Support.Answer.NO);
        Support nailed = held.nail("hold-down", "beam", "ledge", new Point(-2.5, 0), -90, 20, 10)
                .decided()
                .support();
        assertThat(nailed.whole().answer()).isEqualTo(Support.Answer.STANDS);
        assertThat(nailed.balances())
                .filteredOn(one -> held.names(one.group()).equals(List.of("beam")))
                .singleElement()
                .satisfies(one -> assertThat(one.kept().by()).isEqualTo(Balance.Keeper.FASTENINGS));
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
