package buildup.engine.room.sticks;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BadStockTest {
    private static Cutlist stock(String stock) {
        return Cutlist.boards("3/4 x 3-1/2", List.of("90"), "stock:\n" + stock.indent(2));
    }

    @Test
    void a_stack_without_stock_has_no_shop() {
        Cutlist none = Cutlist.boards("3/4 x 3-1/2", List.of("90"), "");
        assertThat(none.shop()).isEmpty();
        assertThat(none.notices()).isEmpty();
    }

    @Test
    void a_stock_without_sticks_leaves_every_piece_without_one() {
        Cutlist empty = stock("kerf: 1/8");
        assertThat(empty.said().code()).isEqualTo("no-stock");
        assertThat(empty.said().level()).isEqualTo(Level.PROBLEM);
        assertThat(NoticeWords.INCHES.message(empty.said()))
                .isEqualTo("'rail': no stick is listed for board 3/4 x 3-1/2 of yellow-poplar.");
        assertThat(NoticeWords.INCHES.cure(empty.said()))
                .isEqualTo("Add it under 'stock:', as '{ of: 1x6, buy: [8', 12'] }'.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            kerf: -1/8                               | negative-kerf | The kerf is -1/8.
            rip-kerf: -0.1                           | negative-kerf | The rip-kerf is -0.100.
            kerf: 3.2                                | not-a-size    | The kerf is 3-3/16+, more than 1.
            trim: -1                                 | not-a-size    | The trim is -1.
            trim: 300                                | not-a-size    | The trim is 300, more than 24.
            offcut: -2                               | not-a-size    | The offcut is -2.
            kerf: wide                               | unknown-name  | No length is called 'wide'.
            aim: cheap                               | unknown-name  | No aim is called 'cheap'.
            joints: { miter: dear }                  | not-a-price   | 'dear' is not a price.
            sticks: [{ buy: 96 }]                    | missing-key   | A stick does not say what it is.
            sticks: [{ of: 1x4 }]                    | missing-key   | '1x4' has no length.
            sticks: [{ of: 1x5, buy: 0 }]            | not-a-size    | Of a stick of 0 nothing is left to cut.
            sticks: [{ of: 1x4, buy: -96 }]          | not-a-size    | Of a stick of -96 nothing is left to cut.
            sticks: [{ of: 1x4, buy: 2440 }]         | not-a-size    | A stick of 2440 is longer than any wood.
            sticks: [{ of: 1x4, buy: long }]         | unknown-name  | No length is called 'long'.
            sticks: [{ of: 1x4, on-hand: 0 x 96 }]   | not-a-number  | '0' is not how many sticks lie there.
            sticks: [{ of: 1x4, buy: 8', price: -2 }]   | not-a-price  | '-2' is not a price.
            sticks: [{ of: 1x4, buy: 8', price: 1, per: yard }]  | unknown-name | Nothing is priced per 'yard'.
            sticks: [{ of: no-such, buy: 96 }]       | unknown-name  | No profile is called 'no-such'.
            sticks: [{ of: 1x4, wood: stone, buy: 96 }] | unknown-name | No wood is called 'stone'.
            """)
    void what_is_wrong_is_refused_with_what_was_read(String line, String code, String message) {
        Notice said = stock(line).said();
        assertThat(said.level()).isEqualTo(Level.REFUSAL);
        assertThat(said.code()).isEqualTo(code);
        assertThat(NoticeWords.INCHES.message(said)).isEqualTo(message);
        assertThat(NoticeWords.INCHES.cure(said)).isNotEmpty();
        assertThat(said.mark()).isPresent();
    }

    @Test
    void trimming_that_leaves_nothing_is_said_at_the_stick() {
        assertThat(NoticeWords.INCHES.message(
                        stock("trim: 12\nsticks: [{ of: 1x4, buy: 24 }]").said()))
                .isEqualTo("Of a stick of 24 nothing is left to cut when both ends are trimmed.");
    }

    @Test
    void everything_wrong_is_said_in_one_run() {
        assertThat(stock("kerf: -1\naim: x\nsticks: [{ of: 1x4, buy: 0, price: x, per: x }]")
                        .notices())
                .extracting(Notice::code)
                .containsExactlyInAnyOrder(
                        "negative-kerf", "unknown-name", "not-a-size", "not-a-price", "unknown-name");
    }

    @Test
    void a_stick_must_say_its_wood_where_the_pieces_are_of_several() {
        String stack = Cutlist.WALL
                + Bench.list(
                        "name: rail, profile: board 3/4 x 3, back: wall, bottom: datum",
                        "name: cleat, wood: red-oak, profile: board 3/4 x 2, back: wall, bottom: rail.top");
        Cutlist laid = Cutlist.of(stack, "stock: { sticks: [{ of: 1x4, buy: 96 }] }\n");
        assertThat(NoticeWords.INCHES.message(laid.said()))
                .isEqualTo("The pieces are of several woods, and a stick names none.");
    }

    @Test
    void a_list_that_will_not_end_is_refused() {
        String many = "sticks:\n" + "  - { of: 1x4, buy: 96 }\n".repeat(301);
        assertThat(stock(many).said().code()).isEqualTo("too-many-sticks");
    }
}
