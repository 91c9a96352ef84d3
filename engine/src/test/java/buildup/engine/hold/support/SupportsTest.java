package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.hold.statics.FirstToGive;
import buildup.engine.hold.statics.FirstToGive.Mode;
import buildup.engine.hold.statics.Tie;
import buildup.engine.hold.support.Balance.Keeper;
import buildup.engine.hold.support.Support.Answer;
import buildup.engine.hold.support.Support.Whole;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What is said of the whole. */
class SupportsTest {
    private final Notices notices = new Notices();

    private Whole whole(Held held) {
        return held.decided().support(notices).whole();
    }

    private List<String> messages() {
        return notices.sorted().stream().map(NoticeWords.INCHES::message).toList();
    }

    @Test
    void loads_are_judged_also_when_no_fastenings_are_given() {
        Held shelf = HandStacks.shelfOnLedge();
        Support support = new Held(shelf.section(), shelf.loads(), List.of()).support(notices);
        assertThat(support.whole().answer()).isEqualTo(Answer.NO);
        assertThat(support.whole().loadFactor()).hasValue(0);
        assertThat(support.loads()).hasSize(1);
        assertThat(support.path().reachesGround(1)).isTrue();
        assertThat(support.balances())
                .singleElement()
                .satisfies(balance -> assertThat(balance.stands()).isFalse());
        assertThat(notices.sorted()).extracting(Notice::code).containsExactly("needs-holding");
        // 10 square inches of it, 2.04 pounds, and the load of 4
        assertThat(messages()).singleElement().asString().startsWith("shelf leans out: 6.04 lb a foot falls ");
    }

    @Test
    void what_fastenings_hold_is_said_with_how_many_times_over_and_is_no_problem() {
        Support support = HandStacks.shelfOnLedge().decided().support(notices);
        assertThat(support.whole().answer()).isEqualTo(Answer.STANDS);
        assertThat(support.whole().loadFactor().orElseThrow()).isGreaterThan(1);
        assertThat(support.whole().governs()).contains(new FirstToGive("hold-down", Mode.PULL));
        Balance balance = support.balances().get(0);
        assertThat(balance.leans()).isTrue();
        assertThat(balance.kept().by()).isEqualTo(Keeper.FASTENINGS);
        // weight and load together: 10 x 3.5 against 10w x 1 + 4 x 6
        assertThat(balance.kept().times()).hasValueCloseTo(35 / (10 * Held.WOOD + 24), within(1e-6));
        assertThat(balance.kept().governs()).contains(new FirstToGive("hold-down", Mode.PULL));
        assertThat(notices.sorted()).isEmpty();
    }

    @Test
    void without_loads_the_factor_is_that_on_the_weights() {
        Held shelf = HandStacks.shelfOnLedge();
        Whole whole = whole(new Held(shelf.section(), List.of(), shelf.joints()));
        assertThat(whole.answer()).isEqualTo(Answer.STANDS);
        assertThat(whole.loadFactor()).isEmpty();
        assertThat(whole.times()).hasValueCloseTo(35 / (10 * Held.WOOD), within(1e-6));
        assertThat(whole.factor()).isEqualTo(whole.times());
    }

    @Test
    void what_falls_is_a_problem_with_its_motion() {
        Held shelf = HandStacks.shelfOnLedge()
                .joints(joint ->
                        new Tie(joint.name(), joint.outer(), joint.inner(), joint.at(), joint.axis(), 0.1, 0.1));
        Whole whole = whole(new Held(shelf.section(), List.of(), shelf.joints()));
        assertThat(whole.answer()).isEqualTo(Answer.NO);
        assertThat(whole.underLoad()).isFalse();
        Fall.Part part = whole.falls().get(0).first();
        assertThat(shelf.names(part.pieces())).containsExactly("shelf");
        assertThat(part.way()).isEqualTo(Fall.Way.TIPS_OUT);
        assertThat(shelf.section().name(part.on().orElseThrow())).isEqualTo("ledge");
        assertThat(part.about().orElseThrow().distance(Point.ORIGIN)).isLessThan(1e-9);
        assertThat(part.stop()).as("it hangs on the ledge").isEmpty();
        Notice problem = notices.sorted().get(0);
        assertThat(problem.level()).isEqualTo(Level.PROBLEM);
        assertThat(problem.code()).isEqualTo("needs-holding");
    }

    @Test
    void what_moves_without_leaning_is_told_by_its_motion() {
        Held hung = Held.of(Bench.loose(
                        "name: post, kind: framing, section: [out 1, up 8], face: 0, top: 4",
                        "name: floor board, kind: framing, section: [out 10, up 1], back: 0, top: -6",
                        "name: rail, section: [out 1, up 3], back: 0, bottom: 0"))
                .nail("brad", "rail", "post", new Point(0, 1.5), 180, 5, 0);
        assertThat(whole(hung).answer()).isEqualTo(Answer.NO);
        assertThat(messages()).containsExactly("The stack does not stand: rail falls, 6 to floor board.");
        assertThat(notices.sorted().get(0).code()).isEqualTo("tips");
    }

    @Test
    void a_load_that_serves_as_ballast_does_not_make_a_stack_stand() {
        Held shelf = HandStacks.shelfOnLedge();
        Held ballast = new Held(shelf.section(), List.of(), List.of())
                .nail("weak", "shelf", "ledge", new Point(-3.5, 0), -90, 0.1, 0)
                .load("shelf", -3, 50);
        assertThat(ballast.balanceOn("ledge").leans()).as("under the load").isFalse();
        assertThat(whole(ballast).stands()).as("the day the books are lent").isFalse();
    }

    @Test
    void a_factor_just_under_1_is_not_rounded_up_to_it() {
        Held shelf = HandStacks.shelfOnLedge();
        Held heavy = shelf.loadsTimes(shelf.factor() / 0.998);
        assertThat(whole(heavy).loadFactor()).hasValueCloseTo(0.998, within(1e-6));
        assertThat(messages())
                .containsExactly("The stack takes only 0.99 times the loads; hold-down would draw out first.");
    }

    @Test
    void every_figure_says_what_it_leaves_out() {
        assertThat(Support.LEFT_OUT).contains("only push");
    }

    @Test
    void a_fixed_piece_that_bridges_two_bodies_is_not_told_to_be_held_but_is_trusted() {
        Held fixed = Held.of(Bench.loose(
                "name: one, kind: framing, section: [out 1, up 1], back: 0, top: 0",
                "name: two, kind: framing, section: [out 1, up 1], back: 2, top: 0",
                "name: arm, fixed: one, section: [out 20, up 1], back: 0, bottom: 0"));
        Support support = fixed.support(notices);
        assertThat(notices.sorted()).isEmpty();
        assertThat(support.balances()).isEmpty();
        assertThat(support.trust())
                .containsExactly(new Trust(fixed.number("arm"), OptionalInt.of(fixed.number("one")), Trust.Why.SAID));
    }
}
