package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answered;
import buildup.engine.Answers;
import buildup.engine.Bench;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where a row is looked for that holds what falls: in it, in what moves along, and at last where no tool gets in either. */
class WhereRowsGoTest {
    private static String stack(String more, String... pieces) {
        return Bench.head("space: { wall: { solid: no } }\n" + more) + Bench.list(pieces);
    }

    private static String load(String on, double out, double pounds) {
        return "loads: [ { name: books, on: %s, out: %s, load: %s lb/ft } ]\n".formatted(on, out, pounds);
    }

    private static String row(String piece, String use, String at) {
        return "fastenings: [ { name: row, piece: %s, use: %s, at: { %s }, spacing: 16 } ]\n".formatted(piece, use, at);
    }

    private static LeastRow best(Answers answers) {
        Support support = answers.support();
        assertThat(support.whole().answer()).isEqualTo(Support.Answer.NO);
        assertThat(support.cured()).isTrue();
        assertThat(support.proposed()).hasSize(1);
        return support.proposed().get(0);
    }

    /**
     * A block too thick for any nail lies on a plate and is screwed to it from below, 3 behind the plate's edge. The load
     * is 4 before that edge, the block's 98 square inches 1 behind it.
     */
    private static Answers block(double pounds, String use) {
        return Answered.sound(stack(
                load("block", 8, pounds)
                        + row("plate", use, "out: 1, up: plate.bottom")
                                .replace("spacing: 16", "spacing: 16, after: block"),
                "name: post, kind: framing, section: [out 2, up 6], face: 0, top: 0",
                "name: plate, fixed: post, profile: board 3/4 x 4, lay: flat, back: 0, top: 0",
                "name: block, section: [out 14, up 7], back: -4, bottom: 0"));
    }

    @Test
    void a_row_that_holds_from_below_what_cannot_be_nailed_itself_gives_its_place_to_a_stronger_one() {
        Answers answers = block(40, "18 ga x 1-1/2");
        LeastRow best = best(answers);
        assertThat(best.instead()).contains("row");
        assertThat(answers.section().name(best.nail().piece())).isEqualTo("plate");
        double moment = 40 * 4 - 98 * Held.WOOD * 1;
        for (LeastRow row : best.others()) {
            assertThat(row.needed() * row.nail().joints().get(0).pull() * 3).isCloseTo(moment, within(1e-6));
        }
        assertThat(best.needed() * best.nail().joints().get(0).pull() * 3).isCloseTo(moment, within(1e-6));
    }

    @Test
    void a_row_that_is_strong_enough_nail_by_nail_is_told_to_stand_closer() {
        LeastRow best = best(block(120, "screw 8 x 3"));
        assertThat(best.instead()).contains("row");
        assertThat(best.nail().fastening().use().call()).isEqualTo("screw 8 x 3");
        double each = best.nail().joints().get(0).pull() * 3;
        assertThat(best.needed()).isCloseTo((120 * 4 - 98 * Held.WOOD) / each, within(1e-6));
        assertThat(best.spacing()).isLessThan(16);
    }

    /** The lever lies on a post too thin for nails, its other end under a bridge that it lifts off its ledge. */
    @Test
    void what_is_lifted_is_held_down_where_what_falls_cannot_be() {
        Answers answers = Answered.sound(stack(
                load("lever", 8.5, 3),
                "name: far, kind: framing, section: [out 6, up 6], back: -20, top: 3/4",
                "name: post, kind: framing, section: [out 3/8, up 6], back: 2, top: 0",
                "name: lever, profile: board 3/4 x 12, lay: flat, back: -3, bottom: 0",
                "name: bridge, profile: board 3/4 x 18, lay: flat, back: -20, bottom: 3/4"));
        Fall fall = answers.support().whole().falls().get(0);
        assertThat(fall.first().pieces()).extracting(answers.section()::name).containsExactly("lever");
        LeastRow best = best(answers);
        assertThat(answers.section().name(best.nail().piece())).isEqualTo("bridge");
        assertThat(best.others()).isNotEmpty();
    }

