package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Answered;
import buildup.engine.Answers;
import buildup.engine.Bench;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Reach;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Rows of nails as a person reads and types them: what differs from what stands there, and nothing else. */
class RowCuresTest {
    private final Answers answers = Answered.sound(Bench.head("space: { wall: { solid: no } }\nfastenings:\n"
                    + "  - { name: pairs, piece: shelf, use: 18 ga x 1-1/4, at: { out: -3, up: 3/4 }, first: 3, per: 2 }\n"
                    + "  - { name: ones, piece: shelf, use: 18 ga x 1-1/4, at: { out: -2, up: 3/4 }, first: 5 }\n")
            + Bench.list(
                    "name: ledge, kind: framing, section: [out 6, up 6], face: 0, top: 0",
                    "name: shelf, profile: board 3/4 x 10, lay: flat, back: -4, bottom: 0"));

    private Fixed nail(double first) {
        Fixed nail = answers.fixed().get(0);
        return nail.as(nail.fastening().startedAt(first));
    }

    private Notice notice(Fixed nail, Optional<String> instead) {
        LeastRow row = new LeastRow(nail, 16, 0, instead, 0, List.of());
        return SupportNotices.GAP_CLOSES.notice().cure(new RowCures(answers.section(), answers.fixed()).one(row));
    }

    private static String words(Notice notice) {
        return NoticeWords.INCHES.cure(notice);
    }

    private static String edits(Notice notice) {
        return NoticeWords.INCHES.edits(notice).toString();
    }

    @Test
    void where_a_row_begins_is_told_and_typed_just_where_it_begins_elsewhere() {
        Notice added = notice(nail(0), Optional.empty());
        assertThat(words(added)).contains("every 16 (holds ");
        assertThat(edits(added)).contains("added to shelf.piece").doesNotContain("first");
        Notice between = notice(nail(8), Optional.empty());
        assertThat(words(between)).contains("every 16, 'first: 8' (holds ");
        assertThat(edits(between)).contains("Set[place=fastenings.added to shelf.first, value=Text[text=8]]");
        Notice same = notice(nail(5), Optional.of("ones"));
        assertThat(words(same)).contains("every 16, in place of 'ones' (holds ");
        assertThat(edits(same)).contains("fastenings.ones.use").doesNotContain("first");
        for (int first : new int[] {0, 3, 8}) {
            Notice moved = notice(nail(first), Optional.of("ones"));
            assertThat(words(moved)).contains("every 16, 'first: %d', in place of 'ones' (holds ".formatted(first));
            assertThat(edits(moved)).contains("Set[place=fastenings.ones.first, value=Text[text=%d]]".formatted(first));
        }
    }

    @Test
    void of_two_at_each_place_one_is_left_and_where_there_is_one_nothing_is_said_of_it() {
        assertThat(edits(notice(nail(3), Optional.of("pairs"))))
                .contains("Set[place=fastenings.pairs.per, value=Text[text=1]]")
                .doesNotContain("first");
        assertThat(edits(notice(nail(5), Optional.of("ones")))).doesNotContain("per");
    }

    @Test
    void of_a_row_whose_tool_does_not_get_in_either_it_is_said_what_is_in_its_way() {
        Fixed nail = nail(3);
        Fixed blocked = new Fixed(
                nail.fastening(),
                nail.piece(),
                nail.after(),
                nail.drive(),
                nail.grips(),
                nail.joints(),
                nail.checks(),
                nail.edge(),
                nail.slant(),
                nail.hiding(),
                new Reach(nail.reach().tool(), OptionalInt.of(0)));
        assertThat(words(notice(blocked, Optional.of("pairs"))))
                .endsWith(" across; the brad nailer does not get past ledge, as now).");
        assertThat(words(notice(nail, Optional.of("pairs")))).endsWith(" across).");
    }
}
