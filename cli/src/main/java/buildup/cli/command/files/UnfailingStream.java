package buildup.cli.command.files;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/**
 * A stream that never fails its writer: the first fault is kept, and what comes after it is dropped. A full disk or a
 * reader that has gone is told once, when the command is done.
 */
public final class UnfailingStream extends OutputStream {
    private final OutputStream stream;
    private Optional<IOException> fault = Optional.empty();

    UnfailingStream(OutputStream stream) {
        this.stream = stream;
    }

    private interface Writing {
        /**
         * Writes what is to be written.
         *
         * @throws IOException when it cannot be written
         */
        void write() throws IOException;
    }

    @Override
    public void write(int one) {
        unlessBroken(() -> stream.write(one));
    }

    @Override
    public void write(byte[] bytes, int from, int count) {
        unlessBroken(() -> stream.write(bytes, from, count));
    }

    @Override
    public void flush() {
        unlessBroken(stream::flush);
    }

    private void unlessBroken(Writing writing) {
        if (fault.isPresent()) {
            return;
        }
        try {
            writing.write();
        } catch (IOException broken) {
            fault = Optional.of(broken);
        }
    }

    /** What went wrong first; absent while all is well. */
    Optional<IOException> fault() {
        return fault;
    }
}
