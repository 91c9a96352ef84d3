package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answer;
import buildup.engine.Answered;
import buildup.engine.Bench;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
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
            assertThat(held.names(List.of(stop.by()))).containsExactly("behind");
            assertThat(stop.travel()).isCloseTo(NEAR, within(1e-9));
            // the beam turns on the inner edge of the post until it lies on the nearer edge of the other
            assertThat(stop.degrees()).isCloseTo(Math.toDegrees(NEAR / (5.5 - 1)), within(0.01));
        }
    }

    private static final String LEDGE = "name: ledge, kind: framing, section: [out 6, up 6], face: 0, top: 0";

    /**
     * A bridge from a lever to a post does more of the work, for it is longer, but it is the lever that has air below it: it
     * turns about the edge of its ledge until that has closed at the far end of the stop, 9 out.
     */
    @Test
    void what_closes_a_gap_is_told_and_not_what_comes_along_with_it() {
        Held held = Held.of(Bench.loose(
                LEDGE,
                "name: post, kind: framing, section: [out 1, up 6], back: 29, top: 1",
                "name: stop, kind: framing, section: [out 1, up 6], back: 8, top: -1/16",
                "name: lever, section: [out 16, up 1], back: -6, bottom: 0",
                "name: bridge, section: [out 21, up 1], back: 9, bottom: 1"));
        Notices notices = new Notices();
        Fall closing = held.support(notices).whole().closing().orElseThrow();
        assertThat(closing.parts()).hasSize(2);
        assertThat(held.names(closing.first().pieces())).containsExactly("lever");
        assertThat(closing.first().stop().orElseThrow().degrees()).isCloseTo(Math.toDegrees(NEAR / 9), within(0.01));
        assertThat(closing.parts().get(1).stop())
                .as("the bridge closes nothing")
                .isEmpty();
        assertThat(notices.sorted().stream().map(NoticeWords.INCHES::message))
                .containsExactly("The stack stands once a gap has closed: lever turns until 1/16 has closed to stop,"
                        + " at -1/16 up.");
    }

    /** Two beams that have nothing to do with each other, each with a joint below its far end. */
    @Test
    void each_of_two_that_move_has_the_joint_that_it_closes_itself() {
        Held held = Held.of(Bench.loose(
                "name: near, kind: framing, section: [out 2, up 4], back: 0, top: 0",
                "name: near end, kind: framing, section: [out 1, up 4], back: 9, top: " + -WIDE,
                "name: far, kind: framing, section: [out 2, up 4], back: 20, top: 0",
                "name: far end, kind: framing, section: [out 1, up 4], back: 31, top: " + -NEAR,
                "name: small, section: [out 10, up 1], back: 0, bottom: 0",
                "name: large, section: [out 12, up 1], back: 20, bottom: 0"));
        Fall closing = held.support().whole().closing().orElseThrow();
        assertThat(closing.parts())
                .extracting(part -> held.names(part.pieces()).get(0) + " "
                        + part.stop().orElseThrow().travel() + " "
                        + held.section().name(part.stop().orElseThrow().by()))
                .containsExactlyInAnyOrder("small " + WIDE + " near end", "large " + NEAR + " far end");
    }

    /**
     * It closes the joint by itself; then the load, 1.9 before the outer edge of that post, tips it over there against its
     * 12 square inches 4 behind it.
     */
    @Test
    void a_load_that_is_too_much_once_the_gap_has_closed_tips_it_over_what_it_then_lies_on() {
        Held beam = Held.of(Bench.loose(
                "name: under, kind: framing, section: [out 1, up 9], back: 1, top: 0",
                "name: before, kind: framing, section: [out 1, up 9], back: 9, top: " + -NEAR,
                "name: beam, section: [out 12, up 1], back: 0, bottom: 0"));
        double takes = 12 * Held.WOOD * 4 / 1.9;
        assertThat(beam.load("beam", 11.9, takes * 0.99).support().whole().answer())
                .isEqualTo(Support.Answer.TRUST);
        Support.Whole whole = beam.load("beam", 11.9, takes * 2).support().whole();
        assertThat(whole.answer()).isEqualTo(Support.Answer.NO);
        assertThat(whole.underLoad()).isTrue();
        assertThat(whole.loadFactor()).hasValueCloseTo(0.5, within(1e-6));
        Fall.Part part = whole.falls().get(0).first();
        assertThat(part.way()).isEqualTo(Fall.Way.TIPS_OUT);
        assertThat(beam.section().name(part.on().orElseThrow())).isEqualTo("before");
        assertThat(part.about().orElseThrow().x()).isCloseTo(10, within(1e-6));
    }

    /** Nails at 12, 24, .. 132, of which those at 24, 48, .. 120 find a stud: 5 of 11 draw the frieze home under its load. */
    @Test
    void a_gap_that_closes_is_told_also_where_nails_go_between_the_studs() {
        String text = Bench.head("""
                space: { floor: -90, wall: { covering: 1/2 } }
                loads: [ { name: books, on: shelf, out: 4, load: 5.5 lb/ft } ]
                fastenings:
                  - { name: row, piece: frieze, use: 15 ga x 2-1/2, at: { up: 4 }, spacing: 12, first: 12 }
                plan:
                  - { left: die, right: die, stretches: [{ name: north, length: 144%s }] }
                """)
                + Bench.list(
                        "name: ledge, kind: framing, section: [out 1, up 6], back: 0, top: 0",
                        "name: frieze, profile: board 3/4 x 5-1/2, back: 1/16, bottom: 0",
                        "name: shelf, fixed: frieze, profile: board 3/4 x 4, lay: flat, back: 1/16, bottom: frieze.top");
        Answer all = Answered.of(text.formatted(""));
        Answer some = Answered.of(text.formatted(", studs: { every: 24, first: 24 }"));
        for (Answer answer : List.of(all, some)) {
            assertThat(answer.known().orElseThrow().support().whole().answer()).isEqualTo(Support.Answer.TRUST);
            assertThat(answer.notices().stream().filter(notice -> notice.code().equals("gap-that-closes")))
                    .hasSize(1);
        }
        assertThat(times(some)).isCloseTo(times(all) * 5 / 11, within(1e-6));
    }

    private static double times(Answer answer) {
        return answer.known().orElseThrow().support().whole().times().orElseThrow();
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
