package buildup.cli.command.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file of another kind than is meant, as hands take them. */
class MistakenFilesTest {
    private static final String BOARD =
            "wood: yellow-poplar\npieces: [{ name: a, profile: board 3/4 x 3, back: wall, bottom: 0 }]\n";

    @TempDir
    private Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " "})
    void no_name_at_all_is_no_file_and_no_folder(String name) {
        for (String command : new String[] {"report", "check", "cuts"}) {
            Ran ran = Ran.of(command, name);
            assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
            assertThat(ran.err()).contains("'" + name + "' is not the name of a file.");
        }
    }

    @Test
    void an_order_in_place_of_a_stack_and_a_stack_in_place_of_an_order_are_told_which_command_reads_them() {
        assertThat(Ran.of("report", Ran.demo("reading-room-order.yaml").toString())
                        .err())
                .startsWith("refusal")
                .contains("There are no pieces here, but items, as in an order for a mill. Ask 'quote'");
        assertThat(Ran.with(BOARD.getBytes(UTF_8), "quote", "-").err())
                .contains("There are no items here, but pieces, as in a stack. Ask 'report'");
        assertThat(Ran.with("title: x\n".getBytes(UTF_8), "quote", "-").err()).contains("The order holds no items.");
        assertThat(Ran.with("title: x\n".getBytes(UTF_8), "report", "-").err()).contains("The stack holds no pieces");
    }

    @Test
    void two_stacks_of_one_name_are_told_apart_by_their_folders() throws IOException {
        Path old =
                Files.writeString(Files.createDirectory(folder.resolve("old")).resolve("a.yaml"), BOARD);
        Path other =
                Files.writeString(Files.createDirectory(folder.resolve("new")).resolve("a.yaml"), "pieces: []\n");
        Path alone = file("b.yaml", BOARD);
        Ran ran = Ran.of("check", old.toString(), other.toString(), alone.toString());
        assertThat(ran.out()).contains(old + ": ").contains(other + ": refused").contains("\nb.yaml: ");
        assertThat(ran.err()).contains("refusal  " + other + ":1:9  ");
    }

    @Test
    void a_picture_whose_name_says_another_kind_is_written_with_a_note() throws IOException {
        Path stack = file("a.yaml", BOARD);
        Path picture = folder.resolve("x.pdf");
        Ran ran = Ran.of("draw", stack.toString(), "--to", "svg", "-o", picture.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.err()).contains("x.pdf holds svg").contains("Let it end in .svg.");
        assertThat(Files.readString(picture)).startsWith("<");
        for (String fits : new String[] {"y.svg", "y", "y.drawing"}) {
            assertThat(Ran.of(
                                    "draw",
                                    stack.toString(),
                                    "--to",
                                    "svg",
                                    "-o",
                                    folder.resolve(fits).toString())
                            .err())
                    .doesNotContain("holds svg");
        }
    }

    @Test
    void a_file_where_a_folder_is_wanted_is_called_a_file() throws IOException {
        Path stack = file("a.yaml", BOARD);
        Path taken = file("taken", "mine");
        Ran search = Ran.of(
                "search",
                stack.toString(),
                "--free",
                "pieces.a.bottom=between 0 and 1 by 1/2",
                "--must",
                "height <= 4",
                "-o",
                taken.toString());
        assertThat(search.code()).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(search.err()).contains("taken is a file, and the answers need a folder.");
        Ran sheets = Ran.of("sheets", stack.toString(), "-o", taken + "/");
        assertThat(sheets.code()).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(sheets.err()).contains("taken is a file").doesNotContain("Make it first");
        assertThat(Files.readString(taken)).isEqualTo("mine");
        assertThat(OutputFile.folder(folder.resolve("new/one"), new buildup.shared.notice.Notices()))
                .isTrue();
        assertThat(folder.resolve("new/one")).isDirectory();
    }
}
