package buildup.shared.notice;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

class NoticesTest {

    private final Notices notices = new Notices();

    @Test
    void the_worst_comes_first_and_equals_keep_their_order() {
        Notice firstNote = Code.of("ambiguous", "A test.").note("b", "").notice();
        Notice secondNote = Code.of("ambiguous", "A test.").note("a", "").notice();
        Notice problem = Code.of("too-tall", "A test.").problem("c", "").notice();
        Notice refusal = Code.of("unknown-key", "A test.").refusal("d", "").notice();
        notices.addAll(List.of(firstNote, problem, secondNote, refusal));

        assertThat(notices.sorted()).containsExactly(refusal, problem, firstNote, secondNote);
    }

    @Test
    void the_same_thing_is_said_once() {
        notices.add(Code.of("ambiguous", "A test.").note("a", "").notice().at(new Mark("s.yaml", 1, 2)));
        notices.add(Code.of("ambiguous", "A test.").note("a", "").notice().at(new Mark("s.yaml", 1, 2)));
        notices.add(Code.of("ambiguous", "A test.").note("a", "").notice().at(new Mark("s.yaml", 1, 3)));

        assertThat(notices.sorted()).hasSize(2);
    }

    @Test
    void only_a_refusal_refuses() {
        notices.add(Code.of("ambiguous", "A test.").note("a", "").notice());
        notices.add(Code.of("too-tall", "A test.").problem("b", "").notice());
        assertThat(notices.refused()).isFalse();
        notices.add(Code.of("unknown-key", "A test.").refusal("c", "").notice());
        assertThat(notices.refused()).isTrue();
    }

    @Test
    void a_notice_gathers_place_piece_amount_and_cure_and_is_worded_in_the_unit_of_the_document() {
        Notice notice = Code.of("floating-piece", "A piece touches nothing.")
                .problem("{piece} touches nothing: {amount} of air below it.", "Move it down {amount}, or add a block.")
                .notice()
                .at(new Mark("s.yaml", 4, 7))
                .of("bed")
                .amount(Figure.contact(0.1875));

        assertThat(notice.level()).isEqualTo(Level.PROBLEM);
        assertThat(notice.code()).isEqualTo("floating-piece");
        assertThat(notice.mark()).map(Mark::toString).contains("s.yaml:4:7");
        assertThat(notice.piece()).contains("bed");
        assertThat(notice.amount()).contains(Figure.contact(0.1875));
        assertThat(NoticeWords.INCHES.message(notice)).isEqualTo("bed touches nothing: 3/16 of air below it.");
        assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Move it down 3/16, or add a block.");
        NoticeWords metric = NoticeWords.in(LengthUnit.MILLIMETER);
        assertThat(metric.message(notice)).isEqualTo("bed touches nothing: 4.8 mm of air below it.");
        assertThat(metric.cure(notice)).isEqualTo("Move it down 4.8 mm, or add a block.");
    }

    @Test
    void a_cure_of_its_own_stands_in_place_of_that_of_the_kind() {
        Notice notice = Code.of("too-tall", "A test.")
                .problem("Over by {amount}.", "Take the cap off.")
                .with("piece", "frieze")
                .amount(Figure.length(0.25))
                .cure(Phrase.of("Rip {piece} by {amount}."));
        assertThat(NoticeWords.INCHES.cure(notice)).isEqualTo("Rip frieze by 1/4.");
    }
}