    /** The same on a ledge that takes nails: the bridge could be nailed as well, and is not what tips. */
    @Test
    void what_falls_is_nailed_itself_where_it_can_be() {
        Answers answers = Answered.sound(stack(
                load("lever", 8.5, 3),
                "name: far, kind: framing, section: [out 6, up 6], back: -20, top: 3/4",
                "name: ledge, kind: framing, section: [out 4, up 6], back: -1, top: 0",
                "name: lever, profile: board 3/4 x 12, lay: flat, back: -3, bottom: 0",
                "name: bridge, profile: board 3/4 x 18, lay: flat, back: -20, bottom: 3/4"));
        assertThat(answers.support().whole().falls().get(0).pieces())
                .extracting(answers.section()::name)
                .containsExactly("lever", "bridge");
        LeastRow best = best(answers);
        assertThat(answers.section().name(best.nail().piece())).isEqualTo("lever");
        assertThat(best.others())
                .allSatisfy(row ->
                        assertThat(answers.section().name(row.nail().piece())).isEqualTo("lever"));
    }

    /** Framing lies 1-1/4 over the shelf, as deep as the shelf: no tool gets between, but whoever drove the row will again. */
    @Test
    void where_no_tool_gets_in_a_stronger_row_is_offered_only_where_one_stands_already() {
        String[] pieces = {
            "name: ledge, kind: framing, section: [out 3, up 6], face: 0, top: 0",
            "name: over, kind: framing, section: [out 24, up 4], back: -10, bottom: 2",
            "name: shelf, profile: board 3/4 x 18, lay: flat, back: -8, bottom: 0"
        };
        Answers nailed = Answered.sound(
                stack(load("shelf", 5, 5) + row("shelf", "18 ga x 1-1/4", "out: -2, up: shelf.top"), pieces));
        LeastRow best = best(nailed);
        assertThat(best.instead()).contains("row");
        assertThat(best.nail().reach().free()).isFalse();
        // the load 5 before the edge, the shelf's middle 1 before it, each nail 2 behind it
        double moment = 5 * 5 + 18 * 0.75 * Held.WOOD;
        assertThat(best.needed() * best.nail().joints().get(0).pull() * 2).isCloseTo(moment, within(1e-6));
        Support bare = Answered.sound(stack(load("shelf", 5, 5), pieces)).support();
        assertThat(bare.proposed()).isEmpty();
        assertThat(bare.cured()).isFalse();
    }

    /** Framing close over the shelf leaves its back edge, and there the long screw that is found first is the best screw too. */
    @Test
    void no_row_is_told_twice() {
        LeastRow best = best(Answered.sound(stack(
                load("shelf", 5, 5),
                "name: ledge, kind: framing, section: [out 6, up 6], face: 0, top: 0",
                "name: over, kind: framing, section: [out 20, up 4], back: -8, bottom: 2",
                "name: shelf, profile: board 3/4 x 10, lay: flat, back: -4, bottom: 0")));
        List<LeastRow> all = new ArrayList<>(best.others());
        all.add(best);
        assertThat(all)
                .extracting(row ->
                        row.nail().head() + " " + row.nail().fastening().use().call() + " "
                                + row.nail().fastening().angle())
                .doesNotHaveDuplicates();
    }

    /** With the load on its back end it stands; the row has to hold it without. */
    @Test
    void what_only_its_load_keeps_has_a_row_that_holds_it_without_that() {
        Answers answers = Answered.sound(stack(
                load("shelf", -3, 20),
                "name: ledge, kind: framing, section: [out 6, up 6], face: 0, top: 0",
                "name: shelf, profile: board 3/4 x 10, lay: flat, back: -4, bottom: 0"));
        LeastRow best = best(answers);
        double behind = -best.nail().head().x();
        assertThat(best.nail().fastening().angle()).isZero();
        assertThat(best.needed() * best.nail().joints().get(0).pull() * behind)
                .isCloseTo(7.5 * Held.WOOD * 1, within(1e-6));
    }

    /** A board of 8-1/4 square inches under two joists, the one from 0 to 1, the other from 10 to 11. */
    private static Answers underJoists(double out, double pounds, String... rows) {
        return underJoists("1", out, pounds, rows);
    }

