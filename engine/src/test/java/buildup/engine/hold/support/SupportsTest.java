package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.hold.support.Support.Verdict;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of the whole. */
class SupportsTest {
    private final Notices notices = new Notices();

    private Verdict verdict(Held held) {
        return held.support(notices).whole().orElseThrow();
    }

    @Test
    void without_fastenings_there_is_no_verdict_on_the_whole() {
        Held shelf = HandStacks.shelfOnLedge();
        Support support = new Held(shelf.section(), shelf.loads(), List.of()).support(notices);
        assertThat(support.whole()).isEmpty();
        assertThat(support.loads()).hasSize(1);
        assertThat(support.balances()).hasSize(2);
        assertThat(support.path().reachesGround(1)).isTrue();
        assertThat(notices.sorted()).extracting(Notice::code).containsExactly("needs-holding");
    }

    @Test
    void with_fastenings_the_note_about_holding_gives_way_to_the_verdict() {
        Verdict verdict = verdict(HandStacks.shelfOnLedge());
        assertThat(verdict.stands()).isTrue();
        assertThat(verdict.factor()).isGreaterThan(1);
        assertThat(verdict.governs()).isEqualTo("hold-down");
        assertThat(notices.sorted()).isEmpty();
    }

    @Test
    void no_load_stands_without_a_factor() {
        Held shelf = HandStacks.shelfOnLedge();
        Verdict verdict = verdict(new Held(shelf.section(), List.of(), shelf.joints()));
        assertThat(verdict).isEqualTo(new Verdict(true, Double.POSITIVE_INFINITY, ""));
    }

    @Test
    void what_tips_is_a_problem() {
        Held shelf = HandStacks.shelfOnLedge()
                .joints(joint ->
                        new Tie(joint.name(), joint.outer(), joint.inner(), joint.at(), joint.axis(), 0.1, 0.1));
        assertThat(verdict(shelf)).isEqualTo(new Verdict(false, 0, ""));
        Notice problem = notices.sorted().get(0);
        assertThat(problem.level()).isEqualTo(Level.PROBLEM);
        assertThat(problem.code()).isEqualTo("tips");
        assertThat(NoticeWords.INCHES.message(problem))
                .isEqualTo("The stack does not stand by its contacts and fastenings, friction left out.");
        assertThat(NoticeWords.INCHES.cure(problem))
                .isEqualTo("Fasten what hangs, or bring the weight back over its bearing.");
    }

    @Test
    void a_load_that_serves_as_ballast_does_not_make_a_stack_stand() {
        Held shelf = HandStacks.shelfOnLedge();
        Held ballast = new Held(shelf.section(), List.of(), List.of())
                .nail("weak", "shelf", "ledge", new Point(-3.5, 0), -90, 0.1, 0)
                .load("shelf", -3, 50);
        assertThat(ballast.balanceOn("ledge").stands()).as("under the load").isTrue();
        assertThat(verdict(ballast).stands()).as("the day the books are lent").isFalse();
    }

    @Test
    void a_factor_just_under_1_is_not_rounded_up_to_it() {
        Held shelf = HandStacks.shelfOnLedge();
        Held heavy = shelf.loadsTimes(shelf.factor() / 0.998);
        assertThat(verdict(heavy).factor()).isCloseTo(0.998, within(1e-6));
        assertThat(notices.sorted())
                .extracting(NoticeWords.INCHES::message)
                .containsExactly("The stack takes only 0.99 of the loads; hold-down governs.");
    }

    @Test
    void every_figure_says_what_it_leaves_out() {
        assertThat(Support.LEFT_OUT).contains("Friction", "only push");
    }

    @Test
    void a_fixed_piece_that_bridges_two_bodies_is_not_told_to_be_held() {
        Held fixed = Held.of(Bench.loose(
                "name: one, kind: framing, section: [out 1, up 1], back: 0, top: 0",
                "name: two, kind: framing, section: [out 1, up 1], back: 2, top: 0",
                "name: arm, fixed: one, section: [out 20, up 1], back: 0, bottom: 0"));
        fixed.support(notices);
        assertThat(notices.sorted()).isEmpty();
    }
}
