package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.OutsideTool;
import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A pipe or a device in place of a file is refused at once: to read it may be to wait for ever. */
@Timeout(60)
class EndlessInputTest {
    @TempDir
    private Path folder;

    @Test
    void every_file_that_a_command_reads_must_be_one() throws Exception {
        Path pipe = folder.resolve("pipe.yaml");
        OutsideTool.run(folder, "mkfifo", pipe.toString());
        String stack = Ran.demo("reading-room-cornice.yaml").toString();
        Path naming = Files.writeString(folder.resolve("naming.yaml"), "catalog: pipe.yaml\npieces: []\n");
        for (String endless : List.of(pipe.toString(), "/dev/zero")) {
            List<List<String>> all = new ArrayList<>(List.of(
                    List.of("report", endless),
                    List.of("report", stack, endless),
                    List.of("report", stack, "--catalog", endless),
                    List.of("check", endless),
                    List.of("draw", endless, "-o", folder.resolve("x.svg").toString()),
                    List.of("sheets", endless, "-o", folder.resolve("x.pdf").toString()),
                    List.of(
                            "sheets",
                            stack,
                            "--since",
                            endless,
                            "-o",
                            folder.resolve("x.pdf").toString()),
                    List.of("cuts", endless),
                    List.of("search", endless),
                    List.of("search", stack, "--catalog", endless),
                    List.of("watch", endless),
                    List.of("watch", stack, "--beside", endless),
                    List.of("profile", "1x4", "--catalog", endless),
                    List.of("quote", endless),
                    List.of("trace", endless),
                    List.of("fmt", endless),
                    List.of("set", endless, "title", "x")));
            for (List<String> words : all) {
                Ran ran = Ran.of(words.toArray(String[]::new));
                assertThat(ran.code()).as(words + ran.err()).isEqualTo(ExitCode.REFUSED);
                assertThat(ran.err()).contains(endless + " is a pipe or a device, which may never end.");
            }
        }
        assertThat(Ran.of("report", naming.toString()).err()).contains("pipe.yaml is a pipe or a device");
    }
}
