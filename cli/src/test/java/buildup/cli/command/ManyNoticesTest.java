package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** However many faults a document has, it is told as many as somebody reads, and how many more there are. */
class ManyNoticesTest {
    private static final int FAULTS = 20_000;

    private static final String FAULTY = IntStream.range(0, FAULTS)
            .mapToObj(i -> "key" + i + ": x\n")
            .collect(Collectors.joining(
                    "",
                    "title: a\nwood: yellow-poplar\n",
                    "pieces: [{name: b, profile: 1x4, back: wall, bottom: 0}]\n"));

    @Test
    void the_screen_is_told_200_and_the_count_of_the_rest() {
        Ran ran = Ran.report(FAULTY);
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).hasLineCount(201);
        assertThat(ran.err().lines().reduce("", (before, line) -> line))
                .isEqualTo("refusal  stdin  19800 more are not listed. Mend the first ones and ask again.");
    }

    @Test
    void who_asks_for_everything_is_told_all_of_it() {
        Ran ran = Ran.report(FAULTY, "-v");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).hasLineCount(FAULTS).doesNotContain("more are not listed");
    }

    @Test
    void so_are_programs_and_pages() {
        Ran json = Ran.report(FAULTY, "--format", "json");
        assertThat(json.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(json.out()).contains("\"code\": \"more-notices\"", "19800 more are not listed.");
        assertThat(json.out().length()).isLessThan(500_000);
        assertThat(json.out().split("\"code\"", -1)).hasSize(202);
    }

    @Test
    void two_hundred_are_all_told() {
        Ran ran = Ran.report(IntStream.range(0, 200)
                .mapToObj(i -> "key" + i + ": x\n")
                .collect(Collectors.joining(
                        "",
                        "title: a\nwood: yellow-poplar\n",
                        "pieces: [{name: b, profile: 1x4, back: wall, bottom: 0}]\n")));
        assertThat(ran.err()).hasLineCount(200).doesNotContain("more are not listed");
    }
}
