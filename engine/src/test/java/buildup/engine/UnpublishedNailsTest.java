package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.hold.support.Support;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Topic;
import buildup.shared.document.edit.Editor;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Nails of which nothing is published: in masonry, and across through a panel (NDS 2018 has neither). They count as nothing,
 * whoever wrote the stack is told so, and may answer for them.
 */
class UnpublishedNailsTest {
    private static final String FRIEZE = """
            title: frieze
            wood: yellow-poplar
            space: { floor: -90, ceiling: 30 }
            pieces:
              - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum }
            fastenings:
              - { name: f, piece: frieze, use: 15 ga x 2-1/2, at: { up: 1 } }
              - { name: f2, piece: frieze, use: 15 ga x 2-1/2, at: { up: 4 } }
            """;

    private static String behind(String studs, String more) {
        return FRIEZE + "plan: [{ name: w, left: die, right: die, " + studs + " stretches: [{ name: one, length: 90"
                + more + " }] }]\n";
    }

    private static List<String> problems(String text) {
        return Answered.of(text).notices().stream()
                .filter(notice -> notice.level() == Level.PROBLEM)
                .map(Notice::code)
                .toList();
    }

    private static Notice said(String text, String code) {
        return Answered.of(text).notices().stream()
                .filter(notice -> notice.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static String followed(String text, Notice notice) {
        return Editor.edit("stack.yaml", text, NoticeWords.INCHES.edits(notice), new Notices())
                .orElseThrow();
    }

    @Test
    void what_holds_on_studs_does_not_hold_in_masonry() {
        String studs = behind("studs: { every: 16, first: 13 },", "");
        assertThat(problems(studs)).isEmpty();
        for (String brick : List.of(behind("studs: masonry,", ""), behind("", ", studs: masonry"))) {
            assertThat(problems(brick)).containsOnly("no-published-value", "tips");
            Answers answer = Answered.sound(brick);
            assertThat(answer.support().whole().answer()).isEqualTo(Support.Answer.NO);
            assertThat(answer.fixed().get(0).joints().get(0).pull()).isZero();
            assertThat(answer.fixed().get(0).design()).isZero();
            assertThat(answer.proposals()).isEmpty();
        }
    }

    /**
     * A batten of 15/16 on brick and a board of 11/16 before it: 1-5/8 in all, so that a nail of 2-1/4 ends in the brick,
     * where nails bend. Plugs and screws are set there: common practice, no source.
     */
    @Test
    void no_nail_is_proposed_that_goes_on_into_masonry() {
        String wall = """
                wood: white-oak
                space: { floor: -36, ceiling: 60 }
                pieces:
                  - { name: batten, kind: nailer, profile: board 15/16 x 2-3/4, back: wall, top: 0 }
                  - { name: panel, profile: board 11/16 x 7, back: batten.face, top: 0 }
                fastenings: []
                plan: [{ left: die, right: die, STUDS stretches: [{ name: one, length: 90 }] }]
                """;
        assertThat(Answered.sound(wall.replace("STUDS", "studs: { every: 16, first: 8 },"))
                        .proposals())
                .anyMatch(proposal -> proposal.fixed().point().x() < 0);
        assertThat(Answered.sound(wall.replace("STUDS", "studs: masonry,")).proposals())
                .allMatch(proposal -> proposal.fixed().point().x() > 0);
    }

    @Test
    void who_plugs_the_wall_says_so_and_answers_for_it() {
        String brick = behind("studs: masonry,", "");
        Notice notice = said(brick, "no-published-value");
        assertThat(NoticeWords.INCHES.cure(notice))
                .isEqualTo("Plug it and screw it by the maker's label, and give 'frieze' 'fixed: wall'.");
        String plugged = followed(brick, notice);
        assertThat(problems(plugged)).isEmpty();
        Notice falls = said(brick, "tips");
        assertThat(NoticeWords.INCHES.cure(falls))
                .isEqualTo(
                        "No value is published for their nails there: carry it on a ledge, or answer for it yourself by"
                                + " 'fixed: wall' on frieze.");
        assertThat(followed(brick, falls)).isEqualTo(plugged);
        assertThat(said(plugged, "no-published-value").level()).isEqualTo(Level.NOTE);
        assertThat(Answered.row(plugged, Topic.HELD).answer()).isEqualTo(Ruling.Reply.TRUST);
        assertThat(Answered.because(plugged, Topic.HELD))
                .isEqualTo("f and f2 in masonry, of which nothing is published: held as said");
    }

    @Test
    void what_only_a_piece_before_the_masonry_holds_is_not_blamed_on_it() {
        String cap = behind("studs: masonry,", "")
                .replace(
                        "fastenings:",
                        "  - { name: cap, profile: board 3/4 x 1-1/2, back: frieze.face, top: frieze.top }\n"
                                + "fastenings:\n  - { name: c, piece: cap, use: 18 ga x 2, at: { up: 4-3/4 } }")
                .replace("bottom: datum", "bottom: datum, fixed: wall");
        assertThat(Answered.of(cap).notices())
                .filteredOn(notice -> notice.code().equals("no-published-value"))
                .allMatch(notice -> notice.piece().orElseThrow().equals("frieze"));
    }

    @Test
    void through_a_panel_nothing_is_known_across_and_it_is_said() {
        String panel = FRIEZE.replace("name: frieze,", "name: frieze, wood: mdf,");
        Notice notice = said(panel, "no-published-value");
        assertThat(notice.level()).isEqualTo(Level.NOTE);
        assertThat(NoticeWords.INCHES.message(notice))
                .isEqualTo(
                        "'frieze' is a panel, and no value across is known here for nails through one: 'f' (15 ga x 2-1/2)"
                                + " counts as nothing across.");
        Notice falls = said(panel, "tips");
        assertThat(NoticeWords.INCHES.message(falls)).isEqualTo("The stack does not stand: frieze falls, 90 to floor.");
    }
}
