package buildup.cli.command;

import buildup.cli.command.files.InputFiles;
import buildup.cli.command.files.StackLoader;
import buildup.cli.command.files.Streams;
import buildup.engine.Answer;
import buildup.shared.notice.Notices;
import java.io.ByteArrayInputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Answers of documents that lie in no file. */
public final class Typed {
    private Typed() {}

    /** What is known of a stack document. */
    public static Answer of(String yaml) {
        Notices notices = new Notices();
        Streams streams = Streams.of(
                new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8)),
                OutputStream.nullOutputStream(),
                OutputStream.nullOutputStream());
        return new StackLoader(new InputFiles(streams, notices), notices).load("-", List.of());
    }
}
