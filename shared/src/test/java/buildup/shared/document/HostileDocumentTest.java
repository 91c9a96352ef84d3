package buildup.shared.document;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.Said;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Files that are meant to do harm, or do so by accident. The timeouts are far above what a sound reader needs. */
@Timeout(60)
class HostileDocumentTest {

    private static final String FILE = "cornice.yaml";

    private final Notices notices = new Notices();

    @Test
    void fifty_mebibytes_are_refused_unread() {
        byte[] bytes = new byte[50 << 20];
        Arrays.fill(bytes, (byte) 'a');

        assertThat(DocumentReader.read(FILE, bytes, notices)).isEmpty();
        assertRefused(
                "file-too-large", "cornice.yaml holds 50 MiB; a stack may hold 1 MiB.", 1, 1, "Is it the right file?");
    }

    @Test
    void one_byte_too_many_is_too_many_and_says_so() {
        byte[] most =
                "a: 1".concat(" ".repeat(DocumentReader.GREATEST_BYTES - 4)).getBytes(StandardCharsets.UTF_8);

        assertThat(DocumentReader.read(FILE, most, notices)).isPresent();
        assertThat(DocumentReader.read(FILE, Arrays.copyOf(most, most.length + 1), notices))
                .isEmpty();
        assertRefused(
                "file-too-large", "cornice.yaml holds 1.1 MiB; a stack may hold 1 MiB.", 1, 1, "Is it the right file?");
    }

    @Test
    void twenty_thousand_open_brackets_are_refused_at_the_first_that_is_too_deep() {
        assertThat(read("a: " + "[".repeat(20_000))).isEmpty();
        assertRefused(
                "nested-too-deep",
                "Lists and mappings are nested more than 50 deep.",
                1,
                53,
                "Close the brackets before it.");
    }

    @Test
    void so_are_other_ways_to_nest() {
        for (String opening : new String[] {"{a: ", "- ", "? ", "[{a: "}) {
            Notices own = new Notices();
            assertThat(DocumentReader.read(FILE, opening.repeat(20_000).getBytes(StandardCharsets.UTF_8), own))
                    .isEmpty();
            assertThat(own.sorted()).extracting(Notice::code).as(opening).containsExactly("nested-too-deep");
        }
    }

    @Test
    void forty_nine_levels_below_the_top_are_read() {
        assertThat(read("a: " + "[".repeat(49) + "]".repeat(49))).isPresent();
        assertThat(notices.sorted()).isEmpty();
    }

    // Sizes: a0 10, a1 91, a2 820, a3 7,381. The ninefold repeats of a1 to a3 stand for 8,289 entries; the sixth *a3 in
    // line 5 brings them past 50,000.
    @Test
    void aliases_that_multiply_are_refused() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 10; i++) {
            String alias = "*a" + (i - 1);
            bomb.append("a" + i + ": &a" + i + " [" + String.join(", ", Collections.nCopies(9, alias)) + "]\n");
        }

        assertThat(read(bomb.toString())).isEmpty();
        assertRefused(
                "too-many-aliases",
                "The file repeats itself ('*a3') more than 50 times or 50000 entries.",
                5,
                35,
                "Write the repeated part out.");
    }

    @Test
    void fewer_than_fifty_aliases_can_multiply_too_and_are_refused() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 25; i++) {
            bomb.append("a" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1) + "]\n");
        }

        assertThat(read(bomb.toString())).isEmpty();
        assertThat(notices.sorted()).extracting(Notice::code).containsExactly("too-many-aliases");
    }

    @Test
    void many_plain_aliases_are_refused_and_a_few_are_not() {
        assertThat(read("a: &x 1\nb: [" + "*x , ".repeat(50) + "]")).isPresent();
        assertThat(read("a: &x 1\nb: [" + "*x , ".repeat(51) + "]")).isEmpty();
    }

    @Test
    void ten_thousand_pieces_are_read() {
        StringBuilder stack = new StringBuilder("pieces:\n");
        for (int i = 0; i < 10_000; i++) {
            stack.append(
                    "  - { name: p" + i + ", profile: board 3/4 x 2, back: wall, bottom: p" + (i - 1) + ".top }\n");
        }
        Sequence pieces = (Sequence)
                read(stack.toString()).orElseThrow().root().get("pieces").orElseThrow();

        assertThat(pieces.items()).hasSize(10_000);
    }

    @Test
    void whatever_the_bytes_are_the_answer_is_a_document_or_refusals() {
        long seed = 77;
        Random random = new Random(seed);
        String letters = "ab:,{}[]-&*!|>'\"%@`#? \n\t015/½\uFEFF\u0000~<";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(40); n >= 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            Notices own = new Notices();
            Optional<Document> document =
                    DocumentReader.read(FILE, text.toString().getBytes(StandardCharsets.UTF_8), own);
            assertThat(document.isPresent() || own.refused())
                    .as("%s, seed %s", text, seed)
                    .isTrue();
        }
    }

    private Optional<Document> read(String text) {
        return DocumentReader.read(FILE, text.getBytes(StandardCharsets.UTF_8), notices);
    }

    private void assertRefused(String code, String message, int line, int column, String cure) {
        assertThat(Said.all(notices))
                .containsExactly(Said.refusal(code, message)
                        .at(new Mark(FILE, line, column))
                        .cure(cure));
    }
}
