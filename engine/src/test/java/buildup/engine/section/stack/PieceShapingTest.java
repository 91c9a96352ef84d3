package buildup.engine.section.stack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.section.placing.Placed;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What is done to a profile before it is placed. The sizes are those of the words in each test. */
class PieceShapingTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static final String BED = "profile: check-bed 1-1/4 x 1-3/8";
    private static final String BOARD = "profile: board 3/4 x 5-1/2";

    private static Placed placed(String what) {
        return Bench.loose("name: it, " + what + ", back: wall, bottom: datum").piece("it");
    }

    private static Outline outline(String what) {
        return placed(what).outline();
    }

    private static void refused(String what, String code, String message, String cure) {
        Bench bench = Bench.refused("name: it, " + what + ", back: wall, bottom: datum");
        assertThat(bench.refusals()).singleElement().satisfies(notice -> {
            assertThat(notice.code()).isEqualTo(code);
            assertThat(NoticeWords.INCHES.message(notice)).isEqualTo(message);
            assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo(cure);
            assertThat(notice.mark().orElseThrow().line()).isEqualTo(4);
        });
    }

    @Test
    void a_rip_takes_a_strip_off_an_edge_of_the_profile_as_drawn() {
        Box top = outline(BED + ", rip: { top: 1/4 }").box();
        assertThat(top.height()).isCloseTo(1.125, EXACT);
        Box back = outline(BED + ", rip: { back: 1/8 }").box();
        assertThat(back.width()).isCloseTo(1.125, EXACT);
        Box both = outline(BOARD + ", rip: { top: 1/2, face: 1/4 }").box();
        assertThat(List.of(both.width(), both.height())).containsExactly(0.5, 5.0);
    }

    @Test
    void a_rip_comes_before_the_turn() {
        Box box = outline(BED + ", rip: { top: 1/4 }, turn: 90").box();
        assertThat(box.width()).isCloseTo(1.125, EXACT);
    }

    @Test
    void a_ripped_board_has_a_smaller_blank() {
        assertThat(placed(BOARD + ", rip: { bottom: 1/2 }").blankWidth()).isCloseTo(5, EXACT);
    }

    @Test
    void a_rip_that_leaves_nothing_or_several_strips_is_refused() {
        refused(BED + ", rip: { top: 2 }", "rip-through", "'it': the rip leaves nothing.", "Rip 1-5/16 or less.");
        refused(
                "section: [out 1, up 1, in 3/4, up 1/2, out 3/4, up 1], rip: { back: 1/2 }",
                "rip-through",
                "'it': the rip leaves 2 separate strips.",
                "Rip 3/16 or less.");
        refused(
                BED + ", rip: { top: 0 }",
                "not-a-size",
                "'it': a rip takes off more than 0.",
                "Give how much comes off, as 1/4.");
    }

    @Test
    void a_board_laid_flat_has_its_width_level_and_its_members_named_as_it_sits() {
        Placed flat = placed(BOARD + ", lay: flat");
        assertThat(flat.outline().box()).isEqualTo(new Box(0, 0, 5.5, 0.75));
        assertThat(flat.outline().straights("top").get(0).length()).isCloseTo(5.5, EXACT);
        assertThat(flat.blankWidth()).isCloseTo(5.5, EXACT);
        assertThat(flat.blankThickness()).isCloseTo(0.75, EXACT);
    }

    @Test
    void only_boards_are_laid_flat() {
        refused(BED + ", lay: flat", "not-laid", "'it': only boards are laid flat.", "Turn it instead, as 'turn: 90'.");
        refused(BOARD + ", lay: down", "not-laid", "'it': a board is laid flat or stands.", "Write 'lay: flat'.");
    }

    @Test
    void a_turn_goes_counterclockwise_in_degrees() {
        Outline turned = outline(BED + ", turn: 90");
        // the face looks up, the back down: the fillet, upright before, is level and on top
        assertThat(turned.straights("fillet"))
                .singleElement()
                .satisfies(fillet -> assertThat(fillet.from().y()).isCloseTo(1.25, EXACT));
        assertThat(turned.straights("back").get(0).from().y()).isCloseTo(0, EXACT);
        assertThat(outline("section: [out 2, up 1], turn: 30").box().height())
                .isCloseTo(2 * Math.sin(Math.PI / 6) + Math.cos(Math.PI / 6), EXACT);
    }

    @Test
    void over_turns_upside_down_and_ends_turns_end_for_end() {
        Outline over = outline(BED + ", flip: over");
        assertThat(over.straights("bottom").get(0).from().y())
                .as("the narrow side is up")
                .isCloseTo(1.375, EXACT);
        assertThat(over.straights("back").get(0).from().x()).isCloseTo(0, EXACT);
        assertThat(placed(BED + ", flip: over").piece().flippedOver()).isTrue();
        Outline ends = outline(BED + ", flip: ends");
        assertThat(ends.straights("back").get(0).from().x())
                .as("the back looks to the room")
                .isCloseTo(1.25, EXACT);
        assertThat(ends.area()).isCloseTo(outline(BED).area(), EXACT);
        refused(
                BED + ", flip: round",
                "unknown-name",
                "'it': no way to flip a piece is called 'round'.",
                "Write over (upside down) or ends (back becomes face).");
    }

    @Test
    void a_flip_comes_after_the_turn() {
        Outline both = outline("section: [out 2 as foot, up 1, in 1, up 1], turn: 90, flip: over");
        // foot: bottom, turned to the face, still the face when upside down
        assertThat(both.straights("foot").get(0).from().x()).isCloseTo(2, EXACT);
    }

    @Test
    void a_spring_may_repeat_the_angle_of_the_flats() {
        String crown = "profile: check-crown-edged 9/16 x 3-1/4";
        assertThat(outline(crown + ", spring: 38")).isEqualTo(outline(crown));
        assertThat(outline(crown + ", spring: 38.4")).isEqualTo(outline(crown));
    }

    @Test
    void the_other_spring_is_the_same_stick_end_for_end_and_a_note_gives_both() {
        Bench bench =
                Bench.loose("name: crown, profile: check-crown 9/16 x 3-1/4, spring: 52, back: wall, bottom: datum");
        assertThat(bench.notices("spring-swapped")).singleElement().satisfies(notice -> {
            assertThat(notice.level()).isEqualTo(Level.NOTE);
            assertThat(NoticeWords.INCHES.message(notice))
                    .isEqualTo(
                            "38° from the wall gives 2.56 down, 2.00 out. Read as end for end: 2.00 down, 2.56 out.");
            assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("If you mean the common way, write 38°.");
        });
        Outline swapped = bench.piece("crown").outline();
        Outline common = outline("profile: check-crown 9/16 x 3-1/4");
        assertThat(swapped.area()).isCloseTo(common.area(), EXACT);
        assertThat(swapped.straights("wall-flat").get(0).from().x()).isCloseTo(0, EXACT);
        assertThat(swapped.straights("ceiling-flat").get(0).length())
                .isCloseTo(common.straights("wall-flat").get(0).length(), EXACT);
    }

    @Test
    void any_other_spring_is_refused() {
        refused(
                "profile: check-crown 9/16 x 3-1/4, spring: 45",
                "spring-swapped",
                "'it': its flats are cut for 38° from the wall, not for 45°.",
                "Write 38°, or 52° for end for end.");
        refused(
                BED + ", spring: 38",
                "not-sprung",
                "'it': only a sprung profile has a spring.",
                "Take 'spring:' out, or turn it.");
    }

    @Test
    void lay_turn_and_spring_exclude_each_other() {
        refused(
                BOARD + ", lay: flat, turn: 90",
                "doubled-rule",
                "'it': More than one of lay, turn and spring.",
                "Keep one of them.");
    }

    @Test
    void the_members_of_a_board_are_named_by_the_way_they_face() {
        Outline board = outline(BOARD + ", turn: 180");
        assertThat(board.straights("bottom").get(0).from().y()).isCloseTo(0, EXACT);
        assertThat(board.straights("face").get(0).from().x()).isCloseTo(0.75, EXACT);
        Outline askew = outline(BOARD + ", turn: 30");
        assertThat(askew.members()).containsExactlyInAnyOrder("back", "face", "bottom", "top");
        assertThat(askew.straights("top").get(0).direction(0).right().y()).isGreaterThan(0);
    }

    @Test
    void a_one_off_section_is_drawn_in_its_own_words() {
        Outline wedge = outline("section: [out 1, chamfer in 2 x 1]");
        assertThat(wedge.area()).isCloseTo(1, EXACT);
        assertThat(wedge.holds(new Point(0.1, 0.1))).isTrue();
        Placed one = placed("section: [out 1, chamfer in 2 x 1]");
        assertThat(one.piece().stock().name()).isEqualTo("section");
        assertThat(List.of(one.blankThickness(), one.blankWidth())).containsExactly(1.0, 2.0);
    }

    @Test
    void a_nominal_board_comes_from_the_list_that_the_stack_names() {
        // PS 20: nominal 1x4 is 3/4 x 3-1/2 dry, 25/32 x 3-9/16 green
        assertThat(outline("profile: 1x4").box()).isEqualTo(new Box(0, 0, 0.75, 3.5));
        Bench green = Bench.sound("boards: softwood-green\nwood: check-wood\npieces:\n"
                + "  - { name: it, profile: 1x4, back: wall, bottom: datum }\n");
        assertThat(green.box("it")).isEqualTo(new Box(0, 0, 25.0 / 32, 3 + 9.0 / 16));
        assertThat(green.stack().boardList()).isEqualTo("softwood-green");
    }
}
