package buildup.cli.watch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;

/**
 * What some files hold at one moment; a file that is not there, or cannot be read, holds nothing and has no entry. Two
 * of them are equal when the same files hold the same bytes, whatever the clock of the file system says.
 */
record Contents(Map<Path, ByteBuffer> files) {
    /** More than this is refused unread, so what lies behind it changes nothing. */
    private static final int MOST_BYTES = (1 << 20) + 1;

    static Contents of(Collection<Path> paths) {
        Map<Path, ByteBuffer> files = new TreeMap<>();
        for (Path path : paths) {
            // not a pipe: reading one would wait, and take away what the reader of the stack is to have
            if (Files.isRegularFile(path)) {
                try (InputStream in = Files.newInputStream(path)) {
                    files.put(path, ByteBuffer.wrap(in.readNBytes(MOST_BYTES)).asReadOnlyBuffer());
                } catch (IOException goneMeanwhile) {
                    files.remove(path);
                }
            }
        }
        return new Contents(files);
    }
}
