package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answered;
import buildup.engine.Answers;
import buildup.engine.Bench;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.section.compose.Section;
import buildup.shared.document.edit.Editor;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is offered for what falls where rows of nails were looked for and none was found. */
class OfferedInsteadTest {
    private static String stack(String space, String... pieces) {
        return Bench.head("space: " + space) + Bench.list(pieces);
    }

    private static String loose(String... pieces) {
        return stack("{ wall: { solid: no } }", pieces);
    }

    private static List<Notice> told(Section section, List<Fixed> rows) {
        Notices notices = new Notices();
        SupportFaults.say(section, new Held(section, List.of(), List.of()).support(), Optional.of(rows), notices);
        return notices.sorted();
    }

    private static Notice only(String text) {
        List<Notice> told = told(Bench.sound(text).section(), List.of());
        assertThat(told).hasSize(1);
        return told.get(0);
    }

    private static Held typed(String text, Notice notice) {
        return Held.of(Bench.sound(Editor.edit("stack.yaml", text, NoticeWords.INCHES.edits(notice), new Notices())
                .orElseThrow()));
    }

    /** Ten wide, its middle 1 past the edge: it is set 1/8 inside it. */
    @Test
    void what_leans_out_is_set_back_and_what_leans_back_is_set_out_until_its_weight_is_well_on() {
        String out = loose(
                "name: ledge, kind: framing, section: [out 6, up 6], face: 0, top: 0",
                "name: shelf, section: [out 10, up 1], back: -4, bottom: 0");
        String back = loose(
                "name: ledge, kind: framing, section: [out 6, up 6], back: 0, top: 0",
                "name: shelf, section: [out 10, up 1], back: -6, bottom: 0");
        for (String text : List.of(out, back)) {
            Notice notice = only(text);
            assertThat(NoticeWords.INCHES.cure(notice))
                    .isEqualTo("Set 'shelf' %s by 1-1/8.".formatted(text.equals(out) ? "back" : "out"));
            assertThat(typed(text, notice).balance("shelf").margin()).isCloseTo(1.0 / 8, within(1e-9));
        }
    }

    @Test
    void what_hangs_in_the_air_before_the_wall_is_offered_a_block_behind_it() {
        String text = stack("{ wall: { solid: yes } }", "name: rail, profile: board 3/4 x 1-1/2, back: 2, bottom: 0");
        Notice notice = only(text);
        assertThat(NoticeWords.INCHES.cure(notice))
                .isEqualTo("Add a nailer 2 x 1-1/2 between 'rail' and 'wall', its top level with the piece.");
        assertThat(typed(text, notice).support().whole().stands()).isTrue();
    }

    /** Both nails end in the ceiling, of which nobody knows what it is made of. */
    @Test
    void what_is_nailed_into_the_ceiling_is_offered_the_joist_over_its_own_nail() {
        Answers answers = Answered.sound(Bench.head("space: { ceiling: 12, wall: { solid: no } }\nfastenings:\n"
                        + "  - { name: one, piece: near, use: 15 ga x 2-1/2, at: { out: 4, up: near.bottom } }\n"
                        + "  - { name: two, piece: far, use: 15 ga x 2-1/2, at: { out: 24, up: far.bottom } }\n")
                + Bench.list(
                        "name: near, profile: board 3/4 x 3, lay: flat, back: 2-1/2, top: ceiling",
                        "name: far, profile: board 3/4 x 3, lay: flat, back: 22-1/2, top: ceiling"));
        List<Notice> told = told(answers.section(), answers.fixed());
        assertThat(told).hasSize(2).allSatisfy(notice -> {
            String piece = notice.piece().orElseThrow();
            assertThat(NoticeWords.INCHES.cure(notice))
                    .startsWith("Find the joist and give it as a piece: 'kind: framing', 1-1/2 wide, its back at "
                            + (piece.equals("near") ? "3-1/4" : "23-1/4") + " out");
            assertThat(NoticeWords.INCHES.edits(notice).toString()).contains("joist over " + piece);
        });
        assertThat(told(answers.section(), List.of()))
                .as("without those rows")
                .hasSize(2)
                .allSatisfy(
                        notice -> assertThat(NoticeWords.INCHES.cure(notice)).doesNotContain("joist"));
    }

    /** NDS 2018 has no value for a nail in masonry (from memory); the brad in the post has one, which is too small. */
    @Test
    void who_nails_into_masonry_may_answer_for_just_what_is_nailed_there() {
        Answers answers = Answered.sound(Bench.head("""
                space: { floor: -90 }
                fastenings:
                  - { name: one, piece: lower, use: 15 ga x 2-1/2, at: { up: 3 } }
                  - { name: two, piece: upper, use: 15 ga x 2-1/2, at: { up: 13 } }
                  - { name: brad, piece: rail, use: 23 ga x 1-1/8, at: { up: 2 } }
                plan: [{ left: die, right: die, studs: masonry, stretches: [{ name: north, length: 90 }] }]
                loads: [{ name: coats, on: rail, out: 31, load: 90 lb/ft }]""")
                + Bench.list(
                        "name: lower, profile: board 3/4 x 5-1/2, back: wall, bottom: 0",
                        "name: upper, profile: board 3/4 x 5-1/2, back: wall, bottom: 10",
                        "name: post, kind: framing, section: [out 3, up 12], face: 30, top: 8",
                        "name: rail, profile: board 1 x 4, back: 30, bottom: 0"));
        List<Notice> told = told(answers.section(), answers.fixed());
        assertThat(told).hasSize(3);
        for (Notice notice : told) {
            String piece = notice.piece().orElseThrow();
            assertThat(NoticeWords.INCHES.cure(notice))
                    .as(piece)
                    .isEqualTo(
                            piece.equals("rail")
                                    ? NoticeWords.INCHES.cure(
                                            SupportNotices.FALLS.notice().cure(Cure.of(SupportNotices.NO_ROW)))
                                    : "No value is published for their nails there: carry it on a ledge, or answer for it"
                                            + " yourself by 'fixed: wall' on " + piece + ".");
            assertThat(NoticeWords.INCHES.edits(notice).toString())
                    .isEqualTo(
                            piece.equals("rail")
                                    ? "[]"
                                    : "[Set[place=pieces." + piece + ".fixed, value=Text[text=wall]]]");
        }
    }

    /** 1/500 past the edge is nearer than touching is told. */
    @Test
    void what_stands_on_the_very_edge_is_told_to_be_tipped_by_any_push() {
        String ledge = "name: ledge, kind: framing, section: [out 6, up 6], face: 0, top: 0";
        String shelf = "name: shelf, section: [out 10, up 1], back: -4.998, bottom: 0";
        String cap = "name: cap, section: [out 10, up 1], back: -4.998, bottom: 1";
        assertThat(NoticeWords.INCHES.message(only(loose(ledge, shelf))))
                .startsWith("shelf leans out: ")
                .endsWith("nearer than touching is told. Any push tips it.");
        assertThat(NoticeWords.INCHES.message(only(loose(ledge, shelf, cap))))
                .startsWith("shelf and cap lean out: ")
                .endsWith("nearer than touching is told. Any push tips them.");
    }
}
