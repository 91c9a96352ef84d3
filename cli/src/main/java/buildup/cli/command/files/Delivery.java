package buildup.cli.command.files;

import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Where an answer goes: to the file that was asked for, else to standard output.
 *
 * @param inputs files that must not be overwritten
 */
public record Delivery(Streams streams, Optional<Path> output, List<Path> inputs) {
    public Delivery {
        inputs = List.copyOf(inputs);
    }

    /**
     * Delivers text.
     *
     * @return whether it is there now; if not, a refusal says why
     */
    public boolean put(String text, Notices notices) {
        return put(text.getBytes(StandardCharsets.UTF_8), notices);
    }

    /**
     * Delivers bytes as they are.
     *
     * @return whether they are there now; if not, a refusal says why
     */
    public boolean put(byte[] bytes, Notices notices) {
        if (output.isPresent()) {
            return OutputFile.write(output.get(), bytes, inputs, notices);
        }
        streams.send(bytes);
        return true;
    }
}
