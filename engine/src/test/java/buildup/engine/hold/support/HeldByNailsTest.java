package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answered;
import buildup.engine.Answers;
import buildup.engine.Bench;
import buildup.engine.hold.statics.Tie;
import buildup.engine.hold.support.Balance.Keeper;
import buildup.engine.hold.support.Support.Answer;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What nails do for the pieces that they go through, and what is said of a stack that rests on more than contacts. */
class HeldByNailsTest {
    private static Set<String> names(Section section, Set<Integer> bodies) {
        return bodies.stream().map(section::name).collect(Collectors.toSet());
    }

    private static Section nailed(String fastenings, String... pieces) {
        return Answered.sound(
                        Bench.head("space: { wall: { solid: no } }\nfastenings:\n" + fastenings) + Bench.list(pieces))
                .section();
    }

    private static final String[] CHAIN = {
        "name: post, kind: framing, section: [out 3, up 12], face: 0, top: 8",
        "name: frieze, profile: board 3/4 x 3, back: 0, bottom: 0",
        "name: board, profile: board 3/4 x 3, back: 3/4, bottom: 0",
        "name: bed, profile: board 3/4 x 3, back: 1-1/2, bottom: 0",
        "name: strip, profile: board 3/4 x 3, back: 2-1/4, bottom: 0",
        "name: stray, profile: board 3/4 x 3, back: 20, bottom: 0",
        "name: astray, profile: board 3/4 x 3, back: 20.75, bottom: 0"
    };

    private static String nail(String piece, String use, String at) {
        return "  - { name: in %s, piece: %s, use: %s, at: { %s } }\n".formatted(piece, piece, use, at);
    }

    /** Each is nailed to the one behind it, the last to the post; two are nailed to each other in the air. */
    @Test
    void a_nail_pins_a_piece_to_what_is_pinned_itself_however_long_the_chain_and_two_in_the_air_to_nothing() {
        Section section = nailed(
                nail("strip", "18 ga x 1-1/4", "out: strip.face, up: 2-1/2")
                        + nail("bed", "18 ga x 1-1/4", "out: bed.face, up: 1-1/2")
                        + nail("board", "18 ga x 1-1/4", "out: board.face, up: 1/2")
                        + nail("frieze", "15 ga x 2-1/2", "out: frieze.face, up: 2")
                        + nail("astray", "18 ga x 1-1/4", "out: astray.face, up: 1"),
                CHAIN);
        assertThat(names(section, section.fastened().given()))
                .containsExactlyInAnyOrder("strip", "bed", "board", "frieze", "astray");
        assertThat(names(section, section.fastened().held())).containsExactly("frieze");
        assertThat(names(section, section.fastened().pinned()))
                .containsExactlyInAnyOrder("strip", "bed", "board", "frieze");
    }

    @Test
    void where_the_last_nail_is_missing_none_of_the_chain_is_pinned() {
        Section section = nailed(
                nail("strip", "18 ga x 1-1/4", "out: strip.face, up: 2-1/2")
                        + nail("bed", "18 ga x 1-1/4", "out: bed.face, up: 1-1/2")
                        + nail("frieze", "18 ga x 5/8", "out: frieze.face, up: 2"),
                CHAIN);
        assertThat(section.fastened().held()).as("its nail ends in itself").isEmpty();
        assertThat(section.fastened().pinned()).isEmpty();
    }

    /** The nail goes 3/4 through the board, then 1/4 through air, then through the strip, then into the post. */
    @Test
    void a_nail_is_taken_to_pull_where_it_first_enters_what_it_bites_in() {
        Answers answers = Answered.sound(Bench.head("space: { wall: { solid: no } }\nfastenings:\n"
                        + nail("board", "15 ga x 2-1/2", "out: board.face, up: 1"))
                + Bench.list(
                        "name: post, kind: framing, section: [out 3, up 12], face: 0, top: 8",
                        "name: strip, kind: nailer, profile: board 3/4 x 3, back: 0, bottom: 0",
                        "name: board, profile: board 3/4 x 3, back: 1, bottom: 0"));
        List<Tie> ties = Ties.of(answers.fixed());
        assertThat(ties).hasSize(2);
        Section section = answers.section();
        assertThat(ties).extracting(tie -> section.name(tie.outer())).containsExactly("board", "strip");
        assertThat(ties).extracting(tie -> section.name(tie.inner())).containsExactly("strip", "post");
        assertThat(ties.get(0).at().x()).isEqualTo(0.75, within(1e-9));
        assertThat(ties.get(1).at().x()).isEqualTo(0, within(1e-9));
        assertThat(ties).allSatisfy(tie -> assertThat(tie.at().y()).isEqualTo(1, within(1e-9)));
    }

