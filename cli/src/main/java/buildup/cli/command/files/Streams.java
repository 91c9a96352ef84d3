package buildup.cli.command.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/**
 * What a command reads from and writes to, other than files. Text is UTF-8 whatever the machine's own charset, and its
 * lines end with "\n": write it with {@code print}, never with {@code println}, which ends lines as the machine does.
 *
 * @param in standard input, where a command was given {@code -} for a file
 * @param out the answer, as text
 * @param err notices
 * @param bytes the answer where it is not text; the same stream as {@code out}, so use one of the two
 */
public record Streams(InputStream in, PrintWriter out, PrintWriter err, OutputStream bytes) {
    /** Text writers over the given streams. */
    public static Streams of(InputStream in, OutputStream out, OutputStream err) {
        return new Streams(in, utf8(out), utf8(err), out);
    }

    /** Sends an answer that is not text. */
    void send(byte[] answer) {
        try {
            bytes.write(answer);
        } catch (IOException closed) {
            // whoever closed the stream has had enough; the text writers keep quiet about it too
        }
    }

    /** Sends on what is still held back. */
    public void flush() {
        out.flush();
        err.flush();
    }

    private static PrintWriter utf8(OutputStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
    }
}
