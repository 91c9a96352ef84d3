package buildup.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.Buildup;
import buildup.cli.command.files.Streams;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What came of one command, run within the test. */
public record Ran(int code, String out, String err) {
    /** A command without standard input. */
    public static Ran of(String... words) {
        return with(new byte[0], words);
    }

    /** A command that is given those bytes on standard input; what it prints as JSON is as its schema says. */
    public static Ran with(byte[] input, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Buildup.run(Streams.of(new ByteArrayInputStream(input), out, err), words);
        assertThat(Schemas.faults(List.of(words), out.toString(UTF_8)))
                .as("the schema of %s", List.of(words))
                .isEmpty();
        return new Ran(code, out.toString(UTF_8), err.toString(UTF_8));
    }

    /** A report of a document. */
    public static Ran report(String document, String... options) {
        String[] words = new String[options.length + 2];
        words[0] = "report";
        words[1] = "-";
        System.arraycopy(options, 0, words, 2, options.length);
        return with(document.getBytes(UTF_8), words);
    }

    /** A stack of the tests. */
    public static Path stack(String name) {
        return Path.of("src/test/resources/stacks", name);
    }

    /** A stack of those that come with the program. */
    public static Path demo(String name) {
        return Path.of("../catalog/demo", name);
    }

    /** What a file holds. */
    public static String read(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