    /** NDS 2018, 12.2.3.4 (from memory): nails along the grain are not loaded in withdrawal. */
    @Test
    void a_nail_along_the_grain_pins_nothing() {
        for (String grain : List.of("up", "out")) {
            Section section = nailed(
                    nail("board", "15 ga x 2-1/2", "out: board.face, up: 1"),
                    "name: post, kind: framing, section: [out 3, up 12], face: 0, top: 8, grain: " + grain,
                    "name: board, profile: board 3/4 x 3, back: 0, bottom: 0");
            boolean across = grain.equals("up");
            assertThat(names(section, section.fastened().given())).containsExactly("board");
            assertThat(names(section, section.fastened().held()))
                    .as("grain " + grain)
                    .isEqualTo(across ? Set.of("board") : Set.of());
            assertThat(names(section, section.fastened().pinned())).isEqualTo(across ? Set.of("board") : Set.of());
        }
    }

    private final Notices notices = new Notices();

    private List<String> messages() {
        return notices.sorted().stream().map(NoticeWords.INCHES::message).toList();
    }

    @Test
    void a_gap_that_has_to_close_first_is_said_with_its_width_and_where() {
        Held head = HandStacks.headOffTheWall(60).decided();
        Support support = head.support(notices);
        assertThat(support.whole().answer()).isEqualTo(Answer.TRUST);
        assertThat(messages())
                .hasSize(1)
                .allSatisfy(message -> assertThat(message)
                        .startsWith("The stack stands once a gap has closed: board and shelf turn")
                        .contains("1/16 has closed to wall piece"));
        assertThat(notices.sorted().get(0).piece()).contains("board");
    }

    @Test
    void what_rests_on_trust_is_listed_with_why_and_on_what() {
        Held held = Held.of(Bench.loose(
                "name: case, kind: framing, section: [out 4, up 8], face: 0, top: 4",
                "name: frieze, section: [out 1, up 4], back: 0, bottom: 0",
                "name: bed, section: [out 1, up 2], back: 1, bottom: 2",
                "name: cap, section: [out 3, up 1], back: 0, bottom: 3-1/2"));
        int frieze = held.number("frieze");
        List<Trust> trust = held.support().trust();
        assertThat(trust)
                .contains(
                        new Trust(frieze, OptionalInt.of(held.number("case")), Trust.Why.COUNTS_AS_FIXED),
                        new Trust(held.number("bed"), OptionalInt.of(frieze), Trust.Why.HANGS),
                        new Trust(held.number("cap"), OptionalInt.of(frieze), Trust.Why.OVERLAPS));
    }

    /** Two shelves; the load on the one says nothing of how many times over the other is held. */
    @Test
    void how_many_times_over_a_group_is_held_counts_its_own_weight_and_loads_alone() {
        Held held = Held.of(Bench.loose(
                        "name: low, kind: framing, section: [out 4, up 4], face: 0, top: 0",
                        "name: high, kind: framing, section: [out 4, up 4], face: 0, top: 20",
                        "name: light, section: [out 10, up 1], back: -4, bottom: 0",
                        "name: heavy, section: [out 10, up 1], back: -4, bottom: 20"))
                .nail("hold-down", "light", "low", new Point(-3.5, 0), -90, 10, 10)
                .nail("hold-down", "heavy", "high", new Point(-3.5, 20), -90, 10, 10)
                .load("heavy", 5, 3)
                .decided();
        Support support = held.support();
        assertThat(support.whole().answer()).isEqualTo(Answer.STANDS);
        Balance light = support.balances().stream()
                .filter(one -> one.piece() == held.number("light"))
                .findFirst()
                .orElseThrow();
        Balance heavy = support.balances().stream()
                .filter(one -> one.piece() == held.number("heavy"))
                .findFirst()
                .orElseThrow();
        // 10 x 3.5 about the edge, against the middle of 10 square inches 1 before it, and 3 pounds 5 before it
        assertThat(light.kept().by()).isEqualTo(Keeper.FASTENINGS);
        assertThat(light.kept().times()).hasValueCloseTo(35 / (10 * Held.WOOD), within(1e-6));
        assertThat(heavy.kept().times()).hasValueCloseTo(35 / (10 * Held.WOOD + 15), within(1e-6));
    }

