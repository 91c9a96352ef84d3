package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.hold.statics.FirstToGive;
import buildup.engine.hold.statics.LoadPath;
import buildup.engine.hold.statics.Tie;
import buildup.engine.hold.support.Support.Answer;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Worked example D of reference/worked-examples.md: does the backband carry the frieze? This project's own arithmetic; the
 * datum is the top of the backband.
 */
class DoorHeadSupportTest {
    private static final Offset<Double> NEAR = within(0.001);

    private static final String CASING = "name: casing, profile: board 3/4 x 3-1/2, back: wall, top: datum - 1-1/8";
    private static final String BACKBAND =
            "name: backband, profile: check-backband 1-5/8 x 1-1/2, back: wall, at: { shoulder: casing.top }";
    private static final String REAR =
            "name: frieze back, kind: nailer, profile: board 3/4 x 9-1/4, back: 1/16, bottom: backband.top";
    private static final String FRIEZE =
            "name: frieze, profile: board 3/4 x 9-1/4, back: frieze back.face, bottom: backband.top";

    private static final Held HEAD = head(
            CASING,
            BACKBAND,
            REAR,
            FRIEZE,
            "name: bed, profile: check-bed 1-1/4 x 1-1/4, back: frieze.face, top: frieze.top",
            "name: soffit, profile: board 3/4 x 5-1/2, lay: flat, back: 1/16, face: 5-1/16, bottom: frieze.top",
            "name: cap, profile: board 3/4 x 7-1/4, lay: flat, back: 1/16, face: 6-1/16, bottom: soffit.top");

    private static Held head(String... pieces) {
        return Held.of(Bench.in("{ wall: { from: -4-5/8, covering: 1/2 } }", pieces));
    }

    @Test
    void the_head_stands_on_the_flat_of_the_backband() {
        Balance balance = HEAD.balanceOn("backband");
        assertThat(HEAD.names(balance.group())).containsExactly("frieze back", "frieze", "bed", "soffit", "cap");
        assertThat(balance.bearingBack()).isCloseTo(0.0625, NEAR);
        assertThat(balance.bearingFace()).isCloseTo(1.5, NEAR);
        assertThat(balance.bearing()).isCloseTo(1.4375, NEAR);
        assertThat(balance.weight()).isCloseTo(4.668, NEAR);
        assertThat(balance.resultant()).isCloseTo(1.5809, NEAR);
    }

    @Test
    void its_weight_alone_falls_past_the_bearing() {
        Balance balance = HEAD.balanceOn("backband");
        assertThat(balance.leans()).isTrue();
        assertThat(balance.margin()).isCloseTo(-0.0809, NEAR);
        assertThat(ownMargin(balance)).isCloseTo(-0.0809, NEAR);
        assertThat(balance.overturning()).isCloseTo(0.378, NEAR);
        // 9 over the ledge
        assertThat(balance.holdBack()).hasValueCloseTo(0.378 / 9, NEAR);
    }

    @Test
    void a_load_on_the_cap_needs_a_pull_of_10_04_nine_inches_up() {
        Balance balance = HEAD.load("cap", 6, 20).balanceOn("backband");
        assertThat(balance.load()).isCloseTo(20, NEAR);
        assertThat(balance.overturning()).isCloseTo(90.378, within(0.005));
        assertThat(balance.holdAt().x()).isCloseTo(0.0625, NEAR);
        assertThat(balance.holdAt().y()).isCloseTo(9, NEAR);
        assertThat(balance.holdBack()).hasValueCloseTo(10.04, within(0.005));
        assertThat(ownMargin(balance)).as("the load is not the weight").isCloseTo(-0.0809, NEAR);
    }

    @Test
    void the_frieze_alone_stands_within_the_middle_third() {
        Held frieze = head(CASING, BACKBAND, REAR, FRIEZE);
        Balance balance = frieze.balanceOn("backband");
        assertThat(balance.resultant()).isCloseTo(0.8125, NEAR);
        assertThat(balance.leans()).isFalse();
        // middle third 0.542 to 1.021
        assertThat(balance.bearingBack() + balance.bearing() / 3).isCloseTo(0.542, NEAR);
        assertThat(balance.bearingFace() - balance.bearing() / 3).isCloseTo(1.021, NEAR);
        assertThat(balance.middleThirdMargin()).isCloseTo(1.021 - 0.8125, NEAR);
        assertThat(balance.overturning()).isZero();
        assertThat(balance.holdBack()).isEmpty();
        assertThat(balance.holdDown()).isEmpty();
    }

