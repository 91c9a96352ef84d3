package buildup.cli.command.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * What a command reads from and writes to, other than files. Text is UTF-8 whatever the machine's own charset, and its
 * lines end with "\n": write it with {@code print}, never with {@code println}, which ends lines as the machine does.
 * A stream that cannot be written stops nobody; {@link #undelivered} tells of it at the end.
 *
 * @param in standard input, where a command was given {@code -} for a file
 * @param out the answer, as text
 * @param err notices
 * @param outlet where the answer leaves, also one that is not text; {@code out} leads there too
 * @param given what has been read in this run
 * @param waiting who sees that a run takes long
 * @param outIsScreen whether a person sees {@code out} and {@code err} together; else what stands in one may be lost
 */
public record Streams(
        InputStream in,
        PrintWriter out,
        PrintWriter err,
        UnfailingStream outlet,
        DocumentsRead given,
        Waiting waiting,
        boolean outIsScreen) {
    /** Text writers over the given streams. */
    public static Streams of(InputStream in, OutputStream out, OutputStream err) {
        return of(in, out, err, Waiting.unseen(), true);
    }

    /** The same, saying who waits and whether a person sees both at once. */
    public static Streams of(InputStream in, OutputStream out, OutputStream err, Waiting waiting, boolean outIsScreen) {
        UnfailingStream outlet = new UnfailingStream(waiting.before(out));
        return new Streams(
                in, utf8(outlet), utf8(waiting.before(err)), outlet, new DocumentsRead(), waiting, outIsScreen);
    }

    /** Sends an answer that is not text. */
    void send(byte[] answer) {
        out.flush();
        outlet.write(answer, 0, answer.length);
    }

    /** Sends on what is still held back. */
    public void flush() {
        out.flush();
        err.flush();
    }

    /** Why a part of the answer so far did not arrive; absent when all of it did. */
    public Optional<IOException> undelivered() {
        out.flush();
        return outlet.fault();
    }

    private static PrintWriter utf8(OutputStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
    }
}
