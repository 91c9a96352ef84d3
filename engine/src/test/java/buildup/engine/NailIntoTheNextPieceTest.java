package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.judge.verdict.Topic;
import buildup.shared.document.edit.Editor;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A bead is nailed from below into the head that comes to stand on it, as door heads are built (common practice, no source).
 * By hand: a brad of 1-3/4 driven up through a bead 1/2 thick is 1-1/4 too long until the head is up.
 */
class NailIntoTheNextPieceTest {
    private static String doorHead(String brad) {
        return "wood: check-wood\nspace: { floor: -84, ceiling: 22, wall: { covering: 1/2 } }\npieces:\n"
                + "  - { name: bead, profile: board 1/2 x 1-1/2, lay: flat, back: wall, bottom: datum }\n"
                + "  - { name: head, profile: board 1 x 5-1/2, back: wall, bottom: bead.top }\n"
                + "fastenings:\n"
                + "  - { name: be, piece: bead, use: 18 ga x 1-3/4, " + brad + " }\n"
                + "  - { name: h, piece: head, use: 15 ga x 2-1/2, at: { up: 2 } }\n"
                + "  - { name: h2, piece: head, use: 15 ga x 2-1/2, at: { up: 4 } }\n";
    }

    private static String followed(String yaml, Topic topic) {
        Notice first = Answered.of(yaml).notices().stream()
                .filter(notice -> notice.level() == Level.PROBLEM && Topic.of(notice.code()) == topic)
                .findFirst()
                .orElseThrow();
        Notices unable = new Notices();
        Optional<String> edited = Editor.edit(
                "stack.yaml", yaml, NoticeWords.in(Answered.of(yaml).unit()).edits(first), unable);
        assertThat(unable.sorted()).isEmpty();
        return edited.orElseThrow();
    }

    private static List<String> problems(String yaml) {
        return Answered.messages(Answered.of(yaml), Level.PROBLEM);
    }

    @Test
    void it_is_told_to_be_driven_once_that_piece_is_up_and_what_falls_until_then_is_told_the_same() {
        String early = doorHead("at: { out: 3/4, up: bead.bottom }, angle: 15");
        assertThat(Answered.because(early, Topic.HELD)).contains("comes out of 'bead' by 1-1/4");
        assertThat(Answered.cure(early, Topic.HELD)).isEqualTo("Drive it after 'head' is up. [tried]");
        assertThat(Answered.cure(early, Topic.STANDS))
                .isEqualTo("It comes right with 'be' (18 ga x 1-3/4). Drive it after 'head' is up. [tried]");
        assertThat(problems(followed(early, Topic.STANDS))).isEmpty();
    }

    /** At 1/2 out a tool that drives square stands in the wall below: it takes both. */
    @Test
    void where_its_tool_would_stand_in_the_wall_it_is_told_with_the_tilt() {
        String square = doorHead("at: { out: 1/2, up: bead.bottom }");
        assertThat(Answered.cure(square, Topic.HELD))
                .startsWith("Drive it after 'head' is up. Tilt it ")
                .endsWith("[tried]");
        assertThat(Answered.cure(square, Topic.STANDS)).startsWith("It comes right with 'be'");
        assertThat(problems(followed(square, Topic.HELD))).isEmpty();
    }

    @Test
    void what_nothing_helps_still_says_so() {
        String loose = doorHead("at: { out: 3/4, up: bead.bottom }, angle: 15")
                .replace(
                        "fastenings:",
                        "  - { name: loose, profile: board 1/2 x 1-1/2, lay: flat, back: 20, bottom: 12 }\nfastenings:");
        assertThat(Answered.because(loose, Topic.HELD)).startsWith("'loose' has no nailer");
        assertThat(Answered.cure(loose, Topic.HELD)).startsWith("None of the changes tried cures this");
        assertThat(problems(loose)).anyMatch(said -> said.contains("It comes right with 'be'"));
    }
}