    @Test
    void a_problem_says_how_far_it_leans_and_what_would_hold_it() {
        Notices notices = new Notices();
        Support support = HEAD.load("cap", 6, 20).support(notices);
        assertThat(support.whole().answer()).isEqualTo(Answer.NO);
        Notice problem = notices.sorted().stream()
                .filter(one -> one.code().equals("needs-holding"))
                .filter(one -> NoticeWords.INCHES.message(one).contains("past backband"))
                .findFirst()
                .orElseThrow();
        assertThat(problem.level()).isEqualTo(Level.PROBLEM);
        assertThat(NoticeWords.INCHES.message(problem))
                .isEqualTo("frieze back, frieze and 3 more lean out: 24.67 lb a foot falls 3-11/16- past backband."
                        + " To stand, hold back 10.04 lb a foot at 9 up, or down 96.40 lb a foot at 9/16 out.");
        assertThat(NoticeWords.INCHES.cure(problem))
                .isEqualTo("Give the fastenings that hold it, or bring its weight back.");
        assertThat(problem.amount().orElseThrow().amount()).isCloseTo(90.378 / 24.668, NEAR);
        assertThat(problem.mark().orElseThrow().line()).isEqualTo(6);
    }

    /** The head nailed up: two nails at 9, brads that keep the foot from sliding, and glue between its own parts. */
    private static Held nailed(double pull) {
        return HEAD.weld("casing", "wall", new Point(0, -3))
                .weld("backband", "wall", new Point(0, -0.9))
                .nail("two nails", "frieze back", "wall", new Point(0, 9), 180, pull, 0)
                .nail("brads", "frieze back", "backband", new Point(0.5, 0), -90, 0, 100)
                .weld("frieze", "frieze back", new Point(0.8125, 4))
                .weld("bed", "frieze", new Point(1.5625, 8))
                .weld("soffit", "frieze", new Point(1, 9.25))
                .weld("cap", "soffit", new Point(1, 10));
    }

    @Test
    void two_nails_of_7_45_take_three_quarters_of_the_load() {
        Held head = nailed(7.45).load("cap", 6, 20);
        double limit = (7.45 * 9 - 0.378) / 90;
        assertThat(head.factor()).isCloseTo(limit, NEAR);
        Notices notices = new Notices();
        Support.Whole whole = head.decided().support(notices).whole();
        assertThat(whole.answer()).isEqualTo(Answer.NO);
        assertThat(whole.underLoad()).as("it stands without its load").isTrue();
        assertThat(whole.loadFactor()).hasValueCloseTo(limit, NEAR);
        assertThat(whole.governs()).contains(new FirstToGive("two nails", FirstToGive.Mode.PULL));
        Notice problem = notices.sorted().get(0);
        assertThat(problem.level()).isEqualTo(Level.PROBLEM);
        assertThat(problem.code()).isEqualTo("load-too-much");
        assertThat(NoticeWords.INCHES.message(problem))
                .isEqualTo("The stack takes only 0.74 times the loads; two nails would draw out first.");
        assertThat(NoticeWords.INCHES.cure(problem)).isEqualTo("Strengthen that, or take load off.");
    }

    @Test
    void a_pull_of_10_05_carries_the_load() {
        Notices notices = new Notices();
        Held head = nailed(10.05).load("cap", 6, 20);
        assertThat(head.decided().support(notices).whole().loadFactor().orElseThrow())
                .isBetween(1.0, 1.01);
        assertThat(notices.sorted()).isEmpty();
    }

    @Test
    void without_friction_a_nail_at_the_top_alone_lets_the_foot_slide() {
        Held slides = nailed(100)
                .joints(joint -> joint.name().equals("brads")
                        ? new Tie("brads", joint.outer(), joint.inner(), joint.at(), joint.axis(), 0, 0)
                        : joint);
        assertThat(slides.limit()).isEmpty();
    }

    @Test
    void every_piece_of_the_head_is_carried_by_the_casing_in_the_end() {
        LoadPath path = HEAD.path();
        assertThat(HEAD.names(path.restsOn(HEAD.number("backband")))).containsExactly("casing");
        assertThat(HEAD.names(path.restsOn(HEAD.number("frieze")))).containsExactly("backband");
        assertThat(HEAD.names(path.restsOn(HEAD.number("bed"))))
                .as("it hangs on the frieze")
                .containsExactly("frieze");
        assertThat(HEAD.names(path.restsOn(HEAD.number("soffit"))))
                .as("the bed only hangs")
                .containsExactly("frieze back", "frieze");
        assertThat(HEAD.names(path.through(HEAD.number("backband"))))
                .containsExactly("backband", "frieze back", "frieze", "bed", "soffit", "cap");
        assertThat(HEAD.names(path.through(HEAD.number("frieze"))))
                .as("the soffit has two ways down")
                .containsExactly("frieze", "bed");
        for (String name : List.of("casing", "backband", "frieze back", "frieze", "bed", "soffit", "cap")) {
            assertThat(path.reachesGround(HEAD.number(name))).as(name).isTrue();
        }
    }

    /** The margin of the weight alone, without loads. */
    private static double ownMargin(Balance balance) {
        return Math.min(balance.resultant() - balance.bearingBack(), balance.bearingFace() - balance.resultant());
    }
}
