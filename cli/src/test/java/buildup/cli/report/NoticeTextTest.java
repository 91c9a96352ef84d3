package buildup.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.figure.Figure;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Code;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class NoticeTextTest {
    @Test
    void a_notice_is_level_place_piece_message_and_cure() {
        Notice notice = Code.of("overlap", "A test.")
                .problem("'{piece}' cuts {amount} into '{other}'.", "Move it {amount}.")
                .with("other", "fascia")
                .amount(Figure.length(0.125))
                .at(new Mark("room.yaml", 12, 5))
                .of("soffit");
        assertThat(text(notice)).isEqualTo("problem  room.yaml:12:5  soffit: cuts 1/8 into 'fascia'. Move it 1/8.\n");
    }

    @Test
    void what_is_alike_for_many_pieces_is_said_once() {
        assertThat(text(hangs("bed", 3), hangs("fascia", 4), hangs("crown", 5)))
                .isEqualTo(
                        "note  room.yaml:3:1  bed, fascia, crown: is held by nails only; nothing carries it. Nail it.\n");
    }

    @Test
    void of_very_many_pieces_the_first_are_named_and_the_rest_are_counted() {
        assertThat(text(hangs(22)))
                .contains("p0, p1, ")
                .contains(", p19 and 2 more: ")
                .doesNotContain("p20");
        assertThat(text(hangs(21))).contains("p19, p20: ").doesNotContain("more: ");
    }

    private static Notice[] hangs(int count) {
        return IntStream.range(0, count).mapToObj(i -> hangs("p" + i, i + 1)).toArray(Notice[]::new);
    }

    @Test
    void two_refusals_at_two_places_are_two_lines() {
        Notice first = Code.of("not-a-length", "A test.")
                .refusal("'{text}' is not a length.", "")
                .with("text", "x")
                .of("bed");
        assertThat(text(first.at(new Mark("room.yaml", 3, 9)), first.at(new Mark("room.yaml", 3, 20))))
                .isEqualTo("""
                        refusal  room.yaml:3:9  bed: 'x' is not a length.
                        refusal  room.yaml:3:20  bed: 'x' is not a length.
                        """);
    }

    @Test
    void a_notice_without_a_place_is_about_the_file() {
        assertThat(text(Code.of("too-tall", "A test.")
                        .problem("The stack is {height} in a space of {ceiling}.", "")
                        .with("height", Figure.length(12.25))
                        .with("ceiling", Figure.length(12))))
                .isEqualTo("problem  room.yaml  The stack is 12-1/4 in a space of 12.\n");
    }

    @Test
    void a_name_cannot_forge_a_line_or_steer_the_terminal() {
        assertThat(text(hangs("bed\nrefusal  x\u001B[2J", 3)).lines())
                .hasSize(1)
                .allMatch(line -> !line.contains("\u001B"));
    }

    private static Notice hangs(String piece, int line) {
        return Code.of("hangs-on-its-fastenings", "A test.")
                .note("'{piece}' is held by nails only; nothing carries it.", "Nail it.")
                .notice()
                .at(new Mark("room.yaml", line, 1))
                .of(piece);
    }

    private static String text(Notice... notices) {
        return NoticeText.write(List.of(notices), "room.yaml", LengthUnit.INCH);
    }
}