    /** Without its load it leans and its nail keeps it; the load on its back end takes the lean away. */
    @Test
    void what_leans_without_its_loads_alone_is_not_forgotten() {
        Held held = Held.of(Bench.loose(
                        "name: low, kind: framing, section: [out 4, up 4], face: 0, top: 0",
                        "name: shelf, section: [out 10, up 1], back: -4, bottom: 0"))
                .nail("hold-down", "shelf", "low", new Point(-3.5, 0), -90, 10, 10)
                .load("shelf", -3, 5)
                .decided();
        Support support = held.support();
        assertThat(support.whole().answer()).isEqualTo(Answer.STANDS);
        assertThat(support.whole().loadFactor()).as("the load only helps").isEmpty();
        assertThat(support.whole().governs()).isEmpty();
        assertThat(support.balances()).singleElement().satisfies(balance -> {
            assertThat(balance.leans()).isFalse();
            assertThat(balance.kept().by()).isEqualTo(Keeper.WEIGHT);
        });
    }

    /** The nail goes on through a furring strip into the post: the strip stands by itself. */
    @Test
    void framing_that_a_nail_goes_through_is_not_among_what_nails_hold() {
        Section section = nailed(
                nail("board", "15 ga x 2-1/2", "out: board.face, up: 1"),
                "name: post, kind: framing, section: [out 3, up 12], face: 0, top: 8",
                "name: strip, kind: framing, section: [out 1/2, up 3], back: 0, bottom: 0",
                "name: board, profile: board 3/4 x 3, back: 1/2, bottom: 0");
        assertThat(names(section, section.fastened().held())).containsExactly("board");
        assertThat(names(section, section.fastened().pinned())).containsExactly("board");
    }

    /** The load stands on a block that nothing moves; the shelf beside it is held by its nail. */
    @Test
    void where_loads_do_not_matter_what_governs_the_weights_is_told() {
        Held held = Held.of(Bench.loose(
                        "name: ledge, kind: framing, section: [out 4, up 4], face: 0, top: 0",
                        "name: base, kind: framing, section: [out 4, up 4], back: 20, top: 0",
                        "name: shelf, section: [out 10, up 1], back: -4, bottom: 0",
                        "name: block, section: [out 2, up 2], back: 21, bottom: 0"))
                .nail("hold-down", "shelf", "ledge", new Point(-3.5, 0), -90, 10, 10)
                .load("block", 22, 40)
                .decided();
        Support.Whole whole = held.support().whole();
        assertThat(whole.loadFactor()).isEmpty();
        assertThat(whole.times()).hasValueCloseTo(35 / (10 * Held.WOOD), within(1e-6));
        assertThat(whole.governs().orElseThrow().name()).isEqualTo("hold-down");
        assertThat(whole.factor()).isEqualTo(whole.times());
    }

    /** No nail is there to give: what tips is told, not how much of the load a nail takes. */
    @Test
    void a_stack_that_its_loads_tip_over_an_edge_is_told_by_what_leans() {
        Held bare = HandStacks.boardOnTwoPosts();
        new Held(bare.section(), bare.loads(), List.of()).support(notices);
        assertThat(notices.sorted()).extracting(notice -> notice.code()).containsExactly("needs-holding");
    }

    /** Of two things only the one that moves is kept by nothing. */
    @Test
    void what_stands_beside_something_that_falls_is_kept_as_before() {
        Held held = Held.of(Bench.loose(
                "name: ledge, kind: framing, section: [out 14, up 4], back: -4, top: 0",
                "name: block, section: [out 2, up 2], back: 0, bottom: 0",
                "name: shelf, section: [out 10, up 1], back: 7, bottom: 0",
                "name: lever, section: [out 6, up 1], back: 15, bottom: 1"));
        Support support = held.support();
        assertThat(support.whole().answer()).isEqualTo(Answer.NO);
        assertThat(support.balances())
                .filteredOn(one -> one.group().contains(held.number("block")))
                .allSatisfy(one -> assertThat(one.kept().by()).isEqualTo(Keeper.WEIGHT));
        assertThat(support.balances())
                .filteredOn(one -> held.names(one.group()).equals(List.of("lever")))
                .singleElement()
                .satisfies(one -> assertThat(one.kept().by()).isEqualTo(one.leans() ? Keeper.NOTHING : Keeper.WEIGHT));
    }

