package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever follows the guide's first hour word for word gets where it leads. */
class FirstHourTest {
    private static final String GUIDE = Ran.read(Path.of("guide/first-hour.md"));
    private static final Pattern COMMAND = Pattern.compile("(?m)^cli/buildup (.*)$");

    @TempDir
    private Path folder;

    /** The words of a line, its own files in the folder and the demos where they lie. */
    private String[] words(String line) {
        return Stream.of(line.split(" "))
                .map(word -> word.startsWith("catalog/")
                        ? "../" + word
                        : word.matches("[a-z-]+\\.(yaml|svg)")
                                ? folder.resolve(word).toString()
                                : word)
                .toArray(String[]::new);
    }

    @Test
    void each_command_of_the_first_hour_does_what_it_is_there_for() throws IOException {
        Matcher command = COMMAND.matcher(GUIDE);
        List<String> written = new ArrayList<>();
        int count = 0;
        while (command.find()) {
            String line = command.group(1);
            Ran ran = Ran.of(words(line));
            assertThat(ran.code()).as(line + "\n" + ran.err()).isZero();
            int output = line.indexOf("-o ");
            if (output >= 0) {
                written.add(line.substring(output + 3));
            }
            count++;
        }
        assertThat(count).isGreaterThanOrEqualTo(8);
        for (String file : written) {
            String text = Files.readString(folder.resolve(file));
            assertThat(text).as(file).startsWith(file.endsWith(".svg") ? "<?xml" : "#");
        }
        assertThat(Files.readString(folder.resolve("my-cornice.yaml")))
                .as("one value was changed")
                .contains("lip: 1-1/4");
    }

    @Test
    void the_lines_that_it_says_to_add_are_understood_at_the_end_of_the_stack() throws IOException {
        Ran.of(words("new cornice -o my-cornice.yaml"));
        Path stack = folder.resolve("my-cornice.yaml");
        Matcher block =
                Pattern.compile("```yaml\n(must:.*?)```", Pattern.DOTALL).matcher(GUIDE);
        assertThat(block.find()).isTrue();
        String lines = block.group(1);
        String text = Files.readString(stack);
        Files.writeString(
                stack, text.contains("\nmust:") ? text.replace("\nmust:\n", "\n" + lines) : text + "\n" + lines);
        assertThat(Ran.of("check", stack.toString()).code()).isLessThanOrEqualTo(1);
    }
}
