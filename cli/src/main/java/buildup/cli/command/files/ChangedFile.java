package buildup.cli.command.files;

import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Where a changed document goes: into its own file, or into another one that was asked for, or to standard output where
 * it came from standard input.
 *
 * @param word of the command line that names the document: a file, or {@code -}
 */
public record ChangedFile(Streams streams, String word, Optional<Path> output, Notices notices) {
    /**
     * Writes the document; a file that holds it already is left alone.
     *
     * @return the exit code as far as files go: whether it is there now
     */
    public int put(String before, String after) {
        Optional<Path> file = OutputFile.named(output);
        if (file.isEmpty() && (output.isPresent() || word.equals("-"))) {
            streams.out().print(after);
            return ExitCode.CLEAN;
        }
        if (file.isEmpty() && after.equals(before)) {
            return ExitCode.CLEAN;
        }
        Path path = file.orElseGet(() -> Path.of(word));
        boolean written = OutputFile.write(path, after.getBytes(StandardCharsets.UTF_8), List.of(), notices);
        return written ? ExitCode.CLEAN : ExitCode.NOT_WRITTEN;
    }
}