    /** An apron under the front of a shelf hangs on the nails that are driven down through the shelf. */
    @Test
    void nails_driven_into_a_piece_hold_it_as_its_own_would() {
        String[] shelf = {
            "name: ledger, kind: nailer, profile: board 1-1/2 x 2-1/2, back: 0, top: 0",
            "name: post, kind: framing, section: [out 3, up 12], face: 0, top: 8",
            "name: apron, profile: board 3/4 x 4, back: 8, top: 0",
            "name: shelf, profile: board 3/4 x 9-1/4, lay: flat, back: 0, bottom: 0"
        };
        String firm = nail("ledger", "screw 10 x 3-1/2", "out: ledger.face, up: -1-1/2")
                + nail("shelf", "screw 8 x 2", "out: 3/4, up: shelf.top");
        String down = "  - { name: down, piece: shelf, use: 15 ga x 2, at: { out: 8-3/8, up: shelf.top } }\n";
        Section hung = nailed(firm + down, shelf);
        assertThat(names(hung, hung.fastened().pinned())).contains("apron");
        assertThat(names(hung, hung.fastened().given())).contains("apron");
        Section loose = nailed(firm, shelf);
        assertThat(names(loose, loose.fastened().given())).doesNotContain("apron");
    }

    /** A shelf of 9 square inches, its middle 4-1/2 out, its back flat on a post, on a ledge from so far to so far out. */
    private static Held shelf(String ledge, String back) {
        return Held.of(Bench.loose(
                "name: post, kind: framing, section: [out 1, up 14], face: 0, top: 10",
                "name: ledge, kind: framing, section: [out " + ledge + ", up 4], back: " + back + ", top: 0",
                "name: shelf, section: [out 9, up 1], back: 0, bottom: 0",
                "name: block, section: [out 1, up 1], back: 20, bottom: 0",
                "name: base, kind: framing, section: [out 4, up 4], back: 19, top: 0"));
    }

    private static Trust.Why why(Held held) {
        return held.support().trust().stream()
                .filter(trust -> trust.piece() == held.number("shelf"))
                .findFirst()
                .orElseThrow()
                .why();
    }

    @Test
    void what_counts_as_fixed_and_falls_past_its_bearing_is_told_with_loads_or_nails_or_without() {
        Point nail = new Point(20.5, 0);
        for (Held off : List.of(shelf("4", "0"), shelf("4", "5"))) {
            assertThat(why(off)).as("9 out by a flat of 1").isEqualTo(Trust.Why.FALLS_UNLESS_FIXED);
            assertThat(why(off.load("block", 20.5, 5))).isEqualTo(Trust.Why.FALLS_UNLESS_FIXED);
            assertThat(why(off.nail("other", "block", "base", nail, -90, 5, 5)))
                    .isEqualTo(Trust.Why.FALLS_UNLESS_FIXED);
            assertThat(why(off.load("shelf", 4.5, 1e-3))).isEqualTo(Trust.Why.FALLS_UNLESS_FIXED);
        }
        Held on = shelf("5", "0");
        assertThat(why(on.nail("other", "block", "base", nail, -90, 5, 5))).isEqualTo(Trust.Why.COUNTS_AS_FIXED);
        // 9 W at 1/2 behind the edge at 5, the load 2 before it
        double most = 9 * Held.WOOD * 0.5 / 2;
        assertThat(why(on.load("shelf", 7, 0.99 * most))).isEqualTo(Trust.Why.COUNTS_AS_FIXED);
        assertThat(why(on.load("shelf", 7, 1.01 * most))).isEqualTo(Trust.Why.FALLS_UNLESS_FIXED);
        // as far behind the edge at 4, the load 1 behind it
        double least = 9 * Held.WOOD * 0.5 / 1;
        assertThat(why(shelf("4", "4").load("shelf", 3, 0.99 * least))).isEqualTo(Trust.Why.COUNTS_AS_FIXED);
        assertThat(why(shelf("4", "4").load("shelf", 3, 1.01 * least))).isEqualTo(Trust.Why.FALLS_UNLESS_FIXED);
    }
}