    private static Answers underJoists(String far, double out, double pounds, String... rows) {
        StringBuilder fastenings = new StringBuilder("fastenings:\n");
        for (String row : rows) {
            fastenings.append("  - { piece: board, spacing: 16, ").append(row).append(" }\n");
        }
        return Answered.sound(stack(
                load("board", out, pounds) + fastenings,
                "name: near, kind: framing, section: [out 1, up 6], back: 0, bottom: 0",
                "name: far, kind: framing, section: [out " + far + ", up 6], face: 11, bottom: 0",
                "name: board, profile: board 3/4 x 11, lay: flat, back: 0, top: 0"));
    }

    /**
     * So many of both rows as turning about the one outer end or about the other asks. A screw of either row counts at its
     * distance from that end, the nearer one too: the joist pushes down beside it.
     */
    private static double perFoot(Support support, double out, double pounds) {
        double own = 8.25 * Held.WOOD * 5.5;
        double aboutBack = 0;
        double aboutFace = 0;
        for (LeastRow row : support.proposed()) {
            double pull = row.nail().joints().get(0).pull();
            aboutBack += pull * row.nail().head().x();
            aboutFace += pull * (11 - row.nail().head().x());
        }
        return Math.max((pounds * out + own) / aboutBack, (pounds * (11 - out) + own) / aboutFace);
    }

    private static void held(Answers answers, double out, double pounds, List<Optional<String>> instead) {
        Support support = answers.support();
        assertThat(support.whole().answer()).isEqualTo(Support.Answer.NO);
        assertThat(support.cured()).isTrue();
        assertThat(support.proposed()).extracting(LeastRow::instead).containsExactlyElementsOf(instead);
        double count = perFoot(support, out, pounds);
        for (LeastRow row : support.proposed()) {
            assertThat(row.needed()).isCloseTo(count, within(1e-6));
            assertThat(row.fall()).isZero();
            assertThat(row.nail().fastening().first())
                    .as("nothing is in their way")
                    .isZero();
            assertThat(row.spacing())
                    .isEqualTo(List.of(16.0, 12.0, 8.0, 6.0, 4.0).stream()
                            .filter(spacing -> 12 / spacing >= count)
                            .findFirst()
                            .orElseThrow());
        }
    }

    @Test
    void two_rows_share_what_neither_holds_and_give_their_place_where_rows_stand_already() {
        String pin = "name: pin, use: 23 ga x 1-1/8, at: { out: 5, up: board.bottom }";
        String one = "name: one, use: 18 ga x 1-1/2, at: { out: 1/2, up: board.bottom }";
        String two = "name: two, use: 18 ga x 1-1/2, at: { out: 10-1/2, up: board.bottom }";
        for (double pounds : new double[] {20, 60, 140}) {
            held(underJoists(5.5, pounds, pin), 5.5, pounds, List.of(Optional.empty(), Optional.empty()));
            held(underJoists(3, pounds, pin), 3, pounds, List.of(Optional.empty(), Optional.empty()));
        }
        for (double pounds : new double[] {60, 200}) {
            held(underJoists(5.5, pounds, one, two), 5.5, pounds, List.of(Optional.of("one"), Optional.of("two")));
            held(underJoists(5.5, pounds, one), 5.5, pounds, List.of(Optional.empty(), Optional.of("one")));
        }
        Support hopeless = underJoists(5.5, 300, pin).support();
        assertThat(hopeless.proposed()).as("3 in a foot hold 229").isEmpty();
        assertThat(hopeless.cured()).isFalse();
    }

    /** Under a joist 3 wide there are several places for the second row: with the best a nail every 12 is enough. */
    @Test
    void of_two_rows_those_whose_nails_stand_farthest_apart_are_told() {
        String pin = "name: pin, use: 23 ga x 1-1/8, at: { out: 5, up: board.bottom }";
        assertThat(underJoists("3", 3, 60, pin).support().proposed())
                .extracting(LeastRow::spacing)
                .containsExactly(12.0, 12.0);
    }
}
