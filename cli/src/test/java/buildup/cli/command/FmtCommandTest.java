package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FmtCommandTest {
    private static final String LOOSE = "title:   Cap\nsizes: {lip: 1 ,lap:  2}  # two\n\n\npieces:\n- {name: a}   \n";
    private static final String TIDY = "title: Cap\nsizes: { lip: 1, lap: 2 } # two\n\npieces:\n  - { name: a }\n";

    @TempDir
    private Path folder;

    @Test
    void a_file_is_laid_out_where_it_is() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.yaml"), LOOSE);
        assertThat(Ran.of("fmt", file.toString())).isEqualTo(new Ran(ExitCode.CLEAN, "", ""));
        assertThat(Ran.read(file)).isEqualTo(TIDY);
    }

    @Test
    void or_somewhere_else() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.yaml"), LOOSE);
        Path other = folder.resolve("other.yaml");
        assertThat(Ran.of("fmt", file.toString(), "-o", other.toString())).isEqualTo(new Ran(ExitCode.CLEAN, "", ""));
        assertThat(Ran.read(file)).isEqualTo(LOOSE);
        assertThat(Ran.read(other)).isEqualTo(TIDY);
    }

    @Test
    void from_standard_input_it_goes_to_standard_output() {
        assertThat(Ran.with(LOOSE.getBytes(UTF_8), "fmt", "-")).isEqualTo(new Ran(ExitCode.CLEAN, TIDY, ""));
    }

    @Test
    void a_document_that_cannot_be_read_stays_as_it_is() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.yaml"), "a: 1\na:  2\n");
        assertThat(Ran.of("fmt", file.toString()))
                .isEqualTo(
                        new Ran(
                                ExitCode.REFUSED,
                                "",
                                "refusal  mine.yaml:2:1  'a' is given twice: in line 1 and again in line 2. Keep one of them.\n"));
        assertThat(Ran.read(file)).isEqualTo("a: 1\na:  2\n");
    }
}
