package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A stack that names lists of its own is changed and tried like any other: its lists are read once, by whoever opens it. */
class OwnListsTest {
    /** The second board reaches half an inch into the first. */
    private static final String STACK = """
            catalog: [lists.yaml]
            wood: bog-oak
            pieces:
              - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 0 }
              - { name: band, profile: board 3/4 x 2, back: frieze.face - 1/2, bottom: 1 }
            """;

    @TempDir
    private Path folder;

    private Path stack;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(folder.resolve("lists.yaml"), "woods:\n  - { name: bog-oak, density: 60 }\n");
        stack = Files.writeString(folder.resolve("stack.yaml"), STACK);
    }

    @Test
    void its_cures_are_those_of_a_stack_with_the_same_lists_given_beside_it() throws IOException {
        Ran named = Ran.of("report", stack.toString(), "--format", "json");
        Path plain = Files.writeString(folder.resolve("plain.yaml"), STACK.replace("catalog: [lists.yaml]", ""));
        Ran given = Ran.of(
                "report",
                plain.toString(),
                "--catalog",
                folder.resolve("lists.yaml").toString(),
                "--format",
                "json");
        assertThat(named.out()).contains("\"overlap\"", "\"cure\"");
        assertThat(named.out().replace("stack.yaml", "plain.yaml")).isEqualTo(given.out());
    }

    @Test
    void it_is_searched() {
        Ran ran = Ran.of(
                "search",
                stack.toString(),
                "--free",
                "band.bottom=between 1 and 2 by 1/4, now 1",
                "--must",
                "height <= 6",
                "--tries",
                "5");
        assertThat(ran.code()).as(ran.err()).isLessThan(ExitCode.REFUSED);
        assertThat(ran.out()).contains("5 stacks");
    }
}
