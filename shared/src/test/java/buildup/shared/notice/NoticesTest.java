package buildup.shared.notice;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.figure.Figure;
import buildup.shared.length.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class NoticesTest {

    private final Notices notices = new Notices();

    @Test
    void the_worst_comes_first_and_equals_keep_their_order() {
        Notice firstNote = Notice.note("ambiguous", "b");
        Notice secondNote = Notice.note("ambiguous", "a");
        Notice problem = Notice.problem("too-tall", "c");
        Notice refusal = Notice.refusal("unknown-key", "d");
        notices.addAll(List.of(firstNote, problem, secondNote, refusal));

        assertThat(notices.sorted()).containsExactly(refusal, problem, firstNote, secondNote);
    }

    @Test
    void the_same_thing_is_said_once() {
        notices.add(Notice.note("ambiguous", "a").at(new Mark("s.yaml", 1, 2)));
        notices.add(Notice.note("ambiguous", "a").at(new Mark("s.yaml", 1, 2)));
        notices.add(Notice.note("ambiguous", "a").at(new Mark("s.yaml", 1, 3)));

        assertThat(notices.sorted()).hasSize(2);
    }

    @Test
    void the_worst_level_is_the_exit_code() {
        assertThat(notices.exitCode()).isZero();
        notices.add(Notice.note("ambiguous", "a"));
        assertThat(notices.exitCode()).isZero();
        notices.add(Notice.problem("too-tall", "b"));
        assertThat(notices.exitCode()).isEqualTo(1);
        assertThat(notices.refused()).isFalse();
        notices.add(Notice.refusal("unknown-key", "c"));
        assertThat(notices.exitCode()).isEqualTo(2);
        assertThat(notices.refused()).isTrue();
    }

    @Test
    void a_notice_gathers_place_piece_amount_and_cure() {
        Notice notice = Notice.problem("floating-piece", "Bed touches nothing: 3/16 of air below it.")
                .at(new Mark("s.yaml", 4, 7))
                .of("bed")
                .amount(Length.inches(0.1875))
                .cure("Move down 3/16 or add a block.");

        assertThat(notice.level()).isEqualTo(Level.PROBLEM);
        assertThat(notice.code()).isEqualTo("floating-piece");
        assertThat(notice.mark()).map(Mark::toString).contains("s.yaml:4:7");
        assertThat(notice.piece()).contains("bed");
        assertThat(notice.amount()).contains(Figure.length(0.1875));
        assertThat(NoticeWords.INCHES.message(notice)).isEqualTo("Bed touches nothing: 3/16 of air below it.");
        assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Move down 3/16 or add a block.");
    }
}
