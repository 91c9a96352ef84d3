package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Input that nobody means well with ends in a message, and soon. */
@Timeout(60)
class HostileInputTest {
    private static final int MUTATIONS = 500;

    @Test
    void a_file_of_50_mib_is_not_read(@TempDir Path folder) throws IOException {
        Path big = folder.resolve("big.yaml");
        byte[] part = "title: a\n".repeat(1 << 16).getBytes(UTF_8);
        try (var out = Files.newOutputStream(big)) {
            for (long written = 0; written < 50L << 20; written += part.length) {
                out.write(part);
            }
        }
        said(
                Ran.of("report", big.toString()),
                "refusal  big.yaml  big.yaml holds 50 MiB; a stack may hold 1 MiB. Is it" + " the right file?\n");
    }

    @Test
    void standard_input_without_end_is_not_read_to_its_end() {
        said(
                Ran.with(new byte[3 << 20], "report", "-"),
                "refusal  stdin  stdin holds more than 1 MiB; a stack may hold" + " 1 MiB. Is it the right file?\n");
    }

    @Test
    void a_deep_nest_ends_in_a_message() {
        refusedSoon("pieces: " + "[".repeat(100_000));
    }

    @Test
    void aliases_that_blow_up_end_in_a_message() {
        String bomb = IntStream.range(1, 30)
                .mapToObj(i -> "a" + i + ": &a" + i + " [" + "*a" + (i - 1) + ", *a" + (i - 1) + "]")
                .collect(Collectors.joining("\n", "a0: &a0 [x]\n", "\npieces: *a29\n"));
        refusedSoon(bomb);
    }

    @Test
    void ten_thousand_pieces_end_in_a_message() {
        refusedSoon(IntStream.range(0, 10_000)
                .mapToObj(i -> "- {name: a" + i + ", profile: 1x4, back: wall, bottom: 0}\n")
                .collect(Collectors.joining("", "pieces:\n", "")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\n\n",
                "---\n",
                "\u0000\u0001\u0002",
                "pieces:\n\t- a",
                "title: a\ntitle: b\n",
                "pieces: 3",
                "pieces: [3, [], {}]",
                "pieces: [{name: a, profile: board NaN x inf, back: wall, bottom: 1e308}]",
                "pieces: [{name: a, profile: board 0 x -1, back: wall, bottom: 0}]",
                "pieces: [{name: a, profile: 1x4, back: b.face, bottom: a.top}]",
                "pieces: [{name: a, section: [out 1, up 1, in 2, down 2, out 3], back: wall, bottom: 0}]",
                "catalog: {a: b}\npieces: []",
                "space: {floor: 1, ceiling: 0}\npieces: [{name: a, profile: 1x4, back: wall, top: ceiling}]"
            })
    void a_bad_document_ends_in_a_message(String document) {
        refusedSoon(document);
    }

    @Test
    @Tag("long")
    void no_bytes_at_all_make_it_fail_inside() throws IOException {
        Random random = new Random(20);
        for (String demo : new String[] {"reading-room-cornice.yaml", "reading-room-door-head.yaml"}) {
            byte[] sound = Files.readAllBytes(Ran.demo(demo));
            for (int i = 0; i < MUTATIONS / 2; i++) {
                byte[] bytes = mutated(sound, random);
                Ran ran = Ran.with(bytes, "report", "-", "--format", random.nextBoolean() ? "json" : "text");
                assertThat(ran.code()).as(() -> new String(bytes, UTF_8)).isBetween(0, 2);
                assertThat(ran.err() + ran.out())
                        .as(() -> new String(bytes, UTF_8))
                        .isNotEmpty()
                        .doesNotContain("went wrong inside", "\tat ", "Exception");
            }
        }
    }

    /** Some bytes changed, dropped, doubled or taken from elsewhere in the document. */
    private static byte[] mutated(byte[] sound, Random random) {
        StringBuilder text = new StringBuilder(new String(sound, UTF_8));
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            int at = random.nextInt(text.length());
            int end = Math.min(text.length(), at + 1 + random.nextInt(8));
            switch (random.nextInt(5)) {
                case 0 -> text.setCharAt(at, (char) random.nextInt(random.nextBoolean() ? 0x80 : 0x3000));
                case 1 -> text.delete(at, end);
                case 2 -> text.insert(at, text.substring(at, end));
                case 3 -> text.insert(random.nextInt(text.length()), text.substring(at, end));
                default -> text.setCharAt(at, "0123456789-/.,:[]{}'\" \n".charAt(random.nextInt(23)));
            }
        }
        return text.toString().getBytes(UTF_8);
    }

    private static void refusedSoon(String document) {
        Ran ran = Ran.report(document);
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith("refusal  stdin").doesNotContain("went wrong inside");
        assertThat(ran.err().length()).isLessThan(20_000);
    }

    private static void said(Ran ran, String line) {
        assertThat(ran).isEqualTo(new Ran(ExitCode.REFUSED, "", line));
    }
}
